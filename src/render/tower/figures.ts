import { type Display, show } from '../display.ts'
import { lettering, type Point } from '../drawing/primitives.ts'
import { type FigureReason, type SketchFigure, SMALL_mm } from './sketch.ts'

/** A length as a figure on a drawing. */
export const figureOf =
  (display: Display) =>
  (length_m: number): string =>
    show({ unit: 'm', value: length_m }, display).figure.replace(/[.,]0$/, '')

/** A figure by itself, with its why. */
export const figure = (
  at: Point,
  text: string,
  why: FigureReason,
  more: Parameters<typeof lettering>[2] = {},
): SketchFigure => ({
  text: lettering(at, text, { size_mm: SMALL_mm, halo: true, ...more }),
  why,
})
