import { describe, expect, it } from 'vitest'
import { evaluateDocument } from '../src/evaluate.ts'
import { booklet } from '../src/render/booklet/booklet.ts'
import { inches, metric, shownText, telling } from '../src/render/display.ts'
import { sheetSet } from '../src/render/sheets/set.ts'
import { finerThanTape, withinInches } from '../src/render/tape.ts'
import { bookletSentences } from '../src/render/words/en/booklet.ts'
import { pupilSentences } from '../src/render/words/en/booklet-pupils.ts'
import { english } from '../src/render/words/en/english.ts'
import { findingText } from '../src/render/words/sentences.ts'
import { example, inputOf } from './print/set-of.ts'

/** A metric unit after a figure or by itself. */
const METRIC =
  /\d\s?(mm|cm|m|km|mL|L|L\/min|L\/h|L\/day|m\/s|°C|K|kg|N|kPa|MPa|m²|kg\/m²)(?![\w/µ²°])|\b(millimet|centimet|met|lit)(re|er)s?\b|\b(mm|cm)\b/

/** What stays metric on purpose: the check bar, what a tape's rounding is off by, chemistry by the litre, both units said. */
const ON_PURPOSE: readonly RegExp[] = [
  /^(100|50|0)? ?mm$/,
  /\b100 mm\b|99\.5|100\.5 mm/,
  /^(off|lying bar|standing bar), mm$/,
  /^Both bars of/,
  /(\d|EC) mS\/cm|^conductivity, 25 °C$/,
  /grams in a litre|g in a litre|^in a litre$|^Per litre$/,
  /^[\d.]+ mL$|mL of (phosphoric|nitric|citric) acid/,
  /a litre, 8\.3 lb a US gallon/,
  /at a metre, 3 ft/,
]

const left = (texts: readonly string[]): readonly string[] =>
  texts
    .map((t) => t.replaceAll('\u00a0', ' '))
    .filter((t) => METRIC.test(t) && !ON_PURPOSE.some((allowed) => allowed.test(t)))

/** Every text in a tree of blocks or drawings, but of ids. */
function textsIn(x: unknown): readonly string[] {
  if (typeof x === 'string') return [x]
  if (Array.isArray(x)) return x.flatMap(textsIn)
  if (typeof x !== 'object' || x === null) return []
  return Object.entries(x).flatMap(([key, value]) => (key === 'id' ? [] : textsIn(value)))
}

const input = { ...inputOf(example('hall'), 'Letter'), display: { ...inches, currency: '$' } }

describe('a plan in inches', () => {
  it('has no metric left on any sheet but what is metric on purpose', () => {
    const said = sheetSet(input).pages.flatMap((p) =>
      p.page.drawing.flatMap((d) => (d.kind === 'text' ? [d.text] : [])),
    )
    expect(said.length).toBeGreaterThan(500)
    expect(left(said)).toEqual([])
  })

  it('nor in the booklet', () => {
    const said = textsIn(booklet({ ...input, booklet: bookletSentences, pupils: pupilSentences }))
    expect(said.length).toBeGreaterThan(1000)
    expect(left(said.filter((t) => t.length < 2000))).toEqual([])
  })

  it('nor in what the findings and their remedies say', () => {
    const findings = evaluateDocument(example('hall')).findings.map((f) => findingText(f, english, inches))
    expect(left(findings.flatMap((f) => [f.sentence, f.because, ...f.remedies]))).toEqual([])
  })

  it('would see a metric that is left', () => {
    expect(left(['The column is 1626 mm long.', 'at 3 L/min', '1/8 in a metre', 'carries 300 N'])).toHaveLength(4)
  })
})

describe('measures of the trade in inches', () => {
  const m = (value: number, tells?: 'head' | 'stock' | 'bought') =>
    shownText({ value, unit: 'm' }, tells === undefined ? inches : telling(tells, inches))

  it('wind in miles an hour, water in a hose in feet a second', () => {
    expect(shownText({ value: 17.8816, unit: 'm_s' }, telling('wind', inches))).toBe('40 mph')
    expect(shownText({ value: 0.6096, unit: 'm_s' }, inches)).toBe('2.0 ft/s')
    expect(shownText({ value: 17.8816, unit: 'm_s' }, telling('wind', metric))).toBe('18 m/s')
  })

  it('head in feet, in inches under a foot', () => {
    expect(m(2.49936, 'head')).toBe('8.2 ft')
    expect(m(0.1524, 'head')).toBe('6 in')
  })

  it('stock in whole and half feet, else by the tape', () => {
    expect([m(3.048, 'stock'), m(6.096, 'stock'), m(1.3716, 'stock')]).toEqual(['10 ft', '20 ft', '4.5 ft'])
    expect(m(1.6256, 'stock')).toBe('64 in')
  })

  it('the outside of a pipe as its standard prints it', () => {
    expect([m(0.1143, 'bought'), m(0.04826, 'bought'), m(0.0060198, 'bought')]).toEqual([
      '4.5 in',
      '1.9 in',
      '0.237 in',
    ])
  })

  it('a tolerance by a steel rule, never wider than allowed', () => {
    expect([0.001, 0.0005, 0.002, 0.0001].map((n) => withinInches(n, inches))).toEqual([
      '1/32 in',
      '1/64 in',
      '5/64 in',
      '0.004 in',
    ])
    expect(finerThanTape(0.0254 / 64, inches)).toBe('1/64 in')
  })
})
