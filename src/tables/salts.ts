import { table } from './table.ts'

/**
 * Pure substances that a grower may own, by formula. `ions` are the components that one formula gives to the water;
 * hydrogen and hydroxide are left out because they follow from electroneutrality.
 * `bottle`: A holds calcium, B phosphate and sulfate; `alone` is a base or silicate, never with another concentrate.
 */
export const salts = table({
  title: 'Salts, chelates, acids and bases',
  columns: {
    formula: 'chemical formula with its water',
    ions: 'components that one formula unit gives',
    bottle: 'A, B, either, acid or alone',
    dissolves: 'row of the table of solubility, or null',
  },
  source: 'Stoichiometry',
  rows: {
    'calcium-nitrate-tetrahydrate': {
      formula: 'Ca(NO3)2.4H2O',
      ions: 'Ca + 2 NO3',
      bottle: 'A',
      dissolves: 'Ca(NO3)2',
    },
    'calcium-nitrate-double-salt': {
      formula: '5Ca(NO3)2.NH4NO3.10H2O',
      ions: '5 Ca + 11 NO3 + NH4',
      bottle: 'A',
      dissolves: null,
    },
    'potassium-nitrate': { formula: 'KNO3', ions: 'K + NO3', bottle: 'either', dissolves: 'KNO3' },
    'monopotassium-phosphate': { formula: 'KH2PO4', ions: 'K + H2PO4', bottle: 'B', dissolves: 'KH2PO4' },
    'dipotassium-phosphate': { formula: 'K2HPO4', ions: '2 K + H2PO4', bottle: 'B', dissolves: null },
    'monoammonium-phosphate': { formula: 'NH4H2PO4', ions: 'NH4 + H2PO4', bottle: 'B', dissolves: 'NH4H2PO4' },
    'diammonium-phosphate': { formula: '(NH4)2HPO4', ions: '2 NH4 + H2PO4', bottle: 'B', dissolves: '(NH4)2HPO4' },
    'magnesium-sulfate': { formula: 'MgSO4.7H2O', ions: 'Mg + SO4', bottle: 'B', dissolves: 'MgSO4' },
    'potassium-sulfate': { formula: 'K2SO4', ions: '2 K + SO4', bottle: 'B', dissolves: 'K2SO4' },
    'magnesium-nitrate': { formula: 'Mg(NO3)2.6H2O', ions: 'Mg + 2 NO3', bottle: 'either', dissolves: 'Mg(NO3)2' },
    'potassium-chloride': { formula: 'KCl', ions: 'K + Cl', bottle: 'either', dissolves: 'KCl' },
    'calcium-chloride': { formula: 'CaCl2', ions: 'Ca + 2 Cl', bottle: 'A', dissolves: 'CaCl2' },
    'calcium-chloride-dihydrate': { formula: 'CaCl2.2H2O', ions: 'Ca + 2 Cl', bottle: 'A', dissolves: 'CaCl2' },
    'ammonium-nitrate': { formula: 'NH4NO3', ions: 'NH4 + NO3', bottle: 'A', dissolves: 'NH4NO3' },
    'ammonium-sulfate': { formula: '(NH4)2SO4', ions: '2 NH4 + SO4', bottle: 'B', dissolves: '(NH4)2SO4' },
    'potassium-hydroxide': { formula: 'KOH', ions: 'K', bottle: 'alone', dissolves: 'KOH' },
    'potassium-carbonate': { formula: 'K2CO3', ions: '2 K + HCO3', bottle: 'alone', dissolves: 'K2CO3' },
    'potassium-bicarbonate': { formula: 'KHCO3', ions: 'K + HCO3', bottle: 'alone', dissolves: 'KHCO3' },
    'potassium-metasilicate': { formula: 'K2SiO3', ions: '2 K + H4SiO4', bottle: 'alone', dissolves: null },
    'iron-EDTA': { formula: 'C10H12FeN2NaO8', ions: 'Na + FeEDTA', bottle: 'A', dissolves: null },
    'iron-EDTA-trihydrate': { formula: 'C10H12FeN2NaO8.3H2O', ions: 'Na + FeEDTA', bottle: 'A', dissolves: null },
    'iron-DTPA-monosodium': { formula: 'C14H19FeN3NaO10', ions: 'Na + FeDTPA', bottle: 'A', dissolves: null },
    'iron-DTPA-disodium': { formula: 'C14H18FeN3Na2O10', ions: '2 Na + FeDTPA', bottle: 'A', dissolves: null },
    'iron-EDDHA': { formula: 'C18H16FeN2NaO6', ions: 'Na + FeEDDHA', bottle: 'A', dissolves: null },
    'ferrous-sulfate': { formula: 'FeSO4.7H2O', ions: 'Fe + SO4', bottle: 'B', dissolves: 'FeSO4' },
    'manganese-EDTA': { formula: 'C10H12MnN2Na2O8', ions: '2 Na + MnEDTA', bottle: 'B', dissolves: null },
    'zinc-EDTA': { formula: 'C10H12ZnN2Na2O8', ions: '2 Na + ZnEDTA', bottle: 'B', dissolves: null },
    'copper-EDTA': { formula: 'C10H12CuN2Na2O8', ions: '2 Na + CuEDTA', bottle: 'B', dissolves: null },
    'manganese-sulfate': { formula: 'MnSO4.H2O', ions: 'Mn + SO4', bottle: 'B', dissolves: 'MnSO4' },
    'manganese-sulfate-tetrahydrate': { formula: 'MnSO4.4H2O', ions: 'Mn + SO4', bottle: 'B', dissolves: 'MnSO4' },
    'manganese-chloride': { formula: 'MnCl2.4H2O', ions: 'Mn + 2 Cl', bottle: 'B', dissolves: null },
    'zinc-sulfate': { formula: 'ZnSO4.7H2O', ions: 'Zn + SO4', bottle: 'B', dissolves: 'ZnSO4' },
    'zinc-sulfate-monohydrate': { formula: 'ZnSO4.H2O', ions: 'Zn + SO4', bottle: 'B', dissolves: 'ZnSO4' },
    'copper-sulfate': { formula: 'CuSO4.5H2O', ions: 'Cu + SO4', bottle: 'B', dissolves: 'CuSO4' },
    'boric-acid': { formula: 'H3BO3', ions: 'H3BO3', bottle: 'B', dissolves: 'H3BO3' },
    borax: { formula: 'Na2B4O7.10H2O', ions: '2 Na + 4 H3BO3', bottle: 'B', dissolves: 'Na2B4O7' },
    'disodium-octaborate': { formula: 'Na2B8O13.4H2O', ions: '2 Na + 8 H3BO3', bottle: 'B', dissolves: null },
    'sodium-molybdate': { formula: 'Na2MoO4.2H2O', ions: '2 Na + MoO4', bottle: 'B', dissolves: 'Na2MoO4' },
    'ammonium-molybdate': { formula: '(NH4)6Mo7O24.4H2O', ions: '6 NH4 + 7 MoO4', bottle: 'B', dissolves: null },
    'nitric-acid': { formula: 'HNO3', ions: 'NO3', bottle: 'acid', dissolves: null },
    'phosphoric-acid': { formula: 'H3PO4', ions: 'H2PO4', bottle: 'acid', dissolves: null },
    'sulfuric-acid': { formula: 'H2SO4', ions: 'SO4', bottle: 'acid', dissolves: null },
    'citric-acid': { formula: 'C6H8O7', ions: 'citrate', bottle: 'acid', dissolves: null },
  },
})

export type Salt = keyof typeof salts.rows
