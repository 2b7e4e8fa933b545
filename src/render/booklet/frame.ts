import { bounds } from '../drawing/bounds.ts'
import type { Drawing } from '../drawing/primitives.ts'
import { moved } from '../drawing/transform.ts'

interface Room {
  readonly width_mm: number
  readonly height_mm: number
}

/** Room for a picture beside the lines of a step, in millimetres of paper. */
export const PICTURE: Room = { width_mm: 58, height_mm: 44 }

/**
 * A view as large as the room allows. Lettering keeps its size, so the view is drawn at a scale, measured with its
 * figures, and drawn again smaller until all of it fits.
 */
export function fitted(view: (ratio: number) => Drawing, room = PICTURE): Drawing {
  let ratio = 1000
  let drawing = view(ratio)
  for (let i = 0; i < 14; i++) {
    const box = bounds(drawing)
    if (box === null) return []
    const over = Math.max((box.right - box.left) / room.width_mm, (box.top - box.bottom) / room.height_mm)
    if (over <= 1) break
    ratio /= Math.max(over, 1.02)
    drawing = view(ratio)
  }
  return drawing
}

/** The drawing with the lower left corner of its box at the origin. */
export function atOrigin(drawing: Drawing): Drawing {
  const box = bounds(drawing)
  return box === null ? drawing : moved(drawing, [-box.left, -box.bottom])
}

/** Round a picture, so that no line of it is cut at the edge. */
export const drawingAir_mm = 1
