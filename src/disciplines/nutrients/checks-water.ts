import type { Check } from '../../findings/check.ts'
import type { Finding, Lever } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { among } from '../../findings/levers.ts'
import { band, quantity } from '../../kernel/units.ts'
import { isKnown } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { feedPractice } from '../../tables/feed-practice.ts'
import { waterLimits } from '../../tables/water-limits.ts'
import { type Ballast, type BlendFacts, sharesOf } from './blended.ts'
import { shareLevers } from './levers.ts'
import type { SourceFacts, TypedSlip } from './source-water.ts'

/** Shares of the waters sum to all. */
export function shares(plan: Plan): Finding[] {
  const sources = plan.water?.sources ?? []
  if (sources.length === 0) return []
  const { low, high } = feedPractice.rows.shareSum
  const terms = { at: 'water/sources', must: { min: low, max: high }, source: feedPractice.source }
  // Two shares that nobody told, or that could not be read, leave the sum open.
  const open = sources.flatMap((s, i) => (s.share === undefined ? [`water/sources/${i}/share`] : []))
  if (open.length > 1) return [unknown('nutrients/shares', { ...terms, needs: open.slice(1) })]
  return [judge('nutrients/shares', quantity(sharesOf(plan).sum, '1'), terms)]
}

/** Number in the unit of the field, to the digits that a report has. */
const insteadText = ({ instead, path }: TypedSlip): string =>
  `${Number(instead.toPrecision(4))} ${path.includes('/equivalents/') || path.endsWith('/alkalinity') ? 'meq/L' : 'mg/L'}`

/** A slip can be mended where its field is a text with a unit. */
const mend = (slips: readonly TypedSlip[]): readonly Lever[] =>
  slips
    .filter(({ path }) => !path.endsWith('/hardnessGerman'))
    .slice(0, 3)
    .map((slip) => among(slip.path, [insteadText(slip)]))

/** Plus and minus of each report agree. */
const balance: Check<BlendFacts> = {
  id: 'nutrients/charge-balance',
  at: 'water/sources',
  source: 'Balance.solution',
  judged: ({ sources }, _, { source }) =>
    sources.flatMap((water) => {
      if (water.balance === null) return []
      const { low, high } = feedPractice.rows.chargeBalance
      const { error, cations_mol_m3, anions_mol_m3 } = water.balance
      return [
        judge(balance.id, quantity(Math.abs(error), '1'), {
          ...{ at: `${water.at}/analysis`, source, must: { max: high }, want: { max: low } },
          slots: {
            name: water.name,
            plus: quantity(cations_mol_m3, 'eq_m3'),
            minus: quantity(anions_mol_m3, 'eq_m3'),
            hint: hintOf(water),
          },
          levers: mend(water.slips),
        }),
      ]
    }),
}

function hintOf({ slips, missing }: SourceFacts) {
  const [slip] = slips
  if (slip) return { phrase: 'balance-slip', with: { ion: slip.name, basis: slip.basis } }
  if (!missing) return { phrase: 'balance-fine' }
  const lack = band(missing.low_mol_m3, missing.high_mol_m3, 'mol_m3')
  return { phrase: 'balance-missing', with: { ion: missing.name, lack } }
}

/** A number that balances the report when it is read in another unit. */
const slips: Check<BlendFacts> = {
  id: 'nutrients/unit-slip',
  at: 'water/sources',
  source: 'Balance.solution',
  judged: ({ sources }, _, { source }) =>
    sources.flatMap((water) => {
      const [slip] = water.slips
      if (water.balance === null || !slip) return []
      const terms = { at: slip.path, source, must: { max: 0 }, levers: mend([slip]) }
      const slots = {
        ion: slip.name,
        typed: Number(slip.reported.toPrecision(4)),
        basis: slip.basis,
        instead: insteadText(slip),
      }
      return [judge(slips.id, quantity(water.slips.length, 'count'), { ...terms, slots })]
    }),
}

/** The conductivity of the reported ions against the reported conductivity. */
const sourceConductivity: Check<BlendFacts> = {
  id: 'nutrients/source-conductivity',
  at: 'water/sources',
  source: feedPractice.source,
  judged: ({ sources }, _, { source }) =>
    sources.flatMap((water) => {
      if (water.computed_S_m === null) return []
      const at = `${water.at}/analysis/conductivity`
      if (water.reported_S_m === null || water.reported_S_m === 0)
        return [unknown(sourceConductivity.id, { at, source, needs: [at] })]
      const [want, must] = [feedPractice.rows.sourceConductivity, feedPractice.rows.sourceConductivityMust]
      const slots = {
        name: water.name,
        computed: quantity(water.computed_S_m, 'S_m'),
        reported: quantity(water.reported_S_m, 'S_m'),
      }
      const bands = { must: { min: must.low, max: must.high }, want: { min: want.low, max: want.high } }
      return [
        judge(sourceConductivity.id, quantity(water.computed_S_m / water.reported_S_m, '1'), {
          at,
          source,
          ...bands,
          slots,
        }),
      ]
    }),
}

/** One ion of the blend against its limit for a water that is topped up for weeks. */
const ballastCheck = (ion: Ballast, id: Finding['id']): Check<BlendFacts> => ({
  id,
  at: 'water/sources',
  source: waterLimits.source,
  judged: ({ ballast_g_m3 }, plan, terms) => {
    const found = ballast_g_m3[ion]
    if (!isKnown(found)) return [unknown(id, { ...terms, needs: found.needs })]
    const { low, high } = found.known
    const { caution_g_m3, limit_g_m3 } = waterLimits.rows[ion]
    const measured = high > low ? band(low, high, 'g_m3') : quantity(low, 'g_m3')
    const bands = { must: { max: limit_g_m3 }, want: { max: caution_g_m3 } }
    return [judge(id, measured, { ...terms, ...bands, levers: shareLevers(plan) })]
  },
})

/** Fluoride is carried along and judged by drinking water only: what it does in leaves is outside this model. */
const fluoride: Check<BlendFacts> = {
  id: 'nutrients/fluoride',
  at: 'water/sources',
  source: 'WHO.drinking',
  judged: ({ sources, fluoride_g_m3 }, plan, terms) => {
    const most = Math.max(0, ...sources.map((s) => (s.share > 0 ? s.fluoride_g_m3 : 0)))
    if (most === 0) return []
    const want = { max: feedPractice.rows.fluoride.high }
    const slots = { undiluted: quantity(most, 'g_m3') }
    return [
      judge(fluoride.id, quantity(fluoride_g_m3, 'g_m3'), {
        ...terms,
        want,
        slots,
        safety: true,
        levers: shareLevers(plan),
      }),
    ]
  },
}

/** Too little alkalinity lets the pH swing; too much makes it climb with every top-up. */
const alkalinityLow: Check<BlendFacts> = {
  id: 'nutrients/alkalinity-low',
  at: 'water/sources',
  source: feedPractice.source,
  judged: ({ alkalinity_eq_m3 }, _, terms) => [
    judge(alkalinityLow.id, quantity(alkalinity_eq_m3, 'eq_m3'), {
      ...terms,
      want: { min: feedPractice.rows.alkalinity.low },
    }),
  ],
}

const alkalinityHigh: Check<BlendFacts> = {
  id: 'nutrients/alkalinity-high',
  at: 'water/sources',
  source: feedPractice.source,
  judged: ({ alkalinity_eq_m3 }, plan, terms) => [
    judge(alkalinityHigh.id, quantity(alkalinity_eq_m3, 'eq_m3'), {
      ...terms,
      want: { max: feedPractice.rows.alkalinity.high },
      levers: shareLevers(plan),
    }),
  ],
}

/** Names in the report that no table knows. */
const unread: Check<BlendFacts> = {
  id: 'nutrients/unread-ion',
  at: 'water/sources',
  source: 'Stoichiometry',
  judged: ({ sources }, _, terms) => {
    const names = sources.flatMap((s) => s.unread)
    const slots = { list: names.slice(0, 6).join(', ') }
    return names.length === 0
      ? []
      : [judge(unread.id, quantity(names.length, 'count'), { ...terms, want: { max: 0 }, slots })]
  },
}

export const waterChecks: readonly Check<BlendFacts>[] = [
  balance,
  slips,
  sourceConductivity,
  ballastCheck('Na', 'nutrients/sodium'),
  ballastCheck('Cl', 'nutrients/chloride'),
  ballastCheck('Ca', 'nutrients/calcium'),
  ballastCheck('SO4', 'nutrients/sulfate'),
  fluoride,
  alkalinityLow,
  alkalinityHigh,
  unread,
]
