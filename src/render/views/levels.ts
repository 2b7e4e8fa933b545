import type { ReservoirFacts } from '../../disciplines/reservoir/index.ts'
import { quantity } from '../../kernel/units.ts'
import { isKnown } from '../../plan/known.ts'
import { type Display, shownText } from '../display.ts'
import { levelMark } from '../drawing/marks.ts'
import { contour, type Drawing, lettering, line, type Point, polyline } from '../drawing/primitives.ts'
import type { WaterPathWords } from '../words/en/water-path.ts'
import { fill } from '../words/fill.ts'

const SIZE_mm = 2.8
const LEADING_mm = 4.4

/** Half of the inside width at a level, along the longer side; a measured vessel is drawn upright. */
function halfWidth(facts: ReservoirFacts, level_m: number): number {
  const v = facts.tank.vessel
  const at = (foot: number, top: number) => (foot + ((top - foot) * level_m) / facts.tank.depth_m) / 2
  if (v.shape === 'round') return at(v.bottom_m, v.top_m)
  if (v.shape === 'box') return at(v.bottomLength_m, v.topLength_m)
  return facts.tank.depth_m * 0.6
}

/** Outer width of what is drawn of a tank. */
export const tankWidth = (facts: ReservoirFacts): number =>
  2 * Math.max(halfWidth(facts, 0), halfWidth(facts, facts.tank.depth_m))

interface Label {
  readonly level_m: number
  readonly text: string
  readonly pen: 'cut' | 'hidden' | 'thin'
}

function labels(facts: ReservoirFacts, cover_m: number | null, words: WaterPathWords, display: Display): Label[] {
  const { tank, afterStop, afterStart } = facts
  const level = (m: number) => shownText(quantity(m, 'm'), display)
  const line = (l: { level_m: number; volume_m3: number }) => ({
    level: level(l.level_m),
    volume: shownText(quantity(l.volume_m3, 'm3'), display),
  })
  return [
    { level_m: tank.depth_m, text: fill(words.rim, { level: level(tank.depth_m) }), pen: 'thin' as const },
    ...(isKnown(afterStop)
      ? [
          {
            level_m: afterStop.known.high_m,
            text: fill(words.afterStop, { level: level(afterStop.known.high_m) }),
            pen: 'hidden' as const,
          },
        ]
      : []),
    ...(isKnown(tank.fill)
      ? [{ level_m: tank.fill.known.level_m, text: fill(words.fill, line(tank.fill.known)), pen: 'cut' as const }]
      : []),
    ...(isKnown(tank.low)
      ? [{ level_m: tank.low.known.level_m, text: fill(words.low, line(tank.low.known)), pen: 'cut' as const }]
      : []),
    ...(isKnown(afterStart)
      ? [
          {
            level_m: afterStart.known.low_m,
            text: fill(words.afterStart, { level: level(afterStart.known.low_m) }),
            pen: 'hidden' as const,
          },
        ]
      : []),
    ...(cover_m === null
      ? []
      : [{ level_m: cover_m, text: fill(words.cover, { level: level(cover_m) }), pen: 'thin' as const }]),
  ].sort((a, b) => b.level_m - a.level_m)
}

/** Heights of the lettering, from the top down, none nearer to the next than a line. */
function apart(heights: readonly number[]): number[] {
  const out: number[] = []
  for (const y of heights) out.push(Math.min(y, (out.at(-1) ?? Number.POSITIVE_INFINITY) - LEADING_mm))
  const low = out.at(-1) ?? 0
  // Where they were pushed below the floor, all move up by what is missing.
  const lift = Math.max(0, -low - LEADING_mm)
  return out.map((y) => y + lift)
}

const WALL_mm = 0.8

/** Walls and floor of the tank, too thin to hatch. */
function shell(side: (m: number, way: 1 | -1) => Point, depth_m: number): Drawing {
  const out = (p: Point, way: 1 | -1): Point => [p[0] + way * WALL_mm, p[1]]
  const [low, high] = [side(0, 1), side(depth_m, 1)]
  return [
    contour(
      [
        side(depth_m, -1),
        side(0, -1),
        low,
        high,
        out(high, 1),
        [low[0] + WALL_mm, -WALL_mm],
        [-low[0] - WALL_mm, -WALL_mm],
        out(side(depth_m, -1), -1),
      ],
      null,
      { fill: 'solid' },
    ),
  ]
}

/** Short strokes that are close under the surface and widen and fade below, as standing water is drawn. */
function strokes(half: (m: number) => number, ratio: number, level_m: number): Drawing {
  const rows = [1.3, 2.1, 3.3, 4.9, 6.8, 9.1].filter((d) => d < level_m * ratio - 0.6)
  return rows.flatMap((d, i) => {
    const y = level_m * ratio - d
    const wide = 2 * half(y / ratio)
    return [0.06, 0.36, 0.68].map((at, k) => {
      const from = -wide / 2 + wide * ((at + ((i * 5 + k * 3) % 7) * 0.022) % 0.86)
      return line([from, y], [Math.min(wide / 2 - 0.8, from + wide * (0.12 - i * 0.012)), y], 'thin')
    })
  })
}

/** The tank cut open: its two lines, and where the water goes when the pump stops and starts. */
export function levels(given: {
  readonly facts: ReservoirFacts
  /** Depth in which the pump still draws; null where not stated. */
  readonly cover_m: number | null
  readonly words: WaterPathWords
  readonly display: Display
  /** Millimetres of paper for a metre. */
  readonly ratio: number
}): Drawing {
  const { facts, cover_m, words, display, ratio } = given
  const { tank } = facts
  const half = (m: number) => halfWidth(facts, m) * ratio
  const side = (m: number, way: 1 | -1): Point => [way * half(m), m * ratio]
  const list = labels(facts, cover_m, words, display)
  const right = half(tank.depth_m) + 8
  const at = apart(list.map((l) => l.level_m * ratio))
  const water_m = isKnown(tank.fill) ? tank.fill.known.level_m : isKnown(tank.low) ? tank.low.known.level_m : null
  return [
    ...(water_m === null
      ? []
      : [
          contour([side(0, -1), side(0, 1), side(water_m, 1), side(water_m, -1)], null, { fill: 'water' }),
          ...strokes(half, ratio, water_m),
        ]),
    ...shell(side, tank.depth_m),
    ...list.flatMap(
      (l, i): Drawing => [
        ...(l.level_m < tank.depth_m ? [line(side(l.level_m, -1), side(l.level_m, 1), l.pen)] : []),
        ...(l.pen === 'cut' ? levelMark({ at: [-half(l.level_m) * 0.6, l.level_m * ratio], text: '' }) : []),
        polyline(
          [
            [half(l.level_m) + WALL_mm, l.level_m * ratio],
            [right - 3, l.level_m * ratio],
            [right, at[i]!],
          ],
          'dimension',
        ),
        lettering([right + 1, at[i]! - 1], l.text, { size_mm: SIZE_mm, face: l.pen === 'cut' ? 'medium' : 'drafting' }),
      ],
    ),
  ]
}
