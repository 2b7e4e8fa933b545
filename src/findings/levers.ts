import type { Unit } from '../kernel/units.ts'
import type { Lever, Measure, Typed, Wish } from './finding.ts'

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
export const together = (tries: readonly (readonly [Wish, ...Wish[]])[]): readonly Lever[] =>
  tries.length === 0 ? [] : [{ set: tries[0]![0].set, together: tries }]

/** A measure that is told rounded to steps of its unit, upward: what must be had at least. */
export const atLeast = (value: number, unit: Unit, step: number): Measure => ({ value, unit, step, round: 'up' })

/** The same rounded downward: what may be had at most. */
export const atMost = (value: number, unit: Unit, step: number): Measure => ({ value, unit, step, round: 'down' })
