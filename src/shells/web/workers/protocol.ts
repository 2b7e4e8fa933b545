import type { Evaluation, Facts } from '../../../evaluate.ts'
import type { Finding, Remedy } from '../../../findings/finding.ts'
import type { Issue } from '../../../plan/issue.ts'
import type { Plan, PlanDocument } from '../../../plan/plan.ts'
import type { Display } from '../../../render/display.ts'
import type { Draft } from '../model/draft.ts'
import type { AskedViews, Change, Inked, Picture } from '../picture.ts'
import type { TypedReadings } from './typed-readings.ts'

/** What the page asks of a worker; `task` comes back with every answer. */
export type Ask =
  | {
      readonly task: number
      readonly kind: 'evaluate'
      /** Null for the document of the ask before, of which other views are wanted. */
      readonly document: PlanDocument | null
      readonly views: AskedViews | null
    }
  | {
      readonly task: number
      readonly kind: 'correct'
      readonly document: PlanDocument
      readonly typed: TypedReadings
      readonly display: Display
    }
  | {
      readonly task: number
      readonly kind: 'ghost'
      readonly now: PlanDocument
      readonly then: PlanDocument
      readonly views: AskedViews
      readonly change: Change
    }
  | { readonly task: number; readonly kind: 'remedies'; readonly document: PlanDocument; readonly first: string | null }
  | { readonly task: number; readonly kind: 'adjust'; readonly draft: Draft }

export interface Evaluated extends Evaluation {
  readonly document: PlanDocument
  readonly plan: Plan
  readonly issues: readonly Issue[]
  /** False for an answer that lacks the facts of later screens: the engine's own follows. */
  readonly whole: boolean
}

/** Facts that the page itself reads; what only drawings need stays with the worker that draws them. */
export interface PageFacts extends Pick<Facts, 'layout' | 'cuts' | 'build' | 'parts'> {
  /** Packs of the shelf against batch and bottles. */
  readonly packs: Facts['nutrients']['packs']
  /** How far a stub's mouth stands out from the column's middle. */
  readonly mouthReach_m: number | null
  /** Of the water as blended, and of the batch as weighed; null where not known. */
  readonly alkalinity_eq_m3: number | null
  readonly conductivity_S_m: { readonly low: number; readonly high: number } | null
}

/** What the page is told of an evaluation. */
export interface Told extends Omit<Evaluated, 'facts'> {
  readonly facts: PageFacts
}

export type Answer =
  | {
      readonly task: number
      readonly kind: 'evaluated'
      readonly evaluated: Told | null
      readonly pictures: readonly Picture[]
    }
  | { readonly task: number; readonly kind: 'corrected'; readonly lines: readonly string[] }
  | { readonly task: number; readonly kind: 'ghost'; readonly over: Readonly<Record<string, Inked>> }
  | { readonly task: number; readonly kind: 'proved'; readonly key: string; readonly remedies: readonly Remedy[] }
  | { readonly task: number; readonly kind: 'progress'; readonly done: number; readonly of: number }
  | { readonly task: number; readonly kind: 'adjusted'; readonly draft: Draft }
  | { readonly task: number; readonly kind: 'failed'; readonly message: string }

/** A finding's name within one plan. */
export const findingKey = (f: Pick<Finding, 'id' | 'at'>): string => `${f.id} ${f.at}`
