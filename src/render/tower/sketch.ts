import type { Drawing, Lettering, Point, Primitive, Rect } from '../drawing/primitives.ts'

/** Why a figure on a drawing is what it is: the field that it shows, or the fact. */
export type FigureReason = { readonly field: string } | { readonly fact: string }

/** A figure on a drawing, kept apart from the marks so that a page can let it be edited and explained. */
export interface SketchFigure {
  readonly text: Lettering
  readonly why: FigureReason
}

/** A drawing for a page: marks, figures with their why, and the places that a sentence can point at. */
export interface Sketch {
  readonly marks: Drawing
  readonly figures: readonly SketchFigure[]
  /** The very place of a part on this drawing, by part. */
  readonly places: Readonly<Record<string, Point>>
  readonly box: Rect
  /** Lines and fields beside the parts that no balloon may cover. */
  readonly taken?: readonly Rect[]
  /** One to how many; below one, so many to one; nought for a chart, which has no scale. */
  readonly scale: number
}

export const FIGURE_mm = 3.175
export const SMALL_mm = 2.9

const isText = (p: Primitive): p is Lettering => p.kind === 'text'

/** A dimension taken apart: its lines, and its figure with the why. */
export function explained(dimension: Drawing, why: FigureReason): Pick<Sketch, 'marks' | 'figures'> {
  return {
    marks: dimension.filter((p) => !isText(p)),
    figures: dimension.filter(isText).map((text) => ({ text, why })),
  }
}

/** Several pieces of one sketch together. */
export const together = (pieces: readonly Pick<Sketch, 'marks' | 'figures'>[]): Pick<Sketch, 'marks' | 'figures'> => ({
  marks: pieces.flatMap((p) => p.marks),
  figures: pieces.flatMap((p) => p.figures),
})

export const plain = (marks: Drawing): Pick<Sketch, 'marks' | 'figures'> => ({ marks, figures: [] })

/** Scales of the drawing office; the first that fits is taken. */
export const SERIES = [1, 2, 2.5, 5, 8, 10, 12.5, 15, 20, 25, 30, 40, 50, 75, 100] as const

export const scaleFor = (size_m: number, room_mm: number, least = 1): number =>
  SERIES.find((n) => n >= least && (size_m * 1000) / n <= room_mm) ?? 200
