import { evaluate } from '../../../evaluate.ts'
import { withRemedies } from '../../../findings/prove.ts'
import { parsePlan } from '../../../plan/document.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import { type Adjusted, adjusted } from '../model/new-plan.ts'
import { findingKey } from './protocol.ts'

export const judged = (document: PlanDocument) => evaluate(parsePlan(document).plan).findings

/** A plan changed until nothing fails that a proved change can cure; only what fails is searched, worst first. */
export function adjustedPlan(document: PlanDocument): Adjusted {
  const proved = (plan: PlanDocument) => {
    const first = judged(plan).filter((f) => f.verdict === 'fail' && f.levers.length > 0)
    for (const target of first) {
      const found = withRemedies(plan, judged, (f) => findingKey(f) === findingKey(target))
      if (found.some((f) => f.remedies.length > 0)) return found
    }
    return first
  }
  return adjusted(document, proved)
}
