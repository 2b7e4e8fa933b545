import type { Plan } from '../../plan/plan.ts'
import { waterPathPractice } from '../../tables/water-path.ts'
import { type Water, water } from './equations-water.ts'

/** The solution at its coldest and hottest: it follows the air, but does not freeze and run. */
export interface SolutionWater {
  readonly coldest_C: number
  readonly warmest_C: number
  /** False where the plan names no air, so that the span of the crops stands in. */
  readonly airGiven: boolean
  readonly cold: Water
  readonly warm: Water
}

const LIQUID = { lowest_C: 1, highest_C: 45 } as const
const liquid = (t_C: number): number => Math.min(Math.max(t_C, LIQUID.lowest_C), LIQUID.highest_C)

export function solutionWater(plan: Plan): SolutionWater {
  const { airLow_C, airHigh_C } = plan.place ?? {}
  const { coldestWater, warmestWater } = waterPathPractice.rows
  const ends = [
    airLow_C ?? Math.min(coldestWater.value, airHigh_C ?? coldestWater.value),
    airHigh_C ?? Math.max(warmestWater.value, airLow_C ?? warmestWater.value),
  ]
  const coldest_C = liquid(Math.min(...ends))
  const warmest_C = liquid(Math.max(...ends))
  return {
    coldest_C,
    warmest_C,
    airGiven: airLow_C !== undefined && airHigh_C !== undefined,
    cold: water({ temperature_C: coldest_C }),
    warm: water({ temperature_C: warmest_C }),
  }
}
