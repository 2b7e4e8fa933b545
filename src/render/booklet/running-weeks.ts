import { orNull } from '../../plan/known.ts'
import { rootDeeds, rootRows } from '../sheets/water-weeks.ts'
import { stopClock } from '../views/stop-clock.ts'
import { type Given, heading, text, ticks } from './input.ts'
import type { Block } from './model.ts'

const words = (heading: string) => ({ heading, align: 'words' as const })

function roots(g: Given): readonly Block[] {
  const facts = orNull(g.facts.hydraulics.roots)
  if (facts === null) return []
  const rows = rootRows(g.sheet, facts).flatMap(([name, figure]) => (figure === null ? [] : [[name, figure]]))
  return [
    heading(g.sheet.say('figure-roots')),
    { kind: 'table', id: 'roots', columns: [words(''), words('')], rows, ticked: false },
    { kind: 'ticks', lines: ticks('roots', rootDeeds(g.sheet, facts)) },
  ]
}

/** What changes while plants grow: room in the bore, and how long they hold out without water. */
export function weekBlocks(g: Given): readonly Block[] {
  const { columns, rows } = stopClock(g.facts.hydraulics.stop, g.words.waterPath, g.display)
  const clock = columns.map((name) => ({ heading: name, align: 'figures' as const }))
  return [
    ...roots(g),
    heading(g.sheet.say('figure-clock')),
    { kind: 'table', id: 'stop-clock', columns: clock, rows, ticked: false },
    text(g.sheet.say('clock-how'), 'quiet'),
  ]
}
