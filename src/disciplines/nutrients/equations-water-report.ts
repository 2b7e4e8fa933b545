import { type Component, components } from '../../tables/components.ts'
import { type EcScale, ecScales } from '../../tables/ec-scales.ts'
import { type ReportBasis, reportBases } from '../../tables/report-bases.ts'
import { type Amounts, mixed, named } from './composition.ts'
import { molarMass } from './equations-formula.ts'

/**
 * Amount of a component from the number in a water report.
 *
 *   n = x m ν / M; for statements in charge n = x m ν / (M |z|)
 *
 * Symbols  n amount [mol/m³], x reported number, m mass for one unit [g/m³], M molar mass of what is weighed [g/mol],
 *          ν components (or charges) that one formula stands for, z charge number of the component
 * Valid    any basis of the table; mass of the component itself where the basis names no formula
 * Source   Stoichiometry
 * Throws   RangeError where the number is negative, or where a component without charge is stated in charge
 */
export function reportedAmount(given: {
  readonly component: Component
  readonly reported: number
  readonly basis: ReportBasis
}): number {
  const { component, reported: x, basis } = given
  const { formula, unitsPerFormula: ν, charge, perUnit_g_m3, perUnit_mol_m3 } = reportBases.rows[basis]
  const row = components.rows[component]
  if (!(x >= 0)) throw new RangeError(`reportedAmount: ${component} of ${x} ${basis}`)
  if (charge && row.charge === 0) throw new RangeError(`reportedAmount: ${component} has no charge, basis ${basis}`)
  const z = charge ? Math.abs(row.charge) : 1
  if (perUnit_mol_m3 !== null) return (x * perUnit_mol_m3) / z
  const M = molarMass({ formula: formula ?? row.formula }) * 1000
  return (x * (perUnit_g_m3 ?? 0) * ν) / (M * z)
}

/**
 * Charge behind an alkalinity or a hardness in a water report.
 *
 *   e = x m ν / M
 *
 * Symbols  e amount of charge [mol/m³], x reported number, m mass for one unit [g/m³], ν charges that one formula
 *          stands for, M its molar mass [g/mol]
 * Valid    meq/L, mg/L as CaCO3, as HCO3 or as CaO, and degrees; hardness is the charge of calcium and magnesium
 * Source   Stoichiometry
 * Throws   RangeError where the basis does not count charge
 */
export function reportedCharge(given: { readonly reported: number; readonly basis: ReportBasis }): number {
  const { formula, unitsPerFormula: ν, charge, perUnit_g_m3, perUnit_mol_m3 } = reportBases.rows[given.basis]
  if (!charge) throw new RangeError(`reportedCharge: basis ${given.basis} does not count charge`)
  if (perUnit_mol_m3 !== null || formula === null) return given.reported * (perUnit_mol_m3 ?? 1)
  return (given.reported * (perUnit_g_m3 ?? 0) * ν) / (molarMass({ formula }) * 1000)
}

/**
 * Conductivity behind the reading of a pen.
 *
 *   κ = reading / scale
 *
 * Symbols  κ conductivity [S/m], scale reading of the pen for 1 S/m
 * Valid    pens that show EC, CF or "ppm" of a stated scale
 * Source   common-practice
 */
export function penConductivity(given: { readonly reading: number; readonly scale: EcScale }): number {
  return given.reading / ecScales.rows[given.scale].perS_m
}

/**
 * What a pen shows for a conductivity.
 *
 *   reading = κ scale
 *
 * Symbols  κ conductivity [S/m], scale reading of the pen for 1 S/m
 * Valid    as penConductivity, of which it is the inverse
 * Source   common-practice
 */
export function penReading(given: { readonly conductivity_S_m: number; readonly scale: EcScale }): number {
  return given.conductivity_S_m * ecScales.rows[given.scale].perS_m
}

export interface ChargeBalance {
  readonly cations_mol_m3: number
  readonly anions_mol_m3: number
  /** Difference over sum, positive where anions are missing. */
  readonly error: number
}

/**
 * Whether the plus and minus ions of an analysis agree.
 *
 *   e = (C - A) / (C + A)
 *
 * Symbols  e error [1], C and A charge of cations and anions in their reference forms [mol/m³]
 * Valid    pH 5 to 9; a laboratory analysis agrees within 0.05, a report of averages within 0.1
 * Source   Balance.solution
 */
export function chargeBalance(given: { readonly amounts: Amounts }): ChargeBalance {
  let [C, A] = [0, 0]
  for (const id of named(given.amounts)) {
    const charge = id === 'unmeasured' ? 0 : components.rows[id].charge * given.amounts[id]!
    if (charge > 0) C += charge
    else A -= charge
  }
  return { cations_mol_m3: C, anions_mol_m3: A, error: C + A === 0 ? 0 : (C - A) / (C + A) }
}

/**
 * Band of an ion that an analysis leaves out, from the charge that it must bring.
 *
 *   n = (C - A ± e (C + A)) / |z|, with the sign of its charge, not below zero
 *
 * Symbols  n amount [mol/m³], C and A charge of the reported cations and anions [mol/m³], e error of a good analysis,
 *          z charge number
 * Valid    one ion missing
 * Source   Balance.solution
 * Throws   RangeError where the component has no charge
 */
export function missingIon(given: {
  readonly amounts: Amounts
  readonly component: Component
  readonly analysisError: number
}): { readonly low_mol_m3: number; readonly high_mol_m3: number } {
  const { component, analysisError: e } = given
  const z = components.rows[component].charge
  if (z === 0) throw new RangeError(`missingIon: ${component} has no charge`)
  const { cations_mol_m3: C, anions_mol_m3: A } = chargeBalance(given)
  const lacking = z < 0 ? C - A : A - C
  const slack = e * (C + A)
  const n = (charge: number) => Math.max(0, charge) / Math.abs(z)
  return { low_mol_m3: n(lacking - slack), high_mol_m3: n(lacking + slack) }
}

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
