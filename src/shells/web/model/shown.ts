import type { Plan } from '../../../plan/plan.ts'
import { type Display, metric } from '../../../render/display.ts'
import type { FirstWords } from '../words.ts'

/** How numbers are shown on the page: the language's signs, the person's unit of length, the plan's tape and money. */
export const displayFor = (
  { decimal, units }: Pick<FirstWords, 'decimal' | 'units'>,
  lengths: Display['lengths'],
  plan: Plan | null,
): Display => ({
  ...metric,
  decimal,
  units,
  lengths,
  inchParts: plan?.tools?.tape === '1/32 in' ? 32 : 16,
  currency: plan?.prices?.currency ?? '',
})
