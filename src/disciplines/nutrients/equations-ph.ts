import { root } from '../../kernel/solve.ts'
import { type Amounts, named, referenceCharge } from './composition.ts'
import { finite } from './impossible.ts'
import { type Conditions, chargeAgainstAmounts, chargeAgainstPh, type Speciation, speciation } from './speciation.ts'

/** Ends between which any water that a grower meets has its pH, and those of nearly all of it. */
const ALL = [0, 14] as const
const USUAL = [3, 10] as const
/** Far more carbonate than any water holds, mol/m³. */
const MOST_CARBONATE = 1000
/** Charge, mol/m³, that is nothing: 1e-6 pH in pure water, less in any other. */
const NO_CHARGE = 1e-10
/** Charge that a buffer takes up within a few hundredths of pH; straightens the curve for the search. */
const SOME_CHARGE = 0.01

/**
 * pH that a solution takes by itself.
 *
 *   Σ z_i c_i = 0
 *
 * Symbols  z_i charge number, c_i concentration of each ion, pair, proton and hydroxide [mol/m³]
 * Valid    ionic strength to 0.1 mol/kg, 0 to 40 °C; closed, or in balance with the carbon dioxide above it; strong
 *          acid and base are held at 0 and 14
 * Source   Balance.solution
 * Throws   RangeError where an amount is negative or the temperature is not above absolute zero
 */
export function solutionPh(given: Conditions & { readonly amounts: Amounts }): number {
  const charge = chargeAgainstPh(given)
  const of = (pH: number) => {
    const Z = charge(pH)
    return Math.abs(Z) < NO_CHARGE ? 0 : Math.asinh(Z / SOME_CHARGE)
  }
  const [low, high] = of(USUAL[0]) > 0 && of(USUAL[1]) < 0 ? USUAL : ALL
  if (of(low) <= 0) return low
  if (of(high) >= 0) return high
  return root({ of, low, high, within: NO_CHARGE })
}

/** The solution as it stands at its own pH. */
export const atOwnPh = (given: Conditions & { readonly amounts: Amounts }): Speciation =>
  speciation({ ...given, pH: solutionPh(given) })

/**
 * Acid that a solution needs to reach a pH, per volume; negative where it needs base.
 *
 *   n = Σ z_i c_i at that pH, the acid itself not counted
 *
 * Symbols  n strong acid [mol of charge per m³], z_i charge number, c_i concentration [mol/m³]
 * Valid    as solutionPh; exact for an acid whose anion takes no protons back
 * Source   Balance.solution
 * Throws   RangeError where an amount is negative or the temperature is not above absolute zero
 */
export function acidDemand(given: Conditions & { readonly amounts: Amounts; readonly pH: number }): number {
  return speciation(given).netCharge_mol_m3
}

/**
 * Alkalinity of a solution: what carbonic acid, and weaker ones, hold back from the strong ions.
 *
 *   Alk = Σ z_ref n, carbonate not counted
 *
 * Symbols  Alk alkalinity [mol of charge per m³], z_ref charge of the reference form, n amounts [mol/m³]
 * Valid    reference forms NH4, H2PO4, H3BO3, neutral citric acid; does not change with CO2 or temperature
 * Source   Balance.solution
 * Throws   RangeError where an amount is not finite
 */
export function alkalinity(given: { readonly amounts: Amounts }): number {
  const Alk = referenceCharge({ ...given.amounts, HCO3: 0 })
  finite('alkalinity', { Alk })
  return Alk
}

/**
 * Totals of a water from its analysis: the carbonate that explains alkalinity and pH together, and the charge that
 * the analysis leaves unexplained.
 *
 *   carbonate from Σ z_i c_i = 0 at the measured pH; unmeasured = Alk - Σ z_ref n
 *
 * Symbols  Alk alkalinity [mol of charge per m³], z_ref charge of the reference form, n reported amounts [mol/m³]
 * Valid    pH 4.5 to 10; without carbonate where none explains the pH
 * Source   Balance.solution
 * Throws   RangeError where an amount is negative
 */
export function analysedWater(given: {
  readonly amounts: Amounts
  readonly alkalinity_mol_m3: number
  readonly pH: number
  readonly temperature_C: number
}): Amounts {
  const { alkalinity_mol_m3: alk, pH, temperature_C } = given
  const reported = { ...given.amounts, HCO3: 0, unmeasured: 0 }
  const known = { ...reported, unmeasured: alk - alkalinity({ amounts: reported }) }
  const charge = chargeAgainstAmounts({ pH, temperature_C, carbonDioxide_Pa: null })
  const of = (HCO3: number) => charge({ ...known, HCO3 }).netCharge_mol_m3
  if (of(0) <= 0) return known
  let high = Math.max(alk, 1e-3) * 2
  while (of(high) > 0 && high < MOST_CARBONATE) high *= 2
  if (of(high) > 0) return known
  return { ...known, HCO3: root({ of, low: 0, high, within: 1e-12 }) }
}

/**
 * Acid that takes a solution to a pH, with the proton balance of the acid's own anion.
 *
 *   n such that Σ z_i c_i = 0 at the target pH with n moles of acid added
 *
 * Symbols  n dose [mol of acid per m³], z_i charge number, c_i concentration [mol/m³]
 * Valid    as solutionPh; zero where the solution is already below the target
 * Source   Balance.solution
 * Throws   RangeError where the acid brings no charge at that pH
 */
export function acidDose(
  given: Conditions & {
    readonly amounts: Amounts
    readonly pH: number
    /** Components that one mole of the acid adds, `{ NO3: 1 }`. */
    readonly acid: Amounts
  },
): number {
  const brought = named(given.acid)
  const at = (n: number): Amounts => {
    const all: { -readonly [K in keyof Amounts]: Amounts[K] } = { ...given.amounts }
    for (const id of brought) all[id] = (all[id] ?? 0) + given.acid[id]! * n
    return all
  }
  const charge = chargeAgainstAmounts(given)
  const of = (n: number) => charge(at(n)).netCharge_mol_m3
  const demand = of(0)
  if (demand <= 0) return 0
  let high = demand
  while (of(high) > 0) {
    high *= 2
    if (high > 1e3 * demand)
      throw new RangeError(`acidDose: acid ${JSON.stringify(given.acid)} cannot reach pH ${given.pH}`)
  }
  return root({ of, low: 0, high, within: 1e-12 * high })
}

/**
 * Acid or base that moves a solution from one pH to another.
 *
 *   n = V [Z(pH2) - Z(pH1)]
 *
 * Symbols  n dose [mol of charge], positive acid, negative base; V volume [m³], Z net charge of all species [mol/m³]
 * Valid    as solutionPh; totals fixed, the added ions not counted
 * Source   Balance.solution
 * Throws   RangeError where an amount is negative or the temperature is not above absolute zero
 */
export function phShift(
  given: Conditions & {
    readonly amounts: Amounts
    readonly fromPh: number
    readonly toPh: number
    readonly volume_m3: number
  },
): number {
  const Z = (pH: number) => acidDemand({ ...given, pH })
  return given.volume_m3 * (Z(given.toPh) - Z(given.fromPh))
}

/**
 * Buffer capacity: acid that lowers the pH by one unit, at a pH.
 *
 *   β = -dZ/dpH
 *
 * Symbols  β buffer capacity [mol of charge per m³ and pH], Z net charge of all species [mol/m³]
 * Valid    as solutionPh
 * Source   Balance.solution
 * Throws   RangeError where an amount is negative or the temperature is not above absolute zero
 */
export function bufferCapacity(given: Conditions & { readonly amounts: Amounts; readonly pH: number }): number {
  const step = 1e-4
  return phShift({ ...given, fromPh: given.pH + step, toPh: given.pH - step, volume_m3: 1 }) / (2 * step)
}
