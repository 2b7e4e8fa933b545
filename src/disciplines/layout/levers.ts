import type { Lever } from '../../findings/finding.ts'
import { along, fewer } from '../../findings/levers.ts'
import type { Plan } from '../../plan/plan.ts'

/** Steps that a tape shows. */
export const STEP_m = 0.001

/** How far a remedy may stretch a length before it is another tower. */
const STRETCH = 3

/** Sites further apart along the column. */
export function pitchUp(plan: Plan): Lever[] {
  const s = plan.column?.sites
  if (s?.pattern === 'helix')
    return s.rise_m === undefined ? [] : [along('column/sites/rise', STRETCH * s.rise_m, 'm', STEP_m)]
  return s?.pitch_m === undefined ? [] : [along('column/sites/pitch', STRETCH * s.pitch_m, 'm', STEP_m)]
}

/** Sites closer along the column. */
export function pitchDown(plan: Plan): Lever[] {
  const s = plan.column?.sites
  if (s?.pattern === 'helix')
    return s.rise_m === undefined ? [] : [along('column/sites/rise', s.rise_m / STRETCH, 'm', STEP_m)]
  return s?.pitch_m === undefined ? [] : [along('column/sites/pitch', s.pitch_m / STRETCH, 'm', STEP_m)]
}

/** Fewer sites one above the other. */
export function ringsFewer(plan: Plan): Lever[] {
  const s = plan.column?.sites
  if (s?.pattern === 'helix') return s.count === undefined ? [] : [fewer('column/sites/count', s.count)]
  return s?.rings === undefined ? [] : [fewer('column/sites/rings', s.rings)]
}

/** Fewer sites round the column. */
export function perRingFewer(plan: Plan): Lever[] {
  const s = plan.column?.sites
  return s?.pattern !== 'rings' || s.perRing === undefined ? [] : [fewer('column/sites/perRing', s.perRing)]
}

/** A longer column. */
export const lengthUp = (plan: Plan): Lever[] =>
  plan.column?.length_m === undefined ? [] : [along('column/length', STRETCH * plan.column.length_m, 'm', STEP_m)]
