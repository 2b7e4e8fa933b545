import type { ColumnFlow, FlowFacts } from '../../disciplines/hydraulics/index.ts'
import { band, quantity } from '../../kernel/units.ts'
import { waterPathPractice } from '../../tables/water-path.ts'
import { bucketFill } from '../bucket.ts'
import { decimals } from '../display.ts'
import { table } from '../paper/table.ts'
import { actions, paragraph } from '../paper/words.ts'
import { choiceName } from '../words/sentences.ts'
import { topLeft, widthOf } from './compose.ts'
import type { Context, Draft } from './context.ts'

const FAIR = waterPathPractice.rows.spread.value

/** A loss by two figures: tables of valves differ by more. */
const loss = (c: Context, losses: number | null): string =>
  losses === null ? '' : decimals(Number(losses.toPrecision(2)), losses < 9.5 ? 1 : 0, c.display.decimal)

function row(c: Context, x: ColumnFlow): readonly string[] {
  const open = (x.valveLosses ?? 0) < 0.05
  return [
    choiceName(x.id, c.words),
    c.shown(band(x.flow_m3_s.low, x.flow_m3_s.high, 'm3_s')),
    open ? c.say('even-open') : loss(c, x.valveLosses),
    open || x.valveClosed === null ? '' : c.shown(quantity(x.valveClosed, 'share')),
    open || x.evenBore_m === null ? '' : `${c.size(x.evenBore_m)} ${c.unit}`,
    '________',
  ]
}

/** Longest way first: the valve that must take most is set first. */
const byValve = (columns: readonly ColumnFlow[]): readonly ColumnFlow[] =>
  [...columns].sort((a, b) => (b.valveLosses ?? 0) - (a.valveLosses ?? 0))

/** How the columns on one pump are evened by their valves, with a bucket and a watch; nothing where they share fairly. */
export function evenPages(c: Context, flow: FlowFacts | null): readonly Draft[] {
  if (flow === null || flow.even_m3_s === null || flow.spread.high <= FAIR) return []
  const even = band(flow.even_m3_s.low, flow.even_m3_s.high, 'm3_s')
  const fills = bucketFill(even, c.plan.pump?.tests?.at(-1)?.volume_m3, c.display)
  if (fills === null) return []
  const [left, top] = topLeft(c)
  const width_mm = widthOf(c.room.body)
  const columns = byValve(flow.columns)
  const first = choiceName(columns[0]!.id, c.words)
  const said = paragraph({ at: [left, top], width_mm, text: c.say('even-how', { even: c.shown(even) }) })
  const acts = actions({
    at: [left, top - said.height_mm - 4],
    width_mm,
    lines: [
      c.say('act-even-open'),
      c.say('act-even-set', { ...fills, first }),
      c.say('act-even-next'),
      c.say('act-even-again', { volume: fills.volume }),
    ],
  })
  const list = table({
    at: [left, top - said.height_mm - acts.height_mm - 10],
    width_mm: widthOf(c.room.drawing),
    height_mm: top - said.height_mm - acts.height_mm - 10 - c.room.drawing.bottom,
    columns: [
      { heading: c.say('even-column'), align: 'words' },
      { heading: c.say('even-now'), align: 'figures' },
      { heading: c.say('even-loss'), align: 'figures' },
      { heading: c.say('even-closed'), align: 'figures' },
      { heading: c.say('even-bore'), align: 'figures' },
      { heading: c.say('even-noted', { volume: fills.volume }), align: 'figures' },
    ],
    rows: columns.map((x) => row(c, x)),
  })
  return [
    {
      id: 'water',
      title: c.say('even-title'),
      subtitle: c.say('even-sub', fills),
      scale: c.say('no-scale'),
      drawing: [...said.drawing, ...acts.drawing, ...list.drawing],
    },
  ]
}
