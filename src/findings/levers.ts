import type { Unit } from '../kernel/units.ts'
import type { Lever, Setting, Typed } from './finding.ts'

/**
 * A quantity of the plan that can be turned towards `to`, in steps of `step`. `from` is where it stands while the plan
 * leaves it out.
 */
export const along = (set: string, to: number, unit: Unit, step: number, from?: number): Lever => ({
  set,
  along: { to, unit, step, ...(from === undefined ? {} : { from }) },
})

/** Values to try, in the order in which a grower would. */
export const among = (set: string, values: readonly Typed[]): Lever => ({ set, among: values })

/** Counts to try from the next smaller one down to `least`. */
export const fewer = (set: string, now: number, least = 1): Lever =>
  among(
    set,
    Array.from({ length: Math.max(0, now - least) }, (_, i) => now - 1 - i),
  )

/** Settings of several fields to try, in the order in which a grower would; nothing where there are none. */
export const together = (tries: readonly (readonly [Setting, ...Setting[]])[]): readonly Lever[] =>
  tries.length === 0 ? [] : [{ set: tries[0]![0].set, together: tries }]
