import { mitreAllowance, ROUNDING_M } from './equations.ts'
import type { Kind, Model } from './model.ts'

/** How many of each kind a stick holds. */
export type Counts = Int32Array

/** A stick being filled: what is taken and which mitres stand on it. */
export interface Filling {
  taken_m: number
  readonly stubs: Int32Array
  readonly parallels: Int32Array
}

export const emptyFilling = (model: Model): Filling => ({
  taken_m: 0,
  stubs: new Int32Array(model.mitres.length),
  parallels: new Int32Array(model.mitres.length),
})

/** What one more piece of a kind takes from the stick; never negative, so a fuller stick never has more room. */
export function further(model: Model, filling: Filling, kind: Kind): number {
  if (kind.role === 'alone') return kind.own_m
  const { along_m: k, reach_m: h } = model.mitres[kind.mitre]!
  const n = filling.stubs[kind.mitre]!
  const m = filling.parallels[kind.mitre]!
  if (kind.role === 'parallel') return n + m > 0 ? kind.own_m + k : kind.own_m + 2 * (k + h) + model.kerf_m
  if (n % 2 === 1 || (n === 0 && m > 0)) return kind.own_m - h
  return kind.own_m + k + model.kerf_m + h
}

/** Adds a piece if it fits, and says whether it did. */
export function add(model: Model, filling: Filling, kind: Kind, capacity_m: number): boolean {
  const taken_m = filling.taken_m + further(model, filling, kind)
  if (taken_m > capacity_m + ROUNDING_M) return false
  filling.taken_m = taken_m
  if (kind.role === 'stub') filling.stubs[kind.mitre]! += 1
  if (kind.role === 'parallel') filling.parallels[kind.mitre]! += 1
  return true
}

/** Takes `count` pieces of a kind off again; `taken_m` is what was taken before they were added. */
export function takeOff(filling: Filling, kind: Kind, count: number, taken_m: number): void {
  filling.taken_m = taken_m
  if (kind.role === 'stub') filling.stubs[kind.mitre]! -= count
  if (kind.role === 'parallel') filling.parallels[kind.mitre]! -= count
}

/** Length that a set of pieces takes from a stick, by the stick rule itself rather than piece by piece. */
export function takenBy(model: Model, counts: Counts): number {
  const stubs = new Int32Array(model.mitres.length)
  const parallels = new Int32Array(model.mitres.length)
  let taken_m = 0
  model.kinds.forEach((kind, i) => {
    taken_m += counts[i]! * kind.own_m
    if (kind.role === 'stub') stubs[kind.mitre]! += counts[i]!
    if (kind.role === 'parallel') parallels[kind.mitre]! += counts[i]!
  })
  return model.mitres.reduce(
    (sum, mitre, g) =>
      sum + mitreAllowance({ ...mitre, stubs_count: stubs[g]!, parallel_count: parallels[g]!, kerf_m: model.kerf_m }),
    taken_m,
  )
}

/** One stick of a plan under search. */
export interface Load {
  /** Index of its bin. */
  readonly bin: number
  readonly counts: Counts
}

/** A whole plan under search. */
export interface Packing {
  readonly loads: readonly Load[]
  readonly cost: number
}

export const costOf = (model: Model, loads: readonly Load[]): number =>
  loads.reduce((sum, load) => sum + model.bins[load.bin]!.cost, 0)

/** A bound on steps, counted the same way on every machine. */
export interface Steps {
  left: number
}
