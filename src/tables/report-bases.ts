import { table } from './table.ts'

/**
 * Ways in which a report states an amount. `perUnit_g_m3` grams of the stated `formula` in a cubic metre (mg/L) for
 * one unit; `perUnit_mol_m3` where the unit counts moles or, with `equivalents`, moles of charge.
 */
export const reportBases = table({
  title: 'Ways to state an amount in water',
  columns: {
    formula: 'what is weighed, or null where the component itself is',
    unitsPerFormula: 'how many of the component (or of its charge, where `charge`) one formula stands for',
    charge: 'whether the statement counts charge and not things',
    perUnit_g_m3: 'mass of the formula for one unit, or null',
    perUnit_mol_m3: 'amount for one unit, or null',
  },
  source: 'Stoichiometry',
  rows: {
    'mg/L': { formula: null, unitsPerFormula: 1, charge: false, perUnit_g_m3: 1, perUnit_mol_m3: null },
    'mmol/L': { formula: null, unitsPerFormula: 1, charge: false, perUnit_g_m3: null, perUnit_mol_m3: 1 },
    'meq/L': { formula: null, unitsPerFormula: 1, charge: true, perUnit_g_m3: null, perUnit_mol_m3: 1 },
    'mg/L as N': { formula: 'N', unitsPerFormula: 1, charge: false, perUnit_g_m3: 1, perUnit_mol_m3: null },
    'mg/L as P': { formula: 'P', unitsPerFormula: 1, charge: false, perUnit_g_m3: 1, perUnit_mol_m3: null },
    'mg/L as S': { formula: 'S', unitsPerFormula: 1, charge: false, perUnit_g_m3: 1, perUnit_mol_m3: null },
    'mg/L as B': { formula: 'B', unitsPerFormula: 1, charge: false, perUnit_g_m3: 1, perUnit_mol_m3: null },
    'mg/L as Si': { formula: 'Si', unitsPerFormula: 1, charge: false, perUnit_g_m3: 1, perUnit_mol_m3: null },
    'mg/L as SiO2': { formula: 'SiO2', unitsPerFormula: 1, charge: false, perUnit_g_m3: 1, perUnit_mol_m3: null },
    'mg/L as Mo': { formula: 'Mo', unitsPerFormula: 1, charge: false, perUnit_g_m3: 1, perUnit_mol_m3: null },
    'mg/L as P2O5': { formula: 'P2O5', unitsPerFormula: 2, charge: false, perUnit_g_m3: 1, perUnit_mol_m3: null },
    'mg/L as PO4': { formula: 'PO4', unitsPerFormula: 1, charge: false, perUnit_g_m3: 1, perUnit_mol_m3: null },
    'mg/L as K2O': { formula: 'K2O', unitsPerFormula: 2, charge: false, perUnit_g_m3: 1, perUnit_mol_m3: null },
    'mg/L as CaO': { formula: 'CaO', unitsPerFormula: 2, charge: true, perUnit_g_m3: 1, perUnit_mol_m3: null },
    'mg/L as CaCO3': { formula: 'CaCO3', unitsPerFormula: 2, charge: true, perUnit_g_m3: 1, perUnit_mol_m3: null },
    'mg/L as HCO3': { formula: 'HCO3', unitsPerFormula: 1, charge: true, perUnit_g_m3: 1, perUnit_mol_m3: null },
    dH: {
      formula: 'CaO',
      unitsPerFormula: 2,
      charge: true,
      perUnit_g_m3: 10,
      perUnit_mol_m3: null,
      source: 'from-memory',
      note: 'German degree: 10 mg/L CaO; hardness, or alkalinity as dKH',
    },
    fH: {
      formula: 'CaCO3',
      unitsPerFormula: 2,
      charge: true,
      perUnit_g_m3: 10,
      perUnit_mol_m3: null,
      source: 'from-memory',
      note: 'French degree: 10 mg/L CaCO3',
    },
    gpg: {
      formula: 'CaCO3',
      unitsPerFormula: 2,
      charge: true,
      perUnit_g_m3: 17.118,
      perUnit_mol_m3: null,
      source: 'from-memory',
      note: 'grain per US gallon of CaCO3',
    },
  },
})

export type ReportBasis = keyof typeof reportBases.rows
