import { type Amounts, mixed } from './composition.ts'
import { notNegative } from './impossible.ts'

/** Rounding that shares may carry. */
const SHARE_ROUNDING = 1e-9

/**
 * Composition of waters poured together.
 *
 *   n = Σ s_i n_i,  Σ s_i = 1
 *
 * Symbols  n amounts [mol/m³], s_i share of the volume [1]
 * Valid    any waters; carbonate is kept, the pH follows from the totals
 * Source   Balance.solution
 * Throws   RangeError where the shares are negative or do not sum to 1
 */
export function blend(given: {
  readonly parts: readonly { readonly amounts: Amounts; readonly share: number }[]
}): Amounts {
  const total = given.parts.reduce((sum, { share }) => sum + share, 0)
  if (given.parts.some(({ share }) => !(share >= 0)) || Math.abs(total - 1) > SHARE_ROUNDING)
    throw new RangeError(`blend: shares s sum to ${total}`)
  return mixed(given.parts.map(({ amounts, share }) => ({ amounts, times: share })))
}

/**
 * Smallest share of a second water that brings an ion of the first down to a limit.
 *
 *   s = (c1 - c*) / (c1 - c2)
 *
 * Symbols  s share of the second water [1], c1, c2 concentrations in one unit, c* limit
 * Valid    0 where the first is within the limit; infinite where the second is not below it
 * Source   Balance.solution
 * Throws   RangeError where a concentration is negative
 */
export function shareToLimit(given: {
  readonly first_g_m3: number
  readonly second_g_m3: number
  readonly limit_g_m3: number
}): number {
  const { first_g_m3: c1, second_g_m3: c2, limit_g_m3: limit } = given
  notNegative('shareToLimit', { c1, c2, limit })
  if (c1 <= limit) return 0
  return c2 <= limit ? (c1 - limit) / (c1 - c2) : Number.POSITIVE_INFINITY
}
