import { piecewiseLinear } from '../../kernel/interpolate.ts'
import type { Plan } from '../../plan/plan.ts'
import { acids } from '../../tables/acids.ts'
import { elements } from '../../tables/elements.ts'
import { feedPractice } from '../../tables/feed-practice.ts'
import { type Salt, salts } from '../../tables/salts.ts'
import { type ShelfName, shelfNames } from '../../tables/shelf-names.ts'
import { feedConstants } from '../../tables/solvent.ts'
import { type Amounts, nutrientAmount, nutrients } from './composition.ts'
import { type Label, labelAmounts, nitrateFromCharge, saltAmounts } from './equations-salts.ts'
import { solventDensity } from './equations-solvent.ts'
import type { Product } from './recipe.ts'
import type { BottleId } from './stocks.ts'

type Entry = NonNullable<NonNullable<NonNullable<Plan['feed']>['shelf']>[number]>

/** Something on the shelf that could be read. */
export interface ShelfProduct extends Product {
  readonly at: string
  /** Substance by formula; null for a mixed bag. */
  readonly salt: Salt | null
  readonly acid: boolean
  /** Eaten by microbes within days, so that what it does does not last. */
  readonly passing: boolean
  /** Liquids only. */
  readonly density_kg_m3: number | null
  /** How nitrate was told from ammonium: printed, or by the charge of what else is printed. */
  readonly nitrogenBy: 'formula' | 'label' | 'charge'
  readonly bottle: BottleId | null
}

export type ShelfProblem =
  | 'which-acid'
  | 'acid-strength'
  | 'which-calcium-nitrate'
  | 'unknown-name'
  | 'label-line'
  | 'label-sum'
  | 'urea'

/** An entry that cannot be used, and why. */
export interface UnreadEntry {
  readonly at: string
  readonly name: string
  readonly strength: number | null
  readonly problem: ShelfProblem
}

const bare = (name: string): string =>
  name
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim()

const lines: Readonly<Record<string, keyof Label>> = {
  'NO3-N': 'nitrateN',
  'NH4-N': 'ammoniumN',
  ...{ P2O5: 'P2O5', K2O: 'K2O', Ca: 'Ca', CaO: 'CaO', Mg: 'Mg', MgO: 'MgO', S: 'S', SO3: 'SO3', Na: 'Na', Cl: 'Cl' },
  ...{ B: 'B', Mn: 'Mn', Zn: 'Zn', Cu: 'Cu', Mo: 'Mo', Fe: 'Fe' },
}
const known = new Set([...Object.keys(lines), 'N', 'urea-N'])

const ironOf = (name: string): 'FeEDTA' | 'FeDTPA' | 'FeEDDHA' => {
  if (name.includes('eddha')) return 'FeEDDHA'
  return name.includes('dtpa') ? 'FeDTPA' : 'FeEDTA'
}

type Printed = { readonly amounts: Amounts; readonly by: 'label' | 'charge' } | { readonly problem: ShelfProblem }

/** What a bag gives by its label; total nitrogen is split by the charge of the rest where the split is not printed. */
function printed(entry: Entry, name: string): Printed {
  const label = entry.label ?? {}
  if (Object.keys(label).some((key) => !known.has(key))) return { problem: 'label-line' }
  if ((label['urea-N'] ?? 0) > 0) return { problem: 'urea' }
  const entries = Object.entries(label).flatMap(([key, share]) => (key in lines ? [[lines[key]!, share] as const] : []))
  const own = Object.fromEntries(entries) as Label
  const { nitrateN, ammoniumN, ...rest } = own
  const shares =
    Object.values(rest).reduce((sum: number, w) => sum + w, 0) + (label['N'] ?? (nitrateN ?? 0) + (ammoniumN ?? 0))
  if (shares > 1) return { problem: 'label-sum' }
  const terms = { iron: ironOf(name), counterIon: 'SO4' } as const
  const total = label['N']
  if (total === undefined || (nitrateN !== undefined && ammoniumN !== undefined))
    return { amounts: labelAmounts({ label: own, ...terms }), by: 'label' }
  if (nitrateN !== undefined || ammoniumN !== undefined) {
    const [nitrate, ammonium] = [nitrateN ?? total - ammoniumN!, ammoniumN ?? total - nitrateN!]
    if (nitrate < 0 || ammonium < 0) return { problem: 'label-sum' }
    return {
      amounts: labelAmounts({ label: { ...rest, nitrateN: nitrate, ammoniumN: ammonium }, ...terms }),
      by: 'label',
    }
  }
  const others = labelAmounts({ label: rest, iron: terms.iron, counterIon: 'unmeasured' })
  const N = elements.rows.N.molarMass_kg_mol
  const nitrate = nitrateFromCharge({ totalN_mol_kg: total / N, others: { ...others, unmeasured: 0 } }) * N
  const split = { ...rest, nitrateN: nitrate, ammoniumN: Math.max(0, total - nitrate) }
  return { amounts: labelAmounts({ label: split, ...terms }), by: 'charge' }
}

/** Purity that a label tells of a known substance: its line nearest to the formula, as bags round down. */
function purityBy(salt: Salt, amounts: Amounts): number {
  const pure = saltAmounts({ salt, purity: 1 })
  const ratios = nutrients.flatMap((n) => {
    const whole = nutrientAmount(pure, n)
    const part = nutrientAmount(amounts, n)
    return whole > 0 && part > 0 ? [part / whole] : []
  })
  return ratios.length === 0 ? 1 : Math.min(1, Math.max(...ratios))
}

/** Density of an acid of a strength, between the strengths in which it is sold and water; null for other liquids. */
function acidDensity(salt: Salt, strength: number): number | null {
  const rows = Object.values(acids.rows).filter((row) => row.salt === salt)
  if (rows.length === 0) return null
  const sorted = [...rows].sort((a, b) => a.strength - b.strength)
  const water = solventDensity({ temperature_C: feedConstants.rows.roomTemperature.value })
  const line = { x: [0, ...sorted.map((r) => r.strength)], y: [water, ...sorted.map((r) => r.density_kg_m3)] }
  return piecewiseLinear(line)(strength)
}

/** One name, two salts: which of them only the label tells. */
const TWO_SALTS: ReadonlySet<string> = new Set(['calcium nitrate', 'nitrato de calcio'])

function read(entry: Entry, at: string): Omit<ShelfProduct, 'id'> | { readonly problem: ShelfProblem } {
  const name = bare(entry.name ?? '')
  const row = Object.hasOwn(shelfNames.rows, name) ? shelfNames.rows[name as ShelfName] : null
  const labelled = Object.keys(entry.label ?? {}).length > 0
  const price =
    entry.pack_kg !== undefined && entry.price !== undefined ? { price_money_kg: entry.price / entry.pack_kg } : {}
  const fixed = entry.bottle === undefined || entry.bottle === 'none' ? null : entry.bottle
  const shared = { at, ...price, bottle: fixed }
  if (row === null && !labelled) return { problem: /\bacido?\b/.test(name) ? 'which-acid' : 'unknown-name' }
  const label = labelled ? printed(entry, name) : null
  if (label !== null && 'problem' in label) return label
  if (row === null) {
    const dense = entry.density_kg_m3 ?? null
    const bag = { salt: null, acid: false, passing: false, density_kg_m3: dense }
    return { ...shared, ...bag, amounts_mol_kg: label!.amounts, nitrogenBy: label!.by }
  }
  const salt = row.salt as Salt
  if (TWO_SALTS.has(name)) {
    if (label === null) return { problem: 'which-calcium-nitrate' }
    const plain = { acid: false, passing: false, density_kg_m3: entry.density_kg_m3 ?? null }
    return { ...shared, ...plain, salt, amounts_mol_kg: label.amounts, nitrogenBy: label.by }
  }
  const acid = salts.rows[salt].bottle === 'acid'
  if (row.liquid && entry.strength === undefined) return { problem: 'acid-strength' }
  const purity = entry.strength ?? entry.purity ?? (label === null ? 1 : purityBy(salt, label.amounts))
  const density_kg_m3 = entry.density_kg_m3 ?? (entry.strength === undefined ? null : acidDensity(salt, entry.strength))
  const amounts_mol_kg = saltAmounts({ salt, purity })
  const nature = { salt, acid, passing: salt === 'citric-acid', density_kg_m3, nitrogenBy: 'formula' } as const
  return { ...shared, ...nature, amounts_mol_kg }
}

export interface ShelfFacts {
  readonly products: readonly ShelfProduct[]
  readonly unread: readonly UnreadEntry[]
}

const syringe_m3 = feedPractice.rows.syringe.low

/** The shelf as products; entries that cannot be read are told apart and left out. */
export function shelfFacts(plan: Plan): ShelfFacts {
  const products: ShelfProduct[] = []
  const unread: UnreadEntry[] = []
  for (const [i, entry] of (plan.feed?.shelf ?? []).entries()) {
    const at = `feed/shelf/${i}`
    const name = entry.name ?? ''
    const found = read(entry, at)
    if ('problem' in found) unread.push({ at, name, strength: entry.strength ?? null, problem: found.problem })
    else {
      const twice = products.some((p) => p.id === name)
      const poured = found.density_kg_m3 === null ? {} : { step_kg: found.density_kg_m3 * syringe_m3 }
      products.push({ ...found, ...poured, id: twice ? `${name} (${i + 1})` : name })
    }
  }
  return { products, unread }
}
