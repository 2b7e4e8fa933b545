import type { CupFacts, TemplatesFacts } from '../../disciplines/templates/index.ts'
import type { Plan } from '../../plan/plan.ts'
import { angleDimension, dimension, FIGURE_SIZE_mm } from '../drawing/dimension.ts'
import { hatch } from '../drawing/hatch.ts'
import { lettersWidth } from '../drawing/letters.ts'
import { breakLine, leader } from '../drawing/marks.ts'
import { contour, type Drawing, line, type Point, polyline } from '../drawing/primitives.ts'

/** Texts of the section, ready to stand on it. */
export interface SectionTexts {
  readonly figure: (length_m: number) => string
  /** Diameters and walls, where they are written otherwise than lengths. */
  readonly size?: (length_m: number) => string
  readonly angle: (angle_rad: number) => string
  readonly mark: string
}

interface SectionInput {
  readonly plan: Plan
  readonly templates: TemplatesFacts
  readonly cup: CupFacts | null
  /** Millimetres of paper for a metre of tower. */
  readonly ratio: number
  readonly texts: SectionTexts
  /** How far from the column's axis something else is drawn, which the figure of the angle must not cover. */
  readonly clear_mm?: number
}

/** Points of the plane of a stub: out from the column's axis and up from the crossing of the axes, in metres. */
const stubPoint = (angle_rad: number, s: number, u: number): Point => [
  s * Math.sin(angle_rad) - u * Math.cos(angle_rad),
  s * Math.cos(angle_rad) + u * Math.sin(angle_rad),
]

/** Where the stub's inner end stands, out from the column's axis, on its upper and lower lines. */
function endReach(t: TemplatesFacts): number {
  const { end, stub } = t.joint
  if (end.kind === 'mitre') return end.depth_m
  return end.kind === 'saddle' ? stub.columnRadius_m : stub.columnRadius_m - stub.columnWall_m
}

/** Heights of the hole's edges in the wall at the distance `rho` from the axis. */
function edges(t: TemplatesFacts, rho: number): readonly [low: number, high: number] {
  const { hole, cut } = t.joint
  if (cut === 'square') return [t.holeSquare.extent.bottom_m, t.holeSquare.extent.top_m]
  const { angle_rad: th, holeRadius_m: q } = hole
  return [(rho * Math.cos(th) - q) / Math.sin(th), (rho * Math.cos(th) + q) / Math.sin(th)]
}

interface Frame {
  readonly low: number
  readonly high: number
}

/** How far the wall is shown below the hole and above it. */
function frameOf(t: TemplatesFacts): Frame {
  const { stub } = t.joint
  const R = stub.columnRadius_m
  const [low] = edges(t, R)
  const [, high] = edges(t, R)
  const mouthTop = stubPoint(stub.angle_rad, t.joint.axisLength_m, stub.stubRadius_m)[1]
  const air = 0.35 * R
  return { low: Math.min(low - air - 0.2 * R, -0.15 * R), high: Math.max(high + air, mouthTop + 0.05 * R) }
}

function walls(t: TemplatesFacts, k: number, { low, high }: Frame): Drawing {
  const { columnRadius_m: R, columnWall_m: T } = t.joint.stub
  const Ri = R - T
  const put = (points: readonly Point[]): Point[] => points.map(([x, y]) => [x * k, y * k])
  const [lowOut, highOut] = edges(t, R)
  const [lowIn, highIn] = edges(t, Ri)
  const lower = put([
    [Ri, low],
    [R, low],
    [R, lowOut],
    [Ri, lowIn],
  ])
  const upper = put([
    [Ri, highIn],
    [R, highOut],
    [R, high],
    [Ri, high],
  ])
  const left = put([
    [-R, low],
    [-Ri, low],
    [-Ri, high],
    [-R, high],
  ])
  const sides = (ring: readonly Point[], open: readonly [number, number][]): Drawing =>
    open.map(([a, b]) => line(ring[a]!, ring[b]!, 'cut'))
  // Each piece of wall is open where the picture breaks off.
  return [
    ...[lower, upper, left].flatMap((ring) => hatch({ rings: [ring], pitch_mm: 1.2 })),
    ...sides(lower, [
      [1, 2],
      [2, 3],
      [3, 0],
    ]),
    ...sides(upper, [
      [3, 0],
      [0, 1],
      [1, 2],
    ]),
    ...sides(left, [
      [1, 2],
      [3, 0],
    ]),
    // The far edge of the hole, seen through the bore.
    line([Ri * k, lowIn * k], [Ri * k, highIn * k], 'thin'),
    ...breakLine({ from: [(-R - 0.004) * k, low * k], to: [(R + 0.004) * k, low * k], zig_mm: 1.6 }),
    ...breakLine({ from: [(-R - 0.004) * k, high * k], to: [(R + 0.004) * k, high * k], zig_mm: 1.6 }),
    line([0, (low - 0.008) * k], [0, (high + 0.008) * k], 'centre'),
  ]
}

function stubWalls(t: TemplatesFacts, k: number): Drawing {
  const { stub, axisLength_m: L, mouthTilt_rad } = t.joint
  const { angle_rad: th, stubRadius_m: r, stubWall_m } = stub
  const x = endReach(t)
  const start = (u: number) => (x + u * Math.cos(th)) / Math.sin(th)
  const mouth = (u: number) => L - u * Math.tan(mouthTilt_rad)
  const wall = (a: number, b: number): Point[] =>
    [
      stubPoint(th, start(a), a),
      stubPoint(th, mouth(a), a),
      stubPoint(th, mouth(b), b),
      stubPoint(th, start(b), b),
    ].map(([px, py]): Point => [px * k, py * k])
  const ri = r - stubWall_m
  const [upper, lower] = [wall(ri, r), wall(-r, -ri)]
  const line2 = (a: Point, b: Point) => line(a, b, 'visible')
  return [
    ...[upper, lower].flatMap((ring) => [
      contour(ring, null, { fill: 'paper' }),
      ...hatch({ rings: [ring], pitch_mm: 1.2, angle_rad: -Math.PI / 4 }),
      contour(ring, 'cut'),
    ]),
    line2(upper[1]!, lower[2]!),
    line2(upper[0]!, lower[3]!),
    line([0, 0], [stubPoint(th, L + 0.02, 0)[0] * k, stubPoint(th, L + 0.02, 0)[1] * k], 'centre'),
  ]
}

/** The grower's cup where it sits. */
function cupOutline(plan: Plan, t: TemplatesFacts, k: number): Drawing {
  const c = plan.column?.cup
  const { rim_m, body_m, foot_m, depth_m } = c ?? {}
  if (rim_m === undefined || body_m === undefined || foot_m === undefined || depth_m === undefined) return []
  const { stub, axisLength_m: L } = t.joint
  const at = (s: number, u: number): Point => {
    const [x, y] = stubPoint(stub.angle_rad, s, u)
    return [x * k, y * k]
  }
  const body = Math.min(body_m / 2, stub.stubRadius_m - stub.stubWall_m)
  const foot = Math.min(foot_m / 2, body)
  return [
    polyline([at(L, body), at(L - depth_m, foot), at(L - depth_m, -foot), at(L, -body)], 'hidden', { part: 'cup' }),
    polyline([at(L + 0.002, rim_m / 2), at(L + 0.002, -rim_m / 2)], 'visible', { part: 'cup' }),
  ]
}

const ARC_mm = 15
/** From the arc out to the middle of the figure of its angle, and half of the figure's width. */
const ANGLE_FIGURE_mm = { out: 4, half: 3.6 }

/** Radius of the arc of the stub's angle: so large that its figure stands clear of what runs up the axis. */
function arcRadius(R_mm: number, angle_rad: number, clear_mm: number): number {
  const usual = Math.min(ARC_mm, 0.42 * R_mm)
  const clear = (clear_mm + ANGLE_FIGURE_mm.half) / Math.sin(angle_rad / 2) - ANGLE_FIGURE_mm.out
  return clear_mm === 0 ? usual : Math.max(usual, Math.min(clear, 0.8 * R_mm))
}

const ELBOW_mm = { usual: 5, least: 1.5, air: 4.5 }

/** Where the leader of the mark bends: its word stands to the left of it, clear of what runs up the axis. */
function markElbow(bore_mm: number, word: string, clear_mm: number): number {
  const wide = lettersWidth({ text: word, face: 'drafting', size_mm: FIGURE_SIZE_mm })
  const clear = clear_mm === 0 ? 0 : clear_mm + wide + ELBOW_mm.air
  return Math.max(bore_mm - ELBOW_mm.usual, Math.min(clear, bore_mm - ELBOW_mm.least))
}

function dimensions({ templates: t, ratio: k, texts, clear_mm = 0 }: SectionInput, { low, high }: Frame): Drawing {
  const { stub, axisLength_m: L, markRise_m } = t.joint
  const size = texts.size ?? texts.figure
  const { angle_rad: th, stubRadius_m: r, columnRadius_m: R, columnWall_m: T } = stub
  const at = (s: number, u: number): Point => {
    const [x, y] = stubPoint(th, s, u)
    return [x * k, y * k]
  }
  const root = (R - r * Math.cos(th)) / Math.sin(th)
  const mouth = (u: number) => L - u * Math.tan(t.joint.mouthTilt_rad)
  const lipRise = t.stub.lip_m
  const [lowOut] = edges(t, R)
  const lip = at(mouth(-(r - stub.stubWall_m)), -(r - stub.stubWall_m))
  const mark: Point = [R * k, markRise_m * k]
  return [
    ...dimension({ from: at(root, -r), to: at(mouth(-r), -r), offset_mm: -9, figure: texts.figure(mouth(-r) - root) }),
    ...dimension({ from: at(mouth(r), r), to: at(mouth(-r), -r), offset_mm: 8, figure: `Ø${size(2 * r)}` }),
    ...dimension({
      from: [-R * k, low * k],
      to: [R * k, low * k],
      offset_mm: -7,
      figure: `Ø${size(2 * R)}`,
      along: 'across',
    }),
    ...dimension({
      from: [(-R + T) * k, (high - 0.3 * R) * k],
      to: [-R * k, (high - 0.3 * R) * k],
      offset_mm: 0,
      figure: size(T),
      along: 'across',
    }),
    ...angleDimension({
      centre: [0, 0],
      radius_mm: arcRadius(R * k, th, clear_mm),
      from_rad: Math.PI / 2 - th,
      to_rad: Math.PI / 2,
      figure: texts.angle(th),
    }),
    ...dimension({
      from: [R * k, lowOut * k],
      to: lip,
      offset_mm: -(Math.max(lip[0], at(mouth(-r), -r)[0]) - R * k + 13),
      figure: texts.figure(lipRise - lowOut),
      along: 'up',
    }),
    ...leader({
      to: mark,
      elbow: [markElbow((R - T) * k, texts.mark, clear_mm), mark[1] + 0.62 * R * k],
      lines: [texts.mark],
      end: 'dot',
    }),
  ]
}

/** A section through the middle of a stub, in paper millimetres, about the crossing of the axes. */
export function stubSection(input: SectionInput): Drawing {
  const { plan, templates, ratio } = input
  const frame = frameOf(templates)
  return [
    ...walls(templates, ratio, frame),
    ...stubWalls(templates, ratio),
    ...cupOutline(plan, templates, ratio),
    ...dimensions(input, frame),
  ]
}
