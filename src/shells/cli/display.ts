import type { Plan } from '../../plan/plan.ts'
import { type Display, metric } from '../../render/display.ts'
import { language } from './language.ts'

/** How numbers are shown to the owner of this plan: by the tape they own. */
export function displayOf(plan: Plan): Display {
  const tape = plan.tools?.tape
  const lengths = tape === '1/16 in' || tape === '1/32 in' ? 'in' : 'mm'
  const { decimal, units } = language().words
  return {
    ...metric,
    decimal,
    units,
    lengths,
    inchParts: tape === '1/32 in' ? 32 : 16,
    currency: plan.prices?.currency ?? '',
  }
}
