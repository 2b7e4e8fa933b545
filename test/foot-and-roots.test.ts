import { describe, expect, it } from 'vitest'
import { evaluateDocument } from '../src/evaluate.ts'
import type { PlanDocument } from '../src/plan/plan.ts'
import { metric } from '../src/render/display.ts'
import { english } from '../src/render/words/en/english.ts'
import { findingText } from '../src/render/words/sentences.ts'
import { example, madeByHand, withAll } from './plans.ts'

const found = (document: PlanDocument, id: string, remedies = false) =>
  evaluateDocument(document, { remedies }).findings.find((f) => f.id === id)!
const drained = { 'drain/holes': 8, 'drain/hole': '12 mm', 'drain/clogged': '50 %' }

describe('water over the foot', () => {
  it.each(['pocket', 'hole', 'fitting'])('is held against the lowest opening of a %s, without a stub', (name) => {
    const finding = found(withAll(madeByHand[name]!, drained), 'hydraulics/foot-water')
    expect(finding.needs.filter((n) => n.startsWith('column/stub/') && n !== 'column/stub/pipe')).toEqual([])
    expect(finding.needs).not.toContain('column/stub')
  })

  it('has a pocket’s slit on its mark', () => {
    const { facts, findings } = evaluateDocument(withAll(madeByHand['pocket']!, drained), { remedies: false })
    const { layout } = facts
    if (!('known' in layout)) throw new Error('no layout')
    const lowest_m = Math.min(...layout.known.sites.map((s) => s.mark_m))
    const finding = findings.find((f) => f.id === 'hydraulics/foot-water')!
    expect(finding.must.max).toBeLessThanOrEqual(lowest_m)
    expect(finding.verdict).not.toBe('unknown')
  })
})

describe('the flow of a column', () => {
  const said = (document: PlanDocument) =>
    findingText(found(document, 'hydraulics/column-flow'), english, metric).sentence
  const flow = { 'riser/neededFlow': '3.7 L/min' }
  it('asks for a bucket test until one was made', () => {
    expect(said(withAll(example('balcony'), flow))).toContain('Do the bucket test')
    const tests = [{ on: '2026-05-01', volume: '5 L', time: '80 s', outletHeight: '1.777 m' }]
    const tested = said(withAll(example('balcony'), { ...flow, 'pump/tests': tests }))
    expect(tested).not.toContain('Do the bucket test')
  })
})

describe('roots that fill the bore', () => {
  it('name the next pipe of the table that leaves them half free', () => {
    const finding = found(example('balcony'), 'hydraulics/root-room')
    const said = findingText(finding, english, metric).sentence
    const [, label] = /the next is (.+?)\./.exec(said)!
    const wider = found(withAll(example('balcony'), { 'column/pipe': label }), 'hydraulics/root-room')
    expect(finding.verdict).toBe('watch')
    expect(wider.verdict).toBe('pass')
  })
})
