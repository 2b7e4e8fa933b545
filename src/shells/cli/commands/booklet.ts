import { extname } from 'node:path'
import { evaluateDocument } from '../../../evaluate.ts'
import type { BookletInput } from '../../../render/booklet/input.ts'
import { bookletAsHtml, bookletAsPdf } from '../../../render/booklet/make.ts'
import { dayOf } from '../day.ts'
import { displayOf } from '../display.ts'
import { bookletFaces, fontBytes } from '../fonts.ts'
import { EXIT, isStop, json, out, type Stop, stop, writeWhole } from '../io.ts'
import { language } from '../language.ts'
import type { CommandOf } from '../main.ts'
import { planFile } from '../plan-file.ts'

const NO_FONTS =
  'The typefaces of the booklet are missing: assets/fonts is not beside the program. Install rootfall again.'

async function written(file: string, input: BookletInput): Promise<Stop | null> {
  const kind = extname(file).toLowerCase()
  if (kind === '.pdf') {
    const fonts = fontBytes()
    if (fonts === undefined) return stop(NO_FONTS, EXIT.input)
    writeWhole(file, await bookletAsPdf(input, fonts))
    return null
  }
  const faces = bookletFaces()
  if (faces === undefined) return stop(NO_FONTS, EXIT.input)
  writeWhole(file, bookletAsHtml(input, faces))
  return null
}

export const bookletCommand: CommandOf = {
  name: 'booklet',
  summary: 'one file from which somebody else builds: parts, drawings, templates, steps, tests, log (HTML or PDF)',
  describe: (c) =>
    c
      .argument('<plan>', 'plan file, or - for standard input')
      .requiredOption('--out <file>', 'a name that ends in .html or .pdf')
      .option('--units <system>', 'mm or in; as the plan’s tape where left out')
      .option('--paper <size>', 'A4 or Letter; as the plan says where left out')
      .option('--date <date>', 'date to print, like 2026-05-31; today where left out'),
  run: async ([path], options) => {
    const file = String(options['out'])
    if (!['.html', '.htm', '.pdf'].includes(extname(file).toLowerCase()))
      return stop(`--out ${file}: write a name that ends in .html or .pdf.`, EXIT.usage)
    const units = options['units']
    if (units !== undefined && units !== 'mm' && units !== 'in')
      return stop(`--units ${String(units)}: write mm or in.`, EXIT.usage)
    const date = dayOf(options['date'])
    if (typeof date !== 'string') return date
    const read = planFile(path!)
    if (isStop(read)) return read
    const { plan } = read
    const named = (['A4', 'Letter'] as const).find(
      (p) => p.toLowerCase() === String(options['paper'] ?? plan.tools?.paper ?? 'A4').toLowerCase(),
    )
    if (named === undefined) return stop(`--paper ${String(options['paper'])}: write A4 or Letter.`, EXIT.usage)
    const { facts, findings } = evaluateDocument(read.document, { remedies: false })
    const display = displayOf(plan)
    const failed = await written(file, {
      plan,
      facts,
      findings,
      words: language().words,
      sentences: language().sheets,
      booklet: language().booklet,
      pupils: language().pupils,
      display: units === undefined ? display : { ...display, lengths: units },
      paper: named,
      date,
      wrap: false,
    })
    if (failed !== null) return failed
    if (options['json']) json({ file })
    else out(file)
    return EXIT.holds
  },
}
