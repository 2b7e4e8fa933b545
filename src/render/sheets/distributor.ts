import { isKnown, needed } from '../../plan/known.ts'
import { bounds } from '../drawing/bounds.ts'
import { dimension, roundDimension } from '../drawing/dimension.ts'
import { leader, note } from '../drawing/marks.ts'
import { circle, type Drawing, line, rectangle } from '../drawing/primitives.ts'
import { moved } from '../drawing/transform.ts'
import { polar } from '../drawing/vector.ts'
import { drillText } from '../drill.ts'
import { spread } from './compose.ts'
import type { Context, Drafted } from './context.ts'
import { barLines, paperStretchOf } from './hole.ts'

const cross = (reach: number): Drawing => [line([-reach, 0], [reach, 0], 'thin'), line([0, -reach], [0, reach], 'thin')]

interface Holes {
  readonly holes: number
  readonly hole_m: number
}

/** Holes on their circle, the first turned against line 1. */
function plate(
  c: Context,
  { holes, hole_m }: Holes,
  circle_m: number,
): { readonly drawing: Drawing; readonly contours: Drawing } {
  const d = c.plan.distributor
  const turn = d?.turn_rad ?? 0
  const r = circle_m * 500
  const outside = d?.diameter_m === undefined ? null : d.diameter_m * 500
  const places = Array.from({ length: holes }, (_, i) =>
    polar([0, 0], r, Math.PI / 2 - turn - (2 * Math.PI * i) / holes),
  )
  const drilled: Drawing = places.map((p) => circle(p, hole_m * 500, 'cut', { layer: 'distributor' }))
  const edge = outside ?? r + 10
  const aim = places[Math.max(1, Math.round(holes / 3))] ?? places[0]!
  return {
    contours: [
      ...drilled,
      ...(outside === null ? [] : [circle([0, 0], outside, 'visible', { layer: 'distributor-edge' })]),
    ],
    drawing: [
      ...(outside === null ? [] : [circle([0, 0], outside, 'visible')]),
      circle([0, 0], r, 'centre'),
      line([-edge - 5, 0], [edge + 5, 0], 'centre'),
      line([0, -edge - 5], [0, edge + 5], 'centre'),
      ...drilled,
      ...places.flatMap((p) => moved(cross(Math.max(2.2, hole_m * 500 + 1.2)), p)),
      ...note({ at: [1.8, edge + 2.2], lines: [c.say('distributor-line1')] }),
      ...roundDimension({
        centre: [0, 0],
        radius_mm: r,
        at_rad: Math.PI / 2 - turn - (2 * Math.PI * (Math.round(holes * 0.6) + 0.5)) / holes,
        figure: c.say('distributor-circle', { d: c.figure(circle_m) }),
        across: true,
      }),
      ...leader({
        to: polar(aim, hole_m * 500, Math.atan2(aim[1], aim[0])),
        elbow: [edge + 3, aim[1] - 9],
        lines: [c.say('distributor-hole', { n: String(holes), d: drillText(hole_m, c.display) })],
      }),
    ],
  }
}

/** Holes round the wall, on a strip. */
function ringStrip(
  c: Context,
  { holes, hole_m }: Holes,
  round_m: number,
): { readonly drawing: Drawing; readonly contours: Drawing } {
  const width = round_m * 1000 * paperStretchOf(c)
  const step = width / holes
  const at = Array.from({ length: holes }, (_, i) => (i + 0.5) * step)
  const high = 24
  const drilled: Drawing = at.map((x) => circle([x, high / 2], hole_m * 500, 'cut', { layer: 'distributor' }))
  return {
    contours: [
      ...drilled,
      rectangle({ left: 0, right: width, bottom: 0, top: high }, 'visible', { layer: 'distributor-edge' }),
    ],
    drawing: [
      rectangle({ left: 0, right: width, bottom: 0, top: high }, 'visible'),
      line([0, high / 2], [width, high / 2], 'centre'),
      ...drilled,
      ...at.flatMap((x) => moved(cross(Math.max(2.2, hole_m * 500 + 1.2)), [x, high / 2])),
      ...dimension({ from: [at[0]!, 0], to: [at[1] ?? width, 0], offset_mm: -6, figure: c.figure(step / 1000) }),
    ],
  }
}

/** Drilling template of what spreads the water. */
export function distributorSheet(c: Context): Drafted {
  const d = c.plan.distributor
  if (d === undefined) return { needs: ['distributor'] }
  if (d.kind === 'tee') return { because: 'why-no-distributor' }
  const ring = d.kind === 'ring'
  const given = needed({
    holes: ['distributor/holes', d.holes],
    hole_m: ['distributor/hole', d.hole_m],
    circle_m: ['distributor/circle', ring ? 0 : d.circle_m],
  })
  if (!isKnown(given)) return given
  const { circle_m, ...holes } = given.known
  if (ring && !isKnown(c.facts.layout)) return c.facts.layout
  const round_m = isKnown(c.facts.layout) ? c.facts.layout.known.circumference_m : 0
  const { drawing, contours } = ring ? ringStrip(c, holes, round_m) : plate(c, holes, circle_m)
  const drill = drillText(holes.hole_m, c.display)
  const lines = [
    ...barLines(c),
    c.say(ring ? 'act-dist-strip' : 'act-dist-punch'),
    c.say('act-dist-drill', { d: drill }),
    ...(ring ? [] : [c.say('act-dist-middle', { unit: c.unit })]),
    d.tilt_rad === undefined ? c.say('act-dist-level-plain') : c.say('act-dist-level', { tilt: c.angle(d.tilt_rad) }),
  ]
  const pages = bounds(drawing) === null ? [] : spread(c, drawing, { lines })
  const slots = { n: String(holes.holes), d: drill, c: c.length(circle_m) }
  return {
    pages: pages.map((page, i) => ({
      id: 'distributor' as const,
      title: i === 0 ? c.say('distributor-title') : c.say('continued', { title: c.say('distributor-title') }),
      subtitle: c.say(ring ? 'distributor-sub-ring' : 'distributor-sub', slots),
      scale: c.say('full-size'),
      drawing: page,
      ...(i === 0 ? { contours } : {}),
    })),
  }
}
