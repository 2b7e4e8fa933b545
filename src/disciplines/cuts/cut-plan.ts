import type { CutIssue, CutJob } from './job.ts'
import { type Laid, layout } from './layout.ts'
import { gathered } from './leftover.ts'
import { type Bin, type Model, modelOf } from './model.ts'
import { type Packed, pack } from './pack.ts'
import { type Load, type Packing, takenBy } from './room.ts'

export type { Cut, CutIssue, CutJob, Offcut, Piece, Purchase } from './job.ts'
export type { Mark, Placed } from './layout.ts'

/** One stick, cut. */
export interface Stick extends Laid {
  /** Id of the length bought or the offcut. */
  readonly stock: string
  readonly from: 'hand' | 'shop'
  readonly length_m: number
}

/** Sticks that are cut alike. */
export interface Pattern {
  readonly times_count: number
  readonly stick: Stick
}

export interface CutPlan {
  /** Every stick in cutting order: what is on hand first. */
  readonly sticks: readonly Stick[]
  /** The same, with equal sticks told once. Ids of pieces are those of its first stick. */
  readonly patterns: readonly Pattern[]
  readonly used: readonly { readonly stock: string; readonly from: 'hand' | 'shop'; readonly count: number }[]
  /** Price of what is bought, or null where a price is missing. */
  readonly price_money: number | null
  readonly bought_m: number
  readonly pieces_m: number
  readonly kerf_m: number
  readonly loss_m: number
  readonly leftover_m: number
  /** What the plan makes least: sticks bought, their length, or their price. */
  readonly objective: 'count' | 'm' | 'money'
  readonly value: number
  /** No plan has less. */
  readonly bound: number
  readonly by: Packed['by']
  readonly status: 'proved-best' | 'gap' | 'short-of-stock' | 'nothing-to-cut'
  readonly issues: readonly CutIssue[]
}

/** Steps of the search when the job sets none: a typical plan needs a hundredth of it. */
export const DEFAULT_STEPS = 40_000

const NOTHING: Omit<CutPlan, 'issues'> = {
  sticks: [],
  patterns: [],
  used: [],
  price_money: 0,
  bought_m: 0,
  pieces_m: 0,
  kerf_m: 0,
  loss_m: 0,
  leftover_m: 0,
  objective: 'count',
  value: 0,
  bound: 0,
  by: 'material',
  status: 'nothing-to-cut',
}

/** A better packing than one in hand, from elsewhere; null where there is none. */
export interface Improved {
  readonly packing: Packing | null
  /** A bound proved elsewhere. */
  readonly bound: number
}

/** Hands a job that was left with a gap to a solver that a shell has at hand. */
export type Improve = (model: Model, packed: Packed) => Promise<Improved>

function sticksOf(job: CutJob, model: Model, loads: readonly Load[]): Stick[] {
  const given = new Int32Array(model.kinds.length)
  const take = (kind: number): string => {
    const id = model.kinds[kind]!.ids[given[kind]!]!
    given[kind]! += 1
    return id
  }
  return loads.map((load): Stick => {
    const bin = model.bins[load.bin]!
    const from = bin.from === 'hand' ? 'hand' : 'shop'
    return { stock: bin.id, from, length_m: bin.length_m, ...layout(model, load, job.trim_m, take) }
  })
}

/** Ids of pieces for which no stick is left. */
function missing(model: Model, loads: readonly Load[]): CutIssue[] {
  return model.kinds.flatMap((kind, i): CutIssue[] => {
    const count = loads.reduce((sum, load) => sum + load.counts[i]!, 0)
    return count > 0 ? [{ reason: 'stock-used-up', id: kind.piece.id, count }] : []
  })
}

const sum = <T>(list: readonly T[], of: (item: T) => number): number =>
  list.reduce((total, item) => total + of(item), 0)

function priceOf(job: CutJob, bought: readonly Bin[]): number | null {
  const prices = bought.map((bin) => job.purchase.find((p) => p.id === bin.id)?.price_money ?? null)
  return prices.includes(null) ? null : sum(prices, (p) => p ?? 0)
}

/** Equal loads told once, in the order of their first stick. */
function patternsOf(sticks: readonly Stick[], loads: readonly Load[]): Pattern[] {
  const found = new Map<string, { times_count: number; stick: Stick }>()
  sticks.forEach((stick, i) => {
    const key = `${loads[i]!.bin}: ${loads[i]!.counts.join(' ')}`
    const known = found.get(key)
    if (known) known.times_count += 1
    else found.set(key, { times_count: 1, stick })
  })
  return [...found.values()]
}

function planOf(job: CutJob, model: Model, packed: Packed, issues: readonly CutIssue[]): CutPlan {
  const all = packed.packing.loads
  const real = all.filter((load) => model.bins[load.bin]!.from !== 'nowhere')
  const fill = new Map(real.map((load) => [load, model.bins[load.bin]!.capacity_m - takenBy(model, load.counts)]))
  const turn = (load: Load) => (model.bins[load.bin]!.from === 'hand' ? 0 : 1)
  const ordered = [...real].sort((a, b) => turn(a) - turn(b) || fill.get(a)! - fill.get(b)!)
  const loads = gathered(model, ordered)
  const short = all.filter((load) => model.bins[load.bin]!.from === 'nowhere')
  const sticks = sticksOf(job, model, loads)
  const bought = loads.flatMap((load) => (model.bins[load.bin]!.from === 'shop' ? [model.bins[load.bin]!] : []))
  const value = sum(bought, (b) => b.cost)
  const proved = packed.packing.cost <= packed.bound + 1e-9 * Math.max(1, packed.packing.cost)
  const used = model.bins.flatMap((bin, b) => {
    const count = loads.filter((load) => load.bin === b).length
    return count > 0
      ? [{ stock: bin.id, from: bin.from === 'hand' ? ('hand' as const) : ('shop' as const), count }]
      : []
  })
  return {
    sticks,
    patterns: patternsOf(sticks, loads),
    used,
    price_money: priceOf(job, bought),
    bought_m: sum(bought, (b) => b.length_m),
    pieces_m: sum(sticks, (s) => s.pieces_m),
    kerf_m: sum(sticks, (s) => s.kerf_m),
    loss_m: sum(sticks, (s) => s.loss_m),
    leftover_m: sum(sticks, (s) => s.leftover_m),
    objective: model.objective,
    value,
    bound: short.length > 0 ? Math.min(value, packed.bound) : proved ? value : packed.bound,
    by: packed.by,
    status: short.length > 0 ? 'short-of-stock' : proved ? 'proved-best' : 'gap',
    issues: [...issues, ...missing(model, short)],
  }
}

function packed(job: CutJob) {
  const { model, issues } = modelOf(job)
  if (model === null || model.kinds.length === 0) return { model: null, issues, found: null }
  return { model, issues, found: pack(model, { left: job.steps_count ?? DEFAULT_STEPS }) }
}

/**
 * How to cut the pieces of one material from sticks: least is bought, what is on hand is used first, and the rest is
 * left in one piece as far as that is free. `docs/decisions/0005-cutting-plan.md` says what best means here.
 */
export function cutPlan(job: CutJob): CutPlan {
  const { model, issues, found } = packed(job)
  return model === null || found === null ? { ...NOTHING, issues } : planOf(job, model, found, issues)
}

/** The same, and where a gap is left, a solver from outside the engine tries to close it. */
export async function improvedCutPlan(job: CutJob, improve: Improve): Promise<CutPlan> {
  const { model, issues, found } = packed(job)
  if (model === null || found === null) return { ...NOTHING, issues }
  const plan = planOf(job, model, found, issues)
  if (plan.status !== 'gap') return plan
  const other = await improve(model, found)
  const packing = isSound(model, other.packing, found.packing.cost) ? other.packing! : found.packing
  const bound = Math.min(packing.cost, Math.max(found.bound, other.bound))
  const by = bound > found.bound ? 'search' : found.by
  return planOf(job, model, { packing, bound, by }, issues)
}

/** Whether a packing from outside cuts every piece once, overfills no stick and costs less than the one in hand. */
function isSound(model: Model, packing: Packing | null, most: number): boolean {
  if (packing === null || packing.cost >= most) return false
  const fits = packing.loads.every((load) => takenBy(model, load.counts) <= model.bins[load.bin]!.capacity_m + 1e-9)
  const whole = model.counts.every((n, i) => sum(packing.loads, (load) => load.counts[i]!) === n)
  const limits = model.bins.every((bin, b) => packing.loads.filter((load) => load.bin === b).length <= bin.limit)
  return fits && whole && limits && Math.abs(sum(packing.loads, (l) => model.bins[l.bin]!.cost) - packing.cost) < 1e-9
}
