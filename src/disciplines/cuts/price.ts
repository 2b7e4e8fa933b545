import { ROUNDING_M } from './equations.ts'
import type { Model } from './model.ts'
import { add, type Counts, emptyFilling, takeOff } from './room.ts'

/** Relative slack of worth. */
const SLACK = 1e-9

export interface Priced {
  /** Worth of the best filling found; what had to be beaten where none does. */
  readonly worth: number
  /** No filling is worth more than this. */
  readonly atMost: number
  /** The filling, or null where none beats what had to be beaten. */
  readonly counts: Counts | null
}

/**
 * The filling of one stick that is worth most, if it is worth more than `beat`: a knapsack by branch and bound,
 * densest kinds first.
 */
export function worthiest(
  model: Model,
  supply: Counts,
  pieces: Float64Array,
  capacity_m: number,
  beat: number,
  most_count: number,
): Priced {
  const { kinds } = model
  const density = Float64Array.from(pieces, (p, i) => p / kinds[i]!.least_m)
  const order = kinds.flatMap((_, i) => (pieces[i]! > 0 && supply[i]! > 0 ? [i] : []))
  order.sort((a, b) => density[b]! - density[a]! || a - b)
  const filling = emptyFilling(model)
  const counts = new Int32Array(kinds.length)
  const slack = SLACK * Math.max(beat, 1e-3)
  const full_m = capacity_m + ROUNDING_M
  let best = beat
  let bestCounts: Counts | null = null
  let steps = most_count

  const walk = (from: number, worth: number, least_m: number): void => {
    if (worth > best + slack) {
      best = worth
      bestCounts = counts.slice()
    }
    let at = from
    // A kind whose least length has no room cannot be added; stubs may fill less than their least beside an odd one.
    while (
      at < order.length &&
      kinds[order[at]!]!.role === 'alone' &&
      kinds[order[at]!]!.own_m + filling.taken_m > full_m
    )
      at++
    if (at === order.length || steps <= 0) return
    steps--
    const i = order[at]!
    if (worth + (full_m - least_m) * density[i]! <= best + slack) return
    const kind = kinds[i]!
    const marks = [filling.taken_m]
    while (counts[i]! < supply[i]! && add(model, filling, kind, capacity_m)) {
      counts[i]! += 1
      marks.push(filling.taken_m)
    }
    for (let n = counts[i]!; n >= 0; n--) {
      walk(at + 1, worth + n * pieces[i]!, least_m + n * kind.least_m)
      if (n === 0) break
      takeOff(filling, kind, 1, marks[n - 1]!)
      counts[i]! -= 1
    }
  }
  walk(0, 0, 0)
  const bound = order.length > 0 ? density[order[0]!]! * full_m : 0
  return { worth: best, atMost: steps > 0 ? best + slack : Math.max(best, bound) + slack, counts: bestCounts }
}
