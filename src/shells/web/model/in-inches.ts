import { inUnit, readQuantity } from '../../../kernel/quantity-text.ts'
import type { Unit } from '../../../kernel/units.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import { inchFraction } from '../../../render/display.ts'

/** Fractions by which short lengths go, and those longer than a hand. */
const FINE = 16
const COARSE = 4
const HAND_m = 0.1
/** A fraction of an inch that is further off than this is no longer the measure that was meant. */
const OFF = 0.3

const rounded = (n: number, digits: number): string => String(Number(n.toPrecision(digits)))

const about = (value: number, unit: Unit, spelled: string): string =>
  `${rounded(inUnit(value, unit, spelled), 2)} ${spelled}`

function inches(length_m: number): string {
  const { text, error_m } = inchFraction(length_m, length_m > HAND_m ? COARSE : FINE)
  return Math.abs(error_m) > OFF * length_m ? about(length_m, 'm', 'in') : `${text} in`
}

/** What goes with inches, by the unit in which the usual tower is written. */
const beside = [
  [/^[\d.]+ (mm|cm|m)$/, 'm', inches],
  [/^[\d.]+ L$/, 'm3', (v: number) => about(v, 'm3', 'US gal')],
  [/^[\d.]+ L\/min$/, 'm3_s', (v: number) => about(v, 'm3_s', 'US gph')],
  [/^[\d.]+ kg$/, 'kg', (v: number) => about(v, 'kg', 'lb')],
] as const

function spoken(text: string): string {
  for (const [form, unit, told] of beside) {
    const read = form.test(text) ? readQuantity(text, unit) : null
    if (read?.ok) return told(read.value)
  }
  return text
}

const turned = (value: unknown): unknown => {
  if (typeof value === 'string') return spoken(value)
  if (Array.isArray(value)) return value.map(turned)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, turned(v)]))
}

/** The measures of a plan for a tape in inches, rounded to what it shows: quarters, sixteenths below a hand, and hundredths where it is fine. */
export const inInches = (plan: PlanDocument): PlanDocument => turned(plan) as PlanDocument
