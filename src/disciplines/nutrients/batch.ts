import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { feedPractice } from '../../tables/feed-practice.ts'
import { salts } from '../../tables/salts.ts'
import { feedConstants } from '../../tables/solvent.ts'
import { type AcidPlan, acidPlan } from './acid.ts'
import { type Aimed, aimedRecipe, isCheapest } from './aim.ts'
import type { BlendFacts } from './blended.ts'
import { type Amounts, ionsOf, type Nutrient, nutrients } from './composition.ts'
import { airCarbonDioxide } from './equations-air.ts'
import { nutrientMasses_g_m3 } from './equations-formula.ts'
import { alkalinity, bufferCapacity, solutionPh } from './equations-ph.ts'
import { type Expected, expectedReadings } from './expected.ts'
import { penFacts } from './instruments.ts'
import { type Predicted, predicted } from './predicted.ts'
import type { Limit, Recipe, RecipeProblem, Target } from './recipe.ts'
import { type Miss, misses } from './recipe-reasons.ts'
import { type Scale, type Weighed, weighedRecipe } from './recipe-weighing.ts'
import { type Refill, refillOf } from './refill.ts'
import type { ShelfFacts, ShelfProduct } from './shelf.ts'

/** A dose as the batch sheet prints it. */
export interface BatchDose extends Weighed {
  readonly product: ShelfProduct
  /** Volume of a liquid whose density is known. */
  readonly volume_m3: number | null
  readonly price_money: number | null
}

/** What one acid of the shelf, alone, would do to the water. */
export interface AcidFacts extends AcidPlan {
  readonly product: ShelfProduct
  /** Acid as sold for a cubic metre of feed, by the lasting dose. */
  readonly mass_g_m3: number
  readonly volume_m3_m3: number | null
}

export interface BatchFacts {
  readonly temperature_C: number
  /** Carbon dioxide that the tank stands open to; null where it is closed, and then nothing degasses. */
  readonly air_Pa: number | null
  readonly temperatureFrom: 'feed' | 'air'
  readonly volume_m3: number | null
  readonly problem: RecipeProblem
  readonly found: Recipe
  /** What aiming at the cheapest came to; null where the plan aims at the nearest. */
  readonly cheapest: Aimed['cheapest']
  readonly misses: readonly Miss[]
  /** Doses to weigh; not known without a volume and a scale. */
  readonly doses: Known<readonly BatchDose[]>
  /** Composition as weighed, or as computed where nothing is weighed yet. */
  readonly amounts: Amounts
  readonly reached_g_m3: Readonly<Record<Nutrient, number>>
  readonly predicted: Predicted
  /** What the pens may show of it, by model, labels, scale and pens together. */
  readonly expected: Expected
  /** The water before anything is added: as it runs, and after it has met the air. */
  readonly waterPh: { readonly closed: number; readonly inAir: number }
  readonly alkalinityLeft_eq_m3: number
  /** Acid that moves the tank by one pH, in the air. */
  readonly buffer_eq_m3: number
  readonly acids: readonly AcidFacts[]
  /** With what the tank is topped up to begin with; null where no crop is named. */
  readonly refill: Refill | null
  readonly cost: { readonly known_money: number; readonly unpriced: readonly string[] } | null
  readonly unreadTargets: readonly string[]
}

const isNutrient = (key: string): key is Nutrient => (nutrients as readonly string[]).includes(key)

/** Main elements count by their own; sulfur feeds as well over a wide range. */
export const weightOf = (nutrient: Nutrient): number => (nutrient === 'S' ? feedConstants.rows.sulfurWeight.value : 1)

export function targetsOf(plan: Plan): { readonly targets: readonly Target[]; readonly unread: readonly string[] } {
  const entries = Object.entries(plan.feed?.targets ?? {})
  const targets = entries.flatMap(([nutrient, wanted_g_m3]) =>
    isNutrient(nutrient) && wanted_g_m3 > 0 ? [{ nutrient, wanted_g_m3, weight: weightOf(nutrient) }] : [],
  )
  const unread = [...entries, ...Object.entries(plan.feed?.limits ?? {})].map(([key]) => key)
  return { targets, unread: unread.filter((key) => !isNutrient(key)) }
}

const limitsOf = (plan: Plan): readonly Limit[] =>
  Object.entries(plan.feed?.limits ?? {}).flatMap(([nutrient, max_g_m3]) =>
    isNutrient(nutrient) ? [{ nutrient, max_g_m3 }] : [],
  )

/** Temperature of the solution: as stated, else the middle of the air's, held liquid. */
export function feedTemperature(plan: Plan): Known<{ readonly value_C: number; readonly from: 'feed' | 'air' }> {
  const own = plan.feed?.temperature_C
  if (own !== undefined) return { known: { value_C: own, from: 'feed' } }
  const { airLow_C, airHigh_C } = plan.place ?? {}
  if (airLow_C === undefined || airHigh_C === undefined) return { needs: ['feed/temperature'] }
  return { known: { value_C: Math.min(40, Math.max(1, (airLow_C + airHigh_C) / 2)), from: 'air' } }
}

/** Carbon dioxide that the tank stands open to: that of the place's air, or null where the plan keeps it closed. */
const airOf = (plan: Plan): number | null =>
  plan.feed?.air === 'closed' ? null : airCarbonDioxide({ altitude_m: plan.place?.altitude_m ?? 0 })

interface Tank {
  readonly temperature_C: number
  readonly air_Pa: number | null
}

function acidFacts(product: ShelfProduct, water: Amounts, pH: number, tank: Tank): readonly AcidFacts[] {
  if (!product.acid || product.salt === null) return []
  const acid = ionsOf(salts.rows[product.salt].ions)
  const plan = acidPlan({ water, acid, pH, ...tank })
  const perKilogram = Object.values(product.amounts_mol_kg).reduce((sum, n) => sum + n, 0)
  const mass_g_m3 = (plan.lasting_mol_m3 / perKilogram) * 1000
  const { density_kg_m3 } = product
  const volume_m3_m3 = density_kg_m3 === null ? null : mass_g_m3 / 1000 / density_kg_m3
  return [{ ...plan, product, mass_g_m3, volume_m3_m3 }]
}

function scalesOf(plan: Plan): readonly Scale[] {
  const { scale_kg, fineScale_kg } = plan.feed ?? {}
  const { low, high } = feedPractice.rows.scalePan
  return [
    ...(scale_kg === undefined ? [] : [{ step_kg: scale_kg, capacity_kg: scale_kg * low }]),
    ...(fineScale_kg === undefined ? [] : [{ step_kg: fineScale_kg, capacity_kg: fineScale_kg * high }]),
  ]
}

function costOf(doses: readonly BatchDose[]): BatchFacts['cost'] {
  const used = doses.filter(({ mass_kg }) => mass_kg > 0)
  const known_money = used.reduce((sum, { price_money }) => sum + (price_money ?? 0), 0)
  return { known_money, unpriced: used.filter(({ price_money }) => price_money === null).map(({ id }) => id) }
}

function weighed(plan: Plan, problem: RecipeProblem, found: Recipe, products: readonly ShelfProduct[]) {
  const volume_m3 = plan.feed?.batch_m3
  const scales = scalesOf(plan)
  const needs = [...(volume_m3 === undefined ? ['feed/batch'] : []), ...(scales.length === 0 ? ['feed/scale'] : [])]
  if (volume_m3 === undefined || scales.length === 0) return { needs }
  const answer = weighedRecipe(problem, found, { volume_m3, scales })
  const doses = answer.doses.map((dose, j): BatchDose => {
    const product = products[j]!
    const { density_kg_m3, price_money_kg } = product
    const price_money = price_money_kg === undefined ? null : price_money_kg * dose.mass_kg
    return { ...dose, product, volume_m3: density_kg_m3 === null ? null : dose.mass_kg / density_kg_m3, price_money }
  })
  return { known: { doses, answer } }
}

/** The recipe of the plan: salts and lasting acids together, weighed, with the chemistry of the batch. */
export function batchFacts(plan: Plan, blend: Known<BlendFacts>, shelf: ShelfFacts): Known<BatchFacts> {
  const temperature = feedTemperature(plan)
  const { targets, unread } = targetsOf(plan)
  const products = shelf.products.filter((p) => !p.passing)
  const needs = [
    ...(isKnown(blend) ? [] : blend.needs),
    ...(isKnown(temperature) ? [] : temperature.needs),
    ...(targets.length === 0 ? ['feed/targets'] : []),
    ...(products.length === 0 ? ['feed/shelf'] : []),
  ]
  if (!isKnown(blend) || !isKnown(temperature) || needs.length > 0) return { needs }
  const here: Tank = { temperature_C: temperature.known.value_C, air_Pa: airOf(plan) }
  const conditions = { temperature_C: here.temperature_C, carbonDioxide_Pa: here.air_Pa }
  const pH = plan.feed?.pH
  const half = feedPractice.rows.phBand.low
  const problem: RecipeProblem = {
    water: blend.known.amounts,
    shelf: products,
    targets,
    limits: limitsOf(plan),
    ammoniumShare: plan.feed?.ammoniumShare ?? feedConstants.rows.ammoniumShare.value,
    pH: pH === undefined ? null : { ...conditions, low: pH - half, high: pH + half },
  }
  const { found, cheapest, rounding } = aimedRecipe(plan, problem, products)
  const scaled = weighed(plan, rounding, found, products)
  const amounts = isKnown(scaled) ? scaled.known.answer.amounts : found.amounts
  const tank = predicted({ amounts, ...here })
  const inAir = (tank.pHInAir.low + tank.pHInAir.high) / 2
  return {
    known: {
      ...{ ...here, temperatureFrom: temperature.known.from },
      ...{ volume_m3: plan.feed?.batch_m3 ?? null, problem, found, cheapest, amounts },
      // The cheapest leaves elements where they cost least: nothing holds them.
      misses: isCheapest({ cheapest }) ? [] : misses(problem, found),
      doses: isKnown(scaled) ? { known: scaled.known.doses } : scaled,
      reached_g_m3: isKnown(scaled) ? scaled.known.answer.reached_g_m3 : nutrientMasses_g_m3(amounts),
      predicted: tank,
      expected: expectedReadings({
        ...{ amounts, water: blend.known.amounts, doses: isKnown(scaled) ? scaled.known.doses : [], ...here },
        ...{ volume_m3: plan.feed?.batch_m3 ?? null, predicted: tank, pen_pH: penFacts(plan).pH },
      }),
      waterPh: {
        closed: solutionPh({ ...conditions, amounts: blend.known.amounts, carbonDioxide_Pa: null }),
        inAir: solutionPh({ ...conditions, amounts: blend.known.amounts }),
      },
      alkalinityLeft_eq_m3: alkalinity({ amounts }),
      buffer_eq_m3: bufferCapacity({ amounts, pH: inAir, ...conditions }),
      acids: pH === undefined ? [] : shelf.products.flatMap((p) => acidFacts(p, blend.known.amounts, pH, here)),
      refill: refillOf(plan, { problem, amounts }),
      cost: isKnown(scaled) ? costOf(scaled.known.doses) : null,
      unreadTargets: unread,
    },
  }
}
