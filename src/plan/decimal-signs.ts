import { inUnit, readQuantity } from '../kernel/quantity-text.ts'
import type { Unit } from '../kernel/units.ts'
import type { Field } from './field.ts'

/** A figure that was typed with the other decimal sign, and how it was read. */
export interface OtherSign {
  readonly at: string
  readonly typed: string
  readonly read: string
}

/** What was read of a figure with the decimal sign of another language, `2.1 m` of `2,1 m`; null where it reads as typed. */
export function readWithSign(typed: string, unit: Unit, decimal: '.' | ','): string | null {
  if (!typed.includes(decimal === '.' ? ',' : '.')) return null
  const read = readQuantity(typed, unit)
  if (!read.ok) return null
  const figure = String(Number(inUnit(read.value, unit, read.spelled).toPrecision(9)))
  return `${figure.replace('.', decimal)} ${read.spelled}`
}

/** Every quantity of a document that was typed with the other decimal sign; a field is looked for where its value stands. */
export function otherSigns(field: Field, value: unknown, decimal: '.' | ',', at = ''): readonly OtherSign[] {
  const inner = (f: Field | undefined, key: string | number, v: unknown) =>
    f === undefined ? [] : otherSigns(f, v, decimal, at === '' ? String(key) : `${at}/${key}`)
  if (field.kind === 'quantity') {
    const read = typeof value === 'string' ? readWithSign(value, field.unit, decimal) : null
    return read === null ? [] : [{ at, typed: value as string, read }]
  }
  if (field.kind === 'named') return otherSigns(field.section, value, decimal, at)
  if (typeof value !== 'object' || value === null) return []
  if (field.kind === 'list') return Array.isArray(value) ? value.flatMap((v, i) => inner(field.of, i, v)) : []
  const entries = Object.entries(value)
  if (field.kind === 'map') return entries.flatMap(([k, v]) => inner(field.of, k, v))
  if (field.kind !== 'section') return []
  return entries.flatMap(([k, v]) => inner(Object.hasOwn(field.fields, k) ? field.fields[k] : undefined, k, v))
}
