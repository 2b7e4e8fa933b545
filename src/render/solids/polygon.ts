/** A corner of a flat polygon with the number by which the mesh knows it. */
export interface Corner {
  readonly x: number
  readonly y: number
  readonly id: number
}

export type Loop = readonly Corner[]

const cross = (a: Corner, b: Corner, c: Corner): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)

/** Area inside a loop, negative where it runs clockwise. */
export const loopArea = (loop: Loop): number =>
  loop.reduce((sum, p, i) => {
    const q = loop[(i + 1) % loop.length]!
    return sum + (p.x * q.y - q.x * p.y) / 2
  }, 0)

/** Whether a place lies within a loop, by counting the sides to its right. */
export function within(loop: Loop, x: number, y: number): boolean {
  let inside = false
  loop.forEach((a, i) => {
    const b = loop[(i + 1) % loop.length]!
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) * (b.x - a.x)) / (b.y - a.y)) inside = !inside
  })
  return inside
}

/** Distance of a place from the nearest side of a loop. */
export function clearOf(loop: Loop, x: number, y: number): number {
  return loop.reduce((least, a, i) => {
    const b = loop[(i + 1) % loop.length]!
    const [dx, dy] = [b.x - a.x, b.y - a.y]
    const long = dx * dx + dy * dy
    const t = long === 0 ? 0 : Math.max(0, Math.min(1, ((x - a.x) * dx + (y - a.y) * dy) / long))
    return Math.min(least, Math.hypot(a.x + t * dx - x, a.y + t * dy - y))
  }, Number.POSITIVE_INFINITY)
}

const inTriangle = (a: Corner, b: Corner, c: Corner, p: Corner): boolean =>
  cross(a, b, p) >= 0 && cross(b, c, p) >= 0 && cross(c, a, p) >= 0

const same = (a: Corner, b: Corner): boolean => a.x === b.x && a.y === b.y

const meet = (a: Corner, b: Corner, c: Corner, d: Corner): boolean =>
  cross(a, b, c) * cross(a, b, d) < 0 && cross(c, d, a) * cross(c, d, b) < 0

/** The outer loop with its holes, each joined to it by a cut that runs there and back. */
function bridged(outer: Loop, holes: readonly Loop[]): Loop | null {
  let ring: Corner[] = [...outer]
  const left = [...holes].sort((a, b) => Math.max(...b.map((p) => p.x)) - Math.max(...a.map((p) => p.x)))
  for (const [n, hole] of left.entries()) {
    const walls = [ring, ...left.slice(n)]
    const free = (a: Corner, b: Corner): boolean =>
      walls.every((w) => w.every((c, i) => !meet(a, b, c, w[(i + 1) % w.length]!)))
    let best: { readonly i: number; readonly j: number; readonly d: number } | null = null
    for (const [j, h] of hole.entries())
      for (const [i, r] of ring.entries()) {
        const d = Math.hypot(h.x - r.x, h.y - r.y)
        if ((best === null || d < best.d) && free(h, r)) best = { i, j, d }
      }
    if (best === null) return null
    const { i, j } = best
    ring = [...ring.slice(0, i + 1), ...hole.slice(j), ...hole.slice(0, j + 1), ...ring.slice(i)]
  }
  return ring
}

/** Corner triples that fill a loop, anticlockwise, less its holes, clockwise; null where none were found. */
export function filled(outer: Loop, holes: readonly Loop[]): readonly (readonly [number, number, number])[] | null {
  const joined = bridged(outer, holes)
  if (joined === null) return null
  const ring = [...joined]
  const out: (readonly [number, number, number])[] = []
  const scale = Math.abs(loopArea(outer))
  // First only ears with an area that counts; the last slivers, between corners in a row, as they come.
  for (const least of [1e-9 * scale, 0, Number.NEGATIVE_INFINITY]) {
    let misses = 0
    let i = 0
    while (ring.length > 3 && misses < ring.length) {
      const [a, b, c] = [
        ring[(i + ring.length - 1) % ring.length]!,
        ring[i % ring.length]!,
        ring[(i + 1) % ring.length]!,
      ]
      const ear =
        cross(a, b, c) > least && ring.every((p) => same(p, a) || same(p, b) || same(p, c) || !inTriangle(a, b, c, p))
      if (!ear) {
        misses += 1
        i = (i + 1) % ring.length
        continue
      }
      out.push([a.id, b.id, c.id])
      ring.splice(i % ring.length, 1)
      misses = 0
      i %= ring.length
    }
    if (ring.length === 3) break
  }
  if (ring.length !== 3) return null
  out.push([ring[0]!.id, ring[1]!.id, ring[2]!.id])
  return out
}
