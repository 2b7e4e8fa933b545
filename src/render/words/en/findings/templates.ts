import type { FindingWords } from '../../words.ts'

export const templates: Readonly<Record<string, FindingWords>> = {}
