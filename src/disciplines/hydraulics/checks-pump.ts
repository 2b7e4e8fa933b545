import { both, type Check, checked } from '../../findings/check.ts'
import type { Finding, FindingSlot, Lever } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { along, among } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import type { Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { pumpPractice } from '../../tables/hydraulic-pumps.ts'
import { practiceRatios } from '../../tables/practice.ts'
import { waterPathPractice } from '../../tables/water-path.ts'
import { testChecks } from './checks-tests.ts'
import type { FlowFacts, HydraulicsFacts, LiftFacts, PumpFacts } from './index.ts'
import { boreUp, ofRange } from './levers.ts'
import { fewerColumns, lowerColumn, strongerPump } from './levers-pump.ts'
import { columnsOf, type Tubes } from './tubes.ts'

/** What helps a pump that is too weak, listed only where it is. */
interface Cures {
  readonly cures: () => readonly Lever[]
}

type Lifted = LiftFacts & PumpFacts & Cures

const lifts: Check<Lifted> = {
  id: 'hydraulics/pump-lifts',
  at: 'pump/maxHead',
  source: 'Hydrostatics',
  judged: ({ shutoff_m, fromLow_m, cures }, _plan, terms) => [
    judge('hydraulics/pump-lifts', ofRange(shutoff_m, 'm'), {
      ...terms,
      must: { min: fromLow_m },
      slots: { lift: quantity(fromLow_m, 'm') },
      levers: cures,
    }),
  ],
}

/** Hoses are cut to the decimetre above what they must reach. */
const hoseUp = (least_m: number): string => `${Math.ceil(least_m * 10 + 1e-9) / 10} m`

/** A hose reaches from the pump, which lies under the low line, to its outlet: at least as long as the lift. */
const hoseReaches: Check<LiftFacts> = {
  id: 'hydraulics/hose-reaches',
  at: 'riser/length',
  source: 'Hydrostatics',
  applies: ({ riser }) =>
    riser?.length_m !== undefined && riser.header === undefined && (riser.branches ?? []).length === 0,
  judged: ({ fromLow_m }, plan, terms) => {
    const drop_m = plan.riser?.drops?.length_m ?? 0
    return [
      judge('hydraulics/hose-reaches', quantity((plan.riser?.length_m ?? 0) + drop_m, 'm'), {
        ...terms,
        must: { min: fromLow_m },
        levers: [among('riser/length', [hoseUp(fromLow_m - drop_m)])],
      }),
    ]
  },
}

const staticShare: Check<Lifted> = {
  id: 'hydraulics/static-share',
  at: 'pump/maxHead',
  source: 'common-practice',
  judged: ({ shutoff_m, fromLow_m, cures }, _plan, terms) => [
    judge('hydraulics/static-share', quantity(Math.max(0, fromLow_m) / shutoff_m.low, 'share'), {
      ...terms,
      want: { max: practiceRatios.rows['pump-head'].high },
      slots: { lift: quantity(fromLow_m, 'm'), head: quantity(shutoff_m.low, 'm') },
      levers: cures,
    }),
  ],
}

const columnFlow: Check<FlowFacts & Cures> = {
  id: 'hydraulics/column-flow',
  at: 'riser/neededFlow',
  source: 'TreeNetwork',
  judged: ({ least_m3_s, worn_m3_s, cures }, plan, terms) => {
    const wanted = plan.riser?.neededFlow_m3_s
    if (wanted === undefined) return [unknown('hydraulics/column-flow', { ...terms, needs: ['riser/neededFlow'] })]
    const margin = wanted / (1 - pumpPractice.rows.wornShare.high)
    return [
      judge('hydraulics/column-flow', ofRange(least_m3_s, 'm3_s'), {
        ...terms,
        must: { min: wanted },
        want: { min: margin },
        slots: {
          wanted: quantity(wanted, 'm3_s'),
          margin: quantity(margin, 'm3_s'),
          worn: ofRange(worn_m3_s, 'm3_s'),
          advice: { phrase: (plan.pump?.tests ?? []).length > 0 ? 'bucket-done' : 'bucket-do' },
        },
        levers: () => [...boreUp(plan), ...cures()],
      }),
    ]
  },
}

const several = (plan: Plan): boolean => columnsOf(plan) > 1

const starved: Check<FlowFacts & Cures> = {
  id: 'hydraulics/starved-columns',
  at: 'riser/drops',
  source: 'TreeNetwork',
  applies: several,
  judged: ({ columns, cures }, _plan, terms) => {
    const sure = columns.filter((c) => c.starved === 'yes').length
    const maybe = columns.filter((c) => c.starved !== 'no')
    return [
      judge('hydraulics/starved-columns', ofRange({ low: sure, high: maybe.length }, 'count'), {
        ...terms,
        must: { max: 0 },
        slots: { which: maybe.map((c) => c.id).join(', ') },
        levers: cures,
      }),
    ]
  },
}

/** How columns that differ are evened, or what stands in the way of it. */
function evening({ columns, even_m3_s }: FlowFacts, plan: Plan): FindingSlot {
  if (even_m3_s === null) return { phrase: 'even-not' }
  const widest = columns.reduce((a, b) => ((b.valveLosses ?? 0) > (a.valveLosses ?? 0) ? b : a))
  const bucket_m3 = plan.pump?.tests?.at(-1)?.volume_m3
  const needed_m3_s = plan.riser?.neededFlow_m3_s
  const slots = {
    first: widest.id,
    valve: quantity(Number((widest.valveLosses ?? 0).toPrecision(2)), 'count'),
    bore: quantity(widest.evenBore_m ?? 0, 'm'),
    fills: { filled: ofRange(even_m3_s, 'm3_s'), ...(bucket_m3 === undefined ? {} : { bucket_m3 }) },
    even: ofRange(even_m3_s, 'm3_s'),
  }
  if (needed_m3_s === undefined || even_m3_s.high >= needed_m3_s) return { phrase: 'even-by-bucket', with: slots }
  return { phrase: 'even-too-little', with: { ...slots, needed: quantity(needed_m3_s, 'm3_s') } }
}

const spread: Check<FlowFacts> = {
  id: 'hydraulics/spread',
  at: 'riser/drops',
  source: 'common-practice',
  applies: several,
  judged: (flow, plan, terms) => {
    const header_m = plan.riser?.header?.bore_m
    return [
      judge('hydraulics/spread', ofRange(flow.spread, 'share'), {
        ...terms,
        want: { max: waterPathPractice.rows.spread.value },
        slots: { how: evening(flow, plan) },
        levers: header_m === undefined ? [] : [along('riser/header/bore', 2 * header_m, 'm', 0.001)],
      }),
    ]
  },
}

const speed: Check<FlowFacts> = {
  id: 'hydraulics/riser-speed',
  at: 'riser/bore',
  source: 'common-practice',
  judged: ({ riserSpeed_m_s }, plan, terms) => [
    judge('hydraulics/riser-speed', ofRange(riserSpeed_m_s, 'm_s'), {
      ...terms,
      want: { max: waterPathPractice.rows.riserSpeed.value },
      levers: boreUp(plan),
    }),
  ],
}

const loose: Check<Tubes> = {
  id: 'hydraulics/loose-branches',
  at: 'riser/branches',
  source: 'TreeNetwork',
  applies: (plan) => (plan.riser?.branches?.length ?? 0) > 0,
  judged: (tubes, _plan, terms) => [
    judge('hydraulics/loose-branches', quantity(tubes.loose.length, 'count'), {
      ...terms,
      must: { max: 0 },
      slots: { which: tubes.loose.join(', ') },
    }),
  ],
}

const siphon: Check<LiftFacts> = {
  id: 'hydraulics/siphon',
  at: 'riser/airBreak',
  source: 'Hydrostatics',
  judged: ({ lowestOverFill_m }, plan, terms) => {
    if (lowestOverFill_m === null) return [unknown('hydraulics/siphon', { ...terms, needs: ['reservoir/fillLine'] })]
    // With air let in at the top, an end under water cannot pull.
    const broken = plan.riser?.airBreak === 'yes'
    return [
      judge('hydraulics/siphon', quantity(lowestOverFill_m, 'm'), {
        ...terms,
        must: broken ? {} : { min: 0 },
        want: broken ? {} : { min: waterPathPractice.rows.airBreak.value },
        levers: [among('riser/airBreak', ['yes'])],
      }),
    ]
  },
}

export function pumpChecks(plan: Plan, h: HydraulicsFacts): readonly Finding[] {
  let found: readonly Lever[] | null = null
  const cures = () => {
    found ??= [...strongerPump(plan, h), ...fewerColumns(plan), ...lowerColumn(plan)]
    return found
  }
  const withCures: Known<Cures> = { known: { cures } }
  const lifted: Known<Lifted> = both(both(h.lift, h.pump), withCures)
  return [
    ...testChecks(plan, h),
    ...checked([lifts, staticShare], lifted, plan),
    ...checked([columnFlow, starved, spread, speed], both(h.flow, withCures), plan),
    ...checked([loose], h.tubes, plan),
    ...checked([siphon, hoseReaches], h.lift, plan),
  ]
}
