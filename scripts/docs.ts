// Writes the generated pages: docs/sources.md (the register of citations and its open debts) and docs/plan.md (every
// field of the plan). `npm run docs`; a test holds the pages against the code.
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { edgeUnits } from '../src/kernel/edge-units.ts'
import { inUnit } from '../src/kernel/quantity-text.ts'
import type { Field, QuantityField } from '../src/plan/field.ts'
import { planFields } from '../src/plan/plan.ts'
import type { Source } from '../src/tables/source.ts'
import { sources } from '../src/tables/sources.ts'

const cell = (text: string) => text.replaceAll('|', '\\|').replaceAll('\n', ' ')

function row([id, s]: readonly [string, Source]): string {
  return `| \`${id}\` | ${s.kind} | ${cell(s.cite)} | ${cell(s.where)} | ${s.read ?? 'not yet'} |`
}

const head = '| id | kind | what | where | read |\n|---|---|---|---|---|'

export function sourcesPage(): string {
  const all = Object.entries(sources as Readonly<Record<string, Source>>).sort(([a], [b]) => (a < b ? -1 : 1))
  const open = all.filter(([, s]) => s.read === null && s.kind !== 'derived')
  const rest = all.filter((e) => !open.includes(e))
  return [
    '# Sources',
    '',
    'Generated from `src/tables/sources/` by `npm run docs`. Every equation and every row of a table names one of these.',
    '',
    `## Open debts (${open.length})`,
    '',
    'Quoted from memory, from a trade rule, or from a work that names them; nobody of us has yet seen the page itself.',
    '',
    head,
    ...open.map(row),
    '',
    `## Read or derived (${rest.length})`,
    '',
    head,
    ...rest.map(row),
    '',
  ].join('\n')
}

function bounds(f: QuantityField): string {
  const unit = f.example.replace(/^[-\d.,/ ]+/, '')
  const known = (edgeUnits[f.unit] ?? []).find((u) => u.spell.includes(unit)) ?? edgeUnits[f.unit]?.[0]
  if (!known) return ''
  const n = (x: number) => `${Number(inUnit(x, f.unit, known.spell[0]!).toPrecision(3))}`
  return `${n(f.min)} to ${n(f.max)} ${known.spell[0]}`
}

function rows(field: Field, at: string): string[] {
  const line = (kind: string, range: string) => `| \`${at}\` | ${kind} | ${cell(range)} | ${cell(field.about)} |`
  switch (field.kind) {
    case 'quantity':
      return [line(`\`"${cell(field.example)}"\``, bounds(field))]
    case 'count':
      return [line('whole number', `${field.min} to ${field.max}`)]
    case 'number':
      return [line('number', `${field.min} to ${field.max}`)]
    case 'text':
      return [line('text', `at most ${field.longest} characters`)]
    case 'flag':
      return [line('true or false', '')]
    case 'choice':
      return [line('one of', field.of.join(', '))]
    case 'named':
      return [line(`\`"${cell(field.example)}"\` or measures`, ''), ...rows(field.section, at).slice(1)]
    case 'list':
      return [line('list', `at most ${field.longest}`), ...inner(field.of, `${at}/0`)]
    case 'map':
      return [line('names and values', `at most ${field.longest}`), ...inner(field.of, `${at}/…`)]
    case 'section':
      return [line('section', ''), ...Object.entries(field.fields).flatMap(([k, f]) => rows(f, `${at}/${k}`))]
  }
}

const inner = (field: Field, at: string): string[] =>
  field.kind === 'section' ? rows(field, at).slice(1) : rows(field, at)

export function planPage(): string {
  const sections = Object.entries(planFields.fields).map(([key, f]) =>
    [`## ${key}`, '', '| field | write | range | holds |', '|---|---|---|---|', ...rows(f, key), ''].join('\n'),
  )
  return [
    '# Fields of the plan',
    '',
    'Generated from `src/plan/sections/` by `npm run docs`. Every field may be left out; what then cannot be computed says which field it waits for.',
    '',
    ...sections,
  ].join('\n')
}

export const pages: Readonly<Record<string, () => string>> = {
  'docs/sources.md': sourcesPage,
  'docs/plan.md': planPage,
}

if (process.argv[1] === import.meta.filename)
  for (const [path, page] of Object.entries(pages)) writeFileSync(join(import.meta.dirname, '..', path), page())
