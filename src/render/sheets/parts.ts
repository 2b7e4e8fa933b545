import type { Part, PartsFacts, Tool } from '../../disciplines/parts/index.ts'
import { ends, type Quantity } from '../../kernel/units.ts'
import { isKnown } from '../../plan/known.ts'
import { decimals, shownText, telling } from '../display.ts'
import type { Drawing } from '../drawing/primitives.ts'
import { type Column, table } from '../paper/table.ts'
import { paragraph, subheading } from '../paper/words.ts'
import { packsText, packTexts } from '../tables/packs.ts'
import { partSize } from '../tables/parts.ts'
import { choiceName } from '../words/sentences.ts'
import { topLeft, widthOf } from './compose.ts'
import type { Context, Draft, Drafted } from './context.ts'

/** Every column of the list, ready for paper and for CSV. */
export interface PartRow {
  readonly name: string
  readonly size: string
  readonly count: string
  readonly spares: string
  readonly instead: string
  readonly price: string
  readonly remark: string
}

const amount = (c: Context, q: Quantity): string => {
  if (q.unit === 'm' && 'value' in q)
    return c.display.lengths === 'in'
      ? `${decimals(q.value / 0.3048, 1)} ft`
      : `${decimals(q.value, 2, c.display.decimal)} m`
  if (q.unit !== 'count') return shownText(q, telling('stock', c.display))
  const [low, high] = ends(q)
  return low === high ? decimals(low, Number.isInteger(low) ? 0 : 1) : c.shown(q)
}

/** Millimetres without a decimal that says nothing; inches as the shop tells them. */
const sizeOf = (c: Context, key: string, q: Quantity): string =>
  q.unit === 'm' && key !== 'head' && 'value' in q && c.display.lengths === 'mm'
    ? c.length(q.value)
    : partSize(key, q, c.display)

const sizesOf = (c: Context, sizes: Readonly<Record<string, Quantity>>): string =>
  Object.entries(sizes)
    .map(([k, q]) => `${c.words.parts.sizes[k] ?? k} ${sizeOf(c, k, q)}`)
    .join(', ')

export function partRow(c: Context, p: Part): PartRow {
  const name = c.words.parts.names[p.id] ?? p.id
  const label = p.label === null || p.label === name ? '' : ` ${choiceName(p.label, c.words)}`
  const price =
    p.price_money === null
      ? p.pricedWith === null
        ? ''
        : c.say('price-with', { part: c.words.parts.names[p.pricedWith] ?? p.pricedWith })
      : decimals(p.price_money, 2, c.display.decimal)
  return {
    name: `${name}${label.replaceAll(' × ', '\u00a0×\u00a0')}`,
    size: sizesOf(c, p.sizes),
    count: amount(c, p.count),
    spares: p.spares > 0 ? String(p.spares) : '',
    instead: p.substitutes[0]?.label ?? '',
    price,
    remark: c.words.parts.remarks[p.id] ?? '',
  }
}

const toolText = (c: Context, t: Tool): readonly string[] => [
  c.words.parts.tools[t.id] ?? t.id,
  t.label === null ? sizesOf(c, t.sizes) : choiceName(t.label, c.words),
]

/** The rows of the list, and what is said below it. */
function partsTable(c: Context, facts: PartsFacts) {
  const priced = facts.parts.some((p) => p.price_money !== null)
  const columns: readonly Column[] = [
    { heading: c.say('col-part'), align: 'words' },
    { heading: c.say('col-size'), align: 'words' },
    { heading: c.say('col-count'), align: 'figures' },
    { heading: c.say('col-spare'), align: 'figures' },
    { heading: c.say('col-instead'), align: 'words' },
    ...(priced ? [{ heading: c.say('col-price'), align: 'figures' as const }] : []),
  ]
  const rows = facts.parts.map((p) => {
    const r = partRow(c, p)
    return [r.name, r.size, r.count, r.spares, r.instead, ...(priced ? [r.price] : [])]
  })
  const packs = packTexts(c.facts.nutrients, c.words, c.display)
  const packRows = packs.map((r) => [r.name, r.size, r.count, '', '', ...(priced ? [r.price] : [])])
  const packSum = packsText(c.facts.nutrients, c.words, c.display)
  const total = facts.total
  const money = (n: number) => decimals(n, 2, c.display.decimal)
  const sum = c.say('parts-sum', {
    sum: money(total.known_money),
    currency: facts.currency ?? '',
    spares: money(total.spares_money),
    n: String(total.unpriced.length),
  })
  const joints =
    facts.joints === null || facts.joints.area_m2 === 0
      ? ''
      : ` ${c.say('parts-joints', { area: areaText(c, facts.joints.area_m2) })}`
  return { columns, rows: [...rows, ...packRows], closing: `${sum}.${joints}${packSum === '' ? '' : ` ${packSum}`}` }
}

/** Tables one under the other, over as many pages as their rows take. */
function flow(c: Context, facts: PartsFacts): readonly Drawing[] {
  const [x, y] = topLeft(c)
  const width_mm = widthOf(c.room.drawing)
  const { columns, rows, closing } = partsTable(c, facts)
  const pages: Drawing[][] = [[]]
  let low = y
  const bottom = c.room.body.bottom
  const turn = () => {
    pages.push([])
    low = y
  }
  const flowTable = (cols: readonly Column[], all: readonly (readonly string[])[]) => {
    let rest = all
    let tries = 0
    while (rest.length > 0 && tries++ < 60) {
      const t = table({
        at: [x, low],
        columns: cols,
        rows: rest,
        width_mm,
        height_mm: low - bottom,
        size_mm: 3.2,
        boxed: true,
      })
      if (t.rest.length < rest.length) {
        pages.at(-1)!.push(t.drawing)
        low -= t.height_mm
      }
      rest = t.rest
      if (rest.length > 0) turn()
    }
  }
  flowTable(columns, rows)
  if (low - bottom < 16) turn()
  const note = paragraph({ at: [x, low - 3], width_mm, text: closing, size_mm: 3.3, face: 'italic' })
  pages.at(-1)!.push(note.drawing)
  low -= note.height_mm + 9
  if (low - bottom < 40) turn()
  const head = subheading({ at: [x, low], text: c.say('tools-heading'), width_mm })
  pages.at(-1)!.push(head.drawing)
  low -= head.height_mm
  const half = Math.ceil(facts.tools.length / 2)
  const toolColumns: readonly Column[] = [
    { heading: '', align: 'words' },
    { heading: '', align: 'words' },
  ]
  const side = (width_mm - 8) / 2
  const place = (list: readonly (readonly string[])[], left: number, from: number) =>
    table({
      at: [left, from],
      columns: toolColumns,
      rows: list,
      width_mm: side,
      height_mm: from - bottom,
      size_mm: 3.2,
      boxed: true,
    })
  let leftRows: readonly (readonly string[])[] = facts.tools.slice(0, half).map((t) => toolText(c, t))
  let rightRows: readonly (readonly string[])[] = facts.tools.slice(half).map((t) => toolText(c, t))
  let tries = 0
  while ((leftRows.length > 0 || rightRows.length > 0) && tries++ < 20) {
    const a = place(leftRows, x, low)
    const b = place(rightRows, x + side + 8, low)
    pages.at(-1)!.push(a.drawing, b.drawing)
    leftRows = a.rest
    rightRows = b.rest
    if (leftRows.length > 0 || rightRows.length > 0) turn()
  }
  return pages.map((p) => p.flat())
}

/** Glue areas are shown in square centimetres or square inches, since a square metre is a wall. */
const areaText = (c: Context, area_m2: number): string =>
  c.display.lengths === 'in' ? `${decimals(area_m2 / 0.0254 ** 2, 0)} in²` : `${decimals(area_m2 * 1e4, 0)} cm²`

export function partsSheet(c: Context): Drafted {
  const { parts } = c.facts
  if (!isKnown(parts)) return parts
  return {
    pages: flow(c, parts.known).map(
      (drawing, i): Draft => ({
        id: 'parts',
        title: i === 0 ? c.say('parts-title') : c.say('continued', { title: c.say('parts-title') }),
        subtitle: c.say('parts-sub'),
        scale: c.say('no-scale'),
        drawing,
      }),
    ),
  }
}
