import { evaluate, proofOf } from '../../../evaluate.ts'
import { parsePlan } from '../../../plan/document.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import { type Adjusted, adjusted } from '../model/new-plan.ts'

export const judged = (document: PlanDocument) => evaluate(parsePlan(document).plan).findings

/** A plan changed until nothing fails that a proved change can cure; only what fails is searched, worst first. */
export function adjustedPlan(document: PlanDocument): Adjusted {
  const proved = (plan: PlanDocument) => {
    const { findings, curesOf } = proofOf(plan)
    const first = findings.filter((f) => f.verdict === 'fail' && f.levers.length > 0)
    for (const target of first) {
      const remedies = curesOf(target)
      if (remedies.length > 0) return findings.map((f) => (f === target ? { ...f, remedies } : f))
    }
    return first
  }
  return adjusted(document, proved)
}
