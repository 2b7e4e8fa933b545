import { bounds } from '../drawing/bounds.ts'
import { clipped } from '../drawing/clip.ts'
import { circle, type Drawing, lettering, line, type Point, type Primitive, type Rect } from '../drawing/primitives.ts'
import { mirrored, moved } from '../drawing/transform.ts'

export type Side = 'left' | 'right' | 'above' | 'below'

export interface Tile {
  /** Counted from 1, row by row from the upper left. */
  readonly number: number
  readonly column: number
  readonly row: number
  /** In the coordinates of the paper, within the area that was given. */
  readonly drawing: Drawing
}

interface Span {
  readonly from: number
  readonly to: number
}

const REGISTRATION_mm = 2.5

/** Equal windows over a length, each no longer than `window`, neighbours sharing `overlap`. */
function spans(low: number, high: number, window: number, overlap: number): readonly Span[] {
  const whole = high - low
  if (whole <= window) return [{ from: low, to: high }]
  const count = Math.ceil((whole - overlap) / (window - overlap) - 1e-9)
  const each = (whole + (count - 1) * overlap) / count
  return Array.from({ length: count }, (_, i) => {
    const from = low + i * (each - overlap)
    return { from, to: i === count - 1 ? high : from + each }
  })
}

/** A cross in a ring: laid over its twin on the next sheet, the two sheets are in register. */
const registration = ([x, y]: Point): Drawing => [
  circle([x, y], REGISTRATION_mm * 0.6, 'thin'),
  line([x - REGISTRATION_mm, y], [x + REGISTRATION_mm, y], 'thin'),
  line([x, y - REGISTRATION_mm], [x, y + REGISTRATION_mm], 'thin'),
]

/** The seam on one side of a window: a dashed rule in the middle of the overlap, register marks, the neighbour. */
function seam(given: { window: Rect; side: Side; overlap_mm: number; text: string }): Drawing {
  const { window: w, side, overlap_mm, text } = given
  const half = overlap_mm / 2
  const upright = side === 'left' || side === 'right'
  const level = { left: w.left + half, right: w.right - half, above: w.top - half, below: w.bottom + half }[side]
  const low = upright ? w.bottom : w.left
  const high = upright ? w.top : w.right
  const at = (along: number, level_: number): Point => (upright ? [level_, along] : [along, level_])
  const out: Primitive[] = [line(at(low, level), at(high, level), 'hidden')]
  for (const share of [0.1, 0.5, 0.9]) out.push(...registration(at(low + (high - low) * share, level)))
  const aside = side === 'left' || side === 'above' ? 1 : -1
  const room = aside > 0 ? 1 : -1
  const textAt = at(low + (high - low) * 0.3, level)
  const shift = upright ? (room > 0 ? 3.2 : -1.1) : room > 0 ? 1.1 : -3.2
  out.push(
    lettering([textAt[0] + (upright ? shift : 0), textAt[1] + (upright ? 0 : shift)], text, {
      size_mm: 2.4,
      anchor: 'middle',
      turn_rad: upright ? Math.PI / 2 : 0,
      halo: true,
    }),
  )
  return out
}

/**
 * A drawing too large for one sheet, cut into windows that fit `area`, with a shared strip, a seam rule in the
 * middle of it and register marks. Cut one sheet along the seam and lay it on the seam of the other.
 */
export function tiles(given: {
  readonly drawing: Drawing
  readonly area: Rect
  readonly overlap_mm?: number
  /** Turned left for right, to be traced from the back. */
  readonly mirror?: boolean
  /** What stands beside a seam: which sheet joins there. */
  readonly seamText: (neighbour: number) => string
}): readonly Tile[] {
  const { area, overlap_mm = 12, mirror = false, seamText } = given
  const width = area.right - area.left
  const height = area.top - area.bottom
  if (!(overlap_mm > 0 && overlap_mm < Math.min(width, height)))
    throw new RangeError(`tiles: overlap_mm ${overlap_mm} is not within 0 and the area`)
  const upright = given.drawing
  const box = bounds(upright)
  if (!box) return []
  const drawing = mirror ? mirrored(upright, (box.left + box.right) / 2) : upright
  const across = spans(box.left, box.right, width, overlap_mm)
  const down = [...spans(box.bottom, box.top, height, overlap_mm)].reverse()
  return down.flatMap((v, row) =>
    across.map((u, column) => {
      const number = row * across.length + column + 1
      const window: Rect = { left: u.from, right: u.to, bottom: v.from, top: v.to }
      const neighbours: readonly (readonly [Side, boolean, number])[] = [
        ['left', column > 0, number - 1],
        ['right', column < across.length - 1, number + 1],
        ['above', row > 0, number - across.length],
        ['below', row < down.length - 1, number + across.length],
      ]
      const seams = neighbours
        .filter(([, there]) => there)
        .flatMap(([side, , other]) => seam({ window, side, overlap_mm, text: seamText(other) }))
      const shift: Point = [
        area.left + (width - (u.to - u.from)) / 2 - u.from,
        area.bottom + (height - (v.to - v.from)) / 2 - v.from,
      ]
      return { number, column, row, drawing: moved([...clipped(drawing, window), ...seams], shift) }
    }),
  )
}
