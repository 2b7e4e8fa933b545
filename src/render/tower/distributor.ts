import type { Plan } from '../../plan/plan.ts'
import type { Display } from '../display.ts'
import { dimension } from '../drawing/dimension.ts'
import { hatch } from '../drawing/hatch.ts'
import { leader } from '../drawing/marks.ts'
import { arc, circle, contour, type Drawing, line, type Point } from '../drawing/primitives.ts'
import { drillText } from '../drill.ts'
import { figureOf } from './figures.ts'
import { explained, plain, type Sketch, scaleFor, together } from './sketch.ts'
import { standingWater, waterMark } from './water.ts'

/** What is drawn of a distributor: the plan, and the water that stands in it where that is known. */
interface DistributorInput {
  readonly plan: Plan
  readonly display: Display
  readonly head_m: number | null
  readonly room_mm: number
  readonly texts: { readonly on: string }
}

/** Sizes on paper, in millimetres; null where the plan does not tell them. */
interface Sizes {
  readonly k: number
  readonly holes: number
  readonly depth_m: number
  readonly diameter_m: number
  readonly hole_m: number
  readonly circle_m: number
  /** Plate and wall; a bare line where the thickness is not told. */
  readonly plate: number
  readonly half: number
  readonly depth: number
  readonly hole: number
  readonly at: number
  readonly hose: { readonly bore: number; readonly outside: number } | null
  readonly pipe: { readonly bore: number; readonly outside: number } | null
  readonly water: number | null
}

const THINNEST_mm = 0.5
/** Height of the plate's picture from below. */
const BELOW_mm = -13

function sizesOf({ plan, head_m, room_mm }: DistributorInput): Sizes | null {
  const { distributor: d, column, riser } = plan
  const pipe = column?.pipe
  if (d?.kind === 'tee' || d?.depth_m === undefined || d.diameter_m === undefined || d.holes === undefined) return null
  const { depth_m, diameter_m, holes, hole_m, circle_m, thickness_m } = d
  if (hole_m === undefined || circle_m === undefined) return null
  const k = 1000 / scaleFor((pipe?.outside_m ?? diameter_m) * 1.35, room_mm, 1)
  const bore = riser?.bore_m === undefined ? null : (riser.bore_m / 2) * k
  return {
    ...{ k, holes, depth_m, diameter_m, hole_m, circle_m },
    plate: Math.max(THINNEST_mm, (thickness_m ?? 0) * k),
    half: (diameter_m / 2) * k,
    depth: depth_m * k,
    hole: (hole_m / 2) * k,
    at: (circle_m / 2) * k,
    hose: bore === null ? null : { bore, outside: bore + THINNEST_mm * 1.4 },
    pipe: pipe === undefined ? null : { bore: (pipe.bore_m / 2) * k, outside: (pipe.outside_m / 2) * k },
    water: head_m === null ? null : Math.min(head_m, depth_m) * k,
  }
}

function pipeWalls(inner: number, outer: number, bottom: number, top: number, part: string): Drawing {
  return [-1, 1].flatMap((side) => {
    const ring: readonly Point[] = [
      [side * inner, bottom],
      [side * outer, bottom],
      [side * outer, top],
      [side * inner, top],
    ]
    const hatched = hatch({ rings: [ring], pitch_mm: 1.1 })
    return [contour(ring, null, { fill: 'paper', part }), ...hatched, contour(ring, 'visible', { part })]
  })
}

/** Section through the middle: cup and water in the column's top, the hose through it, holes with their drops. */
function section({ plate: t, half, depth, hole, at, hose, pipe, water }: Sizes): Drawing {
  const cup: readonly Point[] = [
    [-half, depth],
    [-half, 0],
    [half, 0],
    [half, depth],
    [half - t, depth],
    [half - t, t],
    [-half + t, t],
    [-half + t, depth],
  ]
  const part = 'distributor'
  const drops = [-at, at].flatMap(
    (x): Drawing => [
      line([x - hole, -0.4], [x - hole, t + 0.4], 'visible', { part }),
      line([x + hole, -0.4], [x + hole, t + 0.4], 'visible', { part }),
      line([x, t], [x, -5], 'hidden', { part: `${part} water` }),
    ],
  )
  const stands =
    water === null
      ? []
      : [
          ...standingWater({ left: -half + t, right: half - t, bottom: t, level: t + water, part }),
          ...waterMark([-half * 0.55, t + water]),
        ]
  const inHose: readonly Point[] =
    hose === null
      ? []
      : [
          [-hose.bore, -7],
          [hose.bore, -7],
          [hose.bore, depth + 9],
          [-hose.bore, depth + 9],
        ]
  return [
    ...(pipe === null ? [] : pipeWalls(pipe.bore, pipe.outside, -7, depth - 1, 'column')),
    ...stands,
    contour(cup, 'cut', { fill: 'solid', part }),
    ...(hose === null ? [] : [contour(inHose, null, { fill: 'water' as const, part: 'riser' })]),
    ...(hose === null ? [] : pipeWalls(hose.bore, hose.outside, -7, depth + 9, 'riser')),
    ...drops,
    line([0, -9], [0, depth + 12], 'centre'),
  ]
}

/** Half of the holes, as they stand in the half of the plate that is drawn. */
function holesSeen({ holes, at }: Sizes): readonly Point[] {
  const count = Math.ceil(holes / 2)
  return Array.from({ length: count }, (_, i): Point => {
    const a = Math.PI + (Math.PI * (i + 0.5)) / count
    return [at * Math.cos(a), BELOW_mm + at * Math.sin(a)]
  })
}

function below(s: Sizes): Drawing {
  const { half, plate, at, hole, hose } = s
  const round = (radius: number, pen: 'visible' | 'thin' | 'centre', part: string) =>
    arc([0, BELOW_mm], radius, Math.PI, 2 * Math.PI, pen, { part })
  return [
    round(half, 'visible', 'distributor'),
    round(half - plate, 'thin', 'distributor'),
    round(at, 'centre', 'distributor'),
    ...(hose === null ? [] : [round(hose.outside, 'visible', 'riser')]),
    line([-half - 4, BELOW_mm], [half + 4, BELOW_mm], 'centre'),
    line([0, BELOW_mm], [0, BELOW_mm - half - 2], 'centre'),
    ...holesSeen(s).map((c) => circle(c, hole, 'visible', { fill: 'solid', part: 'distributor' })),
  ]
}

/** Dimensions, each the field that it shows; the water's height is computed. */
function measures(
  s: Sizes,
  { display, head_m, texts }: DistributorInput,
): readonly Pick<Sketch, 'marks' | 'figures'>[] {
  const { plate: t, half, depth, at, water } = s
  const f = figureOf(display)
  const across = s.pipe?.outside ?? half
  const field = (path: string) => ({ field: `distributor/${path}` })
  const up = (x: number, to: number, offset_mm: number, figure: string): Drawing =>
    dimension({ from: [x, t], to: [x, to], offset_mm, figure, along: 'up' })
  const seen = holesSeen(s)
  const told = seen[Math.floor(seen.length / 4)] ?? [0, BELOW_mm]
  const hole = leader({
    to: told,
    elbow: [-half - 2, BELOW_mm - half * 0.72],
    lines: [`${s.holes} × Ø ${drillText(s.hole_m, display)}`],
  })
  const ring = leader({
    to: [at * 0.72, BELOW_mm - at * 0.72],
    elbow: [half * 0.8, BELOW_mm - half - 1],
    lines: [`${texts.on} Ø${f(s.circle_m)}`],
  })
  const wide = dimension({
    from: [-half, depth],
    to: [half, depth],
    offset_mm: 12,
    figure: f(s.diameter_m),
    along: 'across',
  })
  return [
    explained(up(-across, depth, 6, f(s.depth_m)), field('depth')),
    explained(wide, field('diameter')),
    ...(water === null || head_m === null
      ? []
      : [explained(up(across, t + water, -6, f(head_m)), { fact: 'hydraulics/head' })]),
    explained(hole, field('hole')),
    explained(ring, field('circle')),
  ]
}

/** Section through the cup with its water, and half of its plate from below; null where its sizes are not told. */
export function distributorSketch(input: DistributorInput): Sketch | null {
  const s = sizesOf(input)
  if (s === null) return null
  const across = Math.max(s.pipe?.outside ?? 0, s.half)
  return {
    ...together([plain([...section(s), ...below(s)]), ...measures(s, input)]),
    places: {},
    box: { left: -across - 10, right: across + 9, bottom: BELOW_mm - s.half - 5, top: s.depth + 16 },
    scale: 1000 / s.k,
  }
}
