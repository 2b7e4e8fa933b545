import { AIRS_C, type DryTime, type StopFacts } from '../../disciplines/hydraulics/index.ts'
import { quantity } from '../../kernel/units.ts'
import { type Display, decimals, shownText } from '../display.ts'
import type { Drawing, Point } from '../drawing/primitives.ts'
import { table } from '../paper/table.ts'
import type { WaterPathWords } from '../words/en/water-path.ts'

const HOUR_s = 3600
const MINUTE_s = 60
/** From here on an hour has no decimal. */
const WHOLE_h = 10

interface Range {
  readonly low: number
  readonly high: number
}

/** What of the stop is told week by week: a heading, and a row for each age of the plants. */
export interface Clock {
  readonly columns: readonly string[]
  readonly rows: readonly (readonly string[])[]
}

/** Hours from stop to dry by age and air, and the longest rest of a timer in the hottest air of the place. */
export function stopClock(facts: StopFacts, words: WaterPathWords, display: Display): Clock {
  const air = (t_C: number): string => shownText(quantity(t_C, 'C'), display).replace(/[.,]0(?= )/, '')
  const hours = (r: Range): string => {
    const digits = r.high >= WHOLE_h * HOUR_s ? 0 : 1
    const short = r.low < HOUR_s ? 1 : digits
    return `${decimals(r.low / HOUR_s, short, display.decimal)}–${decimals(r.high / HOUR_s, digits, display.decimal)}`
  }
  const minutes = (time_s: number): string => decimals(time_s / MINUTE_s, 0, display.decimal)
  const at = (week: number, air_C: number): DryTime | undefined =>
    facts.times.find((t) => t.week === week && t.air_C === air_C)
  return {
    columns: [words.clockWeek, ...AIRS_C.map(air), words.clockRest],
    rows: facts.hottest.map((h) => [
      String(h.week),
      ...AIRS_C.map((air_C) => {
        const time = at(h.week, air_C)
        return time === undefined ? '' : hours(time.dry_s)
      }),
      minutes(h.pause_s.low),
    ]),
  }
}

/** The clock as a drawing of rows. */
export function stopClockTable(given: {
  readonly facts: StopFacts
  readonly words: WaterPathWords
  readonly display: Display
  readonly at: Point
  readonly width_mm: number
}): { readonly drawing: Drawing; readonly height_mm: number } {
  const { columns, rows } = stopClock(given.facts, given.words, given.display)
  return table({
    at: given.at,
    columns: columns.map((heading) => ({ heading, align: 'figures' as const })),
    rows,
    width_mm: given.width_mm,
    size_mm: 3.3,
  })
}
