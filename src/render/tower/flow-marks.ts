import type { HydraulicsFacts } from '../../disciplines/hydraulics/index.ts'
import type { LayoutFacts } from '../../disciplines/layout/index.ts'
import type { ReservoirFacts } from '../../disciplines/reservoir/index.ts'
import { type Known, orNull } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import type { Display } from '../display.ts'
import { contour, type Drawing, line, type Point, polyline, rectangle } from '../drawing/primitives.ts'
import { levels } from '../views/elevation.ts'
import type { FlowWords } from '../words/en/flow.ts'

/** What the view of the flow is drawn from. */
export interface FlowInput {
  readonly plan: Plan
  readonly layout: LayoutFacts
  readonly hydraulics: HydraulicsFacts
  readonly reservoir: Known<ReservoirFacts>
  readonly words: FlowWords
  readonly display: Display
  /** One to how many. */
  readonly scale: number
}

/** Heights and half widths in millimetres of paper. */
export interface Frame {
  readonly k: number
  readonly foot: number
  readonly top: number
  readonly half: number
  readonly bore: number
  readonly tank: { readonly half: number; readonly floor: number; readonly rim: number }
  readonly outlet: number
  readonly riserX: number
  readonly labelX: number
}

/** Film and falling water are far thinner than a line at this scale: they are drawn as signs, not to scale. */
export const FILM_mm = 0.7

/** Sizes of the view. */
export function frameOf({ plan, layout, scale, reservoir }: FlowInput): Frame {
  const k = 1000 / scale
  const { foot_m, top_m } = levels({ plan, layout })
  const pipe = plan.column?.pipe
  const half = ((pipe?.outside_m ?? 0.1) / 2) * k
  const bore = ((pipe?.bore_m ?? 0.094) / 2) * k
  const facts = orNull(reservoir)
  const wide_m = plan.reservoir?.container?.topWidth_m ?? plan.reservoir?.outsideWidth_m ?? 3 * (pipe?.outside_m ?? 0.1)
  const floor = (facts?.tank.floor_m ?? 0) * k
  const depth = (facts?.tank.depth_m ?? plan.reservoir?.container?.depth_m ?? 0.25) * k
  const tankHalf = Math.max((wide_m / 2) * k, half + 9)
  const inside = plan.riser?.inside === 'inside the column'
  return {
    ...{ k, foot: foot_m * k, top: top_m * k, half, bore },
    tank: { half: tankHalf, floor: Math.max(0, floor), rim: Math.max(0, floor) + depth },
    outlet: (plan.riser?.outletHeight_m ?? top_m) * k,
    riserX: inside ? 0 : -half - 5,
    labelX: tankHalf + 5,
  }
}

/** A small closed arrow along the water's way. */
const arrow = ([x, y]: Point, up: boolean, part: string): Drawing => {
  const s = up ? 1 : -1
  return [
    contour(
      [
        [x, y + 1.3 * s],
        [x + 0.8, y - 0.9 * s],
        [x - 0.8, y - 0.9 * s],
      ],
      null,
      { fill: 'solid', part },
    ),
  ]
}

/** Pressed water: a full line from the pump to the outlet. */
export function riser(f: Frame): Drawing {
  const pumpX = -(f.tank.half + f.half) / 2
  const way: Point[] = [
    [pumpX, f.tank.floor + 3],
    [pumpX, f.tank.floor + 6],
    [f.riserX, f.tank.floor + 6],
    [f.riserX, f.outlet],
    ...(f.riserX === 0
      ? []
      : ([
          [f.riserX, f.outlet + 3],
          [0, f.outlet + 3],
          [0, f.top - 1],
        ] as const)),
  ]
  const middle = (f.tank.rim + f.outlet) / 2
  return [
    polyline(way, 'cut', { part: 'riser water' }),
    ...arrow([f.riserX, middle], true, 'riser water'),
    ...arrow([f.riserX, middle + (f.outlet - middle) * 0.6], true, 'riser water'),
    rectangle({ left: pumpX - 2.6, right: pumpX + 2.6, bottom: f.tank.floor, top: f.tank.floor + 3.4 }, 'visible', {
      fill: 'paper',
      part: 'pump',
    }),
  ]
}

/** Walls of the column, film on them, and what rains between. */
export function column(f: Frame): Drawing {
  const wall = (s: 1 | -1): Drawing => [
    rectangle(
      { left: Math.min(s * f.bore, s * f.half), right: Math.max(s * f.bore, s * f.half), bottom: f.foot, top: f.top },
      'visible',
      { part: 'column', fill: 'paper' },
    ),
    rectangle(
      {
        left: Math.min(s * f.bore, s * (f.bore - FILM_mm)),
        right: Math.max(s * f.bore, s * (f.bore - FILM_mm)),
        bottom: f.foot + 1,
        top: f.top - 4,
      },
      null,
      { fill: 'water', part: 'column' },
    ),
    line([s * (f.bore - FILM_mm), f.foot + 1], [s * (f.bore - FILM_mm), f.top - 4], 'thin', { part: 'column water' }),
  ]
  const room = f.bore - FILM_mm - 0.6
  const count = Math.max(6, Math.round((f.top - f.foot) / 2.6))
  const rain = Array.from({ length: count }, (_, i): Drawing => {
    const share = (i + 0.5) / count
    const x = (((i * 0.618) % 1) * 2 - 1) * room
    const y = f.top - 5 - share * (f.top - f.foot - 8)
    // Water that has fallen further is faster: its stroke is longer.
    return Math.abs(x - f.riserX) < 0.8
      ? []
      : [line([x, y], [x, y - 0.6 - 1.6 * Math.sqrt(share)], 'thin', { part: 'column water' })]
  })
  const down = [0.3, 0.7].flatMap((share) =>
    arrow([f.half - (f.half - f.bore) / 2, f.top - share * (f.top - f.foot)], false, 'column water'),
  )
  return [...wall(1), ...wall(-1), ...rain.flat(), ...down]
}

/** What spreads the water, with as much standing over its holes as there is at the middle of the band. */
export function spreader(input: FlowInput, f: Frame): Drawing {
  const facts = orNull(input.hydraulics.distributor)
  const d = input.plan.distributor
  if (facts === null || d?.depth_m === undefined) return []
  const half = Math.min(f.bore - 0.3, ((d.diameter_m ?? 0) / 2) * f.k || f.bore - 0.3)
  const depth = d.depth_m * f.k
  const floor = f.top - depth
  const head = Math.min(depth, ((facts.head_m.low + facts.head_m.high) / 2) * f.k)
  return [
    rectangle({ left: -half, right: half, bottom: floor, top: floor + head }, null, {
      fill: 'water',
      part: 'distributor',
    }),
    line([-half, floor + head], [half, floor + head], 'thin', { part: 'distributor water' }),
    polyline(
      [
        [-half, f.top],
        [-half, floor],
        [half, floor],
        [half, f.top],
      ],
      'cut',
      { part: 'distributor' },
    ),
  ]
}
