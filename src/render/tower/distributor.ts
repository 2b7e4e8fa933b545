import type { Plan } from '../../plan/plan.ts'
import type { Display } from '../display.ts'
import { dimension } from '../drawing/dimension.ts'
import { hatch } from '../drawing/hatch.ts'
import { leader } from '../drawing/marks.ts'
import { arc, circle, contour, type Drawing, line, type Point } from '../drawing/primitives.ts'
import { explained, plain, type Sketch, scaleFor, together } from './sketch.ts'
import { figureOf } from './tower.ts'
import { standingWater, waterMark } from './water.ts'

/** What is drawn of a distributor: the plan, and the water that stands in it where that is known. */
interface DistributorInput {
  readonly plan: Plan
  readonly display: Display
  readonly head_m: number | null
  readonly room_mm: number
  readonly texts: { readonly on: string }
}

const wall = (points: readonly Point[]): Drawing => [contour(points, 'cut', { fill: 'solid', part: 'distributor' })]

function pipeWall(side: number, inner: number, outer: number, bottom: number, top: number, part: string): Drawing {
  const ring: readonly Point[] = [
    [side * inner, bottom],
    [side * outer, bottom],
    [side * outer, top],
    [side * inner, top],
  ]
  return [
    contour(ring, null, { fill: 'paper', part }),
    ...hatch({ rings: [ring], pitch_mm: 1.1 }),
    contour(ring, 'visible', { part }),
  ]
}

/** Section through the cup with its water, and half of its plate from below. */
export function distributorSketch({ plan, display, head_m, room_mm, texts }: DistributorInput): Sketch | null {
  const d = plan.distributor
  const pipe = plan.column?.pipe
  if (d?.kind === 'tee' || d?.depth_m === undefined || d.diameter_m === undefined || d.holes === undefined) return null
  if (d.hole_m === undefined || d.circle_m === undefined) return null
  const scale = scaleFor((pipe?.outside_m ?? d.diameter_m) * 1.35, room_mm, 1)
  const k = 1000 / scale
  const t = (d.thickness_m ?? 0.0025) * k
  const half = (d.diameter_m / 2) * k
  const depth = d.depth_m * k
  const f = figureOf(display)
  const riser = ((plan.riser?.bore_m ?? 0.013) / 2) * k
  const hose = riser + Math.max(0.6, 0.0015 * k)
  const plate: Point[] = [
    [-half, depth],
    [-half, 0],
    [half, 0],
    [half, depth],
    [half - t, depth],
    [half - t, t],
    [-half + t, t],
    [-half + t, depth],
  ]
  const hole = (d.hole_m / 2) * k
  const at = (d.circle_m / 2) * k
  const jets = [-at, at].flatMap(
    (x): Drawing => [
      line([x - hole, -0.4], [x - hole, t + 0.4], 'visible', { part: 'distributor' }),
      line([x + hole, -0.4], [x + hole, t + 0.4], 'visible', { part: 'distributor' }),
      line([x, t], [x, -5], 'hidden', { part: 'distributor water' }),
    ],
  )
  const water =
    head_m === null
      ? []
      : [
          ...standingWater({
            left: -half + t,
            right: half - t,
            bottom: t,
            level: t + Math.min(head_m, d.depth_m) * k,
            part: 'distributor',
          }),
          ...waterMark([-half * 0.55, t + Math.min(head_m, d.depth_m) * k]),
        ]
  const column =
    pipe === undefined
      ? []
      : [-1, 1].flatMap((s) => pipeWall(s, (pipe.bore_m / 2) * k, (pipe.outside_m / 2) * k, -7, depth - 1, 'column'))
  const hoseMarks = [-1, 1].flatMap((s) => pipeWall(s, riser, hose, -7, depth + 9, 'riser'))
  const section = [
    ...column,
    ...water,
    ...wall(plate),
    contour(
      [
        [-hose, -7],
        [hose, -7],
        [hose, depth + 9],
        [-hose, depth + 9],
      ],
      null,
      { fill: 'water', part: 'riser' },
    ),
    ...hoseMarks,
    ...jets,
    line([0, -9], [0, depth + 12], 'centre'),
  ]
  const y = -13
  const seen = Array.from({ length: Math.ceil(d.holes / 2) }, (_, i): Point => {
    const a = Math.PI + (Math.PI * (i + 0.5)) / Math.ceil(d.holes! / 2)
    return [at * Math.cos(a), y + at * Math.sin(a)]
  })
  const below = [
    arc([0, y], half, Math.PI, 2 * Math.PI, 'visible', { part: 'distributor' }),
    arc([0, y], half - t, Math.PI, 2 * Math.PI, 'thin', { part: 'distributor' }),
    arc([0, y], at, Math.PI, 2 * Math.PI, 'centre', { part: 'distributor' }),
    arc([0, y], hose, Math.PI, 2 * Math.PI, 'visible', { part: 'riser' }),
    line([-half - 4, y], [half + 4, y], 'centre'),
    line([0, y], [0, y - half - 2], 'centre'),
    ...seen.map((c) => circle(c, hole, 'visible', { fill: 'solid', part: 'distributor' })),
  ]
  const told = seen[Math.floor(seen.length / 4)] ?? [0, y]
  const field = (path: string) => ({ field: `distributor/${path}` })
  const across = (pipe?.outside_m ?? d.diameter_m) * 0.5 * k
  const pieces = together([
    plain([...section, ...below]),
    explained(
      dimension({ from: [-across, t], to: [-across, depth], offset_mm: 6, figure: f(d.depth_m), along: 'up' }),
      field('depth'),
    ),
    explained(
      dimension({ from: [-half, depth], to: [half, depth], offset_mm: 12, figure: f(d.diameter_m), along: 'across' }),
      field('diameter'),
    ),
    ...(head_m === null
      ? []
      : [
          explained(
            dimension({
              from: [across, t],
              to: [across, t + Math.min(head_m, d.depth_m) * k],
              offset_mm: -6,
              figure: f(head_m),
              along: 'up',
            }),
            { fact: 'drawing' },
          ),
        ]),
    explained(
      leader({ to: told, elbow: [-half - 2, y - half * 0.72], lines: [`${d.holes} × Ø${f(d.hole_m)}`] }),
      field('hole'),
    ),
    explained(
      leader({
        to: [at * 0.72, y - at * 0.72],
        elbow: [half * 0.8, y - half - 1],
        lines: [`${texts.on} Ø${f(d.circle_m)}`],
      }),
      field('circle'),
    ),
  ])
  return {
    ...pieces,
    places: { distributor: [0, t] },
    box: {
      left: -Math.max(across, half) - 10,
      right: Math.max(across, half) + 9,
      bottom: y - half - 5,
      top: depth + 16,
    },
    scale,
  }
}
