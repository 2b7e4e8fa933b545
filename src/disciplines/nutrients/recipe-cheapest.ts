import { linearMinimum } from '../../kernel/linear-program.ts'
import { nutrientMasses_g_m3 } from './equations-formula.ts'
import {
  type LabelledRow,
  misfit,
  mixOf,
  PH_ROUNDS,
  phRows,
  type Recipe,
  type RecipeProblem,
  rowsOf,
  STANDS_g_m3,
  share,
} from './recipe.ts'

export interface CheapestRecipe extends Recipe {
  /** Price of a cubic metre of feed. */
  readonly cost_money: number
  /** False where no mix of the shelf meets every target within the band, and the pH with them. */
  readonly feasible: boolean
}

/** Scale of doses, g/m³, to keep the programme near one. */
const USUAL_DOSE = 100

function solved(problem: RecipeProblem, rows: readonly LabelledRow[]) {
  const { shelf } = problem
  const scaled = rows.map(({ coefficients, atLeast }) => {
    const size = Math.max(...coefficients.map((c) => Math.abs(c * USUAL_DOSE))) || 1
    return { coefficients: coefficients.map((c) => (c * USUAL_DOSE) / size), atLeast: atLeast / size }
  })
  const dearest = Math.max(...shelf.map((product) => product.price_money_kg!), Number.MIN_VALUE)
  const found = linearMinimum({ cost: shelf.map((product) => product.price_money_kg! / dearest), rows: scaled })
  return { found, doses: found.x.map((x) => Math.max(0, x * USUAL_DOSE)) }
}

/** Rows that keep each target within the band, and whether the water or the shelf makes that impossible. */
export function bandsOf({ shelf, targets, water: given }: RecipeProblem, within: number) {
  const water = nutrientMasses_g_m3(given)
  const bands = targets.map(({ nutrient, wanted_g_m3 }) => ({
    nutrient,
    min_g_m3: wanted_g_m3 * (1 - within),
    max_g_m3: wanted_g_m3 * (1 + within),
  }))
  const vain = bands.some(
    ({ nutrient, min_g_m3, max_g_m3 }) =>
      water[nutrient] > max_g_m3 ||
      (water[nutrient] < min_g_m3 && shelf.every((product) => share(product, nutrient) === 0)),
  )
  return { bands, vain }
}

/**
 * The cheapest doses that keep each target within a relative band, and the pH within its own: a linear programme whose
 * rows for the pH are renewed with the mean charges of the mix, as in `recipe`.
 *
 * Throws RangeError where a product has no price.
 */
export function cheapestRecipe(problem: RecipeProblem, within: number): CheapestRecipe {
  const { shelf, targets } = problem
  for (const { id, price_money_kg } of shelf)
    if (price_money_kg === undefined) throw new RangeError(`cheapestRecipe: ${id} has no price`)
  const { bands, vain } = bandsOf(problem, within)
  const firm = rowsOf({ ...problem, limits: [...problem.limits, ...bands] })
  let answer = solved(problem, firm)
  let enough = true
  for (let turn = 0; turn < PH_ROUNDS && problem.pH !== null && answer.found.feasible; turn++) {
    const asked = phRows(problem, answer.doses)
    const before = answer.doses
    enough = asked.every((row) => row.enough)
    answer = solved(problem, [...firm, ...asked])
    if (answer.doses.every((dose, j) => Math.abs(dose - before[j]!) < STANDS_g_m3)) break
  }
  const { found, doses } = answer
  const amounts = mixOf(problem, doses)
  const reached_g_m3 = nutrientMasses_g_m3(amounts)
  return {
    doses_g_m3: Object.fromEntries(shelf.map(({ id }, j) => [id, doses[j]!])),
    amounts,
    reached_g_m3,
    objective: misfit(targets, reached_g_m3),
    gap: found.gap,
    held: [],
    unmet: [],
    cost_money: shelf.reduce((sum, { price_money_kg }, j) => sum + (price_money_kg! * doses[j]!) / 1000, 0),
    feasible: found.feasible && !vain && enough,
  }
}
