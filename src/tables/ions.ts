import { table } from './table.ts'

/** The mobility of a pair is not measured; the conductivity of a solution hardly depends on it. */
const PAIR = 'chosen by us: insensitive'

/**
 * Ions that carry current. The conductivity of an ion at another temperature is its value at 25 °C times the ratio of
 * a t² + b t + c there and at 25 °C, or times the ratio of the viscosities of water where the ion has no such fit.
 */
export const ions = table({
  title: 'Conductivity of ions at infinite dilution',
  columns: {
    charge: 'charge number',
    perCharge_S_m2_mol: 'limiting conductivity at 25 °C per mole of charge',
    a: 'coefficient of t² of the limiting conductivity in mS/cm per mol/kg (McCleskey2012), or null',
    b: 'coefficient of t, or null',
    c: 'coefficient, constant, or null',
  },
  source: 'CRC.conductivity',
  rows: {
    H: { charge: 1, perCharge_S_m2_mol: 349.65 / 1e4, a: 0.01414, b: 5.355, c: 224.2 },
    K: { charge: 1, perCharge_S_m2_mol: 73.48 / 1e4, a: 0.003046, b: 1.261, c: 40.7 },
    Na: { charge: 1, perCharge_S_m2_mol: 50.08 / 1e4, a: 0.003763, b: 0.877, c: 26.23 },
    NH4: { charge: 1, perCharge_S_m2_mol: 73.5 / 1e4, a: 0.003341, b: 1.285, c: 39.04 },
    Ca: { charge: 2, perCharge_S_m2_mol: 59.47 / 1e4, a: 0.009645, b: 1.984, c: 62.28 },
    Mg: { charge: 2, perCharge_S_m2_mol: 53.0 / 1e4, a: 0.01068, b: 1.695, c: 57.16 },
    Mn: { charge: 2, perCharge_S_m2_mol: 53.5 / 1e4, a: 0.01275, b: 2.109, c: 46.19 },
    Zn: { charge: 2, perCharge_S_m2_mol: 52.8 / 1e4, a: 0.01249, b: 1.912, c: 48.2 },
    Cu: { charge: 2, perCharge_S_m2_mol: 53.6 / 1e4, a: 0.00818, b: 1.939, c: 53.26 },
    Fe: { charge: 2, perCharge_S_m2_mol: 54.0 / 1e4, a: 0.009939, b: 1.878, c: 54.8 },
    OH: { charge: -1, perCharge_S_m2_mol: 198 / 1e4, a: 0.003396, b: 2.925, c: 121.3 },
    Cl: { charge: -1, perCharge_S_m2_mol: 76.31 / 1e4, a: 0.003817, b: 1.337, c: 40.99 },
    NO3: { charge: -1, perCharge_S_m2_mol: 71.42 / 1e4, a: 0.001925, b: 1.214, c: 39.9 },
    SO4: { charge: -2, perCharge_S_m2_mol: 80.0 / 1e4, a: 0.01037, b: 2.838, c: 82.37 },
    HSO4: { charge: -1, perCharge_S_m2_mol: 52 / 1e4, a: 0.000927, b: 0.8337, c: 29.56 },
    H2PO4: { charge: -1, perCharge_S_m2_mol: 36 / 1e4, a: null, b: null, c: null },
    HPO4: { charge: -2, perCharge_S_m2_mol: 57 / 1e4, a: null, b: null, c: null },
    PO4: { charge: -3, perCharge_S_m2_mol: 92.8 / 1e4, a: null, b: null, c: null },
    HCO3: { charge: -1, perCharge_S_m2_mol: 44.5 / 1e4, a: 0.000614, b: 0.9048, c: 21.14 },
    CO3: { charge: -2, perCharge_S_m2_mol: 69.3 / 1e4, a: 0.00326, b: 2.998, c: 64.03 },
    MoO4: { charge: -2, perCharge_S_m2_mol: 74.5 / 1e4, a: null, b: null, c: null },
    F: { charge: -1, perCharge_S_m2_mol: 55.4 / 1e4, a: null, b: null, c: null, source: 'from-memory' },
    KSO4: {
      charge: -1,
      perCharge_S_m2_mol: 40 / 1e4,
      a: null,
      b: null,
      c: null,
      source: 'common-practice',
      note: PAIR,
    },
    NaSO4: {
      charge: -1,
      perCharge_S_m2_mol: 40 / 1e4,
      a: null,
      b: null,
      c: null,
      source: 'common-practice',
      note: PAIR,
    },
    NH4SO4: {
      charge: -1,
      perCharge_S_m2_mol: 40 / 1e4,
      a: null,
      b: null,
      c: null,
      source: 'common-practice',
      note: PAIR,
    },
    CaH2PO4: {
      charge: 1,
      perCharge_S_m2_mol: 40 / 1e4,
      a: null,
      b: null,
      c: null,
      source: 'common-practice',
      note: PAIR,
    },
    MgH2PO4: {
      charge: 1,
      perCharge_S_m2_mol: 40 / 1e4,
      a: null,
      b: null,
      c: null,
      source: 'common-practice',
      note: PAIR,
    },
    CaHCO3: {
      charge: 1,
      perCharge_S_m2_mol: 40 / 1e4,
      a: null,
      b: null,
      c: null,
      source: 'common-practice',
      note: PAIR,
    },
    MgHCO3: {
      charge: 1,
      perCharge_S_m2_mol: 40 / 1e4,
      a: null,
      b: null,
      c: null,
      source: 'common-practice',
      note: PAIR,
    },
  },
})

export type Ion = keyof typeof ions.rows
