import type { BatchFacts } from '../../disciplines/nutrients/index.ts'
import { targetBand } from '../../disciplines/nutrients/target-bands.ts'
import { quantity } from '../../kernel/units.ts'
import { type Display, show, shownText } from '../display.ts'
import { circle, contour, type Drawing, line, type Point, rectangle } from '../drawing/primitives.ts'
import { figure } from '../tower/figures.ts'
import { type Sketch, together } from '../tower/sketch.ts'
import type { FeedViewWords } from '../words/en/feed-views.ts'
import { CHART_FIGURE_mm } from './chart-axes.ts'

type Piece = Pick<Sketch, 'marks' | 'figures'>
type Target = BatchFacts['problem']['targets'][number]

const NAME_mm = 12
const FIGURES_mm = 33
const WANTED_mm = 19
/** Ends of the ruler, as shares of what is wanted; each step doubles. */
const RULER = [0.25, 0.5, 1, 2, 4] as const
const HALF_BAND_mm = 1.5
const MARK_mm = 1.05

/** The ruler that all rows share: what is wanted lies in its middle, twice as much as far right as half is left. */
const place = (share: number, left: number, right: number): number => {
  const [low, high] = [Math.log(RULER[0]), Math.log(RULER.at(-1)!)]
  return left + ((Math.log(share) - low) / (high - low)) * (right - left)
}

/** Shape tells the verdict: a stroke holds, an open ring is to be watched, a disc fails. */
function mark(at: Point, share: number, band: ReturnType<typeof targetBand>): Drawing {
  const [x, y] = at
  if (share < band.mustLow || share > band.mustHigh) return [circle(at, MARK_mm, 'visible', { fill: 'solid' })]
  if (share < band.wantLow || share > band.wantHigh) return [circle(at, MARK_mm, 'cut', { fill: 'paper' })]
  return [line([x, y - HALF_BAND_mm], [x, y + HALF_BAND_mm], 'cut')]
}

/** What lies beyond the ruler is an arrow at its end. */
const beyond = ([x, y]: Point, way: 1 | -1): Drawing => [
  contour(
    [
      [x + way * 2, y],
      [x, y + 1],
      [x, y - 1],
    ],
    'dimension',
    { fill: 'solid' },
  ),
]

function row(target: Target, y: number, given: Given, left: number, right: number): Piece {
  const { batch, display, words } = given
  const { nutrient, wanted_g_m3 } = target
  const reached_g_m3 = batch.reached_g_m3[nutrient]
  const share = reached_g_m3 / wanted_g_m3
  const band = targetBand(nutrient)
  const at = (s: number) => place(Math.min(RULER.at(-1)!, Math.max(RULER[0], s)), left, right)
  const off = share < RULER[0] ? -1 : share > RULER.at(-1)! ? 1 : 0
  const base = y - CHART_FIGURE_mm * 0.34
  const part = 'batch'
  return {
    marks: [
      line([at(band.mustLow), y], [at(band.mustHigh), y], 'thin', { part }),
      rectangle(
        { left: at(band.wantLow), right: at(band.wantHigh), bottom: y - HALF_BAND_mm, top: y + HALF_BAND_mm },
        'thin',
        { fill: 'water', part },
      ),
      ...[band.mustLow, band.mustHigh].map((s) => line([at(s), y - 0.8], [at(s), y + 0.8], 'thin', { part })),
      ...mark([at(share), y], share, band).map((p) => ({ ...p, part })),
      ...(off === 0 ? [] : beyond([at(share), y], off)),
    ],
    figures: [
      figure([0, base], words.ions[nutrient] ?? nutrient, { field: `feed/targets/${nutrient}` }, { halo: false }),
      figure(
        [given.width_mm - WANTED_mm, base],
        show(quantity(reached_g_m3, 'g_m3'), display).figure,
        { fact: 'feed/reached' },
        { anchor: 'end', halo: false },
      ),
      figure(
        [given.width_mm, base],
        shownText(quantity(wanted_g_m3, 'g_m3'), display),
        { field: `feed/targets/${nutrient}` },
        { anchor: 'end', halo: false, tone: 'quiet' },
      ),
    ],
  }
}

interface Given {
  readonly batch: BatchFacts
  readonly words: FeedViewWords
  readonly display: Display
  readonly width_mm: number
  /** Height of a row. */
  readonly row_mm: number
}

/** Every element against its target: band that is good, band that feeds, and what the batch reaches. */
export function ionBands(given: Given): Piece {
  const { batch, words, width_mm, row_mm } = given
  const { targets } = batch.problem
  const [left, right] = [NAME_mm, width_mm - FIGURES_mm]
  const foot = -targets.length * row_mm
  const small = { size_mm: CHART_FIGURE_mm * 0.92, halo: false, tone: 'quiet' as const }
  return together([
    {
      marks: RULER.map((s) => {
        const x = place(s, left, right)
        return line([x, row_mm * 0.35], [x, foot + row_mm * 0.2], s === 1 ? 'visible' : 'thin', {
          part: 'rule',
        })
      }),
      figures: [
        ...RULER.map((s) =>
          figure(
            [place(s, left, right), foot - 2.6],
            `${s * 100} %`,
            { fact: 'feed/band' },
            { ...small, anchor: 'middle' },
          ),
        ),
        figure([(left + right) / 2, foot - 6.6], words.ofTarget, { fact: 'feed/band' }, { ...small, anchor: 'middle' }),
        figure(
          [width_mm - WANTED_mm, row_mm * 0.45],
          words.reached,
          { fact: 'feed/reached' },
          { ...small, anchor: 'end' },
        ),
        figure([width_mm, row_mm * 0.45], words.wanted, { fact: 'feed/band' }, { ...small, anchor: 'end' }),
      ],
    },
    ...targets.map((target, i) => row(target, -(i + 0.5) * row_mm, given, left, right)),
  ])
}
