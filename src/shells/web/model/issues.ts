import type { Issue } from '../../../plan/issue.ts'
import type { Display } from '../../../render/display.ts'
import { issueText } from '../../../render/words/sentences.ts'
import { words } from '../language.ts'

/** What is wrong with an entry, in words; examples in the measures of the person. */
export const issueSentences = (issues: readonly Issue[], display?: Display): string =>
  issues.map((i) => issueText(i, words(), display)).join(' ')
