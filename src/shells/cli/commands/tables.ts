import { join } from 'node:path'
import { evaluateDocument } from '../../../evaluate.ts'
import { plainFiles } from '../../../render/sheets/plain.ts'
import { displayOf } from '../display.ts'
import { EXIT, isStop, json, out, stop, writeWhole } from '../io.ts'
import { language } from '../language.ts'
import type { CommandOf } from '../main.ts'
import { planFile } from '../plan-file.ts'

const SIGNS = { point: '.', comma: ',' } as const
const isSign = (text: string): text is keyof typeof SIGNS => Object.hasOwn(SIGNS, text)

export const tables: CommandOf = {
  name: 'tables',
  summary: 'every table and list of a plan as CSV and plain text, units in the headers',
  describe: (c) =>
    c
      .argument('<plan>', 'plan file, or - for standard input')
      .requiredOption('--out <folder>', 'where to write the files')
      .option(
        '--decimal <sign>',
        'point (cells between commas) or comma (cells between semicolons); as the language has it where left out',
      ),
  run: ([path], options) => {
    const read = planFile(path!)
    if (isStop(read)) return read
    const sign = options['decimal']
    if (sign !== undefined && !isSign(String(sign)))
      return stop(`--decimal ${String(sign)}: write point or comma.`, EXIT.usage)
    const { plan, document, issues } = read
    const { facts, findings } = evaluateDocument(document, { remedies: false })
    const { words, sheets: sentences } = language()
    const decimal = sign === undefined ? words.decimal : SIGNS[sign as keyof typeof SIGNS]
    const display = { ...displayOf(plan), decimal }
    const texts = plainFiles({
      ...{ plan, facts, findings, sentences, display },
      words: { ...words, decimal },
      ...{ paper: plan.tools?.paper ?? 'A4', date: '', wrap: false },
    })
    const files = texts.map(({ name, text }) => {
      const file = join(String(options['out']), name)
      writeWhole(file, text)
      return file
    })
    if (options['json']) json({ files })
    else for (const file of files) out(file)
    return issues.length > 0 ? EXIT.input : EXIT.holds
  },
}
