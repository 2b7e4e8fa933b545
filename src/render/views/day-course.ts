import type { DayCourse, DayFacts } from '../../disciplines/water/index.ts'
import { isKnown } from '../../plan/known.ts'
import { rootZone } from '../../tables/heat-day.ts'
import { oxygenLevels } from '../../tables/oxygen.ts'
import type { Display } from '../display.ts'
import { letteringRects } from '../drawing/boxes.ts'
import { circle, type Drawing, line, type Point, polyline } from '../drawing/primitives.ts'
import type { StandChartWords } from '../words/en/stand-charts.ts'
import { AXIS_AIR_mm, chartAxes, chartPoint, type Frame, insideOf } from './chart-axes.ts'
import { type Spot, spotsAlong, spotsWithin, type Tag, tags } from './tags.ts'

const HOUR_s = 3600
const HOURS = 24
const TICKS = [0, 3, 6, 9, 12, 15, 18, 21, 24] as const
/** Between the two charts, for figures and names. */
const GAP_mm = 18
const { wanted, bearable } = rootZone.rows

const along = (f: Frame, values: readonly number[], step_s: number): Point[] =>
  values.map((v, i) => chartPoint(f, (i * step_s) / HOUR_s, v))

/** Air repeats itself: the day ends where it began. */
const closed = (air_C: readonly number[]): readonly number[] => [...air_C, air_C[0] ?? 0]

/** A line across the chart at a level that matters; null where the chart does not reach it. */
const across = (f: Frame, at: number): readonly Point[] | null =>
  at <= f.y[0] || at >= f.y[1] ? null : Array.from({ length: 13 }, (_, i) => chartPoint(f, (HOURS * i) / 12, at))

const levelled = (points: readonly Point[] | null, pen: 'hidden' | 'thin' | 'visible'): Drawing =>
  points === null ? [] : [line(points[0]!, points.at(-1)!, pen)]

const named = (f: Frame, points: readonly Point[] | null, text: string, quiet = false): readonly Tag[] => {
  if (points === null) return []
  const middle = points[Math.floor(points.length / 2)]!
  return [{ text, spots: [...spotsAlong(points), ...spotsWithin(insideOf(f), middle)], quiet }]
}

function temperatures(f: Frame, full: DayCourse, low: DayCourse, words: StandChartWords, display: Display): Drawing {
  const air = along(f, closed(low.air_C), (HOURS * HOUR_s) / low.air_C.length)
  const [atFull, atLow] = [
    along(f, full.course.temperature_C, full.course.step_s),
    along(f, low.course.temperature_C, low.course.step_s),
  ]
  const shown = display.lengths === 'in' ? '°F' : '°C'
  const [coolest, warmest, limit] = [wanted.low_C, wanted.high_C, bearable.high_C].map((t) => across(f, t))
  const lines = [air, atFull, atLow, coolest, warmest, limit].filter((l) => l !== null && l !== undefined)
  const names = [
    ...named(f, atLow, words.low),
    ...named(f, atFull, words.full),
    ...named(f, air, words.air),
    ...named(f, limit ?? null, words.limit, true),
    ...named(f, warmest ?? null, words.wantedTo, true),
    ...named(f, coolest ?? null, words.wantedFrom, true),
  ]
  const axes = chartAxes(
    f,
    TICKS,
    { unit: 'C', shown, name: words.solution },
    { x: '', y: `${words.solution}, ${shown}` },
  )
  return [
    ...levelled(coolest ?? null, 'hidden'),
    ...levelled(warmest ?? null, 'hidden'),
    ...levelled(limit ?? null, 'visible'),
    polyline(air, 'thin'),
    polyline(atFull, 'visible'),
    polyline(atLow, 'cut'),
    ...axes,
    ...tags({ names, lines, within: insideOf(f), taken: letteringRects(axes, AXIS_AIR_mm) }),
  ]
}

/** Oxygen at the column's foot at the warmest hour, least to most. */
function footBar(f: Frame, facts: DayFacts): readonly Point[] | null {
  if (!isKnown(facts.oxygen)) return null
  const { foot_g_m3 } = facts.oxygen.known
  // A day without a warmest hour shows it late, where it leaves room for the names.
  const { temperature_C, highestAt_s } = facts.hotLow.course
  const flat = Math.max(...temperature_C) - Math.min(...temperature_C) < 0.1
  const hour = flat ? (HOURS * 5) / 6 : highestAt_s / HOUR_s
  return [chartPoint(f, hour, foot_g_m3.low), chartPoint(f, hour, foot_g_m3.high)]
}

function oxygens(f: Frame, facts: DayFacts, words: StandChartWords): Drawing {
  const { course, saturation_g_m3 } = facts.hotLow
  const holds = along(f, saturation_g_m3, course.step_s)
  const advised = across(f, oxygenLevels.rows.wanted.level_g_m3)
  const unhurt = across(f, oxygenLevels.rows['lettuce-unhurt'].level_g_m3)
  const foot = footBar(f, facts)
  const beside = (share: number): Point => [foot![0]![0], foot![0]![1] + share * (foot![1]![1] - foot![0]![1]) - 1]
  // The longest first: there are few places where it fits.
  const names: Tag[] = [
    ...named(f, unhurt, words.unhurt, true),
    ...(foot === null
      ? []
      : [
          {
            text: words.foot,
            spots: [0.5, 0.75, 0.25, 1, 0].flatMap((share): Spot[] => {
              const [x, y] = beside(share)
              return [
                { at: [x + 2, y], anchor: 'start' },
                { at: [x - 2, y], anchor: 'end' },
              ]
            }),
          },
        ]),
    ...named(f, holds, words.holds),
    ...named(f, advised, words.advised, true),
  ]
  const axes = chartAxes(
    f,
    TICKS,
    { unit: 'g_m3', shown: 'mg/L', name: words.oxygen },
    { x: facts.sunny ? words.hour : words.hourInside, y: `${words.oxygen}, mg/L` },
  )
  return [
    ...levelled(advised, 'hidden'),
    ...levelled(unhurt, 'visible'),
    polyline(holds, 'cut'),
    ...(foot === null
      ? []
      : [line(foot[0]!, foot[1]!, 'cut'), ...foot.map((p) => circle(p, 0.8, 'visible', { fill: 'paper' }))]),
    ...axes,
    ...tags({
      names,
      lines: [holds, advised, unhurt, foot].filter((l) => l !== null),
      within: insideOf(f),
      taken: letteringRects(axes, AXIS_AIR_mm),
    }),
  ]
}

/** The hot day: temperature of air and solution above, oxygen below. */
export function dayCourse(given: {
  readonly facts: DayFacts
  readonly words: StandChartWords
  readonly display: Display
  readonly width_mm: number
  readonly height_mm: number
}): Drawing {
  const { facts, words, display, width_mm, height_mm } = given
  const { hotFull: full, hotLow: low } = facts
  const all = [...full.course.temperature_C, ...low.course.temperature_C, ...low.air_C]
  const lower_mm = (height_mm - GAP_mm) * 0.38
  const common = { left_mm: 0, width_mm, x: [0, HOURS] } as const
  const warm: Frame = {
    ...common,
    bottom_mm: lower_mm + GAP_mm,
    height_mm: height_mm - GAP_mm - lower_mm,
    y: [Math.floor(Math.min(...all) - 1), Math.ceil(Math.max(...all) + 1)],
  }
  const oxygen: Frame = {
    ...common,
    bottom_mm: 0,
    height_mm: lower_mm,
    y: [0, Math.ceil(Math.max(...low.saturation_g_m3)) + 1],
  }
  return [...temperatures(warm, full, low, words, display), ...oxygens(oxygen, facts, words)]
}
