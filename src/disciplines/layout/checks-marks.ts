import type { Check } from '../../findings/check.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { among } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import { practiceLengths, practiceRatios } from '../../tables/practice.ts'
import { rowSource } from '../../tables/table.ts'
import type { LayoutFacts, Mark } from './index.ts'

const worst = (errors_m: readonly number[]): number => Math.max(0, ...errors_m.map(Math.abs))

/** What the owner's tape rounds away. */
const marks: Check<LayoutFacts> = {
  id: 'layout/marks',
  at: 'tools/tape',
  source: practiceLengths.source,
  judged: ({ lines }, plan, terms) => {
    const tape = plan.tools?.tape
    if (tape === undefined) return [unknown(marks.id, { ...terms, needs: ['tools/tape'] })]
    const heights = lines.flatMap((l) => l.marks.map((m: Mark) => m.error_m))
    return [
      judge(marks.id, quantity(worst(heights), 'm'), {
        ...terms,
        must: { max: practiceLengths.rows['mark-height'].high_m },
        slots: { tape, round: quantity(worst(lines.map((l) => l.arc.error_m)), 'm') },
        levers: [among('tools/tape', ['1/32 in', '1 mm'])],
      }),
    ]
  },
}

const TURN = 2 * Math.PI

/** Digits of a turn in degrees that no protractor misses. */
const DIGITS = 6

/** How far the lines of neighbouring rings stand apart, as a share of half a step round the ring. */
const stagger: Check<LayoutFacts> = {
  id: 'layout/stagger',
  at: 'column/sites/turn',
  source: rowSource(practiceRatios, 'stagger'),
  applies: (plan) => plan.column?.sites?.pattern === 'rings' && plan.column.sites.method !== 'fitting',
  judged: ({ rings, perRing }, plan, terms) => {
    const turn_rad = plan.column?.sites?.turn_rad
    if (rings < 2 || turn_rad === undefined) return []
    const step_rad = TURN / perRing
    const over_rad = turn_rad % step_rad
    const apart_rad = Math.min(over_rad, step_rad - over_rad)
    const half = `${Number((180 / perRing).toPrecision(DIGITS))} deg`
    return [
      judge(stagger.id, quantity(apart_rad / (step_rad / 2), 'share'), {
        ...terms,
        want: { min: practiceRatios.rows.stagger.low },
        slots: { apart: quantity(apart_rad, 'rad'), half: quantity(step_rad / 2, 'rad') },
        levers: [among('column/sites/turn', [half])],
      }),
    ]
  },
}

/** Marks as built against marks as planned. */
const siteHeight: Check<LayoutFacts> = {
  id: 'layout/site-height',
  at: 'measured/sites',
  source: practiceLengths.source,
  applies: (plan) => (plan.measured?.sites ?? []).some((s) => s.height_m !== undefined),
  judged: ({ sites }, plan, terms) =>
    (plan.measured?.sites ?? []).flatMap((built, i) => {
      const planned = sites.find((s) => s.number === built.site)
      if (built.height_m === undefined || planned === undefined) return []
      const { low_m, high_m } = practiceLengths.rows['mark-height']
      return [
        judge(siteHeight.id, quantity(built.height_m - planned.mark_m, 'm'), {
          ...terms,
          at: `measured/sites/${i}/height`,
          want: { min: low_m, max: high_m },
          slots: { site: planned.number, planned: quantity(planned.mark_m, 'm') },
        }),
      ]
    }),
}

export const markChecks: readonly Check<LayoutFacts>[] = [marks, stagger, siteHeight]
