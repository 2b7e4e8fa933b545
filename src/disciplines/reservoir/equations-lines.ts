import type { Quantity } from '../../kernel/units.ts'
import { band } from '../../kernel/units.ts'
import { type Standing, solutionLevel, solutionVolume, type Vessel, vesselDepth } from './vessel.ts'

interface Filled {
  readonly vessel: Vessel
  readonly standing: readonly Standing[]
}

/** A line on the tank, seen with the pump running and with everything drained back. */
export interface Line {
  readonly running_m: number
  readonly stopped_m: number
  /** Solution in the tank while the pump runs. */
  readonly running_m3: number
}

/**
 * Highest level that survives drain-back: when the pump stops, riser, cup, film and roots run back, and the level must
 * still stay below the rim by the freeboard. Null where the vessel cannot take what comes back.
 *
 *   V(h_stopped) = V(h_running) + V_back, h_stopped = H - f
 *
 * Symbols  V solution at a level [m3], h level [m], V_back what runs back [m3], H depth [m], f freeboard [m]
 * Valid    vessel standing level
 * Source   derived.volumes, balance of volume between pump on and pump off
 * Throws   RangeError where freeboard or drain-back is negative or the freeboard is more than the depth
 */
export function fillLine(given: Filled & { readonly freeboard_m: number; readonly drainBack_m3: number }): Line | null {
  const { vessel, standing, freeboard_m: f, drainBack_m3 } = given
  const stopped_m = vesselDepth(vessel) - f
  if (!(f >= 0 && stopped_m > 0)) throw new RangeError(`fillLine: f = ${f} leaves no depth`)
  if (!(drainBack_m3 >= 0)) throw new RangeError(`fillLine: V_back = ${drainBack_m3} is negative`)
  const running_m3 = solutionVolume({ vessel, standing, level_m: stopped_m }) - drainBack_m3
  if (running_m3 < 0) return null
  return { running_m: solutionLevel({ vessel, standing, volume_m3: running_m3 }), stopped_m, running_m3 }
}

/**
 * Lowest level at which the pump stays covered after a start, when riser, cup, film and roots have filled from the
 * tank. Null where the vessel cannot hold so much.
 *
 *   h_running = h_pump, V(h_stopped) = V(h_pump) + V_up
 *
 * Symbols  h_pump depth that the pump needs [m], V solution at a level [m3], V_up what a start draws up [m3]
 * Valid    vessel standing level
 * Source   derived.volumes, balance of volume between pump off and pump on
 * Throws   RangeError where the pump's depth lies outside of the vessel or the volume drawn up is negative
 */
export function lowLine(given: Filled & { readonly pumpCover_m: number; readonly drawnUp_m3: number }): Line | null {
  const { vessel, standing, pumpCover_m: running_m, drawnUp_m3 } = given
  const depth = vesselDepth(vessel)
  if (!(running_m >= 0 && running_m <= depth))
    throw new RangeError(`lowLine: h_pump = ${running_m} lies outside of 0 to ${depth}`)
  if (!(drawnUp_m3 >= 0)) throw new RangeError(`lowLine: V_up = ${drawnUp_m3} is negative`)
  const running_m3 = solutionVolume({ vessel, standing, level_m: running_m })
  const stopped_m3 = running_m3 + drawnUp_m3
  if (stopped_m3 > solutionVolume({ vessel, standing, level_m: depth })) return null
  return { running_m, stopped_m: solutionLevel({ vessel, standing, volume_m3: stopped_m3 }), running_m3 }
}

/**
 * Solution that may be used between the fill line and the low line, both seen with the pump running. Negative where
 * the low line lies above the fill line.
 *
 *   V_use = V(h_fill) - V(h_low)
 *
 * Symbols  V_use usable volume [m3], V solution at a level [m3], h_fill and h_low levels, pump running [m]
 * Valid    vessel standing level
 * Source   derived.volumes, difference of two levels
 * Throws   RangeError where a line holds a negative volume
 */
export function usableVolume({ fill, low }: { readonly fill: Line; readonly low: Line }): number {
  if (!(fill.running_m3 >= 0 && low.running_m3 >= 0))
    throw new RangeError(`usableVolume: V(h_fill) = ${fill.running_m3}, V(h_low) = ${low.running_m3}`)
  return fill.running_m3 - low.running_m3
}

/**
 * Days until the low line, as a band of the plants' thirst and of what else leaves the tank.
 *
 *   t = V_use/(n q + e)
 *
 * Symbols  t time [d], V_use usable volume [m3], n plants [1], q water of one plant [m3/d], e other loss [m3/d]
 * Valid    no top-up, no rain
 * Source   derived.volumes, volume over flow
 * Throws   RangeError where the volume is negative, or nothing leaves the tank
 */
export function daysBetweenTopUps(given: {
  readonly usable_m3: number
  readonly plants: number
  readonly perPlant: { readonly low_m3_d: number; readonly high_m3_d: number }
  readonly otherLoss_m3_d?: number
}): Quantity {
  const { usable_m3: V, plants: n, perPlant, otherLoss_m3_d: e = 0 } = given
  const [slow, fast] = [n * perPlant.low_m3_d + e, n * perPlant.high_m3_d + e]
  if (!(V >= 0)) throw new RangeError(`daysBetweenTopUps: V_use = ${V} is negative`)
  if (!(slow > 0 && fast >= slow)) throw new RangeError(`daysBetweenTopUps: use of ${slow} to ${fast} m3/d is no use`)
  return band(V / fast, V / slow, 'd')
}

/**
 * Depth of the dip stick at round volumes, to be marked from its foot: the stick stands on the bottom.
 *
 *   V(h_i) = i ΔV, i = 1, 2, … up to the volume at the highest level
 *
 * Symbols  h_i level of mark i [m], ΔV volume from mark to mark [m3]
 * Valid    vessel standing level; volumes without the stick itself
 * Source   derived.volumes, level solved for volume
 * Throws   RangeError where the step is not positive or would need more than 500 marks
 */
export function dipStickMarks(
  given: Filled & { readonly step_m3: number; readonly upTo_m: number },
): readonly { readonly volume_m3: number; readonly level_m: number }[] {
  const { vessel, standing, step_m3: step, upTo_m } = given
  const most = solutionVolume({ vessel, standing, level_m: upTo_m })
  // The slack keeps a mark that lies exactly on the highest level.
  const count = Math.floor(most / step + 1e-9)
  if (!(step > 0 && count <= 500)) throw new RangeError(`dipStickMarks: ΔV = ${step} gives no readable stick`)
  return Array.from({ length: count }, (_, i) => {
    const volume_m3 = Math.min((i + 1) * step, most)
    return { volume_m3, level_m: solutionLevel({ vessel, standing, volume_m3 }) }
  })
}
