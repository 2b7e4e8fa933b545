import { type Check, checked } from '../../findings/check.ts'
import type { Finding, Lever } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { together } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { distributorPractice } from '../../tables/hydraulic-orifices.ts'
import { waterPathPractice } from '../../tables/water-path.ts'
import { holeCircle } from './checks-circle.ts'
import type { DistributorChoice } from './distributor-choice.ts'
import { type DistributorFacts, distributorSuggestions, type HydraulicsFacts } from './index.ts'
import { deeper, holes, ofRange, otherDrills, throttle } from './levers.ts'
import { choiceWishes } from './levers-distributor.ts'
import type { Range } from './range.ts'

interface Judged extends DistributorFacts {
  readonly column_m3_s: Range
  /** What would hold, the most in hand first; found once and only where something does not hold. */
  readonly choices: () => readonly DistributorChoice[]
}

/** A standard hole by which the work of others is counted. */
const USUAL_HOLE_m = 0.003

/** What would do: the best suggestion where the head is too much, else more of the same holes. */
function cure(d: Judged, head_m: number) {
  const best = head_m > d.depth_m ? d.choices()[0] : undefined
  return {
    count: best?.count ?? Math.ceil(d.count * Math.sqrt(Math.max(1, head_m / d.depth_m))),
    drill: { drilled: quantity(best?.hole_m ?? d.hole_m, 'm') },
  }
}

const holeSize: Check<Judged> = {
  id: 'hydraulics/hole-size',
  at: 'distributor/hole',
  source: 'common-practice',
  judged: ({ hole_m, count }, plan, terms) => [
    judge('hydraulics/hole-size', quantity(hole_m, 'm'), {
      ...terms,
      must: { min: waterPathPractice.rows.hopelessHole.value },
      want: { min: distributorPractice.rows.smallestHole.value },
      slots: {
        count,
        usual: { drilled: quantity(USUAL_HOLE_m, 'm') },
        // Flow goes with the area of all holes together.
        needed: Math.ceil(count * (USUAL_HOLE_m / hole_m) ** 2),
      },
      levers: otherDrills(plan, 'larger'),
    }),
  ],
}

const asSuggested = (plan: Plan, d: Judged): readonly Lever[] => together(choiceWishes(plan, d.circle_m, d.choices()))

const wider = (plan: Plan) => [...otherDrills(plan, 'larger'), ...holes(plan, 'more'), ...deeper(plan)]

const overflow: Check<Judged> = {
  id: 'hydraulics/distributor-overflow',
  at: 'distributor/depth',
  source: 'Torricelli',
  judged: (d, plan, terms) => [
    judge('hydraulics/distributor-overflow', ofRange(d.head_m, 'm'), {
      ...terms,
      must: { max: d.depth_m },
      slots: {
        flow: ofRange(d.column_m3_s, 'm3_s'),
        full: quantity(d.full_m3_s, 'm3_s'),
        ...cure(d, d.head_m.high),
      },
      levers: () => [...asSuggested(plan, d), throttle, ...wider(plan)],
    }),
  ],
}

const clogged: Check<Judged> = {
  id: 'hydraulics/distributor-clogged',
  at: 'distributor/clogged',
  source: 'Torricelli',
  judged: (d, plan, terms) => {
    if (d.neededCloggedHead_m === null)
      return [unknown('hydraulics/distributor-clogged', { ...terms, needs: ['riser/neededFlow'] })]
    return [
      judge('hydraulics/distributor-clogged', quantity(d.neededCloggedHead_m, 'm'), {
        ...terms,
        must: { max: d.depth_m },
        slots: {
          shut: quantity(d.cloggedShare, 'share'),
          clear: quantity(d.neededHead_m ?? 0, 'm'),
          full: quantity(d.fullClogged_m3_s, 'm3_s'),
          ...cure(d, d.neededCloggedHead_m),
        },
        levers: () => [...asSuggested(plan, d), ...wider(plan)],
      }),
    ]
  },
}

const drips: Check<Judged> = {
  id: 'hydraulics/drips-evenly',
  at: 'distributor/holes',
  source: 'Laplace.hole',
  judged: (d, plan, terms) => [
    judge('hydraulics/drips-evenly', quantity(d.leastHead_m, 'm'), {
      ...terms,
      // Half of the start head is a Weber number of 4: below it a hole drips or stops.
      must: { min: d.startHead_m / 2 },
      want: { min: d.startHead_m },
      slots: { start: quantity(d.startHead_m, 'm') },
      levers: [...holes(plan, 'fewer'), ...otherDrills(plan, 'smaller')],
    }),
  ],
}

/** Difference of flow at which the highest hole runs dry. */
const ONE_SIDE_DRY = Math.SQRT2

const tilt: Check<Judged> = {
  id: 'hydraulics/tilt-effect',
  at: 'distributor/tilt',
  source: 'Torricelli',
  judged: (d, plan, terms) => [
    judge('hydraulics/tilt-effect', quantity(d.tiltShare, 'share'), {
      ...terms,
      must: { max: ONE_SIDE_DRY },
      want: { max: waterPathPractice.rows.tiltShare.value },
      slots: { lean: quantity(d.lean_rad, 'rad'), edge: quantity(d.tiltHeight_m, 'm') },
      levers: [...holes(plan, 'fewer'), ...otherDrills(plan, 'smaller')],
    }),
  ],
}

const plated = (plan: Plan): boolean => plan.distributor?.kind !== 'tee'

function judgedFacts(plan: Plan, h: HydraulicsFacts): Known<Judged> | null {
  if (!isKnown(h.distributor)) return h.distributor
  if (!isKnown(h.column_m3_s)) return h.column_m3_s
  const facts = h.distributor.known
  if (facts === null) return null
  const column_m3_s = h.column_m3_s.known
  let found: readonly DistributorChoice[] | null = null
  const choices = () => {
    found ??= distributorSuggestions(plan, { facts, most_m3_s: column_m3_s.high, water: h.water })
    return found
  }
  return { known: { ...facts, column_m3_s, choices } }
}

export function distributorChecks(plan: Plan, h: HydraulicsFacts): readonly Finding[] {
  const facts = judgedFacts(plan, h)
  return facts === null || !plated(plan)
    ? []
    : checked([holeSize, holeCircle, overflow, clogged, drips, tilt], facts, plan)
}
