import type { Check } from '../../findings/check.ts'
import type { Finding } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { among } from '../../findings/levers.ts'
import { band, quantity } from '../../kernel/units.ts'
import { isKnown } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { cropTargets } from '../../tables/crop-targets.ts'
import { ecScales } from '../../tables/ec-scales.ts'
import { feedPractice, penBand } from '../../tables/feed-practice.ts'
import { sanitisers } from '../../tables/sanitisers.ts'
import { losers } from './crop-strength.ts'
import type { NutrientsFacts } from './index.ts'
import { shareLevers } from './levers.ts'
import type { RunningFacts } from './running-facts.ts'

/** Day on which the first of sodium, chloride and the top-ups calls for a new solution. */
const dump: Check<RunningFacts> = {
  id: 'nutrients/dump-day',
  at: 'feed/topUp',
  source: 'Carmassi2003',
  judged: ({ dump: { by, days }, use_m3_d, volume_m3 }, plan, terms) => [
    judge(dump.id, band(days.low, days.high, 'd'), {
      ...terms,
      want: { min: feedPractice.rows.dumpDays.low },
      slots: {
        by: { phrase: `dump-${by}` },
        use: band(use_m3_d.low, use_m3_d.high, 'm3_d'),
        volume: quantity(volume_m3, 'm3'),
      },
      levers: shareLevers(plan),
    }),
  ],
}

export const runningChecks: readonly Check<RunningFacts>[] = [dump]

/** Crops of one tank share a band of strength, and the batch lies in it. */
export function cropFindings({ crops, batch }: NutrientsFacts): Finding[] {
  const { shared_S_m: shared, strongest, weakest } = crops
  if (shared === null || strongest === null || weakest === null) return []
  const at = 'crops'
  const slots = { strongest, weakest }
  const together = judge('nutrients/crops-together', quantity(shared.high - shared.low, 'S_m'), {
    ...{ at, source: cropTargets.source, must: { min: 0 }, slots },
  })
  if (!isKnown(batch)) return [together]
  const { low, high } = batch.known.predicted.conductivity_S_m
  const want = shared.low <= shared.high ? { min: shared.low, max: shared.high } : {}
  const out = losers(crops, (low + high) / 2)
  const said = out.length === 0 ? ({ phrase: 'nobody' } as const) : [...new Set(out)].join(', ')
  const terms = { at: 'feed/conductivity', source: cropTargets.source, want, slots: { losers: said } }
  return [together, judge('nutrients/crop-strength', quantity((low + high) / 2, 'S_m'), terms)]
}

/** What the pH pen may be trusted with. */
function pen(plan: Plan, { pen: { pH } }: NutrientsFacts): Finding[] {
  if (plan.feed === undefined) return []
  const terms = { at: 'feed/penCalibrated', source: penBand.source }
  if (pH === null) return [unknown('nutrients/pen', { ...terms, needs: ['feed/penCalibrated'] })]
  const { want, must } = penBand.rows.pH
  const slots = { days: quantity(plan.feed.penCalibrated_d ?? 0, 'd') }
  return [judge('nutrients/pen', quantity(pH, '1'), { ...terms, must: { max: must }, want: { max: want }, slots })]
}

/** "ppm" is a multiple of conductivity, and there are three. */
function penScale(plan: Plan, { pen: { scale } }: NutrientsFacts): Finding[] {
  if (plan.feed === undefined) return []
  const terms = { at: 'feed/penScale', source: ecScales.source }
  if (scale === null) return [unknown('nutrients/pen-scale', { ...terms, needs: ['feed/penScale'] })]
  // one mS/cm serves as the example where the plan expects nothing
  const expected = plan.feed.conductivity_S_m ?? 0.1
  const shown = (row: 'ppm-500' | 'ppm-640' | 'ppm-700') => Math.round(expected * ecScales.rows[row].perS_m)
  const slots = {
    ...{ expected: quantity(expected, 'S_m'), on500: shown('ppm-500'), on640: shown('ppm-640') },
    on700: shown('ppm-700'),
  }
  const meanings = scale === 'unmarked' ? Object.keys(slots).filter((k) => k.startsWith('on')).length : 1
  return [judge('nutrients/pen-scale', quantity(meanings, 'count'), { ...terms, want: { max: 1 }, slots })]
}

/** A sanitiser as strong as such a product can be, and no plants in the tower. */
function sanitiser(plan: Plan, { sanitiser: facts }: NutrientsFacts): Finding[] {
  if (facts === null) return []
  const { weakest, strongest } = sanitisers.rows[facts.product]
  const add = facts.add_m3 === null ? ({ phrase: 'nothing' } as const) : band(facts.add_m3.low, facts.add_m3.high, 'm3')
  const slots = {
    ...{ product: { phrase: `sanitiser-${facts.product}` }, add, water: quantity(facts.water_m3 ?? 0, 'm3') },
    ...{ percent: Number((facts.strength * 100).toPrecision(4)), weakest: weakest * 100, strongest: strongest * 100 },
  }
  const terms = { at: 'feed/sanitiser/strength', source: sanitisers.source, safety: true }
  const strength = judge('nutrients/sanitiser', quantity(facts.strength * 100, 'count'), {
    ...{ ...terms, slots, must: { min: weakest * 100, max: strongest * 100 } },
  })
  const { plants } = plan.feed?.sanitiser ?? {}
  const at = 'feed/sanitiser/plants'
  const out = { ...terms, at, must: { max: 0 }, levers: [among(at, ['out'])] }
  if (plants === undefined) return [strength, unknown('nutrients/sanitiser-plants', { ...out, needs: [at] })]
  return [strength, judge('nutrients/sanitiser-plants', quantity(plants === 'in' ? 1 : 0, 'count'), out)]
}

const forbidden: readonly string[] = ['street drain', 'stream or lake']

/** Spent solution goes where plants can use it, never into open water. */
function disposal(plan: Plan, { running }: NutrientsFacts): Finding[] {
  const to = plan.feed?.dumpTo
  if (plan.feed === undefined) return []
  const terms = { at: 'feed/dumpTo', source: 'common-practice' as const, safety: true }
  if (to === undefined) return [unknown('nutrients/disposal', { ...terms, needs: ['feed/dumpTo'] })]
  const slots = {
    to: { phrase: `dump-to-${to.replaceAll(' ', '-')}` },
    nitrogen: isKnown(running) ? quantity(running.known.nitrogen_kg, 'kg') : ({ phrase: 'some' } as const),
    phosphorus: isKnown(running) ? quantity(running.known.phosphorus_kg, 'kg') : ({ phrase: 'some' } as const),
  }
  const levers = [among('feed/dumpTo', ['beds or shrubs', 'compost'])]
  const measured = quantity(forbidden.includes(to) ? 1 : 0, 'count')
  return [judge('nutrients/disposal', measured, { ...terms, must: { max: 0 }, slots, levers })]
}

export const careFindings = (plan: Plan, facts: NutrientsFacts): readonly Finding[] => [
  ...cropFindings(facts),
  ...pen(plan, facts),
  ...penScale(plan, facts),
  ...sanitiser(plan, facts),
  ...disposal(plan, facts),
]
