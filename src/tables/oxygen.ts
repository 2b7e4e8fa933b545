import { table } from './table.ts'

/** Oxygen that roots take, per dry mass of roots. 4 mg per gram and hour is 4e-3/3600 per second. */
export const rootRespirations = table({
  title: 'Oxygen taken by roots, mass of oxygen per dry mass of root and time, at 20 °C',
  columns: {
    low_per_s: 'lowest',
    middle_per_s: 'to reckon with',
    high_per_s: 'highest',
    doubling_K: 'rise of temperature that doubles it',
  },
  source: 'from-memory',
  rows: {
    'leafy-and-herbs': {
      low_per_s: 1 / 3.6e6,
      middle_per_s: 4 / 3.6e6,
      high_per_s: 8 / 3.6e6,
      doubling_K: 10,
      note: 'estimate: maintenance of model papers (vanKeulen1982) twice over (Scheurwater1998) gives 0.9 to 3.3 mg/(g h), herbs in solution 2.3 to 6.9; no value measured for lettuce was found',
    },
  },
})

/** Dissolved oxygen that roots were seen to need. */
export const oxygenLevels = table({
  title: 'Dissolved oxygen and growth',
  columns: { level_g_m3: 'dissolved oxygen', growth: 'what was seen' },
  source: 'Goto1996',
  rows: {
    'lettuce-unhurt': { level_g_m3: 2.1, growth: 'same as at 8.4, lettuce at 24 °C' },
    'lettuce-hurt': { level_g_m3: 0.32, growth: 'less', source: 'Yoshida1997', note: '0.01 mM' },
    'lettuce-full': { level_g_m3: 3.2, growth: 'same as at 6.4', source: 'Yoshida1997', note: '0.10 mM' },
    wanted: {
      level_g_m3: 5,
      growth: 'common advice for recirculating solution',
      source: 'common-practice',
    },
  },
})

/** What an air stone brings. */
export const airStones = table({
  title: 'Oxygen brought in by bubbles',
  columns: {
    transferLow_per_m: 'share of the oxygen in the air that dissolves, per metre of submergence, lowest',
    transferHigh_per_m: 'same, highest',
  },
  source: 'from-memory',
  rows: {
    'small-stone': {
      transferLow_per_m: 0.03,
      transferHigh_per_m: 0.08,
      note: 'coarse bubbles in 0.2 to 0.4 m of water: 1 to 3 % in all, unconfirmed',
    },
    'fine-bubble': { transferLow_per_m: 0.085, transferHigh_per_m: 0.098, source: 'TUDarmstadt2020' },
  },
})

/** Numbers of the gas itself. */
export const oxygenGas = table({
  title: 'Oxygen in air and its spread in water',
  columns: {
    inAir_kg_m3: 'oxygen in a cubic metre of dry air at 0 °C and 101.325 kPa',
    diffusivity_m2_s: 'spread in water at 25 °C',
  },
  source: 'from-memory',
  rows: {
    air: { inAir_kg_m3: 0.299, diffusivity_m2_s: 2.1e-9 },
  },
})
