import { requirePositive } from '../../kernel/require.ts'

/** A dimension as exact and as a tape shows it. */
export interface TapeMark {
  readonly exact_m: number
  readonly marked_m: number
  /** Marked less exact. */
  readonly error_m: number
}

/**
 * Nearest mark of a tape to a dimension, and the error that makes.
 *
 *   marked = s round(x / s), error = marked - x
 *
 * Symbols  x dimension from the datum [m], s step of the tape, such as 1 mm or 1/16 in [m]
 * Valid    any x; |error| ≤ s / 2
 * Source   Geometry.marks
 * Throws   RangeError where s is not positive
 */
export function tapeMark(given: { readonly exact_m: number; readonly step_m: number }): TapeMark {
  const { exact_m: x, step_m: s } = given
  requirePositive('tapeMark', { s })
  const marked_m = Math.round(x / s) * s
  return { exact_m: x, marked_m, error_m: marked_m - x }
}

/**
 * Running marks from one datum, each rounded from its own exact distance, so that errors never add up.
 *
 *   x = z (from the bottom) or H - z (from the top), in rising order, each by tapeMark
 *
 * Symbols  z heights of the sites over the foot of the column, H length of the column [m]
 * Valid    any heights
 * Source   Geometry.marks
 * Throws   RangeError where the step of the tape or H is not positive
 */
export function runningMarks(given: {
  readonly heights_m: readonly number[]
  readonly length_m: number
  readonly datum: 'bottom' | 'top'
  readonly step_m: number
}): readonly TapeMark[] {
  const { heights_m, length_m: H, datum, step_m } = given
  requirePositive('runningMarks', { H })
  return heights_m
    .map((z) => (datum === 'bottom' ? z : H - z))
    .sort((a, b) => a - b)
    .map((exact_m) => tapeMark({ exact_m, step_m }))
}

/**
 * Marks of lines that stand evenly round a pipe, along its outside from the first line, the last closing on it.
 *
 *   x_i = i 2 π R / k, i = 0 … k, each by tapeMark
 *
 * Symbols  R outside radius of the pipe [m], k lines
 * Valid    k ≥ 1
 * Source   Geometry.marks
 * Throws   RangeError where R, k or the step of the tape is not positive
 */
export function lineMarks(given: {
  readonly radius_m: number
  readonly lines: number
  readonly step_m: number
}): readonly TapeMark[] {
  const { radius_m: R, lines: k, step_m } = given
  requirePositive('lineMarks', { R, k })
  return Array.from({ length: k + 1 }, (_, i) => tapeMark({ exact_m: (i * 2 * Math.PI * R) / k, step_m }))
}

/** Metres in an inch, by definition. */
const INCH_m = 0.0254

/** Whole inches and a fraction in lowest terms. */
export interface InchFraction {
  readonly negative: boolean
  readonly whole: number
  readonly numerator: number
  readonly denominator: number
  /** What is written less exact. */
  readonly error_m: number
}

/**
 * A length in inches and a fraction of the tape's step, in lowest terms.
 *
 *   n = round(x d / 0.0254), whole = floor(n / d), fraction = (n mod d) / d
 *
 * Symbols  x length [m], d parts of an inch on the tape: 16, 32 or 64
 * Valid    d a power of two
 * Source   Geometry.marks
 * Throws   RangeError where d is not a power of two
 */
export function inchFraction(given: { readonly length_m: number; readonly parts: number }): InchFraction {
  const { length_m: x, parts: d } = given
  if (!(Number.isInteger(d) && d >= 1 && Number.isInteger(Math.log2(d))))
    throw new RangeError(`inchFraction: d = ${d} is not a power of two`)
  const n = Math.round((Math.abs(x) * d) / INCH_m)
  let [numerator, denominator] = [n % d, d]
  while (numerator % 2 === 0 && denominator > 1) [numerator, denominator] = [numerator / 2, denominator / 2]
  const written = (n * INCH_m) / d
  const negative = x < 0 && n > 0
  return { negative, whole: Math.floor(n / d), numerator, denominator, error_m: (x < 0 ? -written : written) - x }
}
