/** Hole counts and drills that satisfy all that a distributor must: run as jets, bear a lean, and not flood when clogged. */
import { distributorHead, tiltFlowShare, tiltHeight } from './equations-distributor.ts'
import { startHead } from './equations-orifice.ts'
import type { Water } from './equations-water.ts'

export interface DistributorWish {
  readonly flow_m3_s: number
  readonly water: Water
  readonly discharge: number
  /** Depth of the cup over the holes, less the freeboard to be kept. */
  readonly depth_m: number
  /** Circle on which holes of a drill would stand. */
  readonly circleOf: (hole_m: number) => number
  readonly lean_rad: number
  readonly cloggedShare: number
  /** Largest difference of flow between the low and the high side, as a share. */
  readonly tiltShare: number
  readonly smallestHole_m: number
  readonly leastCount: number
  /** Distance that must be left between two holes, edge to edge. */
  readonly web_m: number
  readonly drills_m: readonly number[]
}

export interface DistributorChoice {
  readonly hole_m: number
  readonly circle_m: number
  readonly count: number
  readonly head_m: number
  readonly cloggedHead_m: number
  readonly startHead_m: number
  readonly tiltShare: number
  /** How far the nearest limit is, as a ratio of at least 1: the larger, the more there is in hand. */
  readonly margin: number
}

function choice(wish: DistributorWish, hole_m: number, count: number): DistributorChoice {
  const { flow_m3_s, discharge, cloggedShare } = wish
  const head_m = distributorHead({ flow_m3_s, count, discharge, hole_m, cloggedShare: 0 })
  const cloggedHead_m = distributorHead({ flow_m3_s, count, discharge, hole_m, cloggedShare })
  const startHead_m = startHead({ hole_m, ...wish.water })
  const circle_m = wish.circleOf(hole_m)
  const tiltHeight_m = tiltHeight({ circle_m, lean_rad: wish.lean_rad })
  const tiltShare = tiltFlowShare({ tiltHeight_m, head_m })
  const tiltMargin = tiltShare === 0 ? Number.POSITIVE_INFINITY : wish.tiltShare / tiltShare
  const margin = Math.min(head_m / startHead_m, tiltMargin, wish.depth_m / cloggedHead_m)
  return { hole_m, circle_m, count, head_m, cloggedHead_m, startHead_m, tiltShare, margin }
}

/** All pairs of drill and count that hold, the one with most in hand first; for equal margins the larger hole. */
export function distributorChoices(wish: DistributorWish): readonly DistributorChoice[] {
  if (!(wish.flow_m3_s > 0)) return []
  const found: DistributorChoice[] = []
  for (const hole_m of wish.drills_m) {
    if (hole_m < wish.smallestHole_m) continue
    const most = Math.floor((Math.PI * wish.circleOf(hole_m)) / (hole_m + wish.web_m))
    for (let count = Math.max(1, wish.leastCount); count <= most; count++) {
      const c = choice(wish, hole_m, count)
      if (c.margin >= 1) found.push(c)
    }
  }
  return found.sort((a, b) => b.margin - a.margin || b.hole_m - a.hole_m)
}
