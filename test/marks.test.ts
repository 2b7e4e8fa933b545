import { describe, expect, it } from 'vitest'
import { evaluateDocument } from '../src/evaluate.ts'
import { quantity } from '../src/kernel/units.ts'
import { booklet } from '../src/render/booklet/booklet.ts'
import { inches, metric, show, telling } from '../src/render/display.ts'
import { context } from '../src/render/sheets/context.ts'
import { tablesOf } from '../src/render/sheets/marking.ts'
import { stepText } from '../src/render/sheets/steps.ts'
import { stepTexts } from '../src/render/tables/steps.ts'
import { bookletSentences } from '../src/render/words/en/booklet.ts'
import { pupilSentences } from '../src/render/words/en/booklet-pupils.ts'
import { english } from '../src/render/words/en/english.ts'
import { example, inputOf } from './print/set-of.ts'

/** Every text in a tree of blocks or drawings. */
function textsIn(x: unknown): readonly string[] {
  if (typeof x === 'string') return [x]
  return typeof x === 'object' && x !== null ? Object.values(x).flatMap(textsIn) : []
}

describe.each([
  ['balcony', metric],
  ['school', metric],
  ['hall', inches],
] as const)('marks of %s', (name, units) => {
  const input = { ...inputOf(example(name), 'A4'), display: { ...units, currency: '' } }
  const { facts } = evaluateDocument(example(name))
  if (!('known' in facts.layout) || !('known' in facts.build)) throw new Error('no layout')
  const [layout, build] = [facts.layout.known, facts.build.known]
  const c = context(input)
  const asOnPage = (m: number) => show(quantity(m, 'm'), telling('mark', input.display)).figure
  const arcs = layout.lines.map((l) => asOnPage(l.arc.marked_m))
  const heights = layout.lines[0]!.marks.map((m) => asOnPage(m.marked_m))

  it('have no decimals that the tape does not have', () => {
    expect([...arcs, ...heights].filter((t) => /[.,]0$/.test(t))).toEqual([])
  })

  it('are the same numbers on page and sheet', () => {
    const { rows, arcRows } = tablesOf(c, layout)
    expect(arcRows.map((r) => r[1])).toEqual(arcs)
    for (const height of heights) expect(rows.map((r) => r[0])).toContain(height)
  })

  it('are told in the steps of page, sheet and booklet as running marks, so that nothing adds up', () => {
    const unit = input.display.lengths
    const told = [`${arcs.join(', ')} ${unit}`, `${heights.join(', ')} ${unit}`]
    const page = stepTexts(build, english, input.display).flatMap((s) => s.acts)
    const paper = build.steps.flatMap((s, i) => stepText(c, s, i + 1, build).acts)
    const book = textsIn(booklet({ ...input, booklet: bookletSentences, pupils: pupilSentences }))
    for (const t of told)
      for (const texts of [page, paper, book])
        expect(
          texts.some((text) => text.replaceAll('\u00a0', ' ').includes(t)),
          t,
        ).toBe(true)
  })

  it('and every other length of a step is the same on page and sheet', () => {
    const lengths = (acts: readonly string[]) => acts.flatMap((a) => a.match(/[\d.]+ mm\b/g) ?? [])
    const page = stepTexts(build, english, input.display).flatMap((s) => s.acts)
    const paper = build.steps.flatMap((s, i) => stepText(c, s, i + 1, build).acts)
    expect(lengths(page)).toEqual(lengths(paper))
  })
})
