import type { Finding } from '../../../findings/finding.ts'
import type { Point } from '../../../render/drawing/primitives.ts'
import type { Picture } from '../picture.ts'
import { type PartId, partOf } from './parts.ts'

/** Balloons of one part on a drawing, and the place that their leader ends in. */
export interface Pin {
  readonly part: PartId
  readonly to: Point
  readonly keys: readonly string[]
  /** Where each balloon stands; the leader comes from the first. */
  readonly at: readonly Point[]
}

export const RADIUS_mm = 2.4
const APART_mm = 5.3
const AWAY_mm = 9
const AIR_mm = 0.5
const MOST = 3
const STEP_mm = 1.6
/** How far balloons are moved at most from where they would like to stand, up or down and outwards. */
const FAR_mm = 48
const OUT_mm = 16
/** A row reads better than a pile: how many millimetres of way that is worth. */
const PILE_mm = 3

type Box = readonly [left: number, bottom: number, right: number, top: number]

const meets = (a: Box, b: Box): boolean => a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3]

const boxOf = ([x, y]: Point): Box => {
  const r = RADIUS_mm + AIR_mm
  return [x - r, y - r, x + r, y + r]
}

/** Whether a leader runs through a box; its end, the dot on the very place, may lie in one. */
function crosses([ax, ay]: Point, [bx, by]: Point, box: Box): boolean {
  const count = Math.ceil(Math.hypot(bx - ax, by - ay))
  for (let i = 0; i < count; i++) {
    const [x, y] = [ax + ((bx - ax) * i) / count, ay + ((by - ay) * i) / count]
    if (x > box[0] && x < box[2] && y > box[1] && y < box[3]) return true
  }
  return false
}

interface Move {
  readonly dx: number
  readonly dy: number
  /** Direction in which the next balloon of the part stands. */
  readonly next: Point
  readonly cost: number
}

/** All moves of balloons, the least first: outwards, up and down, in a row or in a pile. */
const moves: readonly Move[] = (() => {
  const all: Move[] = []
  for (let dx = 0; dx <= OUT_mm; dx += STEP_mm)
    for (let dy = -FAR_mm; dy <= FAR_mm; dy += STEP_mm) {
      const far = Math.hypot(dx, dy)
      all.push({ dx, dy, next: [1, 0], cost: far })
      all.push({ dx, dy, next: [0, -1], cost: far + PILE_mm })
      all.push({ dx, dy, next: [0, 1], cost: far + PILE_mm })
    }
  return all.sort((a, b) => a.cost - b.cost)
})()

/** Balloons of a part where they cover nothing that is taken and stay on the sheet; the nearest such place. */
function placed(
  wish: { readonly at: Point; readonly to: Point; readonly side: number; readonly count: number },
  room: Picture['box'],
  taken: readonly Box[],
): readonly Point[] {
  const { at, to, side, count } = wish
  const spots = ({ dx, dy, next }: Move): readonly Point[] =>
    Array.from({ length: count }, (_, i) => [
      at[0] + side * (dx + next[0] * i * APART_mm),
      at[1] + dy + next[1] * i * APART_mm,
    ])
  const free = (points: readonly Point[]): boolean =>
    points.every((p) => {
      const box = boxOf(p)
      const inside = box[0] >= room.left && box[2] <= room.right && box[1] >= room.bottom && box[3] <= room.top
      return inside && !taken.some((t) => meets(t, box))
    }) && !taken.some((t) => crosses(points[0]!, to, t))
  for (const move of moves) {
    const points = spots(move)
    if (free(points)) return points
  }
  return spots(moves[0]!)
}

/** Where the balloons of a drawing stand: beside the tower on the side of their part, clear of figures and each other. */
export function pinsOf(
  picture: Pick<Picture, 'places' | 'box' | 'taken'>,
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
  const taken: Box[] = [...(picture.taken ?? [])]
  return [...byPart].flatMap(([part, all]): Pin[] => {
    const to = picture.places[part]
    if (to === undefined) return []
    const keys = all.slice(0, MOST)
    const side = to[0] < 0 ? -1 : 1
    const out = Math.max(Math.abs(to[0]) + AWAY_mm, part === 'distributor' ? reach_mm * 0.62 : reach_mm)
    const wish = { at: [side * out, to[1] + (side > 0 ? 3 : 1)] as const, to, side, count: keys.length }
    const at = placed(wish, picture.box, taken)
    taken.push(...at.map(boxOf))
    return [{ part, to, keys, at }]
  })
}
