import { notNegative, positive } from './impossible.ts'

/**
 * Strength of a refill that holds the conductivity of a tank, from what plants take up with the water they drink.
 *
 *   s = (u - w)/(f - w), not below 0
 *
 * Symbols  s strength as a share of the recipe [1], u charge of the main nutrients taken up per volume of water drunk,
 *          f, w the same in the feed and in its water [mol of charge per m³]
 * Valid    closed systems over weeks; a start, which the trend of the conductivity corrects
 * Source   Balance.solution
 * Throws   RangeError where the feed is no stronger than its water, or an amount is negative
 */
export function refillStrength(given: {
  readonly uptake_eq_m3: number
  readonly feed_eq_m3: number
  readonly water_eq_m3: number
}): number {
  const { uptake_eq_m3: u, feed_eq_m3: f, water_eq_m3: w } = given
  notNegative('refillStrength', { u, w })
  positive('refillStrength', { 'f - w': f - w })
  return Math.max(0, (u - w) / (f - w))
}
