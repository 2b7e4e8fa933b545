import type { Check } from '../../findings/check.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { band, quantity } from '../../kernel/units.ts'
import { workingPh } from '../../tables/crop-targets.ts'
import type { Mineral } from '../../tables/equilibria.ts'
import { feedPractice } from '../../tables/feed-practice.ts'
import { ironChelates } from '../../tables/iron-chelates.ts'
import type { BatchFacts } from './batch.ts'
import { shareLevers } from './levers.ts'

/** pH of the batch once it stands in balance with the air. */
const lastingPh: Check<BatchFacts> = {
  id: 'nutrients/ph',
  at: 'feed/pH',
  source: workingPh.source,
  judged: ({ predicted, buffer_eq_m3 }, plan, terms) => {
    const wanted = plan.feed?.pH
    if (wanted === undefined) return [unknown(lastingPh.id, { ...terms, needs: ['feed/pH'] })]
    const { low, high } = predicted.pHInAir
    const half = feedPractice.rows.phBand.high
    const { alarm } = workingPh.rows
    return [
      judge(lastingPh.id, band(low, high, '1'), {
        ...terms,
        must: { min: alarm.low, max: alarm.high },
        want: { min: wanted - half, max: wanted + half },
        slots: { wanted, buffer: quantity(buffer_eq_m3, 'eq_m3') },
        levers: shareLevers(plan),
      }),
    ]
  },
}

/** Rise of the pH while the carbon dioxide of the acid's work leaves. */
const rise: Check<BatchFacts> = {
  id: 'nutrients/ph-rise',
  at: 'feed/pH',
  source: 'Balance.solution',
  judged: ({ predicted: { pHClosed, pHInAir } }, plan, terms) => {
    const mid = ({ low, high }: { readonly low: number; readonly high: number }) => (low + high) / 2
    const slots = { now: band(pHClosed.low, pHClosed.high, '1'), later: band(pHInAir.low, pHInAir.high, '1') }
    const { high } = feedPractice.rows.phRise
    const measured = quantity(mid(pHInAir) - mid(pHClosed), '1')
    return [judge(rise.id, measured, { ...terms, want: { max: high }, slots, levers: shareLevers(plan) })]
  },
}

/** Iron stays dissolved only up to the pH of its chelate. */
const chelate: Check<BatchFacts> = {
  id: 'nutrients/chelate',
  at: 'feed/pH',
  source: ironChelates.source,
  judged: ({ amounts, predicted }, plan, terms) => {
    const held = (['FeEDTA', 'FeDTPA', 'FeEDDHA'] as const).filter((id) => (amounts[id] ?? 0) > 0)
    if (held.length === 0) return []
    const weakest = held.reduce((a, b) => (ironChelates.rows[b].highestPh < ironChelates.rows[a].highestPh ? b : a))
    const want = { max: ironChelates.rows[weakest].highestPh }
    const { low, high } = predicted.pHInAir
    return [
      judge(chelate.id, band(low, high, '1'), {
        ...terms,
        want,
        slots: { chelate: weakest },
        levers: shareLevers(plan),
      }),
    ]
  },
}

/** Predicted conductivity against what the grower expects. */
const strength: Check<BatchFacts> = {
  id: 'nutrients/conductivity',
  at: 'feed/conductivity',
  source: feedPractice.source,
  judged: ({ predicted }, plan, terms) => {
    const wanted = plan.feed?.conductivity_S_m
    if (wanted === undefined || !predicted.conductivityTrusted)
      return [unknown(strength.id, { ...terms, needs: ['feed/conductivity'] })]
    const { low, high } = feedPractice.rows.conductivityMiss
    return [
      judge(strength.id, band(predicted.conductivity_S_m.low, predicted.conductivity_S_m.high, 'S_m'), {
        ...terms,
        must: { min: wanted * (1 - high), max: wanted * (1 + high) },
        want: { min: wanted * (1 - low), max: wanted * (1 + low) },
        slots: { expected: quantity(wanted, 'S_m') },
      }),
    ]
  },
}

/** Nothing falls out in the tank. */
const solids: Check<BatchFacts> = {
  id: 'nutrients/tank-solids',
  at: 'feed',
  source: 'USGS.phreeqc.dat',
  judged: ({ predicted }, plan, terms) => {
    const all = Object.entries(predicted.saturation) as [Mineral, number][]
    if (all.length === 0) return []
    const [mineral, index] = all.reduce((a, b) => (b[1] > a[1] ? b : a))
    const slots = { mineral: { phrase: `mineral-${mineral}` } }
    return [judge(solids.id, quantity(index, '1'), { ...terms, want: { max: 0 }, slots, levers: shareLevers(plan) })]
  },
}

export const solutionChecks: readonly Check<BatchFacts>[] = [lastingPh, rise, chelate, strength, solids]
