import type { Check } from '../../findings/check.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { along } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { waterPathPractice } from '../../tables/water-path.ts'
import type { DistributorFacts } from './index.ts'
import { otherDrills } from './levers.ts'
import { CIRCLE_STEP_m, plateRoom } from './plate-room.ts'

/** The thinnest cup that keeps its shape. */
const THINNEST_m = 0.0005

/** Plate left between the holes and the wall of the cup, or of the column where that is nearer; below nothing, the wall is cut. */
function land(plan: Plan, d: DistributorFacts): Known<number> {
  const room = plateRoom(plan)
  return isKnown(room) ? { known: (room.known - d.circle_m - d.hole_m) / 2 } : room
}

export const holeCircle: Check<DistributorFacts> = {
  id: 'hydraulics/hole-circle',
  at: 'distributor/circle',
  source: 'derived.hole-circle',
  applies: (plan) => plan.distributor?.kind === 'cup',
  judged: (d, plan, terms) => {
    const left = land(plan, d)
    if (!isKnown(left)) return [unknown('hydraulics/hole-circle', { ...terms, needs: left.needs })]
    const wanted_m = waterPathPractice.rows.holeLand.value
    const most_m = d.circle_m + 2 * (left.known - wanted_m)
    const thinner_m = (plan.distributor?.thickness_m ?? 0) + left.known - wanted_m
    return [
      judge('hydraulics/hole-circle', quantity(left.known, 'm'), {
        ...terms,
        must: { min: 0 },
        want: { min: wanted_m },
        slots: { circle: quantity(d.circle_m, 'm'), most: quantity(Math.max(0, most_m), 'm') },
        levers: [
          ...(most_m > CIRCLE_STEP_m
            ? [
                along(
                  'distributor/circle',
                  Math.floor(most_m / CIRCLE_STEP_m + 1e-6) * CIRCLE_STEP_m,
                  'm',
                  CIRCLE_STEP_m,
                ),
              ]
            : []),
          ...(thinner_m >= THINNEST_m ? [along('distributor/thickness', THINNEST_m, 'm', THINNEST_m)] : []),
          ...otherDrills(plan, 'smaller'),
        ],
      }),
    ]
  },
}
