import type { Plan } from '../../plan/plan.ts'
import { bodies } from '../../tables/heat.ts'
import { heatPractice, rootZone } from '../../tables/heat-day.ts'
import type { SolutionDay } from './day.ts'
import { solutionCourse } from './equations-day.ts'
import { iceNeeded } from './equations-tank.ts'

/** Ice that the plan puts into the tank on a hot day, and how much is too much. */
export interface IceFacts {
  readonly mass_kg: number
  /** Water that it goes into: the tank at its low line. */
  readonly water_m3: number
  /** Warmest hour without any ice. */
  readonly without_C: number
  /** Ice that takes the warmest hour down to what roots want, and to what they bear. */
  readonly wanted_kg: number
  readonly bearable_kg: number
  readonly outweighs: boolean
}

/** Null where the plan puts in none. One more day is reckoned for it: the same without ice. */
export function iceFacts(plan: Plan, low: SolutionDay): IceFacts | null {
  const mass_kg = plan.reservoir?.ice?.mass_kg ?? 0
  if (!(mass_kg > 0)) return null
  const { highest_C: without_C } = solutionCourse({ ...low, ice: [] })
  const { volume_m3 } = low
  const start_C = Math.max(0, without_C)
  const to = (wanted_C: number) =>
    iceNeeded({ volume_m3, start_C, wanted_C: Math.min(start_C, wanted_C), ice_C: heatPractice.rows.freezer.value })
  return {
    mass_kg,
    water_m3: volume_m3,
    without_C,
    wanted_kg: to(rootZone.rows.wanted.low_C),
    bearable_kg: to(rootZone.rows.bearable.low_C),
    outweighs: mass_kg > volume_m3 * bodies.rows.water.density_kg_m3,
  }
}
