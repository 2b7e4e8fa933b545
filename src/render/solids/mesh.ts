/** A place in space: the column's axis is z, up; line 1 stands at x, angles turn from x to y. */
export type Place = readonly [x_m: number, y_m: number, z_m: number]

/** A closed surface of triangles, outward by the right hand, in metres. */
export interface Mesh {
  readonly positions: Float32Array
  readonly indices: Uint32Array
}

/** Vertices in their order along an edge, each with the parameter by which two edges are sewn together. */
export interface Edge {
  readonly ids: readonly number[]
  readonly along: readonly number[]
}

/** A surface while it is made. */
export interface Draft {
  readonly places: Place[]
  readonly faces: number[]
}

export const draft = (): Draft => ({ places: [], faces: [] })

export function vertex(d: Draft, place: Place): number {
  d.places.push(place)
  return d.places.length - 1
}

/** A triangle; one of which two corners are the same vertex is no triangle. */
export function face(d: Draft, a: number, b: number, c: number, flip = false): void {
  if (a === b || b === c || c === a) return
  if (flip) d.faces.push(a, c, b)
  else d.faces.push(a, b, c)
}

/** A convex loop of vertices, anticlockwise as seen from outside. */
export function fan(d: Draft, loop: readonly number[], flip = false): void {
  for (let i = 1; i + 1 < loop.length; i++) face(d, loop[0]!, loop[i]!, loop[i + 1]!, flip)
}

/**
 * Triangles between two edges that run side by side: seen from outside both run to the right, `upper` above `lower`.
 * The next vertex is taken from the edge that lags behind. A closed edge goes on over its period to its start.
 */
export function sew(
  d: Draft,
  lower: Edge,
  upper: Edge,
  how: { readonly period?: number; readonly flip?: boolean } = {},
): void {
  const { period, flip = false } = how
  const ends = (e: Edge): Edge =>
    period === undefined ? e : { ids: [...e.ids, e.ids[0]!], along: [...e.along, e.along[0]! + period] }
  const [a, b] = [ends(lower), ends(upper)]
  let [i, j] = [0, 0]
  while (i + 1 < a.ids.length || j + 1 < b.ids.length) {
    const nextA = a.along[i + 1] ?? Number.POSITIVE_INFINITY
    const nextB = b.along[j + 1] ?? Number.POSITIVE_INFINITY
    if (nextA <= nextB) {
      face(d, a.ids[i]!, a.ids[i + 1]!, b.ids[j]!, flip)
      i += 1
    } else {
      face(d, a.ids[i]!, b.ids[j + 1]!, b.ids[j]!, flip)
      j += 1
    }
  }
}

export function mesh(d: Draft): Mesh {
  const positions = new Float32Array(d.places.length * 3)
  d.places.forEach((p, i) => {
    positions.set(p, 3 * i)
  })
  return { positions, indices: Uint32Array.from(d.faces) }
}
