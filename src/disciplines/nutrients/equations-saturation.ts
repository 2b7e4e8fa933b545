import { piecewiseLinear } from '../../kernel/interpolate.ts'
import { root } from '../../kernel/solve.ts'
import type { Mineral } from '../../tables/equilibria.ts'
import { type Salt, salts } from '../../tables/salts.ts'
import { SOLUBILITY_TEMPERATURES_C, type Solute, solubility } from '../../tables/solubility.ts'
import { type Amounts, mixed } from './composition.ts'
import { mineralLogK } from './equations-equilibria.ts'
import { molarMass } from './equations-formula.ts'
import { activityCoefficient, debyeSlope } from './equations-solvent.ts'
import { finite } from './impossible.ts'
import { type Conditions, type Speciation, type Species, speciation } from './speciation.ts'

/** Ions of each solid with their charge numbers. */
const parts: Readonly<Record<Mineral, readonly (readonly [Species, number])[]>> = {
  gypsum: [
    ['Ca', 2],
    ['SO4', 2],
  ],
  calcite: [
    ['Ca', 2],
    ['CO3', 2],
  ],
  brushite: [
    ['Ca', 2],
    ['HPO4', 2],
  ],
  monetite: [
    ['Ca', 2],
    ['HPO4', 2],
  ],
  newberyite: [
    ['Mg', 2],
    ['HPO4', 2],
  ],
  struvite: [
    ['Mg', 2],
    ['NH4', 1],
    ['PO4', 3],
  ],
}

/**
 * Saturation index of a solid: above zero it may fall out.
 *
 *   SI = log10( Π a_i / K )
 *
 * Symbols  SI saturation index [1], a_i activities of the ions of the solid, K solubility product
 * Valid    ionic strength to 0.1 mol/kg; minus infinity where an ion is absent
 * Source   USGS.phreeqc.dat, minerals as mineralLogK
 * Throws   RangeError where the temperature is not above absolute zero
 */
export function saturationIndex(given: { readonly solution: Speciation; readonly mineral: Mineral }): number {
  const { solution, mineral } = given
  const { temperature_C, ionicStrength_mol_m3 } = solution
  const slope = debyeSlope({ temperature_C })
  const product = parts[mineral].reduce((sum, [ion, charge]) => {
    const c = (solution.species_mol_m3[ion] ?? 0) / 1000
    return sum + Math.log10(c * activityCoefficient({ charge, ionicStrength_mol_m3, slope }))
  }, 0)
  return product - mineralLogK({ mineral, temperature_C })
}

/**
 * How many times a feed can be concentrated in one bottle before a solid reaches saturation, pH held.
 *
 *   F such that SI(F c) = 0
 *
 * Symbols  F factor [1], SI saturation index, c feed [mol/m³]
 * Valid    an estimate: activities leave their range above 0.5 mol/kg; infinite where the solid cannot form
 * Source   Balance.solution
 * Throws   RangeError where an amount is negative or the temperature is not above absolute zero
 */
export function concentrationLimit(
  given: Conditions & { readonly amounts: Amounts; readonly pH: number; readonly mineral: Mineral },
): number {
  const at = (log: number) => {
    const amounts = mixed([{ amounts: given.amounts, times: Math.exp(log) }])
    return saturationIndex({ solution: speciation({ ...given, amounts }), mineral: given.mineral })
  }
  const [low, high] = [Math.log(1e-3), Math.log(1e3)]
  let last = low
  for (let log = low; log <= high; log += 0.25) {
    if (at(log) > 0) return log === low ? Math.exp(low) : Math.exp(root({ of: at, low: last, high: log, within: 1e-9 }))
    last = log
  }
  return Number.POSITIVE_INFINITY
}

/** Temperatures that the table of solubility covers; below it a store freezes, above it the value at 25 °C is held. */
export const SOLUBILITY_VALID = { temperature_C: { min: 0, max: 25 } } as const

/**
 * Mass share of anhydrous solute in its saturated solution.
 *
 *   straight lines between 0, 10, 20 and 25 °C, held outside
 *
 * Symbols  share mass of anhydrous solute per mass of solution [1]
 * Valid    0 to 25 °C
 * Source   CRC.solubility
 * Throws   RangeError where the temperature is not finite
 */
export function saturatedShare(given: { readonly solute: Solute; readonly temperature_C: number }): number {
  finite('saturatedShare', { t: given.temperature_C })
  const { at0, at10, at20, at25 } = solubility.rows[given.solute]
  return piecewiseLinear({ x: SOLUBILITY_TEMPERATURES_C, y: [at0, at10, at20, at25] })(given.temperature_C)
}

/**
 * Salt as sold that saturates added water.
 *
 *   S = w h / (1 - w h),  h = M / M0
 *
 * Symbols  S salt per mass of water added [1], w mass share of anhydrous solute in the saturated solution,
 *          M molar mass as sold, M0 of the anhydrous solute
 * Valid    0 to 25 °C; infinite where the hydrate's own water is enough to dissolve it
 * Source   CRC.solubility
 * Throws   RangeError where the temperature is not finite
 */
export function hydrateSolubility(given: { readonly salt: Salt; readonly temperature_C: number }): number {
  finite('hydrateSolubility', { t: given.temperature_C })
  const { formula, dissolves } = salts.rows[given.salt]
  if (dissolves === null) return Number.POSITIVE_INFINITY
  const solute = dissolves as Solute
  const w = saturatedShare({ solute, temperature_C: given.temperature_C })
  const saturated = (w * molarMass({ formula })) / molarMass({ formula: dissolves })
  return saturated < 1 ? saturated / (1 - saturated) : Number.POSITIVE_INFINITY
}
