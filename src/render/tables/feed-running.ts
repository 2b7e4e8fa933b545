import type { BatchFacts, NutrientsFacts } from '../../disciplines/nutrients/index.ts'
import type { Phrase } from '../../findings/finding.ts'
import { band, type Quantity, quantity } from '../../kernel/units.ts'
import { isKnown } from '../../plan/known.ts'
import { type Display, decimals, shownText } from '../display.ts'
import { fill } from '../words/fill.ts'
import { choiceName } from '../words/sentences.ts'
import type { Words } from '../words/words.ts'

/** How long the solution lasts and what a dumped tank holds. */
export function runningText({ running }: NutrientsFacts, words: Words, display: Display): string {
  if (!isKnown(running)) return ''
  const { dump, buildUp, nitrogen_kg, phosphorus_kg } = running.known
  const by: Phrase = { phrase: `dump-${dump.by}` }
  const shown = (q: Quantity) => shownText(q, display)
  const told = fill(words.tables['feed-running']!, {
    days: shown(band(dump.days.low, dump.days.high, 'd')),
    by: words.phrases[by.phrase] ?? by.phrase,
    nitrogen: shown(quantity(nitrogen_kg, 'kg')),
    phosphorus: shown(quantity(phosphorus_kg, 'kg')),
  })
  const early = buildUp.filter((b) => b.limit_g_m3 > b.watch_g_m3 && b.watchDays.low < dump.days.low)
  const watched = early.map(({ ion, watch_g_m3, watchDays: { low, high } }) =>
    fill(words.tables['feed-running-watch']!, {
      ion: words.phrases[`dump-${ion}`] ?? ion,
      days: shown(band(low, Math.min(high, dump.days.high), 'd')),
      limit: shown(quantity(watch_g_m3, 'g_m3')),
    }),
  )
  return [told, ...watched].join(' ')
}

/** With what to top up to begin with, and for which crops that is only taken over. */
export function refillText({ refill }: BatchFacts, words: Words): string {
  if (refill === null) return ''
  const { strength, measured, assumed } = refill
  const t = words.tables
  const crops = measured.length > 0 ? choiceName(measured.join(', '), words) : t['feed-refill-lettuce']!
  const told = fill(t['feed-refill']!, { strength: decimals(strength * 100, 0), crops })
  return assumed.length === 0
    ? told
    : `${told} ${fill(t['feed-refill-assumed']!, { crops: choiceName(assumed.join(', '), words) })}`
}
