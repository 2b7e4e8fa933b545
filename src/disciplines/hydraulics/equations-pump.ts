import { root } from '../../kernel/solve.ts'
import { pumpPractice } from '../../tables/hydraulic-pumps.ts'
import { positive, share } from './possible.ts'
import { compiledPump, type PumpCurve, type PumpPoint } from './pump-law.ts'

export type { PumpCurve, PumpPoint } from './pump-law.ts'

/**
 * Head that a pump gives at a flow.
 *
 *   H = H0 (1 − (Q/Q0)^c), or straight lines between the points
 *
 * Symbols  H head [m], H0 shut-off head [m], Q flow [m³/s], Q0 flow at no head [m³/s], c exponent of the shape [1]
 * Valid    0 ≤ Q ≤ Q0; beyond Q0 the head is negative: the pump is a resistance
 * Source   common-practice, shapes seen between a straight line (c 1) and a parabola (c 2)
 * Throws   RangeError where H0, Q0 or c is not positive, or points make no curve
 */
export function pumpHead(given: { readonly curve: PumpCurve; readonly flow_m3_s: number }): number {
  return compiledPump(given.curve)(given.flow_m3_s).head_m
}

/**
 * The two curves between which a pump of two box figures is expected.
 *
 *   low: c = 1, the straight line; high: c = 2, the parabola
 *
 * Symbols  c exponent of the shape [1]
 * Valid    small submerged centrifugal pumps
 * Source   common-practice, shapes seen in printed curves
 * Throws   RangeError where a box figure is not positive
 */
export function pumpBand(given: { readonly shutoff_m: number; readonly runout_m3_s: number }): {
  readonly low: PumpCurve
  readonly high: PumpCurve
} {
  const { shutoff_m, runout_m3_s } = given
  positive('pumpBand', { shutoff_m, runout_m3_s })
  const { low, high } = pumpPractice.rows.curveExponent
  return {
    low: { kind: 'shape', shutoff_m, runout_m3_s, exponent: low },
    high: { kind: 'shape', shutoff_m, runout_m3_s, exponent: high },
  }
}

/**
 * A curve with head and flow scaled by one share: wear below 1, a better pump than its box above.
 *
 *   H_s(Q) = s H(Q/s)
 *
 * Symbols  s strength [1], H head [m], Q flow [m³/s]
 * Valid    s > 0
 * Source   common-practice, worn pumps are said to lose 10 to 20 % of both box numbers
 * Throws   RangeError where s is not positive
 */
export function pumpOfStrength(given: { readonly curve: PumpCurve; readonly strength: number }): PumpCurve {
  const { curve, strength: s } = given
  positive('pumpOfStrength', { s })
  if (curve.kind === 'shape') return { ...curve, shutoff_m: curve.shutoff_m * s, runout_m3_s: curve.runout_m3_s * s }
  const points = curve.points.map((p) => ({ flow_m3_s: p.flow_m3_s * s, head_m: p.head_m * s }))
  return { kind: 'points', points }
}

/**
 * A curve after wear.
 *
 *   s = 1 − w
 *
 * Symbols  s strength [1], w share lost [1]
 * Valid    0 ≤ w < 1
 * Source   common-practice, 10 to 20 %
 * Throws   RangeError where w lies outside 0 to 1
 */
export function wornPump(given: { readonly curve: PumpCurve; readonly wornShare: number }): PumpCurve {
  share('wornPump', { w: given.wornShare })
  return pumpOfStrength({ curve: given.curve, strength: 1 - given.wornShare })
}

/**
 * Crossing of a parabolic pump with a parabolic system.
 *
 *   Q = √((c − a)/(b + d)), H = c − d Q² for a pump c − d Q² and a system a + b Q²
 *
 * Symbols  Q flow [m³/s], H head [m], a static lift [m], c shut-off head [m], b, d [m/(m³/s)²]
 * Valid    constant friction factor; for check only, the network solver takes the real one
 * Source   SDSU.pump, closed form
 * Throws   RangeError where b + d is not positive
 */
export function parabolaCrossing(given: {
  readonly lift_m: number
  readonly systemCurvature: number
  readonly shutoff_m: number
  readonly pumpCurvature: number
}): { readonly flow_m3_s: number; readonly head_m: number } {
  const { lift_m: a, systemCurvature: b, shutoff_m: c, pumpCurvature: d } = given
  positive('parabolaCrossing', { 'b + d': b + d })
  const flow_m3_s = Math.sqrt(Math.max(c - a, 0) / (b + d))
  return { flow_m3_s, head_m: c - d * flow_m3_s ** 2 }
}

/**
 * Parabola through points of a pump by least squares, linear in Q².
 *
 *   H = a + c Q², a and c least squares
 *
 * Symbols  H head [m], Q flow [m³/s], a shut-off head [m], c curvature [m/(m³/s)²]
 * Valid    at least two different flows
 * Source   Maurer.Hydraulics, example 7.1
 * Throws   RangeError where the points share one flow
 */
export function fittedParabola(given: { readonly points: readonly PumpPoint[] }): {
  readonly shutoff_m: number
  readonly curvature: number
} {
  const x = given.points.map((p) => p.flow_m3_s ** 2)
  const y = given.points.map((p) => p.head_m)
  const mean = (list: readonly number[]) => list.reduce((sum, v) => sum + v, 0) / list.length
  const [mx, my] = [mean(x), mean(y)]
  const sxx = x.reduce((sum, v) => sum + (v - mx) ** 2, 0)
  positive('fittedParabola', { 'spread of Q²': sxx })
  const curvature = x.reduce((sum, v, i) => sum + (v - mx) * (y[i]! - my), 0) / sxx
  return { shutoff_m: my - curvature * mx, curvature }
}

/**
 * Strength of a pump that a measured point shows: the scale at which the curve passes through it.
 *
 *   H = s H(Q/s), solved for s
 *
 * Symbols  s strength [1], H head [m] and Q flow [m³/s] of the point
 * Valid    H > 0 or Q > 0; the scaled curves of a falling pump sweep each point once
 * Source   common-practice, as `pumpOfStrength`
 * Throws   RangeError where the point is at no head and no flow
 */
export function pumpStrength(given: { readonly curve: PumpCurve; readonly point: PumpPoint }): number {
  const { head_m: H, flow_m3_s: Q } = given.point
  positive('pumpStrength', { 'H + Q': Math.max(H, 0) + Math.max(Q, 0) })
  const head = compiledPump(given.curve)
  const short = (s: number) => s * head(Q / s).head_m - H
  let high = 1
  while (short(high) < 0 && high < 1e6) high *= 2
  let low = high / 2
  while (short(low) > 0 && low > 1e-6) low /= 2
  return root({ of: short, low, high, within: 1e-12 })
}
