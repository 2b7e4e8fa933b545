import { edgeUnits } from '../kernel/edge-units.ts'
import { nearestWords } from '../kernel/nearest.ts'
import { inUnit, numberFromText, readQuantity } from '../kernel/quantity-text.ts'
import { type Field, memoryKey, type QuantityField, type SectionField } from './field.ts'
import type { Issue, IssueProblem } from './issue.ts'
import { onPenScales } from './pen-scales.ts'

/** Bounds of a document as a whole; beyond them it is refused before it is looked at. */
export const DOCUMENT_LIMITS = { depth: 16, values: 20_000, characters: 1_000_000 } as const

type Json = Readonly<Record<string, unknown>>

const isObject = (v: unknown): v is Json => typeof v === 'object' && v !== null && !Array.isArray(v)

export function shown(value: unknown): string {
  if (typeof value === 'string') return value.length > 60 ? `${value.slice(0, 57)}…` : value
  if (Array.isArray(value)) return 'a list'
  if (isObject(value)) return 'a section'
  return String(value)
}

/** Counts depth and values without recursion, so that no document can exhaust the stack. */
export function documentSize(root: unknown): { readonly depth: number; readonly values: number } {
  let depth = 0
  let values = 0
  let level: unknown[] = [root]
  while (level.length > 0 && depth <= DOCUMENT_LIMITS.depth && values <= DOCUMENT_LIMITS.values) {
    const next: unknown[] = []
    for (const item of level) {
      if (typeof item !== 'object' || item === null) continue
      const inside = Array.isArray(item) ? item : Object.keys(item).map((k) => (item as Json)[k])
      values += inside.length
      if (values > DOCUMENT_LIMITS.values) break
      for (const v of inside) next.push(v)
    }
    depth++
    level = next.filter((v) => typeof v === 'object' && v !== null)
  }
  return { depth, values }
}

interface Reader {
  readonly issues: Issue[]
}

const path = (at: string, key: string | number): string => (at === '' ? String(key) : `${at}/${key}`)

function refuse(
  r: Reader,
  at: string,
  problem: IssueProblem,
  received: unknown,
  expected: readonly string[] = [],
): undefined {
  r.issues.push({ at, problem, received: shown(received), expected })
  return undefined
}

/** A bound in the unit the person typed, so that the message speaks their language. */
const boundText = (field: QuantityField, bound: number, spelled: string): string => {
  const n = inUnit(bound, field.unit, spelled)
  return `${Number(n.toPrecision(4))} ${spelled}`
}

/** How many other units are asked after where a figure is beyond its bounds. */
const MEANT = 2

/** The figure with its decimal point one or two places back, where that is within bounds: 41 deg where somebody wrote 410 deg. */
function slippedPoint(field: QuantityField, typed: string): string[] {
  const read = readQuantity(typed, field.unit)
  if (!read.ok || read.value < field.max) return []
  const back = [10, 100].find((by) => read.value / by <= field.max && read.value / by >= field.min)
  if (back === undefined) return []
  return [`${Number((inUnit(read.value, field.unit, read.spelled) / back).toPrecision(6))} ${read.spelled}`]
}

/** The same figure in other units that would be within bounds: 3 kN/m2 where somebody wrote 3 kg/m2. */
function meantUnits(field: QuantityField, typed: string, spelled: string): string[] {
  const figure = /^-?[\d.,]+/.exec(typed.trim())?.[0]
  if (figure === undefined) return []
  const within = (edgeUnits[field.unit] ?? []).flatMap((unit) => {
    const text = `${figure} ${unit.spell[0]}`
    const read = readQuantity(text, field.unit)
    return read.ok && read.spelled !== spelled && read.value >= field.min && read.value <= field.max ? [text] : []
  })
  return within.length > 0 ? within.slice(0, MEANT) : slippedPoint(field, typed)
}

function readQuantityField(r: Reader, field: QuantityField, value: unknown, at: string): number | undefined {
  const usual = (edgeUnits[field.unit] ?? []).map((u) => u.spell[0]!)
  const exampleUnit = field.example.replace(/^[-\d.,/ ]+/, '')
  if (typeof value === 'number')
    return refuse(r, at, 'no-unit', value, [`"${value} ${exampleUnit}"`, ...usual.slice(0, 3)])
  if (typeof value !== 'string') return refuse(r, at, 'wrong-kind', value, [field.example])
  const read = readQuantity(value, field.unit)
  if (!read.ok) {
    const onScales = read.problem === 'ambiguous-unit' ? onPenScales(field, value) : []
    if (onScales.length > 0) return refuse(r, at, 'which-scale', value, onScales)
    if ('choices' in read) return refuse(r, at, read.problem, value, read.choices)
    if ('accepted' in read) return refuse(r, at, read.problem, value, [field.example, ...read.accepted.slice(0, 5)])
    return refuse(r, at, read.problem === 'empty' ? 'not-a-number' : read.problem, value, [field.example])
  }
  if (read.value < field.min || read.value > field.max)
    return refuse(r, at, 'out-of-bounds', value, [
      boundText(field, field.min, read.spelled),
      boundText(field, field.max, read.spelled),
      ...meantUnits(field, value, read.spelled),
    ])
  return read.value
}

function readNumber(
  r: Reader,
  field: Field & { kind: 'count' | 'number' },
  value: unknown,
  at: string,
): number | undefined {
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    // "5,8" between quotes is most likely 5.8.
    const meant = typeof value === 'string' ? numberFromText(value.trim()) : null
    return refuse(r, at, 'wrong-kind', value, [String(meant ?? field.min)])
  }
  if (field.kind === 'count' && !Number.isInteger(value)) return refuse(r, at, 'not-whole', value)
  if (value < field.min || value > field.max)
    return refuse(r, at, 'out-of-bounds', value, [String(field.min), String(field.max)])
  return value
}

function readList(
  r: Reader,
  field: Field & { kind: 'list' },
  value: unknown,
  at: string,
): readonly unknown[] | undefined {
  if (!Array.isArray(value)) return refuse(r, at, 'wrong-kind', value, ['[ … ]'])
  if (value.length > field.longest) return refuse(r, at, 'too-many', value.length, [String(field.longest)])
  return value.map((v, i) => readField(r, field.of, v, path(at, i))).filter((v) => v !== undefined)
}

function readMap(r: Reader, field: Field & { kind: 'map' }, value: unknown, at: string): Json | undefined {
  if (!isObject(value)) return refuse(r, at, 'wrong-kind', value, ['{ … }'])
  const keys = Object.keys(value)
  if (keys.length > field.longest) return refuse(r, at, 'too-many', keys.length, [String(field.longest)])
  const entries: [string, unknown][] = []
  for (const key of keys) {
    if (key === '__proto__' || key.length > 80) {
      refuse(r, path(at, key.slice(0, 80)), 'unknown-key', key)
      continue
    }
    const v = readField(r, field.of, value[key], path(at, key))
    if (v !== undefined) entries.push([key, v])
  }
  return Object.fromEntries(entries)
}

function readSection(r: Reader, field: SectionField, value: unknown, at: string): Json | undefined {
  if (!isObject(value)) return refuse(r, at, 'wrong-kind', value, ['{ … }'])
  const known = Object.keys(field.fields)
  const out: Record<string, unknown> = {}
  for (const key of Object.keys(value)) {
    if (!Object.hasOwn(field.fields, key)) {
      refuse(r, path(at, key.slice(0, 80)), 'unknown-key', key, nearestWords(key, known))
      continue
    }
    const inner = field.fields[key]!
    const v = readField(r, inner, value[key], path(at, key))
    if (v !== undefined) out[memoryKey(key, inner)] = v
  }
  return out
}

function readNamed(r: Reader, field: Field & { kind: 'named' }, value: unknown, at: string): unknown {
  if (typeof value === 'string') {
    if (value.length > 200) return refuse(r, at, 'too-long', value, ['200'])
    const answer = field.find(value)
    return 'found' in answer ? answer.found : refuse(r, at, 'not-in-table', value, answer.nearest)
  }
  const before = r.issues.length
  const values = readSection(r, field.section, value, at)
  if (values === undefined || r.issues.length > before) return undefined
  const built = field.build(values)
  return 'found' in built ? built.found : refuse(r, at, 'incomplete', value, built.missing)
}

/** Reads one field; an issue and `undefined` where it cannot be read. */
export function readField(r: Reader, field: Field, value: unknown, at: string): unknown {
  switch (field.kind) {
    case 'quantity':
      return readQuantityField(r, field, value, at)
    case 'count':
    case 'number':
      return readNumber(r, field, value, at)
    case 'text':
      if (typeof value !== 'string') return refuse(r, at, 'wrong-kind', value, ['"…"'])
      return value.length > field.longest ? refuse(r, at, 'too-long', value, [String(field.longest)]) : value
    case 'flag':
      return typeof value === 'boolean' ? value : refuse(r, at, 'wrong-kind', value, ['true', 'false'])
    case 'choice':
      if (typeof value === 'string' && field.of.includes(value)) return value
      return refuse(r, at, 'not-a-choice', value, field.of)
    case 'named':
      return readNamed(r, field, value, at)
    case 'list':
      return readList(r, field, value, at)
    case 'map':
      return readMap(r, field, value, at)
    case 'section':
      return readSection(r, field, value, at)
  }
}
