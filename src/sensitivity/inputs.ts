/** What of a plan may be off, how far, and the plan were it so. */
import type { Unit } from '../kernel/units.ts'
import type { Container } from '../plan/container.ts'
import type { Pipe } from '../plan/pipe.ts'
import type { Plan } from '../plan/plan.ts'
import { readingAt } from '../plan/readings.ts'
import { type Reading, readingBands } from '../tables/readings.ts'
import { type Off, offBy } from './accuracy.ts'
import { type Place, placesOf, withValueAt } from './numbers.ts'
import { byBoxAlone, PUMP_SHAPE, settled, shapes } from './pump-shape.ts'

/** One reading of the plan: where it stands, how it came about, how far it may be off. */
export interface Input {
  readonly at: string
  readonly reading: Reading | 'shape'
  /** As the plan has it; null for a list or map that is off as a whole. */
  readonly value: number | null
  readonly unit: Unit
  readonly off: Off
  /** Keys in memory of all that it moves. */
  readonly moves: readonly string[]
  /** The plan at the low end (-1) and at the high end (1). */
  readonly moved: (end: -1 | 1) => Plan
}

interface Given {
  readonly plan: Plan
  /** How many times wider than the table every reading is taken. */
  readonly factor: number
}

const by = (off: Off, end: -1 | 1): number => (end < 0 ? -off.low : off.high)

const PUMP_KEYS = ['pump/maxHead_m', 'pump/maxFlow_m3_s']

/** The curve that is drawn between the box figures moves with them. */
const movedWith = (plan: Plan, key: string): readonly string[] =>
  byBoxAlone(plan) && PUMP_KEYS.includes(key) ? [key, 'pump/curve'] : [key]

/** From mark to mark; all marks count from one datum, so that the tape is off once over all steps. */
const isStep = (place: Place): boolean => ['column/sites/pitch', 'column/sites/rise'].includes(place.pattern)

function stepOff(plan: Plan, value: number, factor: number): Off {
  const { pattern, rings, count } = plan.column?.sites ?? {}
  const steps = Math.max(1, ((pattern === 'helix' ? count : rings) ?? 1) - 1)
  const whole = offBy(plan, { reading: 'tape', value: value * steps, factor })
  return { low: whole.low / steps, high: whole.high / steps }
}

function numberInput({ plan, factor }: Given, place: Place, reading: Reading): Input {
  const value = place.value as number
  const off = isStep(place) ? stepOff(plan, value, factor) : offBy(plan, { reading, value, factor })
  const key = place.keys.join('/')
  return {
    ...{ at: place.at, reading, value, unit: place.unit ?? '1', off },
    moves: movedWith(plan, key),
    moved: (end) => {
      const to = Math.min(place.max, Math.max(place.min, value + by(off, end)))
      return settled(withValueAt(plan, place.keys, to), shapes.middle)
    },
  }
}

/** Every number of a map, or every head of a curve, off by the same share. */
function wholeInput({ plan, factor }: Given, place: Place, reading: Reading): Input {
  const row = readingBands.rows[reading]
  const off = { low: row.lowShare * factor, high: row.highShare * factor }
  const scaled = (value: unknown, share: number): unknown => {
    if (typeof value === 'number') return value * share
    if (typeof value !== 'object' || value === null) return value
    if (Array.isArray(value)) return value.map((entry) => scaled(entry, share))
    const within = value as Readonly<Record<string, unknown>>
    // Of a curve the heads are off; the flows are where they were measured.
    return Object.fromEntries(Object.entries(within).map(([k, v]) => [k, k === 'flow_m3_s' ? v : scaled(v, share)]))
  }
  return {
    ...{ at: place.at, reading, value: null, unit: '1', off, moves: [place.keys.join('/')] },
    moved: (end) => settled(withValueAt(plan, place.keys, scaled(place.value, 1 + by(off, end))), shapes.middle),
  }
}

/** Outside and wall of a pipe; the bore follows both. A circumference taken on the pipe outranks its outside. */
function pipeInputs({ plan, factor }: Given, at: string, keys: readonly string[], pipe: Pipe): readonly Input[] {
  const outside = pipe.measured ? ('tape' as const) : ('pipeOutside' as const)
  const wall = pipe.measured ? ('caliper' as const) : ('pipeWall' as const)
  const of = (what: 'outside_m' | 'wall_m', reading: Reading): Input => {
    const round = what === 'outside_m' && reading === 'tape' ? Math.PI : 1
    const taken = offBy(plan, { reading, value: pipe[what] * round, factor })
    const off = { low: taken.low / round, high: taken.high / round }
    const moved = (end: -1 | 1): Plan => {
      const d = by(off, end)
      const bore_m = pipe.bore_m + (what === 'outside_m' ? d : -2 * d)
      return settled(withValueAt(plan, keys, { ...pipe, [what]: pipe[what] + d, bore_m }), shapes.middle)
    }
    const path = keys.join('/')
    const name = what === 'outside_m' ? 'outside' : 'wall'
    return {
      ...{ at: `${at}/${name}`, reading, value: pipe[what], unit: 'm', off, moved },
      moves: [`${path}/${what}`, `${path}/bore_m`],
    }
  }
  return [of('outside_m', outside), of('wall_m', wall)]
}

/** Inside length, width and depth of the tank; foot and rim move together. */
function tankInputs({ plan, factor }: Given, tank: Container): readonly Input[] {
  const reading: Reading = tank.row === null ? 'tape' : 'tankOfTable'
  const at = 'reservoir/container'
  const round = tank.shape === 'round'
  const length = ['topLength_m', 'footLength_m', ...(round ? ['topWidth_m', 'footWidth_m'] : [])] as const
  const width = ['topWidth_m', 'footWidth_m'] as const
  const of = (name: string, all: readonly (keyof Container)[]): Input => {
    const value = tank[all[0]!] as number
    const off = offBy(plan, { reading, value, factor })
    const moved = (end: -1 | 1): Plan => {
      const sizes = all.map((k) => [k, (tank[k] as number) + by(off, end)])
      const container = { ...tank, ...Object.fromEntries(sizes) }
      return settled(withValueAt(plan, ['reservoir', 'container'], container), shapes.middle)
    }
    const moves = all.map((k) => `reservoir/container/${k}`)
    return { at: `${at}/${name}`, reading, value, unit: 'm', off, moves, moved }
  }
  return [
    of('topLength', length as readonly (keyof Container)[]),
    ...(round ? [] : [of('topWidth', width)]),
    of('depth', ['depth_m']),
  ]
}

function shapeInput({ plan, factor }: Given): Input {
  const off = { low: (shapes.middle - shapes.low) * factor, high: (shapes.high - shapes.middle) * factor }
  return {
    ...{ at: PUMP_SHAPE, reading: 'shape', value: shapes.middle, unit: '1', off, moves: ['pump/curve'] },
    moved: (end) => settled(plan, Math.max(shapes.low / 2, shapes.middle + by(off, end))),
  }
}

/** A bucket test knows its own error: the pump's strength already carries it as a band. */
const told = (place: Place): boolean => place.pattern.startsWith('pump/tests/')

/** Everything of a plan that may be off. */
export function inputsOf(plan: Plan, factor = 1): readonly Input[] {
  const given = { plan, factor }
  const numbers = placesOf(plan).flatMap((place): Input[] => {
    const reading = readingAt(place.pattern)
    if (reading === null || told(place)) return []
    if (typeof place.value === 'number') return [numberInput(given, place, reading)]
    return [wholeInput(given, place, reading)]
  })
  const { column, reservoir } = plan
  const pipes: readonly (readonly [string, Pipe | undefined])[] = [
    ['column/pipe', column?.pipe],
    ['column/stub/pipe', column?.stub?.pipe],
  ]
  return [
    ...(byBoxAlone(plan) ? [shapeInput(given)] : []),
    ...numbers,
    ...pipes.flatMap(([at, pipe]) => (pipe ? pipeInputs(given, at, at.split('/'), pipe) : [])),
    ...(reservoir?.container ? tankInputs(given, reservoir.container) : []),
  ]
}
