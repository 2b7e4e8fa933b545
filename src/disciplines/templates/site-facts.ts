import type { Plan } from '../../plan/plan.ts'
import type { JointFacts } from './joint-facts.ts'

/** A site that was glued at another angle than planned. */
export interface BuiltSite {
  readonly site: number
  /** Place in the list of sites as built. */
  readonly index: number
  readonly angle_rad: number
  /** As built less planned. */
  readonly off_rad: number
  /** How much higher its lip stands than planned; lower is negative. The stub turns about its mark on the outside. */
  readonly lipRise_m: number
}

/** Height of the lip over the mark, for a stub whose axis leaves the outside at the mark. */
function lipOverMark({ stub, axisLength_m }: JointFacts, angle_rad: number): number {
  const { columnRadius_m, offset_m } = stub
  const outside_m = axisLength_m - Math.sqrt(columnRadius_m ** 2 - offset_m ** 2) / Math.sin(stub.angle_rad)
  return outside_m * Math.cos(angle_rad) - (stub.stubRadius_m - stub.stubWall_m) * Math.sin(angle_rad)
}

/** The sites whose angle was measured. */
export const builtSites = (plan: Plan, joint: JointFacts): readonly BuiltSite[] =>
  (plan.measured?.sites ?? []).flatMap(({ site, angle_rad }, index) =>
    site === undefined || angle_rad === undefined
      ? []
      : [
          {
            site,
            index,
            angle_rad,
            off_rad: angle_rad - joint.stub.angle_rad,
            lipRise_m: lipOverMark(joint, angle_rad) - lipOverMark(joint, joint.stub.angle_rad),
          },
        ],
  )
