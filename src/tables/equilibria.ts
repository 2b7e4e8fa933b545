import { table } from './table.ts'

/** Equilibrium constants against temperature: log10 K = a1 + a2 T + a3/T + a4 log10 T + a5/T², T in kelvin. */
export const equilibria = table({
  title: 'Equilibrium constants, mol/kg',
  columns: {
    a1: 'coefficient, constant',
    a2: 'coefficient of T in kelvin',
    a3: 'coefficient of 1/T',
    a4: 'coefficient of log10 T',
    a5: 'coefficient of 1/T²',
    reaction: 'what is in balance',
  },
  source: 'PlummerBusenberg1982',
  rows: {
    carbonic: {
      a1: -356.3094,
      a2: -0.06091964,
      a3: 21834.37,
      a4: 126.8339,
      a5: -1684915,
      reaction: 'CO2 + H2O = H + HCO3',
      source: 'PlummerBusenberg1982',
    },
    bicarbonate: {
      a1: -107.8871,
      a2: -0.03252849,
      a3: 5151.79,
      a4: 38.92561,
      a5: -563713.9,
      reaction: 'HCO3 = H + CO3',
      source: 'PlummerBusenberg1982',
    },
    carbonDioxideGas: {
      a1: 108.3865,
      a2: 0.01985076,
      a3: -6919.53,
      a4: -40.45154,
      a5: 669365,
      reaction: 'CO2 gas = CO2 dissolved, mol/kg per atm',
      source: 'PlummerBusenberg1982',
    },
    water: {
      a1: -283.971,
      a2: -0.05069842,
      a3: 13323,
      a4: 102.24447,
      a5: -1119669,
      reaction: 'H2O = H + OH',
      source: 'USGS.phreeqc.dat',
    },
    calcite: {
      a1: -171.9065,
      a2: -0.077993,
      a3: 2839.319,
      a4: 71.595,
      a5: 0,
      reaction: 'CaCO3 = Ca + CO3',
      source: 'PlummerBusenberg1982',
    },
    gypsum: {
      a1: 68.2401,
      a2: 0,
      a3: -3221.51,
      a4: -25.0627,
      a5: 0,
      reaction: 'CaSO4.2H2O = Ca + SO4 + 2 H2O',
      source: 'USGS.wateq4f.dat',
      note: 'coefficients from memory; -4.58 at 25 °C was read, and the solubility of CaSO4 from 0 to 25 °C agrees',
    },
    bisulfate: {
      a1: 56.889,
      a2: -0.006473,
      a3: -2307.9,
      a4: -19.8858,
      a5: 0,
      reaction: 'HSO4 = H + SO4',
      source: 'USGS.phreeqc.dat',
    },
    ammonium: {
      a1: 0.6322,
      a2: -0.001225,
      a3: -2835.76,
      a4: 0,
      a5: 0,
      reaction: 'NH4 = H + NH3',
      source: 'USGS.phreeqc.dat',
    },
    phosphoric1: {
      a1: 4.5535,
      a2: -0.013486,
      a3: -799.31,
      a4: 0,
      a5: 0,
      reaction: 'H3PO4 = H + H2PO4',
      source: 'BatesAcree1945',
    },
    phosphoric2: {
      a1: 5.3541,
      a2: -0.01984,
      a3: -1979.5,
      a4: 0,
      a5: 0,
      reaction: 'H2PO4 = H + HPO4',
      source: 'BatesAcree1945',
    },
    phosphoric3: { a1: -12.346, a2: 0, a3: 0, a4: 0, a5: 0, reaction: 'HPO4 = H + PO4', source: 'USGS.wateq4f.dat' },
    boric: {
      a1: 3.305,
      a2: -0.016883,
      a3: -2237.94,
      a4: 0,
      a5: 0,
      reaction: 'H3BO3 + H2O = H + B(OH)4',
      source: 'Owen1934',
    },
    silicic: { a1: -9.8, a2: 0, a3: 0, a4: 0, a5: 0, reaction: 'H4SiO4 = H + H3SiO4', source: 'from-memory' },
    citric1: { a1: -3.128, a2: 0, a3: 0, a4: 0, a5: 0, reaction: 'at 25 °C', source: 'from-memory' },
    citric2: { a1: -4.761, a2: 0, a3: 0, a4: 0, a5: 0, reaction: 'at 25 °C', source: 'from-memory' },
    citric3: { a1: -6.396, a2: 0, a3: 0, a4: 0, a5: 0, reaction: 'at 25 °C', source: 'from-memory' },
    phthalic1: { a1: -2.95, a2: 0, a3: 0, a4: 0, a5: 0, reaction: 'at 25 °C', source: 'from-memory' },
    phthalic2: { a1: -5.408, a2: 0, a3: 0, a4: 0, a5: 0, reaction: 'at 25 °C', source: 'from-memory' },
  },
})

export type Equilibrium = keyof typeof equilibria.rows

/** Calorie of the thermochemical tables. */
const KCAL = 4184

/** Pairs of ions, each formed from the free ions of its name. van 't Hoff with a constant enthalpy. */
export const ionPairs = table({
  title: 'Ion pairs',
  columns: {
    cation: 'free cation',
    anion: 'free anion',
    charge: 'charge number of the pair',
    logK: 'log10 of the formation constant at 25 °C, kg/mol',
    enthalpy_J_mol: 'enthalpy of formation from the ions',
  },
  source: 'USGS.wateq4f.dat',
  rows: {
    // 3.106 - 673.6/T in the database: the same slope as this enthalpy, R ln(10) × 673.6 K
    KSO4: {
      cation: 'K',
      anion: 'SO4',
      charge: -1,
      logK: 3.106 - 673.6 / 298.15,
      enthalpy_J_mol: 8.31446 * Math.LN10 * 673.6,
    },
    CaSO4: { cation: 'Ca', anion: 'SO4', charge: 0, logK: 2.3, enthalpy_J_mol: 1.65 * KCAL },
    MgSO4: { cation: 'Mg', anion: 'SO4', charge: 0, logK: 2.37, enthalpy_J_mol: 4.55 * KCAL },
    NaSO4: { cation: 'Na', anion: 'SO4', charge: -1, logK: 0.7, enthalpy_J_mol: 1.12 * KCAL },
    NH4SO4: { cation: 'NH4', anion: 'SO4', charge: -1, logK: 1.11, enthalpy_J_mol: 0 * KCAL },
    CaHPO4: { cation: 'Ca', anion: 'HPO4', charge: 0, logK: 2.739, enthalpy_J_mol: 3.3 * KCAL },
    MgHPO4: { cation: 'Mg', anion: 'HPO4', charge: 0, logK: 2.87, enthalpy_J_mol: 3.3 * KCAL },
    CaH2PO4: { cation: 'Ca', anion: 'H2PO4', charge: 1, logK: 1.408, enthalpy_J_mol: 3.4 * KCAL },
    MgH2PO4: { cation: 'Mg', anion: 'H2PO4', charge: 1, logK: 1.513, enthalpy_J_mol: 3.4 * KCAL },
    CaHCO3: { cation: 'Ca', anion: 'HCO3', charge: 1, logK: 1.106, enthalpy_J_mol: 2.69 * KCAL },
    MgHCO3: { cation: 'Mg', anion: 'HCO3', charge: 1, logK: 1.07, enthalpy_J_mol: 0.79 * KCAL },
  },
})

export type IonPair = keyof typeof ionPairs.rows

/** Solids that come out of feed and stock, besides gypsum and calcite, which stand with the equilibria. */
export const minerals = table({
  title: 'Solubility products',
  columns: {
    formula: 'formula',
    logK: 'log10 of the solubility product at 25 °C',
    enthalpy_J_mol: 'enthalpy of dissolution, 0 where none is known',
  },
  source: 'USGS.minteq.v4.dat',
  rows: {
    brushite: { formula: 'CaHPO4.2H2O', logK: -18.995 + 12.346, enthalpy_J_mol: 0 },
    monetite: { formula: 'CaHPO4', logK: -6.93, enthalpy_J_mol: 0 },
    newberyite: { formula: 'MgHPO4.3H2O', logK: -18.175 + 12.346, enthalpy_J_mol: 0 },
    struvite: { formula: 'MgNH4PO4.6H2O', logK: -13.26, enthalpy_J_mol: 22600, source: 'Ronteltap2007' },
  },
})

export type Mineral = keyof typeof minerals.rows | 'gypsum' | 'calcite'
