import type { Check } from '../../findings/check.ts'
import type { Lever } from '../../findings/finding.ts'
import { judge } from '../../findings/judge.ts'
import { along } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import type { Plan } from '../../plan/plan.ts'
import { practiceAngles, practiceLengths } from '../../tables/practice.ts'
import { rowSource } from '../../tables/table.ts'
import { STEP_m } from './checks-bore.ts'
import type { TemplatesFacts } from './index.ts'
import { builtSites } from './site-facts.ts'

const DEGREE_rad = Math.PI / 180
const LEVEL_rad = Math.PI / 2

/** How much longer than planned a stub may become before it is another one. */
const STRETCH = 4

/** Raise the lip: a longer stub, or a steeper one. */
const raise = (plan: Plan): Lever[] => {
  const { lowerSide_m, angle_rad } = plan.column?.stub ?? {}
  const steepest_rad = LEVEL_rad - practiceAngles.rows['stub-rise'].high_rad
  return [
    ...(angle_rad === undefined
      ? []
      : [along('column/stub/angle', Math.min(angle_rad, steepest_rad), 'rad', DEGREE_rad)]),
    ...(lowerSide_m === undefined ? [] : [along('column/stub/lowerSide', STRETCH * lowerSide_m, 'm', STEP_m)]),
  ]
}

/** Rise of the lip over the low edge of the hole. */
const lip: Check<TemplatesFacts> = {
  id: 'templates/lip',
  at: 'column/stub/lowerSide',
  source: rowSource(practiceLengths, 'lip-rise'),
  judged: ({ stub, joint }, plan, terms) => {
    const { low_m, high_m } = practiceLengths.rows['lip-rise']
    return [
      judge(lip.id, quantity(stub.heelRise_m, 'm'), {
        ...terms,
        must: { min: low_m },
        want: { min: high_m },
        slots: {
          above: quantity(LEVEL_rad - joint.stub.angle_rad, 'rad'),
          side: quantity(plan.column?.stub?.lowerSide_m ?? 0, 'm'),
          from: quantity(practiceAngles.rows['stub-rise'].low_rad, 'rad'),
          to: quantity(practiceAngles.rows['stub-rise'].high_rad, 'rad'),
        },
        levers: raise(plan),
      }),
    ]
  },
}

/** Angle of the stub above level. */
const angle: Check<TemplatesFacts> = {
  id: 'templates/angle',
  at: 'column/stub/angle',
  source: rowSource(practiceAngles, 'stub-rise'),
  judged: ({ joint }, _plan, terms) => {
    const { low_rad, high_rad } = practiceAngles.rows['stub-rise']
    const above_rad = LEVEL_rad - joint.stub.angle_rad
    return [
      judge(angle.id, quantity(above_rad, 'rad'), {
        ...terms,
        want: { min: low_rad, max: high_rad },
        slots: { between: quantity(joint.stub.angle_rad, 'rad') },
        levers: [along('column/stub/angle', LEVEL_rad - (above_rad < low_rad ? low_rad : high_rad), 'rad', DEGREE_rad)],
      }),
    ]
  },
}

/** How high water must stand in the opening before it spills over the lip. */
const freeboard: Check<TemplatesFacts> = {
  id: 'templates/freeboard',
  at: 'column/stub/lowerSide',
  source: 'Geometry.stub-end',
  judged: ({ stub }, plan, terms) => [
    judge(freeboard.id, quantity(stub.freeboard_m, 'm'), { ...terms, must: { min: 0 }, levers: raise(plan) }),
  ],
}

/** Angles as built. */
const siteAngle: Check<TemplatesFacts> = {
  id: 'templates/site-angle',
  at: 'measured/sites',
  source: practiceAngles.source,
  applies: (plan) => (plan.measured?.sites ?? []).some((s) => s.angle_rad !== undefined),
  judged: ({ joint }, plan, terms) => {
    const { low_rad, high_rad } = practiceAngles.rows['stub-angle']
    return builtSites(plan, joint).map((b) =>
      judge(siteAngle.id, quantity(b.off_rad, 'rad'), {
        ...terms,
        at: `measured/sites/${b.index}/angle`,
        want: { min: low_rad, max: high_rad },
        slots: {
          site: b.site,
          built: quantity(b.angle_rad, 'rad'),
          planned: quantity(joint.stub.angle_rad, 'rad'),
          lip: quantity(b.lipRise_m, 'm'),
        },
      }),
    )
  },
}

export const lipChecks: readonly Check<TemplatesFacts>[] = [lip, angle, freeboard, siteAngle]
