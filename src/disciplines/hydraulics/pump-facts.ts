import { isKnown, type Known, needed } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { pumpPractice } from '../../tables/hydraulic-pumps.ts'
import { waterPathPractice } from '../../tables/water-path.ts'
import { bucketFit, bucketFlow, bucketHead, type DatedTest, type WearRecord, wearRecord } from './equations-bucket.ts'
import { pumpBand, pumpOfStrength, pumpStrength, wornPump } from './equations-pump.ts'
import type { Run } from './network-tree.ts'
import { lossAndSlope, pipeLaw } from './pipe-law.ts'
import { compiledPump, type PumpCurve, type PumpPoint } from './pump-law.ts'
import { type Range, range } from './range.ts'

/** A bucket test as computed. */
export interface TestFacts {
  /** Its place in the plan's list, from 0. */
  readonly index: number
  readonly on: string
  readonly flow_m3_s: number
  /** Head that the pump gave; null where the riser's loss is not known. */
  readonly head_m: number | null
  /** False where the flow, or the height of the outlet alone, is beyond what the box says the pump can give at all. */
  readonly believable: boolean
}

export interface PumpFacts {
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
  readonly wear: WearRecord | null
}

/** Days of a date written year-month-day, on the proleptic calendar; null for any other text. */
export function dayNumber(text: string): number | null {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text.trim())
  if (!match) return null
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])]
  if (month < 1 || month > 12 || day < 1 || day > 31) return null
  // A year that begins in March puts the leap day at its end.
  const y = month <= 2 ? year - 1 : year
  const m = (month + 9) % 12
  return 365 * y + Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400) + Math.floor((153 * m + 2) / 5) + day
}

function makersCurve(plan: Plan): PumpCurve | null {
  const byFlow = new Map<number, PumpPoint>()
  for (const p of plan.pump?.curve ?? [])
    if (p.flow_m3_s !== undefined && p.head_m !== undefined)
      byFlow.set(p.flow_m3_s, { flow_m3_s: p.flow_m3_s, head_m: p.head_m })
  const points = [...byFlow.values()].sort((a, b) => a.flow_m3_s - b.flow_m3_s)
  const falls = points.length >= 2 && points[0]!.head_m > points.at(-1)!.head_m
  return falls ? { kind: 'points', points } : null
}

/** Head that the pump gave in a test at a flow; null where the riser or the height is not known. */
type HeadAt = (index: number, flow_m3_s: number) => number | null

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

/** The tests were the flow off by a share: through the same hose, so that the head moves with it. */
const misread = (tests: readonly Usable[], factor: number, at: HeadAt): readonly PumpPoint[] =>
  tests.map((t) => ({ flow_m3_s: t.flow_m3_s * factor, head_m: at(t.index, t.flow_m3_s * factor) ?? t.head_m }))

type Usable = TestFacts & { readonly head_m: number }
const usable = (t: TestFacts): t is Usable => t.believable && t.head_m !== null && t.head_m > 0

/** The tests of the last day: what the pump is now. */
function lastDay(tests: readonly Usable[]): readonly Usable[] {
  const dated = tests.map((t) => ({ t, day: dayNumber(t.on) }))
  const days = dated.flatMap((d) => (d.day === null ? [] : [d.day]))
  if (days.length === 0) return tests.slice(-1)
  const last = Math.max(...days)
  return dated.filter((d) => d.day === last).map((d) => d.t)
}

function wearOf(curve: PumpCurve, tests: readonly Usable[]): WearRecord | null {
  const dated = tests.map((t, i): DatedTest => ({ ...t, at_d: dayNumber(t.on) ?? i }))
  const inDays = tests.every((t) => dayNumber(t.on) !== null)
  if (tests.length < 2) return null
  const record = wearRecord({ curve, tests: dated, leastStrength: waterPathPractice.rows.weakPump.value })
  // Without dates the order alone tells wear from noise; a trend per day would be invented.
  return inDays ? record : { ...record, trend_per_d: null, least_d: null }
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
  const wear = wearOf(curve, good)
  const error = pumpPractice.rows.bucketError.high
  const now = lastDay(good)
  if (now.length === 0) {
    const worn = wornPump({ curve, wornShare: plan.pump?.worn ?? 0 })
    const shutoff_m = shutoffs(worn, worn)
    return { low: worn, high: worn, from: 'curve', shutoff_m, ...box, tests, strength: null, wear }
  }
  const of = (factor: number) => misread(now, factor, at).map((point) => pumpStrength({ curve, point }))
  const strength = { low: Math.min(...of(1 - error)), high: Math.max(...of(1 + error)) }
  const low = pumpOfStrength({ curve, strength: strength.low })
  const high = pumpOfStrength({ curve, strength: strength.high })
  return { low, high, from: 'tests', shutoff_m: shutoffs(low, high), ...box, tests, strength, wear }
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
  const wear = wearOf(middle, good)
  const rest = { boxFlow_m3_s: box.runout_m3_s, boxHead_m: box.shutoff_m, tests, wear }
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
