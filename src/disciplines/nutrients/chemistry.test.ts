import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Salt, salts } from '../../tables/salts.ts'
import { type Amounts, feedAmounts, mixed, referenceCharge } from './composition.ts'
import { compensatedConductivity, conductivity, rawConductivity } from './equations-conductivity.ts'
import { saltAmounts } from './equations-salts.ts'
import { type Species, speciation } from './speciation.ts'

const seeded = { seed: 20261125, numRuns: 60 } as const
const closed25 = { temperature_C: 25, carbonDioxide_Pa: null } as const
const hoagland = feedAmounts('hoagland-1')
const amount = (max: number) => fc.double({ min: 0, max, noNaN: true })
const feed = fc.record({
  ...{ NO3: amount(20), NH4: amount(2), H2PO4: amount(2.5), K: amount(12), Ca: amount(6), Mg: amount(3) },
  ...{ SO4: amount(5), Na: amount(4), Cl: amount(4), HCO3: amount(5), H3BO3: amount(0.1), citrate: amount(0.5) },
})
const temperature = fc.double({ min: 2, max: 38, noNaN: true })
const neutralSalts = (Object.keys(salts.rows) as readonly Salt[]).filter((salt) => {
  const { bottle } = salts.rows[salt]
  return bottle !== 'alone' && bottle !== 'acid'
})

describe('substances', () => {
  it('bring as much plus as minus, but for acids, bases and salts that are either', () => {
    const left = neutralSalts.filter((salt) => Math.abs(referenceCharge(saltAmounts({ salt, purity: 1 }))) > 1e-9)
    // Each holds other protons than its reference form: K2HPO4 and borax take some up, monosodium Fe-DTPA and
    // ammonium molybdate give some.
    expect(left).toEqual([
      'dipotassium-phosphate',
      'diammonium-phosphate',
      'iron-DTPA-monosodium',
      'borax',
      'disodium-octaborate',
      'ammonium-molybdate',
    ])
  })

  it('refuse a purity that cannot be', () => {
    expect(() => saltAmounts({ salt: 'potassium-nitrate', purity: 0 })).toThrow(/purity p of potassium-nitrate/)
    expect(() => saltAmounts({ salt: 'potassium-nitrate', purity: 1.01 })).toThrow(RangeError)
  })
})

describe('speciation', () => {
  it('loses nothing: the species of each component add up to its total', () => {
    fc.assert(
      fc.property(feed, fc.double({ min: 3, max: 10, noNaN: true }), temperature, (amounts, pH, temperature_C) => {
        const { species_mol_m3: s } = speciation({ amounts, pH, temperature_C, carbonDioxide_Pa: null })
        const sum = (...ids: Species[]) => ids.reduce((total, id) => total + (s[id] ?? 0), 0)
        const calcium = sum('Ca', 'CaSO4', 'CaHPO4', 'CaH2PO4', 'CaHCO3')
        const sulfate = sum('SO4', 'HSO4', 'CaSO4', 'MgSO4', 'KSO4', 'NaSO4', 'NH4SO4')
        const phosphate = sum('H3PO4', 'H2PO4', 'HPO4', 'PO4', 'CaHPO4', 'MgHPO4', 'CaH2PO4', 'MgH2PO4')
        const carbonate = sum('CO2', 'HCO3', 'CO3', 'CaHCO3', 'MgHCO3')
        expect(calcium).toBeCloseTo(amounts.Ca, 8)
        expect(sulfate).toBeCloseTo(amounts.SO4, 8)
        expect(phosphate).toBeCloseTo(amounts.H2PO4, 8)
        expect(carbonate).toBeCloseTo(amounts.HCO3, 8)
        expect(sum('NH4', 'NH3', 'NH4SO4')).toBeCloseTo(amounts.NH4, 8)
        expect(Math.min(...Object.values(s))).toBeGreaterThanOrEqual(0)
      }),
      seeded,
    )
  })

  it('reproduces the pairs of Hoagland 1 at pH 5.8, mmol/kg to the printed digits', () => {
    const { species_mol_m3: s } = speciation({ amounts: hoagland, pH: 5.8, ...closed25 })
    const printed: readonly (readonly [Species, number, number])[] = [
      ['Ca', 4.55, 2],
      ['Mg', 1.79, 2],
      ['K', 5.97, 2],
      ['SO4', 1.43, 2],
      ['CaSO4', 0.367, 3],
      ['MgSO4', 0.169, 3],
      ['KSO4', 0.032, 3],
      ['H2PO4', 0.816, 3],
      ['HPO4', 0.052, 3],
      ['CaH2PO4', 0.05, 3],
      ['CaHPO4', 0.037, 3],
    ]
    for (const [id, expected, digits] of printed) expect(s[id]!, id).toBeCloseTo(expected, digits)
  })

  it('refuses negative amounts, but not unmeasured charge', () => {
    expect(() => speciation({ amounts: { Ca: -1 }, pH: 6, ...closed25 })).toThrow(/Ca of -1/)
    expect(speciation({ amounts: { unmeasured: -1 }, pH: 6, ...closed25 }).netCharge_mol_m3).toBeLessThan(0)
  })
})

describe('conductivity', () => {
  const κ = (amounts: Amounts) => conductivity(speciation({ amounts, pH: 5.8, ...closed25 }))

  it('rises with every salt that is added', () => {
    const tap = { Ca: 1, Mg: 0.5, Na: 0.5, K: 0.1, Cl: 0.5, SO4: 0.4, NO3: 0.1, HCO3: 2.2 }
    for (const base of [tap, hoagland])
      for (const salt of Object.keys(salts.rows) as readonly Salt[]) {
        if (salt === 'boric-acid' || salt === 'citric-acid') continue
        const more = mixed([
          { amounts: base, times: 1 },
          { amounts: saltAmounts({ salt, purity: 1 }), times: 0.05 },
        ])
        expect(κ(more), salt).toBeGreaterThan(κ(base))
      }
  })

  it('per unit of strength rises on dilution, by the printed percents', () => {
    const full = κ(hoagland)
    for (const [strength, percent] of [
      [0.5, 5.8],
      [0.7, 3.1],
      [0.8, 1.9],
      [0.9, 0.9],
      [1.1, -0.8],
      [1.3, -2.4],
    ] as const) {
      const part = κ(mixed([{ amounts: hoagland, times: strength }]))
      // Printed to 0.1 from readings of four digits.
      expect(Math.abs((part / strength / full - 1) * 100 - percent)).toBeLessThan(0.06)
    }
  })

  it('compensated and undone is the reading', () => {
    const terms = { temperature_C: 14, coefficient_per_K: 0.02 }
    const at25_S_m = compensatedConductivity({ reading_S_m: 0.15, ...terms })
    expect(rawConductivity({ at25_S_m, ...terms })).toBeCloseTo(0.15, 12)
  })
})
