import type { DayCourse, DayFacts } from '../../disciplines/water/index.ts'
import { isKnown } from '../../plan/known.ts'
import { rootZone } from '../../tables/heat-day.ts'
import { oxygenLevels } from '../../tables/oxygen.ts'
import type { Display } from '../display.ts'
import { circle, contour, type Drawing, lettering, line, type Point, polyline } from '../drawing/primitives.ts'
import type { StandChartWords } from '../words/en/stand-charts.ts'
import { CHART_FIGURE_mm, chartAxes, chartPoint, type Frame } from './chart-axes.ts'

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

function level(f: Frame, at: number, text: string, pen: 'hidden' | 'thin'): Drawing {
  if (at <= f.y[0] || at >= f.y[1]) return []
  const end = chartPoint(f, HOURS, at)
  return [
    line(chartPoint(f, 0, at), end, pen),
    lettering([end[0] + 1.5, end[1] - 1], text, { size_mm: CHART_FIGURE_mm, tone: 'quiet' }),
  ]
}

/** A name at the top of a curve. */
function named(points: readonly Point[], text: string, below: boolean): Drawing {
  const top = points.reduce((a, b) => (b[1] > a[1] ? b : a))
  return [
    lettering([top[0], top[1] + (below ? -4.2 : 1.4)], text, {
      size_mm: CHART_FIGURE_mm,
      anchor: 'middle',
      halo: true,
    }),
  ]
}

function temperatures(f: Frame, full: DayCourse, low: DayCourse, words: StandChartWords, display: Display): Drawing {
  const air = along(f, closed(low.air_C), (HOURS * HOUR_s) / low.air_C.length)
  const [atFull, atLow] = [
    along(f, full.course.temperature_C, full.course.step_s),
    along(f, low.course.temperature_C, low.course.step_s),
  ]
  const clip = (t: number) => Math.min(f.y[1], Math.max(f.y[0], t))
  const band = [
    chartPoint(f, 0, clip(wanted.low_C)),
    chartPoint(f, HOURS, clip(wanted.low_C)),
    chartPoint(f, HOURS, clip(wanted.high_C)),
    chartPoint(f, 0, clip(wanted.high_C)),
  ]
  const shown = display.lengths === 'in' ? '°F' : '°C'
  const wantedAt = chartPoint(f, 0, clip(wanted.high_C))
  return [
    contour(band, null, { fill: 'water' }),
    lettering([wantedAt[0] + 1.5, wantedAt[1] - 4], words.wanted, { size_mm: CHART_FIGURE_mm, tone: 'quiet' }),
    ...level(f, bearable.high_C, words.limit, 'hidden'),
    polyline(air, 'thin'),
    polyline(atFull, 'visible'),
    polyline(atLow, 'cut'),
    ...named(air, words.air, true),
    ...named(atFull, words.full, true),
    ...named(atLow, words.low, false),
    ...chartAxes(f, TICKS, { unit: 'C', shown, name: words.solution }, { x: '', y: `${words.solution}, ${shown}` }),
  ]
}

function oxygens(f: Frame, facts: DayFacts, words: StandChartWords): Drawing {
  const { course, saturation_g_m3 } = facts.hotLow
  const holds = along(f, saturation_g_m3, course.step_s)
  const unhurt = oxygenLevels.rows['lettuce-unhurt'].level_g_m3
  const foot = isKnown(facts.oxygen) ? facts.oxygen.known.foot_g_m3 : null
  const hour = course.highestAt_s / HOUR_s
  const ends = foot === null ? null : ([chartPoint(f, hour, foot.low), chartPoint(f, hour, foot.high)] as const)
  return [
    ...level(f, oxygenLevels.rows.wanted.level_g_m3, words.advised, 'thin'),
    ...level(f, unhurt, words.unhurt, 'hidden'),
    polyline(holds, 'cut'),
    ...named(holds, words.holds, false),
    ...(ends === null
      ? []
      : [
          line(ends[0], ends[1], 'visible'),
          ...ends.map((p) => circle(p, 0.8, 'visible', { fill: 'paper' })),
          lettering([ends[1][0] - 2, (ends[0][1] + ends[1][1]) / 2 - 1], words.foot, {
            size_mm: CHART_FIGURE_mm,
            anchor: 'end',
            halo: true,
          }),
        ]),
    ...chartAxes(
      f,
      TICKS,
      { unit: 'g_m3', shown: 'mg/L', name: words.oxygen },
      { x: words.hour, y: `${words.oxygen}, mg/L` },
    ),
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
