import { orNull } from '../../plan/known.ts'
import { dimension } from '../drawing/dimension.ts'
import { leader } from '../drawing/marks.ts'
import { contour, type Drawing, lettering, line, type Point, polyline, rectangle } from '../drawing/primitives.ts'
import { jointSketch } from '../tower/joint.ts'
import { stubSection } from '../views/section.ts'
import { fitted } from './frame.ts'
import type { Given } from './input.ts'
import { slotOf } from './scene.ts'

const SMALL_mm = 2.8

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
