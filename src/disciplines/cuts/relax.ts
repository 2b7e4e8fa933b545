import type { Model } from './model.ts'
import { worthiest } from './price.ts'
import { add, type Counts, emptyFilling, type Load } from './room.ts'
import { type Worth, worthOf } from './search.ts'

export interface Relaxation {
  /** Null where the relaxation ended early. */
  readonly worth: Worth | null
  /** No plan costs less. */
  readonly bound: number
  /** Sticks of the relaxed plan, in fractions. */
  readonly columns: readonly (Load & { readonly times: number })[]
}

interface Tableau {
  readonly rows: number
  /** Inverse of the basis, row by row. */
  readonly inverse: Float64Array
  readonly values: Float64Array
  readonly costs: Float64Array
  readonly basis: ({ bin: number; counts: Counts } | null)[]
}

const EPSILON = 1e-9

/** A start: each kind alone on the roomiest stick that is bought. */
function start(model: Model, rest: Counts, left: Float64Array, limited: readonly number[]): Tableau {
  const kinds = model.kinds.length
  const rows = kinds + limited.length
  const inverse = new Float64Array(rows * rows)
  const values = new Float64Array(rows)
  const costs = new Float64Array(rows)
  const basis: Tableau['basis'] = []
  const roomiest = model.bins.reduce(
    (a, b, i) => (b.from !== 'hand' && (a < 0 || b.capacity_m >= model.bins[a]!.capacity_m) ? i : a),
    -1,
  )
  const bin = model.bins[roomiest]!
  for (let i = 0; i < kinds; i++) {
    const filling = emptyFilling(model)
    let n = 0
    while (n < Math.max(1, rest[i]!) && add(model, filling, model.kinds[i]!, bin.capacity_m)) n++
    const counts = new Int32Array(kinds)
    counts[i] = n
    basis.push({ bin: roomiest, counts })
    inverse[i * rows + i] = 1 / n
    values[i] = rest[i]! / n
    costs[i] = bin.cost
  }
  limited.forEach((b, r) => {
    basis.push(null)
    inverse[(kinds + r) * rows + kinds + r] = 1
    values[kinds + r] = left[b]!
  })
  return { rows, inverse, values, costs, basis }
}

function dualsOf(t: Tableau): Float64Array {
  const duals = new Float64Array(t.rows)
  for (let r = 0; r < t.rows; r++) {
    const c = t.costs[r]!
    if (c !== 0) for (let j = 0; j < t.rows; j++) duals[j]! += c * t.inverse[r * t.rows + j]!
  }
  return duals
}

/** Brings one column into the basis; false where nothing bounds it. */
function pivot(t: Tableau, column: Float64Array, cost: number, entering: Tableau['basis'][number]): boolean {
  const { rows, inverse } = t
  const d = new Float64Array(rows)
  for (let r = 0; r < rows; r++) {
    let s = 0
    for (let j = 0; j < rows; j++) s += inverse[r * rows + j]! * column[j]!
    d[r] = s
  }
  let out = -1
  for (let r = 0; r < rows; r++) {
    if (d[r]! <= EPSILON) continue
    if (out < 0) out = r
    else {
      const gain = t.values[r]! / d[r]! - t.values[out]! / d[out]!
      if (gain < -EPSILON || (gain <= EPSILON && d[r]! > d[out]!)) out = r
    }
  }
  if (out < 0) return false
  const pivotValue = d[out]!
  for (let j = 0; j < rows; j++) inverse[out * rows + j]! /= pivotValue
  t.values[out] = Math.max(0, t.values[out]! / pivotValue)
  for (let r = 0; r < rows; r++) {
    const f = d[r]!
    if (r === out || f === 0) continue
    for (let j = 0; j < rows; j++) inverse[r * rows + j]! -= f * inverse[out * rows + j]!
    t.values[r] = Math.max(0, t.values[r]! - f * t.values[out]!)
  }
  t.costs[out] = cost
  t.basis[out] = entering
  return true
}

/** Steps of a pricing that looks for a better column, and of one that must prove that there is none. */
const LOOK_STEPS = 1500
const PROOF_STEPS = 40_000

/** Worth that no filling of any stick exceeds, from duals that may exceed it a little (Farley1990). */
function sound(model: Model, supply: Counts, duals: Float64Array): Worth {
  const pieces = Float64Array.from(model.kinds, (_, i) => Math.max(0, duals[i]!))
  const most = model.bins.map((bin) => worthiest(model, supply, pieces, bin.capacity_m, bin.cost, PROOF_STEPS).atMost)
  const scale = model.bins.reduce((s, bin, b) => (bin.from === 'hand' ? s : Math.min(s, bin.cost / most[b]!)), 1)
  return {
    pieces: pieces.map((p) => p * scale),
    bins: Float64Array.from(model.bins, (bin, b) => (bin.from === 'hand' ? scale * most[b]! : 0)),
  }
}

interface Entering {
  readonly column: Float64Array
  readonly cost: number
  readonly load: Tableau['basis'][number]
}

/** A column that improves the relaxed plan, or null where the steps find none. */
function entering(
  model: Model,
  supply: Counts,
  duals: Float64Array,
  limited: readonly number[],
  steps_count: number,
): Entering | null {
  const kinds = model.kinds.length
  const rows = duals.length
  let least = -1e-7
  let found: Entering | null = null
  for (let i = 0; i < rows; i++) {
    const reduced = i < kinds ? duals[i]! : -duals[i]!
    if (reduced >= least) continue
    least = reduced
    const column = new Float64Array(rows)
    column[i] = i < kinds ? -1 : 1
    found = { column, cost: 0, load: null }
  }
  const pieces = Float64Array.from(model.kinds, (_, i) => Math.max(0, duals[i]!))
  for (let b = 0; b < model.bins.length; b++) {
    const bin = model.bins[b]!
    const row = limited.indexOf(b)
    const base = bin.cost - (row < 0 ? 0 : duals[kinds + row]!)
    const { worth, counts } = worthiest(model, supply, pieces, bin.capacity_m, Math.max(0, base - least), steps_count)
    if (counts === null) continue
    least = base - worth
    const column = new Float64Array(rows)
    column.set(counts)
    if (row >= 0) column[kinds + row] = 1
    found = { column, cost: bin.cost, load: { bin: b, counts } }
  }
  return found
}

/**
 * The cutting plan with sticks in fractions (GilmoreGomory1961): a simplex over fillings that a knapsack brings in one
 * at a time. It ends early where its cost is down to `enough`: a bound above that can no longer come of it.
 * The bound holds even where rounds run out, since the worth is scaled to what a knapsack can prove.
 */
export function relaxation(model: Model, rest: Counts, left: Float64Array, enough: number): Relaxation {
  const limited = model.bins.flatMap((bin, b) => (Number.isFinite(bin.limit) ? [b] : []))
  const t = start(model, rest, left, limited)
  const rounds = 60 + 12 * t.rows
  let early = false
  for (let round = 0; round < rounds && !early; round++) {
    const duals = dualsOf(t)
    const next = entering(model, rest, duals, limited, LOOK_STEPS) ?? entering(model, rest, duals, limited, PROOF_STEPS)
    if (next === null || !pivot(t, next.column, next.cost, next.load)) break
    early = t.costs.reduce((sum, c, r) => sum + c * t.values[r]!, 0) <= enough
  }
  const columns = t.basis.flatMap((load, r) =>
    load !== null && t.values[r]! > EPSILON ? [{ ...load, times: t.values[r]! }] : [],
  )
  if (early) return { worth: null, bound: 0, columns }
  const worth = sound(model, rest, dualsOf(t))
  return { worth, bound: worthOf(worth, rest, left), columns }
}
