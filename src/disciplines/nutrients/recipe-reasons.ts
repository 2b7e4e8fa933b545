import { type Salt, salts } from '../../tables/salts.ts'
import type { Nutrient } from './composition.ts'
import { nutrientMasses_g_m3 } from './equations-formula.ts'
import { saltAmounts } from './equations-salts.ts'
import { type Bound, type Product, type Recipe, type RecipeProblem, recipe, rowsOf, share } from './recipe.ts'

/** Why a target is missed. */
export interface Miss {
  readonly nutrient: Nutrient
  readonly wanted_g_m3: number
  readonly reached_g_m3: number
  /** Nothing on the shelf carries it; the water alone brings too much; or other things hold its carrier. */
  readonly cause: 'no-carrier' | 'water' | 'held'
  /** The product that would cure the miss at the least misfit elsewhere, where one exists. */
  readonly carrier: string | null
  /** What holds that product, strongest first; the shares of all sum to 1. */
  readonly heldBy: readonly { readonly by: Nutrient | Bound; readonly share: number }[]
}

/** Relative miss that a grower would not notice. */
const UNNOTICED = 0.01

/** What a bound is about, beside its kind. */
const about = (bound: Bound): string => ('product' in bound ? bound.product : 'nutrient' in bound ? bound.nutrient : '')

const same = (a: Bound, b: Bound): boolean => a.kind === b.kind && about(a) === about(b)

/**
 * Forces on one product at the optimum. Where it is dosed, the pull of what is short equals the push of what is over
 * and of the bounds; that balance, nutrient by nutrient, is the reason for each miss.
 */
function forces(problem: RecipeProblem, found: Recipe, product: Product, rows: ReturnType<typeof rowsOf>) {
  const pulls = problem.targets.map(({ nutrient, wanted_g_m3, weight }) => {
    const miss = found.reached_g_m3[nutrient] / wanted_g_m3 - 1
    return { by: nutrient as Nutrient | Bound, force: (2 * weight * miss * share(product, nutrient)) / wanted_g_m3 }
  })
  const place = problem.shelf.indexOf(product)
  const bounds = found.held.flatMap(({ bound, price }) => {
    const row = rows.find((r) => same(r.bound, bound))
    return row ? [{ by: bound as Nutrient | Bound, force: -price * row.coefficients[place]! }] : []
  })
  const known = [...pulls, ...bounds]
  // The rows of the pH band are renewed while solving; the rest of the balance is theirs.
  const rest = -known.reduce((sum, { force }) => sum + force, 0)
  const pH = found.held.find(({ bound }) => bound.kind === 'pH-low' || bound.kind === 'pH-high')
  const most = Math.max(...known.map(({ force }) => Math.abs(force)))
  return pH && Math.abs(rest) > UNNOTICED * most ? [...known, { by: pH.bound as Nutrient | Bound, force: rest }] : known
}

/** Every target that is missed by more than a grower would notice, worst first, with its reason. */
export function misses(problem: RecipeProblem, found: Recipe): readonly Miss[] {
  const water = nutrientMasses_g_m3(problem.water)
  const rows = rowsOf(problem)
  return problem.targets
    .map((target) => ({ ...target, miss: found.reached_g_m3[target.nutrient] / target.wanted_g_m3 - 1 }))
    .filter(({ miss }) => Math.abs(miss) > UNNOTICED)
    .sort((a, b) => b.weight * b.miss ** 2 - a.weight * a.miss ** 2)
    .map(({ nutrient, wanted_g_m3, miss }) => {
      const told = { nutrient, wanted_g_m3, reached_g_m3: found.reached_g_m3[nutrient] }
      const carriers = problem.shelf
        .filter((product) => share(product, nutrient) > 0)
        .map((product) => ({ product, all: forces(problem, found, product, rows) }))
      if (miss > 0 && water[nutrient] >= wanted_g_m3 * (1 + UNNOTICED))
        return { ...told, cause: 'water' as const, carrier: null, heldBy: [] }
      if (carriers.length === 0) return { ...told, cause: 'no-carrier' as const, carrier: null, heldBy: [] }
      const against = ({ all }: (typeof carriers)[number]) =>
        all.filter(({ by, force }) => by !== nutrient && (miss < 0 ? force > 0 : force < 0))
      const own = ({ all }: (typeof carriers)[number]) => Math.abs(all.find(({ by }) => by === nutrient)?.force ?? 0)
      const best = carriers.reduce((a, b) => (own(b) > own(a) ? b : a))
      const holding = against(best).sort((a, b) => Math.abs(b.force) - Math.abs(a.force))
      const total = holding.reduce((sum, { force }) => sum + Math.abs(force), 0) || 1
      const heldBy = holding.map(({ by, force }) => ({ by, share: Math.abs(force) / total }))
      return { ...told, cause: 'held' as const, carrier: best.product.id, heldBy }
    })
}

/** What one more product on the shelf would buy. */
export interface Gain {
  readonly id: string
  readonly objective: number
  /** Part of the misfit that it takes away, 0 to 1. */
  readonly share: number
}

/** Smallest part of the misfit worth a purchase. */
const WORTH_BUYING = 0.05

/** Trace elements poison where they are not asked for. */
const traces: readonly Nutrient[] = ['Fe', 'Mn', 'Zn', 'B', 'Cu', 'Mo', 'Si', 'Na', 'Cl']

/** Solves again with each candidate added; best first, those that hardly help, or bring a trace, left out. */
export function gains(problem: RecipeProblem, found: Recipe, candidates: readonly Product[]): readonly Gain[] {
  if (found.objective === 0) return []
  const wanted = new Set(problem.targets.map(({ nutrient }) => nutrient))
  const strays = (product: Product) => traces.some((trace) => share(product, trace) > 0 && !wanted.has(trace))
  return candidates
    .filter((product) => problem.shelf.every(({ id }) => product.id !== id) && !strays(product))
    .map((product) => {
      const { objective } = recipe({ ...problem, shelf: [...problem.shelf, product] })
      return { id: product.id, objective, share: 1 - objective / found.objective }
    })
    .filter((gain) => gain.share > WORTH_BUYING)
    .sort((a, b) => a.objective - b.objective)
}

/** Every substance of the table as a product, pure. */
export const pureProducts = (): readonly Product[] =>
  (Object.keys(salts.rows) as readonly Salt[]).map((salt) => ({
    id: salt,
    amounts_mol_kg: saltAmounts({ salt, purity: 1 }),
  }))
