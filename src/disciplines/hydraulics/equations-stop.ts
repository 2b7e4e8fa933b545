import { notNegative, positive, share } from './possible.ts'

/**
 * Water in a full round tube.
 *
 *   V = (π/4) D² L
 *
 * Symbols  V volume [m³], D bore [m], L length [m]
 * Valid    full tube
 * Source   Hydrostatics, cylinder
 * Throws   RangeError where D is not positive or L negative
 */
export function tubeVolume(given: { readonly bore_m: number; readonly length_m: number }): number {
  const { bore_m: D, length_m: L } = given
  positive('tubeVolume', { D })
  notNegative('tubeVolume', { L })
  return (Math.PI / 4) * D * D * L
}

/** Where the water is that the reservoir has lent to the tower while the pump runs. */
export interface HeldWater {
  readonly riser_m3: number
  readonly pool_m3: number
  readonly film_m3: number
  readonly roots_m3: number
  /** A check valve keeps the riser full. */
  readonly checkValve: boolean
}

/**
 * Water that returns to the reservoir when the pump stops.
 *
 *   V = V_riser (none with a check valve) + V_pool + V_film + V_roots
 *
 * Symbols  V volumes [m³]
 * Valid    all of it, in the end: roots let go over hours, so this is the safe number for the rim
 * Source   Hydrostatics, conservation of water
 * Throws   RangeError where a volume is negative
 */
export function drainBack(given: HeldWater): number {
  const { riser_m3, pool_m3, film_m3, roots_m3, checkValve } = given
  notNegative('drainBack', { riser_m3, pool_m3, film_m3, roots_m3 })
  return (checkValve ? 0 : riser_m3) + pool_m3 + film_m3 + roots_m3
}

/**
 * Time from the start of the pump until water leaves the top.
 *
 *   t = V/Q
 *
 * Symbols  t time [s], V empty volume of riser and pool [m³], Q flow [m³/s]
 * Valid    flow at the full lift: the first litres come faster, so this is the safe number
 * Source   Hydrostatics, conservation of water
 * Throws   RangeError where Q is not positive or V negative
 */
export function fillTime(given: { readonly empty_m3: number; readonly flow_m3_s: number }): number {
  const { empty_m3: V, flow_m3_s: Q } = given
  positive('fillTime', { Q })
  notNegative('fillTime', { V })
  return V / Q
}

/**
 * Time from the stop of the water until the plants of a tower have used what they can reach.
 *
 *   t = u V/E
 *
 * Symbols  t time [s], V water held at the plant by cup, plug and roots [m³], u share that roots can take [1],
 *          E thirst of the plant [m³/s]
 * Valid    thirst of the hour meant; a plant wilts before the last of it is gone
 * Source   Hydrostatics, conservation of water
 * Throws   RangeError where E is not positive, V negative, or u outside 0 to 1
 */
export function timeToDry(given: {
  readonly held_m3: number
  readonly usableShare: number
  readonly thirst_m3_s: number
}): number {
  const { held_m3: V, usableShare: u, thirst_m3_s: E } = given
  positive('timeToDry', { E })
  notNegative('timeToDry', { V })
  share('timeToDry', { u })
  return (u * V) / E
}

/**
 * Longest pause of a timer that leaves a share of the water in hand.
 *
 *   t_off = (1 − r) t_dry
 *
 * Symbols  t_off pause [s], t_dry time to dry [s], r share kept in hand [1]
 * Valid    the hour of the greatest thirst
 * Source   Hydrostatics, conservation of water
 * Throws   RangeError where t_dry is negative or r outside 0 to 1
 */
export function longestPause(given: { readonly dry_s: number; readonly keptShare: number }): number {
  notNegative('longestPause', { dry_s: given.dry_s })
  share('longestPause', { r: given.keptShare })
  return (1 - given.keptShare) * given.dry_s
}

/**
 * Share of the time that a timer runs the pump.
 *
 *   t_on/(t_on + t_off)
 *
 * Symbols  t_on running time [s], t_off pause [s]
 * Valid    a running time that is longer than the fill time, or no water arrives
 * Source   Hydrostatics, by definition
 * Throws   RangeError where t_on is not positive or t_off negative
 */
export function dutyShare(given: { readonly on_s: number; readonly off_s: number }): number {
  positive('dutyShare', { t_on: given.on_s })
  notNegative('dutyShare', { t_off: given.off_s })
  return given.on_s / (given.on_s + given.off_s)
}
