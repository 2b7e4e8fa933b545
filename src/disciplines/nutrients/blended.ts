import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { elements } from '../../tables/elements.ts'
import { feedPractice } from '../../tables/feed-practice.ts'
import { waterLimits } from '../../tables/water-limits.ts'
import type { Amounts } from './composition.ts'
import { blend, shareToLimit } from './equations-blend.ts'
import { type SourceFacts, sourceFacts } from './source-water.ts'

/** Ions that feed little or nothing, judged in the water. */
export const ballast = ['Na', 'Cl', 'Ca', 'SO4'] as const
export type Ballast = (typeof ballast)[number]

/** The least of a soft water that brings every ballast ion of the others to its limit, and what is then left. */
export interface LeastSoft {
  readonly name: string
  /** The ion that asks for most of it. */
  readonly ion: Ballast
  readonly limit_g_m3: number
  readonly share: number
  readonly alkalinity_eq_m3: number
}

export interface BlendFacts {
  readonly sources: readonly SourceFacts[]
  readonly amounts: Amounts
  readonly alkalinity_eq_m3: number
  /** Mass of the ion; a band where a water without a report is part of it, not known where a report leaves it out. */
  readonly ballast_g_m3: Readonly<Record<Ballast, Known<{ readonly low: number; readonly high: number }>>>
  readonly fluoride_g_m3: number
  /** Null where the others need none of it, or where there is not one soft water and another. */
  readonly leastSoft: LeastSoft | null
}

/** Shares of the waters: one without a share takes the rest; null where they do not sum to all. */
export function sharesOf(plan: Plan): { readonly shares: readonly number[]; readonly sum: number } {
  const sources = plan.water?.sources ?? []
  const told = sources.reduce((sum, s) => sum + (s.share ?? 0), 0)
  const open = sources.filter((s) => s.share === undefined).length
  const rest = open === 1 ? Math.max(0, 1 - told) : 0
  const shares = sources.map((s) => s.share ?? rest)
  return { shares, sum: shares.reduce((sum, s) => sum + s, 0) }
}

const mass_g_mol: Readonly<Record<Ballast, number>> = {
  Na: elements.rows.Na.molarMass_kg_mol * 1000,
  Cl: elements.rows.Cl.molarMass_kg_mol * 1000,
  Ca: elements.rows.Ca.molarMass_kg_mol * 1000,
  SO4: (elements.rows.S.molarMass_kg_mol + 4 * elements.rows.O.molarMass_kg_mol) * 1000,
}
const charges: Readonly<Record<Ballast, number>> = { Na: 1, Cl: 1, Ca: 2, SO4: 2 }

function ballastOf(used: readonly SourceFacts[], amounts: Amounts, ion: Ballast): BlendFacts['ballast_g_m3'][Ballast] {
  const needs = used.flatMap((s) => (s.pure || s.named.includes(ion) ? [] : [`${s.at}/analysis/ions/${ion}`]))
  if (needs.length > 0) return { needs }
  const low = (amounts[ion] ?? 0) * mass_g_mol[ion]
  const unseen = used.reduce((sum, s) => sum + (s.share * s.unseen_eq_m3) / charges[ion], 0)
  return { known: { low, high: low + unseen * mass_g_mol[ion] } }
}

/** From the reports alone: a rain water without ions counts as free of them, as in a mass balance by hand. */
function leastSoftOf(plan: Plan, used: readonly SourceFacts[]): LeastSoft | null {
  const kinds = (plan.water?.sources ?? []).map(({ kind, name }) => ({
    soft: kind === 'rain' || kind === 'distilled',
    name,
  }))
  const soft = kinds.filter((k) => k.soft)
  const isSoft = ({ at }: SourceFacts) => kinds[Number(at.split('/').at(-1))]?.soft === true
  const hard = used.filter((s) => !isSoft(s))
  const all = hard.reduce((sum, s) => sum + s.share, 0)
  if (soft.length !== 1 || all <= 0) return null
  const own = used.find(isSoft)
  const of = (value: (s: SourceFacts) => number) => hard.reduce((sum, s) => sum + (s.share / all) * value(s), 0)
  const asked = ballast.map((ion) => {
    const { limit_g_m3 } = waterLimits.rows[ion]
    const first_g_m3 = of((s) => s.amounts[ion] ?? 0) * mass_g_mol[ion]
    const second_g_m3 = (own?.amounts[ion] ?? 0) * mass_g_mol[ion]
    return { ion, limit_g_m3, share: shareToLimit({ first_g_m3, second_g_m3, limit_g_m3 }) }
  })
  const most = asked.reduce((a, b) => (b.share > a.share ? b : a))
  if (most.share <= 0 || !Number.isFinite(most.share)) return null
  const left = (1 - most.share) * of((s) => s.alkalinity_eq_m3) + most.share * (own?.alkalinity_eq_m3 ?? 0)
  return { ...most, name: soft[0]!.name ?? '', alkalinity_eq_m3: left }
}

/** The waters of the plan poured together by their shares. Waters without a share are not asked for a report. */
export function blendFacts(plan: Plan): Known<BlendFacts> {
  const sources = plan.water?.sources ?? []
  if (sources.length === 0) return { needs: ['water/sources'] }
  const { shares, sum } = sharesOf(plan)
  const { low, high } = feedPractice.rows.shareSum
  const open = sources.flatMap((s, i) => (s.share === undefined ? [`water/sources/${i}/share`] : []))
  if (open.length > 1) return { needs: open.slice(1) }
  if (sum < low || sum > high) return { needs: ['water/sources/share'] }
  const read = sources.flatMap((source, i) => (shares[i]! > 0 ? [sourceFacts(source, i, shares[i]! / sum)] : []))
  const needs = read.flatMap((s) => (isKnown(s) ? [] : s.needs))
  if (needs.length > 0) return { needs }
  const used = read.flatMap((s) => (isKnown(s) ? [s.known] : []))
  const amounts = blend({ parts: used.map((s) => ({ amounts: s.amounts, share: s.share })) })
  const sumOf = (of: (s: SourceFacts) => number) => used.reduce((total, s) => total + s.share * of(s), 0)
  return {
    known: {
      sources: used,
      amounts,
      alkalinity_eq_m3: sumOf((s) => s.alkalinity_eq_m3),
      fluoride_g_m3: sumOf((s) => s.fluoride_g_m3),
      leastSoft: leastSoftOf(plan, used),
      ballast_g_m3: {
        Na: ballastOf(used, amounts, 'Na'),
        Cl: ballastOf(used, amounts, 'Cl'),
        Ca: ballastOf(used, amounts, 'Ca'),
        SO4: ballastOf(used, amounts, 'SO4'),
      },
    },
  }
}
