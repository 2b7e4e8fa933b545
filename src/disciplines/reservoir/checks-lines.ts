/** What is said twice of the tank, held against itself: lines by level and by litres, and measured marks. */
import { type Check, checked } from '../../findings/check.ts'
import type { Finding, Lever } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { atMost, together } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import type { Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { statedPractice } from '../../tables/stated.ts'
import type { ReservoirFacts } from './index.ts'
import { solutionLevel, solutionVolume } from './vessel.ts'

const LITRE_m3 = 0.001
const STEP_m = 0.001
/** A tenth of a millilitre: marks that differ by less are one. */
const LEAST_m3 = 1e-7

/** A line that is set by its level and by its volume at once. */
const lineAgrees = (which: 'fill' | 'low'): Check<ReservoirFacts> => ({
  id: 'reservoir/lines-agree',
  at: `reservoir/${which}Volume`,
  source: 'derived.volumes',
  applies: (plan) =>
    plan.reservoir?.[`${which}Line_m`] !== undefined && plan.reservoir?.[`${which}Volume_m3`] !== undefined,
  judged: ({ tank }, plan, terms) => {
    const level_m = plan.reservoir?.[`${which}Line_m`] ?? 0
    const volume_m3 = plan.reservoir?.[`${which}Volume_m3`] ?? 0
    // What lies beyond the rim is told where the fill is held against the tank.
    if (level_m > tank.depth_m || volume_m3 > tank.brim_m3) return []
    const there_m3 = solutionVolume({ ...tank, level_m })
    const most_m3 = statedPractice.rows.lineDiffers.value * tank.brim_m3
    const byLevel_m = solutionLevel({ ...tank, volume_m3 })
    const levers: readonly Lever[] = [
      ...together([[{ set: `reservoir/${which}Volume`, to: atMost(there_m3, 'm3', LITRE_m3) }]]),
      ...together([[{ set: `reservoir/${which}Line`, to: atMost(byLevel_m, 'm', STEP_m) }]]),
    ]
    return [
      judge('reservoir/lines-agree', quantity(volume_m3, 'm3'), {
        ...terms,
        must: { min: there_m3 - most_m3, max: there_m3 + most_m3 },
        slots: { line: quantity(level_m, 'm'), there: quantity(there_m3, 'm3'), which: { phrase: `line-${which}` } },
        levers,
      }),
    ]
  },
})

interface Mark {
  readonly index: number
  readonly level_m: number
  readonly volume_m3: number
}

/** The two marks between which the volume grows least; the foot of the tank is the lowest of all. */
function flattest(marks: readonly Mark[]): { readonly below: Mark; readonly above: Mark } | null {
  const sorted = [...marks].sort((a, b) => a.level_m - b.level_m || b.volume_m3 - a.volume_m3)
  let best: { below: Mark; above: Mark } | null = null
  const grows = (p: { below: Mark; above: Mark }) =>
    p.above.level_m > p.below.level_m ? p.above.volume_m3 - p.below.volume_m3 : -Number.MIN_VALUE
  sorted.forEach((above, i) => {
    const below = sorted[i - 1] ?? { index: -1, level_m: 0, volume_m3: 0 }
    // An empty tank may be stated as its first mark.
    if (i === 0 && above.level_m === 0 && above.volume_m3 === 0) return
    const pair = { below, above }
    if (best === null || grows(pair) < grows(best)) best = pair
  })
  return best
}

/** Measured levels and volumes: both must rise together, and reach far enough up to stand for the tank. */
function marks(plan: Plan): readonly Finding[] {
  const stated = plan.reservoir?.marks ?? []
  if (stated.length === 0) return []
  const terms = { at: 'reservoir/marks', source: 'derived.volumes' as const }
  const needs = stated.flatMap((m, i) => [
    ...(m.level_m === undefined ? [`reservoir/marks/${i}/level`] : []),
    ...(m.volume_m3 === undefined ? [`reservoir/marks/${i}/volume`] : []),
  ])
  if (needs.length > 0) return [unknown('reservoir/marks-rise', { ...terms, needs })]
  const whole = stated.map((m, index): Mark => ({ index, level_m: m.level_m!, volume_m3: m.volume_m3! }))
  const worst = flattest(whole)
  if (worst === null) return [unknown('reservoir/marks-rise', { ...terms, needs: ['reservoir/marks/1/level'] })]
  const { below, above } = worst
  const grows_m3 = above.level_m > below.level_m ? above.volume_m3 - below.volume_m3 : 0
  const depth_m = plan.reservoir?.container?.depth_m
  const reach_m = Math.max(...whole.map((m) => m.level_m))
  const rising = judge('reservoir/marks-rise', quantity(grows_m3, 'm3'), {
    ...terms,
    at: `reservoir/marks/${above.index}`,
    must: { min: LEAST_m3 },
    slots: {
      lowLevel: quantity(below.level_m, 'm'),
      lowVolume: quantity(below.volume_m3, 'm3'),
      highLevel: quantity(above.level_m, 'm'),
      highVolume: quantity(above.volume_m3, 'm3'),
      marks: whole.length,
    },
  })
  if (depth_m === undefined) return [rising]
  return [
    rising,
    judge('reservoir/marks-reach', quantity(reach_m, 'm'), {
      ...terms,
      must: { max: depth_m },
      want: { min: statedPractice.rows.marksReach.value * depth_m },
      slots: { depth: quantity(depth_m, 'm') },
    }),
  ]
}

/** Judges what the grower says of the tank against itself. */
export const lineFindings = (plan: Plan, facts: Known<ReservoirFacts>): readonly Finding[] => [
  ...checked([lineAgrees('fill'), lineAgrees('low')], facts, plan),
  ...marks(plan),
]
