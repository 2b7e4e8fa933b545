import { root } from '../../kernel/solve.ts'
import { type Amounts, mixed, type Nutrient } from './composition.ts'
import { conductivity } from './equations-conductivity.ts'
import { nutrientMass } from './equations-formula.ts'
import { type Conditions, speciation } from './speciation.ts'

/**
 * Solution to take out, and water to put in its place, to weaken a tank at fixed volume.
 *
 *   Vr = V (E - E*) / (E - w)
 *
 * Symbols  Vr volume exchanged [m³], V volume of the whole loop [m³], E, E*, w conductivity now, wanted, of the water
 *          [S/m]
 * Valid    corrections within 20 %, where conductivity is nearly proportional to strength
 * Source   Balance.solution
 */
export function exchangeToDilute(given: {
  readonly volume_m3: number
  readonly now_S_m: number
  readonly wanted_S_m: number
  readonly water_S_m: number
}): number {
  const { volume_m3: V, now_S_m: E, wanted_S_m: goal, water_S_m: w } = given
  return (V * (E - goal)) / (E - w)
}

/**
 * Water to add to weaken a tank.
 *
 *   Va = V (E - E*) / (E* - w)
 *
 * Symbols  Va volume added [m³], V volume of the whole loop [m³], E, E*, w conductivity now, wanted, of the water [S/m]
 * Valid    as exchangeToDilute
 * Source   Balance.solution
 */
export function additionToDilute(given: {
  readonly volume_m3: number
  readonly now_S_m: number
  readonly wanted_S_m: number
  readonly water_S_m: number
}): number {
  const { volume_m3: V, now_S_m: E, wanted_S_m: goal, water_S_m: w } = given
  return (V * (E - goal)) / (goal - w)
}

/**
 * Volume of each stock bottle that strengthens a tank.
 *
 *   v = V (E* - E) / [ (E1 - w) F - (E* - w) m ]
 *
 * Symbols  v volume of each bottle [m³], V volume of the whole loop [m³], E, E* conductivity now and wanted [S/m],
 *          E1 of the feed that one part of each in F parts with the water gives, w of the water, F strength of the
 *          stock [1], m number of bottles
 * Valid    as exchangeToDilute
 * Source   Balance.solution
 * Why      a bottle made up with water of conductivity w adds (E1 - w) F of salt and its own volume
 */
export function stockToStrengthen(given: {
  readonly volume_m3: number
  readonly now_S_m: number
  readonly wanted_S_m: number
  readonly feed_S_m: number
  readonly water_S_m: number
  readonly factor: number
  readonly bottles: number
}): number {
  const { volume_m3: V, now_S_m: E, wanted_S_m: goal, feed_S_m: E1, water_S_m: w, factor: F, bottles: m } = given
  return (V * (goal - E)) / ((E1 - w) * F - (goal - w) * m)
}

/**
 * Conductivity of a feed made of water and salts at a strength.
 *
 *   κ(s) of water + s × salts, at a pH
 *
 * Symbols  κ conductivity [S/m], s strength [1]
 * Valid    as conductivity
 * Source   Balance.solution
 */
export function strengthConductivity(
  given: Conditions & {
    readonly water: Amounts
    readonly salts: Amounts
    readonly pH: number
    readonly strength: number
  },
): number {
  const { water, salts, strength } = given
  const amounts = mixed([
    { amounts: water, times: 1 },
    { amounts: salts, times: strength },
  ])
  return conductivity(speciation({ ...given, amounts }))
}

/**
 * Strength of a feed that shows a wanted conductivity.
 *
 *   s such that κ(s) = κ*
 *
 * Symbols  s strength [1], κ* wanted conductivity [S/m]
 * Valid    as conductivity; 0 where the water alone is at or above the goal
 * Source   Balance.solution
 */
export function strengthFor(
  given: Conditions & {
    readonly water: Amounts
    readonly salts: Amounts
    readonly pH: number
    readonly wanted_S_m: number
  },
): number {
  const of = (strength: number) => strengthConductivity({ ...given, strength }) - given.wanted_S_m
  if (of(0) >= 0) return 0
  let high = 1
  while (of(high) < 0 && high < 1e3) high *= 2
  return root({ of, low: 0, high, within: 1e-9 })
}

/**
 * Concentration at which the crop took something up, from two readings without a change in between.
 *
 *   u = (V0 c0 - V1 c1) / (V0 - V1)
 *
 * Symbols  u uptake concentration, c0, c1 concentration or conductivity before and after in the same unit, V0, V1
 *          volumes [m³]
 * Valid    no leak and no top-up between the readings
 * Source   Balance.solution
 * Throws   RangeError where the volume did not fall
 */
export function uptakeStrength(given: {
  readonly volumeBefore_m3: number
  readonly volumeAfter_m3: number
  readonly before_S_m: number
  readonly after_S_m: number
}): number {
  const { volumeBefore_m3: V0, volumeAfter_m3: V1, before_S_m: c0, after_S_m: c1 } = given
  if (!(V0 > V1)) throw new RangeError(`uptakeStrength: volume V went from ${V0} to ${V1}`)
  return (V0 * c0 - V1 * c1) / (V0 - V1)
}

/**
 * Strength of the top-up that brings a tank to its goal when filled to the line.
 *
 *   c = (V E* - V1 E1) / (V - V1)
 *
 * Symbols  c conductivity of the top-up [S/m], V, V1 volume at the line and now [m³], E*, E1 wanted and now [S/m]
 * Valid    as exchangeToDilute; below the water's own conductivity means: exchange some
 * Source   Balance.solution
 * Throws   RangeError where there is nothing to top up
 */
export function topUpStrength(given: {
  readonly line_m3: number
  readonly now_m3: number
  readonly wanted_S_m: number
  readonly now_S_m: number
}): number {
  const { line_m3: V, now_m3: V1, wanted_S_m: goal, now_S_m: E1 } = given
  if (!(V > V1)) throw new RangeError(`topUpStrength: volume ${V1} is at or above the line ${V}`)
  return (V * goal - V1 * E1) / (V - V1)
}

/**
 * Concentration of a refill that replaces what grew.
 *
 *   c = w e
 *
 * Symbols  c refill concentration [g/m³], w element in the dry plant [kg/kg], e dry mass grown per water drunk [kg/m³]
 * Valid    closed systems over a crop
 * Source   Langenfeld2022
 */
export function refillConcentration(given: {
  readonly tissueShare: number
  readonly waterUseEfficiency_kg_m3: number
}): number {
  return given.tissueShare * given.waterUseEfficiency_kg_m3 * 1000
}

/**
 * Concentration of an ion in a tank that is topped up, after some time.
 *
 *   c = c0 + c_w E t / V where p = 0; else c = c_w/p + (c0 - c_w/p) exp(-p E t / V)
 *
 * Symbols  c concentration [g/m³], c0 at the start, c_w in the top-up, E water drunk [m³/d], t time [d], V volume [m³],
 *          p uptake over concentration: 0 for an ion that plants leave, 1 for one that they take with the water
 * Valid    volume held by top-ups
 * Source   Carmassi2003
 */
export function accumulatedConcentration(given: {
  readonly start_g_m3: number
  readonly topUp_g_m3: number
  readonly use_m3_d: number
  readonly time_d: number
  readonly volume_m3: number
  readonly uptakeRatio: number
}): number {
  const { start_g_m3: c0, topUp_g_m3: cw, use_m3_d: E, time_d: t, volume_m3: V, uptakeRatio: p } = given
  const turns = (E * t) / V
  // (1 - exp(-p x))/p, which tends to x where p vanishes
  const reach = p * turns < 1e-9 ? turns : -Math.expm1(-p * turns) / p
  return c0 * Math.exp(-p * turns) + cw * reach
}

/**
 * Days until an ion reaches a limit in a tank that is topped up.
 *
 *   t = V (c* - c0)/(E c_w) where p = 0; else t = -V/(p E) ln[(c_w/p - c*)/(c_w/p - c0)]
 *
 * Symbols  t time [d], c* limit [g/m³], others as accumulatedConcentration
 * Valid    0 where the limit is already passed, infinite where it is never reached
 * Source   Carmassi2003
 */
export function timeToLimit(given: {
  readonly start_g_m3: number
  readonly topUp_g_m3: number
  readonly limit_g_m3: number
  readonly use_m3_d: number
  readonly volume_m3: number
  readonly uptakeRatio: number
}): number {
  const { start_g_m3: c0, topUp_g_m3: cw, limit_g_m3: limit, use_m3_d: E, volume_m3: V, uptakeRatio: p } = given
  if (c0 >= limit) return 0
  if (p === 0) return cw > 0 && E > 0 ? (V * (limit - c0)) / (E * cw) : Number.POSITIVE_INFINITY
  const end = cw / p
  return end > limit ? (-V / (p * E)) * Math.log((end - limit) / (end - c0)) : Number.POSITIVE_INFINITY
}

/**
 * Share of a tank to dump and refill to bring an ion down.
 *
 *   f = (c - c*) / (c - c_w)
 *
 * Symbols  f share of the volume [1], c concentration now, c* wanted, c_w in the refill [g/m³]
 * Valid    c_w below c*
 * Source   Balance.solution
 */
export function dumpShare(given: {
  readonly now_g_m3: number
  readonly wanted_g_m3: number
  readonly refill_g_m3: number
}): number {
  const { now_g_m3: c, wanted_g_m3: goal, refill_g_m3: cw } = given
  return c <= goal ? 0 : (c - goal) / (c - cw)
}

/**
 * Mass of a nutrient in a volume that is poured away.
 *
 *   m = ρ V
 *
 * Symbols  m mass [kg], ρ concentration [kg/m³], V volume [m³]
 * Valid    any solution
 * Source   Stoichiometry
 */
export function dumpedMass(given: {
  readonly amounts: Amounts
  readonly nutrient: Nutrient
  readonly volume_m3: number
}): number {
  return (nutrientMass(given) / 1000) * given.volume_m3
}

/**
 * Volume of a sanitiser to add to water.
 *
 *   v = V c / (C - c)
 *
 * Symbols  v volume of product [m³], V volume of water before [m³], c wanted strength [g/m³], C strength of the
 *          product [g/m³], 1 % by volume is 10 000
 * Valid    fresh product; the label goes before the sum
 * Source   Balance.solution
 * Throws   RangeError where the product is not stronger than the goal
 */
export function sanitiserVolume(given: {
  readonly volume_m3: number
  readonly wanted_g_m3: number
  readonly product_g_m3: number
}): number {
  const { volume_m3: V, wanted_g_m3: c, product_g_m3: C } = given
  if (!(C > c)) throw new RangeError(`sanitiserVolume: product C of ${C} is not above ${c} g/m³`)
  return (V * c) / (C - c)
}
