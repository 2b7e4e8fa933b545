import { contour, type Path, type Point } from './primitives.ts'
import { left, minus, plus, times, unit } from './vector.ts'

/** A slim closed arrowhead with its tip on a point. */
export const ARROW_mm = { length: 2.2, width: 0.66 } as const

export function arrowhead({ tip, from }: { tip: Point; from: Point }): Path {
  const u = unit(minus(tip, from))
  const back = plus(tip, times(u, -ARROW_mm.length))
  const side = times(left(u), ARROW_mm.width / 2)
  return contour([tip, plus(back, side), minus(back, side)], null, { fill: 'solid', layer: 'dimension' })
}
