import { ROUNDING_M } from './equations.ts'
import { fillings } from './fill.ts'
import type { Model } from './model.ts'
import { type Counts, emptyFilling, further, type Load, type Packing, type Steps } from './room.ts'

/**
 * Worth of each piece such that no filling of a stick is worth more than the stick costs. Then the worth of all pieces,
 * less that of the sticks on hand, bounds the cost of every plan from below.
 */
export interface Worth {
  readonly pieces: Float64Array
  /** Most that a filling of one stick on hand is worth; 0 for sticks that are bought. */
  readonly bins: Float64Array
}

/** Relative slack of sums of worth. */
const SLACK = 1e-9

/** States remembered as exhausted; beyond it they are searched again. */
const MOST_STATES = 60_000

export function worthOf(worth: Worth, counts: Counts, left: Float64Array): number {
  let sum = 0
  for (let i = 0; i < counts.length; i++) sum += worth.pieces[i]! * counts[i]!
  for (let b = 0; b < left.length; b++) if (worth.bins[b]! > 0) sum -= worth.bins[b]! * left[b]!
  return sum
}

export interface Search {
  readonly model: Model
  readonly rest: Counts
  /** Sticks left of each bin. */
  readonly left: Float64Array
  readonly worths: readonly Worth[]
  /** Only plans that cost no more than this count. */
  readonly most: number
  /** A plan that costs no more than this ends the search. */
  readonly enough: number
  /** What the next better plan may cost, given the cost of one. */
  readonly below: (cost: number) => number
  readonly steps: Steps
}

interface Choice {
  readonly bin: number
  readonly counts: Counts
  readonly score: number
}

/** Sticks and fillings to try for the longest piece left, most promising first. */
function choices(task: Search, rest: Counts, left: Float64Array, first: number, room: number[], most: number) {
  const { model, worths, steps } = task
  const list: Choice[] = []
  let complete = true
  const material = worths[0]!
  const unit = material.pieces[first]! / model.kinds[first]!.least_m
  const alone = further(model, emptyFilling(model), model.kinds[first]!)
  for (let b = 0; b < model.bins.length; b++) {
    const bin = model.bins[b]!
    if (left[b]! <= 0 || bin.cost > most || alone > bin.capacity_m + ROUNDING_M) continue
    const lossAllowed = room[0]! - (bin.cost + material.bins[b]!)
    const atLeast_m = unit > 0 ? -lossAllowed / unit : 0
    const found = fillings({ model, rest, capacity_m: bin.capacity_m, first, atLeast_m, steps })
    complete &&= found.complete
    for (const { counts, least_m } of found.list) {
      const within = worths.every((worth, d) => {
        let gain = 0
        for (let i = 0; i < counts.length; i++) gain += worth.pieces[i]! * counts[i]!
        return bin.cost + worth.bins[b]! - gain <= room[d]!
      })
      if (!within) continue
      const lead = worths[worths.length - 1]!
      let score = bin.cost + lead.bins[b]!
      for (let i = 0; i < counts.length; i++) score -= lead.pieces[i]! * counts[i]!
      list.push({ bin: b, counts, score: score + SLACK * (bin.capacity_m - least_m) })
    }
  }
  return { list: list.sort((a, b) => a.score - b.score), complete }
}

/**
 * Plans stick by stick: the longest piece left must be on some stick, so every filling with it is tried, best first,
 * unless the bounds, or a state met before, show that nothing better comes of it.
 */
export function search(task: Search): { best: Packing | null; complete: boolean } {
  const { model, worths, steps } = task
  const rest = task.rest.slice()
  const left = task.left.slice()
  const loads: Load[] = []
  const seen = new Map<string, number>()
  const limited = model.bins.flatMap((bin, b) => (Number.isFinite(bin.limit) ? [b] : []))
  let most = task.most
  let best: Packing | null = null
  let complete = true
  let done = false

  const state = () => String.fromCharCode(...rest, ...limited.map((b) => left[b]!))
  const walk = (cost: number): void => {
    if (steps.left <= 0) complete = false
    if (done || steps.left <= 0) return
    steps.left--
    let first = 0
    while (first < rest.length && rest[first] === 0) first++
    if (first === rest.length) {
      best = { loads: loads.slice(), cost }
      most = task.below(cost)
      done = cost <= task.enough
      return
    }
    const slack = SLACK * Math.max(1, most)
    const room = worths.map((worth) => most + slack - cost - worthOf(worth, rest, left))
    if (room.some((r) => r < 0)) return
    const key = state()
    const known = seen.get(key)
    if (known !== undefined && known <= cost + slack) return
    const found = choices(task, rest, left, first, room, most - cost + slack)
    complete &&= found.complete
    for (const { bin, counts } of found.list) {
      if (cost + model.bins[bin]!.cost > most + slack) continue
      for (let i = 0; i < rest.length; i++) rest[i]! -= counts[i]!
      left[bin]! -= 1
      loads.push({ bin, counts })
      walk(cost + model.bins[bin]!.cost)
      loads.pop()
      left[bin]! += 1
      for (let i = 0; i < rest.length; i++) rest[i]! += counts[i]!
      if (done) return
    }
    if (seen.size < MOST_STATES && steps.left > 0) seen.set(key, cost)
  }
  walk(0)
  return { best, complete: complete || done }
}
