import type { Wish } from '../../findings/finding.ts'
import { atMost } from '../../findings/levers.ts'
import type { Plan } from '../../plan/plan.ts'
import type { DistributorChoice } from './distributor-choice.ts'
import { plateDrills } from './distributor-facts.ts'
import { CIRCLE_STEP_m } from './plate-room.ts'

/** Drill, count and circle of suggestions, each to be set hand in hand. */
export const choiceWishes = (
  plan: Plan,
  circle_m: number,
  choices: readonly DistributorChoice[],
): readonly (readonly [Wish, ...Wish[]])[] =>
  choices.flatMap((c) => {
    const drill = plateDrills(plan).find((d) => d.diameter_m === c.hole_m)
    if (drill === undefined) return []
    const moved: Wish = { set: 'distributor/circle', to: atMost(c.circle_m, 'm', CIRCLE_STEP_m) }
    return [
      [
        { set: 'distributor/hole', to: drill.label },
        { set: 'distributor/holes', to: c.count },
        ...(c.circle_m === circle_m ? [] : [moved]),
      ],
    ]
  })
