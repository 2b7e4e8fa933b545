import type { Finding } from '../../findings/finding.ts'
import type { Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import type { TemplatesFacts } from '../templates/index.ts'
import type { LayoutFacts } from './index.ts'

export function layoutFindings(
  _plan: Plan,
  _layout: Known<LayoutFacts>,
  _templates: TemplatesFacts | null,
): readonly Finding[] {
  return []
}
