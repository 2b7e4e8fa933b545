import type { Amounts, Nutrient } from './composition.ts'
import { nutrientMass } from './equations-formula.ts'
import { notNegative, positive } from './impossible.ts'

/**
 * Concentration of a refill that replaces what grew.
 *
 *   c = w e
 *
 * Symbols  c refill concentration [g/m³], w element in the dry plant [kg/kg], e dry mass grown per water drunk [kg/m³]
 * Valid    closed systems over a crop
 * Source   Langenfeld2022
 * Throws   RangeError where the share or the efficiency is negative
 */
export function refillConcentration(given: {
  readonly tissueShare: number
  readonly waterUseEfficiency_kg_m3: number
}): number {
  notNegative('refillConcentration', { w: given.tissueShare, e: given.waterUseEfficiency_kg_m3 })
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
 * Throws   RangeError where the volume is not positive or another quantity is negative
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
  positive('accumulatedConcentration', { V })
  notNegative('accumulatedConcentration', { c0, c_w: cw, E, t, p })
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
 * Symbols  t time [d], c* limit [g/m³], c0 concentration at the start [g/m³], c_w of the top-up
 *          [g/m³], E use of water [m³/d], V volume [m³], p uptake ratio [1]
 * Valid    0 where the limit is already passed, infinite where it is never reached
 * Source   Carmassi2003
 * Throws   RangeError where the volume is not positive or another quantity is negative
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
  positive('timeToLimit', { V })
  notNegative('timeToLimit', { c0, c_w: cw, limit, E, p })
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
 * Throws   RangeError where a concentration is negative
 */
export function dumpShare(given: {
  readonly now_g_m3: number
  readonly wanted_g_m3: number
  readonly refill_g_m3: number
}): number {
  const { now_g_m3: c, wanted_g_m3: goal, refill_g_m3: cw } = given
  notNegative('dumpShare', { c, 'c*': goal, c_w: cw })
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
 * Throws   RangeError where the volume is negative
 */
export function dumpedMass(given: {
  readonly amounts: Amounts
  readonly nutrient: Nutrient
  readonly volume_m3: number
}): number {
  notNegative('dumpedMass', { V: given.volume_m3 })
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
