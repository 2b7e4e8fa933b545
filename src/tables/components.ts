import { table } from './table.ts'

/**
 * What a solution is counted in. Each row is a total in one reference form: `H2PO4` holds all orthophosphate,
 * `HCO3` all dissolved carbonate, `NH4` all ammonia, `H3BO3` all borate, `citrate` all citric acid.
 * Hydrogen is not counted: it follows from electroneutrality.
 */
export const components = table({
  title: 'Components of a solution',
  columns: {
    formula: 'formula of the reference form',
    charge: 'charge number of the reference form',
    element: 'nutrient or ballast element that one formula holds, or null (the nitrogen inside a chelate is no food)',
  },
  source: 'Stoichiometry',
  rows: {
    Ca: { formula: 'Ca', charge: 2, element: 'Ca' },
    Mg: { formula: 'Mg', charge: 2, element: 'Mg' },
    K: { formula: 'K', charge: 1, element: 'K' },
    Na: { formula: 'Na', charge: 1, element: 'Na' },
    NH4: { formula: 'NH4', charge: 1, element: 'N' },
    NO3: { formula: 'NO3', charge: -1, element: 'N' },
    Cl: { formula: 'Cl', charge: -1, element: 'Cl' },
    SO4: { formula: 'SO4', charge: -2, element: 'S' },
    H2PO4: { formula: 'H2PO4', charge: -1, element: 'P' },
    HCO3: { formula: 'HCO3', charge: -1, element: 'C' },
    F: { formula: 'F', charge: -1, element: 'F' },
    H3BO3: { formula: 'H3BO3', charge: 0, element: 'B' },
    H4SiO4: { formula: 'H4SiO4', charge: 0, element: 'Si' },
    Fe: { formula: 'Fe', charge: 2, element: 'Fe' },
    Mn: { formula: 'Mn', charge: 2, element: 'Mn' },
    Zn: { formula: 'Zn', charge: 2, element: 'Zn' },
    Cu: { formula: 'Cu', charge: 2, element: 'Cu' },
    MoO4: { formula: 'MoO4', charge: -2, element: 'Mo' },
    FeEDTA: { formula: 'C10H12FeN2O8', charge: -1, element: 'Fe' },
    FeDTPA: { formula: 'C14H18FeN3O10', charge: -2, element: 'Fe' },
    FeEDDHA: { formula: 'C18H16FeN2O6', charge: -1, element: 'Fe' },
    MnEDTA: { formula: 'C10H12MnN2O8', charge: -2, element: 'Mn' },
    ZnEDTA: { formula: 'C10H12ZnN2O8', charge: -2, element: 'Zn' },
    CuEDTA: { formula: 'C10H12CuN2O8', charge: -2, element: 'Cu' },
    citrate: { formula: 'C6H8O7', charge: 0, element: null },
    phthalate: { formula: 'C8H6O4', charge: 0, element: null },
    unmeasured: {
      formula: '',
      charge: 1,
      element: null,
      note: 'Charge that the analysis or label leaves open; negative where anions are missing',
    },
  },
})

export type Component = keyof typeof components.rows
