import { inUnit, readQuantity } from '../../../kernel/quantity-text.ts'
import { readWithSign } from '../../../plan/decimal-signs.ts'
import type { Field } from '../../../plan/field.ts'
import type { Issue } from '../../../plan/issue.ts'
import { readField } from '../../../plan/parse.ts'

/** A field as typed: what goes into the plan, and what is wrong with it. */
export interface Entry {
  readonly value: unknown
  readonly issues: readonly Issue[]
}

const BARE = /^[-−+]?[\d.,/ ]+$/

/** The unit in which a text was written, `mm` of `12 mm`. */
const unitOf = (text: string): string => text.replace(/^[-−+]?[\d.,/ ¼½¾⅓⅔⅛⅜⅝⅞]+/, '').trim()

/** A bare number takes the unit that stood there; where none stood the engine asks for one. */
function withUnit(typed: string, before: unknown): string {
  if (!BARE.test(typed) || typeof before !== 'string') return typed
  const unit = unitOf(before)
  return unit === '' ? typed : `${typed.trim()} ${unit}`
}

/** Reads what was typed into a field. An empty text takes the entry out of the plan. */
export function entryOf(field: Field, path: string, typed: string, before: unknown): Entry {
  const text = typed.trim()
  if (text === '') return { value: undefined, issues: [] }
  const value = valueFrom(field, text, before)
  const issues: Issue[] = []
  readField({ issues }, field, value, path)
  return { value, issues }
}

function valueFrom(field: Field, text: string, before: unknown): unknown {
  switch (field.kind) {
    case 'quantity':
      return withUnit(text, before)
    case 'count':
    case 'number': {
      const n = Number(text.replace(',', '.').replace('−', '-'))
      return Number.isFinite(n) ? n : text
    }
    case 'flag':
      return text === 'true'
    default:
      return text
  }
}

/** What was read of a figure with the decimal sign of another language, `2.1 m` of `2,1 m`; null where it reads as typed. */
export const readAs = (field: Field, typed: unknown, decimal: '.' | ','): string | null =>
  field.kind === 'quantity' && typeof typed === 'string' ? readWithSign(typed, field.unit, decimal) : null

const SIXTEENTH = 1 / 16

function fraction(n: number): string {
  const sixteenths = Math.round(n / SIXTEENTH)
  const whole = Math.floor(sixteenths / 16)
  let [top, under] = [sixteenths - whole * 16, 16]
  while (top > 0 && top % 2 === 0) [top, under] = [top / 2, under / 2]
  return top === 0 ? `${whole}` : whole === 0 ? `${top}/${under}` : `${whole} ${top}/${under}`
}

/** One step of a number: its last digit that counts, at most a hundredth of it. */
function stepOf(n: number): number {
  const size = Math.abs(n)
  return size >= 100 ? 1 : size >= 10 ? 1 : size >= 1 ? 0.1 : 0.01
}

/** The text one arrow key further; ten steps with `large`. Null where the field does not step. */
export function stepped(field: Field, before: unknown, direction: 1 | -1, large: boolean): unknown {
  const times = direction * (large ? 10 : 1)
  if (field.kind === 'count' && typeof before === 'number')
    return Math.min(field.max, Math.max(field.min, before + times))
  if (field.kind === 'number' && typeof before === 'number') {
    const step = stepOf(before)
    return Number(Math.min(field.max, Math.max(field.min, before + times * step)).toPrecision(9))
  }
  if (field.kind !== 'quantity' || typeof before !== 'string') return null
  const read = readQuantity(before, field.unit)
  if (!read.ok) return null
  const n = inUnit(read.value, field.unit, read.spelled)
  const inches = read.spelled === 'in'
  const step = inches ? SIXTEENTH : stepOf(n)
  const next = Math.round(n / step + times) * step
  const text = inches ? fraction(Math.max(0, next)) : String(Number(next.toPrecision(9)))
  const value = `${text} ${read.spelled}`
  const after = readQuantity(value, field.unit)
  return after.ok && after.value >= field.min && after.value <= field.max ? value : null
}
