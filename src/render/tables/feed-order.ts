import type { BatchDose, BatchFacts } from '../../disciplines/nutrients/index.ts'
import { bottleOf } from '../../disciplines/nutrients/stocks.ts'
import { band, quantity } from '../../kernel/units.ts'
import { isKnown } from '../../plan/known.ts'
import { type Display, shownText } from '../display.ts'
import { fill } from '../words/fill.ts'
import { choiceName } from '../words/sentences.ts'
import type { Words } from '../words/words.ts'
import { massText, millilitres } from './feed.ts'

/** A line of the mixing order with what to beware of at it. */
export interface OrderLine {
  readonly text: string
  readonly cautions: readonly string[]
}

/** Bases and silicate first, then the acid, calcium, what suits either bottle, phosphate and sulfate. */
function place({ product }: BatchDose): number {
  const stock = { id: product.id, dose_g_m3: 1, amounts_mol_kg: product.amounts_mol_kg, salt: product.salt }
  const bottle = bottleOf(stock)
  if (bottle.startsWith('alone')) return 0
  return bottle === 'acid' ? 1 : bottle === 'A' ? 2 : 3
}

/** The order in which a batch is mixed: water, acid, A, B, fill, wait, read. */
export function orderLines(batch: BatchFacts, words: Words, display: Display): readonly OrderLine[] {
  if (!isKnown(batch.doses) || batch.volume_m3 === null) return []
  const t = words.tables
  const line = (
    key: string,
    slots: Readonly<Record<string, string>> = {},
    cautions: readonly string[] = [],
  ): OrderLine => ({
    text: fill(t[key]!, slots),
    cautions: cautions.map((c) => words.cautions[c] ?? c),
  })
  const doses = batch.doses.known.filter(({ mass_kg }) => mass_kg > 0).sort((a, b) => place(a) - place(b))
  const poured = doses.map((dose): OrderLine => {
    const { id, weakStock, volume_m3, product } = dose
    const name = choiceName(id, words)
    if (weakStock) return line('feed-order-weak', { name, amount: millilitres(weakStock.draw_m3, display) })
    const amount = volume_m3 === null ? massText(dose, display) : millilitres(volume_m3, display)
    return product.acid
      ? line('feed-order-acid', { name, amount }, ['acid', 'bleach'])
      : line('feed-order-salt', { name, amount })
  })
  const { conductivity_S_m: c, pHNow, pHLater } = batch.expected
  const conductivity = shownText(band(c.low, c.high, 'S_m'), display)
  const now = shownText(band(pHNow.low, pHNow.high, '1'), display)
  const later = shownText(band(pHLater.low, pHLater.high, '1'), display)
  return [
    line('feed-order-water', {}, ['separate-cups']),
    ...poured,
    line('feed-order-fill', { volume: shownText(quantity(batch.volume_m3, 'm3'), display) }),
    line('feed-order-read', { conductivity }),
    line('feed-order-ph', { now, later }),
  ]
}
