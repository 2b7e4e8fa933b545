import { isKnown, orNull } from '../../plan/known.ts'
import { practiceLengths } from '../../tables/practice.ts'
import { angleDimension, dimension } from '../drawing/dimension.ts'
import { breakLine, centreMark, leader, upArrow } from '../drawing/marks.ts'
import {
  arc,
  circle,
  contour,
  type Drawing,
  lettering,
  line,
  type Point,
  polyline,
  rectangle,
} from '../drawing/primitives.ts'
import { moved } from '../drawing/transform.ts'
import { papers } from '../paper/size.ts'
import { levelsOf } from '../sheets/marking.ts'
import { stubSection } from '../views/section.ts'
import { holeOutline, unrolled } from '../views/unrolled.ts'
import { fitted, PICTURE } from './frame.ts'
import type { Given } from './input.ts'

const SMALL_mm = 2.8
const MOST_LINES = 12
const CLOSEST_rad = 0.2

/** The pipe's end with its wall and the lines on it; the step from line to line is drawn as an arc. */
export function endView(g: Given, withLines: boolean): Drawing {
  const layout = orNull(g.facts.layout)
  const pipe = g.plan.column?.pipe
  if (layout === null || pipe === undefined) return []
  const R = withLines ? 14 : 18
  const r = (R * pipe.bore_m) / pipe.outside_m
  const at = (turn_rad: number, radius: number): Point => [radius * Math.sin(turn_rad), radius * Math.cos(turn_rad)]
  const close = layout.lines.some((l, i) => i > 0 && l.turn_rad - layout.lines[i - 1]!.turn_rad < CLOSEST_rad)
  const lines = layout.lines.length <= MOST_LINES && !close ? layout.lines : layout.lines.slice(0, close ? 1 : 2)
  const step = layout.lines[1] === undefined ? 0 : layout.lines[1].turn_rad - layout.lines[0]!.turn_rad
  const round = `${g.sheet.size(layout.circumference_m)} ${g.sheet.unit}`
  const marks = withLines
    ? [
        ...lines.flatMap(
          (l): Drawing => [
            line(at(l.turn_rad, R - 1.6), at(l.turn_rad, R + 1.6), 'cut'),
            lettering([at(l.turn_rad, R + 4.4)[0], at(l.turn_rad, R + 4.4)[1] - 1], String(l.number), {
              size_mm: SMALL_mm,
              anchor: 'middle',
            }),
          ],
        ),
        ...(step > 0 && layout.lineSpacing_m !== null
          ? [
              arc([0, 0], R + 8, Math.PI / 2 - step, Math.PI / 2, 'dimension'),
              ...leader({
                to: at(step / 2, R + 8),
                elbow: [R * 0.85, R + 11],
                lines: [g.sheet.length(layout.lines[1]!.arc.marked_m)],
                end: 'arrow',
              }),
            ]
          : []),
      ]
    : [arc([0, 0], R + 1.3, -1.2, 5.05, 'visible')]
  return [
    circle([0, 0], R, 'cut', { fill: 'paper' }),
    circle([0, 0], r, 'visible', { fill: 'paper' }),
    ...centreMark({ centre: [0, 0], reach_mm: 3 }),
    ...marks,
    lettering([0, -1 - R * 0.4], round, { size_mm: 3, anchor: 'middle' }),
    ...upwards(R),
  ]
}

const upwards = (R: number): Drawing => [arc([0, 0], R * 0.62, -2.2, -0.94, 'dimension')]

/** The pipe lying, with its length between square cuts. */
export function lengthPicture(g: Given): Drawing {
  const pipe = g.plan.column?.pipe
  const length_m = g.plan.column?.length_m
  if (pipe === undefined || length_m === undefined) return []
  const [long, high] = [56, Math.min(16, Math.max(6, (56 * pipe.outside_m) / length_m))]
  const saw = (x: number): Drawing => [line([x, -4], [x, high + 4], 'centre')]
  return [
    rectangle({ left: 0, right: long, bottom: 0, top: high }, 'visible', { fill: 'paper' }),
    ...breakLine({ from: [long + 5, high], to: [long + 5, 0], zig_mm: 1.4 }),
    line([long, high], [long + 5, high], 'thin'),
    line([long, 0], [long + 5, 0], 'thin'),
    line([0, high / 2], [long, high / 2], 'centre'),
    ...saw(long),
    ...dimension({ from: [0, 0], to: [long, 0], offset_mm: -7, figure: g.sheet.length(length_m) }),
    lettering([0, high + 6], pipe.label, { size_mm: SMALL_mm }),
  ]
}

/** The unrolled surface with the figures of the marks beside it. */
export function marksPicture(g: Given): Drawing {
  const layout = orNull(g.facts.layout)
  if (layout === null) return []
  const templates = orNull(g.facts.templates)
  const view = (ratio: number): Drawing => {
    let told = Number.NEGATIVE_INFINITY
    const level = (marked_m: number) => (layout.datum === 'foot' ? marked_m : layout.columnLength_m - marked_m)
    const shown = levelsOf(layout)
      .map((h) => ({ text: g.sheet.figure(h.marked_m), y: level(h.marked_m) * ratio }))
      .sort((a, b) => a.y - b.y)
      .filter(({ y }) => {
        if (y - told < 3.4) return false
        told = y
        return true
      })
    const zero = level(0) * ratio
    return [
      ...moved(unrolled({ layout, templates, ratio }), [0, 0]),
      ...shown.flatMap(
        ({ text, y }): Drawing => [
          line([-1, y], [-3.5, y], 'dimension'),
          lettering([-4.5, y - 1], text, { size_mm: SMALL_mm, anchor: 'end' }),
        ],
      ),
      ...(shown.some(({ y }) => Math.abs(y - zero) < 3.4)
        ? []
        : [lettering([-4.5, zero - 1], '0', { size_mm: SMALL_mm, anchor: 'end' })]),
    ]
  }
  return fitted(view)
}

/** The stub as it is sawn: longer and shorter line, and the angle that the saw is set to. */
export function stubPicture(g: Given): Drawing {
  const t = orNull(g.facts.templates)
  if (t === null) return []
  const { heel_m, crown_m } = t.stub.lengths
  const r_m = t.joint.stub.stubRadius_m
  const k = Math.min(44 / heel_m, 34 / (2 * r_m))
  const [heel, crown, d] = [heel_m * k, crown_m * k, 2 * r_m * k]
  const end =
    t.stub.saw_rad === null
      ? curveEnd(t.stub.wrap.end, k, d)
      : ([
          [heel, 0],
          [crown, d],
        ] as const)
  return [
    contour([[0, 0], ...end, [0, d]], 'cut', { fill: 'paper' }),
    line([-3, d / 2], [heel + 4, d / 2], 'centre'),
    ...dimension({ from: [0, 0], to: [heel, 0], offset_mm: -7, figure: g.sheet.figure(heel_m) }),
    ...dimension({ from: [0, d], to: [crown, d], offset_mm: 7, figure: g.sheet.figure(crown_m) }),
    ...(t.stub.saw_rad === null || t.stub.saw_rad < 0.05
      ? []
      : [
          line([heel, 0], [heel, d * 0.8], 'thin'),
          ...angleDimension({
            centre: [heel, 0],
            radius_mm: d * 0.6,
            from_rad: Math.PI / 2,
            to_rad: Math.PI / 2 + t.stub.saw_rad,
            figure: g.sheet.angle(t.stub.saw_rad),
          }),
        ]),
  ]
}

/** Side sight of a coped end: the wrap's height against the way across. */
function curveEnd(
  end: readonly { readonly x_m: number; readonly y_m: number }[],
  k: number,
  d: number,
): readonly Point[] {
  const most = Math.max(...end.map((p) => p.x_m))
  const half = end.filter((p) => p.x_m <= most / 2)
  const points = half.map((p): Point => [p.y_m * k, (d / 2) * (1 + Math.cos((2 * Math.PI * p.x_m) / most))])
  return [...points].sort((a, b) => a[1] - b[1])
}

/** One hole on its line and height mark, with the starter hole where it is cut. */
export function holePicture(g: Given, cutting: boolean): Drawing {
  const t = orNull(g.facts.templates)
  if (t === null) return []
  const outline = holeOutline(t, 'on the pipe')
  const half_m = Math.max(...outline.map(([x]) => Math.abs(x)))
  const ys = outline.map(([, y]) => y)
  const [low_m, high_m] = [Math.min(...ys), Math.max(...ys)]
  const starter_m = practiceLengths.rows['starter-drill'].high_m ?? 0
  return fitted((k) => {
    const [half, low, high] = [half_m * k, low_m * k, high_m * k]
    return [
      contour(
        outline.map(([x, y]): Point => [x * k, y * k]),
        'cut',
        { fill: 'paper' },
      ),
      line([0, low - 6], [0, high + 6], 'centre'),
      line([-half - 6, 0], [half + 6, 0], 'centre'),
      ...(cutting ? [circle([0, 0], (starter_m / 2) * k, 'visible')] : []),
      ...dimension({ from: [-half, low], to: [half, low], offset_mm: -6, figure: g.sheet.size(2 * half_m) }),
      ...dimension({ from: [0, low], to: [0, high], offset_mm: half + 7, figure: g.sheet.size(high_m - low_m) }),
      ...moved(upArrow({ at: [0, 0], length_mm: 8, text: g.sheet.say('up') }), [half + 5, Math.max(4, high - 10)]),
    ]
  }, PICTURE)
}

/** The section through a finished joint. */
export function jointPicture(g: Given): Drawing {
  const t = orNull(g.facts.templates)
  if (t === null) return []
  const texts = { figure: g.sheet.figure, size: g.sheet.size, angle: g.sheet.angle, mark: g.sheet.say('note-mark') }
  return fitted((ratio) => stubSection({ plan: g.plan, templates: t, cup: orNull(t.cup), ratio, texts }))
}

/** A sheet with its two bars, as both are measured. */
export function barPicture(g: Given): Drawing {
  const { width_mm: W, height_mm: H } = papers[g.paper]
  const k = 0.14
  const [w, h] = [W * k, H * k]
  const bar = 100 * k
  return [
    rectangle({ left: 0, right: w, bottom: 0, top: h }, 'visible', { fill: 'paper' }),
    line([3, 5], [3 + bar, 5], 'cut'),
    line([w - 3, 9], [w - 3, 9 + bar], 'cut'),
    polyline(
      [
        [3, h - 5],
        [w - 3, h - 5],
      ],
      'thin',
    ),
    ...dimension({ from: [3, 5], to: [3 + bar, 5], offset_mm: -10, figure: `100 ${g.sheet.say('mm')}` }),
    ...dimension({ from: [w - 3, 9], to: [w - 3, 9 + bar], offset_mm: -8, figure: `100 ${g.sheet.say('mm')}` }),
  ]
}

export const hasStubs = (g: Given): boolean => isKnown(g.facts.templates)
