import { ROUNDING_M } from './equations.ts'
import type { Model } from './model.ts'
import { type Counts, type Load, takenBy } from './room.ts'

/** Most moves tried on the way to a large rest. */
const MOST_MOVES = 20_000

/**
 * Moves pieces off one stick onto the room of the others, so that what is left over is left in one piece.
 * Every stick is tried as the one to clear; the plan with the largest single rest is kept. The cost does not change.
 */
export function gathered(model: Model, loads: readonly Load[]): readonly Load[] {
  const room = (load: Load) => model.bins[load.bin]!.capacity_m - takenBy(model, load.counts)
  let best = loads
  let bestRest = Math.max(0, ...loads.map(room))
  let moves = MOST_MOVES
  // Equal sticks give equal plans, so the emptiest few stand for all.
  const order = loads.map((load, i) => ({ i, room: room(load) })).sort((a, b) => b.room - a.room || a.i - b.i)
  for (const { i: from } of order.slice(0, 4)) {
    const next = loads.map((load): Load => ({ bin: load.bin, counts: load.counts.slice() }))
    const source = next[from]!
    for (let k = 0; k < model.kinds.length; k++) {
      for (let to = 0; to < next.length && source.counts[k]! > 0; to++) {
        while (to !== from && source.counts[k]! > 0 && moves-- > 0 && accepts(model, next[to]!, k)) {
          next[to]!.counts[k]! += 1
          source.counts[k]! -= 1
        }
      }
    }
    const rest = Math.max(...next.map(room))
    if (rest > bestRest + ROUNDING_M) {
      bestRest = rest
      best = next
    }
  }
  return best.filter((load) => load.counts.some((n) => n > 0))
}

function accepts(model: Model, load: Load, kind: number): boolean {
  const counts: Counts = load.counts.slice()
  counts[kind]! += 1
  return takenBy(model, counts) <= model.bins[load.bin]!.capacity_m + ROUNDING_M
}
