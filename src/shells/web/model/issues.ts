import type { Issue } from '../../../plan/issue.ts'
import { issueText } from '../../../render/words/sentences.ts'
import { words } from '../language.ts'

/** What is wrong with an entry, in words. */
export const issueSentences = (issues: readonly Issue[]): string => issues.map((i) => issueText(i, words())).join(' ')
