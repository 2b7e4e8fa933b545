import type { Hole } from './joint.ts'

/** Sides of a square-cut hole round the column: where the widest of the wall's radii has them. */
export function squareSides({ columnRadius_m: R, columnWall_m: T, holeRadius_m: q, offset_m: e }: Hole) {
  const Ri = R - T
  const side = (y: number, widest: number) => Math.asin(Math.max(-1, Math.min(1, y / widest)))
  return { left: side(e - q, e - q < 0 ? Ri : R), right: side(e + q, e + q > 0 ? Ri : R) }
}

/**
 * Lower and upper edge of a square-cut hole at the angle φ, without checks; outside the sides the edges of the side.
 * Written without inner functions: searches call it thousands of times for a drawing.
 */
export function squareEdges(hole: Hole, phi: number): readonly [low: number, high: number] {
  const { columnRadius_m: R, columnWall_m: T, holeRadius_m: q, angle_rad: th, offset_m: e } = hole
  const s = Math.sin(phi)
  const c = Math.cos(phi)
  const across = Math.sin(th)
  const a = c * Math.cos(th)
  if (s === 0) {
    const half = Math.sqrt(Math.max(0, q * q - e * e))
    return [((R - T) * a - half) / across, (R * a + half) / across]
  }
  const w = (q * a * Math.sign(s)) / Math.sqrt(a * a + s * s)
  const least = Math.max(R - T, s > 0 ? (e - q) / s : (e + q) / s)
  const most = Math.max(least, Math.min(R, s > 0 ? (e + q) / s : (e - q) / s))
  const low = Math.min(most, Math.max(least, (e - w) / s))
  const high = Math.min(most, Math.max(least, (e + w) / s))
  const under = Math.sqrt(Math.max(0, q * q - (low * s - e) ** 2))
  const over = Math.sqrt(Math.max(0, q * q - (high * s - e) ** 2))
  return [(low * a - under) / across, (high * a + over) / across]
}
