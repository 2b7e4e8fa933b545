import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { evaluate } from '../src/evaluate.ts'
import { edgeUnits } from '../src/kernel/edge-units.ts'
import { inUnit } from '../src/kernel/quantity-text.ts'
import { parsePlan } from '../src/plan/document.ts'
import type { Field } from '../src/plan/field.ts'
import { withValue } from '../src/plan/patch.ts'
import { type PlanDocument, planFields } from '../src/plan/plan.ts'

const examples = ['balcony', 'school', 'hall'].map(
  (n) =>
    JSON.parse(readFileSync(join(import.meta.dirname, '..', 'examples', `${n}.plan.json`), 'utf8')) as PlanDocument,
)

/** Every field that holds one value, by its path. */
function leaves(field: Field, at: string): (readonly [string, Field])[] {
  if (field.kind === 'section')
    return Object.entries(field.fields).flatMap(([k, f]) => leaves(f, at === '' ? k : `${at}/${k}`))
  if (field.kind === 'named') return leaves(field.section, at)
  if (field.kind === 'list' && field.of.kind === 'section') return leaves(field.of, `${at}/0`)
  return [[at, field]]
}

const fields = leaves(planFields, '')

/** A value that the parser takes: its bounds, and anything between, small ones more often. */
function allowed(field: Field): fc.Arbitrary<unknown> {
  const share = fc.oneof(fc.constant(0), fc.constant(1), fc.double({ min: 0, max: 1, noNaN: true }))
  switch (field.kind) {
    case 'quantity': {
      const unit = edgeUnits[field.unit]![0]!.spell[0]!
      return share.map((t) => `${inUnit(field.min + (field.max - field.min) * t ** 3, field.unit, unit)} ${unit}`)
    }
    case 'count':
      return fc.oneof(fc.constant(field.min), fc.integer({ min: field.min, max: Math.min(field.max, 40) }))
    case 'number':
      return fc.double({ min: field.min, max: Math.min(field.max, 1e4), noNaN: true })
    case 'choice':
      return fc.constantFrom(...field.of)
    case 'flag':
      return fc.boolean()
    default:
      return fc.constant(undefined)
  }
}

const change = fc.nat(fields.length - 1).chain((i) => allowed(fields[i]![1]).map((v) => [fields[i]![0], v] as const))

/** A value that does not fit where it should stand (a list in the way) leaves the plan as it is. */
function changed(document: PlanDocument, path: string, value: unknown): PlanDocument {
  try {
    return value === undefined ? document : withValue(document, path, value)
  } catch {
    return document
  }
}

describe('plans at the edge of what is allowed', () => {
  it('never crash the evaluation, and no finding carries a number that is none: 300 of them', () => {
    const plans = fc.tuple(fc.nat(2), fc.array(change, { minLength: 1, maxLength: 4 }))
    fc.assert(
      fc.property(plans, ([n, changes]) => {
        const document = changes.reduce((d, [path, value]) => changed(d, path, value), examples[n]!)
        const { findings } = evaluate(parsePlan(document).plan)
        expect(findings.length).toBeGreaterThan(20)
        expect(JSON.stringify(findings)).not.toMatch(/:null,"unit"|NaN|Infinity/)
      }),
      { seed: 4, numRuns: 300 },
    )
  }, 600_000)
})
