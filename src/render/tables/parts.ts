import type { Part, PartsFacts, Tool } from '../../disciplines/parts/index.ts'
import { type Quantity, quantity } from '../../kernel/units.ts'
import { type Display, decimals, shownText, telling } from '../display.ts'
import { fill } from '../words/fill.ts'
import { choiceName } from '../words/sentences.ts'
import type { Words } from '../words/words.ts'

/** A line of the parts list as people read it. */
export interface PartText {
  readonly id: string
  readonly name: string
  readonly size: string
  readonly count: string
  readonly spares: string
  readonly price: string
  readonly steps: string
  readonly remark: string
}

/** Sizes that say how it is used rather than what to ask for in the shop. */
const INSIDE = ['needed', 'fill', 'columnHole', 'fillerHole']

function sizeText(sizes: Readonly<Record<string, Quantity>>, words: Words, display: Display): string {
  const told = Object.entries(sizes).filter(([key]) => !INSIDE.includes(key))
  return told.map(([key, q]) => `${words.parts.sizes[key] ?? key} ${partSize(key, q, display)}`).join(', ')
}

/** A pipe's own measures, as its standard prints them. */
const PIPE: ReadonlySet<string> = new Set(['outside', 'wall'])

/** A size of a part as its shop tells it. */
export const partSize = (key: string, q: Quantity, display: Display): string =>
  key === 'head' && display.lengths === 'mm' && 'value' in q
    ? `${decimals(q.value, 1, display.decimal)} m`
    : shownText(q, telling(PIPE.has(key) ? 'bought' : 'stock', display))

/** Lengths that are bought by the metre or foot rather than by tape. */
const FOOT_m = 0.3048

function countText(q: Quantity, display: Display): string {
  if (q.unit !== 'm') return shownText(q, telling('stock', display))
  const value = 'value' in q ? q.value : q.high
  return display.lengths === 'in' ? `${decimals(value / FOOT_m, 1)} ft` : `${decimals(value, 2, display.decimal)} m`
}

export function partText(p: Part, words: Words, display: Display): PartText {
  const label = p.label === null ? '' : `${choiceName(p.label, words)}${Object.keys(p.sizes).length > 0 ? ', ' : ''}`
  return {
    id: p.id,
    name: words.parts.names[p.id] ?? p.id,
    size: label + sizeText(p.sizes, words, display),
    count: countText(p.count, display),
    spares: p.spares > 0 ? String(p.spares) : '',
    price: p.price_money === null ? '' : shownText(quantity(p.price_money, 'money'), display),
    steps: p.steps.map((s) => words.steps.titles[s] ?? s).join(', '),
    remark: words.parts.remarks[p.id] ?? '',
  }
}

export const partTexts = (facts: PartsFacts, words: Words, display: Display): readonly PartText[] =>
  facts.parts.map((p) => partText(p, words, display))

/** The sum and what it leaves out, in one sentence. */
export function totalText({ total }: PartsFacts, words: Words, display: Display): string {
  const money = (n: number) => shownText(quantity(n, 'money'), display)
  const slots = {
    sum: money(total.known_money),
    spares: money(total.spares_money),
    count: String(total.unpriced.length),
    list: total.unpriced.map((id) => words.parts.names[id] ?? id).join(', '),
  }
  return fill(words.tables[total.unpriced.length === 0 ? 'total-whole' : 'total']!, slots)
}

/** A tool, its size as marked, and whether the plan says that it is there. */
export function toolText(tool: Tool, words: Words): { readonly name: string; readonly atHand: string } {
  const name = words.parts.tools[tool.id] ?? tool.id
  const answer = tool.atHand === null ? 'not-said' : tool.atHand ? 'yes' : 'no'
  return {
    name: tool.label === null ? name : `${name}, ${choiceName(tool.label, words)}`,
    atHand: words.tables[answer]!,
  }
}
