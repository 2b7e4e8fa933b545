import type { BatchFacts, StockFacts } from '../../disciplines/nutrients/index.ts'
import { quantity } from '../../kernel/units.ts'
import { isKnown, orNull } from '../../plan/known.ts'
import { feedConstants } from '../../tables/solvent.ts'
import { decimals } from '../display.ts'
import { type Drawing, type Point, rectangle } from '../drawing/primitives.ts'
import { paragraph } from '../paper/words.ts'
import { contentLine, doseTexts, millilitres } from '../tables/feed.ts'
import { choiceName } from '../words/sentences.ts'
import { topLeft } from './compose.ts'
import type { Context, Draft, Drafted } from './context.ts'
import { room } from './feed-pieces.ts'

const BETWEEN_mm = 4
const INSET_mm = 4
/** A solution for what no scale weighs: so many times what the bottle takes, in a litre. */
const THINNED = 100
const RICH_m3 = 1e-3

/** A label: its name in large letters, lines under it, and what to beware of in a stronger letter. */
interface Label {
  readonly name: string
  readonly lines: readonly string[]
  readonly cautions: readonly string[]
}

/** A product of a bottle; what the finest scale cannot weigh is taken from a solution a hundred times as rich. */
function contentText(
  c: Context,
  content: StockFacts['bottles'][number]['contents'][number],
  bottle_m3: number,
  steps: readonly number[],
): string {
  const least_kg = steps.length === 0 ? 0 : feedConstants.rows.weighable.value * Math.min(...steps)
  const mass_kg = content.mass_kg_m3 * bottle_m3
  if (mass_kg >= least_kg) return contentLine(content, bottle_m3, steps, c.words, c.display)
  const rich = contentLine(
    { ...content, mass_kg_m3: content.mass_kg_m3 * THINNED },
    bottle_m3,
    steps,
    c.words,
    c.display,
  )
  return c.say('label-thin', {
    content: rich,
    whole: c.shown(quantity(RICH_m3, 'm3')),
    part: millilitres(RICH_m3 / THINNED, c.display),
  })
}

function bottles(c: Context, stock: StockFacts): readonly Label[] {
  const bottle_m3 = c.plan.feed?.stock?.volume_m3 ?? 1e-3
  const volume = c.shown(quantity(bottle_m3, 'm3'))
  return stock.bottles.map(({ id, contents }) => {
    const acid = id === 'acid'
    return {
      name: acid ? c.say('label-bottle-acid') : c.say('label-bottle', { id }),
      lines: [
        c.say('label-strong', { factor: decimals(stock.factor, 0), volume }),
        ...contents.map((x) => contentText(c, x, bottle_m3, stock.steps_kg)),
        c.say('label-dose', { dose: millilitres(stock.perFeed / 1000, c.display) }),
        c.say('label-cold', { temperature: c.shown(quantity(stock.coldest_C, 'C')) }),
        c.say('label-made'),
      ],
      cautions: [
        ...(acid ? [c.say('label-acid'), c.words.cautions['acid']!, c.words.cautions['bleach']!] : []),
        ...(acid ? [] : [c.say('label-apart')]),
        c.say('label-children'),
      ],
    }
  })
}

function weakStocks(c: Context, batch: BatchFacts): readonly Label[] {
  const doses = orNull(batch.doses) ?? []
  return doses.flatMap(({ id, weakStock, mass_kg }) => {
    if (weakStock === null || mass_kg === 0) return []
    const slots = {
      dissolve: `${decimals(weakStock.dissolve_kg * 1000, 2, c.display.decimal)} g`,
      volume: c.shown(quantity(weakStock.volume_m3, 'm3')),
      thinned: c.words.phrases[weakStock.thin_m3 === null ? 'weak-plain' : 'weak-thinned']!,
    }
    const dose = {
      draw: millilitres(weakStock.draw_m3, c.display),
      batch: c.shown(quantity(batch.volume_m3 ?? 0, 'm3')),
    }
    return [
      {
        name: c.say('label-weak', { name: choiceName(id, c.words) }),
        lines: [
          c.say('label-weak-make', slots).replace(/[,\s]+$/, ''),
          c.say('label-weak-dose', dose),
          c.say('label-made'),
        ],
        cautions: [c.say('label-children')],
      },
    ]
  })
}

/** Dry portions for one batch, weighed ahead, where no stock bottles are made: what goes into one bucket together. */
function portions(c: Context, batch: BatchFacts): readonly Label[] {
  const doses = doseTexts(batch, c.words, c.display)
  const weak = new Set(
    (orNull(batch.doses) ?? []).flatMap(({ id, weakStock }) => (weakStock === null ? [] : [choiceName(id, c.words)])),
  )
  return ['A', 'B'].flatMap((id) => {
    const own = doses.filter((d) => d.bottle === id && !weak.has(d.name) && d.volume === '')
    if (own.length === 0 || batch.volume_m3 === null) return []
    return [
      {
        name: c.say('label-portion', { id }),
        lines: [
          c.say('label-portion-for', { batch: c.shown(quantity(batch.volume_m3, 'm3')) }),
          ...own.map((d) => `${d.mass} ${d.name}`),
          c.say('label-portion-use'),
          c.say('label-portion-made'),
        ],
        cautions: [c.say('label-portion-apart'), c.say('label-children')],
      },
    ]
  })
}

function tank(c: Context, batch: BatchFacts): Label {
  const { low, high } = batch.predicted.conductivity_S_m
  const conductivity = c.shown(quantity((low + high) / 2, 'S_m'))
  const pH = c.plan.feed?.pH
  return {
    name: c.say('label-tank'),
    lines: [
      ...(batch.volume_m3 === null ? [] : [c.shown(quantity(batch.volume_m3, 'm3'))]),
      pH === undefined
        ? c.say('label-tank-aim-ec', { conductivity })
        : c.say('label-tank-aim', { conductivity, pH: decimals(pH, 1, c.display.decimal) }),
      c.say('label-tank-mixed'),
      c.say('label-tank-change'),
    ],
    cautions: [c.say('label-tank-drink'), c.say('label-children')],
  }
}

/** Words of a label within its edge; returns how far down they reach. */
function words(label: Label, [x, y]: Point, width_mm: number): { readonly drawing: Drawing; readonly gone: number } {
  const out: Drawing[number][] = []
  let gone = 0
  const add = (text: string, face: 'strong' | 'serif' | 'medium', size_mm: number, after: number) => {
    const b = paragraph({ at: [x, y - gone], width_mm, text, face, size_mm })
    out.push(...b.drawing)
    gone += b.height_mm + after
  }
  add(label.name, 'strong', 6, 1.6)
  for (const text of label.lines) add(text, 'serif', 3.4, 0.7)
  gone += 1
  for (const text of label.cautions) add(text, 'medium', 3.3, 0.7)
  return { drawing: out, gone }
}

interface Placed {
  readonly page: number
  readonly left: number
  readonly top: number
  readonly high: number
  readonly label: Label
}

/** Labels in two columns, each where the page is emptier; a new page where neither column has room. */
function packed(c: Context, labels: readonly Label[], width_mm: number): readonly Placed[] {
  const [x, y] = topLeft(c)
  const out: Placed[] = []
  let page = 0
  let free = [y, y]
  for (const label of labels) {
    const high = words(label, [0, 0], width_mm - 2 * INSET_mm).gone + 2 * INSET_mm
    const fits = (top: number) => top - high >= c.room.body.bottom || top === y
    if (!free.some(fits)) [page, free] = [page + 1, [y, y]]
    const column = fits(free[0]!) && (free[0]! >= free[1]! || !fits(free[1]!)) ? 0 : 1
    const top = free[column]!
    out.push({ page, left: x + column * (width_mm + BETWEEN_mm), top, high, label })
    free = free.map((f, i) => (i === column ? f - high - BETWEEN_mm : f))
  }
  return out
}

const drawn = ({ left, top, high, label }: Placed, width_mm: number): Drawing => [
  rectangle({ left, right: left + width_mm, bottom: top - high, top }, 'hidden'),
  ...words(label, [left + INSET_mm, top - INSET_mm], width_mm - 2 * INSET_mm).drawing,
]

/** Labels to cut out: stock bottles, weak stocks, the tank. */
export function labelsSheet(c: Context): Drafted {
  if (c.plan.feed === undefined) return null
  const { batch, stock } = c.facts.nutrients
  if (!isKnown(batch)) return { needs: [...new Set(batch.needs)] }
  const labels = [
    ...(isKnown(stock) ? bottles(c, stock.known) : portions(c, batch.known)),
    ...weakStocks(c, batch.known),
    tank(c, batch.known),
  ]
  const title = c.say('labels-title')
  const width_mm = (room(c) - BETWEEN_mm) / 2
  const placed = packed(c, labels, width_mm)
  const pages = Array.from({ length: placed.at(-1)!.page + 1 }, (_, i) => placed.filter((p) => p.page === i))
  return {
    pages: pages.map(
      (own, i): Draft => ({
        id: 'labels',
        title: i === 0 ? title : c.say('continued', { title }),
        subtitle: c.say('labels-sub', { width: c.length(width_mm / 1000) }),
        scale: c.say('full-size'),
        drawing: own.flatMap((p) => drawn(p, width_mm)),
      }),
    ),
  }
}
