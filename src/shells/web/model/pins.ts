import type { Finding } from '../../../findings/finding.ts'
import type { Point } from '../../../render/drawing/primitives.ts'
import type { Sketch } from '../../../render/tower/sketch.ts'
import { type PartId, partOf } from './parts.ts'

/** Balloons of one part on a drawing: their row, and the place that their leader ends in. */
export interface Pin {
  readonly part: PartId
  readonly at: Point
  readonly to: Point
  readonly side: -1 | 1
  readonly keys: readonly string[]
}

const APART_mm = 6.4
const AWAY_mm = 9
const MOST = 3

/** Keeps the heights of a column of balloons apart, moving each as little as its neighbours allow. */
function spread(heights: readonly number[]): readonly number[] {
  const out = [...heights]
  for (let i = 1; i < out.length; i++) out[i] = Math.min(out[i]!, out[i - 1]! - APART_mm)
  return out
}

/** Where the balloons of a drawing stand: beside the tower on the side of their part, in a row for each part. */
export function pinsOf(
  sketch: Pick<Sketch, 'places'>,
  order: readonly string[],
  findings: ReadonlyMap<string, Finding>,
  reach_mm: number,
): readonly Pin[] {
  const byPart = new Map<PartId, string[]>()
  for (const key of order) {
    const finding = findings.get(key)
    if (!finding) continue
    const part = partOf(finding.at)
    byPart.set(part, [...(byPart.get(part) ?? []), key])
  }
  const raw = [...byPart].flatMap(([part, keys]) => {
    const to = sketch.places[part]
    const side = to !== undefined && to[0] < 0 ? -1 : 1
    return to === undefined ? [] : [{ part, keys: keys.slice(0, MOST), to, side: side as -1 | 1 }]
  })
  return ([-1, 1] as const).flatMap((side) => {
    const mine = raw.filter((p) => p.side === side).sort((a, b) => b.to[1] - a.to[1])
    const heights = spread(mine.map((p) => p.to[1] + (side > 0 ? 3 : 1)))
    return mine.map((p, i): Pin => {
      const out = Math.max(Math.abs(p.to[0]) + AWAY_mm, p.part === 'distributor' ? reach_mm * 0.62 : reach_mm)
      return { ...p, at: [side * out, heights[i]!] }
    })
  })
}
