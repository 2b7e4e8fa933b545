/** The pump that would do, from what lift and tubes ask: two box figures, so that even the weaker reading of the box holds. */
import { root } from '../../kernel/solve.ts'
import { pumpPractice } from '../../tables/hydraulic-pumps.ts'
import { practiceRatios } from '../../tables/practice.ts'
import { pumpBand } from './equations-pump.ts'
import type { LiftFacts } from './flow-facts.ts'
import { type NetworkState, solveNetwork } from './network.ts'
import type { PumpCurve } from './pump-law.ts'
import type { SolutionWater } from './temperature.ts'
import type { Tubes } from './tubes.ts'

/** Box figures of a pump. */
export interface PumpBox {
  readonly head_m: number
  readonly flow_m3_s: number
}

/** What lift and tubes ask of a pump. */
export interface Asked {
  readonly tubes: Tubes
  readonly lift: LiftFacts
  readonly water: SolutionWater
}

/** A pump whose head hardly falls: it asks what the tubes take at a head. */
const STIFF_m3_s = 1
/** Heads beyond this are another kind of pump. */
const MOST_m = 60
/** Shares of the largest head that the working point may take: the flatter the pump, the less a band of it spreads. */
const WORKING_SHARES = [0.75, 0.6, 0.45] as const

const leastOf = (tubes: Tubes, s: NetworkState): number =>
  Math.min(...tubes.ends.map((e) => s.byId.get(e.id)!.flow_m3_s / e.columns))

function solved(a: Asked, pump: PumpCurve, level_m: number, viscosity_m2_s: number): NetworkState {
  return solveNetwork({ level_m, pump, viscosity_m2_s, riser: a.tubes.riser })
}

const lowLevel = (a: Asked): number => a.tubes.highest_m - a.lift.fromLow_m

/** Flow and head at which the leanest column gets its flow, at low water and with the thickest of it; null beyond any pump. */
function workingPoint(a: Asked, least_m3_s: number): PumpBox | null {
  const at = (shutoff_m: number) =>
    solved(
      a,
      { kind: 'shape', shutoff_m, runout_m3_s: STIFF_m3_s, exponent: 2 },
      lowLevel(a),
      a.water.cold.viscosity_m2_s,
    )
  const short = (shutoff_m: number) => leastOf(a.tubes, at(shutoff_m)) - least_m3_s
  const low = Math.max(1e-3, a.lift.fromLow_m)
  if (!(low < MOST_m) || short(MOST_m) < 0) return null
  const state = at(short(low) >= 0 ? low : root({ of: short, low, high: MOST_m, within: 1e-5 }))
  return { head_m: state.pumpHead_m, flow_m3_s: state.flow_m3_s }
}

/**
 * Pumps to buy, the smallest first: each gives every column the flow wanted and what wear takes from it, by the
 * straight line between its two box figures, which is the least that such a pump gives.
 */
export function pumpsToBuy(a: Asked, wanted_m3_s: number): readonly PumpBox[] {
  const point = workingPoint(a, wanted_m3_s / (1 - pumpPractice.rows.wornShare.high))
  if (point === null) return []
  const calm_m = a.lift.fromLow_m / practiceRatios.rows['pump-head'].high
  const heads = WORKING_SHARES.map((share) => Math.max(point.head_m / share, calm_m))
  return [...new Set(heads)].map((head_m) => ({ head_m, flow_m3_s: point.flow_m3_s / (1 - point.head_m / head_m) }))
}

/** The most that a column gets of such a pump: the fuller reading of the box, at the fill line, with the thinnest water. */
export function mostFlow(a: Asked, box: PumpBox): number {
  const level_m = lowLevel(a) + (a.lift.fromLow_m - (a.lift.fromFill_m ?? a.lift.fromLow_m))
  const { high } = pumpBand({ shutoff_m: box.head_m, runout_m3_s: box.flow_m3_s })
  const s = solved(a, high, level_m, a.water.warm.viscosity_m2_s)
  return Math.max(...a.tubes.ends.map((e) => s.byId.get(e.id)!.flow_m3_s / e.columns))
}
