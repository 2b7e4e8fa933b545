import type { Plan } from '../../plan/plan.ts'
import { measuredUptake, uptake } from '../../tables/water-limits.ts'
import type { BatchFacts } from './batch.ts'
import { type Amounts, nutrientAmount } from './composition.ts'
import { refillStrength } from './equations-refill.ts'

/** With which share of the recipe a tank is topped up to begin with; the pen corrects it from the first week on. */
export interface Refill {
  readonly strength: number
  /** Crops whose uptake was measured, and those that are taken as lettuce for want of a measurement. */
  readonly measured: readonly string[]
  readonly assumed: readonly string[]
}

/** Main nutrients and the charge in which plants take them. */
const charges = { N: 1, P: 1, K: 1, Ca: 2, Mg: 2 } as const
const main = Object.keys(charges) as readonly (keyof typeof charges)[]

const chargeOf = (amount: (nutrient: keyof typeof charges) => number): number =>
  main.reduce((sum, nutrient) => sum + charges[nutrient] * amount(nutrient), 0)

const fed = (amounts: Amounts): number => chargeOf((nutrient) => nutrientAmount(amounts, nutrient))

/** The refill that replaces what the crops of the plan take with the water; null without crops, or without salts. */
export function refillOf(plan: Plan, { problem, amounts }: Pick<BatchFacts, 'problem' | 'amounts'>): Refill | null {
  const crops = [...new Set((plan.crops ?? []).flatMap(({ crop }) => (crop ? [crop] : [])))]
  const [water_eq_m3, feed_eq_m3] = [fed(problem.water), fed(amounts)]
  if (crops.length === 0 || feed_eq_m3 <= water_eq_m3) return null
  const uptake_eq_m3 = chargeOf((nutrient) => uptake.rows[nutrient].lettuce_mol_m3)
  const known = (crop: string) => Object.hasOwn(measuredUptake.rows, crop.toLowerCase().trim())
  return {
    strength: refillStrength({ feed_eq_m3, water_eq_m3, uptake_eq_m3 }),
    measured: crops.filter(known),
    assumed: crops.filter((crop) => !known(crop)),
  }
}
