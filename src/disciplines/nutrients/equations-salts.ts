import { type AcidAsSold, acids } from '../../tables/acids.ts'
import { type Component, components } from '../../tables/components.ts'
import type { elements } from '../../tables/elements.ts'
import { type Salt, salts } from '../../tables/salts.ts'
import { type Amounts, ionsOf, mixed, referenceCharge } from './composition.ts'
import { elementShare, molarMass } from './equations-formula.ts'
import { notNegative } from './impossible.ts'

/**
 * What a kilogram of a substance gives to the water, from its formula and purity.
 *
 *   n = ν p / M
 *
 * Symbols  n amount of each component [mol/kg], ν its count in the formula, p mass share of the substance [1],
 *          M molar mass [kg/mol]
 * Valid    substances that dissolve whole
 * Source   Stoichiometry
 * Throws   RangeError where the purity is not above 0 and at most 1
 */
export function saltAmounts(given: { readonly salt: Salt; readonly purity: number }): Amounts {
  const { salt, purity: p } = given
  if (!(p > 0 && p <= 1)) throw new RangeError(`saltAmounts: purity p of ${salt} is ${p}`)
  const { formula, ions } = salts.rows[salt]
  return mixed([{ amounts: ionsOf(ions), times: p / molarMass({ formula }) }])
}

/** Mass shares as a bag prints them; P2O5 and K2O as oxide, the rest as element. What is absent is not printed. */
export interface Label {
  readonly nitrateN?: number
  readonly ammoniumN?: number
  readonly P2O5?: number
  readonly K2O?: number
  readonly Ca?: number
  readonly CaO?: number
  readonly Mg?: number
  readonly MgO?: number
  readonly S?: number
  readonly SO3?: number
  readonly Na?: number
  readonly Cl?: number
  readonly B?: number
  readonly Mn?: number
  readonly Zn?: number
  readonly Cu?: number
  readonly Mo?: number
  readonly Fe?: number
}

/** Which component a line of a label stands for, and the formula that is weighed. */
const lines: Readonly<Record<keyof Label, readonly [Component, string, number]>> = {
  nitrateN: ['NO3', 'N', 1],
  ammoniumN: ['NH4', 'N', 1],
  P2O5: ['H2PO4', 'P2O5', 2],
  K2O: ['K', 'K2O', 2],
  Ca: ['Ca', 'Ca', 1],
  CaO: ['Ca', 'CaO', 1],
  Mg: ['Mg', 'Mg', 1],
  MgO: ['Mg', 'MgO', 1],
  S: ['SO4', 'S', 1],
  SO3: ['SO4', 'SO3', 1],
  Na: ['Na', 'Na', 1],
  Cl: ['Cl', 'Cl', 1],
  B: ['H3BO3', 'B', 1],
  Mn: ['Mn', 'Mn', 1],
  Zn: ['Zn', 'Zn', 1],
  Cu: ['Cu', 'Cu', 1],
  Mo: ['MoO4', 'Mo', 1],
  Fe: ['Fe', 'Fe', 1],
}

/**
 * What a kilogram of a bag gives to the water, from its label.
 *
 *   n = w ν / M for each line; what is left of the charge goes to the stated counter-ion
 *
 * Symbols  n amount [mol/kg], w mass share on the label [1], ν components in the weighed formula, M its molar mass
 *          [kg/mol]
 * Valid    neutral fertilisers, no bases, no urea. `iron` names how the iron is held. A positive remainder is anions
 *          that the label leaves out: sulfate as a rule, from the fillers; a negative one is counted as unmeasured
 * Source   Stoichiometry
 * Throws   RangeError where the shares are negative or sum to more than 1
 */
export function labelAmounts(given: {
  readonly label: Label
  readonly iron: 'FeEDTA' | 'FeDTPA' | 'FeEDDHA' | 'Fe'
  readonly counterIon: 'SO4' | 'Cl' | 'unmeasured'
}): Amounts {
  const { label, iron, counterIon } = given
  const shares = Object.values(label)
  const total = shares.reduce((sum, w) => sum + w, 0)
  if (shares.some((w) => !(w >= 0)) || total > 1)
    throw new RangeError(`labelAmounts: shares w ${JSON.stringify(label)} sum to ${total}`)
  const sum = mixed(
    (Object.keys(label) as readonly (keyof Label)[]).map((line) => {
      const [component, formula, ν] = lines[line]
      const id = line === 'Fe' ? iron : component
      return { amounts: { [id]: (label[line]! * ν) / molarMass({ formula }) }, times: 1 }
    }),
  )
  const left = referenceCharge(sum)
  const filler: Component = left > 0 ? counterIon : 'unmeasured'
  const n = -left / components.rows[filler].charge
  return mixed([
    { amounts: sum, times: 1 },
    { amounts: { [filler]: n }, times: 1 },
  ])
}

/**
 * Nitrate in the nitrogen of a label that prints the total only, where all other ions are printed.
 *
 *   NO3 = (N + Q) / 2
 *
 * Symbols  NO3 nitrate [mol/kg], N all nitrogen [mol/kg], Q charge of the other ions [mol/kg]
 * Valid    neutral fertilisers without urea and with sulfur printed; held between 0 and N
 * Source   Balance.solution
 * Throws   RangeError where the nitrogen is negative
 */
export function nitrateFromCharge(given: { readonly totalN_mol_kg: number; readonly others: Amounts }): number {
  const { totalN_mol_kg: N, others } = given
  notNegative('nitrateFromCharge', { N })
  return Math.min(N, Math.max(0, (N + referenceCharge(others)) / 2))
}

/**
 * Charge that a volume of an acid as sold takes out of the water, all its protons counted but those that stay.
 *
 *   c = p ρ |z| / M
 *
 * Symbols  c strength [mol of charge per m³], p mass share of the acid [1], ρ density [kg/m³], z charge number of the
 *          anion in its reference form, M molar mass [kg/mol]
 * Valid    nitric, sulfuric and, at one proton, phosphoric acid below pH 6
 * Source   Stoichiometry
 * Throws   RangeError where the row of the acid holds no share of it
 */
export function acidStrength(given: { readonly acid: AcidAsSold }): number {
  const { salt, strength: p, density_kg_m3: ρ } = acids.rows[given.acid]
  const charge = -referenceCharge(saltAmounts({ salt: salt as Salt, purity: p }))
  return charge * ρ
}

/**
 * Volume of a liquid by its density.
 *
 *   V = m / ρ
 *
 * Symbols  V volume [m³], m mass [kg], ρ density [kg/m³]
 * Valid    at the temperature of the density
 * Source   Stoichiometry
 * Throws   RangeError where the density is not positive
 */
export function liquidVolume(given: { readonly mass_kg: number; readonly density_kg_m3: number }): number {
  const { mass_kg: m, density_kg_m3: ρ } = given
  if (!(ρ > 0)) throw new RangeError(`liquidVolume: density ρ is ${ρ}`)
  return m / ρ
}

/**
 * Element in an oxide as labels print it.
 *
 *   factor = n A / M
 *
 * Symbols  factor mass of element per mass of oxide [1], n atoms of it in the formula, A atomic weight, M molar mass
 * Valid    any formula of the elements in the table
 * Source   Stoichiometry
 * Throws   RangeError where the formula names an element that the table lacks
 */
export function oxideFactor(given: { readonly oxide: string; readonly element: keyof typeof elements.rows }): number {
  return elementShare({ formula: given.oxide, element: given.element })
}
