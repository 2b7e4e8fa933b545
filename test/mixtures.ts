import { type Amounts, mixed, type Nutrient } from '../src/disciplines/nutrients/composition.ts'
import { analysedWater } from '../src/disciplines/nutrients/equations-ph.ts'
import { labelAmounts, saltAmounts } from '../src/disciplines/nutrients/equations-salts.ts'
import type { Product, Target } from '../src/disciplines/nutrients/recipe.ts'
import { elements } from '../src/tables/elements.ts'
import type { Salt } from '../src/tables/salts.ts'

export const seeded = { seed: 20261125, numRuns: 40 } as const
export const pure = (...salts: readonly Salt[]): readonly Product[] =>
  salts.map((salt) => ({ id: salt, amounts_mol_kg: saltAmounts({ salt, purity: 1 }) }))
export const targets = (wanted: Readonly<Partial<Record<Nutrient, number>>>): readonly Target[] =>
  (Object.entries(wanted) as readonly (readonly [Nutrient, number])[]).map(([nutrient, wanted_g_m3]) => ({
    nutrient,
    wanted_g_m3,
    weight: nutrient === 'S' ? 0.05 : 1,
  }))
export const bare = { water: {}, limits: [], ammoniumShare: null, pH: null } as const
export const masses = (wanted: Readonly<Partial<Record<Nutrient, number>>>): Amounts =>
  mixed(
    (Object.entries(wanted) as readonly (readonly ['Ca' | 'Mg', number])[]).map(([id, g]) => ({
      amounts: { [id]: g / 1000 / elements.rows[id].molarMass_kg_mol },
      times: 1,
    })),
  )

/** A product with the mass shares of the worked optima, five printed digits each. */
export const fractions = (
  id: string,
  shares: Readonly<Partial<Record<'N' | 'P' | 'K' | 'Ca' | 'Mg', number>>>,
): Product => {
  const component = { N: 'NO3', P: 'H2PO4', K: 'K', Ca: 'Ca', Mg: 'Mg' } as const
  const amounts = Object.entries(shares).map(([element, share]) => {
    const key = element as keyof typeof component
    return [component[key], share / elements.rows[key].molarMass_kg_mol] as const
  })
  return { id, amounts_mol_kg: Object.fromEntries(amounts) }
}
export const CN = fractions('CN', { N: 0.15554, Ca: 0.18544 })
export const KN = fractions('KN', { N: 0.13854, K: 0.38672 })
export const MKP = fractions('MKP', { P: 0.22761, K: 0.28731 })
export const EPS = fractions('EPS', { Mg: 0.09861 })
export const lettuce = targets({ N: 150, P: 31, K: 210, Ca: 90, Mg: 24 })

/** mg/L of a tap of hard water (82 Ca, 4.2 meq/L) and its shelf. */
export const hardTap = analysedWater({
  amounts: mixed([
    { amounts: { Ca: 82 / 40.078, Mg: 14 / 24.305, Na: 12 / 22.99, K: 2 / 39.098 }, times: 1 },
    { amounts: { Cl: 18 / 35.45, SO4: 45 / 96.06, NO3: 1.2 / 14.007 }, times: 1 },
  ]),
  ...{ alkalinity_mol_m3: 4.2, pH: 7.5, temperature_C: 20 },
})
export const bag = (id: string, label: Parameters<typeof labelAmounts>[0]['label']): Product => ({
  id,
  amounts_mol_kg: labelAmounts({ label, iron: 'FeDTPA', counterIon: 'SO4' }),
})
export const balcony: readonly Product[] = [
  bag('calcium-nitrate', { nitrateN: 0.144, ammoniumN: 0.011, Ca: 0.19 }),
  ...pure('potassium-nitrate', 'monopotassium-phosphate', 'magnesium-sulfate'),
]
export const inAir = { low: 5.6, high: 6, temperature_C: 20, carbonDioxide_Pa: 42.6 } as const
