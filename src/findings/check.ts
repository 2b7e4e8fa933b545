import type { Known } from '../plan/known.ts'
import type { Plan } from '../plan/plan.ts'
import type { SourceId } from '../tables/sources.ts'
import type { Finding } from './finding.ts'
import { unknown } from './judge.ts'

/** One question put to the facts of a plan. What it rests on is stated once, so that it can also be asked in vain. */
export interface Check<F> {
  readonly id: Finding['id']
  readonly at: string
  readonly source: SourceId
  /** Cannot be put aside, whether it can be judged or not. */
  readonly safety?: boolean
  /** Whether the question makes sense for this plan; always, where absent. */
  readonly applies?: (plan: Plan) => boolean
  /** The findings; none where there turns out to be nothing to judge. */
  readonly judged: (facts: F, plan: Plan, terms: Pick<Check<F>, 'at' | 'source' | 'safety'>) => readonly Finding[]
}

/** Asks every question that applies; each is `unknown` where the facts are. */
export const checked = <F>(checks: readonly Check<F>[], facts: Known<F>, plan: Plan): readonly Finding[] =>
  checks
    .filter((c) => c.applies?.(plan) ?? true)
    .flatMap((c) => {
      const terms = { at: c.at, source: c.source, safety: c.safety ?? false }
      return 'known' in facts
        ? c.judged(facts.known, plan, terms)
        : [unknown(c.id, { ...terms, needs: [...new Set(facts.needs)] })]
    })

/** Two sets of facts as one; what either lacks where one is not known. */
export function both<A, B>(a: Known<A>, b: Known<B>): Known<A & B> {
  if ('known' in a && 'known' in b) return { known: { ...a.known, ...b.known } }
  return { needs: [...('needs' in a ? a.needs : []), ...('needs' in b ? b.needs : [])] }
}
