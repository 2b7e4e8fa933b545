import { type HydraulicsFacts, systemCurve } from '../../disciplines/hydraulics/index.ts'
import { compiledPump, type PumpCurve } from '../../disciplines/hydraulics/pump-law.ts'
import { quantity, type Unit } from '../../kernel/units.ts'
import { isKnown } from '../../plan/known.ts'
import { type Display, show } from '../display.ts'
import { leader } from '../drawing/marks.ts'
import { circle, contour, type Drawing, lettering, line, type Point, polyline } from '../drawing/primitives.ts'
import type { WaterPathWords } from '../words/en/water-path.ts'
import { fill } from '../words/fill.ts'

const SIZE_mm = 2.8
const STEPS = 40

/** Round steps of an axis in the owner's own unit: 1, 2 or 5 of a decade, at most seven of them. */
function ticks(most: number, unit: Unit, display: Display): readonly { readonly at: number; readonly text: string }[] {
  const one = Number(show(quantity(1, unit), display).figure.replace(',', '.')) || 0
  const per = unit === 'm3_s' ? flowUnit(display) : one
  const span = most * per
  const decade = 10 ** Math.floor(Math.log10(span / 5))
  const step = [1, 2, 5, 10].map((n) => n * decade).find((s) => span / s <= 7) ?? decade * 10
  const count = Math.floor(span / step + 1e-9)
  return Array.from({ length: count + 1 }, (_, i) => ({
    at: (i * step) / per,
    text: String(Number((i * step).toPrecision(6))),
  }))
}

/** How many of the shown unit of flow make a cubic metre a second. */
const flowUnit = (display: Display): number => (display.lengths === 'in' ? 3600 / 0.003785411784 : 60_000)

interface Frame {
  readonly x: (flow_m3_s: number) => number
  readonly y: (head_m: number) => number
  readonly width_mm: number
  readonly height_mm: number
}

function axes(f: Frame, most: { flow_m3_s: number; head_m: number }, display: Display, words: WaterPathWords): Drawing {
  const flows = ticks(most.flow_m3_s, 'm3_s', display)
  const perHead = display.lengths === 'in' ? 1 / 0.3048 : 1
  const heads = ticks(most.head_m * perHead, 'count', display).map((t) => ({ at: t.at / perHead, text: t.text }))
  return [
    line([0, 0], [f.width_mm, 0], 'visible'),
    line([0, 0], [0, f.height_mm], 'visible'),
    ...flows.flatMap(
      (t): Drawing => [
        line([f.x(t.at), 0], [f.x(t.at), -1.2], 'thin'),
        lettering([f.x(t.at), -4.4], t.text, { size_mm: SIZE_mm, anchor: 'middle' }),
      ],
    ),
    ...heads.flatMap(
      (t): Drawing => [
        line([0, f.y(t.at)], [-1.2, f.y(t.at)], 'thin'),
        lettering([-2, f.y(t.at) - 1], t.text, { size_mm: SIZE_mm, anchor: 'end' }),
      ],
    ),
    lettering([f.width_mm, -8.8], `${words.flow}, ${show(quantity(0, 'm3_s'), display).unit}`, {
      size_mm: SIZE_mm,
      anchor: 'end',
      tone: 'quiet',
    }),
    lettering([-6, f.height_mm + 3], `${words.head}, ${display.lengths === 'in' ? 'ft' : 'm'}`, {
      size_mm: SIZE_mm,
      tone: 'quiet',
    }),
  ]
}

/** Points of a pump's curve down to no head. */
function curvePoints(f: Frame, curve: PumpCurve, most_m3_s: number): Point[] {
  const head = compiledPump(curve)
  const out: Point[] = []
  let last = head(0).head_m
  for (let i = 0; i <= STEPS; i++) {
    const flow = (most_m3_s * i) / STEPS
    const { head_m } = head(flow)
    if (head_m <= 0) {
      // The curve ends on the axis, part of the way from the point before.
      const part = last > 0 ? last / (last - head_m) : 0
      return [...out, [f.x((most_m3_s * (i - 1 + part)) / STEPS), 0]]
    }
    out.push([f.x(flow), f.y(head_m)])
    last = head_m
  }
  return out
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
  const most = {
    flow_m3_s: pump.boxFlow_m3_s * 1.05,
    head_m: Math.max(pump.shutoff_m.high, facts.lift.known.fromLow_m) * 1.12,
  }
  const f: Frame = {
    x: (q) => (q / most.flow_m3_s) * width_mm,
    y: (h) => (h / most.head_m) * height_mm,
    width_mm,
    height_mm,
  }
  const [low, high] = [curvePoints(f, pump.low, most.flow_m3_s), curvePoints(f, pump.high, most.flow_m3_s)]
  const system = systemCurve({
    tubes: facts.tubes.known,
    lift: facts.lift.known,
    water: facts.water,
    most_m: most.head_m * 1.3,
    runout_m3_s: 2 * pump.boxFlow_m3_s,
  })
    .filter((p) => p.head_m <= most.head_m && p.flow_m3_s <= most.flow_m3_s)
    .map((p): Point => [f.x(p.flow_m3_s), f.y(p.head_m)])
  const { states } = facts.flow.known
  const crossings = [states.low, states.high].map((s): Point => [f.x(s.flow_m3_s), f.y(s.pumpHead_m)])
  const total = needed_m3_s === null ? null : needed_m3_s * facts.tubes.known.columns
  const tests = pump.tests.filter((t) => t.believable && t.head_m !== null)
  const middle = high[Math.floor(high.length / 2)] ?? [0, 0]
  return [
    contour([...high, ...[...low].reverse()], null, { fill: 'wash' }),
    polyline(low, 'visible'),
    polyline(high, 'visible'),
    polyline(system, 'cut'),
    ...(total === null || total > most.flow_m3_s
      ? []
      : [
          line([f.x(total), 0], [f.x(total), height_mm], 'hidden'),
          lettering([f.x(total) + 1, 2], words.needed, { size_mm: SIZE_mm, halo: true }),
        ]),
    ...crossings.flatMap(
      (p): Drawing => [line([p[0], 0], p, 'dimension'), circle(p, 0.9, 'visible', { fill: 'paper' })],
    ),
    ...tests.flatMap((t): Drawing => {
      const p: Point = [f.x(t.flow_m3_s), f.y(t.head_m!)]
      return [
        circle(p, 1, null, { fill: 'solid' }),
        ...leader({ to: p, elbow: [p[0] + 7, p[1] - 7], lines: [fill(words.bucket, { on: t.on }).trim()] }),
      ]
    }),
    ...leader({ to: middle, elbow: [middle[0] + 6, middle[1] + 6], lines: [words.pumpBand] }),
    ...(system.length > 2
      ? leader({ to: system.at(-2)!, elbow: [system.at(-2)![0] + 7, system.at(-2)![1] + 3], lines: [words.system] })
      : []),
    ...axes(f, most, display, words),
  ]
}
