import { inUnit } from '../../kernel/quantity-text.ts'
import type { Unit } from '../../kernel/units.ts'
import { type Drawing, lettering, line, type Point, type Rect } from '../drawing/primitives.ts'

export const CHART_FIGURE_mm = 2.8
/** Air round the figures of an axis, into which no name comes. */
export const AXIS_AIR_mm = 0.4

/** Where a chart lies on the sheet and what its axes span. */
export interface Frame {
  readonly left_mm: number
  readonly bottom_mm: number
  readonly width_mm: number
  readonly height_mm: number
  readonly x: readonly [low: number, high: number]
  readonly y: readonly [low: number, high: number]
}

export const chartPoint = (f: Frame, x: number, y: number): Point => [
  f.left_mm + ((x - f.x[0]) / (f.x[1] - f.x[0])) * f.width_mm,
  f.bottom_mm + ((y - f.y[0]) / (f.y[1] - f.y[0])) * f.height_mm,
]

/** Where names on a chart may stand; a little beyond its frame where nothing else is. */
export const insideOf = (f: Frame, beyond: { readonly right?: number; readonly top?: number } = {}): Rect => ({
  left: f.left_mm + 0.4,
  bottom: f.bottom_mm + 0.4,
  right: f.left_mm + f.width_mm + (beyond.right ?? 0),
  top: f.bottom_mm + f.height_mm + (beyond.top ?? 0),
})

/** Round steps of an axis: 1, 2 or 5 of a decade, at most `most` of them. */
export function roundSteps(low: number, high: number, most = 7): readonly number[] {
  const span = high - low
  if (!(span > 0)) return [low]
  const decade = 10 ** Math.floor(Math.log10(span / most))
  const step = [1, 2, 5, 10].map((n) => n * decade).find((s) => span / s <= most) ?? 10 * decade
  const first = Math.ceil(low / step - 1e-9)
  const count = Math.floor(high / step + 1e-9) - first
  return Array.from({ length: count + 1 }, (_, i) => Number(((first + i) * step).toPrecision(9)))
}

/** One axis in a unit that people read, ticks at round figures of it. */
export interface Axis {
  readonly unit: Unit
  readonly shown: string
  readonly name: string
}

/** Figures of an axis and where they stand in the engine's unit. */
function figures(
  axis: Axis | readonly number[],
  span: readonly [number, number],
): readonly { at: number; text: string }[] {
  if (!('unit' in axis)) return axis.map((n) => ({ at: n, text: String(n) }))
  const [one, none] = [inUnit(1, axis.unit, axis.shown), inUnit(0, axis.unit, axis.shown)]
  const per = one - none
  const shown = (n: number) => n * per + none
  return roundSteps(shown(span[0]), shown(span[1])).map((n) => ({ at: (n - none) / per, text: String(n) }))
}

export function chartAxes(f: Frame, x: Axis | readonly number[], y: Axis, names: { x: string; y: string }): Drawing {
  const at = (a: number, b: number) => chartPoint(f, a, b)
  const [left, bottom] = [f.left_mm, f.bottom_mm]
  return [
    line(at(f.x[0], f.y[0]), at(f.x[1], f.y[0]), 'visible'),
    line(at(f.x[0], f.y[0]), at(f.x[0], f.y[1]), 'visible'),
    ...figures(x, f.x).flatMap((t): Drawing => {
      const [px] = at(t.at, f.y[0])
      return [
        line([px, bottom], [px, bottom - 1.2], 'thin'),
        lettering([px, bottom - 4.6], t.text, { size_mm: CHART_FIGURE_mm, anchor: 'middle' }),
      ]
    }),
    ...figures(y, f.y).flatMap((t): Drawing => {
      const [, py] = at(f.x[0], t.at)
      return [
        line([left, py], [left - 1.2, py], 'thin'),
        lettering([left - 2, py - 1], t.text, { size_mm: CHART_FIGURE_mm, anchor: 'end' }),
      ]
    }),
    lettering([left + f.width_mm, bottom - 9], names.x, { size_mm: CHART_FIGURE_mm, anchor: 'end', tone: 'quiet' }),
    lettering([left - 8, bottom + f.height_mm + 3], names.y, { size_mm: CHART_FIGURE_mm, tone: 'quiet' }),
  ]
}
