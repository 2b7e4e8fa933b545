/** Steps after which a bracket of any two doubles has long been closed. */
const STEP_LIMIT = 200

/**
 * The place between `low` and `high` where a continuous function is zero; the ends must have opposite signs.
 * Keeps a bracket, steps by the secant (Illinois rule) and by halves where the secant stalls.
 *
 * Throws RangeError where the ends do not bracket a zero: the caller must know that one exists.
 */
export function root(given: {
  readonly of: (x: number) => number
  readonly low: number
  readonly high: number
  /** Width of the bracket at which to stop; by default the rounding of floating point. */
  readonly within?: number
}): number {
  const { of: f, within = 0 } = given
  let [a, b] = [given.low, given.high]
  let [fa, fb] = [f(a), f(b)]
  if (fa === 0) return a
  if (fb === 0) return b
  if (!(fa * fb < 0)) throw new RangeError(`root: f(${a}) = ${fa} and f(${b}) = ${fb} do not bracket a zero`)
  for (let step = 0; step < STEP_LIMIT; step++) {
    const secant = b - (fb * (b - a)) / (fb - fa)
    const inside = secant > Math.min(a, b) && secant < Math.max(a, b)
    const c = step % 3 === 2 || !inside ? (a + b) / 2 : secant
    const fc = f(c)
    if (fc === 0 || c === a || c === b) return c
    if (fc * fb < 0) [a, fa] = [b, fb]
    else fa /= 2
    ;[b, fb] = [c, fc]
    if (Math.abs(b - a) <= within) return b
  }
  return b
}
