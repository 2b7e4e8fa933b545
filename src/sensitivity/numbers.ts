/** The numbers of a plan in memory, each by its path, and the plan with one of them otherwise. */
import type { Unit } from '../kernel/units.ts'
import { type Field, type Fields, memoryKey } from '../plan/field.ts'
import { type Plan, planFields } from '../plan/plan.ts'

/** A number, a list or a map of the plan, where it stands in the document and in memory. */
export interface Place {
  /** As the document spells it: `riser/fittings/0/bore`. */
  readonly at: string
  /** The same with `_` for entries of lists and maps. */
  readonly pattern: string
  /** Keys in memory, which carry the unit. */
  readonly keys: readonly string[]
  readonly value: unknown
  readonly unit: Unit | null
  /** Bounds of the field; open for lists and maps. */
  readonly min: number
  readonly max: number
}

type Values = { readonly [key: string]: unknown }

const isValues = (value: unknown): value is Values => typeof value === 'object' && value !== null

const boundsOf = (field: Field): Pick<Place, 'unit' | 'min' | 'max'> => {
  if (field.kind === 'quantity') return { unit: field.unit, min: field.min, max: field.max }
  if (field.kind === 'number') return { unit: '1', min: field.min, max: field.max }
  return { unit: null, min: Number.NEGATIVE_INFINITY, max: Number.POSITIVE_INFINITY }
}

function placesIn(field: Field, value: unknown, up: Pick<Place, 'at' | 'pattern' | 'keys'>): readonly Place[] {
  const inner = (of: Field, key: string, memory: string, step: string) =>
    placesIn(of, (value as Values)[memory], {
      at: up.at === '' ? key : `${up.at}/${key}`,
      pattern: up.pattern === '' ? step : `${up.pattern}/${step}`,
      keys: [...up.keys, memory],
    })
  if (field.kind === 'quantity' || field.kind === 'number')
    return typeof value === 'number' ? [{ ...up, ...boundsOf(field), value }] : []
  if (!isValues(value)) return []
  if (field.kind === 'section')
    return Object.entries(field.fields as Fields).flatMap(([key, f]) => inner(f, key, memoryKey(key, f), key))
  if (field.kind === 'list' || field.kind === 'map')
    return [
      { ...up, ...boundsOf(field), value },
      ...Object.keys(value).flatMap((key) => inner(field.of, key, key, '_')),
    ]
  return []
}

/** Every number of a plan, and the lists and maps that hold some. */
export const placesOf = (plan: Plan): readonly Place[] => placesIn(planFields, plan, { at: '', pattern: '', keys: [] })

/** The same with one value put in another's place; nothing that was given is changed. */
export function withValueAt<T>(whole: T, keys: readonly string[], value: unknown): T {
  const [key, ...rest] = keys
  if (key === undefined) return value as T
  const within = (whole ?? {}) as Values
  const inner = withValueAt(within[key], rest, value)
  if (Array.isArray(whole)) return whole.map((entry, i) => (String(i) === key ? inner : entry)) as T
  return { ...within, [key]: inner } as T
}
