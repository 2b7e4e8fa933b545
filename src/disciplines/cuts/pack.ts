import { attainable } from './attainable.ts'
import { dive } from './dive.ts'
import { fewestSticks } from './equations.ts'
import { quickPlan } from './greedy.ts'
import type { Model } from './model.ts'
import { relaxation } from './relax.ts'
import type { Packing, Steps } from './room.ts'
import { search, type Worth, worthOf } from './search.ts'

export interface Packed {
  readonly packing: Packing
  /** No plan costs less. */
  readonly bound: number
  /** What proved the bound. */
  readonly by: 'material' | 'large pieces' | 'relaxation' | 'search'
}

/** Steps of the first short search, before the relaxation is worth its time. */
const SHORT_STEPS = 1500

/** Dives from different starts. */
const DIVES = 6

/** Most kinds of piece for which the relaxation is worked out: its work grows with their third power. */
const RELAXED_KINDS = 100

/** Most pieces for which the bound by large pieces is looked at. */
const LARGE_BOUND_PIECES = 1000

/** Worth of a piece as the cheapest metre of stick that it takes at least. */
function materialWorth(model: Model): Worth {
  const shop = model.bins.filter((b) => b.from !== 'hand')
  const unit = Math.min(...shop.map((b) => b.cost / b.capacity_m))
  return {
    pieces: Float64Array.from(model.kinds, (k) => unit * k.least_m),
    bins: Float64Array.from(model.bins, (b) => (b.from === 'hand' ? unit * b.capacity_m : 0)),
  }
}

/** Bound by pieces that exclude one another, where all sticks are equal and counted. */
function largeBound(model: Model): number {
  const only = model.bins[0]!
  const pieces = model.counts.reduce((a, b) => a + b, 0)
  if (model.bins.length > 1 || only.from === 'hand' || pieces > LARGE_BOUND_PIECES) return 0
  const sizes_m = model.kinds.flatMap((k) => k.ids.map(() => k.least_m))
  return fewestSticks({ sizes_m, capacity_m: only.capacity_m }) * only.cost
}

/** The best packing that the steps allow, with a bound; null where quick plans fail, which modelOf rules out. */
export function pack(model: Model, steps: Steps): Packed | null {
  const rest = Int32Array.from(model.counts)
  const left = Float64Array.from(model.bins, (b) => b.limit)
  const material = materialWorth(model)
  let packing = quickPlan(model, rest, left)
  if (packing === null) return null
  const onHand_m = model.bins.reduce((sum, b) => (b.from === 'hand' ? sum + b.limit * b.capacity_m : sum), 0)
  const need_m = model.kinds.reduce((sum, k, i) => sum + rest[i]! * k.least_m, 0) - onHand_m
  const costs = attainable(model, packing.cost, need_m)
  const slack = 1e-9 * Math.max(1, packing.cost)
  let by: Packed['by'] = 'material'
  let bound = 0
  const raise = (to: number, reason: Packed['by']): boolean => {
    const whole = costs.atLeast(to)
    if (whole > bound + slack) {
      bound = whole
      by = reason
    }
    return packing!.cost <= bound + slack
  }
  const better = (found: Packing | null): boolean => {
    if (found !== null && found.cost < packing!.cost - slack) packing = found
    return packing!.cost <= bound + slack
  }
  const done = (): Packed => ({ packing: packing!, bound: Math.min(bound, packing!.cost), by })
  const trySearch = (worths: readonly Worth[], most_count: number): boolean => {
    const own: Steps = { left: Math.min(steps.left, most_count) }
    const before = own.left
    const most = costs.below(packing!.cost)
    const found = search({ model, rest, left, worths, most, enough: bound + slack, below: costs.below, steps: own })
    steps.left -= before - own.left
    if (better(found.best)) return true
    return found.complete && raise(packing!.cost, 'search')
  }
  if (raise(worthOf(material, rest, left), 'material')) return done()
  if (raise(largeBound(model), 'large pieces')) return done()
  if (trySearch([material], SHORT_STEPS)) return done()
  if (model.kinds.length > RELAXED_KINDS) return done()
  const relaxed = relaxation(model, rest, left, costs.below(packing.cost))
  if (raise(relaxed.bound, 'relaxation')) return done()
  for (let turn = 0; turn < DIVES && steps.left > 0; turn++) {
    const next = costs.below(packing.cost)
    // The best that the bound leaves open first, then nearer and nearer to what is in hand.
    const most = bound + ((next - bound) * turn) / (DIVES - 1)
    if (better(dive({ model, rest, left, material, most, below: costs.below, steps, turn }))) return done()
  }
  const full = relaxed.worth === null ? relaxation(model, rest, left, Number.NEGATIVE_INFINITY) : relaxed
  if (raise(full.bound, 'relaxation')) return done()
  trySearch([material, full.worth ?? material], steps.left)
  return done()
}
