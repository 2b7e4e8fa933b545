/**
 * What is wrong with a plan document: plain data beside the plan that could be read. Nothing entered is lost; the
 * document keeps the text. Sentences are made in `render/words/issues.ts`.
 */
export interface Issue {
  /** Place in the document: `column/stub/angle`. Empty for the document itself. */
  readonly at: string
  readonly problem: IssueProblem
  /** What was found, as typed, shortened. */
  readonly received: string
  /** What would have been read: units, choices, nearest names, bounds. */
  readonly expected: readonly string[]
}

export type IssueProblem =
  | 'not-json'
  | 'not-an-object'
  | 'too-deep'
  | 'too-large'
  | 'too-long'
  | 'too-many'
  | 'unknown-key'
  | 'wrong-kind'
  | 'no-unit'
  | 'unknown-unit'
  | 'ambiguous-unit'
  | 'which-scale'
  | 'ambiguous-number'
  | 'not-a-number'
  | 'not-whole'
  | 'out-of-bounds'
  | 'not-a-choice'
  | 'not-in-table'
  | 'incomplete'
  | 'none-chosen'
  | 'version-missing'
  | 'version-newer'
  | 'version-unknown'
