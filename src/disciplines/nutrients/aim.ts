import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { feedPractice } from '../../tables/feed-practice.ts'
import { type Recipe, type RecipeProblem, recipe } from './recipe.ts'
import { bandsOf, cheapestRecipe } from './recipe-cheapest.ts'
import type { ShelfProduct } from './shelf.ts'

/** What the cheapest recipe within a band costs beside the nearest one, for a cubic metre of feed. */
export interface Cheapest {
  readonly within: number
  /** False where no mix of the shelf keeps every element in the band; the batch is then the nearest. */
  readonly feasible: boolean
  readonly cost_money: number
  readonly nearest_money: number
}

/** The recipe that a plan aims at, with what its cheapness is worth; null where it aims at the nearest. */
export interface Aimed {
  readonly found: Recipe
  readonly cheapest: Known<Cheapest> | null
  /** What the doses must still hold once they are rounded to the scale. */
  readonly rounding: RecipeProblem
}

/** The nearest recipe, or the cheapest in the band where the plan asks for it, prices are told and there is one. */
export function aimedRecipe(plan: Plan, problem: RecipeProblem, products: readonly ShelfProduct[]): Aimed {
  const nearest = recipe(problem)
  if (plan.feed?.aim !== 'cheapest') return { found: nearest, cheapest: null, rounding: problem }
  const needs = products.flatMap((p) => (p.price_money_kg === undefined ? [`${p.at}/price`] : []))
  if (needs.length > 0) return { found: nearest, cheapest: { needs }, rounding: problem }
  const within = plan.feed.within ?? feedPractice.rows.cheapestWithin.high
  const { cost_money, feasible, ...found } = cheapestRecipe(problem, within)
  const nearest_money = products.reduce(
    (sum, { id, price_money_kg }) => sum + ((price_money_kg ?? 0) * (nearest.doses_g_m3[id] ?? 0)) / 1000,
    0,
  )
  const cheapest = { known: { within, feasible, cost_money, nearest_money } }
  if (!feasible) return { found: nearest, cheapest, rounding: problem }
  const limits = [...problem.limits, ...bandsOf(problem, within).bands]
  return { found, cheapest, rounding: { ...problem, limits } }
}

/** Whether the batch is the cheapest one. */
export const isCheapest = ({ cheapest }: Pick<Aimed, 'cheapest'>): boolean =>
  cheapest !== null && isKnown(cheapest) && cheapest.known.feasible
