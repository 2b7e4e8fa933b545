import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { pumpPractice } from '../../tables/hydraulic-pumps.ts'
import { balance, boresOf, flowSpread } from './balance.ts'
import { gateValveClosed } from './equations-minor.ts'
import { wornPump } from './equations-pump.ts'
import { type NetworkState, solveNetwork } from './network.ts'
import type { PumpFacts } from './pump-facts.ts'
import type { PumpCurve } from './pump-law.ts'
import { type Range, range } from './range.ts'
import type { SolutionWater } from './temperature.ts'
import type { Tubes } from './tubes.ts'

/** What the water must be lifted, pump to highest open end. */
export interface LiftFacts {
  readonly fromLow_m: number
  readonly fromFill_m: number | null
  /** Height of the lowest open end over the highest set level; null without a fill line. */
  readonly lowestOverFill_m: number | null
}

export interface ColumnFlow {
  readonly id: string
  /** Flow that one column gets. */
  readonly flow_m3_s: Range
  readonly starved: 'no' | 'in part' | 'yes'
  readonly velocity_m_s: Range
  /** Valve that evens it against the hardest column to reach, on the bore of its drop; null where nothing can. */
  readonly valveLosses: number | null
  /** The same as a gate valve, share closed; null where it cannot be set by eye. */
  readonly valveClosed: number | null
  /** Bore of a drop that does the same without a valve; null where nothing can. */
  readonly evenBore_m: number | null
}

export interface FlowFacts {
  /** Of the column that gets least, at the low line: the worst hour. */
  readonly least_m3_s: Range
  /** Of the column that gets most, at the fill line where it is set. */
  readonly most_m3_s: Range
  readonly total_m3_s: Range
  /** Of the column that gets least, with the tank at its fill line; null without one. */
  readonly leastAtFill_m3_s: Range | null
  /** Of the column that gets least, after the pump has worn as pumps do. */
  readonly worn_m3_s: Range
  readonly pumpHead_m: Range
  readonly loss_m: Range
  readonly riserSpeed_m_s: Range
  readonly columns: readonly ColumnFlow[]
  readonly spread: Range
  /** Flow of each column once valves even them, over the pump's band; null where the columns are one or nothing can. */
  readonly even_m3_s: Range | null
  /** Heads that the tubes ask for, by flow of the pump: for the drawing. */
  readonly states: { readonly low: NetworkState; readonly high: NetworkState }
}

interface Levels {
  readonly low_m: number
  readonly fill_m: number | null
}

export function liftFacts(tubes: Tubes, levels: Levels): LiftFacts {
  return {
    fromLow_m: tubes.highest_m - levels.low_m,
    fromFill_m: levels.fill_m === null ? null : tubes.highest_m - levels.fill_m,
    lowestOverFill_m: levels.fill_m === null ? null : tubes.lowest_m - levels.fill_m,
  }
}

interface Given {
  readonly tubes: Tubes
  readonly pump: PumpFacts
  readonly water: SolutionWater
  readonly levels: Levels
}

const solved = (g: Given, level_m: number, pump: PumpCurve, viscosity_m2_s: number): NetworkState =>
  solveNetwork({ level_m, pump, viscosity_m2_s, riser: g.tubes.riser })

const perColumn = (g: Given, s: NetworkState): number[] =>
  g.tubes.ends.map((e) => s.byId.get(e.id)!.flow_m3_s / e.columns)

/** The columns evened for a pump, tank at its low line. */
function evened(g: Given, pump: PumpCurve, viscosity_m2_s: number) {
  if (g.tubes.ends.length < 2) return null
  const network = { level_m: g.levels.low_m, pump, viscosity_m2_s, riser: g.tubes.riser }
  const even = balance(network)
  return even === null ? null : { network, even }
}

type Evened = ReturnType<typeof evened>

function columnFlows(g: Given, low: NetworkState, high: NetworkState, weak: Evened): readonly ColumnFlow[] {
  const valves = new Map((weak?.even.ends ?? []).map((e) => [e.id, e.valveLoss]))
  const bores = weak === null ? null : boresOf(weak.network, weak.even)
  return g.tubes.ends.map((end) => {
    const [a, b] = [low.byId.get(end.id)!, high.byId.get(end.id)!]
    const valveLosses = valves.get(end.id) ?? null
    return {
      id: end.id,
      flow_m3_s: range(a.flow_m3_s / end.columns, b.flow_m3_s / end.columns),
      starved: a.starved && b.starved ? 'yes' : a.starved || b.starved ? 'in part' : 'no',
      velocity_m_s: range(a.velocity_m_s, b.velocity_m_s),
      valveLosses,
      valveClosed: valveLosses === null ? null : gateValveClosed({ fittingLoss: valveLosses }),
      evenBore_m: bores?.get(end.id) ?? null,
    }
  })
}

export function flowFacts(g: Given): FlowFacts {
  const { pump, water, levels, tubes } = g
  const low = solved(g, levels.low_m, pump.low, water.cold.viscosity_m2_s)
  const high = solved(g, levels.low_m, pump.high, water.warm.viscosity_m2_s)
  const wornShare = pumpPractice.rows.wornShare.high
  const worn = solved(g, levels.low_m, wornPump({ curve: pump.low, wornShare }), water.cold.viscosity_m2_s)
  const wornHigh = solved(g, levels.low_m, wornPump({ curve: pump.high, wornShare }), water.warm.viscosity_m2_s)
  const fill_m = levels.fill_m
  const fullLow = fill_m === null ? null : solved(g, fill_m, pump.low, water.cold.viscosity_m2_s)
  const fullHigh = fill_m === null ? null : solved(g, fill_m, pump.high, water.warm.viscosity_m2_s)
  const least = (s: NetworkState) => Math.min(...perColumn(g, s))
  const most = (s: NetworkState) => Math.max(...perColumn(g, s))
  const weak = evened(g, pump.low, water.cold.viscosity_m2_s)
  const strong = weak === null ? null : evened(g, pump.high, water.warm.viscosity_m2_s)
  const columns = columnFlows(g, low, high, weak)
  return {
    least_m3_s: range(least(low), least(high)),
    most_m3_s: range(most(fullLow ?? low), most(fullHigh ?? high)),
    total_m3_s: range(low.flow_m3_s, high.flow_m3_s),
    leastAtFill_m3_s: fullLow && fullHigh ? range(least(fullLow), least(fullHigh)) : null,
    worn_m3_s: range(least(worn), least(wornHigh)),
    pumpHead_m: range(low.pumpHead_m, high.pumpHead_m),
    loss_m: range(
      low.pumpHead_m - (tubes.highest_m - levels.low_m),
      high.pumpHead_m - (tubes.highest_m - levels.low_m),
    ),
    riserSpeed_m_s: range(low.runs[0]!.velocity_m_s, (fullHigh ?? high).runs[0]!.velocity_m_s),
    columns,
    spread: range(flowSpread(perColumn(g, low)), flowSpread(perColumn(g, high))),
    even_m3_s: weak && strong ? range(weak.even.flow_m3_s, strong.even.flow_m3_s) : null,
    states: { low, high },
  }
}

/** Flow for which what spreads the water is judged: of the pump where it brings any, else what is wanted. */
export function columnFlow(plan: Plan, flow: Known<FlowFacts>): Known<Range> {
  const wanted_m3_s = plan.riser?.neededFlow_m3_s
  const wanted: Known<Range> =
    wanted_m3_s === undefined ? { needs: ['riser/neededFlow'] } : { known: range(wanted_m3_s, wanted_m3_s) }
  if (!isKnown(flow)) return isKnown(wanted) ? wanted : flow
  const brought = { low: flow.known.least_m3_s.low, high: flow.known.most_m3_s.high }
  // A pump that lifts nothing says nothing of what stands above it.
  return brought.high > 0 || !isKnown(wanted) ? { known: brought } : wanted
}

const CURVE_STEPS = 24

/** What lift and tubes ask of a pump, by its flow: one curve for any tree, found by ever stronger pumps, closest where it begins. */
export function systemCurve(given: {
  readonly tubes: Tubes
  readonly lift: LiftFacts
  readonly water: SolutionWater
  readonly most_m: number
  readonly runout_m3_s: number
}): readonly { readonly flow_m3_s: number; readonly head_m: number }[] {
  const { tubes, lift, water, most_m, runout_m3_s } = given
  const level_m = tubes.highest_m - lift.fromLow_m
  const from_m = Math.max(0, tubes.lowest_m - level_m)
  if (!(most_m > from_m)) return []
  const points = Array.from({ length: CURVE_STEPS }, (_, i) => {
    const shutoff_m = from_m + (most_m - from_m) * ((i + 1) / CURVE_STEPS) ** 2
    const pump: PumpCurve = { kind: 'shape', shutoff_m, runout_m3_s, exponent: 2 }
    const s = solveNetwork({ level_m, pump, viscosity_m2_s: water.cold.viscosity_m2_s, riser: tubes.riser })
    return { flow_m3_s: s.flow_m3_s, head_m: s.pumpHead_m }
  })
  return [{ flow_m3_s: 0, head_m: from_m }, ...points]
}
