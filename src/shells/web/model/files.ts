import { planText, readPlanText } from '../../../plan/document.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import { issueText } from '../../../render/words/sentences.ts'
import { words } from '../language.ts'
import { freshId } from './plans.ts'

/** A file made on this page and handed to the browser to keep. */
export function download(name: string, content: string | Uint8Array<ArrayBuffer>, type: string): void {
  const url = URL.createObjectURL(new Blob([content], { type }))
  const link = document.createElement('a')
  link.href = url
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(url), 10_000)
}

export const downloadPlan = (plan: PlanDocument): void =>
  download(`${freshId(String(plan['name'] ?? ''), [])}.plan.json`, planText(plan), 'application/json')

/** A plan from its text, or the sentence that says why it is none. */
export function planFrom(text: string): { readonly document: PlanDocument } | { readonly why: string } {
  const { document, issues } = readPlanText(text)
  const refused = Object.keys(document).length === 0 || issues.some((i) => i.problem.startsWith('version'))
  return refused ? { why: issues.map((i) => issueText(i, words())).join(' ') } : { document }
}
