import type { BatchFacts } from '../../disciplines/nutrients/index.ts'
import { type Display, decimals } from '../display.ts'
import { brokenLines } from '../drawing/letters.ts'
import { circle, contour, type Drawing, line, type Point, rectangle } from '../drawing/primitives.ts'
import { figure } from '../tower/figures.ts'
import { type Sketch, type SketchFigure, together } from '../tower/sketch.ts'
import type { FeedViewWords } from '../words/en/feed-views.ts'
import { fill } from '../words/fill.ts'
import { CHART_FIGURE_mm } from './chart-axes.ts'

type Piece = Pick<Sketch, 'marks' | 'figures'>

const AXIS_mm = 8
const MARK_mm = 1.1
const NAME_mm = 2.6
const LEADING_mm = 3.7
const WHY = { fact: 'feed/ph' } as const

/** One solution: its pH as mixed, and after it has met the air. */
interface Rung {
  readonly name: string
  readonly now: number
  readonly later: number
}

/** The water, the water with acid alone, and the batch. */
function rungs(
  batch: BatchFacts,
  pH: number | null,
  words: FeedViewWords,
  nameOf: (id: string) => string,
): readonly Rung[] {
  const { waterPh, predicted, acids } = batch
  const middle = (r: { low: number; high: number }) => (r.low + r.high) / 2
  const acid = pH === null ? undefined : (acids.find((a) => !a.product.passing) ?? acids[0])
  const named = (text: string) => fill(text, { acid: nameOf(acid?.product.id ?? '') })
  return [
    { name: words.water, now: waterPh.closed, later: waterPh.inAir },
    ...(acid === undefined || pH === null || acid.lasting_mol_m3 === 0
      ? []
      : [
          { name: named(words.acidToday), now: acid.now_mol_m3 === 0 ? waterPh.closed : pH, later: acid.driftsTo_pH },
          { name: named(words.acidLasting), now: acid.startsAt_pH, later: pH },
        ]),
    { name: words.batch, now: middle(predicted.pHClosed), later: middle(predicted.pHInAir) },
  ]
}

function arrow([x0, y0]: Point, [x1, y1]: Point): Drawing {
  const length = Math.hypot(x1 - x0, y1 - y0)
  if (length < 2 * MARK_mm + 2) return []
  const [ux, uy] = [(x1 - x0) / length, (y1 - y0) / length]
  const tip: Point = [x1 - ux * (MARK_mm + 0.3), y1 - uy * (MARK_mm + 0.3)]
  const back: Point = [tip[0] - ux * 2.2, tip[1] - uy * 2.2]
  return [
    line([x0 + ux * MARK_mm, y0 + uy * MARK_mm], back, 'visible'),
    contour([tip, [back[0] - uy * 0.7, back[1] + ux * 0.7], [back[0] + uy * 0.7, back[1] - ux * 0.7]], 'dimension', {
      fill: 'solid',
    }),
  ]
}

function drawn(r: Rung, left: number, width: number, at: (pH: number) => number, display: Display): Piece {
  const [a, b]: [Point, Point] = [
    [left + width * 0.28, at(r.now)],
    [left + width * 0.72, at(r.later)],
  ]
  const text = (pH: number) => decimals(pH, 2, display.decimal)
  const above = r.later >= r.now
  const name = brokenLines({ text: r.name, face: 'drafting', size_mm: NAME_mm, width_mm: width - 1 })
  const small = { anchor: 'middle' as const, size_mm: CHART_FIGURE_mm * 0.95 }
  return {
    marks: [
      ...arrow(a, b),
      circle(a, MARK_mm, 'cut', { fill: 'paper', part: 'batch' }),
      circle(b, MARK_mm, 'visible', { fill: 'solid', part: 'batch' }),
    ],
    figures: [
      figure([a[0], a[1] + (above ? -4 : 2.2)], text(r.now), WHY, small),
      figure([b[0], b[1] + (above ? 2.2 : -4)], text(r.later), WHY, small),
      ...name.map((t, i) =>
        figure([left + width / 2, -4 - i * LEADING_mm], t, WHY, { anchor: 'middle', size_mm: NAME_mm, halo: false }),
      ),
    ],
  }
}

/** The band that is wanted: what is washed beneath the rungs, and what is said in it. */
function wantedBand(
  { pH, half }: { readonly pH: number; readonly half: number },
  at: (pH: number) => number,
  right: number,
  { words, display }: { readonly words: FeedViewWords; readonly display: Display },
): Piece {
  const [low, high] = [pH - half, pH + half]
  const text = (n: number) => decimals(n, 1, display.decimal)
  return {
    marks: [
      rectangle({ left: AXIS_mm, right, bottom: at(low), top: at(high) }, null, { fill: 'water', part: 'batch' }),
    ],
    figures: [
      figure(
        [AXIS_mm + 1, at(low) + 0.5],
        fill(words.pHWanted, { low: text(low), high: text(high) }),
        { field: 'feed/pH' },
        { tone: 'quiet', size_mm: CHART_FIGURE_mm * 0.92, halo: false },
      ),
    ],
  }
}

/** Where the pH stands as mixed and after the carbon dioxide has gone: of the water, with acid alone, of the batch. */
export function phLadder(given: {
  readonly batch: BatchFacts
  /** pH wanted, and half of the band around it; null where none is. */
  readonly wanted: { readonly pH: number; readonly half: number } | null
  readonly words: FeedViewWords
  /** What a substance is called; as the plan has it where absent. */
  readonly nameOf?: (id: string) => string
  readonly display: Display
  readonly width_mm: number
  readonly height_mm: number
}): Piece {
  const { batch, wanted, words, nameOf = (id: string) => id, display, width_mm, height_mm } = given
  const all = rungs(batch, wanted?.pH ?? null, words, nameOf)
  const shown = [
    ...all.flatMap((r) => [r.now, r.later]),
    ...(wanted ? [wanted.pH - wanted.half, wanted.pH + wanted.half] : []),
  ]
  const [low, high] = [Math.floor(Math.min(...shown) - 0.3), Math.ceil(Math.max(...shown) + 0.3)]
  const at = (pH: number) => ((pH - low) / (high - low)) * height_mm
  const steps = Array.from({ length: high - low + 1 }, (_, i) => low + i)
  const width = (width_mm - AXIS_mm) / all.length
  const band = wanted && wantedBand(wanted, at, width_mm, { words, display })
  const key: readonly SketchFigure[] = [
    figure([AXIS_mm + 4, height_mm + 4.4], words.justMixed, WHY, { halo: false }),
    figure([AXIS_mm + width_mm * 0.24 + 3, height_mm + 4.4], words.inAir, WHY, { halo: false }),
  ]
  return together([
    {
      marks: [
        ...(band?.marks ?? []),
        ...steps.map((n) => line([AXIS_mm, at(n)], [width_mm, at(n)], 'thin', { part: 'rule' })),
        line([AXIS_mm, 0], [AXIS_mm, height_mm], 'visible'),
        circle([AXIS_mm + 2, height_mm + 5.3], MARK_mm, 'cut', { fill: 'paper' }),
        circle([AXIS_mm + width_mm * 0.24 + 1, height_mm + 5.3], MARK_mm, 'visible', { fill: 'solid' }),
      ],
      figures: [
        ...steps.map((n) =>
          figure([AXIS_mm - 1.6, at(n) - CHART_FIGURE_mm * 0.34], String(n), WHY, { anchor: 'end', halo: false }),
        ),
        figure([0, height_mm + 4.4], 'pH', WHY, { halo: false, tone: 'quiet' }),
        ...key,
      ],
    },
    ...all.map((r, i) => drawn(r, AXIS_mm + i * width, width, at, display)),
    { marks: [], figures: band?.figures ?? [] },
  ])
}
