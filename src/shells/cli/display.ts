import type { Plan } from '../../plan/plan.ts'
import { measuresOf } from '../../plan/tape.ts'
import { type Display, metric } from '../../render/display.ts'
import { language } from './language.ts'

/** How numbers are shown to the owner of this plan. */
export function displayOf(plan: Plan): Display {
  const tape = plan.tools?.tape
  const { decimal, units } = language().words
  return {
    ...metric,
    decimal,
    units,
    lengths: measuresOf(plan),
    inchParts: tape === '1/32 in' ? 32 : 16,
    currency: plan.prices?.currency ?? '',
  }
}
