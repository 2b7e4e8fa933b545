import type { Lever } from '../../findings/finding.ts'
import { along, among } from '../../findings/levers.ts'
import { band, type Quantity, quantity, type Unit } from '../../kernel/units.ts'
import type { Plan } from '../../plan/plan.ts'
import { plateDrills } from './distributor-facts.ts'
import type { Range } from './range.ts'

/** A range as a quantity; a plain number where both ends meet. */
export const ofRange = (r: Range, unit: Unit): Quantity =>
  r.low === r.high ? quantity(r.low, unit) : band(r.low, r.high, unit)

const STEP_m = 0.001
/** How far a measure may be turned before it is another design. */
const STRETCH = 2.5

export const pumpHeadUp = (plan: Plan): readonly Lever[] => {
  const head_m = plan.pump?.maxHead_m
  return head_m === undefined ? [] : [along('pump/maxHead', STRETCH * head_m, 'm', 0.1)]
}

export const boreUp = (plan: Plan): readonly Lever[] => {
  const bore_m = plan.riser?.bore_m
  return bore_m === undefined ? [] : [along('riser/bore', STRETCH * bore_m, 'm', STEP_m)]
}

/** A valve half closed and more, on the bore of the riser. */
export const throttle: Lever = among('riser/valveLosses', [5, 10, 20, 40, 80, 160, 320])

/** Drills of the maker's system, the nearest to the present one first. */
export function otherDrills(plan: Plan, wanted: 'larger' | 'smaller'): readonly Lever[] {
  const hole_m = plan.distributor?.hole_m
  if (hole_m === undefined) return []
  const list = plateDrills(plan)
    .filter((d) => (wanted === 'larger' ? d.diameter_m > hole_m + 1e-6 : d.diameter_m < hole_m - 1e-6))
    .sort((a, b) => Math.abs(a.diameter_m - hole_m) - Math.abs(b.diameter_m - hole_m))
  return list.length === 0
    ? []
    : [
        among(
          'distributor/hole',
          list.map((d) => d.label),
        ),
      ]
}

const MORE_HOLES = [2, 4, 6, 8, 12, 16, 24] as const

export function holes(plan: Plan, wanted: 'more' | 'fewer'): readonly Lever[] {
  const now = plan.distributor?.holes
  if (now === undefined) return []
  const list = MORE_HOLES.map((n) => (wanted === 'more' ? now + n : now - n)).filter((n) => n >= 1)
  return list.length === 0 ? [] : [among('distributor/holes', list)]
}

export const deeper = (plan: Plan): readonly Lever[] => {
  const depth_m = plan.distributor?.depth_m
  return depth_m === undefined ? [] : [along('distributor/depth', STRETCH * depth_m, 'm', STEP_m)]
}

export const footHoles = (plan: Plan): readonly Lever[] => {
  const now = plan.drain?.holes
  return now === undefined
    ? []
    : [
        among(
          'drain/holes',
          MORE_HOLES.map((n) => now + n),
        ),
      ]
}
