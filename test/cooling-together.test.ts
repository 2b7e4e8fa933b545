import { describe, expect, it } from 'vitest'
import { evaluateDocument } from '../src/evaluate.ts'
import type { PlanDocument } from '../src/plan/plan.ts'
import { metric } from '../src/render/display.ts'
import { english } from '../src/render/words/en/english.ts'
import { findingText } from '../src/render/words/sentences.ts'
import { example, withAll } from './plans.ts'

const looked = (document: PlanDocument) => {
  const { facts, findings } = evaluateDocument(document, { remedies: false })
  const { day } = facts
  if (day === null || !('known' in day)) throw new Error('no day')
  return { day: day.known, hot: findings.find((f) => f.id === 'water/hot')! }
}
const paint = { 'reservoir/shaded': true, 'reservoir/colour': 'white', 'column/colour': 'white' }

describe('cooling by several measures together', () => {
  it('reaches what the plan with all of them reaches, and says so', () => {
    const { day, hot } = looked(example('balcony'))
    const all = day.together!
    expect(all.foam).toBe(false)
    const done = looked(withAll(example('balcony'), paint)).day.hotLow.course.highest_C
    expect(all.highest_C).toBeCloseTo(done, 9)
    expect(done).toBeLessThan(day.hotLow.course.highest_C)
    const said = findingText(hot, english, metric).sentence
    expect(said).toContain(`${done.toFixed(1)} °C for 35.00, still too warm`)
  })

  it('is tried as one remedy where sun comes', () => {
    const mild = withAll(example('balcony'), { 'place/airHigh': '24 °C', 'place/sun': '40 %' })
    expect(looked(mild).hot.levers.some((l) => 'together' in l)).toBe(true)
  })

  it('says nothing of it where the day is cool enough', () => {
    const cool = withAll(example('balcony'), { 'place/airHigh': '16 °C', 'place/airLow': '10 °C', 'place/sun': '10 %' })
    expect(looked(cool).day.together).toBeNull()
  })
})
