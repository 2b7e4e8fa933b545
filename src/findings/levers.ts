import type { Unit } from '../kernel/units.ts'
import type { Lever } from './finding.ts'

/** A quantity of the plan that can be turned towards `to`, in steps of `step`. */
export const along = (set: string, to: number, unit: Unit, step: number): Lever => ({ set, along: { to, unit, step } })

/** Values to try, in the order in which a grower would. */
export const among = (set: string, values: readonly (string | number | boolean)[]): Lever => ({ set, among: values })
