/** The swings of one result as bars about its value: hatched where the reading is at its low end, open at its high end. */
import { quantity } from '../../kernel/units.ts'
import type { ResultSwings, Swing } from '../../sensitivity/swings.ts'
import { type Display, shownText } from '../display.ts'
import { hatch } from '../drawing/hatch.ts'
import { corners, type Drawing, lettering, line, type Rect, rectangle } from '../drawing/primitives.ts'
import { readingName, swingText } from '../tables/sensitivity.ts'
import type { Words } from '../words/words.ts'
import { CHART_FIGURE_mm } from './chart-axes.ts'

export interface SwingChart {
  readonly drawing: Drawing
  readonly width_mm: number
  readonly height_mm: number
}

const ROW_mm = 8.6
const BAR_mm = 2.6
const HEAD_mm = 6
/** Room for a figure beside the longest bar. */
const FIGURE_ROOM_mm = 17
const LEAST_mm = 0.15
/** Signs as they are set. */
const MINUS = '−'

interface Given {
  readonly result: ResultSwings
  readonly words: Words
  readonly display: Display
  readonly width_mm: number
}

/** From the value to one end of a bar, with its figure; nothing where the result does not move that way. */
function side(
  g: Given,
  middle: number,
  per_mm: number,
  y: number,
  end: { change: number | null; low: boolean },
): Drawing {
  const { change, low } = end
  if (change === null || Math.abs(change) * per_mm < LEAST_mm) return []
  const x = middle + change * per_mm
  const box: Rect = { left: Math.min(middle, x), right: Math.max(middle, x), bottom: y, top: y + BAR_mm }
  const text = `${change < 0 ? MINUS : '+'}${swingText(g.result, change, g.display)}`
  return [
    rectangle(box, 'visible', { fill: 'paper' }),
    ...(low ? hatch({ rings: [corners(box)], pitch_mm: 0.9 }) : []),
    lettering([change < 0 ? x - 1 : x + 1, y + 0.3], text, {
      size_mm: CHART_FIGURE_mm,
      anchor: change < 0 ? 'end' : 'start',
    }),
  ]
}

/** Both ends of one reading; where both move the result the same way, the shorter stands inside the longer. */
function bar(g: Given, middle: number, per_mm: number, y: number, s: Swing): Drawing {
  const ends = [
    { change: s.low, low: true },
    { change: s.high, low: false },
  ].toSorted((a, b) => Math.abs(b.change ?? 0) - Math.abs(a.change ?? 0))
  const same = (s.low ?? 0) * (s.high ?? 0) > 0
  const [far, near] = ends.map((e) => side(g, middle, per_mm, y, e))
  return [...(far ?? []), ...(same ? (near ?? []).filter((p) => p.kind !== 'text') : (near ?? []))]
}

/** Null where nothing moves the result and nothing is open. */
export function swingChart(g: Given): SwingChart | null {
  const { result, words, width_mm } = g
  const own = result.own > 0
  const rows = result.swings.length + (own ? 1 : 0)
  if (rows === 0) return null
  const most = Math.max(result.own, ...result.swings.map((s) => s.size))
  const middle = width_mm / 2
  const per_mm = (middle - FIGURE_ROOM_mm) / most
  const height_mm = HEAD_mm + rows * ROW_mm
  const foot = (i: number) => height_mm - HEAD_mm - (i + 1) * ROW_mm + 1.2
  const name = (text: string, i: number) =>
    lettering([0, foot(i) + BAR_mm + 1.1], text, { size_mm: CHART_FIGURE_mm, tone: 'quiet', halo: true })
  const reach = result.own * per_mm
  const y = foot(rows - 1)
  const drawing: Drawing = [
    line([middle, 0], [middle, height_mm - HEAD_mm + 0.8], 'centre'),
    lettering([middle, height_mm - HEAD_mm + 2], shownText(quantity(result.value, result.unit), g.display), {
      size_mm: CHART_FIGURE_mm,
      anchor: 'middle',
    }),
    ...result.swings.flatMap((s, i) => [name(readingName(s.at, words), i), ...bar(g, middle, per_mm, foot(i), s)]),
    ...(own
      ? [
          name(words.sensitivity.model, rows - 1),
          rectangle({ left: middle - reach, right: middle + reach, bottom: y, top: y + BAR_mm }, 'hidden'),
          lettering([middle + reach + 1, y + 0.3], `±${swingText(result, result.own, g.display)}`, {
            size_mm: CHART_FIGURE_mm,
          }),
        ]
      : []),
  ]
  return { drawing, width_mm, height_mm }
}
