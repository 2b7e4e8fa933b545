import type { NutrientsFacts, PackFacts } from '../../disciplines/nutrients/index.ts'
import { quantity } from '../../kernel/units.ts'
import { isKnown } from '../../plan/known.ts'
import { type Display, decimals, shownText } from '../display.ts'
import { fill } from '../words/fill.ts'
import { choiceName } from '../words/sentences.ts'
import type { Words } from '../words/words.ts'
import type { Cell } from './csv.ts'
import { figure } from './figures.ts'

/** A pack to buy, as a line of the parts list. */
export interface PackText {
  readonly name: string
  readonly size: string
  readonly count: string
  readonly price: string
}

type Feed = Pick<NutrientsFacts, 'packs'>

const packsOf = ({ packs }: Feed): readonly PackFacts[] => (isKnown(packs) ? packs.known.packs : [])

/** What is short of batch and stock bottles; null for the count where no pack size is stated. */
const toBuy = (feed: Feed) => packsOf(feed).filter(({ short_kg }) => short_kg > 0)

const priceOf = ({ buy, price_money }: PackFacts): number | null =>
  buy === null || price_money === null ? null : buy * price_money

/** Packs to buy with their sizes in kilograms, for a list that is not read by people alone. */
export const boughtPacks = (feed: Feed) =>
  toBuy(feed).map((p) => ({
    id: p.id,
    size: `${figure(p.pack_kg ?? p.short_kg, 4)} kg`,
    count: p.buy ?? 1,
    unit_money: p.price_money,
    price_money: priceOf(p),
  }))

/** Packs to buy for the first batch and the stock bottles, as lines of the parts list. */
export const packTexts = (feed: Feed, words: Words, display: Display): readonly PackText[] =>
  toBuy(feed).map((p) => {
    const price = priceOf(p)
    return {
      name: choiceName(p.id, words),
      size: shownText(quantity(p.pack_kg ?? p.short_kg, 'kg'), display),
      count: String(p.buy ?? 1),
      price: price === null ? '' : decimals(price, 2, display.decimal),
    }
  })

/** What the packs to buy cost, as far as it is known; nothing where none are to be bought. */
export function packsText(feed: Feed, words: Words, display: Display): string {
  const prices = toBuy(feed).flatMap((p) => priceOf(p) ?? [])
  if (prices.length === 0) return ''
  const sum = prices.reduce((a, b) => a + b, 0)
  return fill(words.tables['packs-sum']!, { sum: shownText(quantity(sum, 'money'), display) })
}

/** Which product runs out first, and after how many batches. */
export function lastsText(feed: Feed, words: Words, display: Display): string {
  const used = packsOf(feed).filter(({ dose_kg }) => dose_kg > 0)
  if (used.length === 0) return ''
  const first = used.reduce((a, b) => (b.batches < a.batches ? b : a))
  return fill(words.tables['packs-last']!, {
    name: choiceName(first.id, words),
    held: shownText(quantity(first.onHand_kg, 'kg'), display),
    batches: String(first.batches),
  })
}

const GRAM = 1000
const grams = (kg: number): number => figure(kg * GRAM, 4)

/** Every product with what there is of it and what is taken, for a spreadsheet. */
export const packCells = (feed: Feed, words: Words): readonly (readonly Cell[])[] =>
  packsOf(feed).map((p) => [
    choiceName(p.id, words),
    grams(p.onHand_kg),
    grams(p.dose_kg),
    grams(p.batch_kg),
    grams(p.bottles_kg),
    p.batches,
    grams(p.short_kg),
    p.pack_kg === null ? null : grams(p.pack_kg),
    p.buy,
    priceOf(p),
  ])
