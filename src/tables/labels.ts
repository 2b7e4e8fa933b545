import { table } from './table.ts'

/**
 * Guaranteed analyses as they stand on bags, mass shares. A grower's own label goes before these.
 * P2O5 and K2O as printed; the rest as element.
 */
export const labels = table({
  title: 'Usual labels of bags',
  columns: {
    salt: 'row of the table of salts that it stands in for, or null for a mixed bag',
    nitrateN: 'nitrogen as nitrate, mass share',
    ammoniumN: 'nitrogen as ammonium, mass share',
    P2O5: 'phosphate as P2O5, mass share',
    K2O: 'potassium as K2O, mass share',
    Ca: 'calcium, mass share',
    Mg: 'magnesium, mass share',
    S: 'sulfur, mass share',
  },
  source: 'from-memory',
  rows: {
    'calcium-nitrate-15.5': {
      salt: 'calcium-nitrate-double-salt',
      nitrateN: 0.144,
      ammoniumN: 0.011,
      P2O5: 0,
      K2O: 0,
      Ca: 0.19,
      Mg: 0,
      S: 0,
    },
    'potassium-nitrate-13-0-46': {
      salt: 'potassium-nitrate',
      nitrateN: 0.13,
      ammoniumN: 0,
      P2O5: 0,
      K2O: 0.46,
      Ca: 0,
      Mg: 0,
      S: 0,
    },
    'MKP-0-52-34': {
      salt: 'monopotassium-phosphate',
      nitrateN: 0,
      ammoniumN: 0,
      P2O5: 0.52,
      K2O: 0.34,
      Ca: 0,
      Mg: 0,
      S: 0,
    },
    'MAP-12-61-0': {
      salt: 'monoammonium-phosphate',
      nitrateN: 0,
      ammoniumN: 0.12,
      P2O5: 0.61,
      K2O: 0,
      Ca: 0,
      Mg: 0,
      S: 0,
    },
    epsom: { salt: 'magnesium-sulfate', nitrateN: 0, ammoniumN: 0, P2O5: 0, K2O: 0, Ca: 0, Mg: 0.098, S: 0.129 },
    'potassium-sulfate-0-0-50': {
      salt: 'potassium-sulfate',
      nitrateN: 0,
      ammoniumN: 0,
      P2O5: 0,
      K2O: 0.5,
      Ca: 0,
      Mg: 0,
      S: 0.175,
    },
    'magnesium-nitrate': {
      salt: 'magnesium-nitrate',
      nitrateN: 0.109,
      ammoniumN: 0,
      P2O5: 0,
      K2O: 0,
      Ca: 0,
      Mg: 0.094,
      S: 0,
    },
  },
})

export type BagLabel = keyof typeof labels.rows
