/** How far a reading of this plan may be off: by the table, unless the plan tells more of its own instrument. */
import { penFacts } from '../disciplines/nutrients/instruments.ts'
import type { Plan } from '../plan/plan.ts'
import { type Reading, readingBands } from '../tables/readings.ts'

/** How far the truth may lie below and above; never negative. */
export interface Off {
  readonly low: number
  readonly high: number
}

const HALF = 1 / 2
const MARKS_m: Readonly<Record<string, number>> = { '1 mm': 0.001, '1/16 in': 0.0254 / 16, '1/32 in': 0.0254 / 32 }

/** What an instrument of the plan adds to its row. */
function own(plan: Plan, reading: Reading): Off {
  const mark_m = MARKS_m[plan.tools?.tape ?? '1 mm'] ?? 0
  const half_m = reading === 'tape' ? HALF * mark_m : 0
  return { low: half_m, high: half_m }
}

/** How far one reading may be off, `factor` times what is usual. */
export function offBy(plan: Plan, given: { reading: Reading; value: number; factor: number }): Off {
  const { reading, value, factor } = given
  const pen = reading === 'phPen' ? penFacts(plan).pH : null
  if (pen !== null) return { low: factor * pen, high: factor * pen }
  const { lowShare, highShare, low, high } = readingBands.rows[reading]
  const more = own(plan, reading)
  return {
    low: factor * (lowShare * Math.abs(value) + low + more.low),
    high: factor * (highShare * Math.abs(value) + high + more.high),
  }
}
