import type { LayoutFacts, Site } from '../../disciplines/layout/index.ts'
import { isKnown } from '../../plan/known.ts'
import { practiceLengths } from '../../tables/practice.ts'
import { decimals } from '../display.ts'
import type { Drawing, Point } from '../drawing/primitives.ts'
import { type Column, table } from '../paper/table.ts'
import { actions, paragraph } from '../paper/words.ts'
import { topLeft, widthOf } from './compose.ts'
import type { Context, Draft, Drafted } from './context.ts'

/** All sites at one height: what the tape shows there, and what that is off by. */
export interface Level {
  readonly marked_m: number
  readonly error_m: number
  readonly sites: readonly Site[]
}

/** The running marks of a layout by height, from the datum on. */
export function levelsOf(layout: LayoutFacts): readonly Level[] {
  const bySite = new Map(layout.sites.map((s) => [s.number, s]))
  const levels = new Map<number, { marked_m: number; error_m: number; sites: Site[] }>()
  for (const l of layout.lines)
    for (const m of l.marks) {
      const key = Math.round(m.exact_m * 1e6)
      const level = levels.get(key) ?? { marked_m: m.marked_m, error_m: m.error_m, sites: [] }
      level.sites.push(bySite.get(m.site)!)
      levels.set(key, level)
    }
  return [...levels.entries()].sort((a, b) => a[0] - b[0]).map(([, level]) => level)
}

/** Signed, in tenths of a millimetre; nothing where the mark is exact. */
export function offFigure(c: Context, error_m: number): string {
  const text = decimals(error_m * 1000, 1, c.display.decimal)
  return /^0[.,]0$/.test(text) ? '0' : error_m > 0 ? `+${text}` : text
}

const numbers = (list: readonly number[]): string => [...list].sort((a, b) => a - b).join(' ')

function lines(c: Context, layout: LayoutFacts): readonly string[] {
  const end = c.say(layout.datum)
  const tolerance = c.within(practiceLengths.rows['arc-closure'].high_m)
  const round = c.length(layout.circumference_m)
  return [
    c.say('act-tape-pipe', { c: round, unit: c.unit, tolerance }),
    c.say('act-square-end', { end: c.say(layout.datum).replace('the ', '') }),
    c.say('act-strip'),
    c.say('act-closure', { tolerance, c: round }),
    c.say('act-lines'),
    c.say('act-hook', { end: end.replace('the ', '') }),
    c.say('act-number'),
    c.say('act-highest', { left: c.length(layout.aboveLast_m) }),
  ]
}

/** The two tables: heights from the datum, lines round the pipe. */
export function tablesOf(c: Context, layout: LayoutFacts) {
  const from = c.say(layout.datum === 'foot' ? 'from-foot' : 'from-top')
  const heights: readonly Column[] = [
    { heading: from, align: 'figures' },
    { heading: '', align: 'unit' },
    { heading: c.say('col-off'), align: 'figures' },
    { heading: c.say('col-lines'), align: 'words' },
    { heading: c.say('col-sites'), align: 'words' },
  ]
  const rows = levelsOf(layout).map((l) => [
    c.figure(l.marked_m),
    c.unit,
    offFigure(c, l.error_m),
    numbers([...new Set(l.sites.map((s) => s.line))]),
    numbers(l.sites.map((s) => s.number)),
  ])
  const arcs: readonly Column[] = [
    { heading: c.say('col-line'), align: 'figures' },
    { heading: c.say('col-round'), align: 'figures' },
    { heading: '', align: 'unit' },
    { heading: c.say('col-off'), align: 'figures' },
  ]
  const arcRows = layout.lines.map((l) => [
    String(l.number),
    c.figure(l.arc.marked_m),
    c.unit,
    offFigure(c, l.arc.error_m),
  ])
  return { heights, rows, arcs, arcRows }
}

const remark = (c: Context, at: Point, width_mm: number) =>
  paragraph({ at, width_mm, text: c.say('exact-off'), face: 'italic', size_mm: 3.2 })

/** Heights and arcs to mark, one datum for all. */
export function markingSheet(c: Context): Drafted {
  if (!isKnown(c.facts.layout)) return c.facts.layout
  const layout = c.facts.layout.known
  const { drawing: room, body } = c.room
  const { heights, rows, arcs, arcRows } = tablesOf(c, layout)
  const [x, y] = topLeft(c)
  const middle = x + widthOf(body) * 0.54
  const pages: Drawing[] = []
  let left = rows as readonly (readonly string[])[]
  let right = arcRows as readonly (readonly string[])[]
  let words: readonly string[] = lines(c, layout)
  // The tables end above the upright bar on the right; the left one may run down to the foot.
  while ((left.length > 0 || right.length > 0 || words.length > 0) && pages.length < 40) {
    const high = y - body.bottom
    const a =
      left.length === 0
        ? null
        : table({ at: [x, y], columns: heights, rows: left, width_mm: middle - x - 8, height_mm: high, boxed: true })
    const b =
      right.length === 0
        ? null
        : table({
            at: [middle, y],
            columns: arcs,
            rows: right,
            width_mm: room.right - middle,
            height_mm: high,
            boxed: true,
          })
    left = a?.rest ?? []
    right = b?.rest ?? []
    const done = left.length === 0 && right.length === 0
    const under = y - (b?.height_mm ?? 0) - 8
    const text =
      done && under - body.bottom > 30
        ? actions({ at: [middle, under], width_mm: room.right - middle, height_mm: under - body.bottom, lines: words })
        : null
    words = text?.rest ?? words
    const off = remark(c, [x, y - (a?.height_mm ?? 0) - 3], middle - x - 10)
    const explained = done && pages.length === 0 && y - (a?.height_mm ?? 0) - off.height_mm - 3 > body.bottom
    const below = y - (a?.height_mm ?? 0) - 8 - (explained ? off.height_mm : 0)
    const more =
      done && words.length > 0 && below - body.bottom > 30
        ? actions({ at: [x, below], width_mm: middle - x - 8, height_mm: below - body.bottom, lines: words })
        : null
    words = more?.rest ?? words
    pages.push([
      ...(a?.drawing ?? []),
      ...(b?.drawing ?? []),
      ...(explained ? off.drawing : []),
      ...(text?.drawing ?? []),
      ...(more?.drawing ?? []),
    ])
  }
  const subtitle = c.say('marking-sub', { datum: c.say(layout.datum) })
  return {
    pages: pages.map(
      (drawing, i): Draft => ({
        id: 'marking',
        title: i === 0 ? c.say('marking-title') : c.say('continued', { title: c.say('marking-title') }),
        subtitle,
        scale: c.say('no-scale'),
        drawing,
      }),
    ),
  }
}
