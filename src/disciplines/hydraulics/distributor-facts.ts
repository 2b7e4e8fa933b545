import { root } from '../../kernel/solve.ts'
import { isKnown, type Known, needed } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { measuresOf } from '../../plan/tape.ts'
import { drills } from '../../tables/drills.ts'
import { distributorPractice, orificeDischarge } from '../../tables/hydraulic-orifices.ts'
import { waterPathPractice } from '../../tables/water-path.ts'
import { type DistributorChoice, distributorChoices } from './distributor-choice.ts'
import { fillingFlow, overflowPipeFlow, tiltFlowShare, tiltHeight } from './equations-distributor.ts'
import { holeWeber, jetRegime, orificeFlow, startHead } from './equations-orifice.ts'
import { circleFor } from './plate-room.ts'
import { type Range, range } from './range.ts'
import type { SolutionWater } from './temperature.ts'

export interface DistributorFacts {
  readonly kind: 'cup' | 'ring'
  readonly count: number
  readonly hole_m: number
  readonly circle_m: number
  /** Depth over the holes up to where water leaves on the outside. */
  readonly depth_m: number
  /** Water over the holes at the flow of the column. */
  readonly head_m: Range
  /** Water over the holes at the flow that is wanted; null where none is stated. */
  readonly neededHead_m: number | null
  readonly cloggedShare: number
  /** The same with the allowed share of holes shut. */
  readonly neededCloggedHead_m: number | null
  /** Flow at which it stands full: all holes open, and with the allowed share shut. */
  readonly full_m3_s: number
  readonly fullClogged_m3_s: number
  /** Flow that its own inner overflow takes when it stands full; null without one. */
  readonly overflow_m3_s: number | null
  readonly startHead_m: number
  /** At the least flow and the widest jet: the safe end. */
  readonly leastHead_m: number
  readonly weber: number
  readonly regime: 'drips' | 'either' | 'jets'
  readonly lean_rad: number
  readonly tiltHeight_m: number
  /** Flow from low side to high side over the mean, at the flow wanted. */
  readonly tiltShare: number
  /** Water that stands in one distributor while the pump runs. */
  readonly pool_m3: Range
}

const DISCHARGE = orificeDischarge.rows.drilledPlastic

interface Plate {
  readonly count: number
  readonly hole_m: number
  readonly depth_m: number
  readonly overflow: { readonly bore_m: number; readonly height_m: number } | null
}

const passed = (p: Plate, head_m: number, open: number, discharge: number): number =>
  orificeFlow({ count: p.count * open, discharge, hole_m: p.hole_m, head_m }) +
  (p.overflow === null
    ? 0
    : overflowPipeFlow({ bore_m: p.overflow.bore_m, over_m: Math.max(0, head_m - p.overflow.height_m) }))

/** Water over the holes at which holes and inner overflow together pass a flow. */
function standing(p: Plate, flow_m3_s: number, open: number, discharge: number): number {
  if (flow_m3_s <= 0) return 0
  let high = Math.max(p.depth_m, 1e-3)
  while (passed(p, high, open, discharge) < flow_m3_s) high *= 2
  return root({ of: (h) => passed(p, h, open, discharge) - flow_m3_s, low: 0, high, within: 1e-7 })
}

/** Twist drills of the maker's own system, as a plate needs them. */
export function plateDrills(plan: Plan): readonly { readonly label: string; readonly diameter_m: number }[] {
  const system = measuresOf(plan)
  const { largestDrill } = waterPathPractice.rows
  return Object.values(drills.rows).filter(
    (d) =>
      d.kind === 'twist drill' &&
      d.system === system &&
      d.diameter_m >= distributorPractice.rows.smallestHole.value &&
      d.diameter_m <= largestDrill.value,
  )
}

/** What spreads the water; null for a single tee, which has no plate to stand on. */
export function distributorFacts(
  plan: Plan,
  given: { readonly flow: Known<Range>; readonly water: SolutionWater; readonly bore_m: number | null },
): Known<DistributorFacts | null> {
  const d = plan.distributor
  const kind = needed({ kind: ['distributor/kind', d?.kind] })
  if (!isKnown(kind)) return kind
  if (kind.known.kind === 'tee') return { known: null }
  const ring = kind.known.kind === 'ring'
  const own = needed({
    count: ['distributor/holes', d?.holes],
    hole_m: ['distributor/hole', d?.hole_m],
    depth_m: ['distributor/depth', d?.depth_m],
    circle_m: ['distributor/circle', d?.circle_m ?? (ring ? (given.bore_m ?? undefined) : undefined)],
  })
  if (!isKnown(own)) return own
  if (!isKnown(given.flow)) return given.flow
  const { count, hole_m, depth_m, circle_m } = own.known
  const overflow =
    d?.overflow_m !== undefined && d.overflow_m > 0
      ? { bore_m: d.overflow_m, height_m: d.overflowHeight_m ?? depth_m }
      : null
  const plate: Plate = { count, hole_m, depth_m, overflow }
  const { low, high } = given.flow.known
  const cloggedShare = d?.clogged ?? distributorPractice.rows.cloggedShare.value
  const lean_rad = d?.tilt_rad ?? distributorPractice.rows.tiltAllowance.value
  const safe = DISCHARGE.dischargeLow
  const head_m = range(standing(plate, low, 1, safe), standing(plate, high, 1, safe))
  const wanted = plan.riser?.neededFlow_m3_s
  const leastHead_m = standing(plate, low, 1, DISCHARGE.dischargeHigh)
  const hole = { hole_m, ...given.water.cold }
  const weber = holeWeber({ ...hole, head_m: leastHead_m })
  const neededHead_m = wanted === undefined ? null : standing(plate, wanted, 1, safe)
  const tiltHeight_m = tiltHeight({ circle_m, lean_rad })
  const tiltHead = neededHead_m ?? head_m.low
  const area_m2 = (Math.PI / 4) * (d?.diameter_m ?? circle_m) ** 2
  const holes = { depth_m, count, discharge: safe, hole_m }
  return {
    known: {
      kind: ring ? 'ring' : 'cup',
      count,
      hole_m,
      circle_m,
      depth_m,
      head_m,
      neededHead_m,
      cloggedShare,
      neededCloggedHead_m: wanted === undefined ? null : standing(plate, wanted, 1 - cloggedShare, safe),
      full_m3_s: passed(plate, depth_m, 1, safe),
      fullClogged_m3_s:
        fillingFlow({ ...holes, cloggedShare }) +
        (passed(plate, depth_m, 1, safe) - fillingFlow({ ...holes, cloggedShare: 0 })),
      overflow_m3_s:
        overflow === null
          ? null
          : overflowPipeFlow({ bore_m: overflow.bore_m, over_m: Math.max(0, depth_m - overflow.height_m) }),
      startHead_m: startHead(hole),
      leastHead_m,
      weber,
      regime: jetRegime({ weber }),
      lean_rad,
      tiltHeight_m,
      tiltShare: tiltHead > 0 ? tiltFlowShare({ tiltHeight_m, head_m: tiltHead }) : Math.SQRT2,
      pool_m3: range(area_m2 * Math.min(head_m.low, depth_m), area_m2 * Math.min(head_m.high, depth_m)),
    },
  }
}

/** Counts and drills that satisfy all at once, the one with most in hand first, one a drill; sought when asked for. */
export function distributorSuggestions(
  plan: Plan,
  given: { readonly facts: DistributorFacts; readonly most_m3_s: number; readonly water: SolutionWater },
): readonly DistributorChoice[] {
  const { depth_m, circle_m, lean_rad, cloggedShare } = given.facts
  const flow_m3_s = plan.riser?.neededFlow_m3_s ?? given.most_m3_s
  const { tiltShare, holeWeb, fewestHoles } = waterPathPractice.rows
  const all = distributorChoices({
    flow_m3_s,
    water: given.water.cold,
    discharge: DISCHARGE.dischargeLow,
    depth_m,
    circleOf: circleFor(plan, circle_m),
    lean_rad,
    cloggedShare,
    tiltShare: tiltShare.value,
    smallestHole_m: distributorPractice.rows.smallestHole.value,
    leastCount: fewestHoles.value,
    web_m: holeWeb.value,
    drills_m: plateDrills(plan).map((x) => x.diameter_m),
  })
  // What the unthrottled pump gives must not flood it either.
  const safe = all.filter((c) => c.head_m * (given.most_m3_s / flow_m3_s) ** 2 <= depth_m)
  const seen = new Set<number>()
  return safe.filter((c) => !seen.has(c.hole_m) && seen.add(c.hole_m))
}
