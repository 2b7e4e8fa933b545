import type { Component } from '../../tables/components.ts'
import type { ReportBasis } from '../../tables/report-bases.ts'
import { type Amounts, mixed } from './composition.ts'
import { chargeBalance, reportedAmount } from './equations-water-report.ts'

/** One line of a water report as it was typed. */
export interface ReportRow {
  readonly component: Component
  readonly reported: number
  readonly basis: ReportBasis
}

/** Bases in which each ion is met in reports: the slips to try. */
const usual: Readonly<Partial<Record<Component, readonly ReportBasis[]>>> = {
  HCO3: ['mg/L', 'meq/L', 'mg/L as CaCO3', 'dH'],
  NO3: ['mg/L', 'mg/L as N', 'mmol/L'],
  SO4: ['mg/L', 'mg/L as S', 'mmol/L'],
  Ca: ['mg/L', 'mmol/L', 'meq/L', 'mg/L as CaCO3', 'mg/L as CaO', 'dH'],
  Mg: ['mg/L', 'mmol/L', 'meq/L', 'mg/L as CaCO3', 'dH'],
  K: ['mg/L', 'mmol/L', 'mg/L as K2O'],
  H2PO4: ['mg/L as P', 'mg/L as P2O5', 'mg/L as PO4', 'mmol/L'],
  Na: ['mg/L', 'mmol/L'],
  Cl: ['mg/L', 'mmol/L'],
}

export interface Slip {
  readonly component: Component
  /** Basis that would explain the number. */
  readonly basis: ReportBasis
  readonly errorAfter: number
}

/** The report as amounts. */
export const reportedAmounts = (rows: readonly ReportRow[]): Amounts =>
  mixed(rows.map((row) => ({ amounts: { [row.component]: reportedAmount(row) }, times: 1 })))

/**
 * Units that, read for the ones given, would make an analysis balance: one at a time, best first. `needed` is the
 * error that an analysis must stay under to count as balanced.
 */
export function unitSlips(rows: readonly ReportRow[], needed: number): readonly Slip[] {
  if (Math.abs(chargeBalance({ amounts: reportedAmounts(rows) }).error) <= needed) return []
  const slips = rows.flatMap(({ component, basis: given }, place) =>
    (usual[component] ?? [])
      .filter((basis) => basis !== given)
      .map((basis) => {
        const changed = rows.map((row, i) => (i === place ? { ...row, basis } : row))
        return { component, basis, errorAfter: chargeBalance({ amounts: reportedAmounts(changed) }).error }
      }),
  )
  return slips
    .filter(({ errorAfter }) => Math.abs(errorAfter) <= needed)
    .sort((a, b) => Math.abs(a.errorAfter) - Math.abs(b.errorAfter))
}
