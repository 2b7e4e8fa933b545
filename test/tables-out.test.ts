import { execFileSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { otherSigns } from '../src/plan/decimal-signs.ts'
import { parsePlan } from '../src/plan/document.ts'
import { type PlanDocument, planFields } from '../src/plan/plan.ts'
import { english } from '../src/render/words/en/english.ts'
import { issueText } from '../src/render/words/sentences.ts'
import { tables } from '../src/shells/cli/commands/tables.ts'

const root = join(import.meta.dirname, '..')
const folder = mkdtempSync(join(tmpdir(), 'rootfall-tables-'))
const EXAMPLES = ['balcony', 'school', 'hall'] as const
const SIGNS = { point: ',', comma: ';' } as const

/** Every table that is written; what a plan does not have yet is left out of its folder. */
const ALL = [
  ...['batch', 'cuts', 'day', 'dip-stick', 'elements', 'findings', 'marks', 'packs', 'parts', 'steps', 'stock', 'stop'],
  ...['tipping', 'tools'],
].map((n) => `${n}.csv`)

/** Python's own reader, strict: rows of every file of a folder. */
const PYTHON = `
import csv, json, os, sys
out = {}
for name in sorted(os.listdir(sys.argv[1])):
    if name.endswith('.csv'):
        with open(os.path.join(sys.argv[1], name), newline='', encoding='utf-8') as f:
            out[name] = list(csv.reader(f, delimiter=sys.argv[2], strict=True))
print(json.dumps(out))`

/** A second reader by the grammar of RFC 4180: a cell at a time, quoted or bare. */
function rows(text: string, between: string): string[][] {
  const cell = new RegExp(`(?:"((?:[^"]|"")*)"|([^"${between}\\r\\n]*))(${between}|\\r\\n)`, 'y')
  const out: string[][] = [[]]
  while (cell.lastIndex < text.length) {
    const found = cell.exec(text)
    if (found === null) throw new Error(`no cell where “${text.slice(out.length, out.length + 20)}” stands`)
    out.at(-1)!.push(found[1]?.replaceAll('""', '"') ?? found[2]!)
    if (found[3] === '\r\n') out.push([])
  }
  return out.slice(0, -1)
}

const at = (name: string, sign: keyof typeof SIGNS) => join(folder, `${name}-${sign}`)
const python = (name: string, sign: keyof typeof SIGNS): Record<string, string[][]> =>
  JSON.parse(execFileSync('python3', ['-c', PYTHON, at(name, sign), SIGNS[sign]], { encoding: 'utf8' }))

beforeAll(async () => {
  for (const name of EXAMPLES)
    for (const sign of ['point', 'comma'] as const) {
      const options = { out: at(name, sign), decimal: sign, json: true }
      await tables.run([join(root, 'examples', `${name}.plan.json`)], options)
    }
}, 120_000)
afterAll(() => rmSync(folder, { recursive: true }))

describe.each(EXAMPLES)('tables of the %s', (name) => {
  it.each(['point', 'comma'] as const)('are read alike by two readers, %s', (sign) => {
    const theirs = python(name, sign)
    expect(Object.keys(theirs).length).toBeGreaterThan(8)
    for (const [file, read] of Object.entries(theirs)) {
      expect(rows(readFileSync(join(at(name, sign), file), 'utf8'), SIGNS[sign]), file).toEqual(read)
      expect(new Set(read.map((r) => r.length)).size, file).toBe(1)
    }
  })

  it('hold the same numbers whichever sign parts them', () => {
    const [points, commas] = [python(name, 'point'), python(name, 'comma')]
    expect(Object.keys(commas)).toEqual(Object.keys(points))
    const number = /^-?\d+(?:\.\d+)?(?:e[-+]\d+)?$/
    let fractions = 0
    for (const [file, read] of Object.entries(points))
      for (const [i, row] of read.entries())
        for (const [j, cell] of row.entries())
          if (number.test(cell)) {
            expect(commas[file]![i]![j], `${file} ${i} ${j}`).toBe(cell.replace('.', ','))
            if (cell.includes('.')) fractions++
          }
    expect(fractions).toBeGreaterThan(50)
  })

  it('tell a unit in the header of every column of fractions', () => {
    const unit = /\((?:mm|g|mg\/L|L|mL|h|min|°C|%|N|kg|m\/s|deg|zł|KSh|\$|US\$)\)|\bmm\b|\bg\b|\bmL\b/
    for (const [file, [head, ...body]] of Object.entries(python(name, 'point')))
      for (const [j, title] of head!.entries()) {
        const fractions = body.some((r) => /^-?\d+\.\d+$/.test(r[j]!))
        // Findings have their unit in a column of its own; a ratio has none; weeks and counts are their own.
        if (fractions && file !== 'findings.csv' && !/^(?:times|count|week)/.test(title))
          expect(title, file).toMatch(unit)
      }
  })
})

it('every table is written by one of the examples', () => {
  const written = new Set(EXAMPLES.flatMap((n) => readdirSync(at(n, 'point'))).filter((f) => f.endsWith('.csv')))
  expect([...written].toSorted()).toEqual(ALL.toSorted())
})

describe('the other decimal sign', () => {
  const typed: PlanDocument = {
    rootfall: 1,
    column: { length: '1,85 m', pipe: { outside: '110,5 mm' }, sites: { pitch: '180 mm' } },
    feed: { targets: { N: '150,5 mg/L' }, shelf: [{ name: 'MKP', pack: '1,5 kg' }], pH: '5,8' },
  }
  it('is read, and told with its place, wherever a quantity stands', () => {
    expect(otherSigns(planFields, typed, '.')).toEqual([
      { at: 'column/length', typed: '1,85 m', read: '1.85 m' },
      { at: 'column/pipe/outside', typed: '110,5 mm', read: '110.5 mm' },
      { at: 'feed/targets/N', typed: '150,5 mg/L', read: '150.5 mg/L' },
      { at: 'feed/shelf/0/pack', typed: '1,5 kg', read: '1.5 kg' },
    ])
    expect(otherSigns(planFields, typed, ',')).toEqual([])
    expect(parsePlan(typed).plan.feed?.shelf?.[0]?.pack_kg).toBe(1.5)
  })
  it('in a bare number between quotes is asked for as it is meant', () => {
    const issue = parsePlan(typed).issues.find((i) => i.at === 'feed/pH')!
    expect(issueText(issue, english)).toContain('Write it like 5.8')
  })
  it('is told by the command line', () => {
    const file = join(folder, 'comma.plan.json')
    writeFileSync(file, JSON.stringify(typed))
    const run = ['--import', 'tsx', join(root, 'src/shells/cli/run.ts'), 'check', file]
    let said = ''
    try {
      execFileSync(process.execPath, run, { encoding: 'utf8', cwd: root, stdio: ['ignore', 'pipe', 'pipe'] })
    } catch (thrown) {
      said = (thrown as { stderr: string }).stderr
    }
    expect(said).toContain('“1,85 m” read as 1.85 m.')
  }, 30_000)
})
