import { ROUNDING_M } from './equations.ts'
import type { Model } from './model.ts'
import { add, type Counts, emptyFilling, type Filling, further, type Steps, takeOff } from './room.ts'

/** Most fillings kept at one node of the search; more make the node incomplete, and the plan says so. */
const MOST_FILLINGS = 4000

export interface Fillings {
  readonly list: readonly { readonly counts: Counts; readonly least_m: number }[]
  /** False where steps or room for the list ran out. */
  readonly complete: boolean
}

interface Task {
  readonly model: Model
  readonly rest: Counts
  readonly capacity_m: number
  /** Kind of which at least one must be on the stick. */
  readonly first: number
  /** Fillings that take less than this, counted at the least each piece can take, are of no use. */
  readonly atLeast_m: number
  readonly steps: Steps
}

/** Sum of the least lengths of all pieces left, from each kind on. */
function suffixes(model: Model, rest: Counts): Float64Array {
  const sums = new Float64Array(model.kinds.length + 1)
  for (let i = model.kinds.length - 1; i >= 0; i--) sums[i] = sums[i + 1]! + rest[i]! * model.kinds[i]!.least_m
  return sums
}

/** Whether another piece left would still fit. */
function hasRoom(task: Task, filling: Filling, counts: Counts): boolean {
  const room = task.capacity_m + ROUNDING_M - filling.taken_m
  return task.model.kinds.some((k, i) => task.rest[i]! > counts[i]! && further(task.model, filling, k) <= room)
}

/**
 * Whether some piece on the stick could give way to a longer one that is left, of the same sort of cut: then a plan
 * with the longer one here is at least as good (dominance, MartelloToth1990), and this filling need not be tried.
 */
function isDominated(task: Task, filling: Filling, counts: Counts): boolean {
  const room = task.capacity_m + ROUNDING_M - filling.taken_m
  const { kinds, mitres } = task.model
  const longer = new Float64Array(1 + 2 * mitres.length)
  for (let i = 0; i < kinds.length; i++) {
    const kind = kinds[i]!
    const sort = kind.role === 'alone' ? 0 : kind.role === 'stub' ? 1 + kind.mitre : 1 + mitres.length + kind.mitre
    const next = longer[sort]!
    if (counts[i]! > 0 && next > kind.own_m + ROUNDING_M && next - kind.own_m <= room) return true
    if (task.rest[i]! > counts[i]!) longer[sort] = kind.own_m
  }
  return false
}

/** All fillings of one stick that nothing left can improve, in a fixed order. */
export function fillings(task: Task): Fillings {
  const { model, rest, capacity_m, first, atLeast_m, steps } = task
  const { kinds } = model
  const list: { counts: Counts; least_m: number }[] = []
  const after = suffixes(model, rest)
  const filling = emptyFilling(model)
  const counts = new Int32Array(kinds.length)
  let complete = true

  const leaf = (least_m: number): void => {
    if (least_m < atLeast_m - ROUNDING_M || hasRoom(task, filling, counts) || isDominated(task, filling, counts)) return
    if (list.length < MOST_FILLINGS) list.push({ counts: counts.slice(), least_m })
    else complete = false
  }
  const walk = (from: number, least_m: number): void => {
    if (steps.left <= 0 || !complete) {
      complete = false
      return
    }
    steps.left--
    if (least_m + after[from]! < atLeast_m - ROUNDING_M) return
    const room = capacity_m + ROUNDING_M - filling.taken_m
    let i = from
    while (i < kinds.length && (rest[i] === 0 || further(model, filling, kinds[i]!) > room)) i++
    if (i === kinds.length) {
      leaf(least_m)
      return
    }
    const kind = kinds[i]!
    const marks: number[] = [filling.taken_m]
    while (counts[i]! < rest[i]! && add(model, filling, kind, capacity_m)) {
      counts[i]! += 1
      marks.push(filling.taken_m)
    }
    for (let n = counts[i]!; n >= (i === first ? 1 : 0); n--) {
      walk(i + 1, least_m + n * kind.least_m)
      if (n > 0) {
        takeOff(filling, kind, 1, marks[n - 1]!)
        counts[i]! -= 1
      }
    }
  }
  walk(0, 0)
  return { list, complete }
}
