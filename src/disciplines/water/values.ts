import { type Published, value } from '../../kernel/published.ts'
import {
  dewPoint,
  humidityRatio,
  humidityRatioOfWetBulb,
  moistAirDensity,
  moistAirEnthalpy,
  saturationPressure,
  standardPressure,
  wetBulb,
} from './equations-air.ts'
import { evaporationHeat, wallConductance } from './equations-heat.ts'
import { oxygenSolubility, salinityOfConductivity } from './equations-oxygen.ts'

const handbook = { source: 'ASHRAE.F2017.1' } as const

/** Oxygen in fresh water at 1 atm, °C to mg/L, as two laboratories and one handbook printed it. */
const printedOxygen = [
  [0, 14.621, 14.63],
  [5, 12.77, 12.77],
  [10, 11.288, 11.28],
  [15, 10.084, 10.07],
  [20, 9.092, 9.08],
  [25, 8.263, 8.26],
  [30, 7.559, 7.57],
  [35, 6.949, 6.98],
] as const

const oxygen: readonly Published[] = printedOxygen.flatMap(([temperature_C, handbookValue, montgomery]) => [
  value(oxygenSolubility, { temperature_C, salinity: 0 }, handbookValue, {
    within: 0.0015,
    absolute: true,
    source: 'APHA.4500-O',
    why: 'printed to 0.001 mg/L; the rounding of the printed coefficients adds as much',
  }),
  value(oxygenSolubility, { temperature_C, salinity: 0 }, montgomery, {
    within: 0.005,
    source: 'Montgomery1964',
    why: 'an older measurement by another method; the two differ by up to 0.45 %',
  }),
])

export default [
  value(saturationPressure, { temperature_C: 5 }, 872.6, {
    within: 3e-4,
    ...handbook,
    why: 'accuracy claimed, 300 ppm',
  }),
  value(saturationPressure, { temperature_C: 25 }, 3169.7, {
    within: 3e-4,
    ...handbook,
    why: 'accuracy claimed, 300 ppm',
  }),
  value(saturationPressure, { temperature_C: 50 }, 12351.3, {
    within: 3e-4,
    ...handbook,
    why: 'accuracy claimed, 300 ppm',
  }),
  value(saturationPressure, { temperature_C: 20 }, 2339.21, {
    within: 3e-4,
    source: 'IAPWS.R7-97',
    why: 'another formulation; the older one claims 300 ppm',
  }),
  value(dewPoint, { vapour_Pa: 872.6 }, 5, {
    within: 5e-3,
    absolute: true,
    ...handbook,
    why: '300 ppm of pressure is 0.004 K',
  }),
  value(humidityRatio, { vapour_Pa: 3169.7, pressure_Pa: 101325 }, 0.020173, {
    within: 0.01,
    ...handbook,
    why: 'real-gas table; the ideal-gas equation is known to lie 0.5 % below',
  }),
  value(moistAirEnthalpy, { temperature_C: 25, humidityRatio: 0.020173 }, 76504, {
    within: 0.01,
    ...handbook,
    why: 'real-gas table; the ideal-gas equation is known to lie 0.3 % below',
  }),
  value(humidityRatioOfWetBulb, { temperature_C: 30, wetBulb_C: 25, pressure_Pa: 95461 }, 0.01922813, {
    within: 3e-4,
    ...handbook,
    why: 'accuracy claimed, 300 ppm',
  }),
  value(humidityRatioOfWetBulb, { temperature_C: 40, wetBulb_C: 20, pressure_Pa: 101325 }, 0.0065, {
    within: 0.0001,
    absolute: true,
    ...handbook,
    why: 'example 1, read from the chart to 0.0001',
  }),
  value(wetBulb, { temperature_C: 7, relativeHumidity: 0.61, pressure_Pa: 100_000 }, 3.92667, {
    within: 0.001,
    absolute: true,
    ...handbook,
    why: 'the iteration of the source stops at 0.001 K',
  }),
  value(moistAirDensity, { temperature_C: 40, humidityRatio: 0.0065, pressure_Pa: 101325 }, 1.0065 / 0.896, {
    within: 6e-4,
    ...handbook,
    why: 'example 1, volume read as 0.896 m3/kg: half of the last digit',
  }),
  value(standardPressure, { altitude_m: 500 }, 95461, { within: 1e-5, ...handbook, why: 'printed to 1 Pa' }),
  value(standardPressure, { altitude_m: 1000 }, 89875, { within: 1e-5, ...handbook, why: 'printed to 1 Pa' }),
  ...oxygen,
  value(oxygenSolubility, { temperature_C: 5, salinity: 28 }, 10.5928, {
    within: 0.005,
    absolute: true,
    source: 'GarciaGordon1992',
    why: 'another fit of the same measurements; the two may differ in the second decimal',
  }),
  value(salinityOfConductivity, { conductivity_S_m: 5.3087 }, 35, {
    within: 0.02,
    source: 'UNESCO.PSS-78',
    why: 'sea water of salinity 35 has 53.087 mS/cm at 25 °C; the fit is meant for fresher water, 2 %',
  }),
  value(evaporationHeat, { temperature_C: 20 }, 2453.6e3, {
    within: 5e-4,
    source: 'IAPWS.R7-97',
    why: 'straight line for a slightly bent curve; its makers round to 0.001 MJ/kg',
  }),
  value(evaporationHeat, { temperature_C: 35 }, 2417.9e3, {
    within: 5e-4,
    source: 'IAPWS.R7-97',
    why: 'straight line for a slightly bent curve; its makers round to 0.001 MJ/kg',
  }),
  value(wallConductance, { inside_W_m2_K: 1 / 0.13, outside_W_m2_K: 1 / 0.04, layers: [] }, 1 / 0.17, {
    within: 1e-9,
    source: 'ISO.6946',
    why: 'the two surface resistances alone add to 0.17',
  }),
]
