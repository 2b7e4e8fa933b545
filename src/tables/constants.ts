import { table } from './table.ts'

/** Agreed constants of nature and of the standard atmosphere. */
export const constants = table({
  title: 'Constants of nature and of the standard atmosphere',
  columns: {
    gravity_m_s2: 'standard acceleration of free fall',
    zero_K: '0 °C as absolute temperature',
    seaLevel_Pa: 'standard pressure at sea level',
    airGas_J_kg_K: 'gas constant of dry air',
    radiation_W_m2_K4: 'Stefan-Boltzmann constant',
  },
  source: 'ICAO.atmosphere',
  rows: {
    standard: {
      gravity_m_s2: 9.80665,
      zero_K: 273.15,
      seaLevel_Pa: 101325,
      airGas_J_kg_K: 287.05287,
      radiation_W_m2_K4: 5.670374419e-8,
      note: 'free fall: BIPM.gravity; radiation: StefanBoltzmann',
    },
  },
})

export const {
  gravity_m_s2: GRAVITY_m_s2,
  zero_K: ZERO_CELSIUS_K,
  seaLevel_Pa: SEA_LEVEL_Pa,
  airGas_J_kg_K: AIR_GAS_J_kg_K,
  radiation_W_m2_K4: STEFAN_BOLTZMANN_W_m2_K4,
} = constants.rows.standard
