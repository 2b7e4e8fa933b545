import type { Mesh, Place } from './mesh.ts'

export interface Box {
  readonly low: Place
  readonly high: Place
}

const at = (m: Mesh, i: number): Place => [m.positions[3 * i]!, m.positions[3 * i + 1]!, m.positions[3 * i + 2]!]

const corners = (m: Mesh, f: number): readonly [Place, Place, Place] => [
  at(m, m.indices[f]!),
  at(m, m.indices[f + 1]!),
  at(m, m.indices[f + 2]!),
]

/** Cross product of two sides of a triangle: twice its area, along its outward normal. */
export function across(a: Place, b: Place, c: Place): Place {
  const [ux, uy, uz] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]]
  const [vx, vy, vz] = [c[0] - a[0], c[1] - a[1], c[2] - a[2]]
  return [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx]
}

/** Every triangle of a mesh by its corners. */
export function* triangles(m: Mesh): Generator<readonly [Place, Place, Place]> {
  for (let f = 0; f < m.indices.length; f += 3) yield corners(m, f)
}

/** What a mesh holds; negative where it is inside out. */
export function volumeOf(m: Mesh): number {
  let six = 0
  for (const [a, b, c] of triangles(m)) {
    six += a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0])
  }
  return six / 6
}

export function areaOf(m: Mesh): number {
  let twice = 0
  for (const [a, b, c] of triangles(m)) twice += Math.hypot(...across(a, b, c))
  return twice / 2
}

export function boxOf(m: Mesh): Box {
  const low: [number, number, number] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]
  const high: [number, number, number] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (let i = 0; i < m.positions.length; i++) {
    const k = i % 3
    low[k] = Math.min(low[k]!, m.positions[i]!)
    high[k] = Math.max(high[k]!, m.positions[i]!)
  }
  return { low, high }
}

/** The mesh with every place moved by a rule; `mirrored` where the rule turns left into right. */
export function moved(m: Mesh, rule: (p: Place) => Place, mirrored = false): Mesh {
  const positions = new Float32Array(m.positions.length)
  for (let i = 0; i < positions.length; i += 3) {
    positions.set(rule([m.positions[i]!, m.positions[i + 1]!, m.positions[i + 2]!]), i)
  }
  if (!mirrored) return { positions, indices: m.indices }
  const indices = m.indices.slice()
  for (let f = 0; f < indices.length; f += 3) {
    indices[f + 1] = m.indices[f + 2]!
    indices[f + 2] = m.indices[f + 1]!
  }
  return { positions, indices }
}

/** Turned about the column's axis and lifted. */
export const turned = (m: Mesh, turn_rad: number, rise_m: number): Mesh => {
  const [c, s] = [Math.cos(turn_rad), Math.sin(turn_rad)]
  return moved(m, ([x, y, z]) => [c * x - s * y, s * x + c * y, z + rise_m])
}

/** Standing on the bed with the middle of its box over the origin. */
export function onBed(m: Mesh): Mesh {
  const { low, high } = boxOf(m)
  const [x, y] = [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2]
  return moved(m, (p) => [p[0] - x, p[1] - y, p[2] - low[2]])
}
