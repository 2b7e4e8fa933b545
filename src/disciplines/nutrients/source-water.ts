import type { Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { type Component, components } from '../../tables/components.ts'
import { elements } from '../../tables/elements.ts'
import { feedPractice } from '../../tables/feed-practice.ts'
import type { ReportBasis } from '../../tables/report-bases.ts'
import { type ReportName, reportNames } from '../../tables/report-names.ts'
import { feedConstants } from '../../tables/solvent.ts'
import type { Amounts } from './composition.ts'
import { conductivity } from './equations-conductivity.ts'
import { analysedWater } from './equations-ph.ts'
import {
  type ChargeBalance,
  chargeBalance,
  missingIon,
  reportedAmount,
  reportedCharge,
} from './equations-water-report.ts'
import { type ReportRow, reportedAmounts, type Slip, unitSlips } from './report-slips.ts'
import { speciation } from './speciation.ts'

type Source = NonNullable<NonNullable<NonNullable<Plan['water']>['sources']>[number]>

/** A line of a report with the place where it was typed. */
export interface TypedRow extends ReportRow {
  readonly name: string
  readonly path: string
}

/** A slip of the unit, and what to type instead. */
export interface TypedSlip extends Slip {
  readonly name: string
  readonly path: string
  readonly reported: number
  /** The number in the unit of that field that means what the slip explains. */
  readonly instead: number
}

/** One water as its report tells. */
export interface SourceFacts {
  readonly at: string
  readonly name: string
  readonly share: number
  readonly amounts: Amounts
  /** Reported without ions: taken as free of salts, up to the charge that its conductivity allows. */
  readonly pure: boolean
  /** Charge of each sign that such a water may hold and nobody measured. */
  readonly unseen_eq_m3: number
  readonly unread: readonly string[]
  readonly named: readonly Component[]
  readonly alkalinity_eq_m3: number
  readonly fluoride_g_m3: number
  readonly balance: ChargeBalance | null
  readonly slips: readonly TypedSlip[]
  /** The ion that is likeliest left out, where the report does not balance, in the band that would close it. */
  readonly missing: { readonly name: string; readonly low_mol_m3: number; readonly high_mol_m3: number } | null
  readonly reported_S_m: number | null
  /** Conductivity of the reported ions at 25 °C; null without ions. */
  readonly computed_S_m: number | null
}

/** Lines of a name, as typed or without its charge sign. */
function lineOf(name: string): (typeof reportNames.rows)[ReportName] | null {
  const tries = [name, name.replace(/[+-]+$/, ''), name.replace(/\^?\d?[+-]$/, '')].map((n) => n.trim())
  const found = tries.find((n) => Object.hasOwn(reportNames.rows, n))
  return found === undefined ? null : reportNames.rows[found as ReportName]
}

/** Alkalinity as it was reported, in whichever of its fields. */
function alkalinityRow({ analysis }: Source, at: string): TypedRow | null {
  const as = (key: string, reported: number | undefined, basis: ReportBasis): TypedRow[] =>
    reported === undefined ? [] : [{ component: 'HCO3', reported, basis, name: 'HCO3', path: `${at}/analysis/${key}` }]
  const all = [
    ...as('alkalinity', analysis?.alkalinity_eq_m3, 'meq/L'),
    ...as('alkalinityAsCaCO3', analysis?.alkalinityAsCaCO3_g_m3, 'mg/L as CaCO3'),
    ...as('hardnessGerman', analysis?.hardnessGerman, 'dH'),
  ]
  return all[0] ?? null
}

function typedRows(source: Source, at: string): { readonly rows: readonly TypedRow[]; readonly unread: string[] } {
  const unread: string[] = []
  const rows: TypedRow[] = []
  const read = (section: 'ions' | 'asElement' | 'equivalents') => {
    for (const [name, reported] of Object.entries(source.analysis?.[section] ?? {})) {
      const line = lineOf(name)
      const component = line?.component as Component | undefined
      const charged = component !== undefined && components.rows[component].charge !== 0
      if (line === null || component === undefined || (section === 'equivalents' && !charged)) unread.push(name)
      else {
        const basis = section === 'equivalents' ? 'meq/L' : (line.basis as ReportBasis)
        rows.push({ component, reported, basis, name, path: `${at}/analysis/${section}/${name}` })
      }
    }
  }
  read('ions')
  read('asElement')
  read('equivalents')
  const alkalinity = alkalinityRow(source, at)
  // Alkalinity counts carbonate as well; where both are reported it goes before bicarbonate.
  return { rows: alkalinity ? [...rows.filter((r) => r.component !== 'HCO3'), alkalinity] : rows, unread }
}

const typedSlips = (rows: readonly TypedRow[]): readonly TypedSlip[] =>
  unitSlips(rows, feedPractice.rows.chargeBalance.low).map((slip) => {
    const row = rows.find((r) => r.component === slip.component)!
    const { component, reported, name, path } = row
    const instead = reportedAmount({ component, reported, basis: slip.basis }) / reportedAmount({ ...row, reported: 1 })
    return { ...slip, name, path, reported, instead }
  })

/** The ion that reports leave out most often, of the sign that is lacking. */
function missingOf(amounts: Amounts, balance: ChargeBalance): SourceFacts['missing'] {
  if (Math.abs(balance.error) <= feedPractice.rows.chargeBalance.low) return null
  const order: readonly Component[] = balance.error > 0 ? ['HCO3', 'SO4', 'Cl', 'NO3'] : ['Na', 'Ca', 'Mg', 'K']
  const component = order.find((id) => (amounts[id] ?? 0) === 0) ?? order[0]!
  return { name: component, ...missingIon({ amounts, component, analysisError: feedPractice.rows.chargeBalance.low }) }
}

function conductivityOf(amounts: Amounts, pH: number): number {
  const temperature_C = feedConstants.rows.referenceTemperature.value
  return conductivity(speciation({ amounts, pH, temperature_C, carbonDioxide_Pa: null }))
}

/** Reads one water; what is missing where its report does not suffice. */
export function sourceFacts(source: Source, place: number, share: number): Known<SourceFacts> {
  const at = `water/sources/${place}`
  const { rows, unread } = typedRows(source, at)
  const { pH, conductivity_S_m } = source.analysis ?? {}
  const told = { at, name: source.name ?? '', share, unread, named: rows.map((r) => r.component) }
  const fluoride = rows.find((r) => r.component === 'F')
  const others = rows.filter((r) => r.component !== 'HCO3')
  const carbonate = rows.find((r) => r.component === 'HCO3')
  if (others.length === 0 && carbonate === undefined) {
    if (source.kind !== 'rain' && source.kind !== 'distilled') return { needs: [`${at}/analysis/ions`] }
    if (conductivity_S_m === undefined) return { needs: [`${at}/analysis/conductivity`] }
    // meq/L for 1 mS/cm, which is 0.1 S/m
    const unseen_eq_m3 = conductivity_S_m * 10 * feedPractice.rows.chargePerConductivity.high
    const none = { balance: null, slips: [], missing: null, computed_S_m: null, alkalinity_eq_m3: 0, fluoride_g_m3: 0 }
    return { known: { ...told, ...none, amounts: {}, pure: true, unseen_eq_m3, reported_S_m: conductivity_S_m } }
  }
  const needs = [
    ...(carbonate === undefined ? [`${at}/analysis/alkalinity`] : []),
    ...(pH === undefined ? [`${at}/analysis/pH`] : []),
  ]
  if (carbonate === undefined || pH === undefined) return { needs }
  const alkalinity_eq_m3 =
    carbonate.basis === 'mg/L'
      ? reportedAmount(carbonate)
      : reportedCharge({ reported: carbonate.reported, basis: carbonate.basis })
  const reported = reportedAmounts(rows)
  const amounts = analysedWater({
    amounts: reportedAmounts(others),
    alkalinity_mol_m3: alkalinity_eq_m3,
    pH,
    temperature_C: feedConstants.rows.referenceTemperature.value,
  })
  const balance = chargeBalance({ amounts: reported })
  return {
    known: {
      ...told,
      ...{ amounts, pure: false, unseen_eq_m3: 0, alkalinity_eq_m3, balance },
      fluoride_g_m3: fluoride ? reportedAmount(fluoride) * elements.rows.F.molarMass_kg_mol * 1000 : 0,
      slips: typedSlips(rows),
      missing: missingOf(reported, balance),
      reported_S_m: conductivity_S_m ?? null,
      computed_S_m: conductivityOf(amounts, pH),
    },
  }
}
