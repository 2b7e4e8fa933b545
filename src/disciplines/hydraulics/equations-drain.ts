import { root } from '../../kernel/solve.ts'
import { pipeLoss } from './equations-friction.ts'
import { notNegative, positive } from './possible.ts'

/** Depth over bore at which a sloped drain carries the most it should be asked for: air must pass above the water. */
export const DRAIN_VALID = { fullestShare: 0.8 } as const

/**
 * Water that must stand over an outlet so that a full drain tube carries the flow.
 *
 *   h = (K_in + K_out + f L/D) v²/(2 g)
 *
 * Symbols  h head from free surface to the end of the tube [m], K losses at both ends and fittings [1], L length [m],
 *          D bore [m], v speed [m/s]
 * Valid    tube full; its own fall counts toward h
 * Source   Maurer.Hydraulics, chapter 4, Darcy-Weisbach
 * Throws   RangeError as `pipeLoss`
 */
export function outletHead(given: {
  readonly flow_m3_s: number
  readonly length_m: number
  readonly bore_m: number
  readonly roughness_m: number
  readonly fittingLoss: number
  readonly viscosity_m2_s: number
}): number {
  return pipeLoss(given)
}

/**
 * Flow of a sloped drain that runs part full.
 *
 *   Q = A R^(2/3) √S/n, A = D² (θ − sin θ)/8, R = A/(D θ/2), θ = 2 acos(1 − 2 y/D)
 *
 * Symbols  Q flow [m³/s], A wet section [m²], R hydraulic radius [m], S fall per length [1], n Manning roughness
 *          [s/m^(1/3)], D bore [m], y/D depth over bore [1]
 * Valid    settled flow, open to the air; small smooth drains carry a little more
 * Source   Manning1891, velocity equation
 * Throws   RangeError where D or n is not positive, or S negative, or y/D outside 0 to 1
 */
export function drainFlow(given: {
  readonly bore_m: number
  readonly depthShare: number
  readonly slope: number
  readonly manning: number
}): number {
  const { bore_m: D, depthShare: y, slope: S, manning: n } = given
  positive('drainFlow', { D, n })
  notNegative('drainFlow', { S, 'y/D': y, '1 − y/D': 1 - y })
  if (y === 0) return 0
  const θ = 2 * Math.acos(1 - 2 * y)
  const A = (D * D * (θ - Math.sin(θ))) / 8
  const R = A / ((D * θ) / 2)
  return (A * R ** (2 / 3) * Math.sqrt(S)) / n
}

/**
 * Depth over bore at which a sloped drain carries a flow; null where it would run fuller than it should.
 *
 *   Q(y/D) = Q, solved for y/D
 *
 * Symbols  y/D depth over bore [1], Q flow [m³/s]
 * Valid    y/D ≤ 0.8
 * Source   Manning1891, velocity equation
 * Throws   RangeError as `drainFlow`
 */
export function drainDepthShare(given: {
  readonly flow_m3_s: number
  readonly bore_m: number
  readonly slope: number
  readonly manning: number
}): number | null {
  const { flow_m3_s: Q } = given
  notNegative('drainDepthShare', { Q })
  const of = (depthShare: number) => drainFlow({ ...given, depthShare }) - Q
  if (Q === 0) return 0
  if (of(DRAIN_VALID.fullestShare) < 0) return null
  return root({ of, low: 0, high: DRAIN_VALID.fullestShare, within: 1e-12 })
}

/**
 * Flow that an upright drain takes as a film on its wall, with air in the middle.
 *
 *   Q = 27.8 r^(5/3) D^(8/3), Q in US gal/min, D in inches
 *
 * Symbols  Q flow [m³/s], r share of the section that is water [1], D bore [m]
 * Valid    r 1/4 to 1/3: more water shuts the air core and the drain gulps
 * Source   WylyEaton1961, stack capacity, from memory
 * Throws   RangeError where D or r is not positive
 */
export function stackCapacity(given: { readonly bore_m: number; readonly waterShare: number }): number {
  const { bore_m: D, waterShare: r } = given
  positive('stackCapacity', { D, r })
  const gallonsPerMinute = 27.8 * r ** (5 / 3) * (D / 0.0254) ** (8 / 3)
  return (gallonsPerMinute * 3.785411784e-3) / 60
}
