import type { Part, PartsFacts } from '../../disciplines/parts/index.ts'
import type { Quantity } from '../../kernel/units.ts'
import type { Words } from '../words/words.ts'
import { type Cell, csv } from './csv.ts'
import { figure, mm, most } from './figures.ts'

const lengthOf = (p: Part, ...names: readonly string[]): Cell => {
  const q = names.map((n) => p.sizes[n]).find((s) => s?.unit === 'm')
  return q === undefined ? null : mm(most(q))
}

/** Units in which counts are written: pieces, metres, millilitres. */
function countOf(q: Quantity): readonly [number, string] {
  if (q.unit === 'm3') return [figure(most(q) * 1e6, 1), 'mL']
  return [figure(most(q), 3), q.unit === 'm' ? 'm' : 'pieces']
}

/** The parts list: one line a part, sizes in millimetres, prices in the plan's currency. */
export function partsCsv(facts: PartsFacts, words: Words): string {
  const money = facts.currency ?? 'money'
  const header = [
    'id',
    'part',
    'kind',
    'label',
    'count',
    'unit',
    'spares',
    'outside or bore (mm)',
    'wall (mm)',
    'length each (mm)',
    'standard',
    'substitutes',
    `price of one (${money})`,
    `price (${money})`,
    'from',
    'steps',
    'remark',
  ]
  const rows = facts.parts.map((p): Cell[] => [
    p.id,
    words.parts.names[p.id] ?? p.id,
    words.parts.kinds[p.kind] ?? p.kind,
    p.label,
    ...countOf(p.count),
    p.spares,
    lengthOf(p, 'outside', 'bore'),
    lengthOf(p, 'wall', 'thickness'),
    lengthOf(p, 'each', 'length'),
    p.standard,
    p.substitutes.map((s) => s.label).join('; '),
    p.unit_money,
    p.price_money === null ? null : figure(p.price_money, 2),
    p.from,
    p.steps.map((s) => words.steps.titles[s] ?? s).join('; '),
    words.parts.remarks[p.id] ?? null,
  ])
  return csv(header, rows)
}
