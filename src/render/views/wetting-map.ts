import { strips, type WettingFacts } from '../../disciplines/hydraulics/index.ts'
import type { LayoutFacts } from '../../disciplines/layout/index.ts'
import { lettersWidth } from '../drawing/letters.ts'
import {
  circle,
  contour,
  type Drawing,
  type Lettering,
  lettering,
  line,
  type Point,
  rectangle,
} from '../drawing/primitives.ts'
import { moved } from '../drawing/transform.ts'
import type { WaterPathWords } from '../words/en/water-path.ts'
import { seamOf } from './unrolled.ts'

const SITE_mm = 2.6
const FIGURE_mm = 2.6

/** One site: solid where it is wet on any wall, half where only on a run-in one, dotted where drops strike it, crossed out where missed. */
function site([x, y]: Point, water: WettingFacts['worst'][number]['water']): Drawing {
  const r = SITE_mm
  const d = r * Math.SQRT1_2
  if (water === 'wet') return [circle([x, y], r, 'visible', { fill: 'solid' })]
  if (water === 'doubtful') {
    const arc = Array.from({ length: 25 }, (_, i): Point => {
      const a = Math.PI + (Math.PI * i) / 24
      return [x + r * Math.cos(a), y + r * Math.sin(a)]
    })
    return [circle([x, y], r, 'visible', { fill: 'paper' }), contour(arc, null, { fill: 'solid' })]
  }
  if (water === 'drops') {
    const dots: readonly Point[] = [
      [x - r * 0.38, y + r * 0.3],
      [x + r * 0.38, y + r * 0.3],
      [x, y - r * 0.42],
    ]
    return [
      circle([x, y], r, 'visible', { fill: 'paper' }),
      ...dots.map((at) => circle(at, r * 0.16, 'thin', { fill: 'solid' })),
    ]
  }
  return [
    circle([x, y], r, 'cut', { fill: 'paper' }),
    line([x - d, y - d], [x + d, y + d], 'cut'),
    line([x - d, y + d], [x + d, y - d], 'cut'),
  ]
}

/** Numbers under their sites; where sites stand too close to be told apart, some are left out. */
function numbered(sites: readonly { readonly at: Point; readonly number: string }[]): Drawing {
  const out: { readonly at: Point; readonly half: number; readonly letters: Lettering }[] = []
  for (const { at, number } of sites) {
    const half = lettersWidth({ text: number, face: 'drafting', size_mm: FIGURE_mm }) / 2 + 0.3
    const place: Point = [at[0], at[1] - SITE_mm - 3]
    const free = out.every(
      (o) => Math.abs(o.at[0] - place[0]) >= o.half + half || Math.abs(o.at[1] - place[1]) >= FIGURE_mm,
    )
    const letters = lettering(place, number, { size_mm: FIGURE_mm, anchor: 'middle', halo: true })
    if (free) out.push({ at: place, half, letters })
  }
  return out.map((o) => o.letters)
}

/** What the marks mean: the sites in one row, the streams in another, from the left upper corner. */
export function wettingKey(words: WaterPathWords, onWall: boolean): Drawing {
  const rows = ['wet', 'doubtful', 'drops', 'dry'] as const
  const foot = -7 * rows.length
  return [
    ...rows.flatMap(
      (water, i): Drawing => [
        ...site([SITE_mm, -7 * i], water),
        lettering([9, -7 * i - 1], words[water], { size_mm: FIGURE_mm }),
      ],
    ),
    ...(onWall
      ? [
          ...stream({
            left: 0,
            right: 2 * SITE_mm,
            inner: [1.4, 2 * SITE_mm - 1.4],
            bottom: foot - 2.6,
            top: foot + 2.6,
          }),
          lettering([9, foot - 1], words.strip, { size_mm: FIGURE_mm }),
        ]
      : [
          line([SITE_mm, foot - 2.6], [SITE_mm, foot + 2.6], 'hidden'),
          lettering([9, foot - 1], words.free, { size_mm: FIGURE_mm }),
        ]),
  ]
}

/** Water on the wall: filled as far as a new pipe is wetted, to the dashed edges once it has run in. */
function stream(s: {
  readonly left: number
  readonly right: number
  readonly inner: readonly [number, number]
  readonly bottom: number
  readonly top: number
}): Drawing {
  return [
    rectangle({ left: s.inner[0], right: s.inner[1], bottom: s.bottom, top: s.top }, null, { fill: 'water' }),
    line([s.left, s.bottom], [s.left, s.top], 'hidden'),
    line([s.right, s.bottom], [s.right, s.top], 'hidden'),
  ]
}

/** Whether the streams run down the wall, and do not fall free inside. */
export const wettingOnWall = (facts: WettingFacts): boolean => strips(facts).some((s) => s.onWall)

type Span = readonly [from: number, to: number]

/** Spans on the flat, cut at the seam and joined where they touch. */
function joined(spans: readonly Span[], width: number): readonly Span[] {
  const cut = spans
    .flatMap(([a, b]): Span[] => [-width, 0, width].map((by) => [Math.max(0, a + by), Math.min(width, b + by)]))
    .filter(([a, b]) => b - a > 1e-9)
    .sort((a, b) => a[0] - b[0])
  const out: [number, number][] = []
  for (const [a, b] of cut) {
    const last = out.at(-1)
    if (last !== undefined && a <= last[1] + 1e-9) last[1] = Math.max(last[1], b)
    else out.push([a, b])
  }
  return out
}

/** The column unrolled as its bore sees it: strips of water from the distributor's holes, and which sites they meet. */
export function wettingMapView(given: {
  readonly facts: WettingFacts
  readonly layout: LayoutFacts
  /** As drawn, or at the worst lean and clogging. */
  readonly at: 'asDrawn' | 'worst'
  /** Given, the marks are explained at the right. */
  readonly words?: WaterPathWords
  readonly ratio: number
}): Drawing {
  const { facts, layout, words, ratio } = given
  const round_m = layout.circumference_m
  const width = round_m * ratio
  const height = layout.columnLength_m * ratio
  const seam_m = seamOf(layout)
  const x = (turn_rad: number): number => {
    const along = (turn_rad / (2 * Math.PI)) * round_m - seam_m
    return (((along % round_m) + round_m) % round_m) * ratio
  }
  const streams = strips(facts)
  // A strip on the bore, carried out to the outside on which the sites are marked.
  const grow = (round_m / (Math.PI * facts.case.bore_m)) * ratio
  const spans = (wide: 'widest_m' | 'narrowest_m') =>
    joined(
      streams
        .filter((s) => s.onWall)
        .map((s): Span => {
          const half = Math.min((s[wide] * grow) / 2, width / 2)
          return [x(s.turn_rad) - half, x(s.turn_rad) + half]
        }),
      width,
    )
  const place = new Map(layout.sites.map((s) => [String(s.number), s]))
  // A site beyond the pipe's end is a finding of the layout, not a place on this map.
  const sites = facts[given.at].flatMap(({ id, water }) => {
    const p = place.get(id)
    if (p === undefined || p.mark_m < 0 || p.mark_m > layout.columnLength_m) return []
    return [{ at: [x(p.turn_rad), p.mark_m * ratio] as const, water, number: id }]
  })
  const upright = (at: number, pen: 'hidden') => line([at, 0], [at, height], pen)
  const edges = spans('widest_m').flatMap((s) => s.filter((at) => at > 1e-6 && at < width - 1e-6))
  return [
    ...spans('narrowest_m').map(([left, right]) =>
      rectangle({ left, right, bottom: 0, top: height }, null, { fill: 'water' }),
    ),
    ...edges.map((at) => upright(at, 'hidden')),
    ...streams.filter((s) => !s.onWall).map((s) => upright(x(s.turn_rad), 'hidden')),
    rectangle({ left: 0, right: width, bottom: 0, top: height }, 'visible'),
    ...streams.map((s) => circle([x(s.turn_rad), height + 2], 0.7, 'visible', { fill: 'water' })),
    ...sites.flatMap((s) => site(s.at, s.water)),
    ...numbered(sites),
    ...(words === undefined ? [] : moved(wettingKey(words, wettingOnWall(facts)), [width + 8, height - 3])),
  ]
}
