import type { NutrientsFacts } from '../../disciplines/nutrients/index.ts'
import type { Part, PartsFacts } from '../../disciplines/parts/index.ts'
import type { Quantity } from '../../kernel/units.ts'
import { fill } from '../words/fill.ts'
import { choiceName } from '../words/place-names.ts'
import type { Words } from '../words/words.ts'
import { type Cell, csv } from './csv.ts'
import { figure, mm, most } from './figures.ts'
import { boughtPacks } from './packs.ts'

const lengthOf = (p: Part, ...names: readonly string[]): Cell => {
  const q = names.map((n) => p.sizes[n]).find((s) => s?.unit === 'm')
  return q === undefined ? null : mm(most(q))
}

/** Units in which counts are written: pieces, metres, millilitres. */
function countOf(q: Quantity, words: Words): readonly [number, string] {
  if (q.unit === 'm3') return [figure(most(q) * 1e6, 1), 'mL']
  return [figure(most(q), 3), q.unit === 'm' ? 'm' : words.csv.pieces]
}

/** Packs to buy for the feed, as lines under the parts. */
const packRows = (feed: Pick<NutrientsFacts, 'packs'>, words: Words): Cell[][] =>
  boughtPacks(feed).map(({ id, size, count, unit_money, price_money }) => [
    ...['pack', choiceName(id, words), words.parts.kinds['consumable']!, size, count, words.csv.pieces, 0],
    ...[null, null, null, null, '', unit_money, price_money === null ? null : figure(price_money, 2)],
    ...[words.tables['shop'] ?? choiceName('shop', words), '', null],
  ])

/** The parts list: one line a part, sizes in millimetres, prices in the plan's currency; packs for the feed last. */
export function partsCsv(facts: PartsFacts, feed: Pick<NutrientsFacts, 'packs'>, words: Words): string {
  const money = facts.currency ?? words.csv.money
  const header = words.csv.parts.map((heading) => fill(heading, { money }))
  const rows = facts.parts.map((p): Cell[] => [
    p.id,
    words.parts.names[p.id] ?? p.id,
    words.parts.kinds[p.kind] ?? p.kind,
    p.label,
    ...countOf(p.count, words),
    p.spares,
    lengthOf(p, 'outside', 'bore'),
    lengthOf(p, 'wall', 'thickness'),
    lengthOf(p, 'each', 'length'),
    p.standard,
    p.substitutes.map((s) => s.label).join('; '),
    p.unit_money,
    p.price_money === null ? null : figure(p.price_money, 2),
    words.tables[p.from] ?? choiceName(p.from, words),
    p.steps.map((s) => words.steps.titles[s] ?? s).join('; '),
    words.parts.remarks[p.id] ?? null,
  ])
  return csv(header, [...rows, ...packRows(feed, words)], words.decimal)
}
