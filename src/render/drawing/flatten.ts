import type { Arc, Circle, Path, Point } from './primitives.ts'
import { polar } from './vector.ts'

/** Chords that stay within this of the true curve; a tenth of the accuracy promised for templates. */
const SAGITTA_mm = 0.001

const steps = (radius_mm: number, sweep_rad: number): number => {
  const most_rad = radius_mm <= SAGITTA_mm ? Math.PI / 4 : 2 * Math.acos(1 - SAGITTA_mm / radius_mm)
  return Math.max(2, Math.ceil(sweep_rad / most_rad))
}

export function arcPoints(given: {
  centre: Point
  radius_mm: number
  from_rad: number
  to_rad: number
}): readonly Point[] {
  const { centre, radius_mm, from_rad, to_rad } = given
  const n = steps(radius_mm, to_rad - from_rad)
  return Array.from({ length: n + 1 }, (_, i) => polar(centre, radius_mm, from_rad + ((to_rad - from_rad) * i) / n))
}

/** A circle or arc as a path, for the few places that cannot hold a true one. */
export function flattened(curve: Arc | Circle): Path {
  const { layer, part } = curve
  const more = { ...(layer === undefined ? {} : { layer }), ...(part === undefined ? {} : { part }) }
  if (curve.kind === 'arc')
    return { kind: 'path', points: arcPoints(curve), closed: false, pen: curve.pen, fill: 'none', ...more }
  const ring = arcPoints({ ...curve, from_rad: 0, to_rad: 2 * Math.PI }).slice(0, -1)
  return { kind: 'path', points: ring, closed: true, pen: curve.pen, fill: curve.fill, ...more }
}
