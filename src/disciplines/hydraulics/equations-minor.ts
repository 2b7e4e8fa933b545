import { STANDARD_GRAVITY } from '../../tables/hydraulic-constants.ts'
import { fittingLosses } from '../../tables/hydraulic-fittings.ts'
import { notNegative, positive } from './possible.ts'

function narrower(at: string, d: number, D: number): void {
  positive(at, { d, D })
  if (d > D) throw new RangeError(`${at}: d = ${d} must not exceed D = ${D}`)
}

/**
 * Head lost in a fitting.
 *
 *   h = K v²/(2 g)
 *
 * Symbols  h head [m], K loss coefficient [1], v speed in the bore that K belongs to [m/s]
 * Valid    turbulent flow; K grows below Re about 1e4
 * Source   LMNO.minor, form of the tables
 * Throws   RangeError where K is negative
 */
export function fittingHead(given: { readonly fittingLoss: number; readonly velocity_m_s: number }): number {
  const { fittingLoss: K, velocity_m_s: v } = given
  notNegative('fittingHead', { K })
  return (K * v * v) / (2 * STANDARD_GRAVITY)
}

/**
 * Loss coefficient of a sudden widening, on the speed in the smaller bore.
 *
 *   K = (1 − (d/D)²)²
 *
 * Symbols  K loss coefficient [1], d smaller bore [m], D larger bore [m]
 * Valid    d ≤ D, turbulent
 * Source   BordaCarnot, enlargement
 * Throws   RangeError where d is not positive or exceeds D
 */
export function enlargementLoss(given: { readonly smaller_m: number; readonly larger_m: number }): number {
  const { smaller_m: d, larger_m: D } = given
  narrower('enlargementLoss', d, D)
  return (1 - (d / D) ** 2) ** 2
}

/**
 * Loss coefficient of a sudden narrowing, on the speed in the smaller bore.
 *
 *   K = 0.5 (1 − (d/D)²)
 *
 * Symbols  K loss coefficient [1], d smaller bore [m], D larger bore [m]
 * Valid    d ≤ D, sharp edge, turbulent; Rennels prints up to a third more
 * Source   BordaCarnot, contraction
 * Throws   RangeError where d is not positive or exceeds D
 */
export function contractionLoss(given: { readonly smaller_m: number; readonly larger_m: number }): number {
  const { smaller_m: d, larger_m: D } = given
  narrower('contractionLoss', d, D)
  return 0.5 * (1 - (d / D) ** 2)
}

/**
 * A loss coefficient carried from one bore to another, so that all of a tube's fittings can be summed.
 *
 *   K_D = K_d (D/d)⁴
 *
 * Symbols  K_d coefficient on bore d [1], K_D the same loss on bore D [1]
 * Valid    same flow through both
 * Source   Hydrostatics, continuity: the speed goes as the inverse square of the bore
 * Throws   RangeError where a bore is not positive, or K is negative
 */
export function lossOnBore(given: {
  readonly fittingLoss: number
  readonly from_m: number
  readonly onto_m: number
}): number {
  const { fittingLoss: K, from_m: d, onto_m: D } = given
  positive('lossOnBore', { d, D })
  notNegative('lossOnBore', { K })
  return K * (D / d) ** 4
}

/**
 * Loss coefficient of a straight barbed coupler, on the bore of the tube.
 *
 *   K = [0.5 (1 − (d/D)²) + (1 − (d/D)²)²] (D/d)⁴
 *
 * Symbols  K loss coefficient on the tube [1], d bore through the barb [m], D bore of the tube [m]
 * Valid    d ≤ D; no handbook value for barbed fittings was found, so this is a narrowing and a widening
 * Source   BordaCarnot, both in series
 * Throws   RangeError where d is not positive or exceeds D
 */
export function barbLoss(given: { readonly barb_m: number; readonly tube_m: number }): number {
  const bores = { smaller_m: given.barb_m, larger_m: given.tube_m }
  const fittingLoss = contractionLoss(bores) + enlargementLoss(bores)
  return lossOnBore({ fittingLoss, from_m: given.barb_m, onto_m: given.tube_m })
}

/** Printed openings of a gate valve: share closed, and loss. */
const GATE = [
  [0, fittingLosses.rows.gateValveOpen.lossUsual],
  [0.25, fittingLosses.rows.gateValveQuarterClosed.lossUsual],
  [0.5, fittingLosses.rows.gateValveHalfClosed.lossUsual],
  [0.75, fittingLosses.rows.gateValveThreeQuartersClosed.lossUsual],
] as const

/**
 * How far a gate valve is closed that has a loss coefficient; null beyond three quarters, where it cannot be set by eye.
 *
 *   share closed, straight in log K between the printed openings
 *
 * Symbols  K loss coefficient [1]
 * Valid    0 to 3/4 closed; tables differ by a factor of two to four, so the last of it is set by the bucket
 * Source   LMNO.minor, gate valve open and 1/4, 1/2, 3/4 closed
 * Throws   RangeError where K is negative
 */
export function gateValveClosed(given: { readonly fittingLoss: number }): number | null {
  const { fittingLoss: K } = given
  notNegative('gateValveClosed', { K })
  if (K <= GATE[0][1]) return 0
  for (let i = 1; i < GATE.length; i++) {
    const [from, low] = GATE[i - 1]!
    const [to, high] = GATE[i]!
    if (K <= high) return from + ((to - from) * Math.log(K / low)) / Math.log(high / low)
  }
  return null
}
