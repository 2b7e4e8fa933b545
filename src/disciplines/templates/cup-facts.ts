import { isKnown, type Known, needed } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { type ByLine, cupFeetGap, cupFootNearest, cupReach, cupSeat, cupSlit, mouthToBore } from './equations.ts'
import type { JointFacts } from './joint-facts.ts'

/** How the grower's net cup sits in the stub. */
export interface CupFacts {
  /** Rim over the stub's bore, on the radius. */
  readonly ledge_m: number
  /** Play of the body in the bore, on the radius; negative where the cup must be slit. */
  readonly play_m: number
  readonly overhang_m: number
  readonly overlap_m: number
  readonly slit_m: number
  /** From the mouth to the bore wall. */
  readonly toBore: ByLine
  /** How far the foot stands past the bore wall. */
  readonly reach: ByLine
  /** Edge of the foot nearest to the column's axis. */
  readonly footToAxis_m: number
  /** Between the feet of neighbours on a ring; null for one site a ring or stubs beside the axis. Negative: they meet. */
  readonly feetGap_m: number | null
}

export function cupFacts(plan: Plan, joint: JointFacts): Known<CupFacts> {
  const cup = plan.column?.cup
  const given = needed({
    rim_m: ['column/cup/rim', cup?.rim_m],
    body_m: ['column/cup/body', cup?.body_m],
    depth_m: ['column/cup/depth', cup?.depth_m],
    foot_m: ['column/cup/foot', cup?.foot_m],
  })
  if (!isKnown(given)) return given
  const { rim_m, body_m, depth_m, foot_m } = given.known
  const { stub, axisLength_m } = joint
  const stubBore_m = 2 * (stub.stubRadius_m - stub.stubWall_m)
  const footRadius_m = Math.min(foot_m, stubBore_m) / 2
  const count = plan.column?.sites?.pattern === 'rings' ? (plan.column.sites.perRing ?? 1) : 1
  const foot = { axisLength_m, cupDepth_m: depth_m, footRadius_m, angle_rad: stub.angle_rad }
  return {
    known: {
      ...cupSeat({ rim_m, body_m, stubBore_m, stubOutside_m: 2 * stub.stubRadius_m }),
      ...cupSlit({ body_m, foot_m, depth_m, stubBore_m }),
      toBore: mouthToBore({ stub, axisLength_m, lineRadius_m: stubBore_m / 2 }),
      reach: cupReach({ stub, axisLength_m, cupDepth_m: depth_m, footRadius_m }),
      footToAxis_m: cupFootNearest(foot),
      feetGap_m: count >= 2 && stub.offset_m === 0 ? cupFeetGap({ ...foot, count }) : null,
    },
  }
}
