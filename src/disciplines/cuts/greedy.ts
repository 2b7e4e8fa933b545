import { ROUNDING_M } from './equations.ts'
import type { Model } from './model.ts'
import { add, type Counts, costOf, emptyFilling, type Filling, further, type Load, type Packing } from './room.ts'

interface Open {
  bin: number
  readonly counts: Counts
  readonly filling: Filling
}

/** The cheapest bought stick that holds what a stick holds; sticks on hand stay. */
function tightened(model: Model, open: Open): Load {
  const now = model.bins[open.bin]!
  if (now.from === 'hand') return { bin: open.bin, counts: open.counts }
  let bin = open.bin
  model.bins.forEach((b, i) => {
    if (b.from === 'hand' || b.capacity_m + ROUNDING_M < open.filling.taken_m) return
    if (b.cost < model.bins[bin]!.cost) bin = i
  })
  return { bin, counts: open.counts }
}

/**
 * Longest first, each piece onto the stick where it fits: the first opened, or the one that it leaves fullest.
 * Sticks on hand are opened first, the smallest that will do; then sticks of one bought length as far as they hold the piece.
 */
function byLength(model: Model, rest: Counts, left: Float64Array, main: number, best: boolean): Packing | null {
  const open: Open[] = []
  const unused = left.slice()
  const room = (o: Open) => model.bins[o.bin]!.capacity_m - o.filling.taken_m
  for (let i = 0; i < model.kinds.length; i++) {
    const kind = model.kinds[i]!
    for (let n = 0; n < rest[i]!; n++) {
      let to: Open | null = null
      for (const o of open) {
        if (further(model, o.filling, kind) > room(o) + ROUNDING_M) continue
        if (to === null || (best && room(o) < room(to))) to = o
        if (!best) break
      }
      if (to === null) {
        const fits = (b: number) =>
          unused[b]! > 0 && further(model, emptyFilling(model), kind) <= model.bins[b]!.capacity_m + ROUNDING_M
        const hand = model.bins.findIndex((bin, b) => bin.from === 'hand' && fits(b))
        const shop = fits(main) ? main : model.bins.findIndex((bin, b) => bin.from !== 'hand' && fits(b))
        const bin = hand >= 0 ? hand : shop
        if (bin < 0) return null
        unused[bin]! -= 1
        to = { bin, counts: new Int32Array(model.kinds.length), filling: emptyFilling(model) }
        open.push(to)
      }
      add(model, to.filling, kind, model.bins[to.bin]!.capacity_m)
      to.counts[i]! += 1
    }
  }
  const loads = open.map((o) => tightened(model, o))
  return { loads, cost: costOf(model, loads) }
}

/** The best of the quick plans. */
export function quickPlan(model: Model, rest: Counts, left: Float64Array): Packing | null {
  let found: Packing | null = null
  model.bins.forEach((bin, b) => {
    if (bin.from === 'hand') return
    for (const best of [false, true]) {
      const plan = byLength(model, rest, left, b, best)
      if (plan !== null && (found === null || plan.cost < found.cost)) found = plan
    }
  })
  return found
}
