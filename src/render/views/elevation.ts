import type { LayoutFacts } from '../../disciplines/layout/index.ts'
import type { TemplatesFacts } from '../../disciplines/templates/index.ts'
import type { Plan } from '../../plan/plan.ts'
import { hatch } from '../drawing/hatch.ts'
import { contour, type Drawing, line, type Point, type Primitive, polyline, rectangle } from '../drawing/primitives.ts'
import { tubeSight } from './tube.ts'

/**
 * A view in paper millimetres: real lengths times `ratio`, lettering and weights as they are. Origin: the floor,
 * under the middle of the column.
 */
export interface ElevationInput {
  readonly plan: Plan
  readonly layout: LayoutFacts
  readonly templates: TemplatesFacts | null
  /** Millimetres of paper for a metre of tower. */
  readonly ratio: number
}

export interface Elevation {
  readonly drawing: Drawing
  /** Foot, top and lid of the column above the floor, in metres. */
  readonly foot_m: number
  readonly top_m: number
  readonly lid_m: number | null
  /** How far the drawing reaches to each side, in metres. */
  readonly half_m: number
  readonly radius_m: number
}

const kindOf = (plan: Plan) => plan.column?.base?.kind ?? 'own foot'

/** Levels of the column's ends and of the lid above the floor. */
export function levels({ plan, layout }: { plan: Plan; layout: LayoutFacts }) {
  const lid_m = plan.reservoir?.lidHeight_m ?? plan.reservoir?.container?.depth_m ?? null
  const kind = kindOf(plan)
  const foot_m = kind === 'flange on the lid' ? (lid_m ?? 0) : 0
  return { foot_m, top_m: foot_m + layout.columnLength_m, lid_m: kind === 'own foot' ? null : lid_m }
}

/** The tank under or round the column's foot, with its lid and lines. */
function tank({ plan, ratio }: ElevationInput, lid_m: number): Drawing {
  const r = plan.reservoir
  const c = r?.container
  const outside_m = r?.outsideWidth_m ?? r?.outsideLength_m ?? c?.topWidth_m
  if (outside_m === undefined) return []
  const half = (outside_m / 2) * ratio
  const top = lid_m * ratio
  // A tank that is let into the ground is seen down to its floor.
  const floor_m = lid_m - (c?.depth_m ?? lid_m)
  const sheet = Math.max(0.5, (r?.lidThickness_m ?? 0) * ratio)
  const levelled = (level_m: number | undefined): Drawing =>
    level_m === undefined ? [] : [line([-half, level_m * ratio], [half, level_m * ratio], 'thin')]
  return [
    rectangle({ left: -half, right: half, bottom: Math.min(0, floor_m * ratio), top: top - sheet }, 'visible', {
      part: 'reservoir',
      fill: 'paper',
    }),
    ...levelled(r?.fillLine_m),
    ...levelled(r?.lowLine_m),
  ]
}

const lid = ({ plan, ratio }: ElevationInput, lid_m: number): Drawing => {
  const r = plan.reservoir
  const outside_m = r?.outsideWidth_m ?? r?.outsideLength_m ?? r?.container?.topWidth_m
  if (outside_m === undefined) return []
  const half = (outside_m / 2) * ratio + 1
  const sheet = Math.max(0.5, (r?.lidThickness_m ?? 0) * ratio)
  const area = { left: -half, right: half, bottom: lid_m * ratio - sheet, top: lid_m * ratio }
  return [rectangle(area, 'visible', { fill: 'paper', part: 'reservoir' })]
}

const ground = (half: number): Drawing => {
  const strip: readonly Point[] = [
    [-half, 0],
    [half, 0],
    [half, -1.6],
    [-half, -1.6],
  ]
  return [...hatch({ rings: [strip], pitch_mm: 1.1 }), line([-half, 0], [half, 0], 'cut')]
}

function stubs(input: ElevationInput, foot_m: number, side: 'back' | 'front'): Drawing {
  const { layout, templates: t, ratio } = input
  if (t === null) return []
  const { stub, axisLength_m, markRise_m, mouthTilt_rad } = t.joint
  const seen = layout.sites.map((site) => ({
    site,
    sight: tubeSight({ stub, axisLength_m, markRise_m, mouthTilt_rad, aside_rad: site.turn_rad }),
  }))
  const chosen = seen
    .filter(({ sight }) => (side === 'front' ? sight.front >= -1e-6 : sight.front < -1e-6))
    .sort((a, b) => a.sight.front - b.sight.front || a.site.mark_m - b.site.mark_m)
  return chosen.flatMap(({ site, sight }): Primitive[] => {
    const put = (points: readonly Point[]): Point[] =>
      points.map(([x, y]) => [x * ratio, (foot_m + site.mark_m + y) * ratio])
    const part = { part: `site-${site.number}` }
    return [
      contour(put(sight.outline), 'visible', { fill: 'paper', ...part }),
      ...(sight.mouth.length > 0 ? [contour(put(sight.mouth), 'visible', { fill: 'paper', ...part })] : []),
      ...(sight.bore.length > 0 ? [contour(put(sight.bore), 'thin', part)] : []),
    ]
  })
}

/** The holes of a column whose stubs are not known: a small cross at each mark in front. */
function crosses({ layout, templates, ratio }: ElevationInput, foot_m: number, radius_m: number): Drawing {
  if (templates !== null) return []
  return layout.sites
    .filter((s) => Math.cos(s.turn_rad) >= 0)
    .flatMap((s): Primitive[] => {
      const [x, y] = [Math.sin(s.turn_rad) * radius_m * ratio, (foot_m + s.mark_m) * ratio]
      return [line([x - 1, y], [x + 1, y], 'visible'), line([x, y - 1], [x, y + 1], 'visible')]
    })
}

function column(input: ElevationInput, foot_m: number, top_m: number, radius_m: number, lid_m: number | null): Drawing {
  const { plan, ratio } = input
  const r = radius_m * ratio
  const [foot, top] = [foot_m * ratio, top_m * ratio]
  const through = lid_m !== null && lid_m > foot_m ? lid_m * ratio : foot
  const cap = plan.column?.cap === undefined || plan.column.cap === 'none' ? 0 : 1.6
  const shank: Drawing = [
    rectangle({ left: -r, right: r, bottom: through, top }, 'visible', { fill: 'paper', part: 'column' }),
  ]
  const hidden: Drawing =
    through > foot
      ? [
          polyline(
            [
              [-r, through],
              [-r, foot],
              [r, foot],
              [r, through],
            ],
            'hidden',
            { part: 'column' },
          ),
        ]
      : []
  const capped: Drawing =
    cap > 0
      ? [
          rectangle({ left: -r - 0.7, right: r + 0.7, bottom: top - 1.2, top: top + cap - 0.8 }, 'visible', {
            fill: 'paper',
          }),
        ]
      : []
  return [...hidden, ...shank, ...capped]
}

/** The tower from the side of line 1: tank, column, stubs; levels and reach for the dimensions beside it. */
export function elevation(input: ElevationInput): Elevation {
  const { plan, layout, templates, ratio } = input
  const radius_m = layout.circumference_m / Math.PI / 2
  const { foot_m, top_m, lid_m } = levels(input)
  const reach_m = templates === null ? radius_m : templates.stub.mouthReach_m + templates.joint.stub.stubRadius_m
  const r = plan.reservoir
  const own = kindOf(plan) === 'own foot'
  const foot_half_m = (plan.column?.base?.footWidth_m ?? 3 * radius_m) / 2
  const tank_m = own ? foot_half_m : (r?.outsideWidth_m ?? r?.outsideLength_m ?? r?.container?.topWidth_m ?? 0) / 2
  const half_m = Math.max(reach_m, tank_m)
  const half = half_m * ratio + 4
  const standing: Drawing = own
    ? [
        rectangle({ left: -foot_half_m * ratio, right: foot_half_m * ratio, bottom: 0, top: 0.9 }, 'visible', {
          fill: 'solid',
          part: 'base',
        }),
      ]
    : []
  const drawing: Drawing = [
    ...ground(half),
    ...(lid_m === null ? [] : tank(input, lid_m)),
    ...standing,
    ...stubs(input, foot_m, 'back'),
    ...column(input, foot_m, top_m, radius_m, lid_m),
    ...(lid_m === null ? [] : lid(input, lid_m)),
    ...(lid_m === null || lid_m <= foot_m ? [] : []),
    ...stubs(input, foot_m, 'front'),
    ...crosses(input, foot_m, radius_m),
    line([0, (foot_m - 0.02) * ratio], [0, top_m * ratio + 5], 'centre'),
  ]
  return { drawing, foot_m, top_m, lid_m, half_m, radius_m }
}
