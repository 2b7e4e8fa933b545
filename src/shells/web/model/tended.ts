import type { Finding } from '../../../findings/finding.ts'
import type { Told } from '../workers/protocol.ts'

/** Findings that speak of a running tower: the only list of them. */
const CARE: ReadonlySet<string> = new Set([
  'reservoir/days',
  'reservoir/pump-covered',
  'hydraulics/power-cut',
  'hydraulics/timer-off',
  'hydraulics/timer-on',
  'hydraulics/bucket-test',
  'nutrients/dump-day',
  'nutrients/pen',
  'nutrients/tank-solids',
  'water/hot',
  'water/cold',
  'water/oxygen',
])

export const cared = (f: Finding): boolean => CARE.has(f.id) && f.measured !== null

/** What of the third act this plan can fill; an act without anything is left out. */
export const tended = ({ facts, findings, plan, whole }: Told) => ({
  care: findings.some(cared),
  bucket: plan.pump !== undefined,
  today: whole && facts.conductivity_S_m !== null && facts.alkalinity_eq_m3 !== null,
})

/** Sections of the plan that a batch is made of: what of them today's correction still wants. */
const OF_BATCH = ['water/', 'feed/targets', 'feed/shelf', 'feed/batch', 'reservoir/'] as const

export function untold({ facts, findings, whole }: Told): readonly string[] {
  if (!whole || (facts.conductivity_S_m !== null && facts.alkalinity_eq_m3 !== null)) return []
  const needs = findings.filter((f) => f.id.startsWith('nutrients/')).flatMap((f) => f.needs)
  return [...new Set(needs)].filter((path) => OF_BATCH.some((section) => path.startsWith(section)))
}
