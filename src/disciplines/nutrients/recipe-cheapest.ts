import { linearMinimum } from '../../kernel/linear-program.ts'
import { nutrientMasses_g_m3 } from './equations-formula.ts'
import { misfit, mixOf, type Recipe, type RecipeProblem, rowsOf, share } from './recipe.ts'

export interface CheapestRecipe extends Omit<Recipe, 'held' | 'unmet'> {
  /** Price of a cubic metre of feed. */
  readonly cost_money: number
  /** False where no mix of the shelf meets every target within the band. */
  readonly feasible: boolean
}

/** Scale of doses, g/m³, to keep the programme near one. */
const USUAL_DOSE = 100

/**
 * The cheapest doses that keep each target within a relative band; the pH band is left to `recipe`.
 *
 * Throws RangeError where a product has no price.
 */
export function cheapestRecipe(problem: RecipeProblem, within: number): CheapestRecipe {
  const { shelf, targets } = problem
  for (const { id, price_money_kg } of shelf)
    if (price_money_kg === undefined) throw new RangeError(`cheapestRecipe: ${id} has no price`)
  const bands = targets.map(({ nutrient, wanted_g_m3 }) => ({
    nutrient,
    min_g_m3: wanted_g_m3 * (1 - within),
    max_g_m3: wanted_g_m3 * (1 + within),
  }))
  const water = nutrientMasses_g_m3(problem.water)
  const rows = rowsOf({ ...problem, limits: [...problem.limits, ...bands] }).map(({ coefficients, atLeast }) => {
    const size = Math.max(...coefficients.map((c) => Math.abs(c * USUAL_DOSE))) || 1
    return { coefficients: coefficients.map((c) => (c * USUAL_DOSE) / size), atLeast: atLeast / size }
  })
  const dearest = Math.max(...shelf.map((product) => product.price_money_kg!), Number.MIN_VALUE)
  const found = linearMinimum({ cost: shelf.map((product) => product.price_money_kg! / dearest), rows })
  const doses = found.x.map((x) => Math.max(0, x * USUAL_DOSE))
  const amounts = mixOf(problem, doses)
  const reached_g_m3 = nutrientMasses_g_m3(amounts)
  const tooMuch = bands.some(({ nutrient, max_g_m3 }) => water[nutrient] > max_g_m3)
  const none = bands.some(
    ({ nutrient, min_g_m3 }) => water[nutrient] < min_g_m3 && shelf.every((product) => share(product, nutrient) === 0),
  )
  return {
    doses_g_m3: Object.fromEntries(shelf.map(({ id }, j) => [id, doses[j]!])),
    amounts,
    reached_g_m3,
    objective: misfit(targets, reached_g_m3),
    gap: found.gap,
    cost_money: shelf.reduce((sum, { price_money_kg }, j) => sum + (price_money_kg! * doses[j]!) / 1000, 0),
    feasible: found.feasible && !tooMuch && !none,
  }
}
