import { evaluate } from '../../../evaluate.ts'
import { parsePlan } from '../../../plan/document.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import type { Evaluated } from './protocol.ts'

/** A document with everything that the page needs of it; the worker sends exactly this. */
export function evaluated(document: PlanDocument): Evaluated {
  const { plan, issues } = parsePlan(document)
  return { ...evaluate(plan), document, plan, issues }
}
