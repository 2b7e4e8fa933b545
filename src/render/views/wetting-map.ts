import { strips, type WettingFacts } from '../../disciplines/hydraulics/index.ts'
import type { LayoutFacts } from '../../disciplines/layout/index.ts'
import { circle, contour, type Drawing, lettering, line, type Point, rectangle } from '../drawing/primitives.ts'
import type { WaterPathWords } from '../words/en/water-path.ts'
import { seamOf } from './unrolled.ts'

const SITE_mm = 2.6
const FIGURE_mm = 2.6

/** One site: solid where it is wet on any wall, half where only on a run-in one, crossed out where missed. */
function site(at: Point, water: 'wet' | 'doubtful' | 'dry', number: string): Drawing {
  const [x, y] = at
  const r = SITE_mm
  const d = r * Math.SQRT1_2
  const name = lettering([x + r + 0.8, y - 0.9], number, { size_mm: FIGURE_mm, halo: true })
  if (water === 'wet') return [circle(at, r, 'visible', { fill: 'solid' }), name]
  if (water === 'doubtful') {
    const arc = Array.from({ length: 25 }, (_, i): Point => {
      const a = Math.PI + (Math.PI * i) / 24
      return [x + r * Math.cos(a), y + r * Math.sin(a)]
    })
    return [circle(at, r, 'visible', { fill: 'paper' }), contour(arc, null, { fill: 'solid' }), name]
  }
  return [
    circle(at, r, 'cut', { fill: 'paper' }),
    line([x - d, y - d], [x + d, y + d], 'cut'),
    line([x - d, y + d], [x + d, y - d], 'cut'),
    name,
  ]
}

function key(words: WaterPathWords, left: number, top: number): Drawing {
  const rows = ['wet', 'doubtful', 'dry'] as const
  return [
    ...rows.flatMap(
      (water, i): Drawing => [
        ...site([left + 3, top - 7 * i], water, ''),
        lettering([left + 8, top - 7 * i - 1], words[water], { size_mm: FIGURE_mm }),
      ],
    ),
    rectangle({ left, right: left + 6, bottom: top - 24.5, top: top - 20 }, null, { fill: 'wash' }),
    rectangle({ left: left + 2, right: left + 4, bottom: top - 24.5, top: top - 20 }, null, { fill: 'water' }),
    lettering([left + 8, top - 23.2], words.strip, { size_mm: FIGURE_mm }),
    line([left + 3, top - 31.5], [left + 3, top - 27], 'hidden'),
    lettering([left + 8, top - 30.2], words.free, { size_mm: FIGURE_mm }),
  ]
}

/** The column unrolled as its bore sees it: strips of water from the distributor's holes, and which sites they meet. */
export function wettingMapView(given: {
  readonly facts: WettingFacts
  readonly layout: LayoutFacts
  /** As drawn, or at the worst lean and clogging. */
  readonly at: 'asDrawn' | 'worst'
  readonly words: WaterPathWords
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
  // A strip on the bore, carried out to the outside on which the sites are marked.
  const grow = round_m / (Math.PI * facts.case.bore_m)
  const band = (turn_rad: number, wide_m: number, tint: 'wash' | 'water'): Drawing => {
    const half = Math.min((wide_m * grow * ratio) / 2, width / 2)
    const middle = x(turn_rad)
    return [middle - width, middle, middle + width].flatMap((m) => {
      const [left, right] = [Math.max(0, m - half), Math.min(width, m + half)]
      return right > left ? [rectangle({ left, right, bottom: 0, top: height }, null, { fill: tint })] : []
    })
  }
  const streams = strips(facts)
  const place = new Map(layout.sites.map((s) => [String(s.number), s]))
  return [
    ...streams.filter((s) => s.onWall).flatMap((s) => band(s.turn_rad, s.widest_m, 'wash')),
    ...streams.filter((s) => s.onWall).flatMap((s) => band(s.turn_rad, s.narrowest_m, 'water')),
    ...streams.filter((s) => !s.onWall).map((s) => line([x(s.turn_rad), 0], [x(s.turn_rad), height], 'hidden')),
    rectangle({ left: 0, right: width, bottom: 0, top: height }, 'visible'),
    ...streams.map((s) => circle([x(s.turn_rad), height + 2], 0.8, 'visible', { fill: 'water' })),
    lettering([0, height + 4.4], words.hole, { size_mm: FIGURE_mm, tone: 'quiet' }),
    ...facts[given.at].flatMap((s): Drawing => {
      const p = place.get(s.id)
      return p === undefined ? [] : site([x(p.turn_rad), p.mark_m * ratio], s.water, s.id)
    }),
    ...key(words, width + 10, height - 4),
  ]
}
