import { filletUse } from '../../tables/consumables.ts'
import { waits } from '../../tables/joining.ts'
import { type CementJoint, cementJoint } from '../../tables/joining-times.ts'
import { practiceLengths } from '../../tables/practice.ts'
import type { Situation } from './situation.ts'

/** Why one step waits for another although nobody works. */
export type WaitFor = 'set' | 'water' | 'plants'

export interface JointWaits {
  /** Until the column may be turned and lifted. */
  readonly set_s: number
  /** Until water may touch the joint. */
  readonly water_s: number
  /** Until plants may stand in it. */
  readonly plants_s: number
  /** Until water may touch a bead of sealant laid over the joints. */
  readonly bead_s: number
  /** Times of the cement's own table at the coldest air; null where the table does not reach or nothing is cemented. */
  readonly cement: CementJoint | null
  /** Temperature for which the times hold; null where the plan does not say how cold it gets. */
  readonly at_C: number | null
  /** Whether damp air was counted with because the plan does not say how damp it is. */
  readonly countedDamp: boolean
}

const DAY_s = 86_400

/** Relative humidity that stands for an unstated one: saturated, so that the longer times hold. */
const UNSTATED_HUMIDITY = 1

/** Days until a bead of sealant is hard through, at the slower rate; the longer printed time is for thick beads. */
function beadWait(): number {
  const days = filletUse.rows.bead.leg_m / practiceLengths.rows['silicone-depth-per-day'].low_m
  return Math.max(waits.rows['silicone-water'].waitLow_s, days * DAY_s)
}

function cementWaits(s: Situation): JointWaits {
  const { airLow_C: at_C = null, humidity } = s.plan.place ?? {}
  const outside_m = s.templates?.joint.stubPipe.outside_m ?? s.plan.column?.stub?.pipe?.outside_m ?? null
  const size_m = s.method === 'fitting' ? (s.plan.column?.pipe?.outside_m ?? null) : outside_m
  const cement =
    at_C === null || size_m === null
      ? null
      : cementJoint({ outside_m: size_m, temperature_C: at_C, relativeHumidity: humidity ?? UNSTATED_HUMIDITY })
  const cure_s = cement?.cure_s.high ?? 0
  return {
    set_s: cement?.initialSet_s.high ?? 0,
    water_s: Math.max(cure_s, waits.rows['cement-fill'].waitHigh_s),
    plants_s: Math.max(cure_s, waits.rows['cement-plants'].waitHigh_s),
    bead_s: s.fillet ? beadWait() : 0,
    cement,
    at_C,
    countedDamp: humidity === undefined,
  }
}

/** How long the joints of the sites need before they are turned, filled and planted. */
export function jointWaits(s: Situation): JointWaits {
  const none = { bead_s: 0, cement: null, at_C: s.plan.place?.airLow_C ?? null, countedDamp: false }
  switch (s.joint) {
    case 'cement':
      return cementWaits(s)
    case 'silicone': {
      const bead_s = beadWait()
      return { ...none, set_s: waits.rows['silicone-skin'].waitHigh_s, water_s: bead_s, plants_s: bead_s }
    }
    case 'epoxy': {
      const { waitLow_s } = waits.rows['epoxy-water']
      return { ...none, set_s: waitLow_s, water_s: waitLow_s, plants_s: waits.rows['epoxy-water'].waitHigh_s }
    }
    default:
      return { ...none, set_s: 0, water_s: 0, plants_s: 0 }
  }
}
