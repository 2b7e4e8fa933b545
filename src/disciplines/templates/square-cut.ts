import type { Hole } from './joint.ts'

/** Sides of a square-cut hole round the column: where the widest of the wall's radii has them. */
export function squareSides({ columnRadius_m: R, columnWall_m: T, holeRadius_m: q, offset_m: e }: Hole) {
  const Ri = R - T
  const side = (y: number, widest: number) => Math.asin(Math.max(-1, Math.min(1, y / widest)))
  return { left: side(e - q, e - q < 0 ? Ri : R), right: side(e + q, e + q > 0 ? Ri : R) }
}

/** Lower and upper edge of a square-cut hole at the angle φ, without checks; outside the sides the edges of the side. */
export function squareEdges(hole: Hole, phi: number): readonly [low: number, high: number] {
  const { columnRadius_m: R, columnWall_m: T, holeRadius_m: q, angle_rad: th, offset_m: e } = hole
  const s = Math.sin(phi)
  const c = Math.cos(phi)
  const a = c * Math.cos(th)
  const middle = (rho: number) => (rho * c) / Math.tan(th)
  const half = (rho: number) => Math.sqrt(Math.max(0, q * q - (rho * s - e) ** 2)) / Math.sin(th)
  if (s === 0) return [middle(R - T) - half(0), middle(R) + half(0)]
  const [near, far] = s > 0 ? [(e - q) / s, (e + q) / s] : [(e + q) / s, (e - q) / s]
  const least = Math.max(R - T, near)
  const most = Math.max(least, Math.min(R, far))
  const within = (rho: number) => Math.min(most, Math.max(least, rho))
  const w = (q * a * Math.sign(s)) / Math.sqrt(a * a + s * s)
  const low = within((e - w) / s)
  const high = within((e + w) / s)
  return [middle(low) - half(low), middle(high) + half(high)]
}
