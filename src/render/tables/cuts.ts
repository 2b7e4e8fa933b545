import type { CutsFacts, MaterialCuts, Stick } from '../../disciplines/cuts/index.ts'
import { quantity } from '../../kernel/units.ts'
import { type Display, shownText, telling } from '../display.ts'
import { fill, oneOf } from '../words/fill.ts'
import { placeName } from '../words/sentences.ts'
import type { Words } from '../words/words.ts'

/** One way of cutting a length, and how often it is cut so. */
export interface PatternText {
  readonly material: string
  readonly times: string
  readonly length: string
  readonly from: string
  readonly pieces: string
  readonly rest: string
}

const length = (m: number, display: Display): string => shownText(quantity(m, 'm'), display)

/** `3 × stub 78.6 mm`, for each sort of piece on the stick. */
function piecesText(stick: Stick, m: MaterialCuts, display: Display): string {
  return m.pieces
    .map((p) => ({ p, n: stick.pieces.filter((s) => s.id === p.id).length }))
    .filter(({ n }) => n > 0)
    .map(({ p, n }) => `${n} × ${length(p.length_m + (p.cut.kind === 'cope' ? p.cut.extent_m : 0), display)}`)
    .join(', ')
}

export function patternTexts(m: MaterialCuts, words: Words, display: Display): readonly PatternText[] {
  return (m.plan?.patterns ?? []).map(({ times_count, stick }) => ({
    material: words.tables[`material-${m.of}`]!,
    times: String(times_count),
    length: length(stick.length_m, telling('stock', display)),
    from: words.tables[stick.from]!,
    pieces: piecesText(stick, m, display),
    rest: length(stick.leftover_m, display),
  }))
}

/** What came of the material, in one sentence. */
export function materialText(m: MaterialCuts, words: Words, display: Display): string {
  const name = words.tables[`material-${m.of}`]!
  const material =
    m.label !== null ? `${name} ${m.label}` : m.bore_m === null ? name : `${name} ${length(m.bore_m, display)}`
  const slots = {
    material,
    length: length(m.pieces_m, display),
    sticks: String(m.plan?.sticks.length ?? 0),
    needs: oneOf(
      m.needs.map((n) => placeName(n, words)),
      words.phrases['and']!,
    ),
  }
  if (m.needs.length > 0) return fill(words.tables['no-plan']!, slots)
  return fill(words.tables[m.plan === null ? 'by-metre' : m.plan.status]!, slots)
}

/** What the saw takes and who says so. */
export function kerfText(facts: CutsFacts, words: Words, display: Display): string | null {
  if (facts.kerf === null) return null
  return fill(words.tables['kerf']!, {
    kerf: length(facts.kerf.kerf_m, display),
    source: words.tables[`kerf-${facts.kerf.from}`]!,
    trim: length(facts.trim_m, display),
  })
}
