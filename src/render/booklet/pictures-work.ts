import { orNull } from '../../plan/known.ts'
import { practiceLengths } from '../../tables/practice.ts'
import { dimension } from '../drawing/dimension.ts'
import { leader } from '../drawing/marks.ts'
import {
  circle,
  contour,
  type Drawing,
  lettering,
  line,
  type Point,
  polyline,
  rectangle,
} from '../drawing/primitives.ts'
import { papers } from '../paper/size.ts'
import { fitted } from './frame.ts'
import type { Given } from './input.ts'

const SMALL_mm = 2.8

/** Sheets as they come from the printer, the upper one with the line that is cut. */
export function printPicture(g: Given): Drawing {
  const { width_mm: W, height_mm: H } = papers[g.paper]
  const [w, h] = [W * 0.13, H * 0.13]
  const sheetAt = (d: number): Drawing => [
    rectangle({ left: d, right: d + w, bottom: d, top: d + h }, 'visible', { fill: 'paper' }),
  ]
  return [
    ...sheetAt(5),
    ...sheetAt(2.5),
    ...sheetAt(0),
    contour(
      [
        [4, h - 8],
        [4, 15],
        [w - 6, 15],
        [w - 6, h - 8],
      ],
      'hidden',
    ),
    line([3, 6], [16, 6], 'cut'),
    line([w - 2.5, 8], [w - 2.5, 21], 'cut'),
    lettering([w + 8, h / 2], '100 %', { size_mm: 3.6 }),
  ]
}

/** The wrap round the pipe, its ends meeting at the closing line. */
export function closurePicture(g: Given): Drawing {
  const layout = orNull(g.facts.layout)
  if (layout === null) return []
  const [long, high] = [52, 15]
  const [from, to] = [15, 37]
  return [
    rectangle({ left: 0, right: long, bottom: 0, top: high }, 'visible', { fill: 'paper' }),
    rectangle({ left: from, right: to, bottom: -0.5, top: high + 0.5 }, 'visible', { fill: 'wash' }),
    line([from, high * 0.42], [to, high * 0.42], 'cut'),
    line([0, high / 2], [long, high / 2], 'centre'),
    ...leader({
      to: [to - 4, high * 0.42],
      elbow: [to + 3, -6],
      lines: [`${g.sheet.size(layout.circumference_m)} ${g.sheet.unit}`],
      end: 'arrow',
    }),
  ]
}

/** A slit with its stop holes, and where warmed and bulged the pocket that the former leaves. */
export function slitPicture(g: Given, formed: boolean): Drawing {
  const p = orNull(g.facts.pocket)
  if (p === null) return []
  const zone_m = practiceLengths.rows['heated-zone'].high_m
  const stop_m = practiceLengths.rows['slit-stop-hole'].low_m
  return fitted((k) => {
    const [half, r, zone] = [(p.slit_m / 2) * k, (stop_m / 2) * k, (zone_m / 2) * k]
    const lip: readonly Point[] = Array.from({ length: 25 }, (_, i) => {
      const x = -half + (2 * half * i) / 24
      return [x, -zone * 0.55 * Math.cos((Math.PI * x) / (2 * half))]
    })
    return [
      rectangle({ left: -half - 8, right: half + 8, bottom: -zone - 4, top: zone + 4 }, 'thin', { fill: 'paper' }),
      rectangle({ left: -half - 3, right: half + 3, bottom: -zone, top: zone }, 'hidden'),
      line([-half, 0], [half, 0], 'cut'),
      ...(formed ? [contour([[-half, 0], ...lip, [half, 0]], 'visible', { fill: 'wash' })] : []),
      circle([-half, 0], r, 'visible'),
      circle([half, 0], r, 'visible'),
      ...dimension({ from: [-half, zone + 4], to: [half, zone + 4], offset_mm: 5, figure: g.sheet.length(p.slit_m) }),
    ]
  })
}

/** Pipe, branch, pipe: pushed together to the stop, their lines in one. */
export function fittingPicture(g: Given): Drawing {
  const pipe = g.plan.column?.pipe
  if (pipe === undefined) return []
  const d = 14
  const end = (left: number): Drawing => [
    rectangle({ left, right: left + 14, bottom: 0, top: d }, 'visible', { fill: 'paper' }),
  ]
  const branch: readonly Point[] = [
    [17, -1],
    [17, d + 1],
    [22, d + 1],
    [28, d + 9],
    [34, d + 5],
    [31, d + 1],
    [39, d + 1],
    [39, -1],
  ]
  return [
    ...end(0),
    ...end(42),
    contour(branch, 'cut', { fill: 'paper' }),
    line([-2, d / 2], [58, d / 2], 'centre'),
    lettering([0, d + 3], pipe.label, { size_mm: SMALL_mm }),
  ]
}

/** The edge of a hole, broken inside and outside. */
export function edgePicture(g: Given): Drawing {
  const pipe = g.plan.column?.pipe
  if (pipe === undefined) return []
  const [t, c] = [9, 1.6]
  const wall = (x: number, side: 1 | -1): Drawing => [
    contour(
      [
        [x, 0],
        [x + side * (22 - c), 0],
        [x + side * 22, c],
        [x + side * 22, t - c],
        [x + side * (22 - c), t],
        [x, t],
      ],
      'cut',
      { fill: 'wash' },
    ),
  ]
  return [
    ...wall(0, 1),
    ...wall(56, -1),
    line([28, -4], [28, t + 4], 'centre'),
    ...dimension({ from: [0, 0], to: [0, t], offset_mm: 6, figure: g.sheet.size(pipe.wall_m) }),
    ...leader({ to: [21.2, t - 0.8], elbow: [25, t + 7], lines: [g.tell('on-broken')], end: 'arrow' }),
    line([34.8, t - 0.8], [30, t + 6], 'dimension'),
  ]
}

/** The lamp in the bore, and the light that a thin wall lets out. */
export function lightPicture(g: Given): Drawing {
  const pipe = g.plan.column?.pipe
  if (pipe === undefined) return []
  const [long, high] = [44, 15]
  const wall = Math.max(0.7, (pipe.wall_m / pipe.outside_m) * high)
  const rays = Array.from({ length: 8 }, (_, i) => {
    const a = (2 * Math.PI * i) / 8
    return line([22 + 3 * Math.cos(a), 7.5 + 3 * Math.sin(a)], [22 + 5 * Math.cos(a), 7.5 + 5 * Math.sin(a)], 'thin')
  })
  return [
    rectangle({ left: 0, right: long, bottom: 0, top: wall }, 'visible', { fill: 'solid' }),
    rectangle({ left: 0, right: long, bottom: high - wall, top: high }, 'visible', { fill: 'solid' }),
    polyline(
      [
        [-8, 11],
        [6, 11],
        [20, 8],
      ],
      'visible',
    ),
    circle([22, 7.5], 1.8, 'cut', { fill: 'paper' }),
    ...rays,
    ...[12, 18, 26, 32].map((x) => line([x, high + 1.5], [x, high + 5], 'hidden')),
    ...dimension({ from: [long, high - wall], to: [long, high], offset_mm: -6, figure: g.sheet.size(pipe.wall_m) }),
  ]
}
