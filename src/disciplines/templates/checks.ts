import type { Finding } from '../../findings/finding.ts'
import type { Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import type { JointRoom, PocketFacts, TemplatesFacts } from './index.ts'

interface Known_ {
  readonly room: Known<JointRoom>
  readonly templates: Known<TemplatesFacts>
  readonly pocket: Known<PocketFacts>
}

export function templatesFindings(_plan: Plan, _facts: Known_): readonly Finding[] {
  return []
}
