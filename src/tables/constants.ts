import { hydraulicConstants } from './hydraulic-constants.ts'
import { table } from './table.ts'

/** Constants of nature and convention that heat and light air need, beside those of the water's path. */
export const constants = table({
  title: 'Constants of heat',
  columns: { value: 'value in the SI unit that the row names', unit: 'unit of the value' },
  source: 'StefanBoltzmann',
  rows: {
    radiation: { value: 5.670374419e-8, unit: 'W/(m2 K4)' },
    zeroCelsius: { value: 273.15, unit: 'K', source: 'ICAO.atmosphere' },
  },
})

export const GRAVITY_m_s2 = hydraulicConstants.rows.standardGravity.value
export const SEA_LEVEL_Pa = hydraulicConstants.rows.standardAtmosphere.value
export const ZERO_CELSIUS_K = constants.rows.zeroCelsius.value
export const STEFAN_BOLTZMANN_W_m2_K4 = constants.rows.radiation.value
