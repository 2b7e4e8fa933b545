import { pipes } from '../tables/pipes.ts'
import type { Plan } from './plan.ts'

/**
 * The measures in which the maker thinks: those of the tape, or, while none is named, those in which the pipe's
 * standard is printed. Tools, packs and marks are offered in them.
 */
export function measuresOf(plan: Plan): 'mm' | 'in' {
  const tape = plan.tools?.tape
  if (tape !== undefined) return tape === '1 mm' ? 'mm' : 'in'
  const row = plan.column?.pipe?.row ?? null
  return row !== null && pipes.rows[row].standard.startsWith('ASTM') ? 'in' : 'mm'
}
