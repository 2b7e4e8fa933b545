import type { Plan } from '../../plan/plan.ts'
import { plantThirst, siteMasses } from '../../tables/canopy.ts'
import { stopWater } from '../../tables/water-path.ts'
import { fillTime, longestPause, timeToDry } from './equations-stop.ts'
import { vapourPressure } from './equations-water.ts'
import type { HeldFacts } from './held-facts.ts'
import type { Range } from './range.ts'

/** Time to dry at one age of the crop and one temperature of the air. */
export interface DryTime {
  readonly week: number
  readonly air_C: number
  readonly dry_s: Range
}

export interface StopFacts {
  /** Thirst of a grown plant in a day. */
  readonly grown_m3_d: Range
  readonly thirstFrom: 'crops' | 'table'
  readonly times: readonly DryTime[]
  /** The same by week in the hottest air of the place, with the longest rest of a timer. */
  readonly hottest: readonly (DryTime & { readonly pause_s: Range })[]
  /** Grown plants in the hottest air of the place. */
  readonly worst: DryTime
  /** Longest pause of a timer that keeps its reserve, at the worst. */
  readonly pause_s: Range
  /** Shortest running time: until water has filled the riser and run down the column; null where not known. */
  readonly run_s: Range | null
}

const DAY_s = 86_400
/** Airs for which the time to dry is told by week. */
export const AIRS_C = [20, 25, 30, 35] as const

function grownThirst(plan: Plan): { readonly grown_m3_d: Range; readonly from: 'crops' | 'table' } {
  const stated = (plan.crops ?? []).flatMap((c) =>
    c.thirst_m3_d === undefined || c.thirst_m3_d <= 0 ? [] : [c.thirst_m3_d],
  )
  if (stated.length > 0) return { grown_m3_d: { low: Math.min(...stated), high: Math.max(...stated) }, from: 'crops' }
  const row = plantThirst.rows['leafy-mature']
  return { grown_m3_d: { low: row.low_m3_d, high: row.high_m3_d }, from: 'table' }
}

const weeks = Object.values(siteMasses.rows)
const { plug, rootShare, usable, peakHour, grownAt, reference } = stopWater.rows
const grown = weeks.find((w) => w.week === grownAt.high)!

/** Thirst goes with the leaf, so with the square of its outline, and with the drying power of the air. */
function dryTime(week: (typeof weeks)[number], air_C: number, grown_m3_d: Range): DryTime {
  const leaf = Math.min(1, (week.outline_m / grown.outline_m) ** 2)
  const air = vapourPressure({ temperature_C: air_C }) / vapourPressure({ temperature_C: reference.high })
  const roots_m3 = week.wetRoot_kg / 1000
  const held = (end: 'low' | 'high') => plug[end] + rootShare[end] * roots_m3
  const rate = (m3_d: number, peak: number) => (m3_d * leaf * air * peak) / DAY_s
  return {
    week: week.week,
    air_C,
    dry_s: {
      low: timeToDry({
        held_m3: held('low'),
        usableShare: usable.low,
        thirst_m3_s: rate(grown_m3_d.high, peakHour.high),
      }),
      high: timeToDry({
        held_m3: held('high'),
        usableShare: usable.high,
        thirst_m3_s: rate(grown_m3_d.low, peakHour.low),
      }),
    },
  }
}

export function stopFacts(
  plan: Plan,
  given: {
    readonly warmest_C: number
    readonly keptShare: number
    readonly held: HeldFacts | null
    readonly total_m3_s: Range | null
    readonly fall_s: Range | null
  },
): StopFacts {
  const { grown_m3_d, from } = grownThirst(plan)
  const times = weeks.flatMap((w) => AIRS_C.map((air_C) => dryTime(w, air_C, grown_m3_d)))
  const worst = dryTime(grown, given.warmest_C, grown_m3_d)
  const pause = (dry_s: number) => longestPause({ dry_s, keptShare: given.keptShare })
  const pauses = ({ low, high }: Range): Range => ({ low: pause(low), high: pause(high) })
  const hottest = weeks.map((w) => {
    const time = dryTime(w, given.warmest_C, grown_m3_d)
    return { ...time, pause_s: pauses(time.dry_s) }
  })
  const { held, total_m3_s, fall_s } = given
  const run = (empty_m3: number, flow_m3_s: number, fall: number) => fillTime({ empty_m3, flow_m3_s }) + fall
  const runs = held !== null && total_m3_s !== null && fall_s !== null && total_m3_s.low > 0
  return {
    grown_m3_d,
    thirstFrom: from,
    times,
    worst,
    hottest,
    pause_s: pauses(worst.dry_s),
    run_s: runs
      ? {
          low: run(held.up_m3.low - held.film_m3.low - held.roots_m3.low, total_m3_s.high, fall_s.low),
          high: run(held.up_m3.high - held.film_m3.high - held.roots_m3.high, total_m3_s.low, fall_s.high),
        }
      : null,
  }
}
