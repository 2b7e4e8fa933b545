import { type Display, decimals, inchFraction } from './display.ts'

/** Of a length, the share that a tape's rounding may be off before millimetres are said instead. */
const MOST_OFF = 0.1

/** A length that the marks of an inch tape cannot show, in millimetres; null where they can. */
export function finerThanTape(length_m: number, display: Display): string | null {
  if (display.lengths !== 'in' || length_m === 0) return null
  const { error_m } = inchFraction(length_m, display.inchParts)
  if (Math.abs(error_m) <= MOST_OFF * Math.abs(length_m)) return null
  return `${decimals(length_m * 1000, 1, display.decimal).replace(/[.,]0$/, '')} mm`
}
