import { feedConstants } from '../../tables/solvent.ts'
import { nutrientMasses_g_m3 } from './equations-formula.ts'
import { misfit, mixOf, type Recipe, type RecipeProblem, rowsOf, setsPh, share } from './recipe.ts'

/** A scale that the grower owns. */
export interface Scale {
  readonly step_kg: number
  readonly capacity_kg: number
}

/** A weaker stock for a dose too small to weigh. */
export interface WeakStock {
  /** Mass to dissolve. */
  readonly dissolve_kg: number
  /** Volume to make it up to. */
  readonly volume_m3: number
  /** Volume of it to make up to the same volume again, where the draw would be too small to measure, else null. */
  readonly thin_m3: number | null
  /** Volume that the batch needs, of the thinned stock where there is one. */
  readonly draw_m3: number
}

export interface Weighed {
  readonly id: string
  readonly exact_kg: number
  /** Mass to weigh, a whole number of steps; what the weak stock delivers where there is one. */
  readonly mass_kg: number
  readonly step_kg: number
  readonly weakStock: WeakStock | null
}

export interface WeighedRecipe extends Pick<Recipe, 'amounts' | 'reached_g_m3' | 'objective'> {
  readonly doses: readonly Weighed[]
  /** Whether all hard bands still hold after rounding, to one part in a thousand. */
  readonly bandsHold: boolean
}

/** Batches that one weak stock serves, tried in turn until the mass can be weighed. */
const BATCHES = [10, 20, 50, 100, 200, 500, 1e3, 2e3, 5e3, 1e4, 2e4, 5e4, 1e5] as const
/** Bottle in which a weak stock is made. */
const BOTTLE_m3 = 1e-3
/** Smallest volume to draw with a syringe, and the part of a bottle to take for thinning. */
const LEAST_DRAW_m3 = 5e-6
const THINNED = 100
/** Rounds of single steps; rounding to the nearest step needs few. */
const PASSES = 10
const BAND_SLACK = 1e-3

/** The coarsest scale on which the dose is at least twenty steps, else null. */
function scaleFor(dose_kg: number, scales: readonly Scale[]): Scale | null {
  const least = feedConstants.rows.weighable.value
  const fit = scales.filter(({ step_kg, capacity_kg }) => dose_kg >= least * step_kg && dose_kg <= capacity_kg)
  return fit.length ? fit.reduce((a, b) => (b.step_kg > a.step_kg ? b : a)) : null
}

function weakStock(dose_kg: number, finest: Scale): WeakStock {
  const least = feedConstants.rows.weighable.value * finest.step_kg
  const batches = BATCHES.find((n) => dose_kg * n >= least) ?? BATCHES.at(-1)!
  const dissolve_kg = Math.round((dose_kg * batches) / finest.step_kg) * finest.step_kg
  const draw_m3 = (dose_kg / dissolve_kg) * BOTTLE_m3
  const small = draw_m3 < LEAST_DRAW_m3
  return {
    dissolve_kg,
    volume_m3: BOTTLE_m3,
    thin_m3: small ? BOTTLE_m3 / THINNED : null,
    draw_m3: small ? draw_m3 * THINNED : draw_m3,
  }
}

/** Doses at their nearest step: by the scale that suits, by volume where it is poured, or as a weaker stock. */
function nearestSteps(
  problem: RecipeProblem,
  doses_g_m3: Recipe['doses_g_m3'],
  volume_m3: number,
  scales: readonly Scale[],
): readonly Weighed[] {
  const finest = scales.reduce((a, b) => (b.step_kg < a.step_kg ? b : a))
  return problem.shelf.map(({ id, step_kg: poured_kg }) => {
    const exact_kg = ((doses_g_m3[id] ?? 0) / 1000) * volume_m3
    if (poured_kg !== undefined) {
      const mass_kg = Math.round(exact_kg / poured_kg) * poured_kg
      return { id, exact_kg, mass_kg, step_kg: poured_kg, weakStock: null }
    }
    const scale = scaleFor(exact_kg, scales)
    const heavy = exact_kg >= feedConstants.rows.weighable.value * finest.step_kg
    const { step_kg } = scale ?? finest
    if (exact_kg === 0 || scale || heavy)
      return { id, exact_kg, mass_kg: Math.round(exact_kg / step_kg) * step_kg, step_kg, weakStock: null }
    return { id, exact_kg, mass_kg: exact_kg, step_kg, weakStock: weakStock(exact_kg, finest) }
  })
}

/**
 * The recipe in masses that the grower's scales can show. Doses start at the nearest step and move by single steps
 * while the misfit falls and the hard bands hold. A dose below twenty steps of the finest scale becomes a weak stock.
 *
 * Throws RangeError where no scale is given or the volume is not positive.
 */
export function weighedRecipe(
  problem: RecipeProblem,
  found: Pick<Recipe, 'doses_g_m3'>,
  batch: { readonly volume_m3: number; readonly scales: readonly Scale[] },
): WeighedRecipe {
  const { volume_m3, scales } = batch
  if (scales.length === 0) throw new RangeError('weighedRecipe: no scale')
  if (!(volume_m3 > 0)) throw new RangeError(`weighedRecipe: volume is ${volume_m3}`)
  const doses = nearestSteps(problem, found.doses_g_m3, volume_m3, scales)
  const rows = rowsOf(problem)
  const water = nutrientMasses_g_m3(problem.water)
  const lines = problem.targets.map(({ nutrient, wanted_g_m3, weight }) => ({
    weight,
    a: problem.shelf.map((product) => share(product, nutrient) / wanted_g_m3),
    short: 1 - water[nutrient] / wanted_g_m3,
  }))
  const state = (masses: readonly number[]) => {
    const perVolume = masses.map((m) => (m * 1000) / volume_m3)
    const bandsHold = rows.every(({ coefficients, atLeast }) => {
      const sum = coefficients.reduce((total, c, j) => total + c * perVolume[j]!, 0)
      return sum >= atLeast - BAND_SLACK * (Math.abs(atLeast) + 1e-9)
    })
    const objective = lines.reduce((sum, { weight, a, short }) => {
      const miss = a.reduce((total, share, j) => total + share * perVolume[j]!, 0) - short
      return sum + weight * miss ** 2
    }, 0)
    return { bandsHold, objective }
  }
  let masses = doses.map(({ mass_kg }) => mass_kg)
  let best = state(masses)
  for (let improved = true, pass = 0; improved && pass < PASSES; pass++) {
    improved = false
    doses.forEach(({ weakStock: weak, exact_kg, step_kg }, j) => {
      // What holds the pH stays at its nearest step: the misfit does not see the pH.
      if (weak || exact_kg === 0 || (problem.pH !== null && setsPh(problem.shelf[j]!))) return
      for (const step of [step_kg, -step_kg]) {
        const trial = masses.map((m, i) => (i === j ? Math.round((m + step) / step_kg) * step_kg : m))
        if (trial[j]! < 0) continue
        const next = state(trial)
        const better = next.bandsHold === best.bandsHold ? next.objective < best.objective * (1 - 1e-9) : next.bandsHold
        if (better) [masses, best, improved] = [trial, next, true]
      }
    })
  }
  const amounts = mixOf(
    problem,
    masses.map((m) => (m * 1000) / volume_m3),
  )
  const reached_g_m3 = nutrientMasses_g_m3(amounts)
  const bandsHold = best.bandsHold
  const objective = misfit(problem.targets, reached_g_m3)
  return {
    doses: doses.map((dose, j) => ({ ...dose, mass_kg: masses[j]! })),
    amounts,
    reached_g_m3,
    bandsHold,
    objective,
  }
}
