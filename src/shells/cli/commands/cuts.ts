import { evaluate } from '../../../evaluate.ts'
import { kerfText, materialText, patternTexts } from '../../../render/tables/cuts.ts'
import { cutsCsv } from '../../../render/tables/cuts-csv.ts'
import { textTable } from '../../../render/tables/text.ts'
import { displayOf } from '../display.ts'
import { EXIT, isStop, json, out } from '../io.ts'
import { language } from '../language.ts'
import type { CommandOf } from '../main.ts'
import { planFile } from '../plan-file.ts'

export const cuts: CommandOf = {
  name: 'cuts',
  summary: 'what to saw from which length, with the kerf and what is left over',
  describe: (c) =>
    c.argument('<plan>', 'plan file, or - for standard input').option('--csv', 'one line a piece, in millimetres'),
  run: ([path], options) => {
    const read = planFile(path!)
    if (isStop(read)) return read
    const { facts, findings } = evaluate(read.plan)
    const fails = findings.some((f) => f.id.startsWith('cuts/') && f.verdict === 'fail')
    const code = read.issues.length > 0 ? EXIT.input : fails ? EXIT.fails : EXIT.holds
    if (options['json']) json({ issues: read.issues, cuts: facts.cuts })
    else if (options['csv']) out(cutsCsv(facts.cuts, language().words))
    else {
      const display = displayOf(read.plan)
      const t = language().words.tables
      const kerf = kerfText(facts.cuts, language().words, display)
      for (const m of facts.cuts.materials) out(materialText(m, language().words, display))
      if (kerf !== null) out(kerf)
      const rows = facts.cuts.materials.flatMap((m) => patternTexts(m, language().words, display))
      const columns = [
        { heading: t['material']!, align: 'words' },
        { heading: t['times']!, align: 'figures' },
        { heading: t['from']!, align: 'words' },
        { heading: t['size']!, align: 'figures' },
        { heading: t['pattern']!, align: 'words' },
        { heading: t['rest']!, align: 'figures' },
      ] as const
      if (rows.length > 0)
        out(
          `\n${textTable(
            columns,
            rows.map((r) => [r.material, r.times, r.from, r.length, r.pieces, r.rest]),
          )}`,
        )
    }
    return code
  },
}
