import { root } from '../../kernel/solve.ts'
import { pumpPractice } from '../../tables/hydraulic-pumps.ts'
import { pumpStrength } from './equations-pump.ts'
import { notNegative, positive, share } from './possible.ts'
import { compiledPump, type PumpCurve, type PumpPoint } from './pump-law.ts'

/** The curve that tests have left of the band of the box. */
export interface BucketFit {
  readonly curve: PumpCurve & { readonly kind: 'shape' }
  /** Scale of both box numbers; 1 where the tests lie inside the band of the box. */
  readonly strength: number
  /** Root of the mean squared distance of the tests from the curve. */
  readonly misfit_m: number
}

/**
 * Flow of a bucket test.
 *
 *   Q = V/t
 *
 * Symbols  Q flow [m³/s], V volume caught [m³], t time [s]
 * Valid    2 to 5 % by bucket and stopwatch; below 20 s the thumb counts more than the pump
 * Source   common-practice, bucket and stopwatch
 * Throws   RangeError where V is negative or t not positive
 */
export function bucketFlow(given: { readonly volume_m3: number; readonly time_s: number }): number {
  const { volume_m3: V, time_s: t } = given
  notNegative('bucketFlow', { V })
  positive('bucketFlow', { t })
  return V / t
}

/**
 * Head that the pump gave in a bucket test.
 *
 *   H = (z_out − z_water) + h_loss(Q)
 *
 * Symbols  H head [m], z_out height of the open end [m], z_water level in the reservoir [m], h_loss loss of the tube [m]
 * Valid    open end in the air; the loss holds the exit
 * Source   Hydrostatics, energy from free surface to open end
 * Throws   RangeError where the loss is negative
 */
export function bucketHead(given: {
  readonly outlet_m: number
  readonly level_m: number
  readonly loss_m: number
}): number {
  const { outlet_m, level_m, loss_m } = given
  notNegative('bucketHead', { loss_m })
  return outlet_m - level_m + loss_m
}

/** Exponent at which the curve of the box passes through a point; outside the band where none in it does. */
function exponentThrough(box: { readonly shutoff_m: number; readonly runout_m3_s: number }, point: PumpPoint): number {
  const h = point.head_m / box.shutoff_m
  const q = point.flow_m3_s / box.runout_m3_s
  if (h >= 1 || q >= 1) return Number.POSITIVE_INFINITY
  return q <= 0 ? 0 : Math.log(1 - Math.max(h, 0)) / Math.log(q)
}

/**
 * Curve of a pump from its box and from one to several bucket tests.
 *
 *   H = s H0 (1 − (Q/(s Q0))^c): one test fixes c inside the band of the box, and s at the nearer end of it outside;
 *   several tests: c and s by least squares of the head
 *
 * Symbols  H0, Q0 box figures [m, m³/s], c exponent [1], s strength [1]
 * Valid    tests of one day; the head of each holds height of the open end and loss of the tube
 * Source   common-practice, band of shapes as `pumpBand`
 * Throws   RangeError where there is no test, or a figure is not positive
 */
export function bucketFit(given: {
  readonly shutoff_m: number
  readonly runout_m3_s: number
  readonly tests: readonly PumpPoint[]
}): BucketFit {
  const { shutoff_m, runout_m3_s, tests } = given
  positive('bucketFit', { shutoff_m, runout_m3_s, 'number of tests': tests.length })
  const { low, high } = pumpPractice.rows.curveExponent
  const of = (exponent: number) => fitOfExponent({ shutoff_m, runout_m3_s, exponent, tests })
  if (tests.length === 1) {
    const c = exponentThrough(given, tests[0]!)
    if (c >= low && c <= high) return { ...of(c), strength: 1 }
    return of(c < low ? low : high)
  }
  return narrowed(of, low, high)
}

/**
 * The two curves between which the pump lies, given what bucket and stopwatch miss.
 *
 *   fits of Q (1 − u) and Q (1 + u)
 *
 * Symbols  Q flow of each test [m³/s], u relative error of a flow [1]
 * Valid    u about 0.02 to 0.05 by bucket and stopwatch; all tests off to one side, the safe reading of it
 * Source   common-practice, bucket and stopwatch
 * Throws   RangeError as `bucketFit`, or where u lies outside 0 to 1
 */
export function bucketBand(given: {
  readonly shutoff_m: number
  readonly runout_m3_s: number
  readonly tests: readonly PumpPoint[]
  readonly errorShare: number
}): { readonly low: BucketFit; readonly high: BucketFit } {
  const { errorShare: u, tests } = given
  share('bucketBand', { u })
  const at = (factor: number) =>
    bucketFit({ ...given, tests: tests.map((t) => ({ ...t, flow_m3_s: t.flow_m3_s * factor })) })
  return { low: at(1 - u), high: at(1 + u) }
}

function fitOfExponent(given: {
  readonly shutoff_m: number
  readonly runout_m3_s: number
  readonly exponent: number
  readonly tests: readonly PumpPoint[]
}): BucketFit {
  const { shutoff_m, runout_m3_s, exponent, tests } = given
  const box: PumpCurve = { kind: 'shape', shutoff_m, runout_m3_s, exponent }
  const strengths = tests.map((point) => pumpStrength({ curve: box, point }))
  const [from, to] = [Math.min(...strengths), Math.max(...strengths)]
  const at = (s: number) => ({ ...box, shutoff_m: shutoff_m * s, runout_m3_s: runout_m3_s * s })
  // Slope of the squared misfit by s changes sign between the weakest and the strongest test.
  const slope = (s: number) => misfit(at(s * (1 + 1e-6)), tests) ** 2 - misfit(at(s * (1 - 1e-6)), tests) ** 2
  const inside = to / from - 1 > 1e-9 && slope(from) < 0 && slope(to) > 0
  const strength = inside ? root({ of: slope, low: from, high: to, within: 1e-9 }) : (from + to) / 2
  return { curve: at(strength), strength, misfit_m: misfit(at(strength), tests) }
}

function misfit(curve: PumpCurve, tests: readonly PumpPoint[]): number {
  const head = compiledPump(curve)
  return Math.sqrt(tests.reduce((sum, t) => sum + (head(t.flow_m3_s).head_m - t.head_m) ** 2, 0) / tests.length)
}

/** Golden section over the exponent. */
function narrowed(of: (exponent: number) => BucketFit, low: number, high: number): BucketFit {
  const ratio = (Math.sqrt(5) - 1) / 2
  let [a, b] = [low, high]
  for (let step = 0; step < 40; step++) {
    const [c, d] = [b - ratio * (b - a), a + ratio * (b - a)]
    if (of(c).misfit_m <= of(d).misfit_m) b = d
    else a = c
  }
  const ends = [of(low), of((a + b) / 2), of(high)]
  return ends.reduce((best, fit) => (fit.misfit_m < best.misfit_m ? fit : best))
}

/** One bucket test in the log: when, and the point it showed. */
export interface DatedTest extends PumpPoint {
  readonly at_d: number
}

/** What a row of tests says about wear, scale and slime. */
export interface WearRecord {
  /** Strength of each test, the first test being 1. */
  readonly strengths: readonly { readonly at_d: number; readonly strength: number }[]
  /** Change of strength per day, least squares; null with fewer than two days. */
  readonly trend_per_d: number | null
  /** Day on which the trend meets `least`; null where it does not fall. */
  readonly least_d: number | null
}

/**
 * Wear of a pump from tests over time.
 *
 *   s_i from H_i = s_i H(Q_i/s_i), relative to the first; line by least squares; day at which it meets a limit
 *
 * Symbols  s strength [1], H head [m], Q flow [m³/s]
 * Valid    tests of one pump; tests may be at different heights, since each is carried to strength
 * Source   common-practice, as `pumpOfStrength`
 * Throws   RangeError where there is no test
 */
export function wearRecord(given: {
  readonly curve: PumpCurve
  readonly tests: readonly DatedTest[]
  readonly leastStrength: number
}): WearRecord {
  const { curve, leastStrength } = given
  const tests = [...given.tests].sort((a, b) => a.at_d - b.at_d)
  positive('wearRecord', { 'number of tests': tests.length, leastStrength })
  const first = pumpStrength({ curve, point: tests[0]! })
  const strengths = tests.map((point) => ({ at_d: point.at_d, strength: pumpStrength({ curve, point }) / first }))
  const meanDay = strengths.reduce((sum, s) => sum + s.at_d, 0) / strengths.length
  const mean = strengths.reduce((sum, s) => sum + s.strength, 0) / strengths.length
  const spread = strengths.reduce((sum, s) => sum + (s.at_d - meanDay) ** 2, 0)
  if (spread === 0) return { strengths, trend_per_d: null, least_d: null }
  const trend_per_d = strengths.reduce((sum, s) => sum + (s.at_d - meanDay) * (s.strength - mean), 0) / spread
  const least_d = trend_per_d < 0 ? meanDay + (leastStrength - mean) / trend_per_d : null
  return { strengths, trend_per_d, least_d }
}
