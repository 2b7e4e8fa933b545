import { type HydraulicsFacts, systemCurve } from '../../disciplines/hydraulics/index.ts'
import { compiledPump, type PumpCurve } from '../../disciplines/hydraulics/pump-law.ts'
import { band, quantity } from '../../kernel/units.ts'
import { isKnown } from '../../plan/known.ts'
import { type Display, show, shownText } from '../display.ts'
import { letteringRects } from '../drawing/boxes.ts'
import { circle, contour, type Drawing, line, type Point, polyline } from '../drawing/primitives.ts'
import type { WaterPathWords } from '../words/en/water-path.ts'
import { fill } from '../words/fill.ts'
import { AXIS_AIR_mm, CHART_FIGURE_mm, chartAxes, chartPoint, type Frame, insideOf } from './chart-axes.ts'
import { type Spot, spotsAlong, spotsRound, type Tag, tags } from './tags.ts'

const STEPS = 40
/** Room above the shut-off head and beyond the flow at no head. */
const ABOVE = 1.12
const BEYOND = 1.05

/** Points of a pump's curve down to no head. */
function curvePoints(f: Frame, curve: PumpCurve): Point[] {
  const head = compiledPump(curve)
  const out: Point[] = []
  let last = head(0).head_m
  for (let i = 0; i <= STEPS; i++) {
    const flow = (f.x[1] * i) / STEPS
    const { head_m } = head(flow)
    if (head_m <= 0) {
      // The curve ends on the axis, part of the way from the point before.
      const part = last > 0 ? last / (last - head_m) : 0
      return [...out, chartPoint(f, (f.x[1] * (i - 1 + part)) / STEPS, 0)]
    }
    out.push(chartPoint(f, flow, head_m))
    last = head_m
  }
  return out
}

/** The flows between which the pump delivers: a whisker on the axis of flows, with its figures. */
function whisker(f: Frame, crossings: readonly Point[]): Drawing {
  const [a, b] = [crossings[0]![0], crossings.at(-1)![0]]
  const y = f.bottom_mm
  return [
    line([a, y], [b, y], 'cut'),
    ...crossings.flatMap(
      (p): Drawing => [
        line([p[0], y - 0.9], [p[0], y + 0.9], 'cut'),
        line([p[0], y], p, 'dimension'),
        circle(p, 0.9, 'visible', { fill: 'paper' }),
      ],
    ),
  ]
}

interface Lines {
  readonly high: readonly Point[]
  readonly system: readonly Point[]
  readonly crossings: readonly Point[]
  readonly wanted: readonly Point[]
  readonly tests: readonly { readonly at: Point; readonly text: string }[]
}

/** What the lines are called, and the flows that the pump may give. */
function namesOf(f: Frame, lines: Lines, words: WaterPathWords, given: string): readonly Tag[] {
  const { high, system, crossings, wanted, tests } = lines
  const beside = ([x]: Point, heights: readonly number[], away: number): readonly Spot[] =>
    heights.flatMap((y): Spot[] => [
      { at: [x + away, y], anchor: 'start' },
      { at: [x - away, y], anchor: 'end' },
    ])
  const up = (shares: readonly number[]) => shares.map((share) => f.bottom_mm + share * f.height_mm)
  return [
    ...(system.length > 2 ? [{ text: words.system, spots: spotsAlong(system.slice(2)) }] : []),
    { text: words.pumpBand, spots: spotsAlong(high.slice(Math.floor(high.length * 0.4))) },
    { text: given, spots: beside(crossings[1]!, up([0.03, 0.11, 0.19]), 1.6) },
    ...(wanted.length === 0
      ? []
      : [{ text: words.needed, spots: beside(wanted[0]!, up([0.92, 0.8, 0.3, 0.2, 0.1]), 1.2) }]),
    ...tests.map((t) => ({ text: t.text, spots: spotsRound(t.at) })),
  ]
}

/** The pump's band, what lift and hose ask, and the bucket tests between them. Null where one of them is not known. */
export function pumpCurve(given: {
  readonly facts: HydraulicsFacts
  readonly needed_m3_s: number | null
  readonly words: WaterPathWords
  readonly display: Display
  readonly width_mm: number
  readonly height_mm: number
}): Drawing | null {
  const { facts, needed_m3_s, words, display, width_mm, height_mm } = given
  if (!isKnown(facts.pump) || !isKnown(facts.flow) || !isKnown(facts.tubes) || !isKnown(facts.lift)) return null
  const pump = facts.pump.known
  const most_m = Math.max(pump.shutoff_m.high, facts.lift.known.fromLow_m) * ABOVE
  const f: Frame = {
    ...{ left_mm: 0, bottom_mm: 0, width_mm, height_mm },
    x: [0, pump.boxFlow_m3_s * BEYOND],
    y: [0, most_m],
  }
  const [low, high] = [curvePoints(f, pump.low), curvePoints(f, pump.high)]
  const system = systemCurve({
    tubes: facts.tubes.known,
    lift: facts.lift.known,
    water: facts.water,
    most_m: most_m * 1.3,
    runout_m3_s: 2 * pump.boxFlow_m3_s,
  })
    .filter((p) => p.head_m <= most_m && p.flow_m3_s <= f.x[1])
    .map((p) => chartPoint(f, p.flow_m3_s, p.head_m))
  const { states, total_m3_s } = facts.flow.known
  const crossings = [states.low, states.high].map((s) => chartPoint(f, s.flow_m3_s, s.pumpHead_m))
  const total = needed_m3_s === null ? null : needed_m3_s * facts.tubes.known.columns
  const wanted = total === null || total > f.x[1] ? [] : [chartPoint(f, total, f.y[0]), chartPoint(f, total, f.y[1])]
  const tests = pump.tests
    .filter((t) => t.believable && t.head_m !== null && t.head_m <= most_m && t.flow_m3_s <= f.x[1])
    .map((t) => ({ at: chartPoint(f, t.flow_m3_s, t.head_m!), text: fill(words.bucket, { on: t.on }).trim() }))
  const flows = shownText(band(total_m3_s.low, total_m3_s.high, 'm3_s'), display)
  const names = namesOf(f, { high, system, crossings, wanted, tests }, words, flows)
  const flowUnit = show(quantity(0, 'm3_s'), display).unit
  const headUnit = display.lengths === 'in' ? 'ft' : 'm'
  const axes = chartAxes(
    f,
    { unit: 'm3_s', shown: flowUnit, name: words.flow },
    { unit: 'm', shown: headUnit, name: words.head },
    { x: `${words.flow}, ${flowUnit}`, y: `${words.head}, ${headUnit}` },
  )
  return [
    contour([...high, ...[...low].reverse()], null, { fill: 'water' }),
    ...axes,
    polyline(low, 'visible'),
    polyline(high, 'visible'),
    polyline(system, 'cut'),
    ...(wanted.length === 0 ? [] : [line(wanted[0]!, wanted[1]!, 'hidden')]),
    ...whisker(f, crossings),
    ...tests.map((t) => circle(t.at, 1, null, { fill: 'solid' })),
    ...tags({
      names,
      lines: [low, high, system, wanted, ...crossings.map((p): Point[] => [p, [p[0], f.bottom_mm]])],
      within: insideOf(f, { right: CHART_FIGURE_mm, top: CHART_FIGURE_mm }),
      taken: letteringRects(axes, AXIS_AIR_mm),
    }),
  ]
}
