import { parsePlan } from '../../../plan/document.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import type { ResultId } from '../../../sensitivity/results.ts'
import { type Progress, type Sensitivity, sensitivitySteps } from '../../../sensitivity/swings.ts'

export interface SensitivityAsk {
  readonly document: PlanDocument
  /** Only these results; all where absent. */
  readonly only?: readonly ResultId[]
}

export type SensitivityAnswer =
  | ({ readonly kind: 'progress' } & Progress)
  | { readonly kind: 'found'; readonly sensitivity: Sensitivity }
  | { readonly kind: 'failed'; readonly message: string }

const say = (answer: SensitivityAnswer): void => self.postMessage(answer)

/** Goes from reading to reading and tells how far it has come; whoever asked ends the worker to cancel. */
self.onmessage = ({ data: { document, only } }: MessageEvent<SensitivityAsk>): void => {
  try {
    const steps = sensitivitySteps(parsePlan(document).plan, only === undefined ? {} : { only })
    let step = steps.next()
    for (; !step.done; step = steps.next()) say({ kind: 'progress', ...step.value })
    say({ kind: 'found', sensitivity: step.value })
  } catch (error) {
    say({ kind: 'failed', message: error instanceof Error ? error.message : String(error) })
  }
}
