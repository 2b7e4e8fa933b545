import type { Mesh } from './mesh.ts'
import { filled, type Loop, loopArea, within } from './polygon.ts'

export type Axis = 0 | 1 | 2

/** A round blind hole in a cut face, for a pin that finds the other face. */
export interface Pin {
  readonly x: number
  readonly y: number
  readonly radius_m: number
  readonly depth_m: number
}

/** A region of a cut face: its outline and what is left out of it. */
export interface Region {
  readonly outer: Loop
  readonly holes: readonly Loop[]
}

const FACETS = 16
/** A plane is moved by so much off corners that lie in it. */
const NUDGE_m = 2.3e-6

/** Directions in a cut face, so that its normal points up the axis. */
const across: readonly (readonly [Axis, Axis])[] = [
  [1, 2],
  [2, 0],
  [0, 1],
]

/** The level nearest to a wanted one in which no corner lies. */
export function freeLevel(m: Mesh, axis: Axis, wanted_m: number): number {
  const near = new Set<number>()
  for (let i = axis; i < m.positions.length; i += 3)
    if (Math.abs(m.positions[i]! - wanted_m) < 64 * NUDGE_m) near.add(m.positions[i]!)
  for (let n = 0; n < 50; n++) {
    const level = wanted_m + n * NUDGE_m
    if ([...near].every((v) => Math.abs(v - level) > NUDGE_m / 4)) return level
  }
  return wanted_m
}

interface Split {
  /** Corners of the mesh and, after them, those in the plane. */
  readonly places: number[]
  readonly low: number[]
  readonly high: number[]
  /** Loops in the plane, as the side below sees them from above. */
  readonly loops: readonly Loop[]
}

/** Every triangle goes to one side or is parted; a side of a triangle is parted at one place for both its triangles. */
function split(m: Mesh, axis: Axis, level_m: number): Split {
  const places = [...m.positions]
  const low: number[] = []
  const high: number[] = []
  const parted = new Map<string, number>()
  const next = new Map<number, number>()
  const below = (i: number) => m.positions[3 * i + axis]! < level_m
  const between = (a: number, b: number): number => {
    const [i, j] = a < b ? [a, b] : [b, a]
    const key = `${i} ${j}`
    const known = parted.get(key)
    if (known !== undefined) return known
    const [va, vb] = [m.positions[3 * i + axis]!, m.positions[3 * j + axis]!]
    const t = (level_m - va) / (vb - va)
    const id = places.length / 3
    for (const k of [0, 1, 2] as const) {
      const [p, q] = [m.positions[3 * i + k]!, m.positions[3 * j + k]!]
      places.push(k === axis ? level_m : p + t * (q - p))
    }
    parted.set(key, id)
    return id
  }
  for (let f = 0; f < m.indices.length; f += 3) {
    const t = [m.indices[f]!, m.indices[f + 1]!, m.indices[f + 2]!] as const
    const sides = t.map(below)
    const count = sides.filter(Boolean).length
    if (count === 3) low.push(...t)
    else if (count === 0) high.push(...t)
    else {
      // The corner that is alone on its side comes first.
      const alone = count === 1 ? sides.indexOf(true) : sides.indexOf(false)
      const [a, b, c] = [t[alone]!, t[(alone + 1) % 3]!, t[(alone + 2) % 3]!]
      const [p, q] = [between(a, b), between(a, c)]
      const [own, other] = count === 1 ? [low, high] : [high, low]
      own.push(a, p, q)
      other.push(p, b, c, p, c, q)
      // The cut face of the lower side runs against the side of its triangle.
      if (count === 1) next.set(q, p)
      else next.set(p, q)
    }
  }
  return { places, low, high, loops: loopsOf(next, places, axis) }
}

function loopsOf(next: Map<number, number>, places: readonly number[], axis: Axis): readonly Loop[] {
  const [u, v] = across[axis]!
  const loops: Loop[] = []
  while (next.size > 0) {
    const [start] = next.keys()
    const ids: number[] = []
    let at: number | undefined = start
    while (at !== undefined && next.has(at)) {
      ids.push(at)
      const to: number | undefined = next.get(at)
      next.delete(at)
      at = to
    }
    loops.push(ids.map((id) => ({ x: places[3 * id + u]!, y: places[3 * id + v]!, id })))
  }
  return loops.filter((l) => l.length >= 3)
}

/** Loops that run anticlockwise are outlines; each clockwise one is a hole of the least outline round it. */
export function regionsOf(loops: readonly Loop[]): readonly Region[] {
  const outers = loops.filter((l) => loopArea(l) > 0)
  return outers.map((outer) => ({
    outer,
    holes: loops.filter((l) => {
      if (loopArea(l) >= 0) return false
      const round = outers.filter((o) => within(o, l[0]!.x, l[0]!.y)).sort((a, b) => loopArea(a) - loopArea(b))
      return round[0] === outer
    }),
  }))
}

/** Outlines of the mesh in a plane. */
export const sectionOf = (m: Mesh, axis: Axis, level_m: number): readonly Region[] =>
  regionsOf(split(m, axis, freeLevel(m, axis, level_m)).loops)

/** Puts the cut face on one side, with its blind holes; `up` for the lower side, whose face looks up. */
function capped(s: Split, side: number[], axis: Axis, level_m: number, up: boolean, pins: readonly Pin[]): boolean {
  const [u, v] = across[axis]!
  const put = (x: number, y: number, w: number): number => {
    const place = [0, 0, 0]
    place[u] = x
    place[v] = y
    place[axis] = w
    s.places.push(...place)
    return s.places.length / 3 - 1
  }
  const face = (a: number, b: number, c: number) => (up ? side.push(a, b, c) : side.push(a, c, b))
  const inward = up ? -1 : 1
  for (const region of regionsOf(s.loops)) {
    const own = pins.filter((p) => within(region.outer, p.x, p.y) && !region.holes.some((h) => within(h, p.x, p.y)))
    const mouths = own.map((p) => {
      const ring = (w: number) =>
        Array.from({ length: FACETS }, (_, i) => {
          const a = (-2 * Math.PI * i) / FACETS
          const [x, y] = [p.x + p.radius_m * Math.cos(a), p.y + p.radius_m * Math.sin(a)]
          return { x, y, id: put(x, y, w) }
        })
      const [mouth, foot] = [ring(level_m), ring(level_m + inward * p.depth_m)]
      for (const i of mouth.keys()) {
        const k = (i + 1) % FACETS
        face(foot[i]!.id, mouth[k]!.id, mouth[i]!.id)
        face(foot[i]!.id, foot[k]!.id, mouth[k]!.id)
        if (i > 0 && i + 1 < FACETS) face(foot[0]!.id, foot[k]!.id, foot[i]!.id)
      }
      return mouth
    })
    const triangles = filled(region.outer, [...region.holes, ...mouths])
    if (triangles === null) return false
    for (const [a, b, c] of triangles) face(a, b, c)
  }
  return true
}

/** Only the corners that are used, in the order of their first use. */
function packed(places: readonly number[], indices: readonly number[]): Mesh {
  const number = new Map<number, number>()
  const out = new Uint32Array(indices.length)
  const kept: number[] = []
  indices.forEach((id, i) => {
    let n = number.get(id)
    if (n === undefined) {
      n = number.size
      number.set(id, n)
      kept.push(places[3 * id]!, places[3 * id + 1]!, places[3 * id + 2]!)
    }
    out[i] = n
  })
  return { positions: Float32Array.from(kept), indices: out }
}

/** A closed mesh in two by a plane across an axis, both closed again, with blind holes for pins; null where it fails. */
export function cutMesh(
  m: Mesh,
  axis: Axis,
  level_m: number,
  pins: readonly Pin[],
): readonly [low: Mesh, high: Mesh] | null {
  const s = split(m, axis, level_m)
  if (s.loops.length === 0) return null
  if (!capped(s, s.low, axis, level_m, true, pins) || !capped(s, s.high, axis, level_m, false, pins)) return null
  return [packed(s.places, s.low), packed(s.places, s.high)]
}

/** The pieces of a mesh that hang together. */
export function apart(m: Mesh): readonly Mesh[] {
  const parent = Int32Array.from({ length: m.positions.length / 3 }, (_, i) => i)
  const root = (i: number): number => {
    let r = i
    while (parent[r] !== r) r = parent[r]!
    parent[i] = r
    return r
  }
  for (let f = 0; f < m.indices.length; f += 3) {
    const r = root(m.indices[f]!)
    parent[root(m.indices[f + 1]!)] = r
    parent[root(m.indices[f + 2]!)] = r
  }
  const by = new Map<number, number[]>()
  for (let f = 0; f < m.indices.length; f += 3) {
    const r = root(m.indices[f]!)
    by.set(r, [...(by.get(r) ?? []), m.indices[f]!, m.indices[f + 1]!, m.indices[f + 2]!])
  }
  return [...by.values()].map((ids) => packed([...m.positions], ids))
}
