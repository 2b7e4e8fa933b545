import { root } from '../../kernel/solve.ts'
import { type Amounts, mixed } from './composition.ts'
import { conductivity } from './equations-conductivity.ts'
import { notNegative, positive } from './impossible.ts'
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
 * Throws   RangeError where the volume is not positive or the water is as strong as the tank
 */
export function exchangeToDilute(given: {
  readonly volume_m3: number
  readonly now_S_m: number
  readonly wanted_S_m: number
  readonly water_S_m: number
}): number {
  const { volume_m3: V, now_S_m: E, wanted_S_m: goal, water_S_m: w } = given
  positive('exchangeToDilute', { V, 'E - w': E - w })
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
 * Throws   RangeError where the volume is not positive or the water is as strong as the goal
 */
export function additionToDilute(given: {
  readonly volume_m3: number
  readonly now_S_m: number
  readonly wanted_S_m: number
  readonly water_S_m: number
}): number {
  const { volume_m3: V, now_S_m: E, wanted_S_m: goal, water_S_m: w } = given
  positive('additionToDilute', { V, 'E* - w': goal - w })
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
 * Throws   RangeError where the volume is not positive or the stock is no stronger than the goal
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
  positive('stockToStrengthen', { V, F, 'E1 F - E* m': (E1 - w) * F - (goal - w) * m })
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
 * Throws   RangeError where the strength is negative
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
  notNegative('strengthConductivity', { s: strength })
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
 * Throws   RangeError where the wanted conductivity is negative
 */
export function strengthFor(
  given: Conditions & {
    readonly water: Amounts
    readonly salts: Amounts
    readonly pH: number
    readonly wanted_S_m: number
  },
): number {
  notNegative('strengthFor', { 'κ*': given.wanted_S_m })
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
