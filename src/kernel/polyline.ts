/** A point of a flat drawing. */
export interface Point {
  readonly x_m: number
  readonly y_m: number
}

/** Depth of halving at which a piece is taken as it is: 2^-16 of the first pieces. */
const DEPTH_LIMIT = 16

/** Share of the tolerance used: the deviation is looked at in three places of a piece, and may be a little more between. */
const MARGIN = 0.8

/** Distance of a point from the chord between two others. */
function sag(p: Point, a: Point, b: Point): number {
  const dx = b.x_m - a.x_m
  const dy = b.y_m - a.y_m
  const length = dx * dx + dy * dy
  const t = length === 0 ? 0 : ((p.x_m - a.x_m) * dx + (p.y_m - a.y_m) * dy) / length
  const u = Math.min(1, Math.max(0, t))
  const [x, y] = [p.x_m - a.x_m - u * dx, p.y_m - a.y_m - u * dy]
  return Math.sqrt(x * x + y * y)
}

/**
 * Points on a smooth curve such that the straight pieces between them stay within `tolerance_m` of it, both ends
 * included. Each of the first `pieces` is halved until its chord is near enough.
 *
 * Throws RangeError where the tolerance is not positive.
 */
export function polyline(given: {
  readonly of: (parameter: number) => Point
  readonly from: number
  readonly to: number
  readonly tolerance_m: number
  readonly pieces?: number
}): readonly Point[] {
  const { of: curve, from, to, tolerance_m, pieces = 16 } = given
  if (!(tolerance_m > 0)) throw new RangeError(`polyline: tolerance ${tolerance_m} is not positive`)
  const limit = MARGIN * tolerance_m
  const points: Point[] = [curve(from)]
  const halve = (t0: number, p0: Point, t: number, p: Point, t1: number, p1: Point, depth: number): void => {
    const [before, after] = [(t0 + t) / 2, (t + t1) / 2]
    const [q0, q1] = [curve(before), curve(after)]
    const near = sag(p, p0, p1) <= limit && sag(q0, p0, p1) <= limit && sag(q1, p0, p1) <= limit
    if (near || depth === DEPTH_LIMIT) {
      points.push(p1)
      return
    }
    halve(t0, p0, before, q0, t, p, depth + 1)
    halve(t, p, after, q1, t1, p1, depth + 1)
  }
  let last = points[0]!
  for (let i = 1; i <= pieces; i++) {
    const t0 = from + ((to - from) * (i - 1)) / pieces
    const t1 = i === pieces ? to : from + ((to - from) * i) / pieces
    const next = curve(t1)
    const middle = (t0 + t1) / 2
    halve(t0, last, middle, curve(middle), t1, next, 0)
    last = next
  }
  return points
}
