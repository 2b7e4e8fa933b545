import { evaluate } from '../../../evaluate.ts'
import { parsePlan } from '../../../plan/document.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import type { Evaluated } from './protocol.ts'

/**
 * A document with everything that the page needs of it; the worker sends exactly this. What the answer `before` knows
 * already and the change does not touch is taken over.
 */
export function evaluated(document: PlanDocument, before: Evaluated | null = null): Evaluated {
  const { plan, issues } = parsePlan(document)
  return { ...evaluate(plan, before === null ? {} : { before }), document, plan, issues, whole: true }
}
