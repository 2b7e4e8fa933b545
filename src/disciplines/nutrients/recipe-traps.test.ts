import highsLoader from 'highs'
import { describe, expect, it } from 'vitest'
import { balcony, bare, CN, hardTap, inAir, lettuce, masses, pure, targets } from '../../../test/mixtures.ts'
import { mixed, type Nutrient } from './composition.ts'
import { nutrientMass } from './equations-formula.ts'
import { acidDose, alkalinity, analysedWater, solutionPh } from './equations-ph.ts'
import { type Product, type RecipeProblem, recipe } from './recipe.ts'
import { cheapestRecipe } from './recipe-cheapest.ts'
import { misses } from './recipe-reasons.ts'

describe('traps of hard water', () => {
  it('phosphoric acid alone for 3.5 meq/L would bring 108 mg/L of phosphorus', () => {
    expect(nutrientMass({ amounts: { H2PO4: 3.5 }, nutrient: 'P' })).toBeCloseTo(108.4, 1)
    const H2PO4 = acidDose({ amounts: hardTap, pH: 5.8, acid: { H2PO4: 1 }, temperature_C: 20, carbonDioxide_Pa: 42.6 })
    const P = nutrientMass({ amounts: { H2PO4 }, nutrient: 'P' })
    expect(P).toBeGreaterThan(108)
    expect(P).toBeLessThan(130)
  })

  it('sulfuric acid for 2.8 meq/L brings 45 mg/L of sulfur', () => {
    const tap = analysedWater({
      amounts: { Na: 78 / 22.99, Ca: 18 / 40.078, Mg: 5 / 24.305 },
      alkalinity_mol_m3: 3.6,
      pH: 8,
      temperature_C: 20,
    })
    const after = mixed([
      { amounts: tap, times: 1 },
      { amounts: { SO4: 1.4 }, times: 1 },
    ])
    expect(alkalinity({ amounts: after })).toBeCloseTo(0.8, 9)
    expect(nutrientMass({ amounts: { SO4: 1.4 }, nutrient: 'S' })).toBeCloseTo(45, 0)
  })

  it('calcium at 150 leaves about 106 of 150 mg/L nitrogen, and nitric acid cures it', () => {
    const problem: RecipeProblem = {
      ...{ water: hardTap, ammoniumShare: null, pH: null },
      shelf: balcony,
      targets: targets({ N: 150, P: 31, K: 180, Ca: 150, Mg: 40 }),
      limits: [
        { nutrient: 'Ca', max_g_m3: 150 },
        { nutrient: 'K', max_g_m3: 180 },
        { nutrient: 'P', min_g_m3: 30.99 },
      ],
    }
    const found = recipe(problem)
    expect(found.doses_g_m3['calcium-nitrate']).toBeCloseTo(358, 0)
    expect(found.reached_g_m3.N).toBeGreaterThan(104.5)
    expect(found.reached_g_m3.N).toBeLessThan(107.5)
    const [worst] = misses(problem, found)
    expect(worst).toMatchObject({ nutrient: 'N', cause: 'held' })
    expect(worst!.heldBy[0]!.by).toEqual({ kind: 'max', nutrient: 'Ca' })
    const helped = recipe({ ...problem, shelf: [...balcony, ...pure('nitric-acid')] })
    expect(helped.reached_g_m3.N).toBeCloseTo(150, 3)
  })

  it('salts and acid together: nitric and phosphoric share the carbonate and stay in the recipe', () => {
    const wanted = targets({ N: 150, P: 31, K: 180, Ca: 150, Mg: 40 })
    const problem: RecipeProblem = {
      ...bare,
      water: hardTap,
      shelf: [...balcony, ...pure('nitric-acid', 'phosphoric-acid')],
      targets: wanted,
      pH: inAir,
    }
    const found = recipe(problem)
    const pH = solutionPh({ amounts: found.amounts, temperature_C: 20, carbonDioxide_Pa: 42.6 })
    expect(pH).toBeLessThanOrEqual(6 + 1e-6)
    expect(found.reached_g_m3.P).toBeLessThan(35)
    expect(found.objective).toBeLessThan(0.01)
    // Phosphoric acid alone can only trade phosphorus against pH.
    const alone = recipe({ ...problem, shelf: [...balcony, ...pure('phosphoric-acid')] })
    expect(alone.reached_g_m3.P).toBeGreaterThan(100)
    expect(misses(problem, alone)[0]).toMatchObject({ nutrient: 'P' })
  })

  it('no acid on the shelf: the pH band is unmet and the salts are left alone', () => {
    const problem: RecipeProblem = {
      ...bare,
      water: hardTap,
      shelf: balcony,
      targets: targets({ N: 150, P: 31, K: 180, Ca: 150, Mg: 40 }),
      pH: inAir,
    }
    const found = recipe(problem)
    expect(found.unmet).toEqual([{ kind: 'pH-high' }])
    const without = recipe({ ...problem, pH: null })
    for (const id of Object.keys(without.doses_g_m3))
      expect(found.doses_g_m3[id]).toBeCloseTo(without.doses_g_m3[id]!, 6)
  })

  it('rain water: acid is not used to bring nitrogen below the pH band', () => {
    const problem: RecipeProblem = {
      ...bare,
      shelf: [...pure('monopotassium-phosphate', 'nitric-acid')],
      targets: targets({ N: 100, P: 30 }),
      pH: { ...inAir, carbonDioxide_Pa: null },
    }
    const found = recipe(problem)
    expect(found.doses_g_m3['nitric-acid']).toBe(0)
    expect(found.unmet).toEqual([{ kind: 'pH-low' }])
  })
})

describe('cheapest mix within a band', () => {
  const prices = {
    'calcium-nitrate-double-salt': 1.1,
    'potassium-nitrate': 2.3,
    'monopotassium-phosphate': 3.4,
    'magnesium-sulfate': 0.6,
    'ammonium-nitrate': 0.9,
    'potassium-sulfate': 1.4,
    'magnesium-nitrate': 1.9,
  } as const
  const shelf = pure(...(Object.keys(prices) as readonly (keyof typeof prices)[])).map((p) => ({
    ...p,
    price_money_kg: prices[p.id as keyof typeof prices],
  }))

  it('costs what an independent linear solver finds', async () => {
    const highs = await highsLoader()
    const share = (p: Product, nutrient: Nutrient) => nutrientMass({ amounts: p.amounts_mol_kg, nutrient }) / 1000
    for (const within of [0.02, 0.05, 0.1]) {
      const found = cheapestRecipe({ ...bare, shelf, targets: lettuce }, within)
      const sum = (of: (p: (typeof shelf)[number]) => number) =>
        shelf.map((p, j) => `${of(p).toFixed(15)} x${j}`).join(' + ')
      const bands = lettuce.map(({ nutrient, wanted_g_m3: t }, i) => {
        const line = sum((p) => share(p, nutrient))
        return ` l${i}: ${line} >= ${t * (1 - within)}\n h${i}: ${line} <= ${t * (1 + within)}`
      })
      const text = `Minimize\n obj: ${sum((p) => p.price_money_kg)}\nSubject To\n${bands.join('\n')}\nEnd\n`
      const reference = highs.solve(text).ObjectiveValue / 1000
      expect(found.feasible).toBe(true)
      expect(Math.abs(found.cost_money / reference - 1), `${found.cost_money} ${reference}`).toBeLessThan(1e-6)
      expect(found.gap).toBeLessThan(1e-9)
    }
  })

  it('keeps the pH of a hard water too, and is never dearer than the nearest', () => {
    const acids = pure('nitric-acid', 'phosphoric-acid').map((p) => ({ ...p, price_money_kg: 3 }))
    const problem: RecipeProblem = {
      ...{ water: hardTap, limits: [], ammoniumShare: 0.15, pH: inAir, shelf: [...shelf, ...acids] },
      targets: targets({ N: 150, P: 31, K: 180, Ca: 150, Mg: 40 }),
    }
    const costOf = (doses: Readonly<Record<string, number>>) =>
      problem.shelf.reduce((sum, p) => sum + (p.price_money_kg! * doses[p.id]!) / 1000, 0)
    const nearest = recipe(problem)
    const widths = [0.02, 0.05, 0.1, 0.2].map((within) => cheapestRecipe(problem, within))
    for (const [i, found] of widths.entries()) {
      expect(found.feasible).toBe(true)
      const pH = solutionPh({ amounts: found.amounts, temperature_C: 20, carbonDioxide_Pa: 42.6 })
      expect(pH).toBeLessThan(inAir.high + 1e-3)
      expect(pH).toBeGreaterThan(inAir.low - 1e-3)
      expect(found.cost_money).toBeLessThan(i === 0 ? costOf(nearest.doses_g_m3) * 1.0001 : widths[i - 1]!.cost_money)
    }
  })

  it('says so where no mix stays in the band', () => {
    expect(cheapestRecipe({ ...bare, shelf: shelf.slice(0, 3), targets: lettuce }, 0.05).feasible).toBe(false)
    expect(cheapestRecipe({ ...bare, water: masses({ Ca: 200 }), shelf, targets: lettuce }, 0.05).feasible).toBe(false)
    expect(() => cheapestRecipe({ ...bare, shelf: [CN], targets: lettuce }, 0.05)).toThrow(/CN has no price/)
  })
})
