import { type Check, checked } from '../../findings/check.ts'
import type { Finding, FindingSlot } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { along } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import type { Plan } from '../../plan/plan.ts'
import type { HydraulicsFacts, StopFacts } from './index.ts'
import { ofRange } from './levers.ts'

const MINUTE_s = 60

/** The age from which plants are dry before a stop ends, in the hottest air of the place. */
function driesFrom({ hottest }: StopFacts, stop_s: number): FindingSlot {
  const first = hottest.find((h) => h.dry_s.low < stop_s)
  return first === undefined
    ? { phrase: 'dries-never' }
    : { phrase: 'dries-from', with: { week: first.week, dry: quantity(first.dry_s.low, 's') } }
}

const pause: Check<StopFacts> = {
  id: 'hydraulics/timer-off',
  at: 'pump/timerOff',
  source: 'common-practice',
  applies: (plan) => (plan.pump?.timerOff_s ?? 0) > 0,
  judged: (stop, plan, terms) => {
    const { pause_s, worst } = stop
    const off_s = plan.pump?.timerOff_s ?? 0
    return [
      judge('hydraulics/timer-off', quantity(off_s, 's'), {
        ...terms,
        must: { max: pause_s.high },
        want: { max: pause_s.low },
        slots: { dry: ofRange(worst.dry_s, 's'), air: quantity(worst.air_C, 'C'), from: driesFrom(stop, off_s) },
        levers: [along('pump/timerOff', MINUTE_s, 's', MINUTE_s)],
      }),
    ]
  },
}

const run: Check<StopFacts> = {
  id: 'hydraulics/timer-on',
  at: 'pump/timerOn',
  source: 'Hydrostatics',
  applies: (plan) => (plan.pump?.timerOff_s ?? 0) > 0,
  judged: ({ run_s }, plan, terms) => {
    const on_s = plan.pump?.timerOn_s
    if (on_s === undefined || run_s === null)
      return [unknown('hydraulics/timer-on', { ...terms, needs: on_s === undefined ? ['pump/timerOn'] : ['riser'] })]
    return [
      judge('hydraulics/timer-on', quantity(on_s, 's'), {
        ...terms,
        must: { min: run_s.low },
        want: { min: run_s.high },
        levers: [along('pump/timerOn', on_s + 30 * MINUTE_s, 's', MINUTE_s)],
      }),
    ]
  },
}

const cut: Check<StopFacts> = {
  id: 'hydraulics/power-cut',
  at: 'pump/powerCut',
  source: 'common-practice',
  applies: (plan) => (plan.pump?.powerCut_s ?? 0) > 0,
  judged: (stop, plan, terms) => {
    const { worst } = stop
    const cut_s = plan.pump?.powerCut_s ?? 0
    // With a battery the plants need not wait; whether it lasts is judged where its charge is.
    const alone = plan.pump?.battery === undefined
    return [
      judge('hydraulics/power-cut', ofRange(worst.dry_s, 's'), {
        ...terms,
        must: alone ? { min: cut_s } : {},
        want: { min: cut_s },
        slots: { cut: quantity(cut_s, 's'), air: quantity(worst.air_C, 'C'), from: driesFrom(stop, cut_s) },
      }),
    ]
  },
}

export const stopChecks = (plan: Plan, h: HydraulicsFacts): readonly Finding[] =>
  checked([pause, run, cut], { known: h.stop }, plan)
