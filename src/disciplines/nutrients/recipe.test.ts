import fc from 'fast-check'
import highsLoader from 'highs'
import { describe, expect, it } from 'vitest'
import { elements } from '../../tables/elements.ts'
import type { Salt } from '../../tables/salts.ts'
import { type Amounts, feedAmounts, mixed, type Nutrient } from './composition.ts'
import { nutrientMass, nutrientMasses_g_m3 } from './equations-formula.ts'
import { acidDose, alkalinity, analysedWater, solutionPh } from './equations-ph.ts'
import { labelAmounts, nitrateFromCharge, saltAmounts } from './equations-salts.ts'
import { type Product, type RecipeProblem, recipe, type Target } from './recipe.ts'
import { cheapestRecipe } from './recipe-cheapest.ts'
import { gains, misses, pureProducts } from './recipe-reasons.ts'
import { weighedRecipe } from './recipe-weighing.ts'

const seeded = { seed: 20261125, numRuns: 40 } as const
const pure = (...salts: readonly Salt[]): readonly Product[] =>
  salts.map((salt) => ({ id: salt, amounts_mol_kg: saltAmounts({ salt, purity: 1 }) }))
const targets = (wanted: Readonly<Partial<Record<Nutrient, number>>>): readonly Target[] =>
  (Object.entries(wanted) as readonly (readonly [Nutrient, number])[]).map(([nutrient, wanted_g_m3]) => ({
    nutrient,
    wanted_g_m3,
    weight: nutrient === 'S' ? 0.05 : 1,
  }))
const bare = { water: {}, limits: [], ammoniumShare: null, pH: null } as const
const masses = (wanted: Readonly<Partial<Record<Nutrient, number>>>): Amounts =>
  mixed(
    (Object.entries(wanted) as readonly (readonly ['Ca' | 'Mg', number])[]).map(([id, g]) => ({
      amounts: { [id]: g / 1000 / elements.rows[id].molarMass_kg_mol },
      times: 1,
    })),
  )

/** A product with the mass shares of the worked optima, five printed digits each. */
const fractions = (id: string, shares: Readonly<Partial<Record<'N' | 'P' | 'K' | 'Ca' | 'Mg', number>>>): Product => {
  const component = { N: 'NO3', P: 'H2PO4', K: 'K', Ca: 'Ca', Mg: 'Mg' } as const
  const amounts = Object.entries(shares).map(([element, share]) => {
    const key = element as keyof typeof component
    return [component[key], share / elements.rows[key].molarMass_kg_mol] as const
  })
  return { id, amounts_mol_kg: Object.fromEntries(amounts) }
}
const CN = fractions('CN', { N: 0.15554, Ca: 0.18544 })
const KN = fractions('KN', { N: 0.13854, K: 0.38672 })
const MKP = fractions('MKP', { P: 0.22761, K: 0.28731 })
const EPS = fractions('EPS', { Mg: 0.09861 })
const lettuce = targets({ N: 150, P: 31, K: 210, Ca: 90, Mg: 24 })

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

/** mg/L of a tap of hard water (82 Ca, 4.2 meq/L) and its shelf. */
const hardTap = analysedWater({
  amounts: mixed([
    { amounts: { Ca: 82 / 40.078, Mg: 14 / 24.305, Na: 12 / 22.99, K: 2 / 39.098 }, times: 1 },
    { amounts: { Cl: 18 / 35.45, SO4: 45 / 96.06, NO3: 1.2 / 14.007 }, times: 1 },
  ]),
  ...{ alkalinity_mol_m3: 4.2, pH: 7.5, temperature_C: 20 },
})
const bag = (id: string, label: Parameters<typeof labelAmounts>[0]['label']): Product => ({
  id,
  amounts_mol_kg: labelAmounts({ label, iron: 'FeDTPA', counterIon: 'SO4' }),
})
const balcony: readonly Product[] = [
  bag('calcium-nitrate', { nitrateN: 0.144, ammoniumN: 0.011, Ca: 0.19 }),
  ...pure('potassium-nitrate', 'monopotassium-phosphate', 'magnesium-sulfate'),
]
const inAir = { low: 5.6, high: 6, temperature_C: 20, carbonDioxide_Pa: 42.6 } as const

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

describe('weighing', () => {
  const shelf = pure(
    'calcium-nitrate-double-salt',
    'potassium-nitrate',
    'monopotassium-phosphate',
    'magnesium-sulfate',
    'sodium-molybdate',
    'boric-acid',
  )
  const problem = { ...bare, shelf, targets: targets({ N: 150, P: 31, K: 210, Ca: 90, Mg: 24, Mo: 0.024, B: 0.16 }) }
  const found = recipe(problem)
  const scales = [
    { step_kg: 1e-3, capacity_kg: 5 },
    { step_kg: 1e-5, capacity_kg: 0.2 },
  ]

  it('uses the coarsest scale that shows a dose in twenty steps', () => {
    const { doses } = weighedRecipe(problem, found, { volume_m3: 0.1, scales })
    const by = Object.fromEntries(doses.map((dose) => [dose.id, dose]))
    expect(by['calcium-nitrate-double-salt']!.step_kg).toBe(1e-3)
    expect(by['monopotassium-phosphate']!.step_kg).toBe(1e-5)
    for (const { mass_kg, step_kg, weakStock } of doses)
      if (!weakStock) expect(Math.abs(mass_kg / step_kg - Math.round(mass_kg / step_kg))).toBeLessThan(1e-6)
  })

  it('turns what cannot be weighed into a weak stock that can', () => {
    const { doses } = weighedRecipe(problem, found, { volume_m3: 0.036, scales: [scales[0]!] })
    const molybdate = doses.find(({ id }) => id === 'sodium-molybdate')!
    expect(molybdate.exact_kg).toBeLessThan(1e-5)
    const { dissolve_kg, volume_m3, thin_m3, draw_m3 } = molybdate.weakStock!
    expect(dissolve_kg).toBeGreaterThanOrEqual(0.02)
    expect(thin_m3).toBe(1e-5)
    expect(draw_m3).toBeGreaterThanOrEqual(5e-6)
    expect((dissolve_kg / volume_m3) * (thin_m3! / volume_m3) * draw_m3).toBeCloseTo(molybdate.exact_kg, 12)
  })

  it('is as good as any neighbour one step away', () => {
    const weighed = weighedRecipe(problem, found, { volume_m3: 0.05, scales: [scales[0]!] })
    expect(weighed.objective).toBeLessThan(0.01)
    expect(weighed.bandsHold).toBe(true)
    expect(() => weighedRecipe(problem, found, { volume_m3: 0, scales })).toThrow(RangeError)
    expect(() => weighedRecipe(problem, found, { volume_m3: 1, scales: [] })).toThrow(RangeError)
  })
})

describe('labels', () => {
  it('of a mixed bag count oxides as oxides: 6-12-28 holds 5.2 % phosphorus and 23.2 % potassium', () => {
    const amounts = labelAmounts({
      label: { nitrateN: 0.06, P2O5: 0.12, K2O: 0.28 },
      iron: 'FeDTPA',
      counterIon: 'SO4',
    })
    expect(nutrientMass({ amounts, nutrient: 'P' }) / 1000).toBeCloseTo(0.12 * 0.4364, 4)
    expect(nutrientMass({ amounts, nutrient: 'K' }) / 1000).toBeCloseTo(0.28 * 0.8302, 4)
    expect(alkalinity({ amounts })).toBeCloseTo(0, 9)
    // Potassium nitrate and phosphate alone make up this bag: its label balances.
    expect(Math.abs(amounts.unmeasured ?? 0)).toBeLessThan(0.05)
  })

  it('fill a missing anion with sulfate where told: 0-0-50 is K2SO4 with 17 % sulfur', () => {
    const amounts = labelAmounts({ label: { K2O: 0.5 }, iron: 'Fe', counterIon: 'SO4' })
    expect(nutrientMass({ amounts, nutrient: 'S' }) / 1000).toBeCloseTo(0.17, 2)
  })

  it('tell nitrate from ammonium by charge: MAP holds none, potassium nitrate nothing else', () => {
    expect(nitrateFromCharge({ totalN_mol_kg: 8.69, others: { H2PO4: 8.69 } })).toBeCloseTo(0, 9)
    expect(nitrateFromCharge({ totalN_mol_kg: 9.89, others: { K: 9.89 } })).toBeCloseTo(9.89, 9)
  })

  it('refuse shares that cannot be', () => {
    expect(() => labelAmounts({ label: { K2O: 0.7, P2O5: 0.5 }, iron: 'Fe', counterIon: 'SO4' })).toThrow(RangeError)
  })

  it('agree with the formula for a published feed', () => {
    const made = feedAmounts('mattson-peters-lettuce')
    expect(nutrientMass({ amounts: made, nutrient: 'N' })).toBeCloseTo(150.2, 0)
  })
})
