import { practiceRatios } from '../../tables/practice.ts'
import { hatch } from '../drawing/hatch.ts'
import {
  circle,
  corners,
  type Drawing,
  line,
  type Point,
  polyline,
  type Rect,
  rectangle,
} from '../drawing/primitives.ts'
import type { Elevation } from '../views/elevation.ts'
import { figure, figureOf } from './figures.ts'
import type { TowerInput } from './input.ts'
import { plain, type Sketch, together } from './sketch.ts'

type Pieces = Pick<Sketch, 'marks' | 'figures'>

/**
 * What holds, weighs, shades and cools the tower; each only where the plan has it. Sizes that the plan tells are true
 * (heights, foam, holes); what it tells only as there is a sign of fixed size on the paper.
 */
interface Place {
  readonly input: TowerInput
  readonly e: Elevation
  /** Millimetres of paper for a metre of tower. */
  readonly k: number
  /** Half the tank's width and its lid on the paper; null where no tank is drawn. */
  readonly tank: { readonly half: number; readonly top: number; readonly floor: number } | null
}

const SIGN_mm = { strap: 1.6, wall: 10, gap: 4, board: 1, foil: 0.9, stone: 3, bottle: 2.4 } as const

/** A strap round the column and to the wall, at its height; where the plan tells none, at the height that is judged. */
function strap({ input: { plan, display }, e, k }: Place, left: number): Pieces {
  const { anchored, strapHeight_m } = plan.column?.base ?? {}
  if (anchored !== true) return plain([])
  const y = Math.min(strapHeight_m ?? practiceRatios.rows.strap.low * e.top_m, e.top_m) * k
  const [r, half] = [e.radius_m * k + 0.5, SIGN_mm.strap / 2]
  const wall: Rect = { left: left - 1.6, right: left, bottom: y - SIGN_mm.wall / 2, top: y + SIGN_mm.wall / 2 }
  const part = { part: 'drain' }
  return {
    marks: [
      rectangle({ left: -r, right: r, bottom: y - half, top: y + half }, 'visible', { fill: 'paper', ...part }),
      ...[-half, half].map((d) => line([left, y + d], [-r, y + d], 'visible', part)),
      ...hatch({ rings: [corners(wall)], pitch_mm: 1.1 }),
      line([left, wall.bottom], [left, wall.top], 'cut', part),
    ],
    figures: [figure([left + 1.5, y + 2], figureOf(display)(y / k), { field: 'column/base/strapHeight' })],
  }
}

/** Dead weight on both sides of the foot, with how much it is. */
function ballast({ input: { plan }, e, k, tank }: Place): Pieces {
  const mass_kg = plan.column?.base?.ballast_kg ?? 0
  if (mass_kg <= 0) return plain([])
  const r = e.radius_m * k + 0.8
  const wide = tank === null ? 8 : Math.max(3, Math.min(8, (tank.half - r) * 0.6))
  const floor = tank?.floor ?? 0
  const boxes = [
    { left: r, right: r + wide, bottom: floor, top: floor + 4 },
    { left: -r - wide, right: -r, bottom: floor, top: floor + 4 },
  ]
  const said = figure([r, floor + 5], `${Number(mass_kg.toPrecision(3))} kg`, { field: 'column/base/ballast' })
  return {
    marks: boxes.flatMap((box) => [
      rectangle(box, 'visible', { fill: 'paper', part: 'drain' }),
      ...hatch({ rings: [corners(box)], pitch_mm: 1.1 }),
    ]),
    figures: [said],
  }
}

/** A foot of its own, as wide as the plan says. */
function foot({ input: { plan }, k }: Place): Drawing {
  const { footWidth_m, kind } = plan.column?.base ?? {}
  if (footWidth_m === undefined || kind === 'through the lid') return []
  const half = (footWidth_m / 2) * k
  return [rectangle({ left: -half, right: half, bottom: 0, top: 1 }, 'visible', { fill: 'solid', part: 'drain' })]
}

/** Holes of the drain that are seen from the front, at true size. */
function drainHoles({ input: { plan }, e, k, tank }: Place): Drawing {
  const { holes = 0, hole_m } = plan.drain ?? {}
  if (hole_m === undefined || holes < 1 || plan.column?.base?.kind !== 'through the lid') return []
  const radius = (hole_m / 2) * k
  const y = Math.max(e.foot_m * k, tank?.floor ?? 0) + radius + 0.8
  const turns = Array.from({ length: Math.min(holes, 24) }, (_, i) => (i * 2 * Math.PI) / Math.min(holes, 24))
  return turns
    .filter((t) => Math.cos(t) > 0.2)
    .map((t) => {
      const [x, wide] = [e.radius_m * k * Math.sin(t), radius * Math.cos(t)]
      const round = Array.from({ length: 13 }, (_, i): Point => {
        const a = (i * 2 * Math.PI) / 12
        return [x + wide * Math.cos(a), y + radius * Math.sin(a)]
      })
      return polyline(round, 'hidden', { part: 'drain' })
    })
}

/** Foil, foam and shade round the tank. */
function round({ input: { plan }, k, tank }: Place): Drawing {
  if (tank === null) return []
  const { colour, insulation_m = 0, shaded } = plan.reservoir ?? {}
  const { half, top } = tank
  const part = { part: 'reservoir' }
  const foam = insulation_m * k
  const sides = [-1, 1] as const
  const box = (s: number, from: number, to: number): Rect => ({
    left: Math.min(s * from, s * to),
    right: Math.max(s * from, s * to),
    bottom: 0,
    top,
  })
  const out = half + foam
  return [
    ...(foam > 0
      ? sides.flatMap((s) => [
          rectangle(box(s, half, out), 'visible', part),
          ...hatch({ rings: [corners(box(s, half, out))], pitch_mm: 1.4 }),
        ])
      : []),
    ...(colour === 'foil'
      ? sides.map((s) => {
          const steps = Math.max(2, Math.round(top / 1.6))
          const points = Array.from({ length: steps + 1 }, (_, i): Point => {
            return [s * (out + (i % 2 === 0 ? 0.3 : 0.3 + SIGN_mm.foil)), (i * top) / steps]
          })
          return polyline(points, 'thin', part)
        })
      : []),
    ...(shaded === true
      ? sides.flatMap((s) => {
          const at = out + SIGN_mm.gap
          const board = box(s, at, at + SIGN_mm.board)
          return [rectangle({ ...board, top: top + 2 }, 'visible', { fill: 'paper', ...part })]
        })
      : []),
  ]
}

/** In the tank: a stone that bubbles, bottles of ice that float. */
function inTank({ input: { plan }, tank }: Place, level: number | null): Drawing {
  if (tank === null) return []
  const part = { part: 'reservoir' }
  const { airStone_m3_s = 0, ice } = plan.reservoir ?? {}
  const x = tank.half * 0.78
  const stone: Rect = {
    left: x - SIGN_mm.stone / 2,
    right: x + SIGN_mm.stone / 2,
    bottom: tank.floor,
    top: tank.floor + 1.4,
  }
  const bubbles = [0, 1, 2].map((i) =>
    circle([x + (i % 2 === 0 ? -0.6 : 0.6), tank.floor + 2.6 + 1.7 * i], 0.35 + 0.1 * i, 'thin', part),
  )
  const bottle = (at: number): Rect => ({
    left: at,
    right: at + SIGN_mm.bottle * 1.9,
    bottom: (level ?? 0) - SIGN_mm.bottle * 0.8,
    top: (level ?? 0) + SIGN_mm.bottle * 0.2,
  })
  return [
    ...(airStone_m3_s > 0
      ? [
          rectangle(stone, 'visible', { fill: 'solid', ...part }),
          ...bubbles,
          line([x, stone.top], [x, tank.top], 'thin', part),
        ]
      : []),
    ...((ice?.mass_kg ?? 0) > 0 && level !== null
      ? [0.3, 0.52].map((share) => rectangle(bottle(tank.half * share), 'visible', { fill: 'paper', ...part }))
      : []),
  ]
}

export function fittings(input: TowerInput, e: Elevation, k: number, left: number, fill_m: number | null): Pieces {
  const { reservoir } = input.plan
  const width_m = reservoir?.outsideWidth_m ?? reservoir?.outsideLength_m ?? reservoir?.container?.topWidth_m
  const tank =
    width_m === undefined || e.lid_m === null
      ? null
      : { half: (width_m / 2) * k, top: e.lid_m * k, floor: (input.tank?.floor_m ?? 0) * k }
  const place: Place = { input, e, k, tank }
  const marks = [
    ...foot(place),
    ...drainHoles(place),
    ...round(place),
    ...inTank(place, fill_m === null ? null : fill_m * k),
  ]
  return together([plain(marks), ballast(place), strap(place, left)])
}
