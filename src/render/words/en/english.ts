import type { FindingWords, Words } from '../words.ts'
import { layout } from './findings/layout.ts'
import { templates } from './findings/templates.ts'
import { issues } from './issues.ts'
import { phrases } from './phrases.ts'
import { places } from './places.ts'

const findings: Readonly<Record<string, FindingWords>> = { ...layout, ...templates }

export const english: Words = { language: 'en', findings, issues, places, phrases }
