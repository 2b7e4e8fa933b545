import type { BatchFacts } from '../../disciplines/nutrients/index.ts'
import { quantity } from '../../kernel/units.ts'
import { type Display, decimals, shownText } from '../display.ts'
import { type Drawing, line, type Point, polyline, rectangle } from '../drawing/primitives.ts'
import { figure } from '../tower/figures.ts'
import { type Sketch, type SketchFigure, together } from '../tower/sketch.ts'
import type { FeedViewWords } from '../words/en/feed-views.ts'
import { fill } from '../words/fill.ts'
import { CHART_FIGURE_mm } from './chart-axes.ts'

type Piece = Pick<Sketch, 'marks' | 'figures'>

/** Below this share of a column an ion is counted with the traces. */
const TRACE = 0.01
const LEADING_mm = 4
/** Difference that rounding leaves, meq/L. */
const NOTHING = 1e-6
const BAR_SHARE = 0.16
const BETWEEN_SHARE = 0.06
const LEADER_mm = 4
const WHY = { fact: 'feed/charge' } as const

interface Layer {
  readonly name: string
  readonly charge_eq_m3: number
}

/** Ions of one sign, most first; what is hardly there together at the end. */
function layers({ predicted }: BatchFacts, sign: 1 | -1, words: FeedViewWords): readonly Layer[] {
  const own = predicted.charges
    .filter(({ charge_eq_m3 }) => charge_eq_m3 * sign > 0)
    .map(({ ion, charge_eq_m3 }) => ({ ion, charge_eq_m3: Math.abs(charge_eq_m3) }))
    .sort((a, b) => b.charge_eq_m3 - a.charge_eq_m3)
  const sum = own.reduce((total, l) => total + l.charge_eq_m3, 0)
  const shown = own.filter((l) => l.charge_eq_m3 >= TRACE * sum)
  const traces = sum - shown.reduce((total, l) => total + l.charge_eq_m3, 0)
  const nameOf = (ion: string) => (ion === 'unmeasured' ? words.unmeasured : (words.ions[ion] ?? ion))
  return [
    ...shown.map(({ ion, charge_eq_m3 }) => ({ name: nameOf(ion), charge_eq_m3 })),
    ...(traces > 0 ? [{ name: words.traces, charge_eq_m3: traces }] : []),
  ]
}

/** Heights of the names, from the foot up, none nearer to the next than a line and none above the top. */
function apart(middles: readonly number[], top: number): readonly number[] {
  const out: number[] = []
  for (const y of middles) out.push(Math.max(y, (out.at(-1) ?? Number.NEGATIVE_INFINITY) + LEADING_mm))
  for (let i = out.length - 1, most = top; i >= 0; i--, most -= LEADING_mm) out[i] = Math.min(out[i]!, most)
  return out
}

interface Column {
  readonly layers: readonly Layer[]
  /** Edge of the bar on which the names stand, and the other. */
  readonly outer: number
  readonly inner: number
  readonly anchor: 'start' | 'end'
  readonly perCharge_mm: number
  readonly height_mm: number
  readonly display: Display
}

function column(c: Column): Piece {
  const way = c.anchor === 'end' ? -1 : 1
  const marks: Drawing[number][] = []
  let foot = 0
  const middles = c.layers.map(({ charge_eq_m3 }, i) => {
    const top = foot + charge_eq_m3 * c.perCharge_mm
    const [left, right] = [Math.min(c.inner, c.outer), Math.max(c.inner, c.outer)]
    marks.push(
      rectangle({ left, right, bottom: foot, top }, 'visible', { fill: i % 2 === 0 ? 'water' : 'none', part: 'batch' }),
    )
    const middle = (foot + top) / 2
    foot = top
    return middle
  })
  const at = apart(middles, c.height_mm - 1)
  const figures = c.layers.map(({ name, charge_eq_m3 }, i): SketchFigure => {
    const y = at[i]!
    const end: Point = [c.outer + way * LEADER_mm, y]
    marks.push(polyline([[c.outer, middles[i]!], end], 'dimension'))
    const text = `${name} ${decimals(charge_eq_m3, 2, c.display.decimal)}`
    return figure([end[0] + way * 0.8, y - CHART_FIGURE_mm * 0.34], text, WHY, { anchor: c.anchor, halo: false })
  })
  return { marks, figures }
}

/** Cations and anions of the batch by their charge, side by side: the two columns must be of one height. */
export function chargeBalance(given: {
  readonly batch: BatchFacts
  readonly words: FeedViewWords
  readonly display: Display
  readonly width_mm: number
  readonly height_mm: number
}): Piece {
  const { batch, words, display, width_mm, height_mm } = given
  const sides = [layers(batch, 1, words), layers(batch, -1, words)] as const
  const sums = sides.map((side) => side.reduce((sum, l) => sum + l.charge_eq_m3, 0)) as [number, number]
  const perCharge_mm = height_mm / Math.max(...sums, Number.MIN_VALUE)
  const [middle, bar, gap] = [width_mm / 2, width_mm * BAR_SHARE, width_mm * BETWEEN_SHARE]
  const shared = { perCharge_mm, height_mm, display }
  const foot = -CHART_FIGURE_mm * 1.5
  const head = (x: number, name: string, sum: number): readonly SketchFigure[] => [
    figure([x, foot], name, WHY, { anchor: 'middle', halo: false, tone: 'quiet' }),
    figure([x, height_mm + 1.6], decimals(sum, 2, display.decimal), WHY, { anchor: 'middle', halo: false }),
  ]
  const [left, right] = [middle - gap / 2 - bar, middle + gap / 2 + bar]
  const difference = Math.abs(sums[0] - sums[1])
  return together([
    column({ ...shared, layers: sides[0], outer: left, inner: left + bar, anchor: 'end' }),
    column({ ...shared, layers: sides[1], outer: right, inner: right - bar, anchor: 'start' }),
    {
      marks: [
        line([left - 2, 0], [right + 2, 0], 'visible'),
        ...sums.map((sum) => line([left - 2, sum * perCharge_mm], [right + 2, sum * perCharge_mm], 'hidden')),
      ],
      figures: [
        ...head(left + bar / 2, words.cations, sums[0]),
        ...head(right - bar / 2, words.anions, sums[1]),
        figure(
          [middle, foot - 4.4],
          fill(words.apart, { apart: shownText(quantity(difference < NOTHING ? 0 : difference, 'eq_m3'), display) }),
          WHY,
          { anchor: 'middle', halo: false, tone: 'quiet' },
        ),
      ],
    },
  ])
}
