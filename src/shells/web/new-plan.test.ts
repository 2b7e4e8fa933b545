import { describe, expect, it } from 'vitest'
import balcony from '../../../examples/balcony.plan.json' with { type: 'json' }
import { parsePlan } from '../../plan/document.ts'
import type { PlanDocument } from '../../plan/plan.ts'
import { english } from '../../render/words/en/english.ts'
import { issueText } from '../../render/words/sentences.ts'
import { type Answers, answerIssues, drafted } from './model/new-plan.ts'
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

describe('an answer that the plan could not hold', () => {
  const said = (question: number, answers: Answers): string =>
    answerIssues(question, answers)
      .map((i) => issueText(i, english))
      .join(' ')

  it.each([
    [3, { ...usual, height: '0.4 m' }, ['0.4 m lies outside 0.5 m to 50 m', 'Check the number']],
    [3, { ...usual, height: '' }, ['no number can be read', 'Write it like 2.5 m']],
    [3, { ...usual, height: '2.5' }, ['no unit', 'Write it like 2.5 m']],
    [4, { ...usual, pipe: 'EN 1401 126 x 3.2' }, ['no such row', 'Did you mean EN 1401-1 125 mm SN4']],
    [5, { ...usual, pump: { ...pump, maxHead: '200 m' } }, ['200 m lies outside 0.1 m to 60 m']],
    [5, { ...usual, pump: { ...pump, maxFlow: 'much' } }, ['“much”', 'Write it like 1800 L/h']],
    [5, { ...usual, pump: { ...pump, power: '35' } }, ['no unit', 'Write it like 35 W']],
    [2, { ...usual, crops: [] }, ['the crops', 'none is chosen yet', 'lettuce, basil']],
    [1, { ...usual, setting: 'moon' }, ['“moon” is none of the choices']],
    [2, { ...usual, crops: ['x'.repeat(5000)] }, ['the text is longer than fits here', 'Shorten it']],
  ] as const)('is said at question %i in the words of its field', (question, answers, words) => {
    for (const w of words) expect(said(question, answers)).toContain(w)
    expect([1, 2, 3, 4, 5].filter((q) => answerIssues(q, answers).length > 0)).toEqual([question])
  })

  it('is none of the usual ones, and a figure that is not known may be left out', () => {
    for (const [, answers] of people) for (const q of [1, 2, 3, 4, 5]) expect(said(q, answers)).toBe('')
    const unknown = { ...usual, pump: { ...pump, power: ' ' } }
    expect(said(5, unknown)).toBe('')
    expect(parsePlan(drafted(balcony, unknown, 'new')).issues).toEqual([])
  })
})
