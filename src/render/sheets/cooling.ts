import { anyPriced, type Cooling, type DayFacts } from '../../disciplines/water/index.ts'
import { inUnit } from '../../kernel/quantity-text.ts'
import { quantity } from '../../kernel/units.ts'
import { decimals, show } from '../display.ts'
import { table } from '../paper/table.ts'
import { topLeft, widthOf } from './compose.ts'
import type { Context, Draft } from './context.ts'

/** Kelvin for one of the money, with the figures that tell two measures apart. */
function perMoney(c: Context, perMoney: number): string {
  const { unit } = show(quantity(1, 'K'), c.display)
  const each = inUnit(perMoney, 'K', unit)
  const digits = each === 0 ? 0 : Math.max(0, 1 - Math.floor(Math.log10(Math.abs(each))))
  return `${decimals(each, digits, c.display.decimal)} ${unit}`
}

/** What a measure brings, what it costs, and what comes of each of the money. */
function row(c: Context, x: Cooling): readonly string[] {
  const { phrases } = c.words
  const price =
    x.price_money === null
      ? c.say('cooling-unpriced')
      : x.price_money === 0
        ? c.say('cooling-free')
        : c.shown(quantity(x.price_money, 'money'))
  const per = x.perMoney === null ? '' : perMoney(c, x.perMoney)
  return [phrases[`cooling-${x.id}`] ?? x.id, c.shown(quantity(x.cooler_K, 'K')), price, per]
}

/** What cools the hot day against what it costs; nothing where no price is stated, or where it is cool enough. */
export function coolingPages(c: Context, d: DayFacts): readonly Draft[] {
  if (!anyPriced(d.cooling) || d.hotLow.warmer_s <= 0) return []
  const list = table({
    at: topLeft(c),
    width_mm: widthOf(c.room.drawing),
    columns: [
      { heading: c.say('cooling-what'), align: 'words' },
      { heading: c.say('num-cooling'), align: 'figures' },
      { heading: c.say('cooling-price'), align: 'figures' },
      { heading: c.say('cooling-per', { currency: c.display.currency }), align: 'figures' },
    ],
    rows: d.cooling.map((x) => row(c, x)),
  })
  return [
    {
      id: 'stand',
      title: c.say('continued', { title: c.say('stand-title') }),
      subtitle: c.say('cooling-sub'),
      scale: c.say('no-scale'),
      drawing: list.drawing,
    },
  ]
}
