export {
  type Cut,
  type CutIssue,
  type CutJob,
  type CutPlan,
  cutPlan,
  DEFAULT_STEPS,
  type Improve,
  type Improved,
  improvedCutPlan,
  type Mark,
  type Offcut,
  type Pattern,
  type Piece,
  type Placed,
  type Purchase,
  type Stick,
} from './cut-plan.ts'
export { type CutsFacts, cutsFacts, type MaterialCuts, type MaterialKind } from './from-plan.ts'
