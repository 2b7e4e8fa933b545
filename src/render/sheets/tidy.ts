import { letteringBox } from '../drawing/bounds.ts'
import type { Drawing, Point, Primitive, Rect } from '../drawing/primitives.ts'

const apart = (a: readonly Point[], b: readonly Point[]): boolean =>
  a.some((p, i) => {
    const q = a[(i + 1) % a.length]!
    const side = ([x, y]: Point) => (x - p[0]) * (q[1] - p[1]) + (y - p[1]) * (p[0] - q[0])
    return b.every((r) => side(r) >= 0)
  })

/**
 * A part of a tiled drawing without the lettering that its edge would halve or its seam would write over: the strip
 * shared with the neighbour shows it there.
 */
export function tidied(drawing: Drawing, area: Rect): Drawing {
  const kept: { readonly p: Primitive; readonly box: readonly Point[] | null }[] = []
  // Seams are the last of a part, and stay.
  for (const p of [...drawing].reverse()) {
    const box = p.kind === 'text' ? letteringBox(p) : null
    const inside =
      box?.every(([x, y]) => x >= area.left && x <= area.right && y >= area.bottom && y <= area.top) ?? true
    const free = box === null || kept.every((k) => k.box === null || apart(box, k.box) || apart(k.box, box))
    if (inside && free) kept.push({ p, box })
  }
  return kept.map((k) => k.p).reverse()
}
