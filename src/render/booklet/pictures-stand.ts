import { orNull } from '../../plan/known.ts'
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
import { distributorSketch } from '../tower/distributor.ts'
import type { Sketch } from '../tower/sketch.ts'
import { towerSketch } from '../tower/tower.ts'
import { standingWater, waterMark } from '../tower/water.ts'
import { elevation } from '../views/elevation.ts'
import { wettingMapView } from '../views/wetting-map.ts'
import { fitted, PICTURE } from './frame.ts'
import type { Given } from './input.ts'

const whole = (s: Sketch | null): Drawing => (s === null ? [] : [...s.marks, ...s.figures.map((f) => f.text)])

/** So small a tower has no room for its dimensions; arrowheads are small solids of no part. */
const bare = (marks: Drawing): Drawing =>
  marks.filter((p) => {
    if (p.part === 'rule') return false
    if (p.kind === 'text' || p.pen === 'dimension' || p.pen === 'ornament')
      return p.kind === 'path' && p.part !== undefined
    return !(p.kind === 'path' && p.pen === null && p.fill === 'solid' && p.part === undefined)
  })

/** The tower as it will stand, with its water and its height. */
export function towerPicture(g: Given): Drawing {
  const layout = orNull(g.facts.layout)
  if (layout === null) return []
  const texts = {
    lid: g.tell('on-lid'),
    fillLine: g.tell('on-fill'),
    lowLine: g.tell('on-low'),
    round: g.tell('on-round'),
  }
  const [templates, tank] = [orNull(g.facts.templates), orNull(g.facts.tank)]
  return fitted((ratio) => {
    const input = { plan: g.plan, layout, templates, tank, display: g.display, texts, scale: 1000 / ratio }
    const { marks } = towerSketch({ ...input, elevation: true, unrolled: false })
    const e = elevation({ plan: g.plan, layout, templates, ratio })
    const [foot, top] = [e.foot_m * ratio, e.top_m * ratio]
    return [
      ...bare(marks),
      ...dimension({
        from: [-e.half_m * ratio - 2, foot],
        to: [-e.half_m * ratio - 2, top],
        offset_mm: 5,
        figure: g.sheet.length(layout.columnLength_m),
      }),
    ]
  })
}

/** The column with its tank, and what is drawn over it at the same ratio. */
function standing(g: Given, over: (e: ReturnType<typeof elevation>, ratio: number) => Drawing): Drawing {
  const layout = orNull(g.facts.layout)
  if (layout === null) return []
  return fitted((ratio) => {
    const e = elevation({ plan: g.plan, layout, templates: orNull(g.facts.templates), ratio })
    return [...e.drawing, ...over(e, ratio)]
  })
}

/** The column lifted in and plumbed: a plumb line beside it, the strap where one is tied. */
export const standPicture = (g: Given, strap: boolean): Drawing =>
  standing(g, (e, k) => {
    const x = e.half_m * k + 5
    const [foot, top] = [e.foot_m * k, e.top_m * k]
    const slots = g.facts.build
    const at = 'known' in slots ? slots.known.slots['strap'] : null
    const height_m = typeof at === 'object' && at !== null && 'value' in at ? at.value : null
    const tied: Drawing =
      strap && height_m !== null
        ? [
            line([-e.radius_m * k - 1, height_m * k], [x + 4, height_m * k], 'cut'),
            line([x + 4, 0], [x + 4, top], 'visible'),
            ...dimension({
              from: [x + 4, 0],
              to: [x + 4, height_m * k],
              offset_mm: -6,
              figure: g.sheet.length(height_m),
            }),
          ]
        : [
            line([x, top], [x, foot + 5], 'thin'),
            contour(
              [
                [x, foot + 1],
                [x + 1.1, foot + 5],
                [x - 1.1, foot + 5],
              ],
              null,
              { fill: 'solid' },
            ),
          ]
    return tied
  })

/** The foot plugged and water up to the lowest lip. */
export const plugPicture = (g: Given): Drawing =>
  standing(g, (e, k) => {
    const layout = orNull(g.facts.layout)
    const t = orNull(g.facts.templates)
    if (layout === null) return []
    const lip_m = e.foot_m + layout.firstMark_m + (t === null ? 0 : t.edges.bottom_m)
    const r = e.radius_m * k
    return [
      ...standingWater({
        left: -r + 0.6,
        right: r - 0.6,
        bottom: e.foot_m * k + 1.4,
        level: lip_m * k,
        part: 'column',
      }),
      rectangle({ left: -r, right: r, bottom: e.foot_m * k, top: e.foot_m * k + 1.4 }, 'visible', { fill: 'solid' }),
      ...waterMark([r + 3, lip_m * k]),
      lettering([r + 6, lip_m * k - 1], g.sheet.length(lip_m - e.foot_m), { size_mm: 2.8, halo: true }),
    ]
  })

/** What spreads the water, from the side and from below. */
export function distributorPicture(g: Given): Drawing {
  const { distributor } = g.facts.hydraulics
  const head_m = 'known' in distributor ? (distributor.known?.neededHead_m ?? null) : null
  const draw = (room_mm: number) =>
    whole(distributorSketch({ plan: g.plan, display: g.display, head_m, room_mm, texts: { on: g.tell('on-circle') } }))
  return fitted((ratio) => draw((ratio * PICTURE.width_mm) / 1000))
}

/** The lid from above with the hole for the column. */
export function lidPicture(g: Given): Drawing {
  const r = g.plan.reservoir
  const pipe = g.plan.column?.pipe
  const long_m = r?.outsideLength_m ?? r?.container?.topLength_m
  const wide_m = r?.outsideWidth_m ?? r?.container?.topWidth_m ?? long_m
  if (pipe === undefined || long_m === undefined || wide_m === undefined) return []
  const slots = g.facts.build
  const hole = 'known' in slots ? slots.known.slots['lidHole'] : null
  const hole_m = typeof hole === 'object' && hole !== null && 'value' in hole ? hole.value : pipe.outside_m
  const k = Math.min(52 / long_m, 40 / wide_m)
  const [l, w] = [(long_m / 2) * k, (wide_m / 2) * k]
  const round = r?.container?.shape === 'round'
  const radius = (hole_m / 2) * k
  return [
    round
      ? circle([0, 0], l, 'visible', { fill: 'paper' })
      : rectangle({ left: -l, right: l, bottom: -w, top: w }, 'visible', { fill: 'paper' }),
    circle([0, 0], radius, 'cut', { fill: 'paper' }),
    line([-l - 3, 0], [l + 3, 0], 'centre'),
    line([0, -(round ? l : w) - 3], [0, (round ? l : w) + 3], 'centre'),
    ...leader({
      to: [radius * 0.71, radius * 0.71],
      elbow: [l * 0.45, (round ? l : w) + 4],
      lines: [`Ø ${g.sheet.length(hole_m)}`],
      end: 'arrow',
    }),
  ]
}

/** Which sites the water meets. */
export function wettingPicture(g: Given): Drawing {
  const wetting = orNull(g.facts.hydraulics.wetting)
  const layout = orNull(g.facts.layout)
  if (wetting === null || layout === null) return []
  return fitted((ratio) => wettingMapView({ facts: wetting, layout, at: 'asDrawn', ratio }), {
    width_mm: 58,
    height_mm: 54,
  })
}

/** The cord hangs below the socket before it rises to it. */
export function dripLoopPicture(g: Given): Drawing {
  const curve = Array.from({ length: 41 }, (_, i): Point => {
    const t = i / 40
    // A cord between two heights hangs like a parabola for so short a way.
    return [8 + 38 * t, 26 + 10 * t - 92 * t * (1 - t) * 0.75]
  })
  return [
    line([-6, -2], [54, -2], 'cut'),
    rectangle({ left: -4, right: 14, bottom: -2, top: 20 }, 'visible', { fill: 'paper' }),
    ...standingWater({ left: -3.4, right: 13.4, bottom: -1.4, level: 13, part: 'reservoir' }),
    line([-5, 20], [15, 20], 'cut'),
    polyline(
      [
        [6, 2],
        [6, 20],
        [8, 26],
      ],
      'visible',
    ),
    polyline(curve, 'visible'),
    rectangle({ left: 44, right: 50, bottom: 32, top: 40 }, 'cut', { fill: 'paper' }),
    circle([47, 36], 1.6, 'visible'),
    line([-6, 13], [54, 13], 'centre'),
    ...leader({ to: [27, 17.3], elbow: [32, 6], lines: [g.tell('on-drip')], end: 'arrow' }),
  ]
}
