import type { PlanDocument } from '../../../plan/plan.ts'
import type { SolidAnswer } from '../workers/solids.ts'
import { made } from './made.ts'

/** The tower's meshes, made in a worker of its own; `cancel` ends it at once. */
export const solidMade = (plan: PlanDocument) => made<PlanDocument, SolidAnswer>('assets/solids.js', plan)
