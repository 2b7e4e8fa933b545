import type { Finding } from '../../findings/finding.ts'
import type { Plan } from '../../plan/plan.ts'
import { columnChecks, type Near } from './checks-column.ts'
import { distributorChecks } from './checks-distributor.ts'
import { pumpChecks } from './checks-pump.ts'
import { rootChecks } from './checks-roots.ts'
import { stopChecks } from './checks-stop.ts'
import { wettingChecks } from './checks-wetting.ts'
import type { HydraulicsFacts } from './index.ts'

/** Judges the water's way from the pump to the foot of the column. */
export const hydraulicsFindings = (plan: Plan, facts: HydraulicsFacts, near: Near): readonly Finding[] => [
  ...pumpChecks(plan, facts),
  ...distributorChecks(plan, facts),
  ...wettingChecks(plan, facts),
  ...columnChecks(plan, facts, near),
  ...rootChecks(plan, facts),
  ...stopChecks(plan, facts),
]
