import { existsSync, readdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { evaluateDocument } from '../../../evaluate.ts'
import { nearestWords } from '../../../kernel/nearest.ts'
import { dxf } from '../../../render/drawing/dxf.ts'
import { pdf } from '../../../render/drawing/pdf.ts'
import { svg } from '../../../render/drawing/svg.ts'
import type { PaperName } from '../../../render/paper/size.ts'
import { type SheetId, type SheetInput, sheetIds } from '../../../render/sheets/context.ts'
import { plainFiles } from '../../../render/sheets/plain.ts'
import { type SheetSet, sheetSet } from '../../../render/sheets/set.ts'
import { fill } from '../../../render/words/fill.ts'
import { displayOf } from '../display.ts'
import { fontBytes } from '../fonts.ts'
import { EXIT, isStop, json, out, type Stop, say, stop, writeWhole } from '../io.ts'
import { language } from '../language.ts'
import type { CommandOf } from '../main.ts'
import { planFile } from '../plan-file.ts'

/** A name that every file system takes. */
const fileName = (name: string): string =>
  name
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60) || 'tower'

const today = (): string => {
  const now = new Date()
  const two = (n: number) => String(n).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}

/** Pages of an earlier print would stand among the new ones: those that this command has named are taken away. */
function clearOldPages(folder: string): void {
  if (!existsSync(folder)) return
  for (const name of readdirSync(folder)) {
    const id = /^\d{2,3}-([a-z-]+)\.svg$/.exec(name)?.[1]
    if (sheetIds.some((known) => known === id)) rmSync(join(folder, name))
  }
}

interface Chosen {
  readonly paper: PaperName
  readonly only: readonly SheetId[]
  readonly date: string
}

function chosen(options: Readonly<Record<string, unknown>>, planPaper: PaperName | undefined): Chosen | Stop {
  const paper = options['paper'] === undefined ? (planPaper ?? 'A4') : String(options['paper'])
  const named = (['A4', 'Letter'] as const).find((p) => p.toLowerCase() === paper.toLowerCase())
  if (named === undefined) return stop(`--paper ${paper}: write A4 or Letter.`, EXIT.usage)
  const date = options['date'] === undefined ? today() : String(options['date'])
  if (!/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/.test(date))
    return stop(`--date ${date}: write it like 2026-05-31.`, EXIT.usage)
  const asked =
    options['only'] === undefined
      ? []
      : String(options['only'])
          .split(',')
          .map((s) => s.trim())
  for (const name of asked)
    if (!sheetIds.some((id) => id === name)) {
      const near = nearestWords(name, [...sheetIds])
      return stop(
        `There is no sheet “${name}”. ${near.length > 0 ? `Did you mean ${near.join(' or ')}?` : `There are: ${sheetIds.join(', ')}.`}`,
        EXIT.usage,
      )
    }
  return { paper: named, only: asked as SheetId[], date }
}

async function written(
  folder: string,
  name: string,
  set: SheetSet,
  input: SheetInput,
  whole: boolean,
): Promise<readonly string[] | Stop> {
  const fonts = fontBytes()
  if (fonts === undefined)
    return stop(
      'The typefaces of the sheets are missing: assets/fonts is not beside the program. Install rootfall again.',
      EXIT.input,
    )
  const files: string[] = []
  const write = (path: string, content: string | Uint8Array) => {
    say(fill(language().sheets['progress-print'], { file: path }))
    writeWhole(join(folder, path), content)
    files.push(join(folder, path))
  }
  const title = input.plan.name ?? language().sheets.unnamed
  const pages = set.pages.map((p) => p.page)
  const meta = {
    title,
    author: language().sheets.author,
    subject: language().sheets.subject,
    language: language().words.language,
  }
  write(`${name}-sheets.pdf`, await pdf({ pages, fonts, ...meta }))
  clearOldPages(join(folder, 'svg'))
  set.pages.forEach((p, i) => {
    write(join('svg', `${String(i + 1).padStart(2, '0')}-${p.id}.svg`), svg({ page: p.page, title: p.title }))
  })
  if (!whole) return files
  if (set.contours.length > 0) write(join('dxf', `${name}-mm.dxf`), dxf({ drawing: set.contours, reference: '100 mm' }))
  for (const file of plainFiles(input)) write(join(file.name.endsWith('.csv') ? 'csv' : 'text', file.name), file.text)
  return files
}

export const sheets: CommandOf = {
  name: 'sheets',
  summary: 'print the tower: templates, marks, cuts, parts and steps as PDF, SVG, DXF and CSV',
  describe: (c) =>
    c
      .argument('<plan>', 'plan file, or - for standard input')
      .requiredOption('--out <folder>', 'where to write the files')
      .option('--paper <size>', 'A4 or Letter; as the plan says where left out')
      .option('--wrap', 'the whole column unrolled at full size, and not only one ring of it')
      .option('--only <names>', `some sheets only, of: ${sheetIds.join(', ')}`)
      .option('--date <date>', 'date to print, like 2026-05-31; today where left out'),
  run: async ([path], options) => {
    const read = planFile(path!)
    if (isStop(read)) return read
    const { plan } = read
    const choice = chosen(options, plan.tools?.paper)
    if (isStop(choice)) return choice
    const name = fileName(plan.name ?? '')
    say(fill(language().sheets['progress-read'], { plan: plan.name ?? path! }))
    const { facts, findings } = evaluateDocument(read.document, { remedies: false })
    const input: SheetInput = {
      plan,
      facts,
      findings,
      words: language().words,
      sentences: language().sheets,
      display: displayOf(plan),
      paper: choice.paper,
      date: choice.date,
      wrap: options['wrap'] === true,
    }
    const set = sheetSet(input, choice.only)
    if (set.refused.length > 0) return stop(set.refused.join('\n'), EXIT.fails)
    for (const sentence of set.leftOut) say(sentence)
    if (set.pages.length === 0) return stop('No sheet can be drawn from this plan yet.', EXIT.input)
    const files = await written(String(options['out']), name, set, input, choice.only.length === 0)
    if (!Array.isArray(files)) return files as Stop
    if (options['json'])
      json({ files, leftOut: set.leftOut, pages: set.pages.map((p) => ({ id: p.id, title: p.title })) })
    else for (const file of files as readonly string[]) out(file)
    return EXIT.holds
  },
}
