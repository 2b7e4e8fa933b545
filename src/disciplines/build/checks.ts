import type { Finding } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { among, atLeast, together } from '../../findings/levers.ts'
import { band, quantity } from '../../kernel/units.ts'
import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { safetyLengths } from '../../tables/exposure.ts'
import { cementTimes } from '../../tables/joining.ts'
import { practiceRatios } from '../../tables/practice.ts'
import { standingPractice } from '../../tables/standing.ts'
import { type BuildFacts, topHeight } from './index.ts'
import { plasticsOf } from './plastics.ts'

const { lightStrap, strongStrap } = standingPractice.rows
const rows = Object.values(cementTimes.rows)
const COLDEST_C = Math.min(...rows.map((r) => r.temperatureLow_C))
const HOTTEST_C = Math.max(...rows.map((r) => r.temperatureHigh_C))

/** The printed times of cement hold between two temperatures. */
function temperature(plan: Plan, build: BuildFacts): Finding[] {
  const glued = build.steps.some((s) => s.parts.includes('cement'))
  if (!glued) return []
  const terms = {
    at: 'place/airLow',
    must: { min: COLDEST_C, max: HOTTEST_C },
    source: cementTimes.source,
    slots: {
      set: quantity(build.waits.set_s, 's'),
      water: quantity(build.waits.water_s, 's'),
      from: quantity(COLDEST_C, 'C'),
      to: quantity(HOTTEST_C, 'C'),
    },
  }
  const { airLow_C, airHigh_C } = plan.place ?? {}
  if (airLow_C === undefined || airHigh_C === undefined) {
    const needs = [
      ...(airLow_C === undefined ? ['place/airLow'] : []),
      ...(airHigh_C === undefined ? ['place/airHigh'] : []),
    ]
    return [unknown('build/temperature', { ...terms, needs })]
  }
  return [judge('build/temperature', band(Math.min(airLow_C, airHigh_C), Math.max(airLow_C, airHigh_C), 'C'), terms)]
}

/** A laser must not meet PVC, nor a plastic that nobody has named. */
function laser(plan: Plan): Finding[] {
  const { laser: templates, holeTool } = plan.tools ?? {}
  const pvc = plasticsOf(plan).filter((p) => p === null || p.startsWith('PVC')).length
  const places = [
    ...(templates === undefined ? [] : [{ meant: templates, at: 'tools/laser', safe: [false] }]),
    ...(holeTool === 'laser' ? [{ meant: true, at: 'tools/holeTool', safe: ['jigsaw', 'rotary tool'] }] : []),
  ]
  return places.map(({ meant, at, safe }) =>
    judge('build/laser', quantity(meant ? pvc : 0, 'count'), {
      at,
      must: { max: 0 },
      source: 'PVC-U.properties',
      safety: true,
      levers: [among(at, safe)],
    }),
  )
}

/** A tall column without a strap. */
function strap(plan: Plan): Finding[] {
  const top_m = topHeight(plan)
  if (top_m === null) return []
  const anchored = plan.column?.base?.anchored === true
  const { limit_m } = safetyLengths.rows['strap-above']
  return [
    judge('build/strap', quantity(top_m, 'm'), {
      at: 'column/base/anchored',
      must: anchored ? {} : { max: limit_m },
      source: safetyLengths.source,
      safety: true,
      slots: { above: quantity(limit_m, 'm') },
      // With what it carries and its height, without which nobody knows whether it holds.
      levers: [
        among('column/base/anchored', [true]),
        ...together(
          [lightStrap.value, strongStrap.value].map((load_N) => [
            { set: 'column/base/anchored', to: true },
            { set: 'column/base/strapLoad', to: atLeast(load_N, 'N', 50) },
            { set: 'column/base/strapHeight', to: atLeast(practiceRatios.rows.strap.low * top_m, 'm', 0.05) },
          ]),
        ),
      ],
    }),
  ]
}

/** Acts that are for adults, where children use the place. */
function children(plan: Plan, build: BuildFacts): Finding[] {
  const here = plan.place?.children ?? plan.place?.setting === 'school'
  if (!here) return []
  return [
    judge('build/children', quantity(build.adultSteps.length, 'count'), {
      at: 'place/children',
      want: { max: 0 },
      source: 'common-practice',
      safety: true,
      slots: { steps: build.steps.length },
    }),
  ]
}

/** Judges how the tower is built. */
export function buildFindings(plan: Plan, build: Known<BuildFacts>): readonly Finding[] {
  const general = [...laser(plan), ...strap(plan)]
  return isKnown(build) ? [...temperature(plan, build.known), ...general, ...children(plan, build.known)] : general
}
