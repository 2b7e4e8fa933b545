import { dimension } from '../drawing/dimension.ts'
import { line, type Point } from '../drawing/primitives.ts'
import { moved } from '../drawing/transform.ts'
import type { Elevation } from '../views/elevation.ts'
import { unrolled } from '../views/unrolled.ts'
import { figure, figureOf } from './figures.ts'
import type { TowerInput } from './input.ts'
import { explained, type FigureReason, plain, type Sketch, together } from './sketch.ts'

type Pieces = Pick<Sketch, 'marks' | 'figures'>

/** Running marks from the datum, with the lines that carry them over to the surface. */
export function runningMarks(
  input: TowerInput,
  e: Elevation,
  k: number,
  span: { from: number; text: number; to: number },
): Pieces {
  const { layout, display, texts } = input
  const f = figureOf(display)
  const top_m = e.top_m
  const shown = (mark_m: number): number => (layout.datum === 'foot' ? mark_m : layout.columnLength_m - mark_m)
  const rings = [...new Set(layout.sites.map((s) => s.mark_m))]
  const levels = [
    ...rings.map((m) => ({ at_m: e.foot_m + m, text: f(shown(m)), why: { fact: 'layout/marks' } as FigureReason })),
    { at_m: top_m, text: f(shown(layout.columnLength_m)), why: { field: 'column/length' } as FigureReason },
    { at_m: e.foot_m, text: f(shown(0)), why: { fact: 'layout/marks' } as FigureReason },
  ]
  const lid =
    e.lid_m !== null && e.lid_m > e.foot_m ? [{ at_m: e.lid_m, text: `${texts.lid} ${f(e.lid_m - e.foot_m)}` }] : []
  const apart = levels.filter((l, i) => levels.every((o, j) => j >= i || Math.abs(o.at_m - l.at_m) * k > 3.4))
  return {
    marks: [
      ...apart.flatMap((l) => [
        ...(l.at_m === top_m || l.at_m === e.foot_m
          ? []
          : [line([span.from, l.at_m * k], [span.text - 10.5, l.at_m * k], 'thin', { part: 'rule' })]),
        line([span.text + 0.8, l.at_m * k], [span.to, l.at_m * k], 'thin', { part: 'rule' }),
      ]),
      ...lid.map((l) => line([span.text + 0.8, l.at_m * k], [span.to, l.at_m * k], 'thin', { part: 'rule' })),
    ],
    figures: [
      ...apart.map((l) => figure([span.text, l.at_m * k - 1.1], l.text, l.why, { anchor: 'end', size_mm: 3.175 })),
      ...lid.map((l) =>
        figure([span.text, l.at_m * k - 1], l.text, { field: 'reservoir/lidHeight' }, { anchor: 'end' }),
      ),
    ],
  }
}

export function surface(
  { layout, templates, display, texts }: TowerInput,
  e: Elevation | null,
  k: number,
  left: number,
): Pieces {
  const f = figureOf(display)
  const foot = (e?.foot_m ?? 0) * k
  const drawn = moved(unrolled({ layout, templates, ratio: k }), [left, foot])
  const round = layout.circumference_m * k
  const numbers = drawn.filter((p) => p.kind === 'text')
  // Numbers of the lines stand above the surface, those of the sites on it.
  const above = (at: Point): boolean => at[1] > foot + layout.columnLength_m * k
  const wide = explained(
    dimension({
      from: [left, foot],
      to: [left + round, foot],
      offset_mm: -6.5,
      figure: `${f(layout.circumference_m)} ${texts.round}`,
      along: 'across',
    }),
    { fact: 'layout/circumference' },
  )
  const lid =
    e?.lid_m && e.lid_m > e.foot_m
      ? [line([left, e.lid_m * k], [left + round, e.lid_m * k], 'hidden', { part: 'rule' })]
      : []
  return together([
    plain([...drawn.filter((p) => p.kind !== 'text'), ...lid]),
    {
      marks: [],
      figures: numbers.map((text) => ({ text, why: { fact: above(text.at) ? 'layout/lines' : 'layout/marks' } })),
    },
    wide,
  ])
}
