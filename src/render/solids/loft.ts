import { draft, fan, type Mesh, mesh, type Place, vertex } from './mesh.ts'

const TURN = 2 * Math.PI

/** Places in one plane, anticlockwise about the way in which the loops follow each other. */
export type Loop = readonly Place[]

/**
 * A closed surface over loops of equally many places: walls between each and the next, the first and the last filled
 * flat, or the last joined to the first where it is a ring.
 */
export function loft(loops: readonly Loop[], ring = false): Mesh {
  const d = draft()
  const ids = loops.map((l) => l.map((p) => vertex(d, p)))
  const wall = (a: readonly number[], b: readonly number[]) => {
    const n = a.length
    for (let i = 0; i < n; i++) d.faces.push(a[i]!, a[(i + 1) % n]!, b[(i + 1) % n]!, a[i]!, b[(i + 1) % n]!, b[i]!)
  }
  for (let i = 1; i < ids.length; i++) wall(ids[i - 1]!, ids[i]!)
  if (ring) wall(ids.at(-1)!, ids[0]!)
  else {
    fan(d, ids[0]!, true)
    fan(d, ids.at(-1)!)
  }
  return mesh(d)
}

/** How far a shape reaches from its middle in each direction. */
export type Outline = (angle_rad: number) => number

export const round =
  (radius_m: number): Outline =>
  () =>
    radius_m

/** A rectangle, `long_m` along x and `wide_m` along y. */
export const oblong =
  (long_m: number, wide_m: number): Outline =>
  (a) =>
    Math.min(long_m / 2 / Math.max(1e-12, Math.abs(Math.cos(a))), wide_m / 2 / Math.max(1e-12, Math.abs(Math.sin(a))))

/** Angles at which outlines are taken: evenly round, and at the corners of what has corners. */
export function anglesOf(
  count: number,
  corners: readonly (readonly [long_m: number, wide_m: number])[],
): readonly number[] {
  const own = corners.flatMap(([l, w]) => {
    const a = Math.atan2(w, l)
    return [a, Math.PI - a, Math.PI + a, TURN - a]
  })
  const all = [...Array.from({ length: count }, (_, i) => (TURN * i) / count), ...own].sort((a, b) => a - b)
  return all.filter((a, i) => i === 0 || a - all[i - 1]! > 1e-6)
}

/** An outline at a height. */
export const level = (
  angles: readonly number[],
  outline: Outline,
  z_m: number,
  [x_m, y_m]: readonly [number, number] = [0, 0],
): Loop => angles.map((a): Place => [x_m + outline(a) * Math.cos(a), y_m + outline(a) * Math.sin(a), z_m])

const less = (a: Place, b: Place): Place => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
const unit = ([x, y, z]: Place): Place => {
  const n = Math.hypot(x, y, z)
  return [x / n, y / n, z / n]
}
const cross = (a: Place, b: Place): Place => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
]

/** A tube along a way through space; `y` is never along the way, so it gives the loops their bearing. */
export function tube(way: readonly Place[], outer_m: number, inner_m: number, count = 16): Mesh {
  return loft([...along(way, outer_m, count), ...along(way, inner_m, count).reverse()], true)
}

function along(way: readonly Place[], radius_m: number, count: number): Loop[] {
  return way.map((p, i): Loop => {
    const ahead = unit(less(way[Math.min(way.length - 1, i + 1)]!, way[Math.max(0, i - 1)]!))
    const u = unit(cross([0, 1, 0], ahead))
    const v = cross(ahead, u)
    return Array.from({ length: count }, (_, k): Place => {
      const [c, s] = [radius_m * Math.cos((TURN * k) / count), radius_m * Math.sin((TURN * k) / count)]
      return [p[0] + c * u[0] + s * v[0], p[1] + c * u[1] + s * v[1], p[2] + c * u[2] + s * v[2]]
    })
  })
}
