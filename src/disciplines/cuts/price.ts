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

/** Kinds by worth per metre, and for each place in that order the shortest and the dearest kind from there on. */
function ranked(model: Model, supply: Counts, pieces: Float64Array) {
  const { kinds } = model
  const density = Float64Array.from(pieces, (p, i) => p / kinds[i]!.least_m)
  const order = kinds.flatMap((_, i) => (pieces[i]! > 0 && supply[i]! > 0 ? [i] : []))
  order.sort((a, b) => density[b]! - density[a]! || a - b)
  const shortest = new Float64Array(order.length)
  const dearest = new Float64Array(order.length)
  for (let at = order.length - 1; at >= 0; at--) {
    shortest[at] = Math.min(kinds[order[at]!]!.least_m, shortest[at + 1] ?? Number.POSITIVE_INFINITY)
    dearest[at] = Math.max(pieces[order[at]!]!, dearest[at + 1] ?? 0)
  }
  return { order, density, shortest, dearest }
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
  const { order, density, shortest, dearest } = ranked(model, supply, pieces)
  const filling = emptyFilling(model)
  const counts = new Int32Array(kinds.length)
  const slack = SLACK * Math.max(beat, 1e-3)
  const full_m = capacity_m + ROUNDING_M
  let [best, bestCounts]: [number, Counts | null] = [beat, null]
  let steps = most_count
  /** Best that fillings passed over for want of steps could be worth. */
  let given = 0

  // Worth of the room left if pieces could be split.
  const fractional = (from: number, room_m: number): number => {
    let sum = 0
    for (let at = from, left_m = room_m; at < order.length && left_m > 0; at++) {
      const i = order[at]!
      const part_m = Math.min(left_m, supply[i]! * kinds[i]!.least_m)
      sum += part_m * density[i]!
      left_m -= part_m
    }
    return sum
  }
  const walk = (from: number, worth: number, least_m: number): void => {
    if (worth > best + slack) {
      best = worth
      bestCounts = counts.slice()
    }
    let at = from
    // Stubs are not passed over here: beside an odd one they may take less than their least.
    while (
      at < order.length &&
      kinds[order[at]!]!.role === 'alone' &&
      kinds[order[at]!]!.own_m + filling.taken_m > full_m
    )
      at++
    if (at === order.length) return
    const room_m = full_m - least_m
    const few = Math.floor(room_m / shortest[at]!) * dearest[at]!
    const hope = worth + Math.min(few, fractional(at, room_m))
    if (hope <= best + slack) return
    if (steps <= 0) {
      given = Math.max(given, hope)
      return
    }
    steps--
    const i = order[at]!
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
  return { worth: best, atMost: Math.max(best, given) + slack, counts: bestCounts }
}
