import { letteringBox } from './bounds.ts'
import type { Arc, Circle, Drawing, Path, Point, Primitive, Rect } from './primitives.ts'
import { between, polar } from './vector.ts'

const inside = ([x, y]: Point, r: Rect): boolean => x >= r.left && x <= r.right && y >= r.bottom && y <= r.top

/** The shares of a segment at which it enters and leaves the rectangle (Liang and Barsky), or null if it misses. */
function span(a: Point, b: Point, r: Rect): readonly [number, number] | null {
  const dx = b[0] - a[0]
  const dy = b[1] - a[1]
  let enter = 0
  let leave = 1
  const edges = [
    [-dx, a[0] - r.left],
    [dx, r.right - a[0]],
    [-dy, a[1] - r.bottom],
    [dy, r.top - a[1]],
  ] as const
  for (const [p, q] of edges) {
    if (p === 0) {
      if (q < 0) return null
      continue
    }
    const t = q / p
    if (p < 0) enter = Math.max(enter, t)
    else leave = Math.min(leave, t)
  }
  return enter < leave ? [enter, leave] : null
}

/** The pieces of an open polyline inside the rectangle, in order. */
export function clippedPolyline(points: readonly Point[], r: Rect): readonly (readonly Point[])[] {
  const pieces: Point[][] = []
  for (let i = 1; i < points.length; i++) {
    const a = points[i - 1]!
    const b = points[i]!
    const s = span(a, b, r)
    if (!s) continue
    const last = pieces.at(-1)
    const joined = s[0] === 0 && last !== undefined && last.at(-1) === a
    if (!joined) pieces.push([s[0] === 0 ? a : between(a, b, s[0])])
    pieces.at(-1)!.push(s[1] === 1 ? b : between(a, b, s[1]))
  }
  return pieces
}

/** A closed ring cut to the rectangle (Sutherland and Hodgman); empty where nothing is left. */
export function clippedRing(points: readonly Point[], r: Rect): readonly Point[] {
  const sides: readonly (readonly [axis: 0 | 1, bound: number, sign: 1 | -1])[] = [
    [0, r.left, 1],
    [0, r.right, -1],
    [1, r.bottom, 1],
    [1, r.top, -1],
  ]
  let ring = points
  for (const [axis, bound, sign] of sides) {
    const out: Point[] = []
    ring.forEach((b, i) => {
      const a = ring.at(i - 1)!
      const da = sign * (a[axis] - bound)
      const db = sign * (b[axis] - bound)
      if (da < 0 !== db < 0) out.push(between(a, b, da / (da - db)))
      if (db >= 0) out.push(b)
    })
    ring = out
  }
  return ring
}

function clippedPath(p: Path, r: Rect): Drawing {
  if (p.points.every((q) => inside(q, r))) return [p]
  const out: Primitive[] = []
  if (p.fill !== 'none') {
    const ring = clippedRing(p.points, r)
    if (ring.length > 2) out.push({ ...p, points: ring, closed: true, pen: null })
  }
  if (p.pen === null) return out
  const walk = p.closed && p.points.length > 0 ? [...p.points, p.points[0]!] : p.points
  const pieces = [...clippedPolyline(walk, r)]
  const first = pieces[0]
  const last = pieces.at(-1)
  // A ring that starts inside is met again at its end: one piece, not two.
  if (p.closed && pieces.length > 1 && first && last && first[0] === walk[0] && last.at(-1) === walk.at(-1)) {
    pieces.splice(0, 1)
    pieces[pieces.length - 1] = [...last, ...first.slice(1)]
  }
  for (const points of pieces) out.push({ ...p, points, closed: false, fill: 'none' })
  return out
}

/** Where a circle crosses the sides of the rectangle, as angles from 0 to 2π. */
function crossings(centre: Point, radius_mm: number, r: Rect): readonly number[] {
  const turn = 2 * Math.PI
  const angles: number[] = []
  for (const x of [r.left, r.right]) {
    const c = (x - centre[0]) / radius_mm
    if (Math.abs(c) < 1) angles.push(Math.acos(c), turn - Math.acos(c))
  }
  for (const y of [r.bottom, r.top]) {
    const s = (y - centre[1]) / radius_mm
    if (Math.abs(s) < 1) angles.push((Math.asin(s) + turn) % turn, Math.PI - Math.asin(s))
  }
  return angles
}

function clippedCurve(p: Arc | Circle, r: Rect): Drawing {
  const turn = 2 * Math.PI
  const from = p.kind === 'arc' ? p.from_rad : 0
  const to = p.kind === 'arc' ? p.to_rad : turn
  const cuts = crossings(p.centre, p.radius_mm, r)
    .flatMap((a) => [-2, -1, 0, 1, 2].map((k) => a + k * turn))
    .filter((a) => a > from && a < to)
    .sort((a, b) => a - b)
  if (cuts.length === 0) return inside(polar(p.centre, p.radius_mm, (from + to) / 2), r) ? [p] : []
  if (p.pen === null) return []
  const stops = p.kind === 'arc' ? [from, ...cuts, to] : [...cuts, cuts[0]! + turn]
  const { centre, radius_mm, pen, layer, part } = p
  const more = { ...(layer === undefined ? {} : { layer }), ...(part === undefined ? {} : { part }) }
  return stops.slice(1).flatMap((b, i) => {
    const a = stops[i]!
    if (!inside(polar(centre, radius_mm, (a + b) / 2), r)) return []
    return [{ kind: 'arc' as const, centre, radius_mm, from_rad: a, to_rad: b, pen, ...more }]
  })
}

/**
 * What of a drawing lies in a rectangle. Arcs stay arcs. A text is kept whole where the middle of its box is inside,
 * so that it is never halved; it may reach over the edge.
 */
export function clipped(drawing: Drawing, r: Rect): Drawing {
  return drawing.flatMap((p): Drawing => {
    switch (p.kind) {
      case 'line':
        return clippedPolyline([p.from, p.to], r).map((piece) => ({ ...p, from: piece[0]!, to: piece.at(-1)! }))
      case 'path':
        return clippedPath(p, r)
      case 'text': {
        const box = letteringBox(p)
        return inside(between(box[0]!, box[2]!, 0.5), r) ? [p] : []
      }
      default:
        return clippedCurve(p, r)
    }
  })
}
