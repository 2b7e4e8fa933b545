import { describe, expect, it } from 'vitest'
import { type Salt, salts } from '../../tables/salts.ts'
import { feedAmounts, mixed } from './composition.ts'
import { accumulatedConcentration, dumpedMass, dumpShare, sanitiserVolume, timeToLimit } from './equations-running.ts'
import { saltAmounts } from './equations-salts.ts'
import {
  additionToDilute,
  exchangeToDilute,
  stockToStrengthen,
  strengthConductivity,
  strengthFor,
  topUpStrength,
  uptakeStrength,
} from './equations-strength.ts'
import { chargeBalance, missingIon, penConductivity, penReading, reportedAmount } from './equations-water-report.ts'
import { type ReportRow, reportedAmounts, unitSlips } from './report-slips.ts'
import { bottleOf, clashes, type StockDose, stockBottles, strongestStock } from './stocks.ts'

const feed = {
  water: { Ca: 0.5, HCO3: 1 },
  salts: feedAmounts('hoagland-1'),
  pH: 5.8,
  temperature_C: 25,
  carbonDioxide_Pa: null,
} as const

describe('strength', () => {
  it('that gives a conductivity is found again from it', () => {
    for (const strength of [0.3, 0.8, 1.4]) {
      const wanted_S_m = strengthConductivity({ ...feed, strength })
      expect(strengthFor({ ...feed, wanted_S_m })).toBeCloseTo(strength, 6)
    }
    expect(strengthFor({ ...feed, wanted_S_m: 0.001 })).toBe(0)
  })

  it('diluted by exchange or by addition is the goal', () => {
    const given = { volume_m3: 0.04, now_S_m: 0.2, wanted_S_m: 0.17, water_S_m: 0.03 }
    const out = exchangeToDilute(given)
    expect(((0.04 - out) * 0.2 + out * 0.03) / 0.04).toBeCloseTo(0.17, 12)
    const added = additionToDilute(given)
    expect((0.04 * 0.2 + added * 0.03) / (0.04 + added)).toBeCloseTo(0.17, 12)
  })

  it('of a dose of stock adds up with the volume of the bottles', () => {
    const given = {
      volume_m3: 0.06,
      now_S_m: 0.11,
      wanted_S_m: 0.15,
      feed_S_m: 0.16,
      water_S_m: 0.02,
      factor: 100,
      bottles: 2,
    }
    const v = stockToStrengthen(given)
    // A bottle pair holds F times the salt of the feed, in two volumes of the water.
    const salt = (0.16 - 0.02) * 100 * v
    expect((0.06 * 0.11 + salt + 2 * v * 0.02) / (0.06 + 2 * v)).toBeCloseTo(0.15, 12)
  })

  it('topped up to the line is the goal, and uptake is what is missing', () => {
    const c = topUpStrength({ line_m3: 0.036, now_m3: 0.028, wanted_S_m: 0.17, now_S_m: 0.2 })
    expect((0.028 * 0.2 + 0.008 * c) / 0.036).toBeCloseTo(0.17, 12)
    const u = uptakeStrength({ volumeBefore_m3: 0.036, volumeAfter_m3: 0.028, before_S_m: 0.17, after_S_m: 0.2 })
    expect(0.036 * 0.17 - 0.008 * u).toBeCloseTo(0.028 * 0.2, 12)
    expect(() => uptakeStrength({ volumeBefore_m3: 1, volumeAfter_m3: 1, before_S_m: 1, after_S_m: 1 })).toThrow(
      RangeError,
    )
    expect(() => topUpStrength({ line_m3: 1, now_m3: 1, wanted_S_m: 1, now_S_m: 1 })).toThrow(RangeError)
  })
})

describe('accumulation', () => {
  const tank = { start_g_m3: 10, topUp_g_m3: 30, use_m3_d: 0.002, volume_m3: 0.04 }

  it('reaches the limit on the day that it says, whatever the plants take', () => {
    for (const uptakeRatio of [0, 0.1, 0.4]) {
      const time_d = timeToLimit({ ...tank, limit_g_m3: 50, uptakeRatio })
      expect(accumulatedConcentration({ ...tank, time_d, uptakeRatio })).toBeCloseTo(50, 9)
    }
    expect(timeToLimit({ ...tank, limit_g_m3: 50, uptakeRatio: 1 })).toBe(Number.POSITIVE_INFINITY)
    expect(timeToLimit({ ...tank, limit_g_m3: 10, uptakeRatio: 0 })).toBe(0)
  })

  it('agrees with small steps of the balance V dc/dt = E (c_w - p c)', () => {
    let c = 10
    for (let step = 0; step < 20000; step++) c += ((0.002 * (30 - 0.3 * c)) / 0.04) * 0.001
    expect(accumulatedConcentration({ ...tank, time_d: 20, uptakeRatio: 0.3 })).toBeCloseTo(c, 2)
  })

  it('is undone by the share that is dumped', () => {
    const f = dumpShare({ now_g_m3: 60, wanted_g_m3: 40, refill_g_m3: 12 })
    expect((1 - f) * 60 + f * 12).toBeCloseTo(40, 12)
    expect(dumpShare({ now_g_m3: 30, wanted_g_m3: 40, refill_g_m3: 12 })).toBe(0)
  })

  it('pours away the nitrogen that it names', () => {
    expect(dumpedMass({ amounts: feedAmounts('hoagland-1'), nutrient: 'N', volume_m3: 0.036 }) * 1000).toBeCloseTo(
      7.56,
      2,
    )
  })

  it('refuses to sanitise with a product that is too weak', () => {
    expect(() => sanitiserVolume({ volume_m3: 0.02, wanted_g_m3: 200, product_g_m3: 150 })).toThrow(RangeError)
  })
})

describe('a water report', () => {
  const balcony: readonly ReportRow[] = [
    { component: 'Ca', reported: 82, basis: 'mg/L' },
    { component: 'Mg', reported: 14, basis: 'mg/L' },
    { component: 'Na', reported: 12, basis: 'mg/L' },
    { component: 'K', reported: 2, basis: 'mg/L' },
    { component: 'HCO3', reported: 256, basis: 'mg/L' },
    { component: 'Cl', reported: 18, basis: 'mg/L' },
    { component: 'SO4', reported: 45, basis: 'mg/L' },
    { component: 'NO3', reported: 1.2, basis: 'mg/L as N' },
  ]

  it('that balances names no slip', () => {
    expect(Math.abs(chargeBalance({ amounts: reportedAmounts(balcony) }).error)).toBeLessThan(0.05)
    expect(unitSlips(balcony, 0.05)).toEqual([])
  })

  it('with 4.2 meq/L of bicarbonate typed as mg/L points at the bicarbonate', () => {
    const slipped = balcony.map((row) => (row.component === 'HCO3' ? { ...row, reported: 4.2 } : row))
    expect(chargeBalance({ amounts: reportedAmounts(slipped) }).error).toBeGreaterThan(0.3)
    expect(unitSlips(slipped, 0.05)[0]).toMatchObject({ component: 'HCO3', basis: 'meq/L' })
  })

  it('without bicarbonate gives a band that holds it', () => {
    const rest = balcony.filter(({ component }) => component !== 'HCO3')
    const { low_mol_m3, high_mol_m3 } = missingIon({
      amounts: reportedAmounts(rest),
      component: 'HCO3',
      analysisError: 0.05,
    })
    expect(low_mol_m3).toBeLessThan(4.196)
    expect(high_mol_m3).toBeGreaterThan(4.196)
    expect(() => missingIon({ amounts: {}, component: 'H3BO3', analysisError: 0.05 })).toThrow(RangeError)
  })

  it('in any basis is the same water', () => {
    const same = [
      reportedAmount({ component: 'Ca', reported: 40.078, basis: 'mg/L' }),
      reportedAmount({ component: 'Ca', reported: 1, basis: 'mmol/L' }),
      reportedAmount({ component: 'Ca', reported: 2, basis: 'meq/L' }),
      reportedAmount({ component: 'Ca', reported: 100.086, basis: 'mg/L as CaCO3' }),
      reportedAmount({ component: 'Ca', reported: 5.6077, basis: 'dH' }),
    ]
    for (const n of same) expect(n).toBeCloseTo(1, 5)
    expect(() => reportedAmount({ component: 'Ca', reported: -1, basis: 'mg/L' })).toThrow(RangeError)
    expect(() => reportedAmount({ component: 'H3BO3', reported: 1, basis: 'meq/L' })).toThrow(RangeError)
  })

  it('pens undo their own scale', () => {
    for (const scale of ['mS/cm', 'uS/cm', 'ppm-500', 'ppm-640', 'ppm-700', 'CF', 'dS/m', 'S/m'] as const)
      expect(penReading({ conductivity_S_m: penConductivity({ reading: 1.7, scale }), scale })).toBeCloseTo(1.7, 12)
  })
})

describe('stock bottles', () => {
  const dose = (salt: Salt, dose_g_m3: number): StockDose => ({
    id: salt,
    salt,
    dose_g_m3,
    amounts_mol_kg: saltAmounts({ salt, purity: 1 }),
  })
  // g/L at 100 times, as printed for the lettuce recipe
  const lettuce = [
    dose('calcium-nitrate-double-salt', 486),
    dose('ammonium-nitrate', 38),
    dose('potassium-nitrate', 442),
    dose('monopotassium-phosphate', 136),
    dose('magnesium-sulfate', 243),
  ]

  it('keep calcium from sulfate and phosphate, and every salt once', () => {
    const bottles = stockBottles({ doses: lettuce, factor: 100, coldest_C: 0 })
    expect(bottles.map(({ id }) => id)).toEqual(['A', 'B'])
    for (const { amounts } of bottles) expect((amounts.Ca ?? 0) * ((amounts.SO4 ?? 0) + (amounts.H2PO4 ?? 0))).toBe(0)
    const total = bottles.flatMap(({ contents }) => contents).reduce((sum, { mass_kg_m3 }) => sum + mass_kg_m3, 0)
    expect(total).toBeCloseTo((486 + 38 + 442 + 136 + 243) / 10, 9)
    const back = mixed(bottles.map(({ amounts }) => ({ amounts, times: 1 / 100 })))
    expect(back.Ca).toBeCloseTo((5 * 486) / 1080.623, 5)
  })

  it('at 100 times stay below 80 % of solubility at 0 °C', () => {
    for (const { load } of stockBottles({ doses: lettuce, factor: 100, coldest_C: 0 })) expect(load).toBeLessThan(0.8)
    const strongest = strongestStock({ doses: lettuce, coldest_C: 0 })
    expect(strongest).toBeGreaterThan(100)
    const worst = Math.max(...stockBottles({ doses: lettuce, factor: strongest, coldest_C: 0 }).map(({ load }) => load))
    expect(worst).toBeCloseTo(0.8, 9)
    expect(strongestStock({ doses: lettuce, coldest_C: 20 })).toBeGreaterThan(strongest)
  })

  it('all in one make gypsum and calcium phosphate', () => {
    const [all] = stockBottles({ doses: lettuce, factor: 100, coldest_C: 10, together: true })
    const saturation = Object.fromEntries(all!.solids.map(({ mineral, saturation: s }) => [mineral, s]))
    expect(saturation['gypsum']).toBeGreaterThan(0)
    expect(
      stockBottles({ doses: lettuce, factor: 100, coldest_C: 10 })
        .flatMap(({ solids }) => solids)
        .every(({ saturation: s }) => s < 0),
    ).toBe(true)
  })

  it('put bases and acids apart, and name what must not meet', () => {
    expect(bottleOf(dose('potassium-hydroxide', 1))).toBe('alone potassium-hydroxide')
    expect(bottleOf(dose('nitric-acid', 1))).toBe('acid')
    expect(clashes(dose('calcium-nitrate-double-salt', 1), dose('magnesium-sulfate', 1))).toEqual(['calcium-sulfate'])
    expect(clashes(dose('monoammonium-phosphate', 1), dose('magnesium-nitrate', 1))).toEqual([
      'magnesium-ammonium-phosphate',
    ])
    expect(clashes(dose('potassium-carbonate', 1), dose('ammonium-sulfate', 1))).toEqual(['base-ammonium'])
    expect(clashes(dose('potassium-nitrate', 1), dose('monopotassium-phosphate', 1))).toEqual([])
    const mixedBag: StockDose = { id: 'bag', salt: null, dose_g_m3: 1, amounts_mol_kg: { K: 6, H2PO4: 2, SO4: 1 } }
    expect(bottleOf(mixedBag)).toBe('B')
  })

  it('every salt of the table has a place', () => {
    for (const salt of Object.keys(salts.rows) as readonly Salt[])
      expect(bottleOf(dose(salt, 1))).toMatch(/^(A|B|acid|alone .+)$/)
    expect(() => stockBottles({ doses: lettuce, factor: 0.5, coldest_C: 10 })).toThrow(RangeError)
  })
})
