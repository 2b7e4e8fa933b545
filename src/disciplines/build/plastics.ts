import { plasticOf } from '../../plan/pipe.ts'
import type { Plan } from '../../plan/plan.ts'
import type { MaterialId } from '../../tables/materials.ts'

/** Plastics of the pipes that the plan names; null for one of which it does not tell. */
export const plasticsOf = (plan: Plan): readonly (MaterialId | null)[] =>
  [plan.column?.pipe, plan.column?.stub?.pipe].flatMap((pipe) => (pipe === undefined ? [] : [plasticOf(pipe)]))
