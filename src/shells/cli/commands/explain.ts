import { evaluateDocument } from '../../../evaluate.ts'
import type { Finding } from '../../../findings/finding.ts'
import { nearestWords } from '../../../kernel/nearest.ts'
import type { Plan } from '../../../plan/plan.ts'
import type { Display } from '../../../render/display.ts'
import { decidesText } from '../../../render/tables/sensitivity.ts'
import { findingText, placeName } from '../../../render/words/sentences.ts'
import { resultOfFinding } from '../../../sensitivity/results.ts'
import { sensitivity } from '../../../sensitivity/swings.ts'
import { sources } from '../../../tables/sources.ts'
import { displayOf } from '../display.ts'
import { EXIT, isStop, json, out, stop } from '../io.ts'
import { language } from '../language.ts'
import type { CommandOf } from '../main.ts'
import { planFile } from '../plan-file.ts'

/** Of a finding that holds in part of its band: which reading decides; empty for any other. */
function decides(finding: Finding, plan: Plan, display: Display): string {
  const id = finding.holds === 'part' ? resultOfFinding(finding.id) : null
  const result = id === null ? undefined : sensitivity(plan, { only: [id] }).results[0]
  return result === undefined ? '' : decidesText(result, language().words, display)
}

export const explain: CommandOf = {
  name: 'explain',
  summary: 'why a finding says what it says: number, limit, reason, source, remedies',
  describe: (c) =>
    c
      .argument('<plan>', 'plan file, or - for standard input')
      .argument('<finding>', 'id of a finding, such as templates/ring-web'),
  run: ([path, id], options) => {
    const read = planFile(path!)
    if (isStop(read)) return read
    const { findings } = evaluateDocument(read.document)
    const found = findings.filter((f) => f.id === id || f.id.endsWith(`/${id}`))
    if (found.length === 0) {
      const near = nearestWords(id!, [...new Set(findings.map((f) => f.id))])
      const hint =
        near.length > 0 ? `Did you mean ${near.join(' or ')}?` : `\`rootfall check ${path} --all\` lists them.`
      return stop(`There is no finding “${id}” in this plan. ${hint}`, EXIT.usage)
    }
    const display = displayOf(read.plan)
    if (options['json']) {
      json(found.map((f) => ({ ...f, source: { id: f.source, ...sources[f.source] } })))
      return EXIT.holds
    }
    for (const f of found) {
      const text = findingText(f, language().words, display)
      const source = sources[f.source]
      out(`${f.id}: ${text.short} (${f.verdict})`)
      out(`  ${text.sentence}`)
      out(`  Why:    ${text.because}`)
      out(`  Where:  ${placeName(f.at, language().words)} (${f.at})`)
      out(
        `  Source: ${source.cite}${source.where === '' ? '' : `; ${source.where}`}${source.read === null ? ' (not yet read in print)' : ''}`,
      )
      out(`  Page:   docs/checks/${f.id.replace('/', '-')}.md`)
      const deciding = decides(f, read.plan, display)
      if (deciding !== '') out(`  ${deciding}`)
      for (const r of text.remedies) out(`  → ${r}`)
    }
    return EXIT.holds
  },
}
