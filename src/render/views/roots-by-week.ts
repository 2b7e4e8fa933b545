import type { RootFacts } from '../../disciplines/hydraulics/index.ts'
import { rootPractice } from '../../tables/roots.ts'
import { contour, type Drawing, line, type Point, polyline } from '../drawing/primitives.ts'
import type { WaterPathWords } from '../words/en/water-path.ts'
import { chartAxes, chartPoint, type Frame, insideOf } from './chart-axes.ts'
import { spotsAlong, tags } from './tags.ts'

/** More than the bore holds is not drawn. */
const MOST = 1.1
const DAYS_OF_WEEK = 7
const { boreTaken } = rootPractice.rows

/** Share of the bore that roots take by age of the plants: between two curves, with half, whole and the age of harvest. */
export function rootsByWeek(given: {
  readonly facts: RootFacts
  readonly words: WaterPathWords
  readonly width_mm: number
  readonly height_mm: number
}): Drawing {
  const { facts, words, width_mm, height_mm } = given
  const last = facts.weeks.at(-1)?.week ?? 1
  const f: Frame = { left_mm: 0, bottom_mm: 0, width_mm, height_mm, x: [0, last], y: [0, MOST] }
  const curve = (end: 'low' | 'high'): Point[] =>
    facts.weeks.map((w) => chartPoint(f, w.week, Math.min(MOST, w.share[end])))
  const across = (share: number): Point[] => [0, 0.25, 0.5, 0.75, 1].map((at) => chartPoint(f, at * last, share))
  const upright = (week: number): Point[] => [0, 0.25, 0.5, 0.75, 1].map((at) => chartPoint(f, week, at * MOST))
  const [few, many, half, whole] = [curve('low'), curve('high'), across(boreTaken.low), across(boreTaken.high)]
  const cut = upright(Math.min(last, facts.oldest_d / DAYS_OF_WEEK))
  const weeks = facts.weeks.map((w) => w.week).filter((w) => last <= 12 || w % 2 === 0)
  return [
    contour([...few, ...[...many].reverse()], null, { fill: 'wash' }),
    polyline(few, 'visible'),
    polyline(many, 'visible'),
    line(half[0]!, half.at(-1)!, 'hidden'),
    line(whole[0]!, whole.at(-1)!, 'cut'),
    line(cut[0]!, cut.at(-1)!, 'thin'),
    ...chartAxes(
      f,
      weeks,
      { unit: '1', shown: '%', name: words.rootsShare },
      { x: words.rootsAge, y: `${words.rootsShare}, %` },
    ),
    ...tags({
      names: [
        { text: words.rootsHalf, spots: spotsAlong(half), quiet: true },
        { text: words.rootsFull, spots: spotsAlong(whole), quiet: true },
        { text: words.rootsMost, spots: spotsAlong(many) },
        { text: words.rootsLeast, spots: spotsAlong(few) },
        { text: words.rootsCut, spots: spotsAlong(cut), quiet: true },
      ],
      lines: [few, many, half, whole, cut],
      within: insideOf(f),
    }),
  ]
}
