import { readFileSync } from 'node:fs'
import { evaluateDocument } from '../../src/evaluate.ts'
import { parsePlan } from '../../src/plan/document.ts'
import type { PlanDocument } from '../../src/plan/plan.ts'
import type { PaperName } from '../../src/render/paper/size.ts'
import type { SheetInput } from '../../src/render/sheets/context.ts'
import { sheetSet } from '../../src/render/sheets/set.ts'
import { english } from '../../src/render/words/en/english.ts'
import { sheetSentences } from '../../src/render/words/en/sheets.ts'
import { displayOf } from '../../src/shells/cli/display.ts'

export const example = (name: string): PlanDocument =>
  JSON.parse(readFileSync(new URL(`../../examples/${name}.plan.json`, import.meta.url), 'utf8'))

export function inputOf(document: PlanDocument, paper: PaperName, wrap = false): SheetInput {
  const { plan } = parsePlan(document)
  const { facts, findings } = evaluateDocument(document, { remedies: false })
  return {
    plan,
    facts,
    findings,
    words: english,
    sentences: sheetSentences,
    display: displayOf(plan),
    paper,
    date: '2026-11-25',
    wrap,
  }
}

export const setOf = (document: PlanDocument, paper: PaperName, wrap = false) =>
  sheetSet(inputOf(document, paper, wrap))
