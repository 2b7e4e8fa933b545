import { table } from './table.ts'

/** Saturated solutions. The numbers are the anhydrous solute as a share of the solution, printed in %. */
export const solubility = table({
  title: 'Solubility of salts in water',
  columns: {
    at0: 'mass share of anhydrous solute in the saturated solution at 0 °C',
    at10: 'mass share at 10 °C',
    at20: 'mass share at 20 °C',
    at25: 'mass share at 25 °C',
  },
  source: 'CRC.solubility',
  rows: {
    KNO3: { at0: 12.0 / 100, at10: 17.6 / 100, at20: 24.2 / 100, at25: 27.7 / 100 },
    KH2PO4: { at0: 11.74 / 100, at10: 14.91 / 100, at20: 18.25 / 100, at25: 19.97 / 100 },
    K2SO4: { at0: 7.11 / 100, at10: 8.46 / 100, at20: 9.95 / 100, at25: 10.7 / 100 },
    KCl: { at0: 21.74 / 100, at10: 23.61 / 100, at20: 25.39 / 100, at25: 26.22 / 100 },
    MgSO4: { at0: 18.2 / 100, at10: 21.7 / 100, at20: 25.1 / 100, at25: 26.3 / 100 },
    'Mg(NO3)2': { at0: 38.4 / 100, at10: 39.5 / 100, at20: 40.8 / 100, at25: 41.6 / 100 },
    'Ca(NO3)2': { at0: 50.1 / 100, at10: 53.1 / 100, at20: 56.7 / 100, at25: 59.0 / 100 },
    CaCl2: { at0: 36.7 / 100, at10: 39.19 / 100, at20: 42.13 / 100, at25: 44.83 / 100 },
    NH4H2PO4: { at0: 17.8 / 100, at10: 22.0 / 100, at20: 26.4 / 100, at25: 28.8 / 100 },
    '(NH4)2HPO4': { at0: 36.4 / 100, at10: 38.2 / 100, at20: 40.0 / 100, at25: 41.0 / 100 },
    NH4NO3: { at0: 54.0 / 100, at10: 60.1 / 100, at20: 65.5 / 100, at25: 68.0 / 100 },
    '(NH4)2SO4': { at0: 41.3 / 100, at10: 42.1 / 100, at20: 42.9 / 100, at25: 43.3 / 100 },
    KOH: { at0: 48.7 / 100, at10: 50.8 / 100, at20: 53.2 / 100, at25: 54.7 / 100 },
    K2CO3: { at0: 51.3 / 100, at10: 51.7 / 100, at20: 52.3 / 100, at25: 52.7 / 100 },
    KHCO3: { at0: 18.62 / 100, at10: 21.73 / 100, at20: 24.92 / 100, at25: 26.6 / 100 },
    MnSO4: { at0: 34.6 / 100, at10: 37.3 / 100, at20: 38.6 / 100, at25: 38.9 / 100 },
    ZnSO4: { at0: 29.1 / 100, at10: 32.0 / 100, at20: 35.0 / 100, at25: 36.6 / 100 },
    CuSO4: { at0: 12.4 / 100, at10: 14.4 / 100, at20: 16.7 / 100, at25: 18.0 / 100 },
    FeSO4: { at0: 13.5 / 100, at10: 17.0 / 100, at20: 20.8 / 100, at25: 22.8 / 100 },
    H3BO3: { at0: 2.61 / 100, at10: 3.57 / 100, at20: 4.77 / 100, at25: 5.48 / 100 },
    Na2B4O7: { at0: 1.23 / 100, at10: 1.71 / 100, at20: 2.5 / 100, at25: 3.07 / 100 },
    Na2MoO4: { at0: 30.6 / 100, at10: 38.8 / 100, at20: 39.4 / 100, at25: 39.4 / 100 },
  },
})

export type Solute = keyof typeof solubility.rows

/** Temperatures of the columns above. */
export const SOLUBILITY_TEMPERATURES_C = [0, 10, 20, 25] as const
