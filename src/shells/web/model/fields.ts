import type { Field, Fields } from '../../../plan/field.ts'
import { valueAt } from '../../../plan/patch.ts'
import { type PlanDocument, planFields } from '../../../plan/plan.ts'

/** One row of the form: a leaf of the plan document. */
export interface Leaf {
  readonly path: string
  readonly field: Field
}

/** The definition at a path; lists and maps by any index or key. */
export function fieldAt(path: string): Field | null {
  let here: Field = planFields
  for (const key of path.split('/')) {
    if (here.kind === 'section' || here.kind === 'named') {
      const fields: Fields = here.kind === 'section' ? here.fields : here.section.fields
      if (!Object.hasOwn(fields, key)) return null
      here = fields[key]!
    } else if (here.kind === 'list' || here.kind === 'map') here = here.of
    else return null
  }
  return here
}

const keysOf = (value: unknown): string[] => (typeof value === 'object' && value !== null ? Object.keys(value) : [])

/**
 * The rows below a path, in the order of the plan: every leaf of a section, the entries that a list or map has, and of
 * a pipe or tank given by measure its measures.
 */
export function leaves(document: PlanDocument, path: string): readonly Leaf[] {
  const field = fieldAt(path)
  if (field === null) return []
  const value = valueAt(document, path)
  switch (field.kind) {
    case 'section':
      return Object.keys(field.fields).flatMap((key) => leaves(document, `${path}/${key}`))
    case 'list':
    case 'map':
      return keysOf(value).flatMap((key) => leaves(document, `${path}/${key}`))
    case 'named': {
      const measures = keysOf(value).flatMap((key) => leaves(document, `${path}/${key}`))
      return [{ path, field }, ...measures]
    }
    default:
      return [{ path, field }]
  }
}

export const isSet = (document: PlanDocument, path: string): boolean => valueAt(document, path) !== undefined
