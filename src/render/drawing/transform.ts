import { flattened } from './flatten.ts'
import type { Anchor, Drawing, Point, Primitive } from './primitives.ts'

/** How points, lengths, angles and the hand of a drawing change together. */
interface Change {
  readonly point: (p: Point) => Point
  readonly length: number
  readonly turn_rad: number
  readonly mirror: boolean
}

const flipped: Readonly<Record<Anchor, Anchor>> = { start: 'end', middle: 'middle', end: 'start' }

function changed(p: Primitive, by: Change): Primitive {
  switch (p.kind) {
    case 'line':
      return { ...p, from: by.point(p.from), to: by.point(p.to) }
    case 'path':
      return { ...p, points: p.points.map(by.point) }
    case 'circle':
      return { ...p, centre: by.point(p.centre), radius_mm: p.radius_mm * by.length }
    case 'arc': {
      const angles = by.mirror
        ? { from_rad: Math.PI - p.to_rad, to_rad: Math.PI - p.from_rad }
        : { from_rad: p.from_rad + by.turn_rad, to_rad: p.to_rad + by.turn_rad }
      return { ...p, centre: by.point(p.centre), radius_mm: p.radius_mm * by.length, ...angles }
    }
    case 'text':
      return {
        ...p,
        at: by.point(p.at),
        size_mm: p.size_mm * by.length,
        turn_rad: by.mirror ? -p.turn_rad : p.turn_rad + by.turn_rad,
        anchor: by.mirror ? flipped[p.anchor] : p.anchor,
      }
  }
}

const all = (drawing: Drawing, by: Change): Drawing => drawing.map((p) => changed(p, by))

export const moved = (drawing: Drawing, by: Point): Drawing =>
  all(drawing, { point: ([x, y]) => [x + by[0], y + by[1]], length: 1, turn_rad: 0, mirror: false })

export function turned(drawing: Drawing, turn_rad: number, about: Point = [0, 0]): Drawing {
  const c = Math.cos(turn_rad)
  const s = Math.sin(turn_rad)
  const point = ([x, y]: Point): Point => {
    const u = x - about[0]
    const v = y - about[1]
    return [about[0] + u * c - v * s, about[1] + u * s + v * c]
  }
  return all(drawing, { point, length: 1, turn_rad, mirror: false })
}

/** Geometry and lettering in one ratio. */
export const scaled = (drawing: Drawing, ratio: number, about: Point = [0, 0]): Drawing =>
  all(drawing, {
    point: ([x, y]) => [about[0] + (x - about[0]) * ratio, about[1] + (y - about[1]) * ratio],
    length: ratio,
    turn_rad: 0,
    mirror: false,
  })

/** Left and right exchanged about an upright axis; lettering moves over but stays readable. */
export const mirrored = (drawing: Drawing, axis_mm: number): Drawing =>
  all(drawing, { point: ([x, y]) => [2 * axis_mm - x, y], length: 1, turn_rad: 0, mirror: true })

/**
 * Stretched by two ratios, as a printer needs that feeds paper a little long. Lettering is moved, not stretched.
 * Circles become paths where the ratios differ, since they are then ellipses.
 */
export function stretched(drawing: Drawing, ratio: { x: number; y: number }, about: Point): Drawing {
  const { x: kx, y: ky } = ratio
  if (kx === 1 && ky === 1) return drawing
  const point = ([x, y]: Point): Point => [about[0] + (x - about[0]) * kx, about[1] + (y - about[1]) * ky]
  return drawing.map((p) => {
    if (p.kind === 'text') return { ...p, at: point(p.at) }
    const curved = p.kind === 'circle' || p.kind === 'arc'
    return changed(curved && kx !== ky ? flattened(p) : p, { point, length: kx, turn_rad: 0, mirror: false })
  })
}
