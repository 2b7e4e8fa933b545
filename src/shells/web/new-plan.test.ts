import { describe, expect, it } from 'vitest'
import balcony from '../../../examples/balcony.plan.json' with { type: 'json' }
import { withSettings } from '../../findings/apply.ts'
import { parsePlan } from '../../plan/document.ts'
import { valueAt } from '../../plan/patch.ts'
import type { PlanDocument } from '../../plan/plan.ts'
import { english } from '../../render/words/en/english.ts'
import { issueText } from '../../render/words/sentences.ts'
import type { Chosen } from './model/chosen.ts'
import { type Draft, drafted } from './model/draft.ts'
import { type Answers, answerIssues, cropsApart } from './model/new-plan.ts'
import { adjustedPlan, judged } from './workers/adjust.ts'

const pump = { name: '', maxHead: '2.2 m', maxFlow: '1800 L/h', power: '35 W' }
const usual: Answers = {
  ...{ setting: 'balcony', open: true, crops: ['lettuce'], height: '2.5 m', towers: '1', pipe: '', pump, name: '' },
}
const landed = (answers: Answers): Draft => adjustedPlan(drafted(balcony, answers, 'new'))

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
  ['a pump without figures', { ...usual, pump: { ...pump, maxHead: '', maxFlow: '', power: '' } }],
  ['a school with four towers', { ...usual, setting: 'school', towers: '4', crops: ['lettuce', 'basil'] }],
  ['a shop of inches', { ...usual, pipe: '4 in Sch 40', height: '8 ft' }],
]

const places = ['balcony', 'garden', 'greenhouse', 'indoors', 'school', 'care home', 'community kitchen']
const meals = [['lettuce'], ['chard', 'spinach'], ['strawberry']]
const shops = ['', 'EN 1401 125 x 3.2', '4 in Sch 40', '6 in Sch 40']

/** Every place with every pipe, and every crop with each of these. */
const matrix = places.flatMap((setting, i) =>
  shops.map((pipe, k): readonly [string, Answers] => {
    const crops = meals[(i + k) % meals.length]!
    return [`${setting}, ${crops.join(' and ')}, ${pipe || 'no pipe named'}`, { ...usual, setting, crops, pipe }]
  }),
)

const failing = (document: PlanDocument): readonly string[] =>
  judged(document)
    .filter((f) => f.verdict === 'fail')
    .map((f) => f.id)

const keys = (chosen: readonly Chosen[]): readonly string[] => chosen.map((c) => (c.kind === 'said' ? c.key : c.kind))

/** What may fail after landing: to be fixed by the grower, and told as such. */
const STANDS = /^structure\/|^build\/strap$/

describe('five questions', () => {
  it.each([...people, ...matrix])('land on a plan of which only the hold is left to do, and told: %s', (_, answers) => {
    const { document, chosen } = landed(answers)
    expect(parsePlan(document).issues).toEqual([])
    const fails = failing(document)
    expect(fails.filter((id) => !STANDS.test(id))).toEqual([])
    expect(keys(chosen).filter((k) => k === 'fails' || k === 'tie-open' || k === 'crops-apart')).toEqual([])
    expect(keys(chosen).includes('tie')).toBe(fails.length > 0)
    // Once the grower says that it will be tied, all of it holds.
    const promise = chosen.map((c) => (c.kind === 'said' ? c.promise : undefined)).find((p) => p !== undefined)
    if (promise) expect(failing(withSettings(document, [promise, ...promise.with]))).toEqual([])
  })

  it('take nothing for tied, weighed down, measured, owned or paid', () => {
    const { document, chosen } = landed(usual)
    expect(valueAt(document, 'column/base')).toEqual(balcony.column.base)
    expect(['measured', 'water', 'prices', 'feed', 'tools', 'made'].filter((k) => Object.hasOwn(document, k))).toEqual(
      [],
    )
    expect(JSON.stringify(document)).not.toContain('price')
    expect(document['note']).toBe('')
    expect(keys(chosen)).toEqual(expect.arrayContaining(['changed', 'tie', 'sizes', 'tank', 'gust', 'blank']))
  })

  it('tell the grower each change of the usual tower, and no other field is changed', () => {
    const first = drafted(balcony, usual, 'new').document
    const { document, chosen } = adjustedPlan({ document: first, chosen: [] })
    const changes = chosen.flatMap((c) => (c.kind === 'changed' ? [c.change, ...c.change.with] : []))
    expect(changes.length).toBeGreaterThan(0)
    const undone = changes.toReversed().reduce<unknown>((d, { set, from }) => {
      const copy = structuredClone(d) as Record<string, unknown>
      const path = set.split('/')
      const last = path.pop()!
      const inner = path.reduce((o, k) => o[k] as Record<string, unknown>, copy)
      if (from === null) delete inner[last]
      else inner[last] = from
      return copy
    }, document)
    expect(undone).toEqual(first)
  })

  it('say so where the wish itself needs two tanks, at the question and after landing', () => {
    const { document, chosen } = landed({ ...usual, crops: ['basil', 'parsley'] })
    expect(failing(document).filter((id) => !STANDS.test(id))).toEqual(['nutrients/crops-together'])
    expect(keys(chosen)).toContain('crops-apart')
    expect(cropsApart(['lettuce', 'basil', 'chard'])).toMatchObject({ together: ['lettuce', 'basil'], rest: ['chard'] })
    expect(cropsApart(['lettuce', 'basil'])).toBeNull()
    expect(cropsApart([])).toBeNull()
  })

  it('settle the wind of places that lie in a yard or in a room', () => {
    for (const setting of ['school', 'care home', 'community kitchen']) {
      for (const open of [true, false]) {
        const { document } = landed({ ...usual, setting, open })
        expect(valueAt(document, 'place/gust')).toBe(open ? '20 m/s' : '0 m/s')
        const unknown = judged(document).filter((f) => f.verdict === 'unknown' && f.needs.includes('place/gust'))
        expect(unknown).toEqual([])
      }
    }
  })

  it('name the pump that would do, of which the plan then has its flow', () => {
    const { chosen } = landed({ ...usual, pump: null })
    const any = chosen.find((c) => c.kind === 'said' && c.key === 'pump-any')
    const { head, flow } = any?.kind === 'said' ? any.slots : {}
    if (typeof head !== 'object' || typeof flow !== 'object' || !('value' in head) || !('value' in flow))
      throw new RangeError('no pump is told')
    const bought = { ...pump, maxHead: `${head.value} m`, maxFlow: `${flow.value * 3_600_000} L/h` }
    const { document } = landed({ ...usual, pump: bought })
    expect(judged(document).find((f) => f.id === 'hydraulics/column-flow')?.verdict).toBe('pass')
    expect(keys(landed(usual).chosen)).not.toContain('pump-any')
  })

  it('speak inches to a shop of inches', () => {
    const { document } = landed({ ...usual, pipe: '4 in Sch 40', height: '8 ft' })
    expect(valueAt(document, 'column/stub/pipe')).toBe('ASTM D1785 2 in Sch 40')
    expect(valueAt(document, 'place/ceiling')).toBe('8 ft')
    expect(JSON.stringify({ ...document, pump: {} })).not.toMatch(/\d (mm|m|L|kg)"/)
    expect(String(valueAt(document, 'distributor/hole'))).toMatch(/^(\d+ )?\d+\/\d+ in$/)
  })

  it('draw as many towers as are wanted, each on a tank and a pump of its own', () => {
    const { document, chosen } = landed({ ...usual, towers: '3' })
    expect(valueAt(document, 'towers')).toEqual({ count: 3, perPump: 1 })
    expect(keys(chosen)).toContain('towers')
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
    [3, { ...usual, towers: '' }, ['the number of columns']],
    [3, { ...usual, towers: '0' }, ['0']],
    [4, { ...usual, pipe: 'EN 1401 126 x 3.2' }, ['no such row', 'Did you mean EN 1401-1 125 mm SN4']],
    [5, { ...usual, pump: { ...pump, maxHead: '200 m' } }, ['200 m lies outside 0.1 m to 60 m']],
    [5, { ...usual, pump: { ...pump, maxFlow: 'much' } }, ['“much”', 'Write it like 1800 L/h']],
    [5, { ...usual, pump: { ...pump, power: '35' } }, ['no unit', 'Write it like 35 W']],
    [5, { ...usual, name: 'x'.repeat(5000) }, ['the text is longer than fits here']],
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
    expect(parsePlan(drafted(balcony, unknown, 'new').document).issues).toEqual([])
  })
})
