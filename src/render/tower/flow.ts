import { isKnown, orNull } from '../../plan/known.ts'
import { shownText } from '../display.ts'
import { dimension } from '../drawing/dimension.ts'
import { lettersWidth } from '../drawing/letters.ts'
import { type Drawing, line, type Point, polyline } from '../drawing/primitives.ts'
import type { FlowWords } from '../words/en/flow.ts'
import { figure, figureOf } from './figures.ts'
import { type FlowLabel, flowLabels } from './flow-labels.ts'
import { column, FILM_mm, type FlowInput, type Frame, frameOf, riser, spreader } from './flow-marks.ts'
import { explained, plain, type Sketch, SMALL_mm, together } from './sketch.ts'
import { standingWater } from './water.ts'

type Pieces = Pick<Sketch, 'marks' | 'figures'>

const BETWEEN_mm = 4.6
/** Lettering may go down so far below the floor. */
const FLOOR_mm = -14
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
