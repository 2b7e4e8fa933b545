import { evaluateDocument } from '../../../evaluate.ts'
import type { Finding, Verdict } from '../../../findings/finding.ts'
import { fill } from '../../../render/words/fill.ts'
import { findingText } from '../../../render/words/sentences.ts'
import { displayOf } from '../display.ts'
import { EXIT, isStop, json, out } from '../io.ts'
import { language } from '../language.ts'
import type { CommandOf } from '../main.ts'
import { needsText, planFile } from '../plan-file.ts'

const order: readonly Verdict[] = ['fail', 'watch', 'unknown', 'pass']

/** What is not known yet, by what must be filled in: first the blanks that open the most findings. */
function openLines(findings: readonly Finding[], wide: number): readonly string[] {
  const byNeeds = new Map<string, Finding[]>()
  for (const f of findings.filter((f) => f.verdict === 'unknown')) {
    const needs = f.needs.join(' ')
    byNeeds.set(needs, [...(byNeeds.get(needs) ?? []), f])
  }
  const open = language().words.tables['verdict-unknown']!.padEnd(wide)
  return [...byNeeds.values()]
    .sort((a, b) => b.length - a.length)
    .flatMap((group) => [
      `${open}  ${needsText(group[0]!.needs)}`,
      `${' '.repeat(wide)}  ${[...new Set(group.map((f) => f.id))].join('  ')}`,
    ])
}

export const check: CommandOf = {
  name: 'check',
  summary: 'judge a plan: every finding, worst first, with remedies that were proved',
  describe: (c) =>
    c.argument('<plan>', 'plan file, or - for standard input').option('--all', 'list what holds as well'),
  run: ([path], options) => {
    const read = planFile(path!)
    if (isStop(read)) return read
    const { findings, issues } = evaluateDocument(read.document)
    const sorted = order.flatMap((v) => findings.filter((f) => f.verdict === v))
    const fails = sorted.some((f) => f.verdict === 'fail')
    const code = issues.length > 0 ? EXIT.input : fails ? EXIT.fails : EXIT.holds
    const display = displayOf(read.plan)
    const texts = sorted.map((f) => ({ finding: f, text: findingText(f, language().words, display) }))
    if (options['json']) {
      json({
        issues,
        findings: texts.map(({ finding, text }) => ({ ...finding, ...text, remedies: finding.remedies })),
      })
      return code
    }
    const t = language().words.tables
    const counts = order.map((v) => [v, String(sorted.filter((f) => f.verdict === v).length)] as const)
    out(fill(t['sum-verdicts']!, { plan: read.plan.name ?? path!, ...Object.fromEntries(counts) }))
    const wide = Math.max(...order.map((v) => t[`verdict-${v}`]!.length))
    const hidden: readonly Verdict[] = options['all'] ? [] : ['pass', 'unknown']
    for (const { finding, text } of texts) {
      if (hidden.includes(finding.verdict)) continue
      out(`${t[`verdict-${finding.verdict}`]!.padEnd(wide)}  ${finding.id}  ${text.sentence}`)
      for (const r of text.remedies) out(`         → ${r}`)
    }
    if (!options['all']) for (const line of openLines(findings, wide)) out(line)
    return code
  },
}
