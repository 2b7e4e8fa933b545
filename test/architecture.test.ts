import { readdirSync, readFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { cruise } from 'dependency-cruiser'
import ts from 'typescript'
import { describe, expect, it } from 'vitest'
import { units } from '../src/kernel/units.ts'
import { sources } from '../src/tables/sources.ts'
import { importRules } from './import-rules.ts'

const root = join(import.meta.dirname, '..')

function filesUnder(folder: string): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true, recursive: true })
    .filter((e) => e.isFile() && /\.tsx?$/.test(e.name))
    .map((e) => relative(root, join(e.parentPath, e.name)))
    .sort()
}

const all = filesUnder('src')
const code = all.filter((f) => !f.endsWith('.test.ts'))
const engine = code.filter((f) => !f.startsWith('src/shells/'))
const read = (f: string) => readFileSync(join(root, f), 'utf8')

function parsed(file: string): ts.SourceFile {
  return ts.createSourceFile(file, read(file), ts.ScriptTarget.ES2022, true)
}

function nodesOf(source: ts.SourceFile): ts.Node[] {
  const out: ts.Node[] = []
  const walk = (n: ts.Node) => {
    out.push(n)
    ts.forEachChild(n, walk)
  }
  walk(source)
  return out
}

describe('imports point inwards', () => {
  it('holds every arrow', async () => {
    const result = await cruise(['src'], { ...importRules.options, ruleSet: importRules, validate: true } as never)
    const output = result.output as unknown as {
      summary: { totalCruised: number; violations: { rule: { name: string }; from: string; to: string }[] }
    }
    expect(output.summary.totalCruised, 'modules were looked at').toBeGreaterThan(40)
    expect(output.summary.violations.map((v) => `${v.rule.name}: ${v.from} → ${v.to}`)).toEqual([])
  }, 120_000)
})

// The compiler holds the rest of the purity: tsconfig.engine.json gives the engine no DOM and no Node types.
describe('the engine is pure', () => {
  it.each(engine)('%s', (file) => {
    const found = nodesOf(parsed(file)).flatMap((n) => {
      if (ts.isClassDeclaration(n) || ts.isClassExpression(n)) return [`class ${n.name?.text ?? ''}`]
      if (ts.isPropertyAccessExpression(n) && /^(Math\.random|Date\.|globalThis\.)/.test(n.getText()))
        return [n.getText()]
      if (ts.isNewExpression(n) && n.expression.getText() === 'Date') return ['new Date']
      return []
    })
    expect(found).toEqual([])
  })

  it('exports nothing that can be reassigned', () => {
    const found = code.flatMap((f) => [...read(f).matchAll(/^export (let|var) \w+/gm)].map((m) => `${f}: ${m[0]}`))
    expect(found).toEqual([])
  })
})

describe('equations carry their papers', () => {
  const equations = code.filter((f) => /^src\/disciplines\/[^/]+\/(equations[^/]*|network)\.ts$/.test(f))
  const labels = ['Symbols', 'Valid', 'Source', 'Throws']
  const cases = equations.flatMap((file) =>
    parsed(file)
      .statements.filter(
        (s): s is ts.FunctionDeclaration =>
          ts.isFunctionDeclaration(s) && (ts.getCombinedModifierFlags(s) & ts.ModifierFlags.Export) !== 0,
      )
      .map((f) => ({ name: `${file.replace('src/disciplines/', '')} ${f.name?.text}`, doc: docOf(f) })),
  )
  function docOf(f: ts.FunctionDeclaration): string {
    const ranges = ts.getLeadingCommentRanges(f.getSourceFile().text, f.pos) ?? []
    const last = ranges.at(-1)
    return last ? f.getSourceFile().text.slice(last.pos, last.end) : ''
  }
  it('finds equations', () => expect(cases.length).toBeGreaterThan(20))
  it.each(cases)('$name', ({ doc }) => {
    const lines = doc.split('\n').map((l) => l.replace(/^\s*\/?\*+\/?\s?/, ''))
    const at = labels.map((label) => lines.findIndex((l) => l.startsWith(label)))
    expect(Object.fromEntries(labels.map((l, i) => [l, at[i]! >= 0]))).toEqual(
      Object.fromEntries(labels.map((l) => [l, true])),
    )
    expect(at, 'labels in their order').toEqual([...at].sort((a, b) => a - b))
    const source = /^Source\s+([\w.-]*[\w])/.exec(lines[at[2]!]!)?.[1] ?? ''
    expect(Object.keys(sources)).toContain(source)
  })
})

describe('units are in the names', () => {
  const suffix = new RegExp(`_(${Object.keys(units).join('|')})$`)
  const looksLikeUnit = /_(mm|cm|in|ft|km|ml|L|l|min|h|deg|hPa|kPa|bar|mg|g|kW|kWh|mS|uS|ppm|LPM|gpm|gph)$/
  it('no name carries a unit that is not the engine’s', () => {
    const found = engine
      .filter((f) => !f.startsWith('src/render/'))
      .flatMap((f) =>
        nodesOf(parsed(f))
          .filter((n): n is ts.Identifier => ts.isIdentifier(n) && looksLikeUnit.test(n.text) && !suffix.test(n.text))
          .map((n) => `${f}: ${n.text}`),
      )
    expect([...new Set(found)]).toEqual([])
  })
})

describe('size', () => {
  it('keeps functions on one screen', () => {
    const long = code.flatMap((f) => {
      const s = parsed(f)
      return nodesOf(s)
        .filter((n) => ts.isFunctionDeclaration(n) || ts.isArrowFunction(n) || ts.isMethodDeclaration(n))
        .map((n) => ({
          n,
          lines: s.getLineAndCharacterOfPosition(n.end).line - s.getLineAndCharacterOfPosition(n.getStart()).line + 1,
        }))
        .filter(({ lines }) => lines > 70)
        .map(({ n, lines }) => `${f}: ${(n as ts.FunctionDeclaration).name?.text ?? 'function'} has ${lines} lines`)
    })
    expect(long).toEqual([])
  })
  it('splits files near 250 lines', () => {
    const long = code
      .map((f) => ({ f, lines: read(f).split('\n').length }))
      .filter(({ f, lines }) => lines > 300 && !/\/(tables|words)\/|letters/.test(f))
    expect(long).toEqual([])
  })
})

describe('verdicts are made in one place', () => {
  it('no check writes a verdict of its own', () => {
    const found = engine.filter((f) => f.startsWith('src/disciplines/') && /verdict:\s*'/.test(read(f)))
    expect(found).toEqual([])
  })
})
