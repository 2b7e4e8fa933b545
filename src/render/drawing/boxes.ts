import { letteringBox } from './bounds.ts'
import type { Drawing, Lettering, Rect } from './primitives.ts'

/** The upright box round a text, with air about it. */
export function letteringRect(text: Lettering, air_mm: number): Rect {
  const corners = letteringBox(text, { x: air_mm, y: air_mm })
  const [xs, ys] = [corners.map((c) => c[0]), corners.map((c) => c[1])]
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) }
}

/** Boxes of all texts of a drawing. */
export const letteringRects = (drawing: Drawing, air_mm: number): readonly Rect[] =>
  drawing.flatMap((p) => (p.kind === 'text' ? [letteringRect(p, air_mm)] : []))

export const meet = (a: Rect, b: Rect): boolean =>
  a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top

/** The smallest box round two. */
export const around = (a: Rect, b: Rect | null): Rect =>
  b === null
    ? a
    : {
        left: Math.min(a.left, b.left),
        right: Math.max(a.right, b.right),
        bottom: Math.min(a.bottom, b.bottom),
        top: Math.max(a.top, b.top),
      }

/** Steps in which a text is moved off what it would lie over, and how far at most. */
const STEP_mm = 0.5
const MOST_mm = 8
const AIR_mm = 0.4

/** A text moved up or down, as little as it must, until it lies over none of the boxes; left where it is if nothing helps. */
export function cleared(text: Lettering, taken: readonly Rect[]): Lettering {
  for (let by = 0; by <= MOST_mm; by += STEP_mm)
    for (const dy of [by, -by]) {
      const put = { ...text, at: [text.at[0], text.at[1] + dy] as const }
      const box = letteringRect(put, AIR_mm)
      if (!taken.some((t) => meet(t, box))) return put
    }
  return text
}
