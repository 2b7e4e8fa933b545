import { type Quantity, quantity } from '../../kernel/units.ts'
import { isKnown, orNull } from '../../plan/known.ts'
import { decimals } from '../display.ts'
import { type Given, heading, text } from './input.ts'
import type { Block, Chapter } from './model.ts'

/** Days on one page of the log. */
const DAYS = 14

function aims(g: Given): readonly Block[] {
  const { feed } = g.plan
  const tank = orNull(g.facts.tank)
  const reservoir = orNull(g.facts.reservoir)
  const rows: (readonly [string, string])[] = []
  if (tank !== null && isKnown(tank.fill) && isKnown(tank.low)) {
    const [low, high] = [g.sheet.length(tank.low.known.level_m), g.sheet.length(tank.fill.known.level_m)]
    rows.push([g.tell('aim-level'), g.tell('log-between', { low, high })])
  }
  if (feed?.conductivity_S_m !== undefined)
    rows.push([g.tell('aim-ec'), g.sheet.shown(quantity(feed.conductivity_S_m, 'S_m'))])
  if (feed?.pH !== undefined) rows.push([g.tell('aim-ph'), decimals(feed.pH, 1, g.display.decimal)])
  const days: Quantity | null = reservoir === null ? null : orNull(reservoir.days)
  if (days !== null) rows.push([g.tell('aim-topup'), g.sheet.shown(days)])
  if (rows.length === 0) return []
  const columns = [
    { heading: '', align: 'words' as const },
    { heading: '', align: 'words' as const },
  ]
  return [heading(g.tell('log-aims')), { kind: 'table', id: 'aims', columns, rows, ticked: false }]
}

/** A page to write on, day by day. */
export function logChapter(g: Given): Chapter {
  const inches = g.display.lengths === 'in'
  const columns = [
    g.tell('log-date'),
    g.tell('log-level', { unit: g.sheet.unit }),
    g.tell('log-ec'),
    g.tell('log-ph'),
    g.tell('log-temp', { unit: inches ? '°F' : '°C' }),
    g.tell('log-water', { unit: inches ? 'gal' : 'L' }),
    g.tell('log-feed'),
    g.tell('log-picked'),
    g.tell('log-seen'),
  ]
  const rows = Array.from({ length: DAYS }, () => columns.map(() => ''))
  return {
    id: 'log',
    title: g.tell('log-title'),
    blocks: [text(g.tell('log-how')), ...aims(g), { kind: 'form', id: 'log', columns, rows }],
  }
}
