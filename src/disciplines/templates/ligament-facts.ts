import type { LayoutFacts, Neighbour } from '../layout/index.ts'
import { outsideLigament, ringLigament, wallLigament } from './equations.ts'
import type { JointFacts } from './joint-facts.ts'

/** Wall left between a hole and its neighbours. */
export interface LigamentFacts {
  /** Between neighbours of one ring, round the outside; null for one site a ring or a helix. Negative: the holes run together. */
  readonly ring_m: number | null
  /** Least distance on the unrolled outside to any neighbour, and which it is. */
  readonly least_m: number
  readonly nearest: Neighbour | null
  /** Least distance on the unrolled outside to a site that is not of the same ring; null where there is none near. */
  readonly other_m: number | null
  /** Least distance straight through the wall to that neighbour. */
  readonly through_m: number
}

export function ligamentFacts(joint: JointFacts, layout: LayoutFacts): LigamentFacts {
  const { hole, cut } = joint
  const ring = layout.neighbours.find((n) => n.kind === 'ring')
  const ring_m = ring ? ringLigament({ hole, cut, turn_rad: ring.turn_rad }) : null
  const others = layout.neighbours.filter((n) => n.kind !== 'ring')
  let least_m = ring_m ?? Number.POSITIVE_INFINITY
  let nearest = ring ?? null
  let other_m: number | null = null
  for (const n of others) {
    const wall_m = outsideLigament({ hole, cut, turn_rad: n.turn_rad, rise_m: n.rise_m })
    if (other_m === null || wall_m < other_m) other_m = wall_m
    if (wall_m < least_m) [least_m, nearest] = [wall_m, n]
  }
  if (nearest === null)
    return { ring_m, least_m: layout.circumference_m, nearest, other_m, through_m: layout.circumference_m }
  const through_m = least_m <= 0 ? 0 : wallLigament({ hole, turn_rad: nearest.turn_rad, rise_m: nearest.rise_m })
  return { ring_m, least_m, nearest, other_m, through_m }
}
