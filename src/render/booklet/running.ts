import { band, type Quantity, quantity } from '../../kernel/units.ts'
import { isKnown, orNull } from '../../plan/known.ts'
import { refillText, runningText } from '../tables/feed-running.ts'
import { atOrigin } from './frame.ts'
import { type Given, heading, text, ticks } from './input.ts'
import type { Block, Chapter } from './model.ts'
import { tankPicture } from './pictures-tank.ts'
import { weekBlocks } from './running-weeks.ts'

const LET_GO_ROWS = 4

type Row = readonly [when: string, what: string]

const blank = (g: Given): string => g.sheet.say('number-blank')
const orBlank = (g: Given, q: Quantity | null): string => (q === null ? blank(g) : g.sheet.shown(q))

/** When, to which line, with what, and how: read with the pump off, so that what hangs in the column has come home. */
function topUp(g: Given): readonly Block[] {
  const facts = orNull(g.facts.reservoir)
  const [fill, low] = [orNull(facts?.tank.fill ?? { needs: [] }), orNull(facts?.tank.low ?? { needs: [] })]
  const level = (line: { readonly level_m: number } | null) => (line === null ? blank(g) : g.sheet.length(line.level_m))
  const usable = facts === null ? null : orNull(facts.usable_m3)
  const days = facts === null ? null : orNull(facts.days)
  const batch = orNull(g.facts.nutrients.batch)
  const strength = batch === null ? '' : refillText(batch, g.words)
  const slots = {
    days: orBlank(g, days),
    usable: orBlank(g, usable === null || usable <= 0 ? null : quantity(usable, 'm3')),
    fill: level(fill),
    low: level(low),
  }
  const drawing = atOrigin(tankPicture(g))
  return [
    text(g.tell('top-up-when', slots)),
    ...(drawing.length === 0
      ? []
      : [{ kind: 'picture' as const, picture: { drawing, alt: g.tell('top-up-picture', slots) } }]),
    {
      kind: 'ticks',
      lines: ticks('top-up', [
        g.tell('top-up-stop'),
        g.tell('top-up-stick', slots),
        g.tell('top-up-pour', slots),
        g.tell('top-up-read'),
        g.tell('top-up-write'),
      ]),
    },
    ...(g.plan.feed === undefined ? [] : [text(strength === '' ? g.tell('top-up-with-blank') : strength)]),
    text(g.tell('top-up-rule'), 'quiet'),
  ]
}

function pumpRow(g: Given): Row {
  const { timerOn_s, timerOff_s } = g.plan.pump ?? {}
  const shown = (s: number) => g.sheet.shown(quantity(s, 's'))
  const runs =
    timerOn_s === undefined || timerOff_s === undefined || timerOff_s <= 0
      ? g.tell('clock-pump-always')
      : g.tell('clock-pump-timer', { on: shown(timerOn_s), off: shown(timerOff_s) })
  return [g.tell('clock-pump'), runs]
}

/** What is done how often, from the plan's own numbers. */
function clock(g: Given): readonly Block[] {
  const facts = orNull(g.facts.reservoir)
  const running = orNull(g.facts.nutrients.running)
  const dry = g.facts.hydraulics.stop.worst.dry_s
  const every = (q: Quantity | null) => g.tell('clock-every', { time: orBlank(g, q) })
  const rows: readonly Row[] = [
    pumpRow(g),
    [g.tell('clock-day'), g.tell('clock-day-what')],
    [every(facts === null ? null : orNull(facts.days)), g.tell('clock-top-up')],
    [g.tell('clock-week'), g.tell('clock-week-what')],
    ...(g.plan.feed === undefined
      ? []
      : [
          [
            every(running === null ? null : band(running.dump.days.low, running.dump.days.high, 'd')),
            g.tell('clock-dump'),
          ] as const,
        ]),
    [g.tell('clock-stop'), g.tell('clock-stop-what', { time: g.sheet.shown(band(dry.low, dry.high, 's')) })],
  ]
  const columns = [g.tell('clock-when'), g.tell('clock-what')].map((h) => ({ heading: h, align: 'words' as const }))
  const said = runningText(g.facts.nutrients, g.words, g.display)
  return [
    heading(g.tell('clock-title')),
    { kind: 'table', id: 'clock', columns, rows, ticked: false },
    ...(said === '' ? [] : [text(said, 'quiet')]),
  ]
}

/** Rows for what was let go, where the sheet of the spent solution has no room for its own. */
function letGo(g: Given, spent: readonly Block[]): readonly Block[] {
  if (spent.length < 2) return []
  const keys = ['date', 'volume', 'n', 'p', 'where'] as const
  const columns = keys.map((key) => g.sheet.say(`disposal-col-${key}`))
  const rows = Array.from({ length: LET_GO_ROWS }, () => columns.map(() => ''))
  return [heading(g.sheet.say('disposal-log')), { kind: 'form', id: 'let-go', columns, rows }]
}

/** How a tower that stands is kept running: topping up, what is due when, where a spent tank goes. */
export function runningChapter(g: Given, spent: readonly Block[]): Chapter | null {
  if (!isKnown(g.facts.reservoir) && g.plan.feed === undefined) return null
  return {
    id: 'running',
    title: g.tell('running-title'),
    blocks: [...topUp(g), ...clock(g), ...weekBlocks(g), ...letGo(g, spent), ...spent.slice(0, 1)],
  }
}
