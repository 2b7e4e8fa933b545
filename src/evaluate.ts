import type { Finding } from './findings/finding.ts'
import { withRemedies } from './findings/prove.ts'
import { parsePlan } from './plan/document.ts'
import type { Issue } from './plan/issue.ts'
import type { Plan, PlanDocument } from './plan/plan.ts'

/** Everything that is known of a plan: facts by discipline, and the findings, worst first. */
export interface Evaluation {
  readonly facts: Record<string, never>
  readonly findings: readonly Finding[]
}

/** The whole job, in the order in which one discipline needs another. */
export function evaluate(_plan: Plan): Evaluation {
  return { facts: {}, findings: [] }
}

/** An evaluation of a document with every remedy proved by evaluating the changed document. */
export interface ProvedEvaluation extends Evaluation {
  readonly issues: readonly Issue[]
}

export function evaluateDocument(
  document: PlanDocument,
  options: { readonly remedies: boolean } = { remedies: true },
): ProvedEvaluation {
  const { plan, issues } = parsePlan(document)
  const evaluation = evaluate(plan)
  if (!options.remedies) return { ...evaluation, issues }
  const judge = (changed: PlanDocument) => evaluate(parsePlan(changed).plan).findings
  return { ...evaluation, findings: withRemedies(document, judge), issues }
}
