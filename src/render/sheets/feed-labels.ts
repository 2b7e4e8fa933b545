import type { BatchFacts, StockFacts } from '../../disciplines/nutrients/index.ts'
import { quantity } from '../../kernel/units.ts'
import { isKnown, orNull } from '../../plan/known.ts'
import { feedConstants } from '../../tables/solvent.ts'
import { decimals } from '../display.ts'
import { type Drawing, type Point, rectangle } from '../drawing/primitives.ts'
import { paragraph } from '../paper/words.ts'
import { contentLine, millilitres } from '../tables/feed.ts'
import { topLeft } from './compose.ts'
import type { Context, Draft, Drafted } from './context.ts'
import { flowed } from './cuts.ts'
import { type FeedPiece, room } from './feed-pieces.ts'

const BETWEEN_mm = 4
const INSET_mm = 4
const LEAST_mm = 44
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
): string {
  const { scale_kg, fineScale_kg } = c.plan.feed ?? {}
  const steps = [scale_kg, fineScale_kg].filter((s) => s !== undefined)
  const least_kg = steps.length === 0 ? 0 : feedConstants.rows.weighable.value * Math.min(...steps)
  const mass_kg = content.mass_kg_m3 * bottle_m3
  if (mass_kg >= least_kg) return contentLine(content, bottle_m3, c.display)
  const rich = contentLine({ ...content, mass_kg_m3: content.mass_kg_m3 * THINNED }, bottle_m3, c.display)
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
        ...contents.map((x) => contentText(c, x, bottle_m3)),
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
        name: c.say('label-weak', { name: id }),
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

/** Labels two by two, a row as high as the fuller of its two. */
function rows(c: Context, labels: readonly Label[]): readonly FeedPiece[] {
  const width_mm = (room(c) - BETWEEN_mm) / 2
  const inner = width_mm - 2 * INSET_mm
  const pairs = Array.from({ length: Math.ceil(labels.length / 2) }, (_, i) => labels.slice(2 * i, 2 * i + 2))
  return pairs.map((pair) => {
    const high = Math.max(LEAST_mm, ...pair.map((l) => words(l, [0, 0], inner).gone + 2 * INSET_mm))
    return {
      height_mm: high + BETWEEN_mm,
      draw: ([x, y]) =>
        pair.flatMap((label, i): Drawing => {
          const left = x + i * (width_mm + BETWEEN_mm)
          return [
            rectangle({ left, right: left + width_mm, bottom: y - high, top: y }, 'hidden'),
            ...words(label, [left + INSET_mm, y - INSET_mm], inner).drawing,
          ]
        }),
    }
  })
}

/** Labels to cut out: stock bottles, weak stocks, the tank. */
export function labelsSheet(c: Context): Drafted {
  if (c.plan.feed === undefined) return null
  const { batch, stock } = c.facts.nutrients
  if (!isKnown(batch)) return { needs: [...new Set(batch.needs)] }
  const labels = [
    ...(isKnown(stock) ? bottles(c, stock.known) : []),
    ...weakStocks(c, batch.known),
    tank(c, batch.known),
  ]
  const title = c.say('labels-title')
  const [, top] = topLeft(c)
  return {
    pages: (top > 0 ? flowed(c, rows(c, labels)) : []).map(
      (drawing, i): Draft => ({
        id: 'labels',
        title: i === 0 ? title : c.say('continued', { title }),
        subtitle: c.say('labels-sub'),
        scale: c.say('no-scale'),
        drawing,
      }),
    ),
  }
}
