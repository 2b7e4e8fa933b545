import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bare, CN, EPS, KN, lettuce, MKP, masses, pure, seeded, targets } from '../../../test/mixtures.ts'
import { mixed } from './composition.ts'
import { nutrientMass, nutrientMasses_g_m3 } from './equations-formula.ts'
import { solutionPh } from './equations-ph.ts'
import { type RecipeProblem, recipe } from './recipe.ts'
import { gains, misses, pureProducts } from './recipe-reasons.ts'
import { weighedRecipe } from './recipe-weighing.ts'

describe('reasons', () => {
  it('of hard water that has too much calcium and magnesium', () => {
    const problem = { ...bare, water: masses({ Ca: 110, Mg: 30 }), shelf: [CN, KN, MKP, EPS], targets: lettuce }
    const found = recipe(problem)
    expect(found.doses_g_m3['EPS']).toBe(0)
    expect(found.held[0]?.bound).toEqual({ kind: 'none-left', product: 'EPS' })
    const reasons = misses(problem, found)
    expect(reasons[0]).toMatchObject({ nutrient: 'N', cause: 'held', heldBy: [{ by: 'Ca' }] })
    expect(
      reasons
        .filter(({ cause }) => cause === 'water')
        .map(({ nutrient }) => nutrient)
        .sort(),
    ).toEqual(['Ca', 'Mg'])
    // What the trade would say: bring nitrogen without calcium.
    expect(
      gains(problem, found, pureProducts())
        .slice(0, 3)
        .map(({ id }) => id),
    ).toContain('nitric-acid')
  })
})

describe('properties', () => {
  const shelf = pure(
    ...(['calcium-nitrate-double-salt', 'potassium-nitrate', 'monopotassium-phosphate', 'magnesium-sulfate'] as const),
    ...(['ammonium-nitrate', 'potassium-sulfate', 'boric-acid'] as const),
  )
  const doses = fc.tuple(...shelf.map(() => fc.double({ min: 20, max: 600, noNaN: true })))

  it('recipe → ions → recipe', () => {
    fc.assert(
      fc.property(doses, (given) => {
        const amounts = mixed(shelf.map((p, i) => ({ amounts: p.amounts_mol_kg, times: given[i]! / 1000 })))
        const reached = nutrientMasses_g_m3(amounts)
        const wanted = targets({
          N: reached.N,
          'NH4-N': reached['NH4-N'],
          P: reached.P,
          K: reached.K,
          Ca: reached.Ca,
          Mg: reached.Mg,
          S: reached.S,
          B: reached.B,
        })
        const found = recipe({ ...bare, shelf, targets: wanted })
        shelf.forEach(({ id }, i) => {
          expect(Math.abs(found.doses_g_m3[id]! / given[i]! - 1)).toBeLessThan(1e-4)
        })
      }),
      seeded,
    )
  })

  it('never a negative mass; bands hold; every answer is proved', () => {
    const wanted = fc.record({
      ...{
        N: fc.integer({ min: 40, max: 300 }),
        P: fc.integer({ min: 5, max: 80 }),
        K: fc.integer({ min: 40, max: 400 }),
      },
      ...{
        Ca: fc.integer({ min: 20, max: 250 }),
        Mg: fc.integer({ min: 5, max: 80 }),
        S: fc.integer({ min: 10, max: 150 }),
      },
    })
    const water = fc.record({
      Ca: fc.integer({ min: 0, max: 4 }),
      Mg: fc.integer({ min: 0, max: 2 }),
      HCO3: fc.integer({ min: 0, max: 6 }),
    })
    fc.assert(
      fc.property(wanted, water, (want, tap) => {
        const problem: RecipeProblem = {
          ...{ water: { ...tap, unmeasured: tap.HCO3 - 2 * tap.Ca - 2 * tap.Mg }, ammoniumShare: 0.15 },
          shelf: [...shelf, ...pure('nitric-acid', 'phosphoric-acid')],
          targets: targets(want),
          limits: [{ nutrient: 'Ca', max_g_m3: 150 }],
          pH: { low: 5.5, high: 6.2, temperature_C: 20, carbonDioxide_Pa: null },
        }
        const found = recipe(problem)
        expect(Math.min(...Object.values(found.doses_g_m3))).toBeGreaterThanOrEqual(0)
        expect(found.gap).toBeLessThan(1e-8)
        const { N, Ca } = found.reached_g_m3
        expect(found.reached_g_m3['NH4-N']).toBeLessThanOrEqual(0.15 * N + 1e-6)
        expect(Ca).toBeLessThanOrEqual(Math.max(150, nutrientMass({ amounts: problem.water, nutrient: 'Ca' })) + 1e-6)
        if (!found.unmet.some(({ kind }) => kind === 'pH-high'))
          expect(solutionPh({ amounts: found.amounts, temperature_C: 20, carbonDioxide_Pa: null })).toBeLessThan(
            6.2 + 1e-3,
          )
      }),
      seeded,
    )
  })

  it('doubling the volume doubles the grams', () => {
    const found = recipe({ ...bare, shelf, targets: lettuce })
    const scales = [{ step_kg: 1e-5, capacity_kg: 5 }]
    const problem = { ...bare, shelf, targets: lettuce }
    const one = weighedRecipe(problem, found, { volume_m3: 0.1, scales })
    const two = weighedRecipe(problem, found, { volume_m3: 0.2, scales })
    one.doses.forEach((dose, i) => {
      expect(two.doses[i]!.exact_kg).toBeCloseTo(2 * dose.exact_kg, 12)
    })
  })

  it('refuses targets that are not positive, and an empty shelf', () => {
    expect(() => recipe({ ...bare, shelf, targets: targets({ N: 0 }) })).toThrow(/target of N is 0/)
    expect(() => recipe({ ...bare, shelf: [], targets: lettuce })).toThrow(/shelf is empty/)
  })

  it('answers where the water alone already is the recipe', () => {
    const found = recipe({ ...bare, water: masses({ Ca: 90, Mg: 24 }), shelf, targets: targets({ Ca: 90, Mg: 24 }) })
    expect(Math.max(...Object.values(found.doses_g_m3))).toBeLessThan(1e-6)
    expect(found.objective).toBeLessThan(1e-20)
  })
})
