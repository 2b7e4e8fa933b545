import { type Check, checked } from '../../findings/check.ts'
import type { Finding, FindingSlot } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { among } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import type { Plan } from '../../plan/plan.ts'
import { statedPractice } from '../../tables/stated.ts'
import { waterPathPractice } from '../../tables/water-path.ts'
import type { HydraulicsFacts, PumpFacts } from './index.ts'
import { statedCurve } from './pump-facts.ts'

/** Times by which a stopwatch is misread: a lost nought. */
const LOST_NOUGHT = 10

/** What a test lacks to be of use; a test that lacks something is left out of the fit. */
function lacking(plan: Plan): readonly Finding[] {
  return (plan.pump?.tests ?? []).flatMap((t, index) => {
    const at = `pump/tests/${index}`
    const gaps = { volume: t.volume_m3, time: t.time_s, outletHeight: t.outletHeight_m }
    const needs = Object.entries(gaps).flatMap(([key, v]) => (v === undefined ? [`${at}/${key}`] : []))
    return needs.length === 0 ? [] : [unknown('hydraulics/bucket-test', { at, source: 'common-practice', needs })]
  })
}

const bucket: Check<PumpFacts> = {
  id: 'hydraulics/bucket-test',
  at: 'pump/tests',
  source: 'common-practice',
  applies: (plan) => (plan.pump?.tests?.length ?? 0) > 0,
  judged: ({ tests, boxFlow_m3_s, boxHead_m }, plan, terms) => [
    ...lacking(plan),
    ...tests.flatMap((t) => {
      const test = plan.pump?.tests?.[t.index]
      const { outletHeight_m: height_m, time_s = 0 } = test ?? {}
      // What it lacks is asked for.
      if (height_m === undefined) return []
      const meant_s = LOST_NOUGHT * time_s
      return judge('hydraulics/bucket-test', quantity(t.flow_m3_s, 'm3_s'), {
        ...terms,
        at: `pump/tests/${t.index}`,
        // As high as its largest head a pump gives nothing.
        must: { max: height_m < boxHead_m ? boxFlow_m3_s : 0 },
        slots: {
          box: quantity(boxFlow_m3_s, 'm3_s'),
          head: quantity(boxHead_m, 'm'),
          height: quantity(height_m, 'm'),
          time: quantity(time_s, 's'),
          meant: quantity(meant_s, 's'),
        },
        levers: [among(`pump/tests/${t.index}/time`, [`${Number(meant_s.toPrecision(6))} s`])],
      })
    }),
  ],
}

/** What a strength outside of what is usual asks for: a look at the pump, or a second test. */
const advice = (strength: number): FindingSlot => ({ phrase: strength < 1 ? 'pump-weaker' : 'pump-grown' })

/** Flow of the last test over that of the first, where they were taken on other days at one height; else null. */
function sameHeightFlow(plan: Plan): number | null {
  const [first, last] = [plan.pump?.tests?.[0], plan.pump?.tests?.at(-1)]
  if (first?.on === last?.on) return null
  const flow = (t: typeof first): number => (t?.volume_m3 ?? 0) / (t?.time_s ?? 0)
  const height_m = first?.outletHeight_m
  const ratio = height_m !== undefined && height_m === last?.outletHeight_m ? flow(last) / flow(first) : null
  return ratio !== null && Number.isFinite(ratio) ? ratio : null
}

const strength: Check<PumpFacts> = {
  id: 'hydraulics/pump-strength',
  at: 'pump/tests',
  source: 'common-practice',
  applies: (plan) => (plan.pump?.tests?.length ?? 0) > 1,
  judged: ({ wear, since }, plan, terms) => {
    const last = wear?.strengths.at(-1)
    if (wear === null || since === null || last === undefined) return []
    // Near the pump's largest head the flow falls off long before its strength does.
    const left = Math.min(last.strength, sameHeightFlow(plan) ?? last.strength)
    return [
      judge('hydraulics/pump-strength', quantity(left, '1'), {
        ...terms,
        // No pump grows stronger than its tests can be misread.
        want: { min: waterPathPractice.rows.weakPump.value, max: Math.max(1, since.explained) },
        slots: { tests: wear.strengths.length, advice: advice(left) },
      }),
    ]
  },
}

/** Tests of one day show one pump: each day with several, its strongest test over its weakest. */
const agree: Check<PumpFacts> = {
  id: 'hydraulics/tests-agree',
  at: 'pump/tests',
  source: 'common-practice',
  applies: (plan) => (plan.pump?.tests?.length ?? 0) > 1,
  judged: ({ sameDay }, plan, terms) =>
    sameDay.map((d) => {
      const flow = (index: number) => {
        const { volume_m3 = 0, time_s = 1 } = plan.pump?.tests?.[index] ?? {}
        return quantity(volume_m3 / time_s, 'm3_s')
      }
      const height = (index: number) => quantity(plan.pump?.tests?.[index]?.outletHeight_m ?? 0, 'm')
      return judge('hydraulics/tests-agree', quantity(d.ratio, '1'), {
        ...terms,
        at: `pump/tests/${Math.max(d.weakest, d.strongest)}`,
        must: { max: d.explained },
        slots: {
          day: d.on,
          weak: d.weakest + 1,
          weakFlow: flow(d.weakest),
          weakHeight: height(d.weakest),
          strong: d.strongest + 1,
          strongFlow: flow(d.strongest),
          strongHeight: height(d.strongest),
        },
      })
    }),
}

/** The maker's curve as it was typed: its head must fall while the flow grows. */
function curve(plan: Plan): readonly Finding[] {
  const points = plan.pump?.curve ?? []
  if (points.length === 0) return []
  const terms = { at: 'pump/curve', source: 'Hydrostatics' as const }
  const needs = points.flatMap((p, i) => [
    ...(p.flow_m3_s === undefined ? [`pump/curve/${i}/flow`] : []),
    ...(p.head_m === undefined ? [`pump/curve/${i}/head`] : []),
  ])
  if (needs.length > 0) return [unknown('hydraulics/pump-curve', { ...terms, needs })]
  const stated = statedCurve(plan)
  if (stated === null)
    return [unknown('hydraulics/pump-curve', { ...terms, needs: ['pump/curve/1/flow', 'pump/curve/1/head'] })]
  const { rise_m, below, above, largest_m } = stated
  return [
    judge('hydraulics/pump-curve', quantity(rise_m, 'm'), {
      ...terms,
      ...(rise_m > 0 ? { at: `pump/curve/${above.index}` } : {}),
      must: { max: statedPractice.rows.curveHump.value * largest_m },
      want: { max: 0 },
      slots: {
        lowFlow: quantity(below.flow_m3_s, 'm3_s'),
        lowHead: quantity(below.head_m, 'm'),
        highFlow: quantity(above.flow_m3_s, 'm3_s'),
        highHead: quantity(above.head_m, 'm'),
        points: points.length,
      },
    }),
  ]
}

/** What the grower says of the pump, held against itself. */
export const testChecks = (plan: Plan, h: HydraulicsFacts): readonly Finding[] => [
  ...curve(plan),
  ...checked([bucket, strength, agree], h.pump, plan),
]
