import { letteringRect, meet } from '../drawing/boxes.ts'
import type { Anchor, Drawing, Point, Rect } from '../drawing/primitives.ts'
import { lettering, polyline } from '../drawing/primitives.ts'
import { CHART_FIGURE_mm } from './chart-axes.ts'

/** Where a name may stand; with `to`, a thin line ties it to the thing that it names. */
export interface Spot {
  readonly at: Point
  readonly anchor: Anchor
  readonly to?: Point
}

/** A name and where it would like to stand, best first. */
export interface Tag {
  readonly text: string
  readonly spots: readonly Spot[]
  readonly quiet?: boolean
}

/** Weights that make a name rather cross a line than leave the chart, and anything rather than cover another name. */
const COVERS = 1e4
const LEAVES = 1e3
const CROSSES = 5
/** A millimetre away from what is named, in the same weights: less than any line that is crossed. */
const FAR = 0.05
const SAMPLE_mm = 0.6
const AIR_mm = 0.7
/** A grid of places, apart across and up. */
const GRID_mm = [2.5, 1.4] as const

const holds = (a: Rect, [x, y]: Point): boolean => x > a.left && x < a.right && y > a.bottom && y < a.top

const outside = (box: Rect, room: Rect): boolean =>
  box.left < room.left || box.right > room.right || box.bottom < room.bottom || box.top > room.top

/** Points along a line, close enough that no letter slips between them. */
function samples(points: readonly Point[]): readonly Point[] {
  return points.slice(1).flatMap((b, i): Point[] => {
    const a = points[i]!
    const n = Math.max(1, Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) / SAMPLE_mm))
    return Array.from({ length: n }, (_, k) => [a[0] + ((b[0] - a[0]) * k) / n, a[1] + ((b[1] - a[1]) * k) / n])
  })
}

/** Places all over a chart. */
const gridOf = (room: Rect): readonly Point[] => {
  const across = Math.floor((room.right - room.left) / GRID_mm[0])
  const up = Math.floor((room.top - room.bottom) / GRID_mm[1])
  return Array.from({ length: (across + 1) * (up + 1) }, (_, i) => [
    room.left + (i % (across + 1)) * GRID_mm[0],
    room.bottom + Math.floor(i / (across + 1)) * GRID_mm[1],
  ])
}

/** Names on a chart, each where it covers no other, stays within, and crosses the fewest lines. */
export function tags(given: {
  readonly names: readonly Tag[]
  readonly lines: readonly (readonly Point[])[]
  readonly within: Rect
  /** Boxes that are taken already. */
  readonly taken?: readonly Rect[]
}): Drawing {
  const { names, within } = given
  const ink = given.lines.flatMap(samples)
  const taken: Rect[] = [...(given.taken ?? [])]
  return names.flatMap(({ text, spots, quiet = false }): Drawing => {
    const tried = (spot: Spot, rank: number) => {
      const letters = lettering(spot.at, text, {
        size_mm: CHART_FIGURE_mm,
        anchor: spot.anchor,
        halo: true,
        tone: quiet ? 'quiet' : 'ink',
      })
      const box = letteringRect(letters, AIR_mm)
      const clash =
        COVERS * taken.filter((t) => meet(t, box)).length +
        LEAVES * (outside(box, within) ? 1 : 0) +
        CROSSES * ink.filter((p) => holds(box, p)).length
      return { spot, letters, box, clash, cost: clash + rank }
    }
    const put = spots.map(tried)
    /** Where every wish is in the way of a line: the nearest free place, tied to what is named. */
    const freed = (wished: ReturnType<typeof tried>) => {
      const to = spots[0]!.to ?? spots[0]!.at
      return gridOf(within)
        .map((at) => ({ at, far: Math.hypot(at[0] - to[0], at[1] - to[1]) }))
        .sort((a, b) => a.far - b.far)
        .map(({ at, far }) => tried({ at, anchor: at[0] < to[0] ? 'end' : 'start', to }, far * FAR))
        .reduce((a, b) => (b.cost < a.cost ? b : a), wished)
    }
    const wished = put.reduce((a, b) => (b.cost < a.cost ? b : a))
    const best = wished.clash === 0 ? wished : freed(wished)
    taken.push(best.box)
    const { to, at } = best.spot
    const end: Point = [at[0] + (best.spot.anchor === 'end' ? 0.6 : -0.6), at[1] + CHART_FIGURE_mm * 0.34]
    return [...(to === undefined ? [] : [polyline([to, end], 'dimension')]), best.letters]
  })
}

/** Spots along a curve, above and below it, from the middle outwards. */
export function spotsAlong(points: readonly Point[], reach_mm = 1.4): readonly Spot[] {
  const last = points.length - 1
  const [first, end] = [points[0]!, points[last]!]
  const ends = [reach_mm, -reach_mm - CHART_FIGURE_mm * 0.75, reach_mm + CHART_FIGURE_mm * 1.5].flatMap(
    (dy): Spot[] => [
      { at: [first[0] + reach_mm, first[1] + dy], anchor: 'start' },
      { at: [end[0] - reach_mm, end[1] + dy], anchor: 'end' },
    ],
  )
  const shares = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.12, 0.88, 0.05, 0.95]
  const along = shares.flatMap((share): Spot[] => {
    const [x, y] = points[Math.round(share * last)]!
    return [
      { at: [x, y + reach_mm], anchor: 'middle' },
      { at: [x, y - reach_mm - CHART_FIGURE_mm * 0.75], anchor: 'middle' },
      { at: [x - reach_mm, y + reach_mm], anchor: 'end' },
      { at: [x + reach_mm, y + reach_mm], anchor: 'start' },
      { at: [x - reach_mm, y - reach_mm - CHART_FIGURE_mm * 0.75], anchor: 'end' },
      { at: [x + reach_mm, y - reach_mm - CHART_FIGURE_mm * 0.75], anchor: 'start' },
    ]
  })
  return [...along, ...ends]
}

/** Spots in rows across a chart, with a line to a point: where nothing nearer is free. */
export function spotsWithin(room: Rect, to: Point): readonly Spot[] {
  return [0.9, 0.75, 0.6, 0.45, 0.3, 0.15].flatMap((share): Spot[] => {
    const y = room.bottom + share * (room.top - room.bottom)
    return [
      { at: [room.left + 1.5, y], anchor: 'start', to },
      { at: [room.right - 1.5, y], anchor: 'end', to },
    ]
  })
}

/** Spots round a point, each with a line to it. */
export function spotsRound([x, y]: Point): readonly Spot[] {
  const reach: readonly Point[] = [
    [7, 6],
    [7, -7],
    [-7, 6],
    [-7, -7],
    [11, 12],
    [11, -12],
    [-11, 12],
    [-11, -12],
    [16, 3],
    [-16, 3],
    [20, -18],
    [20, 18],
  ]
  return reach.map(([dx, dy]) => ({ at: [x + dx, y + dy], anchor: dx > 0 ? 'start' : 'end', to: [x, y] }))
}
