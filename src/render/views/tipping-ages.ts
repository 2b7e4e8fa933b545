import type { TippingFacts } from '../../disciplines/structure/index.ts'
import { quantity } from '../../kernel/units.ts'
import { type Display, shownText, telling } from '../display.ts'
import { hatch } from '../drawing/hatch.ts'
import { contour, type Drawing, lettering, line, type Point, polyline } from '../drawing/primitives.ts'
import type { StandChartWords } from '../words/en/stand-charts.ts'
import { CHART_FIGURE_mm, chartAxes, chartPoint, type Frame, insideOf } from './chart-axes.ts'
import { type Tag, tags } from './tags.ts'

const WEEK_d = 7

/** Names of the fields between the curves, each where it has room. */
function names(f: Frame, words: StandChartWords, free: readonly Point[], falls: readonly Point[]): readonly Tag[] {
  const right = f.left_mm + f.width_mm
  const at = (points: readonly Point[], share: number): Point => points[Math.round(share * (points.length - 1))]!
  const field = (text: string, from: (share: number) => number, to: (share: number) => number): Tag => ({
    text,
    spots: [0.15, 0.3, 0.5, 0.7, 0.85].map((share) => ({
      at: [(from(share) + to(share)) / 2, at(free, share)[1] - 1] as const,
      anchor: 'middle' as const,
    })),
  })
  const freeAt = (share: number) => at(free, share)[0]
  const fallsAt = (share: number) => at(falls, share)[0]
  return [
    field(words.stands, () => f.left_mm, freeAt),
    field(words.strapped, freeAt, fallsAt),
    field(words.falls, fallsAt, () => right),
  ]
}

/**
 * Gust against the age of the plants, for a column on a foot of its own: its weight grows with them alone, and so does
 * what the wind takes hold of. Null without wind, or where all plants are as good as new.
 */
export function tippingByAge(given: {
  readonly facts: TippingFacts
  readonly words: StandChartWords
  readonly display: Display
  readonly width_mm: number
  readonly height_mm: number
  readonly most_m_s: number
}): Drawing | null {
  const { facts, words, display, width_mm, height_mm, most_m_s } = given
  const cells = [...facts.cells].sort((a, b) => a.week - b.week)
  const oldest_d = facts.oldest * WEEK_d
  if (!(oldest_d > 0) || facts.gust_m_s <= 0) return null
  const f: Frame = { left_mm: 0, bottom_mm: 0, width_mm, height_mm, x: [0, most_m_s], y: [0, oldest_d] }
  const curve = (kind: 'falls_m_s' | 'free_m_s'): Point[] =>
    cells.map((c) => chartPoint(f, Math.min(c[kind], most_m_s), c.week * WEEK_d))
  const [free, falls] = [curve('free_m_s'), curve('falls_m_s')]
  const [foot, top] = [chartPoint(f, facts.gust_m_s, 0), chartPoint(f, facts.gust_m_s, oldest_d)]
  return [
    contour([...falls, chartPoint(f, most_m_s, oldest_d), chartPoint(f, most_m_s, 0)], null, { fill: 'wash' }),
    ...hatch({ rings: [[...free, ...[...falls].reverse()]], pitch_mm: 2.4 }),
    polyline(free, 'cut'),
    polyline(falls, 'cut'),
    line(foot, top, 'hidden'),
    lettering(
      [top[0], top[1] + 1.4],
      `${words.place} ${shownText(quantity(facts.gust_m_s, 'm_s'), telling('wind', display))}`,
      {
        size_mm: CHART_FIGURE_mm,
        anchor: 'middle',
      },
    ),
    ...chartAxes(
      f,
      { unit: 'm_s', shown: display.lengths === 'in' ? 'mph' : 'm/s', name: words.gust },
      { unit: 'd', shown: 'week', name: words.age },
      { x: `${words.gust}, ${display.lengths === 'in' ? 'mph' : 'm/s'}`, y: words.age },
    ),
    ...tags({ names: names(f, words, free, falls), lines: [free, falls], within: insideOf(f) }),
  ]
}
