import { isKnown } from '../../plan/known.ts'
import { findingText, placeName } from '../words/sentences.ts'
import { type Given, heading, text } from './input.ts'
import type { Block, Chapter } from './model.ts'

/** Fields that findings wait for, each once, the most wanted first. */
function missing({ findings }: Given): readonly string[] {
  const counts = new Map<string, number>()
  for (const f of findings)
    if (f.verdict === 'unknown') for (const n of f.needs) counts.set(n, (counts.get(n) ?? 0) + 1)
  return [...counts.entries()].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1)).map(([path]) => path)
}

/** Names of what is to be measured, each once. */
export const measurements = (g: Given): readonly string[] => [
  ...new Set(missing(g).map((path) => placeName(path, g.words))),
]

function what(g: Given): readonly Block[] {
  const { layout } = g.facts
  if (!isKnown(layout)) return []
  const l = layout.known
  const said = g.tell('purpose-what', {
    columns: l.columns === 1 ? g.sheet.say('one-column') : g.sheet.say('columns', { n: String(l.columns) }),
    pipe: g.plan.column?.pipe?.label ?? g.sheet.say('number-blank'),
    length: g.sheet.length(l.columnLength_m),
    sites: String(l.plants),
  })
  return [text(said)]
}

function open(g: Given): readonly Block[] {
  const rows = (['fail', 'watch'] as const).flatMap((verdict) =>
    g.findings
      .filter((f) => f.verdict === verdict && g.words.findings[f.id] !== undefined)
      .map((f) => findingText(f, g.words, g.display))
      .map((t): readonly string[] => [t.short, t.sentence]),
  )
  if (rows.length === 0) return [text(g.tell('limits-none'))]
  const columns = [
    { heading: '', align: 'words' as const },
    { heading: '', align: 'words' as const },
  ]
  return [heading(g.tell('limits-open')), { kind: 'table', id: 'open', columns, rows, ticked: false }]
}

function blanksOf(g: Given, blanks: number): readonly Block[] {
  const wanted = measurements(g)
  const sum =
    blanks === 0
      ? g.tell('blanks-none')
      : blanks === 1
        ? g.tell('blanks-one')
        : g.tell('blanks-many', { n: String(blanks) })
  if (wanted.length === 0) return [text(sum), text(g.tell('limits-all-known'))]
  const columns = [g.tell('blanks-what'), g.tell('blanks-read')]
  return [text(sum), { kind: 'form', id: 'blanks', columns, rows: wanted.map((name) => [name, '']) }]
}

/** What is built, what it does not do, what is not known yet. */
export const purpose = (g: Given, blanks: number, leftOut: readonly string[]): Chapter => ({
  id: 'purpose',
  title: g.tell('purpose-title'),
  blocks: [
    ...what(g),
    ...(g.plan.note === undefined ? [] : [text(g.tell('purpose-note', { note: g.plan.note }), 'quiet')]),
    text(g.tell('purpose-how')),
    text(g.tell('print-hint'), 'caution'),
    { kind: 'contents', title: g.tell('contents'), lines: [] },
    heading(g.tell('purpose-limits')),
    text(g.tell('limits-design')),
    text(g.tell('limits-law'), 'caution'),
    ...open(g),
    ...blanksOf(g, blanks),
    ...(leftOut.length === 0 ? [] : [text(`${g.tell('left-out')} ${leftOut.join(' ')}`, 'quiet')]),
  ],
})
