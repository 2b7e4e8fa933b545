import { table } from './table.ts'

/** Names of ions and forms as reports print them, without charge signs; what the number weighs. */
export const reportNames = table({
  title: 'Names in water reports',
  columns: { component: 'component of the solution', basis: 'row of the ways to state an amount' },
  source: 'Stoichiometry',
  rows: {
    Ca: { component: 'Ca', basis: 'mg/L' },
    Mg: { component: 'Mg', basis: 'mg/L' },
    K: { component: 'K', basis: 'mg/L' },
    Na: { component: 'Na', basis: 'mg/L' },
    NH4: { component: 'NH4', basis: 'mg/L' },
    NO3: { component: 'NO3', basis: 'mg/L' },
    Cl: { component: 'Cl', basis: 'mg/L' },
    SO4: { component: 'SO4', basis: 'mg/L' },
    HCO3: { component: 'HCO3', basis: 'mg/L' },
    H2PO4: { component: 'H2PO4', basis: 'mg/L' },
    PO4: { component: 'H2PO4', basis: 'mg/L as PO4' },
    F: { component: 'F', basis: 'mg/L' },
    Fe: { component: 'Fe', basis: 'mg/L' },
    Mn: { component: 'Mn', basis: 'mg/L' },
    Zn: { component: 'Zn', basis: 'mg/L' },
    Cu: { component: 'Cu', basis: 'mg/L' },
    B: { component: 'H3BO3', basis: 'mg/L as B' },
    Mo: { component: 'MoO4', basis: 'mg/L as Mo' },
    Si: { component: 'H4SiO4', basis: 'mg/L as Si' },
    SiO2: { component: 'H4SiO4', basis: 'mg/L as SiO2' },
    'NO3-N': { component: 'NO3', basis: 'mg/L as N' },
    'NH4-N': { component: 'NH4', basis: 'mg/L as N' },
    P: { component: 'H2PO4', basis: 'mg/L as P' },
    'PO4-P': { component: 'H2PO4', basis: 'mg/L as P' },
    P2O5: { component: 'H2PO4', basis: 'mg/L as P2O5' },
    S: { component: 'SO4', basis: 'mg/L as S' },
    'SO4-S': { component: 'SO4', basis: 'mg/L as S' },
    K2O: { component: 'K', basis: 'mg/L as K2O' },
    CaO: { component: 'Ca', basis: 'mg/L as CaO' },
    'Ca as CaCO3': { component: 'Ca', basis: 'mg/L as CaCO3' },
    'Mg as CaCO3': { component: 'Mg', basis: 'mg/L as CaCO3' },
    'HCO3 as CaCO3': { component: 'HCO3', basis: 'mg/L as CaCO3' },
  },
})

export type ReportName = keyof typeof reportNames.rows
