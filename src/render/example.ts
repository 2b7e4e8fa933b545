import { readQuantity } from '../kernel/quantity-text.ts'
import { quantity, type Unit } from '../kernel/units.ts'
import { type Display, inchFraction, shownText } from './display.ts'

/** Units that inch people measure otherwise, in the order in which an example is tried against them. */
const OTHERWISE: readonly Unit[] = ['m', 'm3', 'm3_s', 'kg', 'N', 'C', 'm_s', 'm2', 'kg_m2']

const INCH_m = 0.0254
const FOOT_m = 0.3048

/** Round, as an example of how to write should be: sixteenths, from a hand on whole inches, from two yards on feet. */
function lengthText(length_m: number): string {
  if (length_m >= 6 * FOOT_m) return `${Math.round(length_m / FOOT_m)} ft`
  return `${length_m >= 4 * INCH_m ? Math.round(length_m / INCH_m) : inchFraction(length_m, 16).text} in`
}

/** An example of a field in the measures of the person: `2.5 m` is `8 ft` where inches are meant. */
export function exampleText(example: string, display: Display | undefined): string {
  if (display?.lengths !== 'in' || /(in|ft|gal|gph|lb|lbf|°F|mph)$/.test(example)) return example
  for (const unit of OTHERWISE) {
    const read = readQuantity(example, unit)
    if (read.ok) return unit === 'm' ? lengthText(read.value) : shownText(quantity(read.value, unit), display)
  }
  return example
}
