import type { Band } from '../../findings/finding.ts'
import type { Unit } from '../../kernel/units.ts'
import { type ActId, labour } from '../../tables/labour.ts'
import type { Situation } from './situation.ts'
import type { WaitFor } from './waits.ts'

export type StepId = ActId

export interface Need {
  readonly step: StepId
  readonly wait_s: number
  readonly waitFor: WaitFor | null
}

/** A test between stages: what is measured and what must hold before work goes on. */
export interface StepTest {
  readonly id: string
  readonly unit: Unit
  readonly must: Band
}

export interface Step {
  readonly id: StepId
  readonly needs: readonly Need[]
  /** How many pieces, sites, columns or tanks the step handles. */
  readonly count: number
  readonly of: string
  /** Time in the hands. */
  readonly hands_s: number
  /** Time for which the builder stays and watches. */
  readonly stay_s: number
  /** Time that passes by itself before the step is done. */
  readonly away_s: number
  /** Keys of the acts, one a line. */
  readonly actions: readonly string[]
  /** Keys of the cautions that belong to these acts. */
  readonly cautions: readonly string[]
  readonly test: StepTest | null
  readonly tools: readonly string[]
  /** Ids of parts. */
  readonly parts: readonly string[]
  /** The sheet of paper that shows it. */
  readonly sheet: string | null
}

/** What a step is beside its id; all else is empty. */
export interface StepTerms {
  readonly after: readonly (StepId | Need)[]
  readonly actions: readonly string[]
  readonly cautions?: readonly string[]
  readonly test?: StepTest
  readonly tools?: readonly string[]
  readonly parts?: readonly string[]
  readonly sheet?: string
  readonly stay_s?: number
  readonly away_s?: number
}

function countOf(s: Situation, of: string): number {
  switch (of) {
    case 'site':
      return s.sites
    case 'line':
      return s.linesInAll
    case 'column':
      return s.columns
    case 'tank':
      return s.tanks
    default:
      return 1
  }
}

/** A step with its hands-on time by the number of things it handles. */
export function step(s: Situation, id: StepId, terms: StepTerms): Step {
  const { once_s, each_s, of } = labour.rows[id]
  const count = countOf(s, of)
  return {
    id,
    needs: terms.after.map((n) => (typeof n === 'string' ? { step: n, wait_s: 0, waitFor: null } : n)),
    count,
    of,
    hands_s: once_s + each_s * count,
    stay_s: terms.stay_s ?? 0,
    away_s: terms.away_s ?? 0,
    actions: terms.actions,
    cautions: terms.cautions ?? [],
    test: terms.test ?? null,
    tools: terms.tools ?? [],
    parts: terms.parts ?? [],
    sheet: terms.sheet ?? null,
  }
}
