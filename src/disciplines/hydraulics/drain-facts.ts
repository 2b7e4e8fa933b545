import { isKnown, type Known, needed } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { orificeDischarge } from '../../tables/hydraulic-orifices.ts'
import { drainRoughness } from '../../tables/hydraulic-walls.ts'
import { waterPathPractice } from '../../tables/water-path.ts'
import { distributorHead } from './equations-distributor.ts'
import { drainDepthShare } from './equations-drain.ts'
import { type Range, range } from './range.ts'

export interface DrainFacts {
  /** Water that stands over the foot: all holes open at the least flow, to the allowed share shut at the most. */
  readonly head_m: Range
  readonly cloggedShare: number
  /** Fewest holes of this drill that keep the water under the limit of practice. */
  readonly enough: number
  /** Depth over bore of the return pipe; null without one, 1 where it would run full. */
  readonly returnShare: number | null
}

function returnShare(plan: Plan, total_m3_s: number): number | null {
  const { bore_m, length_m, fall_m } = plan.drain ?? {}
  if (bore_m === undefined || length_m === undefined || fall_m === undefined) return null
  if (!(length_m > 0 && fall_m > 0)) return 1
  const manning = drainRoughness.rows.plastic.manningHigh
  return drainDepthShare({ flow_m3_s: total_m3_s, bore_m, slope: fall_m / length_m, manning }) ?? 1
}

export function drainFacts(plan: Plan, flow: Known<Range>, total: Known<Range>): Known<DrainFacts> {
  const given = needed({ count: ['drain/holes', plan.drain?.holes], hole_m: ['drain/hole', plan.drain?.hole_m] })
  if (!isKnown(given)) return given
  if (!isKnown(flow)) return flow
  const { count, hole_m } = given.known
  const cloggedShare = plan.drain?.clogged ?? waterPathPractice.rows.footClogged.value
  const discharge = orificeDischarge.rows.sharpEdge.dischargeLow
  const at = (flow_m3_s: number, shut: number) =>
    distributorHead({ flow_m3_s, count, discharge, hole_m, cloggedShare: shut })
  const head_m = range(at(flow.known.low, 0), at(flow.known.high, cloggedShare))
  const enough = Math.max(1, Math.ceil(count * Math.sqrt(head_m.high / waterPathPractice.rows.footWater.value)))
  return {
    known: {
      head_m,
      cloggedShare,
      enough,
      returnShare: returnShare(plan, isKnown(total) ? total.known.high : flow.known.high),
    },
  }
}
