import type { TankFacts } from '../../disciplines/reservoir/index.ts'
import { bounds } from '../drawing/bounds.ts'
import { cleared, letteringRect } from '../drawing/boxes.ts'
import { dimension } from '../drawing/dimension.ts'
import { type Drawing, line, type Point, type Rect } from '../drawing/primitives.ts'
import { type Elevation, elevation } from '../views/elevation.ts'
import { figure, figureOf } from './figures.ts'
import { fittings } from './fittings.ts'
import type { TowerInput } from './input.ts'
import { inside } from './inside.ts'
import { plant } from './leaves.ts'
import { explained, type FigureReason, plain, type Sketch, type SketchFigure, together } from './sketch.ts'
import { runningMarks, surface } from './surface.ts'
import { standingWater, waterMark } from './water.ts'

type Pieces = Pick<Sketch, 'marks' | 'figures'>

/** Levels in the tank above the floor; what is not known is not drawn. */
function waterLevels({ tank }: TowerInput) {
  const level = (line: TankFacts['fill']) =>
    tank !== null && 'known' in line ? tank.floor_m + line.known.level_m : null
  return { fill_m: tank ? level(tank.fill) : null, low_m: tank ? level(tank.low) : null }
}

function waterIn(input: TowerInput, e: Elevation, k: number, taken: readonly Rect[]): Pieces {
  const { plan, tank, texts, display } = input
  const { fill_m, low_m } = waterLevels(input)
  const outside_m = plan.reservoir?.outsideWidth_m ?? plan.reservoir?.container?.topWidth_m
  // A column on a foot of its own stands apart from its tank.
  if (tank === null || e.lid_m === null || fill_m === null || outside_m === undefined) return plain([])
  const inside_m = Math.min(outside_m, plan.reservoir?.container?.topWidth_m ?? outside_m)
  const half = (inside_m / 2) * k
  const floor = tank.floor_m * k
  const edge = (outside_m / 2) * k + 1.4
  const named = (level_m: number, name: string, path: string): SketchFigure => {
    const put = figure([edge + 2.2, level_m * k - 1], `${name} ${figureOf(display)(level_m)}`, { field: path })
    return { ...put, text: cleared(put.text, taken) }
  }
  const lines: Drawing = [fill_m, low_m].flatMap((l) => (l === null ? [] : waterMark([edge + 0.6, l * k])))
  return {
    marks: [
      ...standingWater({ left: -half, right: half, bottom: floor, level: fill_m * k, part: 'reservoir' }),
      ...(low_m === null ? [] : [line([-half, low_m * k], [half, low_m * k], 'hidden', { part: 'reservoir water' })]),
      ...[-1, 1].map((s) =>
        line([s * half, floor], [s * half, (tank.floor_m + tank.depth_m) * k], 'thin', { part: 'reservoir' }),
      ),
      ...lines,
    ],
    figures: [
      named(
        fill_m,
        texts.fillLine,
        plan.reservoir?.fillLine_m === undefined ? 'reservoir/fillVolume' : 'reservoir/fillLine',
      ),
      ...(low_m === null
        ? []
        : [
            named(
              low_m,
              texts.lowLine,
              plan.reservoir?.lowLine_m === undefined ? 'reservoir/lowVolume' : 'reservoir/lowLine',
            ),
          ]),
    ],
  }
}

/** Plants on the left half only, so that life and geometry are both seen. */
function plants({ layout, templates }: TowerInput, e: Elevation, k: number, canopy_m: number): Drawing {
  if (templates === null) return []
  const { axisLength_m, markRise_m, stub } = templates.joint
  const reach = axisLength_m * Math.sin(stub.angle_rad)
  return layout.sites
    .filter((s) => Math.sin(s.turn_rad) < -0.3)
    .flatMap((s) => {
      const x = reach * Math.sin(s.turn_rad)
      const y = e.foot_m + s.mark_m - markRise_m + axisLength_m * Math.cos(stub.angle_rad)
      return plant({ at: [x * k, y * k], lean_rad: 2.05, size_mm: canopy_m * k * 0.86, seed: s.number })
    })
}

/** Dimensions beside the elevation, each the field that it shows. */
function sizes({ plan, layout, display, tank }: TowerInput, e: Elevation, k: number, left: number): Pieces {
  const f = figureOf(display)
  const rings = [...new Set(layout.sites.map((s) => s.mark_m))].sort((a, b) => a - b)
  const up = (from_m: number, to_m: number, why: FigureReason, from: number): Pieces =>
    explained(
      dimension({
        from: [from, from_m * k],
        to: [from, to_m * k],
        offset_mm: 0,
        figure: f(to_m - from_m),
        along: 'up',
      }),
      why,
    )
  const near = left + 8
  const lid = e.lid_m !== null && e.lid_m > e.foot_m ? e.lid_m : null
  const width_m = plan.reservoir?.outsideWidth_m
  const across = (half: number, y: number, offset: number, text: string, why: FigureReason): Pieces =>
    explained(dimension({ from: [-half, y], to: [half, y], offset_mm: offset, figure: text, along: 'across' }), why)
  return together([
    up(e.foot_m, e.top_m, { field: 'column/length' }, left),
    ...(rings[1] === undefined || rings[2] === undefined
      ? []
      : [up(e.foot_m + rings[1], e.foot_m + rings[2], { field: 'column/sites/pitch' }, near)]),
    ...(rings[0] === undefined
      ? []
      : [
          up(
            plan.column?.sites?.firstFrom === 'lid' && lid !== null ? lid : e.foot_m,
            e.foot_m + rings[0],
            { field: 'column/sites/first' },
            near,
          ),
        ]),
    ...(width_m === undefined || e.lid_m === null
      ? []
      : [
          across((width_m / 2) * k, Math.min(0, tank?.floor_m ?? 0) * k, -6.5, f(width_m), {
            field: 'reservoir/outsideWidth',
          }),
        ]),
  ])
}

const linesOf = ({ marks }: Pieces): readonly Rect[] => marks.flatMap((p) => (p.kind === 'line' ? [bounds([p])!] : []))

const lettersOf = ({ figures }: Pieces): readonly Rect[] => figures.map((f) => letteringRect(f.text, 0))

/** How wide a plant is drawn. */
const canopyOf = ({ plan, layout }: TowerInput): number =>
  Math.min(
    layout.linePitch_m === null ? 0.3 : layout.linePitch_m * 0.6,
    plan.column?.sites?.canopy_m ?? plan.crops?.[0]?.canopy_m ?? 0.15,
  )

/** Elevation and unrolled surface side by side on one height scale, with the running marks between them. */
export function towerSketch(input: TowerInput): Sketch {
  const { plan, layout, templates, scale } = input
  const k = 1000 / scale
  const e = elevation({ plan, layout, templates, ratio: k })
  const half = e.half_m * k
  const shown = input.elevation
  const text = shown ? half + 24 : 0
  const right = text + 4.6
  const round = layout.circumference_m * k
  const canopy_m = canopyOf(input)
  const grown = templates === null ? 0 : canopy_m * k * 0.55
  const reach = Math.max(half, (templates?.stub.mouthReach_m ?? 0) * k + grown)
  const left = -reach - 12
  const inner = inside(input, e, k, waterLevels(input))
  const hidden = e.drawing.filter((p) => 'pen' in p && p.pen === 'hidden')
  const measured = shown ? sizes(input, e, k, left) : plain([])
  const running = shown
    ? runningMarks(input, e, k, { from: (templates?.stub.mouthReach_m ?? e.radius_m) * k + 6, text, to: right })
    : plain([])
  const pieces = together([
    ...(shown
      ? [
          plain(e.drawing),
          waterIn(input, e, k, lettersOf(running)),
          plain([...hidden, ...inner.marks, ...plants(input, e, k, canopy_m)]),
          measured,
          fittings(input, e, k, 4 - reach, waterLevels(input).fill_m),
        ]
      : []),
    running,
    ...(input.unrolled ? [surface(input, e, k, right)] : []),
  ])
  const seen = {
    marks: pieces.marks.map((p) => (p.part === 'cup' ? { ...p, part: 'cups' } : p)),
    figures: pieces.figures,
  }
  return {
    ...seen,
    places: shown ? { ...inner.places, ...placesOf(input, e, k) } : {},
    box: {
      left: shown ? left - 5 : right - 2,
      right: input.unrolled ? right + round + 3 : text + 2,
      bottom: Math.min(0, e.foot_m * k, e.lid_m === null ? 0 : (input.tank?.floor_m ?? 0) * k) - 11,
      top: e.top_m * k + 9,
    },
    taken: [
      ...linesOf(measured),
      ...(input.unrolled ? [{ left: right, right: right + round, bottom: e.foot_m * k, top: e.top_m * k }] : []),
    ],
    scale,
  }
}

/** Where a balloon's leader ends, by part. */
function placesOf({ layout, templates }: TowerInput, e: Elevation, k: number): Readonly<Record<string, Point>> {
  const r = e.radius_m * k
  const rights = layout.sites.filter((s) => Math.sin(s.turn_rad) > 0.3).map((s) => s.mark_m)
  const at = (share: number): number => rights[Math.floor(share * (rights.length - 1))] ?? layout.columnLength_m * share
  const mouth = (templates?.stub.mouthReach_m ?? e.radius_m) * k
  const y = (m: number): number => (e.foot_m + m) * k
  return {
    column: [r * 0.8, y((at(0.5) + at(0.7)) / 2)],
    stubs: [(r + mouth) / 2, y(at(0.35)) - 0.5],
    cups: [mouth, y(at(0.8)) + 2],
    roots: [-mouth * 0.8, y(at(0.55)) + 3],
    drain: [r * 0.5, y(0) + 1],
    workshop: [r * 0.5, y(at(0.15)) - 6],
  }
}
