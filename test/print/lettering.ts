import { letteringBox } from '../../src/render/drawing/bounds.ts'
import type { Lettering, Page, Point } from '../../src/render/drawing/primitives.ts'

const SHRINK_mm = -0.3
const EDGE_mm = 6

/** Whether two convex quadrilaterals overlap: no side of either parts them. */
function overlap(a: readonly Point[], b: readonly Point[]): boolean {
  for (const [one, other] of [
    [a, b],
    [b, a],
  ] as const)
    for (let i = 0; i < one.length; i++) {
      const p = one[i]!
      const q = one[(i + 1) % one.length]!
      const n: Point = [q[1] - p[1], p[0] - q[0]]
      const side = (r: Point) => (r[0] - p[0]) * n[0] + (r[1] - p[1]) * n[1]
      if (Math.min(...other.map(side)) >= 0 && Math.max(...one.map(side)) <= 1e-9) return false
    }
  return true
}

/** Faults of the lettering of a page: out of the printable paper, over one another, or with an unfilled slot. */
export function letteringFaults({ drawing, width_mm, height_mm }: Page): readonly string[] {
  const texts = drawing.filter((p): p is Lettering => p.kind === 'text' && p.text.trim() !== '')
  const boxes = texts.map((t) => letteringBox(t, { x: SHRINK_mm, y: SHRINK_mm }))
  const faults: string[] = []
  texts.forEach((t, i) => {
    if (/[{}]|undefined|NaN/.test(t.text)) faults.push(`unfilled: ${t.text}`)
    const outside = boxes[i]!.some(
      ([x, y]) => x < EDGE_mm || y < EDGE_mm || x > width_mm - EDGE_mm || y > height_mm - EDGE_mm,
    )
    if (outside) faults.push(`outside: ${t.text}`)
    for (let k = 0; k < i; k++)
      if (overlap(boxes[k]!, boxes[i]!)) faults.push(`over one another: ${texts[k]!.text} | ${t.text}`)
  })
  return faults
}
