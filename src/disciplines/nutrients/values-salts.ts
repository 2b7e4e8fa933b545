import { type Published, value } from '../../kernel/published.ts'
import type { Element } from '../../tables/elements.ts'
import type { Salt } from '../../tables/salts.ts'
import { elementShare, molarMass } from './equations-formula.ts'
import { hydrateSolubility } from './equations-saturation.ts'

/** Printed molar mass in g/mol and mass % of elements (a table of fertilisers), to three decimals. */
const shares: readonly (readonly [string, number, Readonly<Partial<Record<Element, number>>>])[] = [
  ['Ca(NO3)2.4H2O', 236.146, { Ca: 16.972, N: 11.863 }],
  ['5Ca(NO3)2.NH4NO3.10H2O', 1080.623, { Ca: 18.544, N: 15.554 }],
  ['KNO3', 101.102, { K: 38.672, N: 13.854 }],
  ['KH2PO4', 136.084, { K: 28.731, P: 22.761 }],
  ['K2HPO4', 174.174, { K: 44.895, P: 17.783 }],
  ['NH4H2PO4', 115.025, { N: 12.177, P: 26.928 }],
  ['(NH4)2HPO4', 132.056, { N: 21.214, P: 23.455 }],
  ['MgSO4.7H2O', 246.466, { Mg: 9.861, S: 13.008 }],
  ['K2SO4', 174.252, { K: 44.875, S: 18.399 }],
  ['Mg(NO3)2.6H2O', 256.403, { Mg: 9.479, N: 10.926 }],
  ['KCl', 74.548, { K: 52.447, Cl: 47.553 }],
  ['CaCl2', 110.978, { Ca: 36.113, Cl: 63.887 }],
  ['CaCl2.2H2O', 147.008, { Ca: 27.262, Cl: 48.229 }],
  ['NH4NO3', 80.043, { N: 34.999 }],
  ['(NH4)2SO4', 132.134, { N: 21.201, S: 24.263 }],
  ['CO(NH2)2', 60.056, { N: 46.646 }],
  ['HNO3', 63.012, { N: 22.229 }],
  ['H3PO4', 97.994, { P: 31.608 }],
  ['H2SO4', 98.072, { S: 32.69 }],
  ['C6H8O7', 192.123, {}],
  ['KOH', 56.105, { K: 69.687 }],
  ['K2CO3', 138.204, { K: 56.58 }],
  ['KHCO3', 100.114, { K: 39.053 }],
  ['K2SiO3', 154.278, { K: 50.685, Si: 18.204 }],
  ['C10H12FeN2NaO8', 367.047, { Fe: 15.215, Na: 6.264 }],
  ['C10H12FeN2NaO8.3H2O', 421.092, { Fe: 13.262, Na: 5.46 }],
  ['C14H19FeN3NaO10', 468.152, { Fe: 11.929, Na: 4.911 }],
  ['C14H18FeN3Na2O10', 490.134, { Fe: 11.394, Na: 9.381 }],
  ['C18H16FeN2NaO6', 435.169, { Fe: 12.833, Na: 5.283 }],
  ['FeSO4.7H2O', 278.006, { Fe: 20.088, S: 11.532 }],
  ['C10H12MnN2Na2O8', 389.13, { Mn: 14.118 }],
  ['C10H12ZnN2Na2O8', 399.572, { Zn: 16.363 }],
  ['C10H12CuN2Na2O8', 397.738, { Cu: 15.977 }],
  ['MnSO4.H2O', 169.009, { Mn: 32.506 }],
  ['MnSO4.4H2O', 223.054, { Mn: 24.63 }],
  ['MnCl2.4H2O', 197.898, { Mn: 27.761 }],
  ['ZnSO4.7H2O', 287.541, { Zn: 22.738 }],
  ['ZnSO4.H2O', 179.451, { Zn: 36.433 }],
  ['CuSO4.5H2O', 249.677, { Cu: 25.451 }],
  ['H3BO3', 61.831, { B: 17.483 }],
  ['Na2B4O7.10H2O', 381.363, { B: 11.338, Na: 12.057 }],
  ['Na2B8O13.4H2O', 412.507, { B: 20.964, Na: 11.146 }],
  ['Na2MoO4.2H2O', 241.956, { Mo: 39.656 }],
  ['(NH4)6Mo7O24.4H2O', 1235.92, { Mo: 54.344 }],
  ['CaSO4.2H2O', 172.164, {}],
  ['CaHPO4.2H2O', 172.086, {}],
  ['MgNH4PO4.6H2O', 245.404, {}],
]

/** g of the salt as sold per 100 g of added water at 0, 10, 20, 25 °C, and half of the last printed digit. */
const dissolved: readonly (readonly [Salt, readonly number[], number])[] = [
  ['potassium-nitrate', [13.6, 21.4, 31.9, 38.3], 0.05],
  ['monopotassium-phosphate', [13.3, 17.5, 22.3, 25.0], 0.05],
  ['potassium-sulfate', [7.7, 9.2, 11.0, 12.0], 0.05],
  ['potassium-chloride', [27.8, 30.9, 34.0, 35.5], 0.05],
  ['magnesium-sulfate', [59, 80, 106, 117], 0.5],
  ['magnesium-nitrate', [197, 215, 239, 256], 0.5],
  ['calcium-nitrate-tetrahydrate', [258, 324, 443, 563], 0.5],
  ['calcium-chloride', [58, 64, 73, 81], 0.5],
  ['monoammonium-phosphate', [21.7, 28.2, 35.9, 40.4], 0.05],
  ['diammonium-phosphate', [57, 62, 67, 69], 0.5],
  ['ammonium-nitrate', [117, 151, 190, 213], 0.5],
  ['ammonium-sulfate', [70, 73, 75, 76], 0.5],
  ['potassium-hydroxide', [95, 103, 114, 121], 0.5],
  ['potassium-carbonate', [105, 107, 110, 111], 0.5],
  ['potassium-bicarbonate', [23, 28, 33, 36], 0.5],
  ['manganese-sulfate', [63, 72, 76, 77], 0.5],
  ['zinc-sulfate', [108, 133, 166, 187], 0.5],
  ['copper-sulfate', [24, 29, 35, 39], 0.5],
  ['ferrous-sulfate', [33, 45, 61, 72], 0.5],
  ['boric-acid', [2.7, 3.7, 5.0, 5.8], 0.05],
  ['borax', [2.4, 3.3, 5, 6], 0.05],
  ['sodium-molybdate', [56, 84, 86, 86], 0.5],
]

const temperatures = [0, 10, 20, 25] as const

const rows: readonly Published[] = [
  ...shares.flatMap(([formula, M, percents]) => [
    value(molarMass, { formula }, M / 1000, {
      ...{ source: 'IUPAC.weights', why: 'half of the last printed digit', within: 6e-7, absolute: true },
    }),
    ...(Object.entries(percents) as readonly (readonly [Element, number])[]).map(([element, percent]) =>
      value(elementShare, { formula, element }, percent / 100, {
        ...{ source: 'Stoichiometry', why: 'half of the last printed digit', within: 6e-6, absolute: true },
      }),
    ),
  ]),
  ...dissolved.flatMap(([salt, grams, half]) =>
    temperatures.map((temperature_C, i) => {
      // Where a whole number stands between numbers with a decimal, it is printed without one.
      const last = half < 0.5 && grams[i]! >= 5 && Number.isInteger(grams[i]!) && salt === 'borax' ? 0.5 : half
      return value(hydrateSolubility, { salt, temperature_C }, grams[i]! / 100, {
        ...{ within: (last + 0.001) / 100, absolute: true, source: 'CRC.solubility' },
        why: 'half of the last printed digit of g per 100 g',
        ...((last + 0.001) / grams[i]! > 0.05 ? { loose: 'printed to whole grams' } : {}),
      })
    }),
  ),
]

export default rows
