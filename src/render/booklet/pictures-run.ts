import { orNull } from '../../plan/known.ts'
import { dimension } from '../drawing/dimension.ts'
import { leader } from '../drawing/marks.ts'
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
import { drillText } from '../drill.ts'
import type { Given } from './input.ts'
import { type Scene, scene, slotOf } from './scene.ts'

const SMALL_mm = 2.8
const CLOCK_mm = 6
const HOURS = 12

const linesOf = (g: Given) => {
  const tank = orNull(g.facts.tank)
  const level = (name: 'fill' | 'low') => (tank === null ? null : (orNull(tank[name])?.level_m ?? null))
  return { fill_m: level('fill'), low_m: level('low') }
}

/** A clock face with its whole way round marked, and the time that is meant below it. */
function clock([x, y]: Point, text: string): Drawing {
  const at = (turn: number, radius: number): Point => [x + radius * Math.sin(turn), y + radius * Math.cos(turn)]
  const ticks = Array.from({ length: HOURS }, (_, i) => {
    const turn = (2 * Math.PI * i) / HOURS
    return line(at(turn, CLOCK_mm - (i % 3 === 0 ? 1.5 : 0.8)), at(turn, CLOCK_mm), 'thin')
  })
  return [
    circle([x, y], CLOCK_mm, 'cut', { fill: 'paper' }),
    ...ticks,
    line([x, y], at(0, CLOCK_mm - 1.8), 'visible'),
    line([x, y], at(Math.PI / 3, CLOCK_mm - 3), 'visible'),
    arc([x, y], CLOCK_mm + 1.5, 0.2, 1.45, 'dimension'),
    contour([at(0.02, CLOCK_mm + 1.5), at(0.2, CLOCK_mm + 2.1), at(0.2, CLOCK_mm + 0.9)], null, { fill: 'solid' }),
    lettering([x, y - CLOCK_mm - 4], text, { size_mm: 3, anchor: 'middle' }),
  ]
}

const levelled = (g: Given, s: Scene, level_m: number): Drawing =>
  dimension({
    from: [s.half, 0],
    to: [s.half, s.level(level_m)],
    offset_mm: -6,
    figure: g.sheet.length(level_m),
    along: 'up',
  })

/** Right of all that stands. */
const rightOf = (s: Scene): number => Math.max(s.half, s.axis + s.radius)

/** The tank at the low line, a trickle: dry paper round a joint would show a weep. */
export function lowFlowPicture(g: Given): Drawing {
  const { low_m, fill_m } = linesOf(g)
  const level_m = low_m ?? fill_m
  const s = scene(g, { level_m, runs: 'trickles' })
  if (s === null) return []
  const y = s.rim + 10
  const paper: Drawing = [
    rectangle(
      { left: s.axis - s.radius - 0.8, right: s.axis + s.radius + 0.8, bottom: y - 1.4, top: y + 1.4 },
      'visible',
      {
        fill: 'paper',
      },
    ),
    ...leader({
      to: [s.axis + s.radius + 0.8, y],
      elbow: [s.axis + s.radius + 6, y + 4],
      lines: [g.tell('on-paper')],
      end: 'arrow',
    }),
  ]
  return [...s.drawing, ...paper, ...(level_m === null ? [] : levelled(g, s, level_m))]
}

/** The column in full rain, the cap looked at. */
export function fullFlowPicture(g: Given): Drawing {
  const { fill_m } = linesOf(g)
  const s = scene(g, { level_m: fill_m, runs: 'runs' })
  if (s === null) return []
  return [
    ...s.drawing,
    ...(fill_m === null ? [] : levelled(g, s, fill_m)),
    ...clock([rightOf(s) + 14, s.rim + 9], slotOf(g, 'fullRun')),
  ]
}

/** The level as it rises when the pump stops and falls when it starts, with the fill line between. */
export function stopPicture(g: Given): Drawing {
  const facts = orNull(g.facts.reservoir)
  const stop = facts === null ? null : orNull(facts.afterStop)
  const start = facts === null ? null : orNull(facts.afterStart)
  const { fill_m } = linesOf(g)
  const s = scene(g, { level_m: stop?.high_m ?? fill_m, runs: 'stands' })
  if (s === null) return []
  const mark = (level_m: number, key: 'on-stopped' | 'on-started', dy: number): Drawing => [
    line([-s.half, s.level(level_m)], [s.half, s.level(level_m)], 'hidden'),
    ...leader({
      to: [s.half - 1, s.level(level_m)],
      elbow: [s.half + 5, s.level(level_m) + dy],
      lines: [g.tell(key), g.sheet.length(level_m)],
      end: 'arrow',
    }),
  ]
  return [
    ...s.drawing,
    ...(stop === null ? [] : mark(stop.high_m, 'on-stopped', 5)),
    ...(start === null ? [] : mark(start.low_m, 'on-started', -1)),
  ]
}

/** A day's run with its clock, over a tray that shows a drip. */
export function dayPicture(g: Given): Drawing {
  const { fill_m } = linesOf(g)
  const s = scene(g, { level_m: fill_m, runs: 'runs' })
  if (s === null) return []
  const reach = s.half + 3.4
  const tray: readonly Point[] = [
    [-reach, 1.6],
    [-reach, -0.9],
    [reach, -0.9],
    [reach, 1.6],
  ]
  return [...s.drawing, polyline(tray, 'visible'), ...clock([rightOf(s) + 15, s.rim + 6], slotOf(g, 'dayRun'))]
}

/** The night with the plug pulled: the level is marked and must stand there in the morning. */
export function nightPicture(g: Given): Drawing {
  const { fill_m } = linesOf(g)
  const s = scene(g, { level_m: fill_m, runs: 'stands' })
  if (s === null) return []
  const x = s.half
  const y = fill_m === null ? s.rim / 2 : s.level(fill_m)
  const paper: Drawing = [
    rectangle({ left: -x - 4, right: x + 4, bottom: -1.7, top: -0.9 }, 'thin', { fill: 'paper' }),
    ...leader({ to: [x + 3, -1.3], elbow: [x + 8, 5], lines: [g.tell('on-paper')], end: 'arrow' }),
  ]
  const mark: Drawing = [line([x - 2, y], [x + 3, y], 'cut')]
  return [...s.drawing, ...paper, ...mark, ...clock([rightOf(s) + 15, s.rim + 9], slotOf(g, 'night'))]
}

/** The rinsing: the head off, plain water up and home, and the tank let out into a bucket. */
export function flushPicture(g: Given): Drawing {
  const { low_m, fill_m } = linesOf(g)
  const s = scene(g, { level_m: low_m ?? fill_m, runs: 'runs' })
  if (s === null) return []
  const x = rightOf(s) + 12
  const drain: readonly Point[] = [
    [s.half - 4, 2],
    [s.half - 4, s.rim + 3],
    [s.half - 2.6, s.rim + 4.4],
    [x - 1.4, s.rim + 4.4],
    [x, s.rim + 3],
    [x, 9],
  ]
  const bucket: readonly Point[] = [
    [x - 5.5, 11],
    [x - 4.2, -0.9],
    [x + 4.2, -0.9],
    [x + 5.5, 11],
  ]
  const water: readonly Point[] = [
    [x - 4.2, -0.9],
    [x + 4.2, -0.9],
    [x + 4.8, 5],
    [x - 4.8, 5],
  ]
  return [
    ...s.drawing,
    polyline(drain, 'visible'),
    contour(water, null, { fill: 'water' }),
    polyline(bucket, 'cut'),
    ...[-0.5, 0.3].map((dx, i) => line([x + dx, 8.4 - i], [x + dx, 6 - i], 'thin')),
    lettering([x, s.rim + 7], `2 × ${slotOf(g, 'flushRun')}`, { size_mm: SMALL_mm, anchor: 'middle' }),
  ]
}

/** Pump, hose and clamps. */
export function plumbingPicture(g: Given): Drawing {
  const s = scene(g, { level_m: null, runs: 'stands' })
  if (s === null) return []
  const bore_m = g.plan.riser?.bore_m
  return [
    ...s.drawing,
    ...(bore_m === undefined
      ? []
      : [
          ...leader({
            to: [s.axis, s.rim + 7],
            elbow: [s.axis + s.radius + 7, s.rim + 11],
            lines: [`Ø ${g.sheet.size(bore_m)} ${g.sheet.unit}`, slotOf(g, 'hoseLength')],
            end: 'arrow',
          }),
        ]),
  ]
}

/** The foot of the column in or beside its tank. */
export function basePicture(g: Given): Drawing {
  const s = scene(g, { level_m: linesOf(g).fill_m, runs: 'stands' })
  if (s === null) return []
  const holes = g.plan.drain?.holes
  const size_m = g.plan.drain?.hole_m
  return [
    ...s.drawing,
    ...(holes === undefined || size_m === undefined
      ? []
      : leader({
          to: [s.axis + s.radius, 1.4],
          elbow: [s.half + 5, 6],
          lines: [`${holes} × ${drillText(size_m, g.sheet.display)}`],
          end: 'arrow',
        })),
  ]
}
