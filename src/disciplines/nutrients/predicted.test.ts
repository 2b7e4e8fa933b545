import { describe, expect, it } from 'vitest'
import { acidIons, acidPlan } from './acid.ts'
import { feedAmounts, mixed } from './composition.ts'
import { analysedWater, solutionPh } from './equations-ph.ts'
import { saltAmounts } from './equations-salts.ts'
import { expectedReadings } from './expected.ts'
import { penReadingOf, readingAt25 } from './pen-reading.ts'
import { predicted } from './predicted.ts'

const tap = analysedWater({ amounts: { Ca: 2 }, alkalinity_mol_m3: 4, pH: 7.5, temperature_C: 20 })
const plan = (acid: keyof typeof acidIons) =>
  acidPlan({ water: tap, acid: acidIons[acid], pH: 5.8, temperature_C: 20, air_Pa: 42.6 })

describe('acidPlan', () => {
  it('asks for more where the carbonate is to stay away than for a reading today', () => {
    for (const acid of ['nitric', 'phosphoric', 'sulfuric', 'citric'] as const) {
      const { now_mol_m3, lasting_mol_m3, driftsTo_pH, startsAt_pH } = plan(acid)
      expect(lasting_mol_m3).toBeGreaterThan(now_mol_m3)
      expect(driftsTo_pH).toBeGreaterThan(6.5)
      expect(startsAt_pH).toBeLessThan(5.8)
    }
  })

  it('names what comes with the acid', () => {
    expect(plan('nitric').brings_g_m3.N).toBeCloseTo(14.007 * plan('nitric').lasting_mol_m3, 6)
    expect(plan('phosphoric').brings_g_m3.P).toBeCloseTo(30.974 * plan('phosphoric').lasting_mol_m3, 6)
    expect(plan('sulfuric').brings_g_m3.S).toBeCloseTo(32.06 * plan('sulfuric').lasting_mol_m3, 6)
    expect(plan('citric').citrate_mol_m3).toBe(plan('citric').lasting_mol_m3)
  })

  it('takes two protons from sulfuric acid', () => {
    expect(plan('sulfuric').lasting_mol_m3 / plan('nitric').lasting_mol_m3).toBeCloseTo(0.5, 2)
    expect(plan('nitric').alkalinityBefore_mol_m3).toBeCloseTo(4, 9)
    expect(Math.abs(plan('nitric').alkalinityAfter_mol_m3)).toBeLessThan(0.02)
  })
})

describe('predicted', () => {
  const lettuce = predicted({ amounts: feedAmounts('mattson-peters-lettuce'), temperature_C: 20, air_Pa: 42.6 })

  it('holds the reading of the independent model in its band', () => {
    expect(lettuce.conductivity_S_m.low).toBeLessThan(0.1471)
    expect(lettuce.conductivity_S_m.high).toBeGreaterThan(0.1471)
    expect(lettuce.conductivityTrusted).toBe(true)
  })

  it('gives the share of ammonium that the recipe states, 8.6 %', () => {
    expect(lettuce.ammoniumShare).toBeCloseTo(0.086, 3)
  })

  it('leaves out solids that cannot form, and distrusts a stock', () => {
    expect(predicted({ amounts: { K: 5, NO3: 5 }, temperature_C: 20, air_Pa: 42.6 }).saturation).toEqual({})
    const stock = mixed([{ amounts: feedAmounts('hoagland-1'), times: 5 }])
    expect(predicted({ amounts: stock, temperature_C: 20, air_Pa: 42.6 }).conductivityTrusted).toBe(false)
    const bitter = { Mg: 10, SO4: 10 }
    expect(predicted({ amounts: bitter, temperature_C: 20, air_Pa: 42.6 }).conductivityTrusted).toBe(false)
  })

  it('warns of lime and calcium phosphate in an alkaline tank', () => {
    const hard = mixed([
      { amounts: tap, times: 1 },
      { amounts: feedAmounts('mattson-peters-lettuce'), times: 1 },
    ])
    const { saturation, pHInAir } = predicted({ amounts: hard, temperature_C: 25, air_Pa: 42.6 })
    expect(pHInAir.low).toBeGreaterThan(7.5)
    expect(saturation.brushite).toBeGreaterThan(0)
    expect(saturation.calcite).toBeGreaterThan(0)
  })
})

describe('what the pens may show', () => {
  const salt = (id: 'potassium-nitrate' | 'nitric-acid', by: 'formula' | 'label', density: number | null) => ({
    ...{ id, at: '', salt: id, acid: id === 'nitric-acid', passing: false, density_kg_m3: density, bottle: null },
    ...{ nitrogenBy: by, amounts_mol_kg: saltAmounts({ salt: id, purity: 1 }) },
  })
  const dosed = (by: 'formula' | 'label', step_kg: number, pen_pH: number | null) => {
    const product = salt('potassium-nitrate', by, null)
    const amounts = mixed([{ amounts: product.amounts_mol_kg, times: 1 }])
    const dose = { id: product.id, product, exact_kg: 0.1, mass_kg: 0.1, step_kg, weakStock: null }
    const doses = [{ ...dose, volume_m3: null, price_money: null }]
    const tank = { temperature_C: 20, air_Pa: null }
    const given = { amounts, water: {}, doses, volume_m3: 0.1, predicted: predicted({ amounts, ...tank }), ...tank }
    return expectedReadings({ ...given, pen_pH })
  }
  it('adds the halves of model, label, scale and pen by their squares', () => {
    const { conductivity_S_m: c, conductivityBy } = dosed('label', 0.002, 0.1)
    // 3 % of the model, 4 % of the only label, 1 g of a hundred, 2 % of the pen.
    expect(conductivityBy).toEqual({ model: 0.03, labels: 0.04, scale: 0.01, pen: 0.02 })
    expect((c.high - c.low) / (c.high + c.low)).toBeCloseTo(Math.sqrt(9 + 16 + 1 + 4) / 100, 9)
  })
  it('is wider by a coarser scale, a label, an older pen', () => {
    const width = ({ low, high }: { readonly low: number; readonly high: number }) => high - low
    expect(width(dosed('formula', 0.02, 0.1).conductivity_S_m)).toBeGreaterThan(
      width(dosed('formula', 0.002, 0.1).conductivity_S_m),
    )
    expect(width(dosed('label', 0.002, 0.1).conductivity_S_m)).toBeGreaterThan(
      width(dosed('formula', 0.002, 0.1).conductivity_S_m),
    )
    expect(width(dosed('formula', 0.002, 0.4).pHLater)).toBeGreaterThan(width(dosed('formula', 0.002, 0.1).pHLater))
    expect(dosed('formula', 0.002, null).pHBy.pen).toBe(null)
  })
  it('holds the pH of a hard water whose alkalinity is five per cent off', () => {
    const water = tap
    const acid = salt('nitric-acid', 'formula', null)
    const dose_kg = 0.9 * 4 * 0.063012
    const amounts = mixed([
      { amounts: water, times: 1 },
      { amounts: acid.amounts_mol_kg, times: dose_kg },
    ])
    const dose = { id: acid.id, product: acid, exact_kg: dose_kg, mass_kg: dose_kg, step_kg: 1e-6, weakStock: null }
    const tank = { temperature_C: 20, air_Pa: null }
    const { pHLater, pHBy } = expectedReadings({
      ...{ amounts, water, doses: [{ ...dose, volume_m3: null, price_money: null }], volume_m3: 1, pen_pH: null },
      ...{ predicted: predicted({ amounts, ...tank }), ...tank },
    })
    const off = (share: number) =>
      solutionPh({
        amounts: { ...amounts, unmeasured: (amounts.unmeasured ?? 0) + share * 4 },
        temperature_C: 20,
        carbonDioxide_Pa: null,
      })
    const mid = off(0)
    expect(off(0.05)).toBeLessThan(pHLater.high)
    expect(off(-0.05)).toBeGreaterThan(pHLater.low)
    // The acid's own one per cent adds little to it.
    expect(pHBy.alkalinity).toBeLessThan(1.2 * Math.max(off(0.05) - mid, mid - off(-0.05)))
  })
})

describe('a conductivity pen', () => {
  it('is read on its own scale, with its unit, or asked about', () => {
    expect(penReadingOf('1100', { scale: 'ppm-500' })).toEqual({ read_S_m: 0.22 })
    expect(penReadingOf('1100 ppm', { scale: 'mS/cm' })).toHaveProperty('onScales_S_m')
    expect(penReadingOf('1100', { scale: 'unmarked' })).toEqual({
      onScales_S_m: { 'ppm-500': 0.22, 'ppm-640': 1100 / 6400, 'ppm-700': 1100 / 7000 },
    })
    expect(penReadingOf('1,4', { scale: 'mS/cm' })).toEqual({ read_S_m: 1.4 / 10 })
    expect(penReadingOf('1800 mS/cm', { scale: 'mS/cm' })).toEqual({ beyond_S_m: 180, perhaps_S_m: 0.18 })
    expect(penReadingOf('much', { scale: 'mS/cm' })).toEqual({ unread: true })
  })
  it('without compensation reads cold water low: 1.273 of 1.408 at 20 °C for potassium chloride', () => {
    const at = (compensation_per_K: number | undefined) =>
      readingAt25({ reading_S_m: 0.1273, temperature_C: 20, compensation_per_K })
    // Within the spread of coefficients, 0.019 of feed against 0.0192 of this salt.
    expect(Math.abs(at(0) / 0.1408 - 1)).toBeLessThan(0.002)
    expect(at(0.019)).toBeCloseTo(0.1273, 12)
    expect(at(undefined)).toBe(0.1273)
  })
})
