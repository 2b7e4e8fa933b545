import { root } from '../../kernel/solve.ts'
import type { Plan } from '../../plan/plan.ts'
import { bodies } from '../../tables/heat.ts'
import { heatPractice, rootZone } from '../../tables/heat-day.ts'
import type { SolutionDay } from './day.ts'
import { solutionCourse } from './equations-day.ts'
import { iceNeeded } from './equations-tank.ts'

/** Ice that the plan puts into the tank on a hot day, and how much is too much. */
export interface IceFacts {
  readonly mass_kg: number
  /** Hours at which it goes in, in equal shares. */
  readonly at_s: readonly number[]
  /** Water that it goes into: the tank at its low line. */
  readonly water_m3: number
  /** Warmest hour without any ice, and when that is. */
  readonly without_C: number
  readonly warmestAt_s: number
  /** Coldest that the water gets as the ice of the plan goes in. */
  readonly chilled_C: number
  /** Ice a day, put in at the plan's hours, that takes the water down to what roots want, and to what they bear, and no further. */
  readonly wanted_kg: number
  readonly bearable_kg: number
  readonly outweighs: boolean
}

const DAY_s = 86_400
/** Ice is weighed by the bottle: closer than this no limit need be known. */
const WITHIN_kg = 0.02

/** Null where the plan puts in none. The day is reckoned anew for each mass: the hours decide what it does. */
export function iceFacts(plan: Plan, low: SolutionDay): IceFacts | null {
  const { mass_kg = 0, at = [] } = plan.reservoir?.ice ?? {}
  if (!(mass_kg > 0)) return null
  const { volume_m3 } = low
  const { bottlesAt, freezer } = heatPractice.rows
  const at_s = at.length > 0 ? at : [bottlesAt.value]
  const iced = (ice_kg: number) =>
    solutionCourse({
      ...low,
      ice: at_s.map((s) => ({ at_s: Math.min(s, DAY_s - 1), mass_kg: ice_kg / at_s.length, ice_C: freezer.value })),
    })
  const plain = iced(0)
  /** Coldest end of a step in which ice went in. */
  const chill = (ice_kg: number) => {
    const { temperature_C, step_s } = iced(ice_kg)
    return Math.min(...at_s.map((s) => temperature_C[Math.floor(Math.min(s, DAY_s - 1) / step_s) + 1]!))
  }
  // As much at every hour as would freeze the warmest hour: whatever the hours, that is too much.
  const start_C = Math.max(0, plain.highest_C)
  const most_kg = at_s.length * iceNeeded({ volume_m3, start_C, wanted_C: 0, ice_C: freezer.value })
  const water_kg = volume_m3 * bodies.rows.water.density_kg_m3
  const to = (limit_C: number) => {
    if (chill(0) <= limit_C) return 0
    // A puddle in the sun has warmed again by the end of the step: no mass that can melt is too much for it.
    if (chill(most_kg) >= limit_C) return water_kg
    return root({ of: (ice_kg) => chill(ice_kg) - limit_C, low: 0, high: most_kg, within: WITHIN_kg })
  }
  return {
    mass_kg,
    at_s,
    water_m3: volume_m3,
    without_C: plain.highest_C,
    warmestAt_s: plain.highestAt_s,
    chilled_C: chill(Math.min(mass_kg, most_kg)),
    wanted_kg: Math.min(water_kg, to(rootZone.rows.wanted.low_C)),
    bearable_kg: Math.min(water_kg, to(rootZone.rows.bearable.low_C)),
    outweighs: mass_kg > water_kg,
  }
}
