import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { evaluate } from '../../../evaluate.ts'
import { parsePlan } from '../../../plan/document.ts'
import type { Field } from '../../../plan/field.ts'
import { readField } from '../../../plan/parse.ts'
import { valueAt, withValue } from '../../../plan/patch.ts'
import { type PlanDocument, planFields } from '../../../plan/plan.ts'
import { addition, entryAround, lines, placed } from './entries.ts'
import { fieldAt } from './fields.ts'
import { parts, shownIn } from './parts.ts'

/** Numbers that the page keeps by itself. */
const OWN: ReadonlySet<string> = new Set(['rootfall', 'change'])

/** Every place of the schema: entries of lists as the first of them, entries of maps under one name. */
function places(field: Field, path: string): readonly { readonly path: string; readonly kind: Field['kind'] }[] {
  const below = (key: string) => (path === '' ? key : `${path}/${key}`)
  const here = path === '' ? [] : [{ path, kind: field.kind }]
  if (field.kind === 'section')
    return [...here, ...Object.entries(field.fields).flatMap(([k, f]) => places(f, below(k)))]
  if (field.kind === 'list') return [...here, ...places(field.of, below('0'))]
  if (field.kind === 'map') return [...here, ...places(field.of, below('Ca'))]
  return here
}

const all = places(planFields, '').filter(({ path }) => !OWN.has(path))
const lists = all.filter(({ kind }) => kind === 'list' || kind === 'map').map(({ path }) => path)
const fields = all.filter(({ kind }) => !['list', 'map', 'section'].includes(kind)).map(({ path }) => path)

const linesOf = (document: PlanDocument, path: string, wanted: string | null = null) =>
  parts.find((p) => p.id === shownIn(path))!.fields.flatMap((field) => lines(document, field, wanted))

/** A plan in which nothing is told but the entries around a place. */
function around(path: string): PlanDocument {
  const entry = entryAround(path)
  return entry === null ? {} : withValue(around(entry), entry, {})
}

describe('the form of the page', () => {
  it('has lists and maps to look at', () => {
    expect(lists).toContain('water/sources')
    expect(lists).toContain('water/sources/0/analysis/ions')
    expect(lists.length).toBeGreaterThan(20)
  })

  it.each(lists)('offers one more entry of %s', (path) => {
    const adds = linesOf(around(path), path).filter((l) => l.kind === 'add')
    expect(adds.map((l) => l.path)).toContain(path)
  })

  it.each(fields)('has the field %s', (path) => {
    const rows = linesOf(around(path), path, path).filter((l) => l.kind === 'row')
    expect(rows.map((l) => l.path)).toContain(path)
  })

  it.each(lists)('adds an entry of %s that the plan takes, and can be filled', (path) => {
    const before = around(path)
    const { put, fill } = addition(before, path, 'Ca')
    const after = put === null ? before : withValue(before, put[0], put[1])
    const issues: Parameters<typeof readField>[0]['issues'] = []
    for (const [key, value] of Object.entries(after)) readField({ issues }, fieldAt(key)!, value, key)
    expect(issues).toEqual([])
    expect(linesOf(after, path, fill)).toContainEqual({ kind: 'row', path: fill })
    expect(valueAt(withValue(after, fill, 'x'), fill)).toBe('x')
    if (fieldAt(path)?.kind === 'list') expect(valueAt(withValue(after, fill, 'x'), path)).toBeInstanceOf(Array)
  })
})

describe('what a finding misses', () => {
  const folder = join(import.meta.dirname, '../../../../examples')
  const plans = readdirSync(folder).filter((name) => name.endsWith('.plan.json'))
  const documents = plans.map((name) => JSON.parse(readFileSync(join(folder, name), 'utf8')) as PlanDocument)
  const sections = ['water', 'feed', 'pump', 'crops', 'reservoir', 'riser', 'stock', 'column']
  const needs = new Set(
    documents.flatMap((document) =>
      sections.flatMap((key) => {
        const bare = Object.fromEntries(Object.entries(document).filter(([k]) => k !== key))
        return evaluate(parsePlan(bare).plan).findings.flatMap((f) => f.needs)
      }),
    ),
  )

  it('is told of whole lists too', () => expect([...needs]).toContain('water/sources'))

  it.each([...needs])('%s stands on the form or can be added there', (need) => {
    const to = placed(need)
    const kind = fieldAt(to)?.kind
    expect(kind).toBeDefined()
    const there = linesOf(around(to), to, to).map((l) => l.path)
    expect(there.some((path) => path === to || path.startsWith(`${to}/`))).toBe(true)
  })
})
