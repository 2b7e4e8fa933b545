import { isKnown, type Known, needed } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { waterPathPractice } from '../../tables/water-path.ts'
import { columnPipe } from './film-facts.ts'

/** A circle is set out to the millimetre. */
export const CIRCLE_STEP_m = 0.001

/** Width of a cup's plate that may be drilled: inside its wall, or inside the column where that is narrower. */
export function plateRoom(plan: Plan): Known<number> {
  const { diameter_m, thickness_m } = plan.distributor ?? {}
  const cup = needed({
    diameter_m: ['distributor/diameter', diameter_m],
    thickness_m: ['distributor/thickness', thickness_m],
  })
  if (!isKnown(cup)) return cup
  const inside_m = cup.known.diameter_m - 2 * cup.known.thickness_m
  return { known: Math.min(inside_m, columnPipe(plan)?.bore_m ?? inside_m) }
}

const wholeSteps = (length_m: number): number => Math.floor(length_m / CIRCLE_STEP_m + 1e-6) * CIRCLE_STEP_m

/** Circle for holes of a drill: as it is, or moved in until the drill stays clear of the wall. Of a ring in the wall as it is. */
export function circleFor(plan: Plan, circle_m: number): (hole_m: number) => number {
  const room = plan.distributor?.kind === 'cup' ? plateRoom(plan) : null
  if (room === null || !isKnown(room)) return () => circle_m
  const land_m = waterPathPractice.rows.holeLand.value
  return (hole_m) => {
    const most_m = room.known - hole_m - 2 * land_m
    return most_m >= circle_m - 1e-9 ? circle_m : Math.max(0, wholeSteps(most_m))
  }
}
