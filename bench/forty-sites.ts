import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { withValue } from '../src/plan/patch.ts'
import type { PlanDocument } from '../src/plan/plan.ts'

const balcony = (): PlanDocument =>
  JSON.parse(readFileSync(join(import.meta.dirname, '..', 'examples', 'balcony.plan.json'), 'utf8')) as PlanDocument

/** The balcony's tower on a wider pipe: five sites a ring, forty with the ring that fits in besides. */
export function fortySites(): PlanDocument {
  const five = withValue(withValue(balcony(), 'column/sites/perRing', 5), 'column/sites/turn', '36 deg')
  return withValue(five, 'column/pipe', { outside: '160 mm', wall: '4 mm', plastic: 'PVC-U' })
}
