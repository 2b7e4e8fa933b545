import { type Component, components } from '../../tables/components.ts'
import { type EcScale, ecScales } from '../../tables/ec-scales.ts'
import { type ReportBasis, reportBases } from '../../tables/report-bases.ts'
import { type Amounts, named } from './composition.ts'
import { molarMass } from './equations-formula.ts'
import { finite, notNegative } from './impossible.ts'

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
 * Throws   RangeError where the reading is negative
 */
export function penConductivity(given: { readonly reading: number; readonly scale: EcScale }): number {
  notNegative('penConductivity', { reading: given.reading })
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
 * Throws   RangeError where the conductivity is negative
 */
export function penReading(given: { readonly conductivity_S_m: number; readonly scale: EcScale }): number {
  notNegative('penReading', { κ: given.conductivity_S_m })
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
 * Throws   RangeError where an amount is not finite
 */
export function chargeBalance(given: { readonly amounts: Amounts }): ChargeBalance {
  let [C, A] = [0, 0]
  for (const id of named(given.amounts)) {
    const charge = id === 'unmeasured' ? 0 : components.rows[id].charge * given.amounts[id]!
    if (charge > 0) C += charge
    else A -= charge
  }
  finite('chargeBalance', { C, A })
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
