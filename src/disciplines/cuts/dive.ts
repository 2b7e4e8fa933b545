import type { Model } from './model.ts'
import { relaxation } from './relax.ts'
import type { Counts, Load, Packing, Steps } from './room.ts'
import { search, type Worth } from './search.ts'

/** With so few pieces left, the rest is searched rather than rounded. */
const FEW_PIECES = 20

/** Steps spent on one rest. */
const REST_STEPS = 4000

/** Steps that one relaxation counts for, for each kind of piece. */
const RELAX_STEPS = 10

interface Dive {
  readonly model: Model
  readonly rest: Counts
  readonly left: Float64Array
  readonly material: Worth
  readonly most: number
  readonly below: (cost: number) => number
  readonly steps: Steps
  /** Which of the fractions is rounded up when none is whole: 0 the largest. */
  readonly turn: number
}

const total = (counts: Counts) => counts.reduce((a, b) => a + b, 0)

/**
 * Rounds the relaxed plan stick by stick, relaxing anew after each round, and searches what is left at the end.
 * Finds good plans of large jobs; proves nothing.
 */
export function dive(task: Dive): Packing | null {
  const { model, most, steps } = task
  const rest = task.rest.slice()
  const left = task.left.slice()
  const loads: Load[] = []
  let cost = 0
  const fix = (load: Load): boolean => {
    const counts = load.counts.map((n, i) => Math.min(n, rest[i]!))
    if (total(counts) === 0 || left[load.bin]! <= 0) return false
    for (let i = 0; i < rest.length; i++) rest[i]! -= counts[i]!
    left[load.bin]! -= 1
    loads.push({ bin: load.bin, counts })
    cost += model.bins[load.bin]!.cost
    return true
  }
  for (let round = 0; round < total(task.rest) && steps.left > 0; round++) {
    const relaxed = relaxation(model, rest, left, most - cost)
    steps.left -= model.kinds.length * RELAX_STEPS
    if (cost + relaxed.bound > most + 1e-9 * Math.max(1, most)) return null
    let fixed = 0
    for (const column of relaxed.columns)
      for (let n = Math.floor(column.times + 1e-6); n > 0; n--) fixed += fix(column) ? 1 : 0
    if (total(rest) <= FEW_PIECES) {
      const own: Steps = { left: Math.min(steps.left, REST_STEPS) }
      const before = own.left
      const worths = relaxed.worth === null ? [task.material] : [task.material, relaxed.worth]
      const below = (c: number) => task.below(cost + c) - cost
      const found = search({ model, rest, left, worths, most: most - cost, enough: most - cost, below, steps: own })
      steps.left -= before - own.left
      return found.best === null ? null : { loads: [...loads, ...found.best.loads], cost: cost + found.best.cost }
    }
    if (fixed > 0) continue
    const fractions = [...relaxed.columns].sort((a, b) => b.times - a.times)
    const next = fractions[round === 0 ? task.turn % fractions.length : 0]
    if (next === undefined || !fix(next)) return null
  }
  return null
}
