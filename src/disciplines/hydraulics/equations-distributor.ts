import { root } from '../../kernel/solve.ts'
import { STANDARD_GRAVITY } from '../../tables/hydraulic-constants.ts'
import { fallingWater, orificeDischarge } from '../../tables/hydraulic-orifices.ts'
import { orificeFlow, orificeHead } from './equations-orifice.ts'
import { notNegative, positive, share } from './possible.ts'

/**
 * Head over the holes of a distributor of which a share is clogged.
 *
 *   h = (Q/(n (1 − b) Cd (π/4) d²))²/(2 g)
 *
 * Symbols  h head [m], Q flow [m³/s], n holes drilled [1], b share clogged [1], Cd discharge coefficient [1], d bore [m]
 * Valid    level plate; as `orificeFlow`
 * Source   Torricelli
 * Throws   RangeError where b is not below 1, or a symbol is impossible
 */
export function distributorHead(given: {
  readonly flow_m3_s: number
  readonly count: number
  readonly discharge: number
  readonly hole_m: number
  readonly cloggedShare: number
}): number {
  share('distributorHead', { b: given.cloggedShare })
  return orificeHead({ ...given, count: given.count * (1 - given.cloggedShare) })
}

/**
 * Height between the two edges of a plate that is out of level.
 *
 *   δ = D tan α
 *
 * Symbols  δ height from edge to edge [m], D diameter of the circle of holes [m], α lean [rad]
 * Valid    small lean
 * Source   Hydrostatics, tilted plate
 * Throws   RangeError where D is negative
 */
export function tiltHeight(given: { readonly circle_m: number; readonly lean_rad: number }): number {
  const { circle_m: D, lean_rad: α } = given
  notNegative('tiltHeight', { D })
  return D * Math.tan(Math.abs(α))
}

/**
 * Difference of flow between the lowest and the highest hole of a plate that is out of level, as a share of the mean.
 *
 *   ΔQ/Q = √(1 + δ/(2h)) − √max(0, 1 − δ/(2h)), near δ/(2h) for small δ
 *
 * Symbols  ΔQ/Q share [1], δ height from edge to edge [m], h head at the middle [m]
 * Valid    δ < 2h; beyond it the highest hole is dry
 * Source   Torricelli, at both edges
 * Throws   RangeError where h is not positive or δ negative
 */
export function tiltFlowShare(given: { readonly tiltHeight_m: number; readonly head_m: number }): number {
  const { tiltHeight_m: δ, head_m: h } = given
  positive('tiltFlowShare', { h })
  notNegative('tiltFlowShare', { δ })
  const x = δ / (2 * h)
  return Math.sqrt(1 + x) - Math.sqrt(Math.max(0, 1 - x))
}

/**
 * Flow of each hole of a circle on a plate that is out of level.
 *
 *   q_i = Cd a √(2 g max(0, h + (D/2) tan α cos(φ_i − φ_low))), Σ q_i = Q
 *
 * Symbols  q_i flow of a hole [m³/s], h head at the middle [m], D circle of holes [m], α lean [rad], φ angle [rad]
 * Valid    one pool over all holes
 * Source   Torricelli, with the pool level that passes the whole flow
 * Throws   RangeError where there is no hole, or a symbol is impossible
 */
export function holeFlows(given: {
  readonly flow_m3_s: number
  readonly angles_rad: readonly number[]
  readonly circle_m: number
  readonly lean_rad: number
  readonly toward_rad: number
  readonly discharge: number
  readonly hole_m: number
}): { readonly head_m: number; readonly flows_m3_s: readonly number[] } {
  const { flow_m3_s: Q, angles_rad, circle_m, lean_rad, toward_rad, discharge, hole_m } = given
  positive('holeFlows', { 'number of holes': angles_rad.length })
  notNegative('holeFlows', { Q, circle_m })
  const reach = (circle_m / 2) * Math.tan(Math.abs(lean_rad))
  const rises = angles_rad.map((φ) => reach * Math.cos(φ - toward_rad))
  // A hole passes its flow at one metre times the root of its head.
  const atOneMetre = orificeFlow({ count: 1, discharge, hole_m, head_m: 1 })
  const flows = (h: number) => rises.map((rise) => atOneMetre * Math.sqrt(Math.max(0, h + rise)))
  const level = (Q / (angles_rad.length * atOneMetre)) ** 2
  if (reach === 0) return { head_m: level, flows_m3_s: flows(level) }
  if (Q === 0) return { head_m: -reach, flows_m3_s: angles_rad.map(() => 0) }
  const over = (h: number) => {
    let sum = -Q
    for (const rise of rises) if (h + rise > 0) sum += atOneMetre * Math.sqrt(h + rise)
    return sum
  }
  // At this head even the highest hole has the head of a level plate, so all together pass at least the flow.
  const high = level + reach
  const head_m =
    wettedHead({ rises, atOneMetre, Q, start: level }) ?? root({ of: over, low: -reach, high, within: 1e-12 })
  return { head_m, flows_m3_s: flows(head_m) }
}

const NEWTON_STEPS = 8

/** Head by Newton while every hole stays under water: the sum of roots is concave there. Null where one runs dry. */
function wettedHead(given: {
  readonly rises: readonly number[]
  readonly atOneMetre: number
  readonly Q: number
  readonly start: number
}): number | null {
  const { rises, atOneMetre, Q } = given
  let h = given.start
  for (let step = 0; step < NEWTON_STEPS; step++) {
    let [sum, slope] = [-Q, 0]
    for (const rise of rises) {
      if (!(h + rise > 0)) return null
      const q = atOneMetre * Math.sqrt(h + rise)
      sum += q
      slope += q / (2 * (h + rise))
    }
    const change = sum / slope
    h -= change
    if (Math.abs(change) <= 1e-13) return rises.every((rise) => h + rise > 0) ? h : null
  }
  return null
}

/**
 * Flow at which a distributor stands full to its rim or to its inner overflow.
 *
 *   Q = n (1 − b) Cd (π/4) d² √(2 g H)
 *
 * Symbols  Q flow [m³/s], H depth of the cup over the holes [m], n holes drilled [1], b share clogged [1], Cd discharge
 *          coefficient [1], d bore of a hole [m]
 * Valid    level plate
 * Source   Torricelli
 * Throws   RangeError where a symbol is impossible
 */
export function fillingFlow(given: {
  readonly depth_m: number
  readonly count: number
  readonly discharge: number
  readonly hole_m: number
  readonly cloggedShare: number
}): number {
  share('fillingFlow', { b: given.cloggedShare })
  return orificeFlow({ ...given, count: given.count * (1 - given.cloggedShare), head_m: given.depth_m })
}

/** Weir and mouth alike: the low end, so that the pipe is not trusted with more than it takes. */
const RIM = orificeDischarge.rows.overflowRim.dischargeLow

/**
 * Flow that an upright pipe inside the distributor takes down when the water stands over its mouth.
 *
 *   Q = min( (2/3) Cw √(2 g) π D H^1.5, Cd (π/4) D² √(2 g H) )
 *
 * Symbols  Q flow [m³/s], D bore of the overflow pipe [m], H water over its mouth [m], Cw = Cd coefficient of the rim [1]
 * Valid    free fall below, no lid on the mouth; the rim is a weir while H is below about D/4, a mouth above
 * Source   from-memory, weir along a round crest
 * Throws   RangeError where D is not positive or H negative
 */
export function overflowPipeFlow(given: { readonly bore_m: number; readonly over_m: number }): number {
  const { bore_m: D, over_m: H } = given
  positive('overflowPipeFlow', { D })
  notNegative('overflowPipeFlow', { H })
  const weir = (2 / 3) * RIM * Math.sqrt(2 * STANDARD_GRAVITY) * Math.PI * D * H ** 1.5
  const mouth = RIM * (Math.PI / 4) * D * D * Math.sqrt(2 * STANDARD_GRAVITY * H)
  return Math.min(weir, mouth)
}

/**
 * Water over the mouth of an upright overflow pipe that takes a flow.
 *
 *   H = max( (Q/((2/3) Cw √(2 g) π D))^(2/3), (Q/(Cd (π/4) D²))²/(2 g) )
 *
 * Symbols  H water over the mouth [m], Q flow [m³/s], D bore [m]
 * Valid    as `overflowPipeFlow`
 * Source   from-memory, weir along a round crest
 * Throws   RangeError where D is not positive or Q negative
 */
export function overflowPipeHead(given: { readonly bore_m: number; readonly flow_m3_s: number }): number {
  const { bore_m: D, flow_m3_s: Q } = given
  positive('overflowPipeHead', { D })
  notNegative('overflowPipeHead', { Q })
  const weir = (Q / ((2 / 3) * RIM * Math.sqrt(2 * STANDARD_GRAVITY) * Math.PI * D)) ** (2 / 3)
  return Math.max(weir, orificeHead({ flow_m3_s: Q, count: 1, discharge: RIM, hole_m: D }))
}

/**
 * How far a jet from a hole in the wall flies before it has fallen a height.
 *
 *   x = 2 Cv √(h y)
 *
 * Symbols  x reach [m], h head over the hole's centre [m], y fall [m], Cv share of the speed that is left [1]
 * Valid    hole in an upright wall, a jet and not drops
 * Source   Torricelli, with free fall; Cv from memory
 * Throws   RangeError where h or y is negative
 */
export function jetReach(given: { readonly head_m: number; readonly fall_m: number }): number {
  const { head_m: h, fall_m: y } = given
  notNegative('jetReach', { h, y })
  return 2 * fallingWater.rows.jetSpeedShare.value * Math.sqrt(h * y)
}
