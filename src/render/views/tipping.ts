import type { TippingFacts } from '../../disciplines/structure/index.ts'
import { quantity } from '../../kernel/units.ts'
import { type Display, shownText } from '../display.ts'
import { contour, type Drawing, lettering, line, type Point, polyline } from '../drawing/primitives.ts'
import type { StandChartWords } from '../words/en/stand-charts.ts'
import { fill } from '../words/fill.ts'
import { CHART_FIGURE_mm, chartAxes, chartPoint, type Frame } from './chart-axes.ts'

/** Room that the chart shows beyond the gust of the place, and the least wind it shows. */
const BEYOND = 1.35
const LEAST_m_s = 15

type Kind = 'falls_m_s' | 'free_m_s'

/** A gust at which something happens, by level, for one age of the plants; lowest level first. */
const curve = (f: Frame, facts: TippingFacts, week: number, kind: Kind): Point[] =>
  facts.cells.filter((c) => c.week === week).map((c) => chartPoint(f, Math.min(c[kind], f.x[1]), c.level.volume_m3))

function weekCurves(f: Frame, facts: TippingFacts, words: StandChartWords): Drawing {
  const weeks = [...new Set(facts.cells.map((c) => c.week))].filter((w) => w !== facts.oldest)
  return weeks.flatMap((week, i): Drawing => {
    const points = curve(f, facts, week, 'free_m_s')
    // Each on a height of its own, so that two names never meet.
    const at = points[Math.max(0, points.length - 2 - i)]!
    const text = fill(words.week, { week: String(Number(week.toFixed(1))) })
    return [
      polyline(points, 'thin'),
      lettering([at[0] + 0.8, at[1] - 1], text, { size_mm: CHART_FIGURE_mm, halo: true }),
    ]
  })
}

/** Where the gust of the place meets the line, and the level below which to strap or refill. */
function gustLine(f: Frame, facts: TippingFacts, words: StandChartWords, display: Display): Drawing {
  if (facts.gust_m_s <= 0) return []
  const top = chartPoint(f, facts.gust_m_s, f.y[1])
  const foot = chartPoint(f, facts.gust_m_s, f.y[0])
  const volume_m3 = facts.refill_m3
  const inside = volume_m3 !== null && volume_m3 > f.y[0]
  const text =
    volume_m3 === null
      ? words.strapAlways
      : fill(words.refill, { volume: shownText(quantity(volume_m3, 'm3'), display) })
  const height_m3 = inside ? volume_m3 : f.y[0]
  const at = chartPoint(f, f.x[0], height_m3)
  return [
    line(foot, top, 'hidden'),
    lettering([top[0], top[1] + 5], `${words.place} ${shownText(quantity(facts.gust_m_s, 'm_s'), display)}`, {
      size_mm: CHART_FIGURE_mm,
      anchor: 'middle',
    }),
    ...(inside ? [line(at, chartPoint(f, facts.gust_m_s, height_m3), 'dimension')] : []),
    ...(volume_m3 !== null && !inside
      ? []
      : [lettering([at[0] + 2, at[1] + 1.5], text, { size_mm: CHART_FIGURE_mm, halo: true })]),
  ]
}

/**
 * Gust against water in the tank: where the tower stands free, where it needs a strap, where it falls, for plants of
 * three ages. Null for a column on a foot of its own, whose weight does not change with the water.
 */
export function tippingChart(given: {
  readonly facts: TippingFacts
  readonly words: StandChartWords
  readonly display: Display
  readonly width_mm: number
  readonly height_mm: number
}): Drawing | null {
  const { facts, words, display, width_mm, height_mm } = given
  const volumes = facts.cells.map((c) => c.level.volume_m3)
  const [low, high] = [Math.min(...volumes), Math.max(...volumes)]
  if (!(high > low)) return null
  const most_m_s = Math.max(LEAST_m_s, facts.gust_m_s * BEYOND)
  const f: Frame = { left_mm: 0, bottom_mm: 0, width_mm, height_mm, x: [0, most_m_s], y: [low, high] }
  const free = curve(f, facts, facts.oldest, 'free_m_s')
  const falls = curve(f, facts, facts.oldest, 'falls_m_s')
  const far = (y: number) => chartPoint(f, most_m_s, y)
  const inches = display.lengths === 'in'
  const [middle, last] = [free[Math.floor(free.length / 2)]!, falls[Math.floor(falls.length / 2)]!]
  const speed = inches ? 'ft/s' : 'm/s'
  const volume = inches ? 'US gal' : 'L'
  return [
    contour([...free, ...[...falls].reverse()], null, { fill: 'wash' }),
    contour([...falls, far(high), far(low)], null, { fill: 'water' }),
    polyline(free, 'cut'),
    polyline(falls, 'visible'),
    ...weekCurves(f, facts, words),
    lettering([middle[0] - 1.5, middle[1]], words.free, { size_mm: CHART_FIGURE_mm, anchor: 'end', halo: true }),
    lettering([last[0] + 2, last[1] - 5], words.falls, { size_mm: CHART_FIGURE_mm, halo: true }),
    ...gustLine(f, facts, words, display),
    ...chartAxes(
      f,
      { unit: 'm_s', shown: speed, name: words.gust },
      { unit: 'm3', shown: volume, name: words.tank },
      { x: `${words.gust}, ${speed}`, y: `${words.tank}, ${volume}` },
    ),
  ]
}
