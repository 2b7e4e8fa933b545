import type { Point } from './primitives.ts'

export const plus = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1]]
export const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1]]
export const times = (a: Point, k: number): Point => [a[0] * k, a[1] * k]
export const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1]
export const length = (a: Point): number => Math.hypot(a[0], a[1])
export const unit = (a: Point): Point => {
  const l = length(a)
  if (l === 0) throw new RangeError('unit: a has no length')
  return times(a, 1 / l)
}
/** Turned a quarter to the left. */
export const left = (a: Point): Point => [-a[1], a[0]]
export const polar = (centre: Point, radius: number, angle_rad: number): Point => [
  centre[0] + radius * Math.cos(angle_rad),
  centre[1] + radius * Math.sin(angle_rad),
]
export const between = (a: Point, b: Point, share: number): Point => [
  a[0] + (b[0] - a[0]) * share,
  a[1] + (b[1] - a[1]) * share,
]
