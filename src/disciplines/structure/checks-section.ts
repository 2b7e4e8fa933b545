import type { Check } from '../../findings/check.ts'
import { judge } from '../../findings/judge.ts'
import { along, among } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import { practiceRatios } from '../../tables/practice.ts'
import { standingPractice } from '../../tables/standing.ts'
import type { SectionFacts } from './section-facts.ts'

const factor = practiceRatios.rows['section-safety'].low
const sway = standingPractice.rows.swayShare.value

/** Strength of the warm, drilled pipe over the stress at its lowest ring. */
const strength: Check<SectionFacts> = {
  id: 'structure/section',
  safety: true,
  at: 'column/pipe',
  source: 'common-practice',
  judged: (s, plan, terms) => {
    const pitch_m = plan.column?.sites?.pitch_m
    return [
      judge('structure/section', quantity(s.reserve, '1'), {
        ...terms,
        must: { min: factor },
        slots: {
          stress: quantity(s.stress_Pa, 'Pa'),
          strength: quantity(s.strength_Pa, 'Pa'),
          wall: quantity(s.wall_C, 'C'),
          moment: quantity(s.moment_N_m, 'N_m'),
          left: Math.round(s.leftShare * 100),
        },
        levers: [
          among('column/colour', ['white', 'light']),
          among('column/base/anchored', [true]),
          ...(pitch_m === undefined ? [] : [along('column/sites/pitch', 2 * pitch_m, 'm', 0.005)]),
        ],
      }),
    ]
  },
}

/** Movement of the top in the gust. */
const topSway: Check<SectionFacts> = {
  id: 'structure/sway',
  at: 'column/length',
  source: 'common-practice',
  applies: (plan) => (plan.place?.gust_m_s ?? 0) > 0 && plan.column?.base?.anchored !== true,
  judged: (s, plan, terms) => [
    judge('structure/sway', quantity(s.sway_m, 'm'), {
      ...terms,
      want: { max: sway * s.height_m },
      slots: { gust: quantity(plan.place?.gust_m_s ?? 0, 'm_s'), wall: quantity(s.wall_C, 'C') },
      levers: [among('column/base/anchored', [true]), among('column/colour', ['white', 'light'])],
    }),
  ],
}

export const sectionChecks: readonly Check<SectionFacts>[] = [strength, topSway]
