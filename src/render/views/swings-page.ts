/** The swings of a plan on one page, two columns of results. */
import type { Sensitivity } from '../../sensitivity/swings.ts'
import type { Display } from '../display.ts'
import { hatch } from '../drawing/hatch.ts'
import { lettersWidth } from '../drawing/letters.ts'
import { corners, type Drawing, lettering, type Page, type Rect, rectangle } from '../drawing/primitives.ts'
import { moved } from '../drawing/transform.ts'
import type { Words } from '../words/words.ts'
import { swingChart } from './swings.ts'

const MARGIN_mm = 12
const COLUMN_mm = 88
const GAP_mm = 10
const BELOW_mm = 4.5
const NAME_mm = 5.5
const TITLE_mm = 10
const KEY_mm = 2.8

interface Piece {
  readonly drawing: Drawing
  readonly height_mm: number
}

/** Two columns of as like a height as their order allows. */
function columns(pieces: readonly Piece[]): readonly (readonly Piece[])[] {
  const high = (of: readonly Piece[]) => of.reduce((sum, p) => sum + p.height_mm + BELOW_mm, 0)
  const cuts = pieces.map((_, i) => i + 1)
  const best = cuts.reduce((a, b) => {
    const tallest = (cut: number) => Math.max(high(pieces.slice(0, cut)), high(pieces.slice(cut)))
    return tallest(b) < tallest(a) ? b : a
  }, pieces.length)
  return [pieces.slice(0, best), pieces.slice(best)]
}

/** What hatched and open bars stand for. */
function keyOf({ sensitivity: w }: Words, left: number): Drawing {
  const box = (x: number): Rect => ({ left: x, right: x + 6, bottom: -4.2, top: -1.8 })
  const low = box(left)
  const second = left + 8 + lettersWidth({ text: w.low, face: 'drafting', size_mm: KEY_mm }) + 5
  return [
    rectangle(low, 'visible'),
    ...hatch({ rings: [corners(low)], pitch_mm: 0.9 }),
    lettering([low.right + 2, -4], w.low, { size_mm: KEY_mm, tone: 'quiet' }),
    rectangle(box(second), 'visible'),
    lettering([second + 8, -4], w.high, { size_mm: KEY_mm, tone: 'quiet' }),
  ]
}

export function swingsPage(of: Sensitivity, words: Words, display: Display): Page {
  const w = words.sensitivity
  const pieces = of.results.flatMap((result): Piece[] => {
    const chart = swingChart({ result, words, display, width_mm: COLUMN_mm })
    if (chart === null) return []
    const name = lettering([0, chart.height_mm + 1], w.results[result.id], { face: 'strong', size_mm: 3.6 })
    return [{ drawing: [...chart.drawing, name], height_mm: chart.height_mm + NAME_mm }]
  })
  const stacks = columns(pieces).map((column, i) => {
    let down = TITLE_mm
    const drawing = column.flatMap((p): Drawing => {
      down += p.height_mm
      const at = moved(p.drawing, [MARGIN_mm + i * (COLUMN_mm + GAP_mm), -down])
      down += BELOW_mm
      return at
    })
    return { drawing, down }
  })
  const height_mm = Math.max(TITLE_mm, ...stacks.map((s) => s.down)) + 2 * MARGIN_mm
  const heading: Drawing = [
    lettering([MARGIN_mm, -4], w.title, { face: 'strong', size_mm: 5 }),
    ...keyOf(words, MARGIN_mm + COLUMN_mm + GAP_mm),
  ]
  const drawing = moved([...heading, ...stacks.flatMap((s) => s.drawing)], [0, height_mm - MARGIN_mm])
  return { width_mm: 2 * (COLUMN_mm + MARGIN_mm) + GAP_mm, height_mm, drawing }
}
