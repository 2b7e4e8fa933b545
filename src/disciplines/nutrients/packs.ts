import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import type { BatchFacts } from './batch.ts'
import type { ShelfFacts } from './shelf.ts'
import type { StockFacts } from './stock-facts.ts'

/** What there is of one product, held against what batch and bottles take of it. */
export interface PackFacts {
  readonly id: string
  /** Its entry on the shelf. */
  readonly at: string
  readonly pack_kg: number | null
  readonly onHand_kg: number
  /** What one batch uses up. */
  readonly dose_kg: number
  /** To begin with: one batch, with the whole of a weaker stock where it is dosed from one. */
  readonly batch_kg: number
  /** To fill the stock bottles once; 0 where the plan has none. */
  readonly bottles_kg: number
  /** Whole batches that it lasts for, bottles aside. */
  readonly batches: number
  readonly short_kg: number
  /** Packs that make good for what is short; null where no pack is stated. */
  readonly buy: number | null
  readonly price_money: number | null
}

export interface PacksFacts {
  readonly packs: readonly PackFacts[]
  /** Products of the batch of which the plan does not say how much there is. */
  readonly untold: readonly { readonly id: string; readonly at: string }[]
}

/** A hair less than a whole pack is one: shares of grams carry the rounding of floating point. */
const HAIR = 1e-9

function bottleMasses(plan: Plan, stock: Known<StockFacts>): ReadonlyMap<string, number> {
  const volume_m3 = plan.feed?.stock?.volume_m3
  if (!isKnown(stock) || volume_m3 === undefined) return new Map()
  const all = stock.known.bottles.flatMap(({ contents }) => contents)
  return new Map(all.map(({ id, mass_kg_m3 }) => [id, mass_kg_m3 * volume_m3]))
}

/** The packs on the shelf against what one batch and one filling of the bottles take. */
export function packsFacts(
  plan: Plan,
  { shelf, batch, stock }: { shelf: ShelfFacts; batch: Known<BatchFacts>; stock: Known<StockFacts> },
): Known<PacksFacts> {
  if (!isKnown(batch)) return batch
  const { doses } = batch.known
  if (!isKnown(doses)) return doses
  const bottled = bottleMasses(plan, stock)
  const packs: PackFacts[] = []
  const untold: { id: string; at: string }[] = []
  for (const { id, mass_kg, weakStock } of doses.known) {
    const at = shelf.products.find((p) => p.id === id)?.at
    const bottles_kg = bottled.get(id) ?? 0
    if (at === undefined || (mass_kg <= 0 && bottles_kg <= 0)) continue
    const entry = plan.feed?.shelf?.[Number(at.split('/').at(-1))]
    const pack_kg = entry?.pack_kg ?? null
    const onHand_kg = entry?.onHand_kg ?? pack_kg
    if (onHand_kg === null) {
      untold.push({ id, at })
      continue
    }
    const batch_kg = weakStock?.dissolve_kg ?? mass_kg
    const short_kg = Math.max(0, batch_kg + bottles_kg - onHand_kg)
    const buy = pack_kg === null ? null : Math.ceil(short_kg / pack_kg - HAIR)
    const batches = mass_kg > 0 ? Math.floor(onHand_kg / mass_kg + HAIR) : 0
    const price_money = entry?.price ?? null
    packs.push({
      id,
      at,
      pack_kg,
      onHand_kg,
      dose_kg: mass_kg,
      batch_kg,
      bottles_kg,
      batches,
      short_kg,
      buy,
      price_money,
    })
  }
  return { known: { packs, untold } }
}
