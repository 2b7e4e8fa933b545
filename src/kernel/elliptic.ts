/** Steps of the arithmetic-geometric mean; it doubles the right digits each step, so six are enough for a double. */
const STEP_LIMIT = 12

/** The complete elliptic integrals of one modulus. */
export interface CompleteElliptic {
  /** K, of the first kind; infinite at modulus 1. */
  readonly first: number
  /** E, of the second kind. */
  readonly second: number
  /** (1 - k²) K, which stays finite: 0 at modulus 1. */
  readonly firstReduced: number
}

/**
 * Complete elliptic integrals K(k) and E(k) by the arithmetic-geometric mean (Abramowitz & Stegun 1972, 17.6).
 * The argument is the modulus k, not the parameter m = k².
 *
 * Throws RangeError where the modulus is not in [0, 1].
 */
export function completeElliptic(modulus: number): CompleteElliptic {
  if (!(modulus >= 0 && modulus <= 1)) throw new RangeError(`completeElliptic: modulus ${modulus} is not in [0, 1]`)
  if (modulus === 1) return { first: Number.POSITIVE_INFINITY, second: 1, firstReduced: 0 }
  const complement = (1 - modulus) * (1 + modulus)
  let a = 1
  let b = Math.sqrt(complement)
  let c = modulus
  let sum = (c * c) / 2
  let power = 0.5
  for (let step = 0; step < STEP_LIMIT && Math.abs(c) > 1e-17; step++) {
    const mean = (a + b) / 2
    c = (a - b) / 2
    b = Math.sqrt(a * b)
    a = mean
    power *= 2
    sum += power * c * c
  }
  const first = Math.PI / (2 * a)
  return { first, second: first * (1 - sum), firstReduced: complement * first }
}
