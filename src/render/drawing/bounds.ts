import { lettersWidth, metrics } from './letters.ts'
import type { Drawing, Lettering, Point, Primitive, Rect } from './primitives.ts'
import { polar } from './vector.ts'

const QUARTER_rad = Math.PI / 2

/** The four corners of the box a text stands in, from below the descenders to the top of its capitals. */
export function letteringBox(text: Lettering, margin_mm: { x: number; y: number } = { x: 0, y: 0 }): readonly Point[] {
  const width = lettersWidth({ text: text.text, face: text.face, size_mm: text.size_mm })
  const start = text.anchor === 'start' ? 0 : text.anchor === 'middle' ? -width / 2 : -width
  const { capital, descent } = metrics(text.face)
  const low = -descent * text.size_mm - margin_mm.y
  const high = capital * text.size_mm + margin_mm.y
  const c = Math.cos(text.turn_rad)
  const s = Math.sin(text.turn_rad)
  const corner = (u: number, v: number): Point => [text.at[0] + u * c - v * s, text.at[1] + u * s + v * c]
  const from = start - margin_mm.x
  const to = start + width + margin_mm.x
  return [corner(from, low), corner(to, low), corner(to, high), corner(from, high)]
}

function extremes(p: Primitive): readonly Point[] {
  switch (p.kind) {
    case 'line':
      return [p.from, p.to]
    case 'path':
      return p.points
    case 'circle':
      return [
        [p.centre[0] - p.radius_mm, p.centre[1] - p.radius_mm],
        [p.centre[0] + p.radius_mm, p.centre[1] + p.radius_mm],
      ]
    case 'arc': {
      const first = Math.ceil(p.from_rad / QUARTER_rad)
      const last = Math.floor(p.to_rad / QUARTER_rad)
      const crossed = Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * QUARTER_rad)
      return [p.from_rad, ...crossed, p.to_rad].map((a) => polar(p.centre, p.radius_mm, a))
    }
    case 'text':
      return letteringBox(p)
  }
}

/** The smallest upright rectangle round the drawing, without the width of its lines; null for an empty drawing. */
export function bounds(drawing: Drawing): Rect | null {
  let box: Rect | null = null
  for (const p of drawing)
    for (const [x, y] of extremes(p))
      box = box
        ? {
            left: Math.min(box.left, x),
            bottom: Math.min(box.bottom, y),
            right: Math.max(box.right, x),
            top: Math.max(box.top, y),
          }
        : { left: x, bottom: y, right: x, top: y }
  return box
}
