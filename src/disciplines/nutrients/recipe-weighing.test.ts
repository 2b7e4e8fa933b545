import { describe, expect, it } from 'vitest'
import { bare, pure, targets } from '../../../test/mixtures.ts'
import { feedAmounts } from './composition.ts'
import { nutrientMass } from './equations-formula.ts'
import { alkalinity } from './equations-ph.ts'
import { labelAmounts, nitrateFromCharge } from './equations-salts.ts'
import { recipe } from './recipe.ts'
import { weighedRecipe } from './recipe-weighing.ts'

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
