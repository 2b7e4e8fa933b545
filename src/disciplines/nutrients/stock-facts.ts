import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import type { StockClash } from '../../tables/stock-clashes.ts'
import type { BatchFacts } from './batch.ts'
import type { ShelfProduct } from './shelf.ts'
import { type Bottle, bottleOf, clashes, type StockDose, stockBottles, strongestStock } from './stocks.ts'

/** Two products in one bottle that must not meet. */
export interface Clash {
  readonly bottle: string
  readonly one: string
  readonly other: string
  readonly at: string
  readonly clash: StockClash
}

export interface StockFacts {
  readonly factor: number
  readonly coldest_C: number
  readonly bottles: readonly Bottle[]
  /** Volume of each bottle for a volume of feed. */
  readonly perFeed: number
  /** Strongest stock whose bottles stay clear on the coldest day. */
  readonly strongest: number
  readonly clashes: readonly Clash[]
  /** Steps of the grower's scales, to which contents are told. */
  readonly steps_kg: readonly number[]
}

const stockDoses = ({ found, problem }: BatchFacts, shelf: readonly ShelfProduct[]): readonly StockDose[] =>
  problem.shelf.map(({ id, amounts_mol_kg }) => {
    const product = shelf.find((p) => p.id === id)
    return {
      id,
      amounts_mol_kg,
      dose_g_m3: found.doses_g_m3[id] ?? 0,
      salt: product?.salt ?? null,
      ...(product?.bottle ? { bottle: product.bottle } : {}),
    }
  })

function clashesOf(doses: readonly StockDose[], shelf: readonly ShelfProduct[]): readonly Clash[] {
  return doses.flatMap((one, i) =>
    doses.slice(i + 1).flatMap((other) => {
      // Bottles that rootfall chose are judged by what would fall out of them.
      if (bottleOf(one) !== bottleOf(other) || (one.bottle ?? other.bottle) === undefined) return []
      const at = shelf.find((p) => p.id === other.id)?.at ?? 'feed/shelf'
      return clashes(one, other).map((clash) => ({ bottle: bottleOf(one), one: one.id, other: other.id, at, clash }))
    }),
  )
}

/** The batch as stock bottles, checked for the coldest place where they stand. */
export function stockFacts(plan: Plan, batch: Known<BatchFacts>, shelf: readonly ShelfProduct[]): Known<StockFacts> {
  if (!isKnown(batch)) return batch
  const { strength, storage_C } = plan.feed?.stock ?? {}
  const needs = [
    ...(strength === undefined ? ['feed/stock/strength'] : []),
    ...(storage_C === undefined ? ['feed/stock/storage'] : []),
  ]
  if (strength === undefined || storage_C === undefined) return { needs }
  const doses = stockDoses(batch.known, shelf).filter(({ dose_g_m3 }) => dose_g_m3 > 0)
  const coldest_C = storage_C
  return {
    known: {
      ...{ factor: strength, coldest_C, perFeed: 1 / strength },
      bottles: stockBottles({ doses, factor: strength, coldest_C }),
      strongest: strongestStock({ doses, coldest_C }),
      clashes: clashesOf(doses, shelf),
      steps_kg: [plan.feed?.scale_kg, plan.feed?.fineScale_kg].flatMap((step) => (step === undefined ? [] : [step])),
    },
  }
}
