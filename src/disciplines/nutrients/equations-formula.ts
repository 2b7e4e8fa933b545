import { type Element, elements } from '../../tables/elements.ts'
import { type Amounts, elementOf, type Nutrient, nutrientAmount, nutrients } from './composition.ts'
import { finite } from './impossible.ts'

/** Atoms of a formula such as `5Ca(NO3)2.NH4NO3.10H2O`. */
function atoms(formula: string): ReadonlyMap<Element, number> {
  const count = new Map<Element, number>()
  const add = (text: string, times: number): void => {
    for (const match of text.matchAll(/\(([^()]*)\)(\d*)|([A-Z][a-z]?)(\d*)/g)) {
      const [, group, groupCount, symbol, symbolCount] = match
      if (group !== undefined) add(group, times * Number(groupCount || 1))
      else if (symbol !== undefined && symbol in elements.rows)
        count.set(symbol as Element, (count.get(symbol as Element) ?? 0) + times * Number(symbolCount || 1))
      else throw new RangeError(`atoms: ${symbol} in ${formula} is no element of the table`)
    }
  }
  for (const part of formula.split('.')) {
    const lead = /^\d+/.exec(part)?.[0] ?? ''
    add(part.slice(lead.length), Number(lead || 1))
  }
  return count
}

/**
 * Molar mass of a substance from its formula.
 *
 *   M = Σ n_i A_i
 *
 * Symbols  M molar mass [kg/mol], n_i atoms of element i, A_i its atomic weight [kg/mol]
 * Valid    formulas of the elements in the table, with round brackets and water after a dot
 * Source   IUPAC.weights
 * Throws   RangeError where the formula names an element that the table lacks
 */
export function molarMass(given: { readonly formula: string }): number {
  let M = 0
  for (const [element, n] of atoms(given.formula)) M += n * elements.rows[element].molarMass_kg_mol
  return M
}

/**
 * Share of the mass of a substance that is one element.
 *
 *   w = n A / M
 *
 * Symbols  w mass share [1], n atoms of the element in the formula, A atomic weight [kg/mol], M molar mass [kg/mol]
 * Valid    as molarMass
 * Source   Stoichiometry
 * Throws   RangeError where the formula names an element that the table lacks
 */
export function elementShare(given: { readonly formula: string; readonly element: Element }): number {
  const n = atoms(given.formula).get(given.element) ?? 0
  return (n * elements.rows[given.element].molarMass_kg_mol) / molarMass(given)
}

/**
 * Mass concentration of a nutrient in a solution, or its mass per kilogram of a product.
 *
 *   ρ = A Σ n_c
 *
 * Symbols  ρ mass concentration [g/m³], A atomic weight [g/mol], n_c amounts of the components that hold it [mol/m³]
 * Valid    any solution
 * Source   Stoichiometry
 * Throws   RangeError where an amount is not finite
 */
export function nutrientMass(given: { readonly amounts: Amounts; readonly nutrient: Nutrient }): number {
  const A_kg_mol = elements.rows[elementOf(given.nutrient)].molarMass_kg_mol
  const n = nutrientAmount(given.amounts, given.nutrient)
  finite('nutrientMass', { n })
  return A_kg_mol * 1000 * n
}

/** All nutrients of a solution, g/m³ (mg/L). */
export const nutrientMasses_g_m3 = (amounts: Amounts): Readonly<Record<Nutrient, number>> =>
  Object.fromEntries(nutrients.map((nutrient) => [nutrient, nutrientMass({ amounts, nutrient })])) as Record<
    Nutrient,
    number
  >
