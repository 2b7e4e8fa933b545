import { isKnown } from '../../plan/known.ts'
import type { Pipe } from '../../plan/pipe.ts'
import { practiceLengths } from '../../tables/practice.ts'
import { bounds } from '../drawing/bounds.ts'
import { roundDimension } from '../drawing/dimension.ts'
import { note } from '../drawing/marks.ts'
import { circle, type Drawing, lettering, line, type Point, rectangle } from '../drawing/primitives.ts'
import { moved } from '../drawing/transform.ts'
import { polar } from '../drawing/vector.ts'
import { drillText } from '../drill.ts'
import { heightOf, spread } from './compose.ts'
import type { Context, Drafted } from './context.ts'
import { barLines } from './hole.ts'
import { fittingScale } from './scale.ts'

const cross = (reach: number): Drawing => [
  line([-reach, 0], [reach, 0], 'centre'),
  line([0, -reach], [0, reach], 'centre'),
]

/** The lid from above, where everything on it lies; small. */
function lidPlan(c: Context, pipe: Pipe, hole_m: number, height_mm: number): Drawing {
  const r = c.plan.reservoir
  const length_m = r?.container?.topLength_m ?? r?.outsideLength_m
  const width_m = r?.container?.topWidth_m ?? r?.outsideWidth_m ?? length_m
  if (length_m === undefined || width_m === undefined) return []
  const scale = fittingScale({
    width_m: length_m,
    height_m: width_m,
    room: { width_mm: 112, height_mm },
    display: c.display,
  })
  const k = scale.ratio
  const land = practiceLengths.rows['lid-land'].low_m * k
  const [a, b] = [(length_m * k) / 2, (width_m * k) / 2]
  const filler = (practiceLengths.rows['lid-filler'].low_m * k) / 2
  const round = r?.container?.shape === 'round'
  const outline: Drawing = round
    ? [circle([0, 0], a, 'hidden'), circle([0, 0], a + land, 'visible')]
    : [
        rectangle({ left: -a, right: a, bottom: -b, top: b }, 'hidden'),
        rectangle({ left: -a - land, right: a + land, bottom: -b - land, top: b + land }, 'visible'),
      ]
  const free = (a + ((pipe.outside_m + hole_m) / 4) * k) / 2
  return [
    ...outline,
    line([-a - land - 3, 0], [a + land + 3, 0], 'centre'),
    line([0, -b - land - 3], [0, b + land + 3], 'centre'),
    ...(hole_m > 0 ? [circle([0, 0], (hole_m * k) / 2, 'cut')] : [circle([0, 0], (pipe.outside_m * k) / 2, 'thin')]),
    circle([free, 0], filler, 'hidden'),
    lettering([-a - land, b + land + 2], `${c.say('name-lid')}, ${c.say('at-scale', { n: String(scale.reduction) })}`, {
      size_mm: 2.9,
    }),
  ]
}

/** Ticks where the notches of the foot or the holes of the drain stand. */
function drainTicks(count: number, radius: number, width: number, notches: boolean): Drawing {
  return Array.from({ length: count }, (_, i) => Math.PI / 2 + (2 * Math.PI * (i + 0.5)) / count).flatMap(
    (a): Drawing =>
      notches
        ? [line(polar([0, 0], radius - 5, a), polar([0, 0], radius, a), 'visible')]
        : [
            circle(polar([0, 0], radius, a), width / 2, 'visible'),
            ...moved(cross(width / 2 + 1.4), polar([0, 0], radius, a)),
          ],
  )
}

interface Wanted {
  readonly pipe: Pipe
  readonly through: boolean
}

function block(c: Context, { pipe, through }: Wanted): Drawing {
  const play_m = practiceLengths.rows['lid-hole'].low_m
  const hole = (pipe.outside_m + play_m) * 1000
  const R = pipe.outside_m * 500
  const drain = c.plan.drain
  const [holes, hole_m] = [drain?.holes, drain?.hole_m]
  const at: Point = [0, 0]
  const known = holes !== undefined && hole_m !== undefined && holes <= 60
  const reach = hole / 2 + 6
  const bore = pipe.bore_m * 500
  const full: Drawing = through
    ? [
        circle(at, hole / 2, 'cut', { layer: 'lid' }),
        circle(at, R, 'thin'),
        ...(known ? drainTicks(holes, R - 1, hole_m * 1000, true) : []),
        ...roundDimension({
          centre: at,
          radius_mm: hole / 2,
          at_rad: Math.PI / 5,
          figure: c.say('lid-hole', { d: c.size(hole / 1000) }),
          across: true,
        }),
        ...(known
          ? note({
              at: [0, -R * 0.42],
              lines: [c.say('foot-notch', { n: String(holes), d: drillText(hole_m, c.display) })],
              anchor: 'middle',
            })
          : []),
      ]
    : [
        circle(at, R, 'thin'),
        circle(at, bore, 'hidden'),
        ...(known ? drainTicks(holes, bore - hole_m * 1000, hole_m * 1000, false) : []),
        ...roundDimension({
          centre: at,
          radius_mm: R,
          at_rad: Math.PI / 4.5,
          figure: `Ø${c.size(pipe.outside_m)}`,
          across: false,
        }),
      ]
  const main = [...full, ...cross(reach), ...note({ at: [1.6, reach - 0.5], lines: [c.say('lid-middle')] })]
  const box = bounds(main)!
  // What the page leaves below the full-size hole, without the lid's own land and caption.
  const small = lidPlan(c, pipe, through ? hole / 1000 : 0, Math.min(62, heightOf(c.room.body) - heightOf(box) - 46))
  const smallBox = bounds(small)
  if (smallBox === null) return main
  return [...main, ...moved(small, [box.left - smallBox.left, box.bottom - 9 - smallBox.top])]
}

function lines(c: Context, { pipe, through }: Wanted): readonly string[] {
  const drain = c.plan.drain
  const known = drain?.holes !== undefined && drain.hole_m !== undefined
  const depth_m = c.plan.column?.base?.ringDepth_m
  // A ring of the same pipe, slit once and sprung over it, opens by the difference of the two rounds.
  const gap = c.length(Math.PI * (pipe.outside_m - pipe.bore_m))
  const drainLine = known
    ? c.say('act-lid-drain', { n: String(drain.holes), d: drillText(drain.hole_m, c.display) })
    : c.say('act-lid-drain-blank', { unit: c.unit })
  return [
    ...barLines(c),
    c.say('act-lid-middle'),
    ...(through ? [c.say('act-lid-saw')] : [drainLine, c.say('act-lid-bolts', { unit: c.unit })]),
    c.say('act-lid-filler'),
    c.say('act-lid-notch', { unit: c.unit }),
    ...(through && known ? [c.say('act-lid-foot')] : []),
    ...(through
      ? [
          depth_m === undefined
            ? c.say('act-lid-ring-blank', { unit: c.unit, gap })
            : c.say('act-lid-ring', { depth: c.length(depth_m), gap }),
        ]
      : []),
  ]
}

/** What is cut into the lid, the foot's notches and the base ring. */
export function lidSheet(c: Context): Drafted {
  const { column } = c.plan
  const kind = column?.base?.kind
  const pipe = isKnown(c.facts.room) ? c.facts.room.known.column : column?.pipe
  if (kind === 'own foot') return { because: 'why-own-foot' }
  if (kind === undefined) return { needs: ['column/base/kind'] }
  if (pipe === undefined) return { needs: ['column/pipe'] }
  const wanted = { pipe, through: kind === 'through the lid' }
  const drawing = block(c, wanted)
  const pages = spread(c, drawing, { lines: lines(c, wanted) })
  const play_m = practiceLengths.rows['lid-hole'].low_m
  const subtitle = wanted.through
    ? c.say('lid-sub-through', {
        d: `${c.size(pipe.outside_m + play_m)} ${c.unit}`,
        play: c.within(play_m),
        land: c.length(practiceLengths.rows['lid-land'].low_m),
      })
    : c.say('lid-sub-flange')
  const contours: Drawing = wanted.through
    ? [circle([0, 0], (pipe.outside_m + play_m) * 500, 'cut', { layer: 'lid' }), ...cross(5)]
    : []
  return {
    pages: pages.map((page, i) => ({
      id: 'lid' as const,
      title: i === 0 ? c.say('lid-title') : c.say('continued', { title: c.say('lid-title') }),
      subtitle,
      scale: c.say('full-size'),
      drawing: page,
      ...(i === 0 && contours.length > 0 ? { contours } : {}),
    })),
  }
}
