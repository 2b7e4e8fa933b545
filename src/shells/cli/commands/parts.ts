import { evaluate } from '../../../evaluate.ts'
import { isKnown } from '../../../plan/known.ts'
import { packsText, packTexts } from '../../../render/tables/packs.ts'
import { partTexts, toolText, totalText } from '../../../render/tables/parts.ts'
import { partsCsv } from '../../../render/tables/parts-csv.ts'
import { textTable } from '../../../render/tables/text.ts'
import { displayOf } from '../display.ts'
import { EXIT, isStop, json, out, say } from '../io.ts'
import { language } from '../language.ts'
import type { CommandOf } from '../main.ts'
import { needsText, planFile } from '../plan-file.ts'

export const parts: CommandOf = {
  name: 'parts',
  summary: 'everything to buy and to have at hand, with what it costs',
  describe: (c) =>
    c.argument('<plan>', 'plan file, or - for standard input').option('--csv', 'one line a part, sizes in millimetres'),
  run: ([path], options) => {
    const read = planFile(path!)
    if (isStop(read)) return read
    const { facts, findings } = evaluate(read.plan)
    const fails = findings.some((f) => f.id.startsWith('parts/') && f.verdict === 'fail')
    const code = read.issues.length > 0 ? EXIT.input : fails ? EXIT.fails : EXIT.holds
    if (options['json']) {
      json({ issues: read.issues, parts: facts.parts })
      return code
    }
    if (!isKnown(facts.parts)) {
      say(needsText(facts.parts.needs))
      return code
    }
    const list = facts.parts.known
    if (options['csv']) {
      out(partsCsv(list, facts.nutrients, language().words))
      return code
    }
    const display = displayOf(read.plan)
    const t = language().words.tables
    const columns = [
      { heading: t['part']!, align: 'words' },
      { heading: t['count']!, align: 'figures' },
      { heading: t['spare']!, align: 'figures' },
      { heading: t['price']!, align: 'figures' },
      { heading: t['size']!, align: 'words' },
    ] as const
    const rows = partTexts(list, language().words, display)
    out(
      textTable(columns, [
        ...rows.map((r) => [r.name, r.count, r.spares, r.price, r.size]),
        ...packTexts(facts.nutrients, language().words, display).map((r) => [r.name, r.count, '', r.price, r.size]),
      ]),
    )
    const sums = [totalText(list, language().words, display), packsText(facts.nutrients, language().words, display)]
    out(`\n${sums.filter((s) => s !== '').join(' ')}\n`)
    const tools = list.tools.map((tool) => toolText(tool, language().words))
    const heads = [
      { heading: t['tool']!, align: 'words' },
      { heading: t['at-hand']!, align: 'words' },
    ] as const
    out(
      textTable(
        heads,
        tools.map((tool) => [tool.name, tool.atHand]),
      ),
    )
    return code
  },
}
