import { table } from './table.ts'

/** Atomic weights; masses are divided by 1000 so that the printed g/mol stays readable. */
export const elements = table({
  title: 'Atomic weights',
  columns: { molarMass_kg_mol: 'molar mass of the atom' },
  source: 'IUPAC.weights',
  rows: {
    H: { molarMass_kg_mol: 1.008 / 1000 },
    B: { molarMass_kg_mol: 10.81 / 1000 },
    C: { molarMass_kg_mol: 12.011 / 1000 },
    N: { molarMass_kg_mol: 14.007 / 1000 },
    O: { molarMass_kg_mol: 15.999 / 1000 },
    F: { molarMass_kg_mol: 18.998 / 1000 },
    Na: { molarMass_kg_mol: 22.99 / 1000 },
    Mg: { molarMass_kg_mol: 24.305 / 1000 },
    Si: { molarMass_kg_mol: 28.085 / 1000 },
    P: { molarMass_kg_mol: 30.974 / 1000 },
    S: { molarMass_kg_mol: 32.06 / 1000 },
    Cl: { molarMass_kg_mol: 35.45 / 1000 },
    K: { molarMass_kg_mol: 39.098 / 1000 },
    Ca: { molarMass_kg_mol: 40.078 / 1000 },
    Mn: { molarMass_kg_mol: 54.938 / 1000 },
    Fe: { molarMass_kg_mol: 55.845 / 1000 },
    Cu: { molarMass_kg_mol: 63.546 / 1000 },
    Zn: { molarMass_kg_mol: 65.38 / 1000 },
    Mo: { molarMass_kg_mol: 95.95 / 1000 },
  },
})

export type Element = keyof typeof elements.rows
