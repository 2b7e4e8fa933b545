import { ROUNDING_M } from './equations.ts'
import type { Model } from './model.ts'
import { add, type Counts, emptyFilling, takeOff } from './room.ts'

/** Steps that one pricing may take before it settles for a bound. */
const MOST_STEPS = 20_000

interface Priced {
  /** Worth of the best filling found. */
  readonly worth: number
  /** No filling is worth more than this. */
  readonly atMost: number
  readonly counts: Counts
}

/** The filling of one stick that is worth most: a knapsack by branch and bound, densest kinds first. */
export function worthiest(model: Model, supply: Counts, pieces: Float64Array, capacity_m: number): Priced {
  const density = (i: number) => pieces[i]! / model.kinds[i]!.least_m
  const order = model.kinds.flatMap((_, i) => (pieces[i]! > 0 && supply[i]! > 0 ? [i] : []))
  order.sort((a, b) => density(b) - density(a) || a - b)
  const filling = emptyFilling(model)
  const counts = new Int32Array(model.kinds.length)
  let best = 0
  let bestCounts = counts.slice()
  let steps = MOST_STEPS
  const bound = order.length > 0 ? density(order[0]!) * capacity_m : 0

  const walk = (at: number, worth: number, least_m: number): void => {
    if (worth > best + 1e-12) {
      best = worth
      bestCounts = counts.slice()
    }
    if (at === order.length || steps <= 0) return
    steps--
    const i = order[at]!
    if (worth + (capacity_m - least_m) * density(i) <= best + 1e-12) return
    const kind = model.kinds[i]!
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
  return {
    worth: best,
    atMost: steps > 0 ? best + 1e-12 : Math.max(best, bound * (1 + ROUNDING_M)),
    counts: bestCounts,
  }
}
