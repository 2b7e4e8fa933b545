import { orNull } from '../../plan/known.ts'
import { breakLine } from '../drawing/marks.ts'
import { contour, type Drawing, line, type Point, polyline, rectangle } from '../drawing/primitives.ts'
import { slotTextOf } from '../sheets/slots.ts'
import { standingWater, waterMark } from '../tower/water.ts'
import { levels } from '../views/elevation.ts'
import { tankWidth } from '../views/levels.ts'
import type { Given } from './input.ts'

/** A tank cut open with the lower end of its column, in millimetres of paper; the floor of the tank is 0. */
export interface Scene {
  readonly drawing: Drawing
  readonly level: (level_m: number) => number
  /** Half of the tank, half of the column, rim of the tank, where the column is broken off. */
  readonly half: number
  readonly radius: number
  readonly rim: number
  readonly top: number
  readonly axis: number
}

type Runs = 'stands' | 'trickles' | 'runs'

const ROOM = { width_mm: 34, height_mm: 19 }
const ABOVE_mm = 17
const WALL_mm = 0.9
const PUMP_mm = 5

const rain = (x: number, radius: number, low: number, high: number, runs: Runs): Drawing => {
  if (runs === 'stands') return []
  const count = runs === 'runs' ? 14 : 4
  const reach = Math.max(0.6, radius - 1)
  return Array.from({ length: count }, (_, i): Drawing => {
    const at = x + reach * (((i * 0.618) % 1) * 2 - 1)
    const from = low + (high - low) * ((i * 0.377 + 0.12) % 0.9)
    return [line([at, from + 1.6], [at, from], 'thin')]
  }).flat()
}

const arrowUp = ([x, y]: Point): Drawing => [
  contour(
    [
      [x, y + 2],
      [x + 0.7, y],
      [x - 0.7, y],
    ],
    null,
    { fill: 'solid' },
  ),
]

/** Pump with its slots, the hose from it, and an arrow where it lifts. */
function lift(at: { x: number; axis: number; rim: number; top: number }, runs: Runs, outside: boolean): Drawing {
  const { x, axis, rim, top } = at
  const up = outside ? x : axis
  const hose: readonly Point[] = outside
    ? [
        [x, PUMP_mm * 0.9],
        [x, top - 1],
      ]
    : [
        [x, PUMP_mm * 0.9],
        [x, rim - 4],
        [x + 1, rim - 3],
        [axis, rim - 3],
        [axis, top - 1],
      ]
  return [
    rectangle({ left: x - PUMP_mm / 2, right: x + PUMP_mm / 2, bottom: 0.3, top: PUMP_mm * 0.9 }, 'visible', {
      fill: 'paper',
    }),
    ...[0.3, 0.5, 0.7].map((t) => line([x - PUMP_mm / 2, PUMP_mm * t], [x + PUMP_mm / 2, PUMP_mm * t], 'thin')),
    polyline(hose, outside ? 'visible' : 'hidden'),
    ...(runs === 'stands' ? [] : arrowUp([up, rim + 3])),
  ]
}

/** The lower end of the tower at one scale, from the plan's own sizes; null where the tank is not known. */
export function scene(g: Given, given: { readonly level_m: number | null; readonly runs: Runs }): Scene | null {
  const facts = orNull(g.facts.reservoir)
  const layout = orNull(g.facts.layout)
  const pipe = g.plan.column?.pipe
  if (facts === null || layout === null || pipe === undefined) return null
  const wide_m = tankWidth(facts)
  const k = Math.min(ROOM.width_mm / wide_m, ROOM.height_mm / facts.tank.depth_m)
  const [half, rim] = [(wide_m / 2) * k, facts.tank.depth_m * k]
  const radius = Math.max(1.6, (pipe.outside_m / 2) * k)
  const own = levels({ plan: g.plan, layout })
  const beside = own.lid_m === null
  const axis = beside ? half + radius + 9 : 0
  const foot = beside ? rim * 0.55 : own.foot_m > 0 ? rim : 0
  const top = rim + ABOVE_mm
  const outside = beside || g.plan.riser?.inside === 'outside the column'
  const pump = { x: beside ? 0 : -(half + radius) / 2, axis, rim, top }
  const inner = { left: axis - radius, right: axis + radius }
  const wall: readonly Point[] = [
    [-half, rim],
    [-half, 0],
    [half, 0],
    [half, rim],
  ]
  const drawing: Drawing = [
    line([-half - 5, -WALL_mm], [Math.max(half, axis + radius) + 5, -WALL_mm], 'visible'),
    ...(given.level_m === null
      ? []
      : standingWater({ left: -half, right: half, bottom: 0, level: given.level_m * k, part: 'reservoir' })),
    polyline(wall, 'cut'),
    line([-half - 1, rim], [half + 1, rim], 'cut'),
    rectangle({ ...inner, bottom: foot, top }, null, { fill: foot < rim && !beside ? 'none' : 'paper' }),
    line([inner.left, foot], [inner.left, top], 'visible'),
    line([inner.right, foot], [inner.right, top], 'visible'),
    ...(beside
      ? [
          line([inner.left, foot], [inner.right, foot], 'visible'),
          line([inner.left, foot + 2], [half - 3, rim - 1], 'visible'),
        ]
      : []),
    ...breakLine({ from: [inner.left - 1, top], to: [inner.right + 1, top], zig_mm: 1 }),
    ...rain(axis, radius, Math.max(foot, rim), top - 1, given.runs),
    ...(g.plan.pump === undefined ? [] : lift(pump, given.runs, outside)),
    ...(given.level_m === null ? [] : waterMark([-half - 2.4, given.level_m * k])),
  ]
  return { drawing, level: (m) => m * k, half, radius, rim, top, axis }
}

/** A number of the building steps as it is printed: a time, a level. */
export function slotOf(g: Given, name: string): string {
  const build = orNull(g.facts.build)
  return build === null ? '' : (slotTextOf(g.sheet, build.slots)[name] ?? '')
}
