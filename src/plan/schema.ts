import { edgeUnits } from '../kernel/edge-units.ts'
import type { Field, SectionField } from './field.ts'
import { PLAN_VERSION, planFields } from './plan.ts'

type Schema = Readonly<Record<string, unknown>>

const closed = (field: SectionField): Schema => ({
  type: 'object',
  additionalProperties: false,
  properties: Object.fromEntries(
    Object.entries(field.fields).map(([key, f]) => [key, { description: f.about, ...schemaOf(f) }]),
  ),
})

function schemaOf(field: Field): Schema {
  switch (field.kind) {
    case 'quantity':
      return {
        type: 'string',
        minLength: 1,
        maxLength: 64,
        examples: [field.example],
        $comment: `a number and a unit: ${(edgeUnits[field.unit] ?? []).map((u) => u.spell[0]).join(', ')}`,
      }
    case 'count':
      return { type: 'integer', minimum: field.min, maximum: field.max }
    case 'number':
      return { type: 'number', minimum: field.min, maximum: field.max }
    case 'text':
      return { type: 'string', maxLength: field.longest }
    case 'flag':
      return { type: 'boolean' }
    case 'choice':
      return { enum: field.of }
    case 'named':
      return { anyOf: [{ type: 'string', maxLength: 200, examples: [field.example] }, closed(field.section)] }
    case 'list':
      return { type: 'array', maxItems: field.longest, items: { description: field.of.about, ...schemaOf(field.of) } }
    case 'map':
      return { type: 'object', maxProperties: field.longest, additionalProperties: schemaOf(field.of) }
    case 'section':
      return closed(field)
  }
}

/** JSON Schema 2020-12 of the plan document, from the same definitions that the parser uses. */
export const planSchema = (): Schema => ({
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: `urn:rootfall:plan:${PLAN_VERSION}`,
  title: 'rootfall plan',
  description: planFields.about,
  ...closed(planFields),
  required: ['rootfall'],
})
