import { describe, expect, it } from 'vitest'
import { withValue } from '../src/plan/patch.ts'
import type { PlanDocument } from '../src/plan/plan.ts'
import { inches, metric } from '../src/render/display.ts'
import { drillText } from '../src/render/drill.ts'
import { sheetSet } from '../src/render/sheets/set.ts'
import { stepTexts } from '../src/render/tables/steps.ts'
import { english } from '../src/render/words/en/english.ts'
import { findingText } from '../src/render/words/sentences.ts'
import { example, inputOf } from './print/set-of.ts'

/** A plan as its owner with an inch tape of 1/16 in reads it. */
function read(document: PlanDocument) {
  const input = { ...inputOf(document, 'Letter'), display: inches }
  const { build } = input.facts
  if (!('known' in build)) throw new Error('no steps')
  const steps = stepTexts(build.known, english, inches).flatMap((s) => s.acts)
  const sheets = sheetSet(input).pages.map((p) => ({
    id: p.id,
    said: p.page.drawing.flatMap((d) => (d.kind === 'text' ? [d.text.replaceAll('\u00a0', ' ')] : [])).join(' '),
  }))
  const findings = input.findings.map((f) => ({ id: f.id, said: findingText(f, english, inches).sentence }))
  const of = (rows: readonly { id: string; said: string }[], id: string) =>
    rows
      .filter((r) => r.id === id)
      .map((r) => r.said)
      .join(' ')
  return { steps: steps.join(' '), sheet: (id: string) => of(sheets, id), finding: (id: string) => of(findings, id) }
}

describe('a hole is told by its drill', () => {
  it('by the drill’s own mark, by the nearest of the owner’s set where there is none', () => {
    expect(drillText(0.00396875, inches)).toBe('5/32 in')
    expect(drillText(0.0055, inches)).toBe('7/32 in')
    expect(drillText(0.006, inches)).toBe('15/64 in')
    expect(drillText(0.0016, inches)).toBe('1/16 in')
    expect(drillText(0.0055, { ...metric, decimal: ',' })).toBe('5,5 mm')
    expect(drillText({ unit: 'm', low: 0.004, high: 0.006 }, inches)).toBe('5/32–15/64 in')
    // An eighth would be a tenth more hole than 3 mm.
    expect(drillText(0.003, inches)).toBe('0.118 in')
  })

  it('keeps the 5/32 in of the hall on its sheets and in its steps', () => {
    const hall = read(example('hall'))
    for (const said of [hall.steps, hall.sheet('steps')]) expect(said).toContain('12 holes of 5/32 in')
    expect(hall.sheet('distributor')).toContain('Drill 5/32 in')
    expect(hall.sheet('distributor')).not.toContain('3/16 in')
  })

  it('advises the drill that was proved, not the mark beside it', () => {
    const many = withValue(withValue(example('balcony'), 'distributor/hole', '3 mm'), 'distributor/holes', 8)
    const { finding } = read(many)
    expect(finding('hydraulics/distributor-overflow')).toMatch(/holes of \d+\/(32|64) in would do/)
    expect(finding('hydraulics/hole-size')).toContain('0.118 in')
  })
})
