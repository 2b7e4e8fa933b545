import type { Quantity } from '../../kernel/units.ts'
import { spares } from '../../tables/consumables.ts'

export type PartKind =
  | 'pipe'
  | 'hose'
  | 'fitting'
  | 'tank'
  | 'pump'
  | 'cup'
  | 'fixing'
  | 'electrical'
  | 'lamp'
  | 'consumable'

/** A part that does the same work, by a row of the tables, and how it differs. */
export interface Substitute {
  readonly label: string
  readonly row: string
  /** Outside diameter, or bore of a hose, less the planned one. */
  readonly difference_m: number
}

export interface Part {
  /** Stable key: names and remarks stand under it in the words. */
  readonly id: string
  readonly kind: PartKind
  /** Name as the plan or a table gives it; null where the key says it all. */
  readonly label: string | null
  readonly sizes: Readonly<Record<string, Quantity>>
  /** Pieces, metres, litres: as it is bought. */
  readonly count: Quantity
  /** Advised beyond the count, in the same unit. */
  readonly spares: number
  readonly standard: string | null
  readonly substitutes: readonly Substitute[]
  /** Bought in a shop, or made from what is left over. */
  readonly from: 'shop' | 'made'
  /** Price of one unit of `count` and of all of it; null where the plan states none. */
  readonly unit_money: number | null
  readonly price_money: number | null
  /** Part whose price holds this one. */
  readonly pricedWith: string | null
  /** Field of the plan that would state the price; null where there is none. */
  readonly priceAt: string | null
  /** Steps of the build that use it. */
  readonly steps: readonly string[]
}

/** What a part is beside its id and kind; all else is empty. */
export interface PartTerms {
  readonly count: Quantity
  readonly label?: string | null
  readonly sizes?: Readonly<Record<string, Quantity | null>>
  readonly spares?: keyof typeof spares.rows
  readonly standard?: string | null
  readonly substitutes?: readonly Substitute[]
  readonly made?: boolean
  readonly unit_money?: number | null | undefined
  readonly price_money?: number | null
  readonly pricedWith?: string
  readonly priceAt?: string
}

const amount = (q: Quantity): number => ('value' in q ? q.value : q.high)

function sparesOf(count: number, row: keyof typeof spares.rows | undefined): number {
  if (row === undefined) return 0
  const { share, least_count } = spares.rows[row]
  // A hair of slack keeps a tenth of 120 at 12.
  return Math.max(least_count, Math.ceil(count * share - 1e-9))
}

const stated = (sizes: PartTerms['sizes']): Part['sizes'] =>
  Object.fromEntries(Object.entries(sizes ?? {}).flatMap(([k, q]) => (q === null ? [] : [[k, q] as const])))

/** A part; which steps use it is filled in when the build is known. */
export function part(id: string, kind: PartKind, terms: PartTerms): Part {
  const unit_money = terms.unit_money ?? null
  const count = amount(terms.count)
  return {
    id,
    kind,
    label: terms.label ?? null,
    sizes: stated(terms.sizes),
    count: terms.count,
    spares: sparesOf(count, terms.spares),
    standard: terms.standard ?? null,
    substitutes: terms.substitutes ?? [],
    from: terms.made ? 'made' : 'shop',
    unit_money,
    price_money: terms.price_money !== undefined ? terms.price_money : unit_money === null ? null : unit_money * count,
    pricedWith: terms.pricedWith ?? null,
    priceAt: terms.priceAt ?? null,
    steps: [],
  }
}
