import { describe, expect, it } from 'vitest'
import { acidIons, acidPlan } from './acid.ts'
import { feedAmounts, mixed } from './composition.ts'
import { analysedWater } from './equations-ph.ts'
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
