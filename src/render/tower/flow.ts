import type { HydraulicsFacts } from '../../disciplines/hydraulics/index.ts'
import type { LayoutFacts } from '../../disciplines/layout/index.ts'
import type { ReservoirFacts } from '../../disciplines/reservoir/index.ts'
import { isKnown, type Known, orNull } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { type Display, shownText } from '../display.ts'
import { dimension } from '../drawing/dimension.ts'
import { lettersWidth } from '../drawing/letters.ts'
import { contour, type Drawing, line, type Point, polyline, rectangle } from '../drawing/primitives.ts'
import { levels } from '../views/elevation.ts'
import type { FlowWords } from '../words/en/flow.ts'
import { figure, figureOf } from './figures.ts'
import { type FlowLabel, flowLabels } from './flow-labels.ts'
import { explained, plain, type Sketch, SMALL_mm, together } from './sketch.ts'
import { standingWater } from './water.ts'

interface FlowInput {
  readonly plan: Plan
  readonly layout: LayoutFacts
  readonly hydraulics: HydraulicsFacts
  readonly reservoir: Known<ReservoirFacts>
  readonly words: FlowWords
  readonly display: Display
  /** One to how many. */
  readonly scale: number
}

type Pieces = Pick<Sketch, 'marks' | 'figures'>

/** Heights and half widths in millimetres of paper. */
interface Frame {
  readonly k: number
  readonly foot: number
  readonly top: number
  readonly half: number
  readonly bore: number
  readonly tank: { readonly half: number; readonly floor: number; readonly rim: number }
  readonly outlet: number
  readonly riserX: number
  readonly labelX: number
}

const BETWEEN_mm = 4.6
/** Lettering may go down so far below the floor. */
const FLOOR_mm = -14
/** Film and falling water are far thinner than a line at this scale: they are drawn as signs, not to scale. */
const FILM_mm = 0.7

function frameOf({ plan, layout, scale, reservoir }: FlowInput): Frame {
  const k = 1000 / scale
  const { foot_m, top_m } = levels({ plan, layout })
  const pipe = plan.column?.pipe
  const half = ((pipe?.outside_m ?? 0.1) / 2) * k
  const bore = ((pipe?.bore_m ?? 0.094) / 2) * k
  const facts = orNull(reservoir)
  const wide_m = plan.reservoir?.container?.topWidth_m ?? plan.reservoir?.outsideWidth_m ?? 3 * (pipe?.outside_m ?? 0.1)
  const floor = (facts?.tank.floor_m ?? 0) * k
  const depth = (facts?.tank.depth_m ?? plan.reservoir?.container?.depth_m ?? 0.25) * k
  const tankHalf = Math.max((wide_m / 2) * k, half + 9)
  const inside = plan.riser?.inside === 'inside the column'
  return {
    ...{ k, foot: foot_m * k, top: top_m * k, half, bore },
    tank: { half: tankHalf, floor: Math.max(0, floor), rim: Math.max(0, floor) + depth },
    outlet: (plan.riser?.outletHeight_m ?? top_m) * k,
    riserX: inside ? 0 : -half - 5,
    labelX: tankHalf + 5,
  }
}

/** A small closed arrow along the water's way. */
const arrow = ([x, y]: Point, up: boolean, part: string): Drawing => {
  const s = up ? 1 : -1
  return [
    contour(
      [
        [x, y + 1.3 * s],
        [x + 0.8, y - 0.9 * s],
        [x - 0.8, y - 0.9 * s],
      ],
      null,
      { fill: 'solid', part },
    ),
  ]
}

/** Pressed water: a full line from the pump to the outlet. */
function riser(f: Frame): Drawing {
  const pumpX = -(f.tank.half + f.half) / 2
  const way: Point[] = [
    [pumpX, f.tank.floor + 3],
    [pumpX, f.tank.floor + 6],
    [f.riserX, f.tank.floor + 6],
    [f.riserX, f.outlet],
    ...(f.riserX === 0
      ? []
      : ([
          [f.riserX, f.outlet + 3],
          [0, f.outlet + 3],
          [0, f.top - 1],
        ] as const)),
  ]
  const middle = (f.tank.rim + f.outlet) / 2
  return [
    polyline(way, 'cut', { part: 'riser water' }),
    ...arrow([f.riserX, middle], true, 'riser water'),
    ...arrow([f.riserX, middle + (f.outlet - middle) * 0.6], true, 'riser water'),
    rectangle({ left: pumpX - 2.6, right: pumpX + 2.6, bottom: f.tank.floor, top: f.tank.floor + 3.4 }, 'visible', {
      fill: 'paper',
      part: 'pump',
    }),
  ]
}

/** Walls of the column, film on them, and what rains between. */
function column(f: Frame): Drawing {
  const wall = (s: 1 | -1): Drawing => [
    rectangle(
      { left: Math.min(s * f.bore, s * f.half), right: Math.max(s * f.bore, s * f.half), bottom: f.foot, top: f.top },
      'visible',
      { part: 'column', fill: 'paper' },
    ),
    rectangle(
      {
        left: Math.min(s * f.bore, s * (f.bore - FILM_mm)),
        right: Math.max(s * f.bore, s * (f.bore - FILM_mm)),
        bottom: f.foot + 1,
        top: f.top - 4,
      },
      null,
      { fill: 'water', part: 'column' },
    ),
    line([s * (f.bore - FILM_mm), f.foot + 1], [s * (f.bore - FILM_mm), f.top - 4], 'thin', { part: 'column water' }),
  ]
  const room = f.bore - FILM_mm - 0.6
  const count = Math.max(6, Math.round((f.top - f.foot) / 2.6))
  const rain = Array.from({ length: count }, (_, i): Drawing => {
    const share = (i + 0.5) / count
    const x = (((i * 0.618) % 1) * 2 - 1) * room
    const y = f.top - 5 - share * (f.top - f.foot - 8)
    // Water that has fallen further is faster: its stroke is longer.
    return Math.abs(x - f.riserX) < 0.8
      ? []
      : [line([x, y], [x, y - 0.6 - 1.6 * Math.sqrt(share)], 'thin', { part: 'column water' })]
  })
  const down = [0.3, 0.7].flatMap((share) =>
    arrow([f.half - (f.half - f.bore) / 2, f.top - share * (f.top - f.foot)], false, 'column water'),
  )
  return [...wall(1), ...wall(-1), ...rain.flat(), ...down]
}

/** What spreads the water, with as much standing over its holes as there is at the middle of the band. */
function spreader(input: FlowInput, f: Frame): Drawing {
  const facts = orNull(input.hydraulics.distributor)
  const d = input.plan.distributor
  if (facts === null || d?.depth_m === undefined) return []
  const half = Math.min(f.bore - 0.3, ((d.diameter_m ?? 0) / 2) * f.k || f.bore - 0.3)
  const depth = d.depth_m * f.k
  const floor = f.top - depth
  const head = Math.min(depth, ((facts.head_m.low + facts.head_m.high) / 2) * f.k)
  return [
    rectangle({ left: -half, right: half, bottom: floor, top: floor + head }, null, {
      fill: 'water',
      part: 'distributor',
    }),
    line([-half, floor + head], [half, floor + head], 'thin', { part: 'distributor water' }),
    polyline(
      [
        [-half, f.top],
        [-half, floor],
        [half, floor],
        [half, f.top],
      ],
      'cut',
      { part: 'distributor' },
    ),
  ]
}

/** The tank with its levels; lines of its own, each with its name and height. */
function tank(input: FlowInput, f: Frame): { readonly marks: Drawing; readonly levels: readonly Level[] } {
  const facts = orNull(input.reservoir)
  const { half, floor, rim } = f.tank
  const shell = polyline(
    [
      [-half, rim],
      [-half, floor],
      [half, floor],
      [half, rim],
    ],
    'cut',
    { part: 'reservoir' },
  )
  if (facts === null) return { marks: [shell], levels: [] }
  const { tank: t, afterStop, afterStart } = facts
  const at = (level_m: number) => floor + level_m * f.k
  const found: Level[] = []
  const add = (key: keyof FlowWords, level_m: number, field: string | null) =>
    found.push({ key, level_m, y: at(level_m), why: field === null ? { fact: 'reservoir/levels' } : { field } })
  const r = input.plan.reservoir
  if (isKnown(afterStop)) add('afterStop', afterStop.known.high_m, null)
  if (isKnown(t.fill))
    add('fill', t.fill.known.level_m, r?.fillLine_m === undefined ? 'reservoir/fillVolume' : 'reservoir/fillLine')
  if (isKnown(t.low))
    add('low', t.low.known.level_m, r?.lowLine_m === undefined ? 'reservoir/lowVolume' : 'reservoir/lowLine')
  if (isKnown(afterStart)) add('afterStart', afterStart.known.low_m, null)
  const top = isKnown(t.fill) ? t.fill.known.level_m : isKnown(t.low) ? t.low.known.level_m : null
  return {
    marks: [
      ...(top === null
        ? []
        : standingWater({ left: -half, right: half, bottom: floor, level: at(top), part: 'reservoir' })),
      ...found.map((l) =>
        line([-half, l.y], [half, l.y], l.key === 'fill' ? 'visible' : 'hidden', { part: 'reservoir water' }),
      ),
      shell,
    ],
    levels: found,
  }
}

interface Level {
  readonly key: keyof FlowWords
  readonly level_m: number
  readonly y: number
  readonly why: { readonly fact: string } | { readonly field: string }
}

/** Numbers of one place: lines under each other, and one leader for all. */
interface Group {
  readonly to: Point
  readonly lines: readonly Pick<FlowLabel, 'text' | 'why'>[]
}

/** Groups on one edge from the top down, none into the next, each with a leader to its place. */
function written(f: Frame, groups: readonly Group[]): Pieces {
  const sorted = [...groups].sort((a, b) => b.to[1] - a.to[1])
  const high = (g: Group) => g.lines.length * BETWEEN_mm
  const tops: number[] = []
  let free = Number.POSITIVE_INFINITY
  for (const g of sorted) {
    const top = Math.min(g.to[1] - 1, free)
    tops.push(top)
    free = top - high(g) - 0.6
  }
  // What was pushed below the floor pushes back those above it.
  let least = FLOOR_mm
  for (let i = sorted.length - 1; i >= 0; i--) {
    const lowest = tops[i]! - high(sorted[i]!) + BETWEEN_mm
    if (lowest < least) tops[i] = least + high(sorted[i]!) - BETWEEN_mm
    least = tops[i]! + BETWEEN_mm + 0.6
  }
  return {
    marks: sorted.map(({ to }, i) =>
      polyline([to, [f.labelX - 3, to[1]], [f.labelX - 0.8, tops[i]! + 0.9]], 'dimension'),
    ),
    figures: sorted.flatMap((g, i) =>
      g.lines.map((l, n) => figure([f.labelX, tops[i]! - n * BETWEEN_mm], l.text, l.why)),
    ),
  }
}

/** The numbers by the place they belong to, and what their leader points at. */
function placed(f: Frame, labels: readonly FlowLabel[]): readonly Group[] {
  const span = f.top - f.tank.rim
  const spot: Readonly<Record<FlowLabel['at'], Point>> = {
    distributor: [f.bore * 0.8, f.top - 2.5],
    column: [f.bore - FILM_mm / 2, f.tank.rim + span * 0.66],
    riser: [f.riserX, f.tank.rim + span * 0.28],
    foot: [f.bore, f.foot + 1.2],
    pump: [-(f.tank.half + f.half) / 2 + 2.6, f.tank.floor + 1.9],
  }
  return (Object.keys(spot) as FlowLabel['at'][]).flatMap((at) => {
    const lines = labels.filter((l) => l.at === at)
    return lines.length === 0 ? [] : [{ to: spot[at], lines }]
  })
}

/** How far the water is lifted, from the low line to the outlet, left of all. */
function lift(input: FlowInput, f: Frame): Pieces {
  const { lift: facts } = input.hydraulics
  const tankFacts = orNull(input.reservoir)
  if (!isKnown(facts) || tankFacts === null || !isKnown(tankFacts.tank.low)) return plain([])
  const low = f.tank.floor + tankFacts.tank.low.known.level_m * f.k
  const x = -f.tank.half - 6
  return explained(
    dimension({
      from: [x, low],
      to: [x, f.outlet],
      offset_mm: 0,
      figure: figureOf(input.display)(facts.known.fromLow_m),
      along: 'up',
    }),
    { fact: 'hydraulics/lift' },
  )
}

/** The water's loop: what is pressed, what rains, what stands, each with its number. */
export function flowSketch(input: FlowInput): Sketch {
  const f = frameOf(input)
  const { hydraulics, reservoir, words, display } = input
  const standing = tank(input, f)
  const labels = placed(f, flowLabels({ hydraulics, reservoir, words, display }))
  const level = standing.levels.map((l) => ({
    to: [f.tank.half, l.y] as const,
    lines: [{ text: `${words[l.key]} ${shownText({ value: l.level_m, unit: 'm' }, display)}`, why: l.why }],
  }))
  const pieces = together([
    plain(standing.marks),
    plain(column(f)),
    plain(spreader(input, f)),
    plain(riser(f)),
    written(f, [...labels, ...level]),
    lift(input, f),
  ])
  const wide = Math.max(
    ...pieces.figures.map((t) => lettersWidth({ text: t.text.text, face: 'drafting', size_mm: SMALL_mm })),
  )
  return {
    ...pieces,
    places: {},
    box: {
      left: -f.tank.half - 12,
      right: f.labelX + wide + 2,
      bottom: FLOOR_mm - 2,
      top: Math.max(f.top, f.outlet) + 8,
    },
    scale: input.scale,
  }
}
