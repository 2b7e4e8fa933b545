import type { FindingWords } from '../../words.ts'

export const layout: Readonly<Record<string, FindingWords>> = {}
