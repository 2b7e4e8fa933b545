import type { Component } from '../../tables/components.ts'
import type { Mineral } from '../../tables/equilibria.ts'
import { type Salt, salts } from '../../tables/salts.ts'
import { feedConstants } from '../../tables/solvent.ts'
import { type StockClash, stockClashes } from '../../tables/stock-clashes.ts'
import { type Amounts, mixed } from './composition.ts'
import { atOwnPh } from './equations-ph.ts'
import { hydrateSolubility, saturationIndex } from './equations-saturation.ts'

/** A dose with what decides in which bottle it goes. */
export interface StockDose {
  readonly id: string
  readonly dose_g_m3: number
  readonly amounts_mol_kg: Amounts
  /** Substance whose solubility and place apply; null for a mixed bag, which goes by its ions. */
  readonly salt: Salt | null
  /** Bottle that the grower has fixed. */
  readonly bottle?: BottleId
}

export type BottleId = 'A' | 'B' | 'acid' | `alone ${string}`

export interface Bottle {
  readonly id: BottleId
  /** What to dissolve, kg per m³ of bottle (g/L). */
  readonly contents: readonly { readonly id: string; readonly mass_kg_m3: number }[]
  readonly amounts: Amounts
  /** Highest share of solubility in use at the coldest, salts with a common ion added up. */
  readonly load: number
  /** Salt, or ion in common, that sets the load. */
  readonly loadedBy: string | null
  /** Solids whose two sides meet in this bottle, with their saturation: an estimate, above zero they fall out. */
  readonly solids: readonly { readonly mineral: Mineral; readonly saturation: number }[]
}

/** Where a product goes: calcium apart from sulfate and phosphate, bases and acids apart from all. */
export function bottleOf(dose: StockDose): BottleId {
  if (dose.bottle !== undefined) return dose.bottle
  if (dose.salt !== null) {
    const { bottle } = salts.rows[dose.salt]
    if (bottle === 'alone') return `alone ${dose.id}`
    if (bottle === 'acid') return 'acid'
    return bottle === 'B' ? 'B' : 'A'
  }
  const { Ca = 0, SO4 = 0, H2PO4 = 0 } = dose.amounts_mol_kg
  return Ca > 0 && SO4 === 0 && H2PO4 === 0 ? 'A' : 'B'
}

/**
 * Share of solubility that each salt of a bottle uses, and the sum for salts that share an ion. The sum is on the safe
 * side: a common ion lowers what dissolves, but never by more than the other salt's own share.
 */
function loadOf(contents: readonly (StockDose & { readonly mass_kg_m3: number })[], coldest_C: number) {
  const used = contents.flatMap(({ salt, mass_kg_m3 }) => {
    if (salt === null) return []
    // g per litre of bottle against g per kilogram of water: the bottle holds less than a litre of water
    const soluble_kg_m3 = hydrateSolubility({ salt, temperature_C: coldest_C }) * 1000
    return [{ salt, share: mass_kg_m3 / soluble_kg_m3, ions: salts.rows[salt].ions }]
  })
  const ionsOfSalt = (text: string) => text.split(' + ').map((part) => part.split(' ').at(-1)!)
  const all = new Set(used.flatMap(({ ions }) => ionsOfSalt(ions)))
  const sums = [...all].map((ion) => ({
    by: ion,
    load: used.reduce((sum, { ions, share }) => (ionsOfSalt(ions).includes(ion) ? sum + share : sum), 0),
  }))
  return sums.reduce<{ by: string | null; load: number }>((a, b) => (b.load > a.load ? b : a), { by: null, load: 0 })
}

const pairsThatMeet: readonly (readonly [Mineral, readonly (keyof Amounts)[]])[] = [
  ['gypsum', ['Ca', 'SO4']],
  ['brushite', ['Ca', 'H2PO4']],
  ['struvite', ['Mg', 'NH4', 'H2PO4']],
  ['newberyite', ['Mg', 'H2PO4']],
]

/** Doses of a feed as stock bottles of a strength, checked for the coldest day of the store. */
export function stockBottles(given: {
  readonly doses: readonly StockDose[]
  readonly factor: number
  readonly coldest_C: number
  /** Puts everything in one bottle, to show what would happen. */
  readonly together?: boolean
}): readonly Bottle[] {
  const { factor, coldest_C, together = false } = given
  if (!(factor >= 1)) throw new RangeError(`stockBottles: factor is ${factor}`)
  const used = given.doses.filter(({ dose_g_m3 }) => dose_g_m3 > 0)
  const ids = [...new Set(used.map((dose) => (together ? 'A' : bottleOf(dose))))].sort()
  return ids.map((id) => {
    const contents = used
      .filter((dose) => together || bottleOf(dose) === id)
      .map((dose) => ({ ...dose, mass_kg_m3: (dose.dose_g_m3 * factor) / 1000 }))
    const amounts = mixed(contents.map((dose) => ({ amounts: dose.amounts_mol_kg, times: dose.mass_kg_m3 })))
    const met = pairsThatMeet.filter(([, ions]) => ions.every((ion) => (amounts[ion] ?? 0) > 0))
    const solution = met.length ? atOwnPh({ amounts, temperature_C: coldest_C, carbonDioxide_Pa: null }) : null
    const { by, load } = loadOf(contents, coldest_C)
    return {
      id,
      contents: contents.map((dose) => ({ id: dose.id, mass_kg_m3: dose.mass_kg_m3 })),
      amounts,
      load,
      loadedBy: by,
      solids: solution ? met.map(([mineral]) => ({ mineral, saturation: saturationIndex({ solution, mineral }) })) : [],
    }
  })
}

/** Strongest stock whose bottles all stay below the usable share of solubility on the coldest day. */
export function strongestStock(given: { readonly doses: readonly StockDose[]; readonly coldest_C: number }): number {
  const load = Math.max(0, ...stockBottles({ ...given, factor: 1 }).map((bottle) => bottle.load))
  return load > 0 ? feedConstants.rows.stockShare.value / load : Number.POSITIVE_INFINITY
}

/** Clashes of two products at stock strength, from their ions and the table. */
export function clashes(a: StockDose, b: StockDose): readonly StockClash[] {
  const has = ({ salt, amounts_mol_kg }: StockDose, what: string) =>
    what === 'base'
      ? salt !== null && salts.rows[salt].bottle === 'alone'
      : (amounts_mol_kg[what as Component] ?? 0) > 0
  const meet = (x: StockDose, y: StockDose, { one, other, with: third }: (typeof stockClashes.rows)[StockClash]) =>
    has(x, one) && has(y, other) && (third === null || has(y, third))
  return (Object.keys(stockClashes.rows) as readonly StockClash[]).filter((id) => {
    const row = stockClashes.rows[id]
    return meet(a, b, row) || meet(b, a, row)
  })
}
