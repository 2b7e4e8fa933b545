import type { BatchDose, BatchFacts, NutrientsFacts } from '../../disciplines/nutrients/index.ts'
import { gains, pureProducts } from '../../disciplines/nutrients/recipe-reasons.ts'
import { bottleOf } from '../../disciplines/nutrients/stocks.ts'
import { band, quantity } from '../../kernel/units.ts'
import { isKnown } from '../../plan/known.ts'
import { type EcScale, ecScales } from '../../tables/ec-scales.ts'
import { type Salt, salts } from '../../tables/salts.ts'
import { feedConstants } from '../../tables/solvent.ts'
import { type Display, decimals, shownText } from '../display.ts'
import { fill } from '../words/fill.ts'
import { choiceName, placeName } from '../words/sentences.ts'
import type { Words } from '../words/words.ts'

/** A dose as the batch sheet prints it. */
export interface DoseText {
  readonly name: string
  readonly mass: string
  readonly volume: string
  readonly perLitre: string
  readonly bottle: string
  readonly price: string
}

const GRAM = 1000
const grams = (kg: number, digits: number, display: Display): string =>
  `${decimals(kg * GRAM, digits, display.decimal)} g`

/** Digits that the step of a scale gives, in grams. */
const digitsOf = (step_kg: number): number => Math.max(0, -Math.floor(Math.log10(step_kg * GRAM) + 1e-9))

export const millilitres = (m3: number, display: Display): string =>
  `${decimals(m3 * 1e6, m3 < 1e-4 ? 1 : 0, display.decimal)} mL`

/** Mass as it is to be weighed: to the scale's step, or by volume where it is poured. */
export const massText = ({ mass_kg, step_kg, product }: BatchDose, display: Display): string =>
  grams(mass_kg, product.step_kg === undefined ? digitsOf(step_kg) : 1, display)

export function doseTexts(batch: BatchFacts, words: Words, display: Display): readonly DoseText[] {
  if (!isKnown(batch.doses)) return []
  return batch.doses.known
    .filter(({ mass_kg }) => mass_kg > 0)
    .map((dose) => {
      const { product, weakStock, volume_m3, price_money } = dose
      const g_L = (batch.found.doses_g_m3[dose.id] ?? 0) / 1000
      const stockDose = { id: dose.id, dose_g_m3: 1, amounts_mol_kg: product.amounts_mol_kg, salt: product.salt }
      return {
        name: choiceName(dose.id, words),
        mass: weakStock === null ? massText(dose, display) : `${millilitres(weakStock.draw_m3, display)} *`,
        volume: volume_m3 === null ? '' : millilitres(volume_m3, display),
        perLitre:
          g_L >= 0.01 ? `${decimals(g_L, 3, display.decimal)} g` : `${decimals(g_L * 1000, 3, display.decimal)} mg`,
        bottle: choiceName(
          bottleOf(product.bottle === null ? stockDose : { ...stockDose, bottle: product.bottle }),
          words,
        ),
        price: price_money === null ? '' : decimals(price_money, 2, display.decimal),
      }
    })
}

/** Weaker stocks for what no scale at hand can weigh. */
export function weakTexts(batch: BatchFacts, words: Words, display: Display): readonly string[] {
  if (!isKnown(batch.doses)) return []
  return batch.doses.known.flatMap(({ id, weakStock }) => {
    if (weakStock === null) return []
    const slots = {
      ...{
        name: choiceName(id, words),
        dissolve: grams(weakStock.dissolve_kg, 2, display),
        draw: millilitres(weakStock.draw_m3, display),
      },
      volume: shownText(quantity(weakStock.volume_m3, 'm3'), display),
      thinned: words.phrases[weakStock.thin_m3 === null ? 'weak-plain' : 'weak-thinned']!,
    }
    return [fill(words.tables['feed-weak']!, slots)]
  })
}

export interface ElementText {
  readonly element: string
  readonly wanted: string
  readonly reached: string
  readonly share: string
}

/** Each target with what the batch reaches. */
export const elementTexts = (batch: BatchFacts, display: Display): readonly ElementText[] =>
  batch.problem.targets.map(({ nutrient, wanted_g_m3 }) => {
    const reached_g_m3 = batch.reached_g_m3[nutrient]
    return {
      element: nutrient,
      wanted: shownText(quantity(wanted_g_m3, 'g_m3'), display),
      reached: shownText(quantity(reached_g_m3, 'g_m3'), display),
      share: `${decimals((100 * reached_g_m3) / wanted_g_m3, 0)} %`,
    }
  })

/** What the pens should show. */
export function penText({ pen }: NutrientsFacts, batch: BatchFacts, words: Words, display: Display): string {
  const { conductivity_S_m: c, pHNow, pHLater, conductivityBy, pHBy } = batch.expected
  const scale = pen.scale === null || pen.scale === 'unmarked' || pen.scale === 'mS/cm' ? null : pen.scale
  const on = (S_m: number, of: EcScale) => Math.round(S_m * ecScales.rows[of].perS_m)
  const reading = scale === null ? '' : `${on(c.low, scale)}–${on(c.high, scale)}`
  const percent = (share: number) => decimals(100 * share, 1, display.decimal)
  const wide = (pH: number) => decimals(pH, 1, display.decimal)
  const said = fill(words.tables['feed-pen']!, {
    conductivity: shownText(band(c.low, c.high, 'S_m'), display),
    scale: scale === null ? '' : fill(words.tables['feed-pen-scale']!, { reading, name: scale }),
    now: shownText(band(pHNow.low, pHNow.high, '1'), display),
    later: shownText(band(pHLater.low, pHLater.high, '1'), display),
  })
  const { model, labels, scale: weighed, pen: read } = conductivityBy
  const by = {
    ...{ model: percent(model), labels: percent(labels), weighed: percent(weighed), pen: percent(read) },
    ...{ phModel: wide(pHBy.model), phAlkalinity: wide(pHBy.alkalinity) },
    phPen:
      pHBy.pen === null
        ? words.tables['feed-pen-unknown']!
        : fill(words.tables['feed-pen-ph']!, { by: wide(pHBy.pen) }),
  }
  return `${said} ${fill(words.tables['feed-pen-by']!, by)}`
}

/** What each acid of the shelf would do alone. */
export const acidTexts = (batch: BatchFacts, words: Words, display: Display): readonly string[] =>
  batch.acids.map(({ product, mass_g_m3, volume_m3_m3, brings_g_m3 }) => {
    const volume = batch.volume_m3 ?? 1
    const amount =
      volume_m3_m3 === null
        ? grams((mass_g_m3 / 1000) * volume, 1, display)
        : millilitres(volume_m3_m3 * volume, display)
    if (product.passing)
      return fill(words.tables['feed-acid-passing']!, { acid: choiceName(product.id, words), amount })
    const brought = (['N', 'P', 'S'] as const).filter((n) => brings_g_m3[n] > 0)
    const brings = brought.map((n) => `${shownText(quantity(brings_g_m3[n], 'g_m3'), display)} ${n}`).join(', ')
    return fill(words.tables['feed-acid']!, {
      acid: choiceName(product.id, words),
      amount,
      brings: brings || words.tables['feed-brings-nothing']!,
    })
  })

/** Water of the batch: shares and alkalinity. */
export function waterText({ blend }: NutrientsFacts, words: Words, display: Display): string {
  if (!isKnown(blend)) return ''
  const parts = blend.known.sources.map(({ share, name }) =>
    fill(words.tables['feed-water-part']!, { share: decimals(share * 100, 0), name }),
  )
  const alkalinity = shownText(quantity(blend.known.alkalinity_eq_m3, 'eq_m3'), display)
  const told = fill(words.tables['feed-water']!, { blend: parts.join(', '), alkalinity })
  const { leastSoft } = blend.known
  if (leastSoft === null) return told
  const { name, ion, limit_g_m3, share, alkalinity_eq_m3 } = leastSoft
  const slots = {
    ...{ name, ion: words.phrases[`dump-${ion}`] ?? ion, share: String(Math.ceil(100 * share - 1e-9)) },
    limit: shownText(quantity(limit_g_m3, 'g_m3'), display),
    alkalinity: shownText(quantity(alkalinity_eq_m3, 'eq_m3'), display),
  }
  return `${told} ${fill(words.tables['feed-least-soft']!, slots)}`
}

/** Mass to the step of the coarsest scale that shows it in twenty steps; in milligrams where none does. */
function weighedText(mass_kg: number, steps_kg: readonly number[], display: Display): string {
  const least = feedConstants.rows.weighable.value
  const fit = steps_kg.filter((step) => mass_kg >= least * step)
  if (fit.length > 0) return grams(mass_kg, digitsOf(Math.max(...fit)), display)
  return mass_kg * GRAM >= 1 ? grams(mass_kg, 2, display) : `${decimals(mass_kg * 1e6, 0)} mg`
}

/** One product in a bottle with its mass. */
export const contentLine = (
  { id, mass_kg_m3 }: { readonly id: string; readonly mass_kg_m3: number },
  bottle_m3: number,
  steps_kg: readonly number[],
  words: Words,
  display: Display,
): string => `${weighedText(mass_kg_m3 * bottle_m3, steps_kg, display)} ${choiceName(id, words)}`

/** Labels of the stock bottles, one a bottle. */
export function stockTexts(
  { stock }: NutrientsFacts,
  volume_m3: number | null,
  words: Words,
  display: Display,
): readonly string[] {
  if (!isKnown(stock)) return []
  const { bottles, factor, perFeed, steps_kg } = stock.known
  const bottle_m3 = volume_m3 ?? 1e-3
  return bottles.map(({ id, contents }) =>
    fill(words.tables['feed-stock']!, {
      ...{ bottle: choiceName(id, words), factor: String(factor), dose: millilitres(perFeed / 1000, display) },
      volume: shownText(quantity(bottle_m3, 'm3'), display),
      contents: contents.map((c) => contentLine(c, bottle_m3, steps_kg, words, display)).join(', '),
    }),
  )
}

/** Cost of the batch and what it leaves out. */
export function costText(batch: BatchFacts, words: Words, display: Display): string {
  if (batch.cost === null) return ''
  const { known_money, unpriced } = batch.cost
  const sum = shownText(quantity(known_money, 'money'), display)
  return fill(words.tables[unpriced.length === 0 ? 'feed-price' : 'feed-price-open']!, {
    sum,
    list: choiceName(unpriced.join(', '), words),
  })
}

/** What the cheapest recipe within the band saves, or why there is none; nothing where the nearest is aimed at. */
export function cheapestText({ cheapest, volume_m3 }: BatchFacts, words: Words, display: Display): string {
  if (cheapest === null) return ''
  const t = words.tables
  if (!isKnown(cheapest))
    return fill(t['feed-cheapest-prices']!, { needs: cheapest.needs.map((n) => placeName(n, words)).join(', ') })
  const { within, feasible, cost_money, nearest_money } = cheapest.known
  const money = (perVolume: number) => shownText(quantity(perVolume * (volume_m3 ?? 1), 'money'), display)
  const slots = { within: decimals(100 * within, 0), cost: money(cost_money), nearest: money(nearest_money) }
  return fill(t[feasible ? 'feed-cheapest' : 'feed-cheapest-none']!, slots)
}

/** What one more salt on the shelf would buy, best first. */
export function gainTexts(batch: BatchFacts, words: Words): readonly string[] {
  const found = gains(
    batch.problem,
    batch.found,
    pureProducts().filter(({ id }) => id !== 'citric-acid'),
  ).slice(0, 5)
  if (found.length === 0) return [words.tables['feed-gain-none']!]
  const told = found.map(({ id, share }) =>
    fill(words.tables['feed-gain']!, {
      name: choiceName(id.replaceAll('-', ' '), words),
      share: decimals(100 * share, 0),
    }),
  )
  const harsh = found.some(({ id }) => ['acid', 'alone'].includes(salts.rows[id as Salt].bottle))
  return harsh ? [...told, words.cautions['acid']!] : told
}
