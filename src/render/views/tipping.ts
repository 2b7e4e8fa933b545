import type { TippingFacts } from '../../disciplines/structure/index.ts'
import { quantity } from '../../kernel/units.ts'
import { type Display, shownText, telling } from '../display.ts'
import { hatch } from '../drawing/hatch.ts'
import { circle, contour, type Drawing, lettering, line, type Point, polyline } from '../drawing/primitives.ts'
import type { StandChartWords } from '../words/en/stand-charts.ts'
import { fill } from '../words/fill.ts'
import { CHART_FIGURE_mm, chartAxes, chartPoint, type Frame, insideOf } from './chart-axes.ts'
import { spotsRound, spotsWithin, type Tag, tags } from './tags.ts'
import { tippingByAge } from './tipping-ages.ts'

/** Room that the chart shows beyond the gust of the place, and the least wind it shows. */
const BEYOND = 1.35
const LEAST_m_s = 15

type Kind = 'falls_m_s' | 'free_m_s'

/** A gust at which something happens, by level, for one age of the plants; lowest level first. */
const curve = (f: Frame, facts: TippingFacts, week: number, kind: Kind): Point[] =>
  facts.cells.filter((c) => c.week === week).map((c) => chartPoint(f, Math.min(c[kind], f.x[1]), c.level.volume_m3))

/** What is told of the ages: a column of names, each with a leader that ends in a dot on its own curve. */
const AGES = { from: 0.1, apart_mm: 4.4, wide_mm: 30, off_mm: 4, dot_mm: 0.55 }

interface Aged {
  readonly week: number
  readonly points: readonly Point[]
}

/** Where a curve passes a height of the sheet. */
function crossing(points: readonly Point[], y: number): number {
  const i = Math.max(
    1,
    points.findIndex((p) => p[1] >= y),
  )
  const [a, b] = [points[i - 1]!, points[i] ?? points.at(-1)!]
  return b[1] === a[1] ? a[0] : a[0] + ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1])
}

/** Names of the ages beside the band, youngest on top, left of it where there is room. */
function ages(f: Frame, curves: readonly Aged[], falls: readonly Point[], told: (week: number) => string): Drawing {
  const level = (i: number) => f.bottom_mm + AGES.from * f.height_mm + (curves.length - 1 - i) * AGES.apart_mm
  const leftmost = Math.min(
    ...curves.flatMap((c, i) => curves.map((_, k) => crossing(c.points, level((i + k) % curves.length)))),
  )
  const onLeft = leftmost - f.left_mm > AGES.wide_mm + AGES.off_mm
  const rightmost = Math.max(...falls.map((p) => p[0]))
  return curves.flatMap((c, i): Drawing => {
    const y = level(i)
    const x = crossing(c.points, y)
    const edge = onLeft ? leftmost - AGES.off_mm : rightmost + AGES.off_mm
    return [
      line([edge + (onLeft ? 1 : -1), y], [x, y], 'dimension'),
      circle([x, y], AGES.dot_mm, 'dimension', { fill: 'solid' }),
      lettering([edge, y - 1], told(c.week), {
        size_mm: CHART_FIGURE_mm,
        anchor: onLeft ? 'end' : 'start',
        halo: true,
      }),
    ]
  })
}

const shownWeek = (week: number, decimal: '.' | ','): string => String(Number(week.toFixed(1))).replace('.', decimal)

/** Level below which to strap or refill in the gust of the place, and where the gust meets it. */
function refillLine(f: Frame, facts: TippingFacts): readonly Point[] {
  const volume_m3 = facts.refill_m3
  if (facts.gust_m_s <= 0 || volume_m3 === null || volume_m3 <= f.y[0]) return []
  return [chartPoint(f, f.x[0], volume_m3), chartPoint(f, facts.gust_m_s, volume_m3)]
}

interface Drawn {
  readonly f: Frame
  readonly facts: TippingFacts
  readonly words: StandChartWords
  readonly display: Display
  readonly free: readonly Point[]
  readonly falls: readonly Point[]
  readonly younger: readonly { readonly week: number; readonly points: readonly Point[] }[]
  readonly refill: readonly Point[]
}

/** Names of fields and curves, each where it crosses the fewest lines. */
function names({ f, facts, words, display, free, falls, younger, refill }: Drawn): Drawing {
  const middle = (a: readonly Point[], share: number) => a[Math.round(share * (a.length - 1))]!
  const field = (text: string, at: (share: number) => Point): Tag => ({
    text,
    spots: [0.85, 0.7, 0.55].map((share) => ({ at: at(share), anchor: 'middle' as const })),
  })
  const half = (a: Point, b: Point): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2 - 1]
  const gust = chartPoint(f, facts.gust_m_s, f.y[1])
  const edge = (share: number): Point => [f.left_mm, middle(free, share)[1]]
  const far = (share: number): Point => [f.left_mm + f.width_mm, middle(falls, share)[1]]
  const strapAlways = facts.gust_m_s > 0 && facts.refill_m3 === null
  const always = half(gust, chartPoint(f, facts.gust_m_s, f.y[0]))
  const list: Tag[] = [
    ...(refill.length === 0
      ? []
      : [
          {
            text: fill(words.refill, { volume: shownText(quantity(facts.refill_m3!, 'm3'), display) }),
            spots: [
              { at: [f.left_mm + 2, refill[0]![1] + 1.4] as const, anchor: 'start' as const },
              { at: [f.left_mm + 2, refill[0]![1] - 3.6] as const, anchor: 'start' as const },
            ],
          },
        ]),
    field(words.stands, (share) => half(edge(share), middle(free, share))),
    field(words.falls, (share) => half(middle(falls, share), far(share))),
    field(words.strapped, (share) => half(middle(free, share), middle(falls, share))),
    ...(strapAlways
      ? [{ text: words.strapAlways, spots: [...spotsRound(always), ...spotsWithin(insideOf(f), always)] }]
      : []),
  ]
  const lines = [free, falls, ...younger.map((y) => y.points), refill]
  return tags({ names: list, lines, within: insideOf(f) })
}

/** Whether the weight stays as the water goes: a column on a foot of its own. */
export const isWeighedByAge = ({ cells }: TippingFacts): boolean =>
  new Set(cells.map((c) => c.level.volume_m3)).size < 2

/**
 * Gust against water in the tank: where the tower stands free, where it needs a strap, where it falls, for plants of
 * three ages; against the age of the plants where the water changes nothing. Null without wind.
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
  // Where no wind comes, a chart of gusts would tell of a danger that is none.
  if (facts.gust_m_s <= 0) return null
  const most_m_s = Math.max(LEAST_m_s, facts.gust_m_s * BEYOND)
  if (isWeighedByAge(facts)) return tippingByAge({ ...given, most_m_s })
  const f: Frame = { left_mm: 0, bottom_mm: 0, width_mm, height_mm, x: [0, most_m_s], y: [low, high] }
  const free = curve(f, facts, facts.oldest, 'free_m_s')
  const falls = curve(f, facts, facts.oldest, 'falls_m_s')
  const younger = [...new Set(facts.cells.map((c) => c.week))]
    .filter((w) => w !== facts.oldest)
    .map((week) => ({ week, points: curve(f, facts, week, 'free_m_s') }))
  const refill = refillLine(f, facts)
  const far = (y: number) => chartPoint(f, most_m_s, y)
  const [speed, volume] = display.lengths === 'in' ? (['mph', 'US gal'] as const) : (['m/s', 'L'] as const)
  const gust = facts.gust_m_s > 0 ? [f.y[0], f.y[1]].map((y) => chartPoint(f, facts.gust_m_s, y)) : []
  return [
    contour([...falls, far(high), far(low)], null, { fill: 'wash' }),
    ...hatch({ rings: [[...free, ...[...falls].reverse()]], pitch_mm: 2.4 }),
    polyline(free, 'cut'),
    polyline(falls, 'cut'),
    ...younger.map((y) => polyline(y.points, 'visible')),
    ...(gust.length === 0
      ? []
      : [
          line(gust[0]!, gust[1]!, 'hidden'),
          lettering(
            [gust[1]![0], gust[1]![1] + 1.4],
            `${words.place} ${shownText(quantity(facts.gust_m_s, 'm_s'), telling('wind', display))}`,
            {
              size_mm: CHART_FIGURE_mm,
              anchor: 'middle',
            },
          ),
        ]),
    ...(refill.length === 0 ? [] : [line(refill[0]!, refill[1]!, 'visible')]),
    ...chartAxes(
      f,
      { unit: 'm_s', shown: speed, name: words.gust },
      { unit: 'm3', shown: volume, name: words.tank },
      { x: `${words.gust}, ${speed}`, y: `${words.tank}, ${volume}` },
    ),
    ...names({ f, facts, words, display, free, falls, younger, refill }),
    ...ages(f, [...younger, { week: facts.oldest, points: free }], falls, (week) =>
      fill(words.week, { week: shownWeek(week, display.decimal) }),
    ),
  ]
}
