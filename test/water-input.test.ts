import { describe, expect, it } from 'vitest'
import { evaluateDocument } from '../src/evaluate.ts'
import type { Finding } from '../src/findings/finding.ts'
import { ends } from '../src/kernel/units.ts'
import { metric } from '../src/render/display.ts'
import { english } from '../src/render/words/en/english.ts'
import { findingText } from '../src/render/words/sentences.ts'
import { example, withAll } from './plans.ts'

type Changes = Readonly<Record<string, unknown>>

const judged = (changes: Changes, name = 'balcony'): readonly Finding[] =>
  evaluateDocument(withAll(example(name), changes), { remedies: false }).findings

const only = (changes: Changes, id: string): Finding => {
  const found = judged(changes).filter((f) => f.id === id)
  if (found.length !== 1) throw new Error(`${found.length} findings of ${id}`)
  return found[0]!
}

const test = (on: string, volume: string, more: Changes = {}) => ({
  on,
  volume,
  time: '60 s',
  outletHeight: '1.777 m',
  ...more,
})
const points = (...list: readonly (readonly [flow: string, head: string])[]) =>
  list.map(([flow, head]) => ({ flow, head }))

describe('what is said twice of the water', () => {
  // Place, value, limit and what to do: each sentence must name all that is listed.
  it.each([
    [
      'a maker’s curve that rises',
      { 'pump/curve': points(['0 L/h', '2.2 m'], ['600 L/h', '1.5 m'], ['900 L/h', '1.9 m']) },
      'hydraulics/pump-curve',
      'pump/curve/2',
      ['400 mm', '1500 mm at 10.0 L/min', '1900 mm at 15.0 L/min', '220.0 mm', 'Look at both points', 'left out'],
    ],
    [
      'two heads at one flow',
      { 'pump/curve': points(['0 L/h', '2.2 m'], ['600 L/h', '1.5 m'], ['600 L/h', '2 m'], ['1200 L/h', '0.5 m']) },
      'hydraulics/pump-curve',
      'pump/curve/2',
      ['500 mm', '1500 mm at 10.0 L/min', '2000 mm at 10.0 L/min'],
    ],
    [
      'marks that fall',
      {
        'reservoir/marks': [
          { level: '100 mm', volume: '16 L' },
          { level: '200 mm', volume: '12 L' },
          { level: '260 mm', volume: '42 L' },
        ],
      },
      'reservoir/marks-rise',
      'reservoir/marks/1',
      ['At 200.0 mm', '12.0 L', 'at 100.0 mm', '16.0 L', 'Pour again between these two', 'left out'],
    ],
    [
      'two marks at one level',
      {
        'reservoir/marks': [
          { level: '100 mm', volume: '16 L' },
          { level: '260 mm', volume: '42 L' },
          { level: '260 mm', volume: '40 L' },
        ],
      },
      'reservoir/marks-rise',
      'reservoir/marks/2',
      ['40.0 L', '42.0 L'],
    ],
    [
      'a mark above the rim',
      {
        'reservoir/marks': [
          { level: '150 mm', volume: '24 L' },
          { level: '290 mm', volume: '46 L' },
        ],
      },
      'reservoir/marks-reach',
      'reservoir/marks',
      ['290.0 mm', '270.0 mm', 'Measure the depth or the mark again'],
    ],
    [
      'a fill line and litres that part',
      { 'reservoir/fillLine': '218 mm', 'reservoir/fillVolume': '20 L' },
      'reservoir/lines-agree',
      'reservoir/fillVolume',
      ['The fill line at 218.0 mm holds 35.7 L', '20.0 L', 'The line counts', 'Measure again'],
    ],
    [
      'a low line and litres that part',
      { 'reservoir/lowLine': '73 mm', 'reservoir/lowVolume': '20 L' },
      'reservoir/lines-agree',
      'reservoir/lowVolume',
      ['The low line at 73.0 mm holds 12.0 L', '20.0 L'],
    ],
    [
      'a low line at the fill line',
      { 'reservoir/lowVolume': '36 L' },
      'reservoir/low-below-fill',
      'reservoir/lowVolume',
      ['The low line holds 36.0 L and the fill line 36.0 L', 'nothing is left to use'],
    ],
    [
      'a low line above the fill line',
      { 'reservoir/lowVolume': '40 L' },
      'reservoir/low-below-fill',
      'reservoir/lowVolume',
      ['40.0 L', '36.0 L'],
    ],
    [
      'two tests of one day that contradict each other',
      { 'pump/tests': [test('2026-05-01', '5 L'), test('2026-05-01', '3 L')] },
      'hydraulics/tests-agree',
      'pump/tests/1',
      ['2026-05-01', 'test 2 gave 3.0 L/min at 1777 mm', 'test 1 gave 5.0 L/min', 'Take both again'],
    ],
  ] as const)('%s fails with a sentence that says where, what and what to do', (_, changes, id, at, told) => {
    const finding = only(changes, id)
    expect(finding).toMatchObject({ verdict: 'fail', at })
    const { sentence } = findingText(finding, english, metric)
    for (const part of told) expect(sentence).toContain(part)
  })

  it.each([
    ['a falling curve', { 'pump/curve': points(['0 L/h', '2.2 m'], ['900 L/h', '1.9 m']) }, 'hydraulics/pump-curve'],
    [
      'lines within what a tape misses',
      { 'reservoir/fillLine': '218 mm', 'reservoir/fillVolume': '36 L' },
      'reservoir/lines-agree',
    ],
    [
      'marks that rise, from the empty tank on',
      {
        'reservoir/marks': [
          { level: '0 mm', volume: '0 L' },
          { level: '260 mm', volume: '42 L' },
        ],
      },
      'reservoir/marks-rise',
    ],
    [
      'two tests within what a stopwatch misses',
      { 'pump/tests': [test('2026-05-01', '5 L'), test('2026-05-01', '4.8 L')] },
      'hydraulics/tests-agree',
    ],
    ['a litre between the lines', { 'reservoir/lowVolume': '35 L' }, 'reservoir/low-below-fill'],
  ] as const)('%s pass', (_, changes, id) => expect(only(changes, id).verdict).toBe('pass'))

  it('a curve that rises is left out, a small hump is reckoned as level', () => {
    const head = (list: readonly (readonly [string, string])[]) =>
      ends(only({ 'pump/curve': points(...list) }, 'hydraulics/pump-lifts').measured!)
    expect(
      head([
        ['0 L/h', '1 m'],
        ['600 L/h', '3 m'],
        ['900 L/h', '0.5 m'],
      ]),
    ).toEqual([2.2, 2.2])
    expect(
      head([
        ['0 L/h', '2.5 m'],
        ['600 L/h', '2.6 m'],
        ['900 L/h', '1 m'],
      ]),
    ).toEqual([2.5, 2.5])
    const hump = { 'pump/curve': points(['0 L/h', '2.5 m'], ['600 L/h', '2.6 m'], ['900 L/h', '1 m']) }
    expect(only(hump, 'hydraulics/pump-curve')).toMatchObject({ verdict: 'watch', at: 'pump/curve/1' })
  })

  it('marks that stop halfway up are told to go on, and the tank is reckoned by its sizes', () => {
    const marks = [{ level: '100 mm', volume: '10 L' }]
    expect(only({ 'reservoir/marks': marks }, 'reservoir/marks-reach').verdict).toBe('watch')
    const brim = (changes: Changes) => only(changes, 'reservoir/fill-fits').slots['brim']
    expect(brim({ 'reservoir/marks': marks })).toEqual(brim({}))
  })

  it('a pump that has grown is doubted, and one that was dated anew is not said to contradict itself', () => {
    const tests = [test('2026-05-01', '2.4 L'), test('2026-06-01', '10 L')]
    const found = only({ 'pump/tests': tests }, 'hydraulics/pump-strength')
    expect(found.verdict).toBe('watch')
    expect(findingText(found, english, metric).sentence).toContain('take it again')
    expect(judged({ 'pump/tests': tests }).some((f) => f.id === 'hydraulics/tests-agree')).toBe(false)
  })

  it('a pump that fills the bucket ever slower at one height is to be cleaned, by its flow', () => {
    const tests = [test('2026-05-01', '5 L'), test('2026-06-01', '4.8 L'), test('2026-07-01', '3.2 L')]
    const found = only({ 'pump/tests': tests }, 'hydraulics/pump-strength')
    expect(found.verdict).toBe('watch')
    expect(found.measured).toMatchObject({ value: expect.closeTo(0.64, 6) })
  })

  it('a hose shorter than its lift is refused, and one that reaches is offered', () => {
    const short = only({ 'riser/length': '180 mm' }, 'hydraulics/hose-reaches')
    expect([short.verdict, short.measured]).toMatchObject(['fail', { value: 0.18 }])
    expect(short.levers).toEqual([{ set: 'riser/length', among: ['1.8 m'] }])
    expect(only({ 'riser/length': '1.8 m' }, 'hydraulics/hose-reaches').verdict).toBe('pass')
    expect(only({ 'riser/length': '1.7 m' }, 'hydraulics/hose-reaches').verdict).toBe('fail')
  })

  it('a test or a point that lacks a figure asks for it', () => {
    const needs = (changes: Changes, id: string) =>
      judged(changes)
        .filter((f) => f.id === id)
        .flatMap((f) => f.needs)
    const tests = [test('2026-05-01', '5 L', { outletHeight: undefined }), test('2026-05-02', '5 L')]
    const bare = JSON.parse(JSON.stringify(tests)) as unknown
    expect(needs({ 'pump/tests': bare }, 'hydraulics/bucket-test')).toEqual(['pump/tests/0/outletHeight'])
    expect(needs({ 'pump/curve': [{ flow: '0 L/h', head: '2 m' }] }, 'hydraulics/pump-curve')).toEqual([
      'pump/curve/1/flow',
      'pump/curve/1/head',
    ])
    expect(needs({ 'pump/curve': [{ flow: '0 L/h' }] }, 'hydraulics/pump-curve')).toEqual(['pump/curve/0/head'])
  })
})

describe('the bad example', () => {
  it('is told of each thing that it says twice', () => {
    const failing = evaluateDocument(example('bad/water-said-twice'), { remedies: false }).findings.filter(
      (f) => f.verdict === 'fail',
    )
    const told = ['hydraulics/pump-curve', 'hydraulics/tests-agree', 'reservoir/marks-rise', 'reservoir/lines-agree']
    expect(failing.map((f) => f.id)).toEqual(expect.arrayContaining([...told, 'reservoir/low-below-fill']))
  })
})

describe('a remedy for too little pump', () => {
  const weak: readonly (readonly [string, Changes, string])[] = [
    ['balcony', { 'pump/maxHead': '1.5 m' }, 'hydraulics/pump-lifts'],
    ['balcony', { 'pump/maxHead': '1.5 m' }, 'hydraulics/column-flow'],
    ['balcony', { 'pump/curve': points(['0 L/h', '1.6 m'], ['600 L/h', '1 m']) }, 'hydraulics/pump-lifts'],
    ['hall', { 'towers/count': 10, 'towers/perPump': 10, 'pump/maxFlow': '600 L/h' }, 'hydraulics/column-flow'],
  ]
  it.each(weak)(
    '%s with %o is offered a pump that meets %s, and every number of it can be bought',
    (name, changes, id) => {
      const { findings } = evaluateDocument(withAll(example(name), changes))
      const found = findings.find((f) => f.id === id)!
      expect(found.verdict).toBe('fail')
      const pump = found.remedies.find((r) => r.set === 'pump/maxHead')!
      expect(pump).toMatchObject({ leaves: 'pass' })
      const flow = pump.with.find((c) => c.set === 'pump/maxFlow')!
      expect(String(flow.to)).toMatch(/^\d+ L\/h$/)
      expect(Number(String(flow.to).split(' ')[0]) % 50).toBe(0)
      // What was known of the old pump goes with it.
      if ('pump/curve' in changes) expect(pump.with).toContainEqual({ set: 'pump/curve', from: 2, to: null })
      expect(found.remedies.every((r) => r.leaves === 'pass')).toBe(true)
    },
    60_000,
  )

  it('holes of half a millimetre and a distributor that floods are offered drills and counts', () => {
    for (const changes of [{}, { 'distributor/hole': '0.5 mm' }]) {
      const { findings } = evaluateDocument(withAll(example('balcony'), changes))
      const found = findings.find((f) => f.id === 'hydraulics/distributor-overflow')!
      expect(found.remedies[0]).toMatchObject({ set: 'distributor/hole', to: '5.5 mm', leaves: 'pass' })
      expect(found.remedies[0]!.with.map((c) => c.set)).toEqual(['distributor/holes', 'distributor/circle'])
    }
  }, 60_000)
})
