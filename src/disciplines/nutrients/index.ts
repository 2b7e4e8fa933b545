import type { Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { type BatchFacts, batchFacts } from './batch.ts'
import { type BlendFacts, blendFacts } from './blended.ts'
import { type CropFacts, cropFacts } from './crop-strength.ts'
import { type PenFacts, penFacts, type SanitiserFacts, sanitiserFacts } from './instruments.ts'
import { type PacksFacts, packsFacts } from './packs.ts'
import { type RunningFacts, runningFacts, type TankUse } from './running-facts.ts'
import { type ShelfFacts, shelfFacts } from './shelf.ts'
import { type StockFacts, stockFacts } from './stock-facts.ts'

export type { AcidFacts, BatchDose, BatchFacts } from './batch.ts'
export type { BlendFacts } from './blended.ts'
export type { CropFacts } from './crop-strength.ts'
export type { PenFacts, SanitiserFacts } from './instruments.ts'
export type { PackFacts, PacksFacts } from './packs.ts'
export type { Refill } from './refill.ts'
export type { RunningFacts, TankUse } from './running-facts.ts'
export type { ShelfFacts, ShelfProduct, UnreadEntry } from './shelf.ts'
export type { SourceFacts } from './source-water.ts'
export type { StockFacts } from './stock-facts.ts'

/** The feed of a plan: water, shelf, batch, bottles, and how long the solution lasts. */
export interface NutrientsFacts {
  readonly blend: Known<BlendFacts>
  readonly shelf: ShelfFacts
  readonly batch: Known<BatchFacts>
  readonly stock: Known<StockFacts>
  readonly packs: Known<PacksFacts>
  readonly running: Known<RunningFacts>
  readonly crops: CropFacts
  readonly pen: PenFacts
  readonly sanitiser: SanitiserFacts | null
}

/** Everything that the feed depends on, as one text: two plans that agree in it have the same feed. */
export const feedAsked = (plan: Plan, tank: TankUse): string =>
  JSON.stringify([
    plan.water,
    plan.feed,
    plan.crops,
    plan.place?.airLow_C,
    plan.place?.airHigh_C,
    plan.place?.altitude_m,
    tank,
  ])

export function nutrientsFacts(plan: Plan, tank: TankUse): NutrientsFacts {
  const blend = blendFacts(plan)
  const shelf = shelfFacts(plan)
  const batch = batchFacts(plan, blend, shelf)
  const stock = stockFacts(plan, batch, shelf.products)
  return {
    ...{ blend, shelf, batch, stock },
    packs: packsFacts(plan, { shelf, batch, stock }),
    running: runningFacts(plan, blend, batch, tank),
    crops: cropFacts(plan),
    pen: penFacts(plan),
    sanitiser: sanitiserFacts(plan),
  }
}
