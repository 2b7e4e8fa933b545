import { type Published, value } from '../../kernel/published.ts'
import type { AcidAsSold } from '../../tables/acids.ts'
import type { Element } from '../../tables/elements.ts'
import { airCarbonDioxide } from './equations-air.ts'
import { refillStrength } from './equations-refill.ts'
import { refillConcentration, sanitiserVolume, timeToLimit } from './equations-running.ts'
import { acidStrength, oxideFactor } from './equations-salts.ts'
import { additionToDilute, stockToStrengthen } from './equations-strength.ts'
import { penConductivity, reportedAmount, reportedCharge } from './equations-water-report.ts'

const oxides: readonly (readonly [string, Element, number])[] = [
  ['P2O5', 'P', 0.4364],
  ['K2O', 'K', 0.8302],
  ['CaO', 'Ca', 0.7147],
  ['MgO', 'Mg', 0.603],
  ['SO3', 'S', 0.4005],
  ['SiO2', 'Si', 0.4674],
  ['B2O3', 'B', 0.3106],
  ['NO3', 'N', 0.2259],
  ['NH4', 'N', 0.7765],
  ['PO4', 'P', 0.3261],
  ['SO4', 'S', 0.3338],
]

/** Strength in eq/L as computed from printed density and mass %. */
const strengths: readonly (readonly [AcidAsSold, number])[] = [
  ['nitric-67', 14.89],
  ['nitric-60', 13.02],
  ['nitric-38', 7.44],
  ['phosphoric-75', 12.08],
  ['phosphoric-85', 14.62],
  ['sulfuric-93', 34.67],
  ['sulfuric-35', 8.99],
]

const printed = { source: 'Stoichiometry', why: 'half of the last printed digit' } as const

const rows: readonly Published[] = [
  ...oxides.map(([oxide, element, factor]) =>
    value(oxideFactor, { oxide, element }, factor, { ...printed, within: 6e-5, absolute: true }),
  ),
  ...strengths.map(([acid, eq]) =>
    value(acidStrength, { acid }, eq * 1000, {
      within: 0.006 / eq,
      source: 'Stoichiometry',
      why: 'half of the last digit of eq/L',
    }),
  ),
  value(reportedCharge, { reported: 50.04, basis: 'mg/L as CaCO3' }, 1, {
    ...{ within: 1e-4, source: 'Stoichiometry', why: '1 meq/L is 50.04 mg/L CaCO3 to four figures' },
  }),
  value(reportedCharge, { reported: 61.02, basis: 'mg/L as HCO3' }, 1, {
    ...{ within: 1e-4, source: 'Stoichiometry', why: '1 meq/L is 61.02 mg/L HCO3 to four figures' },
  }),
  value(reportedCharge, { reported: 1, basis: 'dH' }, 17.85 / 50.04, {
    ...{ within: 3e-4, source: 'Stoichiometry', why: 'a German degree is 17.85 mg/L CaCO3 to four figures' },
  }),
  value(reportedAmount, { component: 'NO3', reported: 14.007, basis: 'mg/L as N' }, 1, {
    ...{ within: 1e-9, source: 'IUPAC.weights', why: 'the atomic weight itself' },
  }),
  value(penConductivity, { reading: 1100, scale: 'ppm-500' }, 0.22, {
    ...{ within: 1e-9, source: 'common-practice', why: 'definition of the scale' },
  }),
  value(penConductivity, { reading: 1100, scale: 'ppm-700' }, 0.157, {
    ...{ within: 0.0005, absolute: true, source: 'common-practice', why: 'printed to 0.01 mS/cm' },
  }),
  value(
    stockToStrengthen,
    { volume_m3: 0.06, now_S_m: 0.11, wanted_S_m: 0.15, feed_S_m: 0.1495, water_S_m: 0, factor: 100, bottles: 2 },
    0.1638e-3,
    { within: 3e-4, source: 'Balance.solution', why: 'worked by hand to four figures' },
  ),
  value(additionToDilute, { volume_m3: 0.04, now_S_m: 0.2, wanted_S_m: 0.16, water_S_m: 0 }, 0.01, {
    ...{ within: 1e-9, source: 'Balance.solution', why: '40 L of 2.0 and 10 L of water make 50 L of 1.6' },
  }),
  value(refillConcentration, { tissueShare: 0.05, waterUseEfficiency_kg_m3: 3 }, 150, {
    ...{ within: 1e-9, source: 'Langenfeld2022', why: '50 mg/g × 3 g/L is 150 mg/L' },
  }),
  value(refillStrength, { uptake_eq_m3: 18, feed_eq_m3: 16, water_eq_m3: 6 }, 1.2, {
    ...{ within: 1e-9, source: 'Balance.solution', why: '12 of charge above the water against 10 of the recipe' },
  }),
  value(airCarbonDioxide, { altitude_m: 1000 }, (42.6 * 89.875) / 101.325, {
    ...{ within: 1e-5, source: 'ASHRAE.F2017.1', why: 'standard air at 1000 m is 89 875 Pa, printed to 1 Pa' },
  }),
  value(
    timeToLimit,
    { start_g_m3: 0, topUp_g_m3: 30, limit_g_m3: 50, use_m3_d: 0.002, volume_m3: 0.04, uptakeRatio: 0 },
    33,
    { within: 0.5, absolute: true, source: 'Carmassi2003', why: 'worked to whole days' },
  ),
  value(
    timeToLimit,
    { start_g_m3: 30, topUp_g_m3: 30, limit_g_m3: 50, use_m3_d: 0.002, volume_m3: 0.04, uptakeRatio: 0 },
    13,
    { within: 0.5, absolute: true, source: 'Carmassi2003', why: 'worked to whole days' },
  ),
  value(sanitiserVolume, { volume_m3: 0.02, wanted_g_m3: 200, product_g_m3: 52500 }, 76e-6, {
    ...{ within: 0.5e-6, absolute: true, source: 'Balance.solution', why: 'worked to whole mL' },
  }),
  value(sanitiserVolume, { volume_m3: 0.075, wanted_g_m3: 200, product_g_m3: 82500 }, 182e-6, {
    ...{ within: 0.5e-6, absolute: true, source: 'Balance.solution', why: 'worked to whole mL' },
  }),
]

export default rows
