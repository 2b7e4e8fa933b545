import { ROUNDING_M } from './equations.ts'
import type { Model } from './model.ts'

/** Most sums of sticks looked at; with more the cost is not rounded up, and bounds are only a little weaker. */
const MOST_SUMS = 20_000

const SLACK = 1e-9

interface Sum {
  readonly cost: number
  readonly room_m: number
}

/** Every way to buy sticks that costs no more than `most`, as cost and room; null where there are too many. */
function sums(model: Model, most: number): readonly Sum[] | null {
  const shop = model.bins.filter((b) => b.from !== 'hand')
  const list: Sum[] = []
  const walk = (from: number, cost: number, room_m: number): void => {
    if (list.length > MOST_SUMS) return
    if (from === shop.length) {
      list.push({ cost, room_m })
      return
    }
    const bin = shop[from]!
    for (let n = 0; cost + n * bin.cost <= most + SLACK && list.length <= MOST_SUMS; n++)
      walk(from + 1, cost + n * bin.cost, room_m + n * bin.capacity_m)
  }
  walk(0, 0, 0)
  return list.length > MOST_SUMS ? null : list.sort((a, b) => a.cost - b.cost)
}

export interface Attainable {
  /** Least cost, at or above a bound, of sticks with room for all pieces. */
  readonly atLeast: (bound: number) => number
  /** Greatest cost below one. */
  readonly below: (cost: number) => number
}

/** Costs that whole sticks can have: bounds are rounded up to these. */
export function attainable(model: Model, most: number, need_m: number): Attainable {
  const list = sums(model, most)
  const slack = SLACK * Math.max(1, most)
  if (list === null) return { atLeast: (bound) => bound, below: (cost) => cost - 2 * slack }
  return {
    atLeast: (bound) => list.find((s) => s.cost >= bound - slack && s.room_m >= need_m - ROUNDING_M)?.cost ?? most,
    below: (cost) => list.findLast((s) => s.cost < cost - slack)?.cost ?? Number.NEGATIVE_INFINITY,
  }
}
