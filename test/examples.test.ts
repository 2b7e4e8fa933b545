import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { evaluationText } from '../scripts/examples.ts'
import { evaluate } from '../src/evaluate.ts'
import { parsePlan } from '../src/plan/document.ts'
import { BAD, EXAMPLES, example } from './plans.ts'

const folder = join(import.meta.dirname, '..', 'examples')

// The contract with growers: a number that changes here changes on somebody's bench. Read the difference line by line;
// `npm run examples` writes the files anew, and nothing else does.
describe('examples', () => {
  it.each([...EXAMPLES, ...BAD.map((n) => `bad/${n}`), 'bad/feed'])('%s is judged as reviewed', (name) => {
    expect(evaluationText(example(name))).toBe(readFileSync(join(folder, `${name}.evaluation.json`), 'utf8'))
  })

  it.each(EXAMPLES)('%s is read without an issue', (name) => expect(parsePlan(example(name)).issues).toEqual([]))
})

/** Worked by hand from the measures of the plan, to the digits shown. */
describe('the balcony, without the gap of its joint', () => {
  const document = JSON.parse(JSON.stringify(example('balcony')).replace('"gap":"0.3 mm"', '"gap":"0 mm"'))
  const { facts, findings } = evaluate(parsePlan(document).plan)
  const templates = 'known' in facts.templates ? facts.templates.known : null
  const number = (id: string) => {
    const found = findings.find((f) => f.id === id)?.measured
    return found && 'value' in found ? found.value * 1000 : Number.NaN
  }

  it('has a hole of 70.7 by 51.9 mm', () => {
    // 50 / sin 45°; 110 asin(50 / 110)
    expect(templates!.holeAlong.extent.height_m * 1000).toBeCloseTo(70.7107, 3)
    expect(templates!.holeAlong.extent.arc_m * 1000).toBeCloseTo(51.9048, 3)
  })
  it('leaves 63.3 mm of web', () => expect(number('templates/ring-web')).toBeCloseTo((Math.PI * 110) / 3 - 51.9048, 3))
  it('lifts the lip 63.6 mm', () => expect(number('templates/lip')).toBeCloseTo(90 * Math.SQRT1_2, 6))
  it('keeps 64.6 mm over the highest hole', () => {
    // 1850 - (270 + 220 + 7 · 180) - 70.7107 / 2
    expect(number('layout/top-margin')).toBeCloseTo(100 - 35.3553, 3)
  })
  it('opens 181 mm over the lid', () => {
    // mark 220 over the lid; opening in the bore lower by 3.2 cot 45° + 25 / sin 45°
    expect(number('layout/first-hole')).toBeCloseTo(220 - 3.2 - 35.3553, 3)
  })
  it('leaves 53.6 mm between the ends of a ring', () => {
    const depth = Math.sqrt(51.8 ** 2 - 25 ** 2)
    expect(number('templates/stubs-meet')).toBeCloseTo(2 * (depth * Math.sin(Math.PI / 3) - 12.5), 3)
  })
})
