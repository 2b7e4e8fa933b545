import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { root } from '../../kernel/solve.ts'
import { feedAmounts, mixed } from './composition.ts'
import { acidDemand, acidDose, analysedWater, atOwnPh, bufferCapacity, phShift, solutionPh } from './equations-ph.ts'
import { saltAmounts } from './equations-salts.ts'
import { saturationIndex } from './equations-saturation.ts'

const seeded = { seed: 20261125, numRuns: 60 } as const
const closed25 = { temperature_C: 25, carbonDioxide_Pa: null } as const
const closed20 = { temperature_C: 20, carbonDioxide_Pa: null } as const
const air20 = { temperature_C: 20, carbonDioxide_Pa: 42.6 } as const
const hoagland = feedAmounts('hoagland-1')
const amount = (max: number) => fc.double({ min: 0, max, noNaN: true })
const feed = fc.record({
  ...{ NO3: amount(20), NH4: amount(2), H2PO4: amount(2.5), K: amount(12), Ca: amount(6), Mg: amount(3) },
  ...{ SO4: amount(5), Na: amount(4), Cl: amount(4), HCO3: amount(5), H3BO3: amount(0.1), citrate: amount(0.5) },
})
const temperature = fc.double({ min: 2, max: 38, noNaN: true })

describe('pH', () => {
  it('is where all charges cancel', () => {
    fc.assert(
      fc.property(feed, temperature, fc.boolean(), (amounts, temperature_C, open) => {
        const solution = atOwnPh({ amounts, temperature_C, carbonDioxide_Pa: open ? 42.6 : null })
        expect(Math.abs(solution.netCharge_mol_m3)).toBeLessThan(1e-5 * (1 + solution.ionicStrength_mol_m3))
      }),
      seeded,
    )
  })

  it('is some number for anything a person may type', () => {
    const any = fc.double({ min: 0, max: 1e4, noNaN: true })
    const typed = fc.record(
      { Ca: any, Mg: any, K: any, Na: any, NH4: any, NO3: any, Cl: any, SO4: any, H2PO4: any, HCO3: any, citrate: any },
      { requiredKeys: [] },
    )
    fc.assert(
      fc.property(typed, fc.double({ min: 0, max: 14, noNaN: true }), fc.boolean(), (amounts, pH, open) => {
        const conditions = { temperature_C: 20, carbonDioxide_Pa: open ? 42.6 : null }
        const own = solutionPh({ amounts, ...conditions })
        expect(own >= 0 && own <= 14, `${own}`).toBe(true)
        const water = analysedWater({ amounts, alkalinity_mol_m3: amounts.HCO3 ?? 0, pH, temperature_C: 20 })
        expect(Number.isFinite(water.HCO3 ?? 0) && Number.isFinite(water.unmeasured ?? 0)).toBe(true)
      }),
      seeded,
    )
  })

  it('of calcite and air is 8.21 with 0.553 mmol/L calcium (independent model)', () => {
    const at = (Ca: number) => atOwnPh({ amounts: { Ca }, temperature_C: 25, carbonDioxide_Pa: 42.6 })
    const Ca = root({ of: (x) => saturationIndex({ solution: at(x), mineral: 'calcite' }), low: 0.05, high: 5 })
    // Two models of activity: 0.01 in pH beside the printed digit, and with it 3 % of the calcium.
    expect(Math.abs(at(Ca).pH - 8.21)).toBeLessThan(0.015)
    expect(Ca).toBeGreaterThan(0.553 * 0.97)
    expect(Ca).toBeLessThan(0.553 * 1.03)
  })

  it('of two more published feeds made of salts', () => {
    expect(solutionPh({ amounts: feedAmounts('hoagland-2'), ...closed25 })).toBeCloseTo(4.94, 2)
    expect(solutionPh({ amounts: feedAmounts('steiner'), ...closed25 })).toBeCloseTo(4.95, 2)
  })

  it('falls with every acid and rises with every base', () => {
    const before = solutionPh({ amounts: hoagland, ...closed20 })
    for (const salt of ['nitric-acid', 'phosphoric-acid', 'sulfuric-acid', 'citric-acid'] as const) {
      const acid = saltAmounts({ salt, purity: 1 })
      expect(
        solutionPh({
          amounts: mixed([
            { amounts: hoagland, times: 1 },
            { amounts: acid, times: 0.01 },
          ]),
          ...closed20,
        }),
      ).toBeLessThan(before)
    }
    for (const salt of [
      'potassium-hydroxide',
      'potassium-carbonate',
      'potassium-bicarbonate',
      'dipotassium-phosphate',
    ] as const) {
      const base = saltAmounts({ salt, purity: 1 })
      expect(
        solutionPh({
          amounts: mixed([
            { amounts: hoagland, times: 1 },
            { amounts: base, times: 0.01 },
          ]),
          ...closed20,
        }),
      ).toBeGreaterThan(before)
    }
  })

  it('reaches the target after the dose of acid, whichever the acid', () => {
    const tap = { Ca: 2, Mg: 0.5, HCO3: 5.2 }
    for (const acid of [{ NO3: 1 }, { H2PO4: 1 }, { SO4: 1 }, { citrate: 1 }] as const)
      for (const conditions of [closed20, air20]) {
        const dose = acidDose({ amounts: tap, pH: 5.8, acid, ...conditions })
        const amounts = mixed([
          { amounts: tap, times: 1 },
          { amounts: acid, times: dose },
        ])
        expect(solutionPh({ amounts, ...conditions })).toBeCloseTo(5.8, 6)
      }
  })

  it('climbs back in the air where only the closed dose was given', () => {
    const tap = { Ca: 2, HCO3: 4.3 }
    const NO3 = acidDose({ amounts: tap, pH: 5.8, acid: { NO3: 1 }, ...closed20 })
    expect(solutionPh({ amounts: { ...tap, NO3 }, ...air20 })).toBeGreaterThan(7)
  })

  it('needs no acid where it is already below the target', () => {
    expect(acidDose({ amounts: hoagland, pH: 5.8, acid: { NO3: 1 }, ...closed20 })).toBe(0)
    expect(acidDemand({ amounts: hoagland, pH: 5.8, ...closed20 })).toBeLessThan(0)
    expect(() => acidDose({ amounts: { K: 1 }, pH: 5.8, acid: { K: 1 }, ...closed20 })).toThrow(/cannot reach/)
  })

  it('buffer of Hoagland 1 in the air agrees with an independent charge balance, meq/L', () => {
    const printed = [
      [5, 0.073],
      [5.5, 0.133],
      [6, 0.318],
      [6.5, 0.589],
      [7, 0.72],
    ] as const
    for (const [pH, β] of printed) expect(bufferCapacity({ amounts: hoagland, pH, ...air20 })).toBeCloseTo(β, 3)
    const shift = { amounts: hoagland, fromPh: 6.8, toPh: 5.8, volume_m3: 0.1 }
    expect(phShift({ ...shift, ...air20 }) * 10).toBeCloseTo(0.476, 3)
    expect(phShift({ ...shift, ...closed20 }) * 10).toBeCloseTo(0.429, 3)
  })
})
