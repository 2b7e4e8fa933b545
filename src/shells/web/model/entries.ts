import type { Field, Fields, ListField, MapField } from '../../../plan/field.ts'
import { valueAt } from '../../../plan/patch.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import { fieldAt, leaves } from './fields.ts'

/** One line of the form: a field, the head of an entry of a list, or the place where a list gets one more. */
export type Line =
  | { readonly kind: 'row' | 'head'; readonly path: string }
  | { readonly kind: 'add'; readonly path: string; readonly field: ListField | MapField }

const keysOf = (value: unknown): string[] => (typeof value === 'object' && value !== null ? Object.keys(value) : [])

/**
 * All lines below a path, in the order of the plan. `wanted` is a place that is to be filled: it has its line although
 * nothing stands there yet.
 */
export function lines(document: PlanDocument, path: string, wanted: string | null): readonly Line[] {
  const field = fieldAt(path)
  if (field === null) return []
  if (field.kind === 'section')
    return Object.keys(field.fields).flatMap((key) => lines(document, `${path}/${key}`, wanted))
  if (field.kind !== 'list' && field.kind !== 'map')
    return leaves(document, path).map((leaf) => ({ kind: 'row', path: leaf.path }))
  const here = keysOf(valueAt(document, path)).map((key) => `${path}/${key}`)
  const next = wanted?.startsWith(`${path}/`) && !here.some((at) => isIn(wanted, at)) ? [wanted] : []
  const headed = field.of.kind === 'section'
  return [
    ...here.flatMap((at): readonly Line[] => [
      ...(headed ? [{ kind: 'head', path: at } as const] : []),
      ...lines(document, at, wanted),
    ]),
    ...next.map((at) => ({ kind: 'row', path: at }) as const),
    ...(here.length < field.longest ? [{ kind: 'add', path, field } as const] : []),
  ]
}

export const isIn = (path: string, section: string): boolean => path === section || path.startsWith(`${section}/`)

/** The entry of a list in which a place stands, `water/sources/0`; null for what stands in none. */
export const entryAround = (path: string): string | null => /^(.*\/\d+)\//.exec(path)?.[1] ?? null

/** The first place of a field that takes a figure or a word. */
export function firstOf(field: Field, path: string): string {
  if (field.kind !== 'section') return path
  const [key, inner] = Object.entries(field.fields as Fields)[0]!
  return firstOf(inner, `${path}/${key}`)
}

/** A place named without its entry, `water/sources/share`, in the first entry that the plan has. */
export function placed(path: string): string {
  const keys: string[] = []
  for (const key of path.split('/')) {
    if (keys.length > 0 && fieldAt(keys.join('/'))?.kind === 'list' && !/^\d+$/.test(key)) keys.push('0')
    keys.push(key)
  }
  return keys.join('/')
}

/** What adding one entry puts into the plan, and the place that is to be filled then. */
export interface Addition {
  readonly put: readonly [path: string, value: unknown] | null
  readonly fill: string
}

/** The field of an entry that carries its name: what is typed into the line that adds one. */
const NAMES: Readonly<Record<string, string>> = { 'feed/shelf': 'name', crops: 'crop' }
export const nameOf = (path: string): string | null => NAMES[path] ?? null

/** One more entry of a list, or of a map under the name that was typed. */
export function addition(document: PlanDocument, path: string, typed: string): Addition {
  const field = fieldAt(path)
  const value = valueAt(document, path)
  if (field?.kind === 'map') return { put: null, fill: `${path}/${typed.trim().replaceAll('/', ' ')}` }
  if (field?.kind !== 'list') throw new RangeError(`addition: ${path} is no list of the plan`)
  const items = Array.isArray(value) ? value : []
  const at = `${path}/${items.length}`
  if (field.of.kind !== 'section') return { put: value === undefined ? [path, []] : null, fill: at }
  const key = nameOf(path)
  const entry = key === null || typed.trim() === '' ? {} : { [key]: typed.trim() }
  return { put: [path, [...items, entry]], fill: firstOf(field.of, at) }
}
