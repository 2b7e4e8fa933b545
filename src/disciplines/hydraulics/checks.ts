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
  ...columnChecks(plan, facts, near),
  ...rootChecks(plan, facts),
  ...stopChecks(plan, facts),
]

const WETTING = new Set(['hydraulics/dry-sites', 'hydraulics/drop-sites', 'hydraulics/dry-sites-worst'])

/** Whether a finding is one of the map of wetting, which is judged apart. */
export const isWetting = (id: string): boolean => WETTING.has(id)

/** Judges which sites the water meets. */
export const wettingFindings = (plan: Plan, facts: HydraulicsFacts): readonly Finding[] => wettingChecks(plan, facts)
