import { readQuantity } from '../../../kernel/quantity-text.ts'
import type { PlanDocument } from '../../../plan/plan.ts'

const INCH_m = 0.0254
/** Fractions by which short lengths go, and those longer than a hand. */
const FINE = 16
const COARSE = 4
const HAND_m = 0.1
/** A fraction of an inch that is further off than this is no longer the measure that was meant. */
const OFF = 0.3

const rounded = (n: number, digits: number): string => String(Number(n.toPrecision(digits)))

function inches(length_m: number): string {
  const fraction = length_m > HAND_m ? COARSE : FINE
  const parts = Math.round((length_m / INCH_m) * fraction)
  if (Math.abs((parts / fraction) * INCH_m - length_m) > OFF * length_m) return `${rounded(length_m / INCH_m, 2)} in`
  const whole = Math.floor(parts / fraction)
  let [top, under] = [parts - whole * fraction, fraction]
  while (top > 0 && top % 2 === 0) [top, under] = [top / 2, under / 2]
  return top === 0 ? `${whole} in` : `${whole === 0 ? '' : `${whole} `}${top}/${under} in`
}

/** What goes with inches, by the unit in which the usual tower is written. */
const beside = [
  [/^[\d.]+ (mm|cm|m)$/, 'm', inches],
  [/^[\d.]+ L$/, 'm3', (v: number) => `${rounded(v / 0.003785411784, 2)} US gal`],
  [/^[\d.]+ L\/min$/, 'm3_s', (v: number) => `${rounded((v * 3600) / 0.003785411784, 2)} US gph`],
  [/^[\d.]+ kg$/, 'kg', (v: number) => `${rounded(v / 0.45359237, 2)} lb`],
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
