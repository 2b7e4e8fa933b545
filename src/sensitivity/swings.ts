/**
 * Which number matters: every reading alone is taken to either end of what it may be off, and each result that looks at
 * it is computed again. Swings are not added up: they say where to look first, not how sure the whole is.
 */
import { type Facts, factsOnDemand } from '../evaluate.ts'
import type { Unit } from '../kernel/units.ts'
import { isKnown } from '../plan/known.ts'
import type { Plan } from '../plan/plan.ts'
import { type Reading, swingPractice } from '../tables/readings.ts'
import type { Off } from './accuracy.ts'
import { type Input, inputsOf } from './inputs.ts'
import { settled, shapes } from './pump-shape.ts'
import { type Watched, watched } from './read.ts'
import { type Result, type ResultId, results } from './results.ts'

/** What one reading does to one result. */
export interface Swing {
  readonly at: string
  readonly reading: Reading | 'shape'
  /** The reading as the plan has it; null for a whole map or list. */
  readonly value: number | null
  readonly unit: Unit
  /** How far the reading may be off. */
  readonly off: Off
  /** The result less its value, with the reading at its low and at its high end; null where it cannot be told there. */
  readonly low: number | null
  readonly high: number | null
  /** The greater of both without its sign. */
  readonly size: number
}

export interface ResultSwings {
  readonly id: ResultId
  readonly unit: Unit
  /** Middle of what the result may be. */
  readonly value: number
  /** Half of what the result itself is only known to lie between, whatever is read: what the model does not know. */
  readonly own: number
  /** Readings that move it, the greatest first, as far as they are worth telling. */
  readonly swings: readonly Swing[]
  /** How many readings more move it, and the greatest of their swings. */
  readonly rest: { readonly count: number; readonly size: number }
}

/** A reading to improve, and the results that it would settle, the one that it matters most to first. */
export interface Improve {
  readonly at: string
  readonly reading: Reading | 'shape'
  readonly results: readonly ResultId[]
}

export interface Sensitivity {
  readonly results: readonly ResultSwings[]
  /** Results that cannot be told yet, with the fields that are missing. */
  readonly unknown: readonly { readonly id: ResultId; readonly needs: readonly string[] }[]
  readonly improve: readonly Improve[]
}

export interface Progress {
  readonly done: number
  readonly of: number
}

export interface SensitivityOptions {
  /** Share of the greatest swing below which readings are summed up. */
  readonly told?: number
  /** How many times wider than usual every reading is taken. */
  readonly factor?: number
  /** Only these results. */
  readonly only?: readonly ResultId[]
  /** Everything computed afresh each time: for the proof that what is kept changes nothing. */
  readonly afresh?: boolean
}

interface Base {
  readonly result: Result
  readonly value: number
  readonly own: number
  readonly seen: ReadonlySet<string>
}

type Found = { readonly middle: number; readonly half: number }

function found(result: Result, plan: Plan, facts: Facts): Found | readonly string[] | null {
  const answer = result.of(plan, facts)
  if (answer === null) return null
  if (!isKnown(answer)) return answer.needs
  const { low, high } = typeof answer.known === 'number' ? { low: answer.known, high: answer.known } : answer.known
  return Number.isFinite(low) && Number.isFinite(high) ? { middle: (low + high) / 2, half: (high - low) / 2 } : null
}

const isFound = (f: Found | readonly string[] | null): f is Found => f !== null && 'middle' in f

/** A price weighs only where money is told, unless the recipe looks for the least of it. */
const weighs = (result: Result, { reading }: Input, plan: Plan): boolean =>
  reading !== 'price' || result.unit === 'money' || plan.feed?.aim === 'cheapest'

const reads = ({ seen, result }: Base, input: Input, plan: Plan): boolean =>
  weighs(result, input, plan) &&
  input.moves.some((path) => seen.has(path) || [...seen].some((s) => s.startsWith(`${path}/`)))

const sizeOf = (low: number | null, high: number | null): number => Math.max(Math.abs(low ?? 0), Math.abs(high ?? 0))

/** What is worth telling of the readings that move a result. */
function ranked(base: Base, all: readonly Swing[], told: number): ResultSwings {
  const { result, value, own } = base
  const moving = all.filter((s) => s.size > 0).toSorted((a, b) => b.size - a.size)
  const least = told * (moving[0]?.size ?? 0)
  const swings = moving.slice(0, swingPractice.rows.named.value).filter((s) => s.size >= least)
  const rest = moving.slice(swings.length)
  return {
    id: result.id,
    unit: result.unit,
    value,
    own,
    swings,
    rest: { count: rest.length, size: rest[0]?.size ?? 0 },
  }
}

/** What a swing is held against: the result itself, but for temperature and pH, whose zero says nothing. */
function scaleOf({ id, value }: ResultSwings): number {
  const { feltTemperature, feltPh } = swingPractice.rows
  if (id === 'hot') return feltTemperature.value
  return id === 'pH' ? feltPh.value : Math.abs(value)
}

/** Readings by what they would settle: each counts with its share of a result's swings, as far as those are felt. */
function improvements(all: readonly ResultSwings[]): readonly Improve[] {
  const by = new Map<string, { reading: Swing['reading']; score: number; of: { id: ResultId; share: number }[] }>()
  for (const r of all) {
    const { id, swings } = r
    const sum = swings.reduce((total, s) => total + s.size, 0)
    const scale = scaleOf(r)
    for (const s of swings) {
      const share = (s.size / sum) * (s.size < scale ? s.size / scale : 1)
      const known = by.get(s.at) ?? { reading: s.reading, score: 0, of: [] }
      by.set(s.at, { ...known, score: known.score + share, of: [...known.of, { id, share }] })
    }
  }
  return [...by]
    .toSorted(([, a], [, b]) => b.score - a.score)
    .map(([at, { reading, of }]) => ({
      at,
      reading,
      results: of.toSorted((a, b) => b.share - a.share).map((r) => r.id),
    }))
}

/** Every result with the numbers that it looks at; those that cannot be told apart. */
function bases(plan: Plan, asked: readonly Result[]) {
  const known: Base[] = []
  const unknown: { id: ResultId; needs: readonly string[] }[] = []
  for (const result of asked) {
    const looked: Watched<Plan> = watched(plan)
    const answer = found(result, looked.watched, factsOnDemand(looked.watched))
    if (isFound(answer)) known.push({ result, value: answer.middle, own: answer.half, seen: looked.seen })
    else if (answer !== null) unknown.push({ id: result.id, needs: answer })
  }
  return { known, unknown }
}

/** The swings of a plan, one reading a step; what is yielded tells how far it has come. */
export function* sensitivitySteps(plan: Plan, options: SensitivityOptions = {}): Generator<Progress, Sensitivity> {
  const { told = swingPractice.rows.told.value, factor = 1, only, afresh = false } = options
  const middle = settled(plan, shapes.middle)
  const { known, unknown } = bases(
    middle,
    results.filter((r) => only === undefined || only.includes(r.id)),
  )
  const before = { plan: middle, facts: factsOnDemand(middle) }
  const inputs = inputsOf(plan, factor)
  const swings = new Map(known.map((base) => [base.result.id, [] as Swing[]]))
  for (const [i, input] of inputs.entries()) {
    const touched = known.filter((base) => afresh || reads(base, input, plan))
    const ends = touched.length === 0 ? [] : ([-1, 1] as const).map((end) => endOf(input, end, afresh ? null : before))
    for (const { result, value } of touched) {
      const [low, high] = ends.map(({ plan: moved, facts }) => {
        const answer = found(result, moved, facts)
        return isFound(answer) ? answer.middle - value : null
      }) as [number | null, number | null]
      const { at, reading, value: as, unit, off } = input
      swings.get(result.id)?.push({ at, reading, value: as, unit, off, low, high, size: sizeOf(low, high) })
    }
    yield { done: i + 1, of: inputs.length }
  }
  const all = known.map((base) => ranked(base, swings.get(base.result.id) ?? [], told))
  return { results: all, unknown, improve: improvements(all) }
}

function endOf(input: Input, end: -1 | 1, before: { readonly plan: Plan; readonly facts: Facts } | null) {
  const plan = input.moved(end)
  return { plan, facts: factsOnDemand(plan, before === null ? {} : { before }) }
}

/** The swings of a plan, all at once. */
export function sensitivity(plan: Plan, options: SensitivityOptions = {}): Sensitivity {
  const steps = sensitivitySteps(plan, options)
  for (;;) {
    const step = steps.next()
    if (step.done) return step.value
  }
}
