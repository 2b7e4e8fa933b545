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
import { jointSketch } from '../tower/joint.ts'
import { stubSection } from '../views/section.ts'
import { fitted } from './frame.ts'
import type { Given } from './input.ts'
import { slotOf } from './scene.ts'

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

/** A section with its parts alone: no dimension lines, arrowheads (small solids of three points) or figures. */
const undimensioned = (drawing: Drawing): Drawing =>
  drawing.filter((p) => {
    if (p.kind === 'text' || p.pen === 'dimension') return false
    return !(p.kind === 'path' && p.pen === null && p.fill === 'solid' && p.points.length === 3)
  })

/** The stub on its way into the hole, its mark at the wall. */
export function joinPicture(g: Given): Drawing {
  const t = orNull(g.facts.templates)
  if (t === null) return []
  const texts = { figure: () => '', size: () => '', angle: () => '', mark: '' }
  return fitted((ratio) => {
    const k = ratio
    const th = t.joint.stub.angle_rad
    const out = (t.joint.stub.columnRadius_m + t.stub.mouthReach_m) * 0.5 * k
    const from: Point = [out + 8 * Math.sin(th) + 6, out * Math.cos(th) + 14]
    const to: Point = [from[0] - 8 * Math.sin(th), from[1] - 8 * Math.cos(th)]
    return [
      ...undimensioned(stubSection({ plan: g.plan, templates: t, cup: null, ratio, texts })),
      line(from, to, 'cut'),
      contour(
        [
          to,
          [to[0] + 2.2 * Math.sin(th + 0.35), to[1] + 2.2 * Math.cos(th + 0.35)],
          [to[0] + 2.2 * Math.sin(th - 0.35), to[1] + 2.2 * Math.cos(th - 0.35)],
        ],
        null,
        { fill: 'solid' },
      ),
    ]
  })
}

/** The joint with the bead that is laid round it. */
export function beadPicture(g: Given): Drawing {
  const bead = slotOf(g, 'bead')
  const [t, s] = [4, 3]
  return [
    rectangle({ left: 0, right: 40, bottom: 0, top: t }, 'cut', { fill: 'wash' }),
    rectangle({ left: 18, right: 18 + s, bottom: 0, top: 30 }, 'cut', { fill: 'paper' }),
    contour(
      [
        [18 + s, t],
        [18 + s, t + 4],
        [18 + s + 1, t + 1.4],
        [18 + s + 4, t],
      ],
      null,
      { fill: 'solid' },
    ),
    contour(
      [
        [18, t],
        [18, t + 4],
        [17, t + 1.4],
        [14, t],
      ],
      null,
      { fill: 'solid' },
    ),
    ...leader({ to: [18 + s + 2, t + 1.4], elbow: [28, t + 10], lines: bead === '' ? [] : [bead], end: 'arrow' }),
  ]
}

/** The batch: nine tenths of water, one jug after the other. */
export function mixPicture(g: Given): Drawing {
  const batch = orNull(g.facts.nutrients.batch)
  const volume = batch?.volume_m3 ?? null
  const jug = (x: number): Drawing => [
    contour(
      [
        [x, 22],
        [x + 6, 22],
        [x + 6, 23.5],
        [x + 5.4, 29],
        [x + 0.6, 29],
      ],
      null,
      { fill: 'paper' },
    ),
    rectangle({ left: x + 0.4, right: x + 5.6, bottom: 22.3, top: 26 }, null, { fill: 'water' }),
    polyline(
      [
        [x, 30],
        [x, 22],
        [x + 6, 22],
        [x + 6, 30],
      ],
      'visible',
    ),
  ]
  const tank: readonly Point[] = [
    [0, 20],
    [1, 0],
    [35, 0],
    [36, 20],
  ]
  return [
    contour(
      [
        [0.1, 18],
        [1, 0],
        [35, 0],
        [35.9, 18],
      ],
      null,
      { fill: 'water' },
    ),
    polyline(tank, 'cut'),
    line([0.1, 18], [35.9, 18], 'thin'),
    ...jug(2),
    ...jug(12),
    ...jug(22),
    ...[5, 15, 25].map((x, i) => lettering([x, 31.4], String(i + 1), { size_mm: SMALL_mm, anchor: 'middle' })),
    ...dimension({ from: [36, 0], to: [36, 18], offset_mm: -6, figure: '9/10' }),
    ...(volume === null
      ? []
      : [lettering([18, 7], g.sheet.shown({ value: volume, unit: 'm3' }), { size_mm: 3, anchor: 'middle' })]),
  ]
}

/** A planted site: cup, medium and roots in the rain. */
export function plantedPicture(g: Given): Drawing {
  const templates = orNull(g.facts.templates)
  if (templates === null) return []
  const sketch = jointSketch({
    plan: g.plan,
    templates,
    display: g.display,
    texts: { mark: '' },
    room: { wide_mm: 54, high_mm: 46 },
  })
  return sketch === null ? [] : undimensioned(sketch.marks)
}
