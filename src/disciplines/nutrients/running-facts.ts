import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { dumpRules, loopLimits, waterLimits } from '../../tables/water-limits.ts'
import type { BatchFacts } from './batch.ts'
import type { BlendFacts } from './blended.ts'
import { dumpedMass, timeToLimit } from './equations-running.ts'

interface Range {
  readonly low: number
  readonly high: number
}

/** What the tank's own neighbours know of it. */
export interface TankUse {
  /** Volume at the fill line. */
  readonly fill_m3: number | null
  /** Water that the plants of the tank drink in a day. */
  readonly use_m3_d: Range | null
}

/** An ion that stays behind, and when it reaches its limit; infinite where it never does. */
export interface BuildUp {
  readonly ion: 'Na' | 'Cl' | 'SO4'
  readonly start_g_m3: number
  readonly topUp_g_m3: number
  readonly limit_g_m3: number
  readonly days: Range
  /** When it passes what a water to fill up with may hold: from then on the oldest leaves are looked at. */
  readonly watch_g_m3: number
  readonly watchDays: Range
}

export interface RunningFacts {
  readonly volume_m3: number
  readonly use_m3_d: Range
  readonly buildUp: readonly BuildUp[]
  /** Days until as many tank volumes are topped up as a solution lasts. */
  readonly byTopUps_d: Range
  /** The first that trips. */
  readonly dump: { readonly by: 'Na' | 'Cl' | 'SO4' | 'top-ups'; readonly days: Range }
  /** Masses that a dumped tank holds when it is filled anew. */
  readonly nitrogen_kg: number
  readonly phosphorus_kg: number
}

const ballast = ['Na', 'Cl', 'SO4'] as const

/** Accumulation, dump day and what a dumped tank holds. */
export function runningFacts(
  plan: Plan,
  blend: Known<BlendFacts>,
  batch: Known<BatchFacts>,
  tank: TankUse,
): Known<RunningFacts> {
  const volume = tank.fill_m3 ?? plan.feed?.batch_m3
  const topUp = plan.feed?.topUp_m3_d
  const use = topUp === undefined ? tank.use_m3_d : { low: topUp, high: topUp }
  const limits = blend
  const ions = isKnown(limits) ? ballast.map((ion) => [ion, limits.known.ballast_g_m3[ion]] as const) : []
  const needs = [
    ...(isKnown(batch) ? [] : batch.needs),
    ...(volume === undefined || volume <= 0 ? ['feed/batch'] : []),
    ...(use === null || use.low <= 0 ? ['feed/topUp'] : []),
    ...ions.flatMap(([, known]) => (isKnown(known) ? [] : known.needs)),
  ]
  if (!isKnown(batch) || volume === undefined || use === null || needs.length > 0) return { needs }
  const buildUp = ions.flatMap(([ion, known]): BuildUp[] => {
    if (!isKnown(known)) return []
    // Sulfate counts above what the recipe holds: salts bring it as food, the water as ballast.
    const start_g_m3 = ion === 'SO4' ? 0 : batch.known.reached_g_m3[ion]
    const { limit_g_m3 } = loopLimits.rows[ion]
    const watch_g_m3 = waterLimits.rows[ion].caution_g_m3
    const { low, high } = known.known
    const at = (limit: number, topUp_g_m3: number, use_m3_d: number) =>
      timeToLimit({ start_g_m3, topUp_g_m3, limit_g_m3: limit, use_m3_d, volume_m3: volume, uptakeRatio: 0 })
    const until = (limit: number) => ({ low: at(limit, high, use.high), high: at(limit, low, use.low) })
    const told = { ion, start_g_m3, topUp_g_m3: low, limit_g_m3, watch_g_m3 }
    return [{ ...told, days: until(limit_g_m3), watchDays: until(watch_g_m3) }]
  })
  const { caution, limit } = dumpRules.rows.topUpVolumes
  const byTopUps_d = { low: (caution * volume) / use.high, high: (limit * volume) / use.low }
  const all = [...buildUp.map(({ ion, days }) => ({ by: ion, days })), { by: 'top-ups' as const, days: byTopUps_d }]
  const first = all.reduce((a, b) => (b.days.low < a.days.low ? b : a))
  const mass = (nutrient: 'N' | 'P') => dumpedMass({ amounts: batch.known.amounts, nutrient, volume_m3: volume })
  return {
    known: {
      ...{ volume_m3: volume, use_m3_d: use, buildUp, byTopUps_d },
      dump: { by: first.by, days: { low: first.days.low, high: Math.min(...all.map(({ days }) => days.high)) } },
      ...{ nitrogen_kg: mass('N'), phosphorus_kg: mass('P') },
    },
  }
}
