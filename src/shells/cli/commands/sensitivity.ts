import { readQuantity } from '../../../kernel/quantity-text.ts'
import { svg } from '../../../render/drawing/svg.ts'
import {
  IMPROVE_FIRST,
  improveText,
  ownText,
  resultText,
  sensitivityCsv,
  unknownText,
} from '../../../render/tables/sensitivity.ts'
import { swingsPage } from '../../../render/views/swings-page.ts'
import { sensitivity } from '../../../sensitivity/swings.ts'
import { displayOf } from '../display.ts'
import { EXIT, isStop, json, out, type Stop, stop } from '../io.ts'
import { language } from '../language.ts'
import type { CommandOf } from '../main.ts'
import { planFile } from '../plan-file.ts'

/** Share of the greatest swing below which readings are summed up. */
function toldShare(typed: unknown): number | undefined | Stop {
  if (typed === undefined) return undefined
  const read = readQuantity(String(typed), '1')
  return read.ok && read.value >= 0 && read.value <= 1
    ? read.value
    : stop(`--below "${String(typed)}" is no share of 0 to 100 %. Write it like "10 %".`, EXIT.usage)
}

export const sensitivityCommand: CommandOf = {
  name: 'sensitivity',
  summary: 'which number matters: how far each reading alone moves each result, and what to measure first',
  describe: (c) =>
    c
      .argument('<plan>', 'plan file, or - for standard input')
      .option(
        '--below <share>',
        'sum up readings that move a result by less than this share of the greatest, like "10 %"',
      )
      .option('--csv', 'one line a reading and result')
      .option('--svg', 'bars of all results on one page'),
  run: ([path], options) => {
    const told = toldShare(options['below'])
    if (typeof told === 'object') return told
    const read = planFile(path!)
    if (isStop(read)) return read
    const found = sensitivity(read.plan, told === undefined ? {} : { told })
    const code = read.issues.length > 0 ? EXIT.input : EXIT.holds
    const { words } = language()
    const display = displayOf(read.plan)
    if (options['json']) json({ issues: read.issues, ...found })
    else if (options['csv']) out(sensitivityCsv(found, words, display))
    else if (options['svg']) out(svg({ page: swingsPage(found, words, display), title: words.sensitivity.title }))
    else {
      for (const r of found.results) {
        out(resultText(r, words, display))
        const open = ownText(r, words, display)
        if (open !== '') out(`   ${open}`)
      }
      for (const u of found.unknown) out(unknownText(u, words))
      const first = found.improve.slice(0, IMPROVE_FIRST)
      if (first.length > 0) out(`\n${words.sensitivity.improve}`)
      for (const [i, reading] of first.entries()) out(`${i + 1}. ${improveText(reading, words)}`)
    }
    return code
  },
}
