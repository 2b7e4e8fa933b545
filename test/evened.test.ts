import { describe, expect, it } from 'vitest'
import { evaluateDocument } from '../src/evaluate.ts'
import { isKnown } from '../src/plan/known.ts'
import type { PlanDocument } from '../src/plan/plan.ts'
import { inches, metric } from '../src/render/display.ts'
import { sheetSet } from '../src/render/sheets/set.ts'
import { english } from '../src/render/words/en/english.ts'
import { language as spanish } from '../src/render/words/es/language.ts'
import { findingText } from '../src/render/words/sentences.ts'
import { withAll } from './plans.ts'
import { example, inputOf } from './print/set-of.ts'

const hall = withAll(example('hall'), {
  'towers/count': 10,
  'towers/perPump': 10,
  'riser/bore': '1 in',
  'riser/length': '7 ft',
  'riser/header': { bore: '1 in', length: '20 ft', losses: 2 },
  'riser/drops': { bore: '1/2 in', length: '2 ft', losses: 3 },
})
const strong = { 'pump/maxHead': '25 ft', 'pump/maxFlow': '3000 US gph' }
const litres = { on: '2026-05-01', volume: '5 L', time: '4 s', outletHeight: '7 ft' }

const flowOf = (document: PlanDocument) => {
  const { flow } = evaluateDocument(document, { remedies: false }).facts.hydraulics
  if (!isKnown(flow)) throw new Error('no flow')
  return flow.known
}
const told = (document: PlanDocument, display = inches, words = english) => {
  const finding = evaluateDocument(document, { remedies: false }).findings.find((f) => f.id === 'hydraulics/spread')!
  return findingText(finding, words, display).sentence
}

describe('columns evened by a bucket', () => {
  const document = withAll(hall, strong)

  it('tells the seconds in which a bucket fills, by gallon or by litres', () => {
    const { even_m3_s } = flowOf(document)
    const seconds = (volume_m3: number) => [
      Math.round(volume_m3 / even_m3_s!.high),
      Math.round(volume_m3 / even_m3_s!.low),
    ]
    const [a, b] = seconds(3.785411784e-3)
    expect(told(document)).toContain(`1 US gal in ${a}–${b} s`)
    const [c, d] = seconds(0.01)
    expect(told(document, metric)).toContain(`10 L in ${c}–${d} s`)
  })

  it('takes the bucket that the plan names', () => {
    expect(told(withAll(document, { 'pump/tests': [litres] }), metric)).toMatch(/ 5 L in \d+(–\d+)? s/)
  })

  it('says what each would get where that is too little, and no valve where none helps', () => {
    expect(told(withAll(hall, { 'pump/maxHead': '9 ft' }))).toMatch(/each would get [\d–]+ US gph, and 48 US gph is/)
    const high = { 'riser/columns': [{ column: 10, outletHeight: '9 ft' }] }
    expect(told(withAll(hall, high))).toContain('No valve evens them')
    expect(told(withAll(hall, { 'pump/maxHead': '9 ft' }), metric, spanish.words)).toContain('hacen falta 3.0 L/min')
  })

  it('bores as proposed even the columns without a valve', () => {
    const { columns, spread } = flowOf(document)
    const drops = columns.map((c, i) => ({ column: i + 1, dropBore: `${c.evenBore_m! * 1000} mm` }))
    expect(spread.low).toBeGreaterThan(0.15)
    expect(flowOf(withAll(document, { 'riser/columns': drops })).spread.low).toBeLessThan(0.005)
  })

  it('is a page of its own, each column in the order of its valve', () => {
    const said = (d: PlanDocument) =>
      sheetSet({ ...inputOf(d, 'Letter'), display: inches }, ['water']).pages.map((p) =>
        p.page.drawing.flatMap((x) => (x.kind === 'text' ? [x.text.replaceAll('\u00a0', ' ')] : [])),
      )
    const page = said(document).find((lines) => lines.some((l) => l.includes('columns evened')))!
    const order = page.filter((l) => /^column \d+$/.test(l)).map((l) => Number(l.slice(7)))
    const { columns } = flowOf(document)
    expect(order).toHaveLength(10)
    const losses = order.map((n) => columns[n - 1]!.valveLosses!)
    expect(losses).toEqual([...losses].sort((a, b) => b - a))
    expect(said(example('hall')).some((lines) => lines.some((l) => l.includes('columns evened')))).toBe(false)
  })
})
