import type { Point } from './primitives.ts'
import { between, length, minus } from './vector.ts'

/** A polyline cut into its dashes. The pattern is drawn, left out, drawn … in mm, and starts anew at each call. */
export function dashes(points: readonly Point[], pattern_mm: readonly number[]): readonly (readonly Point[])[] {
  if (pattern_mm.length === 0) return [points]
  if (pattern_mm.some((d) => !(d > 0)))
    throw new RangeError(`dashes: pattern_mm ${pattern_mm.join(' ')} is not positive`)
  const out: Point[][] = []
  let index = 0
  let left = pattern_mm[0]!
  let piece: Point[] = points.length > 0 ? [points[0]!] : []
  for (let i = 1; i < points.length; i++) {
    const a = points[i - 1]!
    const b = points[i]!
    const whole = length(minus(b, a))
    let gone = 0
    while (whole - gone > left) {
      gone += left
      const turnAt = between(a, b, gone / whole)
      if (index % 2 === 0) out.push([...piece, turnAt])
      index++
      left = pattern_mm[index % pattern_mm.length]!
      piece = [turnAt]
    }
    left -= whole - gone
    if (index % 2 === 0) piece.push(b)
  }
  if (index % 2 === 0 && piece.length > 1) out.push(piece)
  return out
}
