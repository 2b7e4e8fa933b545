import { isKnown, type Known, needed } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { pumpPractice } from '../../tables/hydraulic-pumps.ts'
import { statedPractice } from '../../tables/stated.ts'
import { bucketFit, bucketFlow, bucketHead } from './equations-bucket.ts'
import { pumpBand, pumpOfStrength, pumpStrength, wornPump } from './equations-pump.ts'
import type { Run } from './network-tree.ts'
import { lossAndSlope, pipeLaw } from './pipe-law.ts'
import { compiledPump, type PumpCurve, type PumpPoint } from './pump-law.ts'
import { type HeadAt, history, lastDay, misread, type TestFacts, type TestHistory, usable } from './pump-tests.ts'
import { type Range, range } from './range.ts'

export interface PumpFacts extends TestHistory {
  /** The two curves between which the pump lies. */
  readonly low: PumpCurve
  readonly high: PumpCurve
  readonly from: 'box' | 'curve' | 'tests'
  readonly shutoff_m: Range
  /** Largest flow on the box or on the maker's curve. */
  readonly boxFlow_m3_s: number
  /** Largest head on the box or on the maker's curve. */
  readonly boxHead_m: number
  readonly tests: readonly TestFacts[]
  /** Against the box or the maker's curve, by the last tests; null without any. */
  readonly strength: Range | null
}

interface StatedPoint extends PumpPoint {
  /** Its place in the plan's list, from 0. */
  readonly index: number
}

/** A maker's curve as typed, and the two points between which its head rises most while the flow grows or stays. */
export interface StatedCurve {
  readonly points: readonly StatedPoint[]
  /** 0 where it only falls. */
  readonly rise_m: number
  readonly below: StatedPoint
  readonly above: StatedPoint
  readonly largest_m: number
}

/** Points of the maker's curve by flow; null where there are fewer than two whole ones. */
export function statedCurve(plan: Plan): StatedCurve | null {
  const points = (plan.pump?.curve ?? [])
    .flatMap(({ flow_m3_s, head_m }, index): StatedPoint[] =>
      flow_m3_s === undefined || head_m === undefined ? [] : [{ index, flow_m3_s, head_m }],
    )
    .sort((a, b) => a.flow_m3_s - b.flow_m3_s || a.head_m - b.head_m)
  if (points.length < 2) return null
  let [rise_m, below, above, lowest] = [0, points[0]!, points[1]!, points[0]!]
  for (const p of points.slice(1)) {
    if (p.head_m - lowest.head_m > rise_m) [rise_m, below, above] = [p.head_m - lowest.head_m, lowest, p]
    if (p.head_m < lowest.head_m) lowest = p
  }
  return { points, rise_m, below, above, largest_m: Math.max(...points.map((p) => p.head_m)) }
}

/** The curve to reckon with; null where it cannot be one: it rises, or stays level from end to end. */
function makersCurve(plan: Plan): PumpCurve | null {
  const stated = statedCurve(plan)
  if (stated === null) return null
  const points = stated.points.filter((p, i) => p.flow_m3_s !== stated.points[i - 1]?.flow_m3_s)
  const falls = points.length >= 2 && points[0]!.head_m > points.at(-1)!.head_m
  const hump_m = statedPractice.rows.curveHump.value * stated.largest_m
  if (!falls || stated.rise_m > hump_m) return null
  return { kind: 'points', points: points.map(({ flow_m3_s, head_m }) => ({ flow_m3_s, head_m })) }
}

function headAt(plan: Plan, riser: Run | null, viscosity_m2_s: number): HeadAt {
  if (riser === null) return () => null
  const law = pipeLaw(riser, viscosity_m2_s)
  return (index, flow_m3_s) => {
    const outlet_m = plan.pump?.tests?.[index]?.outletHeight_m
    const { loss_m } = lossAndSlope(law, flow_m3_s)
    return outlet_m === undefined ? null : bucketHead({ outlet_m, level_m: 0, loss_m })
  }
}

function testsOf(plan: Plan, at: HeadAt, box: Pick<PumpFacts, 'boxFlow_m3_s' | 'boxHead_m'>): TestFacts[] {
  return (plan.pump?.tests ?? []).flatMap((t, index) => {
    if (t.volume_m3 === undefined || t.time_s === undefined) return []
    const flow_m3_s = bucketFlow({ volume_m3: t.volume_m3, time_s: t.time_s })
    const believable = flow_m3_s < box.boxFlow_m3_s && (t.outletHeight_m ?? 0) < box.boxHead_m
    return [{ index, on: t.on ?? '', flow_m3_s, head_m: at(index, flow_m3_s), believable }]
  })
}

const shutoffs = (low: PumpCurve, high: PumpCurve): Range =>
  range(compiledPump(low)(0).head_m, compiledPump(high)(0).head_m)

function fromCurve(
  plan: Plan,
  curve: PumpCurve,
  tests: readonly TestFacts[],
  at: HeadAt,
  box: Pick<PumpFacts, 'boxFlow_m3_s' | 'boxHead_m'>,
): PumpFacts {
  const good = tests.filter(usable)
  const told = history(curve, good, at)
  const error = pumpPractice.rows.bucketError.high
  const now = lastDay(good)
  if (now.length === 0) {
    const worn = wornPump({ curve, wornShare: plan.pump?.worn ?? 0 })
    const shutoff_m = shutoffs(worn, worn)
    return { low: worn, high: worn, from: 'curve', shutoff_m, ...box, tests, strength: null, ...told }
  }
  const of = (factor: number) => misread(now, factor, at).map((point) => pumpStrength({ curve, point }))
  const strength = { low: Math.min(...of(1 - error)), high: Math.max(...of(1 + error)) }
  const low = pumpOfStrength({ curve, strength: strength.low })
  const high = pumpOfStrength({ curve, strength: strength.high })
  return { low, high, from: 'tests', shutoff_m: shutoffs(low, high), ...box, tests, strength, ...told }
}

function fromBox(
  plan: Plan,
  box: { shutoff_m: number; runout_m3_s: number },
  tests: readonly TestFacts[],
  at: HeadAt,
): PumpFacts {
  const good = tests.filter(usable)
  const { low: straight, high: bent } = pumpPractice.rows.curveExponent
  const middle: PumpCurve = { kind: 'shape', ...box, exponent: (straight + bent) / 2 }
  const rest = { boxFlow_m3_s: box.runout_m3_s, boxHead_m: box.shutoff_m, tests, ...history(middle, good, at) }
  const now = lastDay(good)
  if (now.length === 0) {
    const shapes = pumpBand(box)
    const wornShare = plan.pump?.worn ?? 0
    const low = wornPump({ curve: shapes.low, wornShare })
    const high = wornPump({ curve: shapes.high, wornShare })
    return { low, high, from: 'box', shutoff_m: shutoffs(low, high), strength: null, ...rest }
  }
  const error = pumpPractice.rows.bucketError.high
  const below = bucketFit({ ...box, tests: misread(now, 1 - error, at) })
  const above = bucketFit({ ...box, tests: misread(now, 1 + error, at) })
  const strength = range(below.strength, above.strength)
  const [low, high] = [below.curve, above.curve]
  return { low, high, from: 'tests', shutoff_m: shutoffs(low, high), strength, ...rest }
}

/** What the pump gives, from its box, its maker's curve or bucket tests; the later outranks the earlier. */
export function pumpFacts(plan: Plan, riser: Run | null, viscosity_m2_s: number): Known<PumpFacts> {
  const curve = makersCurve(plan)
  const at = headAt(plan, riser, viscosity_m2_s)
  if (curve !== null && curve.kind === 'points') {
    const box = {
      boxFlow_m3_s: plan.pump?.maxFlow_m3_s ?? curve.points.at(-1)!.flow_m3_s,
      boxHead_m: plan.pump?.maxHead_m ?? curve.points[0]!.head_m,
    }
    return { known: fromCurve(plan, curve, testsOf(plan, at, box), at, box) }
  }
  const given = needed({
    shutoff_m: ['pump/maxHead', plan.pump?.maxHead_m],
    runout_m3_s: ['pump/maxFlow', plan.pump?.maxFlow_m3_s],
  })
  if (!isKnown(given)) return given
  const { runout_m3_s, shutoff_m } = given.known
  const tests = testsOf(plan, at, { boxFlow_m3_s: runout_m3_s, boxHead_m: shutoff_m })
  return { known: fromBox(plan, given.known, tests, at) }
}
