import type { Plan } from '../../plan/plan.ts'
import { type MaterialId, materials } from '../../tables/materials.ts'

/** The plastic of a pipe as its marking says, or null where the plan does not tell. */
export function plasticOf(
  pipe: { readonly plastic: string; readonly foamCore: boolean } | undefined,
): MaterialId | null {
  if (pipe === undefined) return null
  if (pipe.foamCore && pipe.plastic === 'PVC-U') return 'PVC-U-foam-core'
  return Object.hasOwn(materials.rows, pipe.plastic) ? (pipe.plastic as MaterialId) : null
}

/** Plastics of the pipes that the plan names. */
export const plasticsOf = (plan: Plan): readonly (MaterialId | null)[] =>
  [plan.column?.pipe, plan.column?.stub?.pipe].flatMap((pipe) => (pipe === undefined ? [] : [plasticOf(pipe)]))
