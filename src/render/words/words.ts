import type { IssueProblem } from '../../plan/issue.ts'

/**
 * The sentences of one verdict, with slots in braces. Every finding may use {measured}, {must} and {want} (the limit
 * that was missed, or the nearer one) and {at} (the place); further slots are the finding's own.
 */
export interface FindingWords {
  /** At most 27 characters: the line in a list. */
  readonly short: string
  readonly pass: string
  readonly watch: string
  readonly fail: string
  /** Why the limit exists. */
  readonly because: string
}

/** Everything rootfall says, in one language. */
export interface Words {
  readonly language: string
  readonly findings: Readonly<Record<string, FindingWords>>
  readonly issues: Readonly<Record<IssueProblem, string>>
  /** Names of places in the plan, by path; lists without their index. */
  readonly places: Readonly<Record<string, string>>
  readonly phrases: Readonly<Record<string, string>>
}
