import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { evaluate } from '../src/evaluate.ts'
import { parsePlan } from '../src/plan/document.ts'
import { withValue } from '../src/plan/patch.ts'
import type { PlanDocument } from '../src/plan/plan.ts'

const example = (name: string) =>
  JSON.parse(readFileSync(join(import.meta.dirname, '..', 'examples', `${name}.plan.json`), 'utf8')) as PlanDocument

const changes: readonly (readonly [string, unknown])[] = [
  ['column/sites/pitch', '200 mm'],
  ['column/sites/perRing', 4],
  ['column/stub/angle', '50 deg'],
  ['column/base/kind', 'own foot'],
  ['distributor/hole', '4 mm'],
  ['pump/maxHead', '3 m'],
  ['riser/bore', '16 mm'],
  ['riser/inside', 'outside the column'],
  ['reservoir/lidHeight', '300 mm'],
  ['reservoir/fillVolume', '30 L'],
  ['place/airHigh', '25 °C'],
  ['place/walkRound', '0.5 m'],
  ['tools/tape', '1/16 in'],
  ['stock/kerf', '2 mm'],
  ['measured/columnCircumference', '347 mm'],
  ['feed/batch', '30 L'],
  ['crops/0/thirst', '0.3 L/day'],
  ['prices/cement', 30],
  ['towers/count', 2],
  ['name', 'Another'],
]

/** Places of a document that hold a figure or a word, without those of lists. */
function entries(value: unknown, path = ''): readonly string[] {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return path === 'rootfall' ? [] : [path]
  return Object.entries(value).flatMap(([key, inner]) => entries(inner, path === '' ? key : `${path}/${key}`))
}

describe('evaluate', () => {
  const document = example('balcony')
  const { plan } = parsePlan(document)
  const before = { plan, facts: evaluate(plan).facts }

  it.each(changes)('gives the same with and without the facts of the plan before: %s to %s', (path, value) => {
    const changed = parsePlan(withValue(document, path, value)).plan
    expect(evaluate(changed, { before })).toEqual(evaluate(changed))
  })

  it.each(['balcony', 'school', 'hall'])(
    'gives the same with those facts whichever entry of %s is taken away',
    (name) => {
      const whole = example(name)
      const first = parsePlan(whole).plan
      const known = { plan: first, facts: evaluate(first).facts }
      const paths = entries(whole)
      expect(paths.length).toBeGreaterThan(60)
      for (const path of paths) {
        const changed = parsePlan(withValue(whole, path, undefined)).plan
        expect(evaluate(changed, { before: known }), path).toEqual(evaluate(changed))
      }
    },
  )

  it.each(['balcony', 'school', 'hall'])('judges %s the same twice, to the last digit', (name) => {
    const once = parsePlan(example(name)).plan
    expect(JSON.stringify(evaluate(once))).toBe(JSON.stringify(evaluate(once)))
  })

  it('never crashes on a plan of which any one section is missing', () => {
    for (const name of ['balcony', 'school', 'hall']) {
      const whole = example(name)
      for (const key of Object.keys(whole)) {
        const { [key]: _, ...rest } = whole
        expect(() => evaluate(parsePlan(rest).plan)).not.toThrow()
      }
    }
  })

  it('can leave out the day', () => expect(evaluate(plan, { day: false }).facts.day).toBeNull())
})
