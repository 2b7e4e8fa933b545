import { describe, expect, it } from 'vitest'
import balcony from '../../../examples/balcony.plan.json' with { type: 'json' }
import { parsePlan } from '../../plan/document.ts'
import type { PlanDocument } from '../../plan/plan.ts'
import { type Answers, drafted } from './model/new-plan.ts'
import { adjustedPlan, judged } from './workers/adjust.ts'

const pump = { name: '', maxHead: '2.2 m', maxFlow: '1800 L/h', power: '35 W' }
const usual: Answers = { setting: 'balcony', crops: ['lettuce'], height: '2.5 m', pipe: '', pump }

/** Answers as different people give them to the five questions. */
const people: readonly (readonly [string, Answers])[] = [
  ['a balcony with lettuce', usual],
  ['a room with herbs', { ...usual, setting: 'indoors', crops: ['basil', 'lettuce'] }],
  [
    'a greenhouse with strawberries and another pipe',
    { ...usual, setting: 'greenhouse', crops: ['strawberry'], pipe: 'EN 1401 125 x 3.2' },
  ],
  ['a low place', { ...usual, height: '1.6 m' }],
  ['a strong pump', { ...usual, pump: { ...pump, maxHead: '4 m', maxFlow: '4000 L/h', power: '80 W' } }],
  ['no pump yet', { ...usual, pump: null }],
]

const failing = (document: PlanDocument): readonly string[] =>
  judged(document)
    .filter((f) => f.verdict === 'fail')
    .map((f) => f.id)

describe('five questions', () => {
  it.each(people)('land on a plan of which nothing fails: %s', (_, answers) => {
    const { document } = adjustedPlan(drafted(balcony, answers, 'new'))
    expect(parsePlan(document).issues).toEqual([])
    expect(failing(document)).toEqual([])
  })

  it('say so where the wish itself needs two tanks, and nothing else fails', () => {
    const { document } = adjustedPlan(drafted(balcony, { ...usual, crops: ['basil', 'parsley'] }, 'new'))
    expect(failing(document)).toEqual(['nutrients/crops-together'])
  })
})
