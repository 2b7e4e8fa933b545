import { isKnown } from '../../plan/known.ts'
import { type Cell, csv } from '../tables/csv.ts'
import { cutsCsv } from '../tables/cuts-csv.ts'
import { weakTexts } from '../tables/feed.ts'
import { elementCells, stockCells } from '../tables/feed-csv.ts'
import { orderLines } from '../tables/feed-order.ts'
import { refillText } from '../tables/feed-running.ts'
import { figure, mm } from '../tables/figures.ts'
import { packCells } from '../tables/packs.ts'
import { partsCsv } from '../tables/parts-csv.ts'
import { runningTables } from '../tables/running-csv.ts'
import { stepCells, toolCells } from '../tables/steps-csv.ts'
import { fill } from '../words/fill.ts'
import { choiceName } from '../words/place-names.ts'
import { context, type SheetInput } from './context.ts'
import { levelsOf } from './marking.ts'
import { type PartRow, partRow } from './parts.ts'
import { stepText } from './steps.ts'

export interface PlainFile {
  readonly name: string
  readonly text: string
}

function marks(input: SheetInput): readonly PlainFile[] {
  const { layout } = input.facts
  if (!isKnown(layout)) return []
  const c = context(input)
  const rows: readonly (readonly Cell[])[] = levelsOf(layout.known).flatMap((l) =>
    l.sites.map((s): readonly Cell[] => {
      const exact_m = layout.known.datum === 'foot' ? s.mark_m : layout.known.columnLength_m - s.mark_m
      const arc_m = (s.turn_rad / (2 * Math.PI)) * layout.known.circumference_m
      return [s.number, s.line, s.ring, mm(exact_m), c.length(l.marked_m), mm(l.error_m), mm(arc_m)]
    }),
  )
  const { csv: said } = input.words
  const head = [...said.marks, ...said[layout.known.datum === 'foot' ? 'fromFoot' : 'fromTop'], ...said.marksOnTape]
  return [{ name: 'marks.csv', text: csv(head, rows, input.words.decimal) }]
}

function parts(input: SheetInput): readonly PlainFile[] {
  const { parts: facts } = input.facts
  if (!isKnown(facts)) return []
  const c = context(input)
  const line = (r: PartRow) =>
    `[ ] ${r.count} × ${r.name}${r.size === '' ? '' : ` (${r.size})`}${r.spares === '' ? '' : ` + ${r.spares}`}${r.remark === '' ? '' : `: ${r.remark}`}`
  return [
    { name: 'parts.csv', text: partsCsv(facts.known, input.facts.nutrients, input.words) },
    ...tableOf(input, 'tools.csv', input.words.csv.tools, toolCells(facts.known.tools, input.words)),
    { name: 'parts.txt', text: `${facts.known.parts.map((p) => line(partRow(c, p))).join('\n')}\n` },
  ]
}

function steps(input: SheetInput): readonly PlainFile[] {
  const { build } = input.facts
  if (!isKnown(build)) return []
  const c = context(input)
  const text = build.known.steps.map((s, i) => {
    const t = stepText(c, s, i + 1, build.known)
    return [
      `${t.title} (${t.times})`,
      ...t.waits,
      ...t.cautions.map((x) => `! ${x}`),
      ...t.acts.map((a) => `[ ] ${a}`),
      ...(t.test === '' ? [] : [`= ${t.test}`]),
    ].join('\n')
  })
  const cells = stepCells(build.known, input.words, input.display)
  return [
    ...tableOf(input, 'steps.csv', input.words.csv.steps, cells),
    { name: 'steps.txt', text: `${text.join('\n\n')}\n` },
  ]
}

/** A table under its name; nothing where it has no row. */
const tableOf = (
  { words }: SheetInput,
  name: string,
  head: readonly string[],
  rows: readonly (readonly Cell[])[],
): readonly PlainFile[] => (rows.length === 0 ? [] : [{ name, text: csv(head, rows, words.decimal) }])

/** Elements against their targets, stock bottles, and what there is on the shelf against both. */
function feed(input: SheetInput): readonly PlainFile[] {
  const { facts, plan, words } = input
  const packHead = words.csv.packs.map((h) => fill(h, { money: plan.prices?.currency ?? words.csv.money }))
  const bottles = stockCells(facts.nutrients, plan.feed?.stock?.volume_m3 ?? null, words)
  return [
    ...tableOf(input, 'elements.csv', words.csv.elements, elementCells(facts.nutrients)),
    ...tableOf(input, 'stock.csv', words.csv.stock, bottles),
    ...tableOf(input, 'packs.csv', packHead, packCells(facts.nutrients, words)),
  ]
}

/** Doses of the batch for a spreadsheet, and its order of mixing. */
function batch(input: SheetInput): readonly PlainFile[] {
  const { batch: facts } = input.facts.nutrients
  if (!isKnown(facts) || !isKnown(facts.known.doses)) return []
  const { display, words } = input
  const rows = facts.known.doses.known
    .filter(({ mass_kg }) => mass_kg > 0)
    .map(({ id, mass_kg, exact_kg, volume_m3, weakStock }): readonly Cell[] => [
      choiceName(id, words),
      figure(mass_kg * 1000, 4),
      figure(exact_kg * 1000, 4),
      volume_m3 === null ? null : figure(volume_m3 * 1e6, 2),
      weakStock === null ? null : figure(weakStock.dissolve_kg * 1000, 4),
      weakStock === null ? null : figure(weakStock.draw_m3 * 1e6, 2),
    ])
  const lines = orderLines(facts.known, words, display).flatMap(({ text, cautions }, i) => [
    ...cautions.map((t) => `! ${t}`),
    `[ ] ${i + 1}. ${text}`,
  ])
  const said = [...weakTexts(facts.known, words, display), ...lines, refillText(facts.known, words)]
  return [
    { name: 'batch.csv', text: csv(words.csv.batch, rows, words.decimal) },
    { name: 'batch.txt', text: `${said.filter((t) => t !== '').join('\n')}\n` },
  ]
}

/** Marks, cuts, parts, tools, steps, doses, elements, bottles, packs, findings and what is watched as tables for a spreadsheet; parts, steps and the batch as plain text. */
export const plainFiles = (input: SheetInput): readonly PlainFile[] => [
  ...marks(input),
  { name: 'cuts.csv', text: cutsCsv(input.facts.cuts, input.words) },
  ...parts(input),
  ...steps(input),
  ...batch(input),
  ...feed(input),
  ...runningTables(input),
]
