/** rootfall as a library: a plan document in, an evaluation out. */
export { type Evaluation, evaluate, evaluateDocument, type ProvedEvaluation } from './evaluate.ts'
export type { Band, Finding, Lever, Remedy, Verdict } from './findings/finding.ts'
export type { Quantity, Unit } from './kernel/units.ts'
export { parsePlan, planText, type ReadPlan, readPlanText } from './plan/document.ts'
export type { Issue } from './plan/issue.ts'
export { valueAt, withValue } from './plan/patch.ts'
export type { Plan, PlanDocument } from './plan/plan.ts'
export { planSchema } from './plan/schema.ts'
