import { type Published, value } from '../../kernel/published.ts'
import { type AcidAsSold, acids } from '../../tables/acids.ts'
import { elements } from '../../tables/elements.ts'
import type { Salt } from '../../tables/salts.ts'
import { type Amounts, mixed, type Nutrient } from './composition.ts'
import { nutrientMass } from './equations-formula.ts'
import { alkalinity } from './equations-ph.ts'
import { saltAmounts } from './equations-salts.ts'
import { type Product, recipe } from './recipe.ts'

type Wanted = Readonly<Partial<Record<Nutrient, number>>>

const problem = (shelf: readonly Product[], wanted: Wanted, water: Amounts = {}) => ({
  ...{ water, shelf, limits: [], ammoniumShare: null, pH: null },
  targets: (Object.entries(wanted) as readonly (readonly [Nutrient, number])[]).map(([nutrient, wanted_g_m3]) => ({
    nutrient,
    wanted_g_m3,
    weight: 1,
  })),
})

/** A product of the worked optima: mass shares to five figures, nitrogen as nitrate. */
function ofShares(id: string, shares: Readonly<Partial<Record<'N' | 'P' | 'K' | 'Ca' | 'Mg' | 'S', number>>>): Product {
  const component = { N: 'NO3', P: 'H2PO4', K: 'K', Ca: 'Ca', Mg: 'Mg', S: 'SO4' } as const
  const amounts = (Object.entries(shares) as readonly (readonly [keyof typeof component, number])[]).map(
    ([element, share]) => [component[element], share / elements.rows[element].molarMass_kg_mol] as const,
  )
  return { id, amounts_mol_kg: Object.fromEntries(amounts) }
}

const four = [
  ofShares('CN', { N: 0.15554, Ca: 0.18544 }),
  ofShares('KN', { N: 0.13854, K: 0.38672 }),
  ofShares('MKP', { P: 0.22761, K: 0.28731 }),
  ofShares('EPS', { Mg: 0.09861, S: 0.13008 }),
]
const five = [...four, ofShares('AN', { N: 0.34999 })]
const lettuce: Wanted = { N: 150, P: 31, K: 210, Ca: 90, Mg: 24 }
const hard: Amounts = {
  Ca: 110 / 1000 / elements.rows.Ca.molarMass_kg_mol,
  Mg: 30 / 1000 / elements.rows.Mg.molarMass_kg_mol,
}

function optimalDose(given: {
  readonly shelf: readonly Product[]
  readonly water: Amounts
  readonly id: string
}): number {
  return recipe(problem(given.shelf, lettuce, given.water)).doses_g_m3[given.id]!
}
/** mg/L of an element that the optimum of four salts in pure water reaches; sulfur comes along, nobody aims at it. */
function reachedAtOptimum({ nutrient }: { readonly nutrient: Nutrient }): number {
  return recipe(problem(four, lettuce)).reached_g_m3[nutrient]
}
function smallestMisfit(given: { readonly shelf: readonly Product[]; readonly water: Amounts }): number {
  return recipe(problem(given.shelf, lettuce, given.water)).objective
}

const agreed = { within: 1e-4, source: 'SciPy.nnls', why: 'two solvers agree; doses to six figures' } as const
const optima: readonly (readonly [readonly Product[], Amounts, Readonly<Record<string, number>>])[] = [
  [four, {}, { CN: 499.639, KN: 458.349, MKP: 135.452, EPS: 243.383 }],
  [five, {}, { CN: 485.332, KN: 441.842, MKP: 136.198, EPS: 243.383, AN: 37.997 }],
  [four, hard, { CN: 5.715, KN: 572.873, MKP: 130.28 }],
]

const reachedByFour = { N: 141.214, P: 30.83, K: 216.169, Ca: 92.653, Mg: 24, S: 31.659 } as const

/** Grams of a published recipe from its own published elements. */
function recoveredDose(given: {
  readonly salts: readonly Salt[]
  readonly wanted: Wanted
  readonly salt: Salt
}): number {
  const shelf = given.salts.map((salt) => ({ id: salt, amounts_mol_kg: saltAmounts({ salt, purity: 1 }) }))
  return recipe(problem(shelf, given.wanted)).doses_g_m3[given.salt]!
}

const LITRES_IN_100_GALLONS = 378.54
const printed = 'grams and elements are printed to three or four figures'
const published: readonly (readonly [string, number, Wanted, Readonly<Partial<Record<Salt, number>>>])[] = [
  [
    'HoaglandArnon1950',
    0.001,
    { N: 210.1, P: 30.97, K: 234.6, Ca: 200.4, Mg: 48.61, S: 64.12 },
    {
      ...{ 'monopotassium-phosphate': 136.1, 'potassium-nitrate': 505.5 },
      ...{ 'calcium-nitrate-tetrahydrate': 1180.7, 'magnesium-sulfate': 492.9 },
    },
  ],
  [
    'HoaglandArnon1950',
    0.001,
    { N: 210.1, 'NH4-N': 14.007, P: 30.97, K: 234.6, Ca: 160.3, Mg: 48.61, S: 64.12 },
    {
      ...{ 'monoammonium-phosphate': 115.0, 'potassium-nitrate': 606.6 },
      ...{ 'calcium-nitrate-tetrahydrate': 944.6, 'magnesium-sulfate': 492.9 },
    },
  ],
  [
    'HoaglandArnon1950',
    0.006,
    { B: 0.5, Mn: 0.502, Zn: 0.05, Cu: 0.0204 },
    { 'boric-acid': 2.86, 'manganese-chloride': 1.81, 'zinc-sulfate': 0.22, 'copper-sulfate': 0.08 },
  ],
  [
    'Steiner1984',
    0.002,
    { N: 168.1, P: 30.97, K: 273.7, Ca: 180.4, Mg: 48.61, S: 112.2 },
    {
      ...{ 'calcium-nitrate-tetrahydrate': 1062.7, 'potassium-nitrate': 303.3, 'potassium-sulfate': 261.4 },
      ...{ 'monopotassium-phosphate': 136.1, 'magnesium-sulfate': 492.9 },
    },
  ],
  [
    'Cooper1979',
    0.002,
    { N: 199.8, P: 59.9, K: 301, Ca: 170.2, Mg: 50.6 },
    {
      ...{ 'calcium-nitrate-tetrahydrate': 1003, 'potassium-nitrate': 583 },
      ...{ 'monopotassium-phosphate': 263, 'magnesium-sulfate': 513 },
    },
  ],
  [
    // The last trace is printed to two figures: 0.37 g of molybdate in a cubic metre, 0.20 mg/L.
    'Cooper1979',
    0.026,
    { Fe: 12.0, Mn: 1.98, B: 0.3, Cu: 0.1, Mo: 0.2, Zn: 0.1 },
    {
      ...{ 'iron-EDTA': 79, 'manganese-sulfate': 6.1, 'boric-acid': 1.7 },
      ...{ 'copper-sulfate': 0.39, 'ammonium-molybdate': 0.37, 'zinc-sulfate': 0.44 },
    },
  ],
  [
    'MattsonPeters',
    0.004,
    lettuce,
    {
      ...{
        'calcium-nitrate-double-salt': 184e3 / LITRES_IN_100_GALLONS,
        'ammonium-nitrate': 14.4e3 / LITRES_IN_100_GALLONS,
      },
      ...{
        'potassium-nitrate': 167.3e3 / LITRES_IN_100_GALLONS,
        'monopotassium-phosphate': 51.5e3 / LITRES_IN_100_GALLONS,
      },
      ...{ 'magnesium-sulfate': 92e3 / LITRES_IN_100_GALLONS },
    },
  ],
  [
    'MattsonPeters',
    0.006,
    { Mn: 0.249, B: 0.163, Mo: 0.0241, Zn: 0.13, Cu: 0.0235 },
    {
      ...{ 'manganese-sulfate': 290 / LITRES_IN_100_GALLONS, 'boric-acid': 352 / LITRES_IN_100_GALLONS },
      ...{ 'sodium-molybdate': 23 / LITRES_IN_100_GALLONS, 'zinc-sulfate': 217 / LITRES_IN_100_GALLONS },
      ...{ 'copper-sulfate': 35 / LITRES_IN_100_GALLONS },
    },
  ],
]

/** US fluid ounces in 100 US gallons, as volume per volume. */
const OUNCE_PER_100_GALLONS = 1 / 12800

/** Alkalinity, mg/L as CaCO3, that ounces of acid per 100 US gallons take out. */
function neutralised(given: {
  readonly salt: Salt
  readonly strength: number
  readonly density_kg_m3: number
  readonly ounces: number
}): number {
  const { salt, strength, density_kg_m3, ounces } = given
  const charge = -alkalinity({ amounts: saltAmounts({ salt, purity: strength }) })
  const CaCO3_per_charge = 50.04
  return charge * density_kg_m3 * ounces * OUNCE_PER_100_GALLONS * CaCO3_per_charge
}
/** mg/L of an element that comes with it. */
function brought(given: {
  readonly salt: Salt
  readonly strength: number
  readonly density_kg_m3: number
  readonly ounces: number
  readonly nutrient: Nutrient
}): number {
  const { salt, strength, density_kg_m3, ounces, nutrient } = given
  const amounts = mixed([
    { amounts: saltAmounts({ salt, purity: strength }), times: density_kg_m3 * ounces * OUNCE_PER_100_GALLONS },
  ])
  return nutrientMass({ amounts, nutrient })
}
const sold = (id: AcidAsSold) => {
  const { salt, strength, density_kg_m3 } = acids.rows[id]
  return { salt: salt as Salt, strength, density_kg_m3 }
}
/** mL for 100 US gallons that take 1 mg/L of alkalinity as CaCO3. */
function millilitresPerPpm(acid: { readonly salt: Salt; readonly strength: number; readonly density_kg_m3: number }) {
  return MILLILITRES_IN_OUNCE / neutralised({ ...acid, ounces: 1 })
}
const MILLILITRES_IN_OUNCE = 29.5735
/** Between the handbook's densities for 60 and 67 %. */
const nitric63 = { salt: 'nitric-acid', strength: 0.63, density_kg_m3: 1367 + (3 / 7) * (1400 - 1367) } as const
const oilOfVitriol = { salt: 'sulfuric-acid', strength: 0.93, density_kg_m3: 1835, ounces: 1 } as const
/** Three quarters phosphoric acid by the density that a handbook gives it. */
const syrup = { ...sold('phosphoric-75'), density_kg_m3: 1580, ounces: 1 }
const training = {
  within: 0.01,
  source: 'Supplier.acids',
  why: 'doses to three figures, densities of the note unknown',
} as const

const rows: readonly Published[] = [
  ...optima.flatMap(([shelf, water, doses]) =>
    Object.entries(doses).map(([id, dose]) => value(optimalDose, { shelf, water, id }, dose, agreed)),
  ),
  ...(Object.entries(reachedByFour) as readonly (readonly [Nutrient, number])[]).map(([nutrient, reached]) =>
    value(reachedAtOptimum, { nutrient }, reached, agreed),
  ),
  value(smallestMisfit, { shelf: four, water: {} }, 0.005193261, agreed),
  value(smallestMisfit, { shelf: four, water: hard }, 0.389721166, agreed),
  ...published.flatMap(([source, within, wanted, salts]) =>
    (Object.entries(salts) as readonly (readonly [Salt, number])[]).map(([salt, dose]) =>
      value(recoveredDose, { salts: Object.keys(salts) as Salt[], wanted, salt }, dose, {
        within,
        source,
        why: printed,
      }),
    ),
  ),
  value(neutralised, oilOfVitriol, 136, {
    within: 0.0037,
    source: 'UMass.acids',
    why: 'half of the last printed digit',
  }),
  value(brought, { ...oilOfVitriol, nutrient: 'S' }, 43.6, {
    ...{ within: 0.0012, source: 'UMass.acids', why: 'half of the last printed digit' },
  }),
  value(millilitresPerPpm, nitric63, 0.56, {
    ...{ within: 0.027, source: 'UMass.acids' },
    why: 'two figures of a table that rounds up: one and a half of its last digit',
  }),
  value(neutralised, { ...sold('sulfuric-35'), ounces: 1.42 }, 50, training),
  value(brought, { ...sold('sulfuric-35'), ounces: 1.42, nutrient: 'S' }, 16.1, training),
  value(neutralised, { ...sold('nitric-67'), ounces: 0.87 }, 50, { ...training, within: 0.015 }),
  value(brought, { ...sold('nitric-67'), ounces: 0.87, nutrient: 'N' }, 14.3, training),
  value(brought, { ...sold('phosphoric-75'), ounces: 0.94, nutrient: 'P' }, 27.5, training),
  value(brought, { ...syrup, nutrient: 'P' }, 29.3, {
    ...{ within: 0.0018, source: 'Balance.solution', why: 'half of the last digit, density 1.58' },
  }),
  value(neutralised, syrup, 47, {
    ...{ within: 0.011, source: 'Balance.solution', why: 'half of the last digit, density 1.58' },
  }),
]

export default rows
