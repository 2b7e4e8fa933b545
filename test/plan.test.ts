import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import Ajv2020 from 'ajv/dist/2020.js'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parsePlan, planText, readPlanText } from '../src/plan/document.ts'
import type { Field } from '../src/plan/field.ts'
import { migrate } from '../src/plan/migrations.ts'
import { documentSize } from '../src/plan/parse.ts'
import { valueAt, withValue } from '../src/plan/patch.ts'
import { type PlanDocument, planFields } from '../src/plan/plan.ts'
import { planSchema } from '../src/plan/schema.ts'
import { english } from '../src/render/words/en/english.ts'
import { issueText } from '../src/render/words/sentences.ts'

const examples = join(import.meta.dirname, '..', 'examples')
const good = ['balcony', 'school', 'hall'].map(
  (n) => [n, readFileSync(join(examples, `${n}.plan.json`), 'utf8')] as const,
)
const bad = readdirSync(join(examples, 'bad')).map((n) => [n, readFileSync(join(examples, 'bad', n), 'utf8')] as const)
const whole = [...good, ...bad].map(([, text]) => JSON.parse(text) as PlanDocument)
/** Whole plans, and each of their sections alone: a damaged section is read the same, and sooner. */
const documents = whole.flatMap((d) => [d, ...Object.entries(d).map(([key, v]) => ({ rootfall: 1, [key]: v }))])

const problems = (json: unknown) => parsePlan(json).issues.map((i) => `${i.at}: ${i.problem}`)

describe('the plan document', () => {
  it.each(good)('%s is read without an issue', (_, text) => {
    expect(readPlanText(text).issues).toEqual([])
  })

  it.each(good)('%s keeps the person’s own text through a round trip', (_, text) => {
    const { document } = readPlanText(text)
    expect(JSON.parse(planText(document))).toEqual(JSON.parse(text))
    expect(readPlanText(planText(document)).plan).toEqual(readPlanText(text).plan)
  })

  it('keeps inches as typed when another field is set', () => {
    const { document } = readPlanText(good[2]![1])
    const changed = withValue(document, 'column/sites/pitch', '8 in')
    expect(valueAt(changed, 'column/length')).toBe('5\' 4"')
    expect(valueAt(document, 'column/sites/pitch')).toBe('7 in')
  })

  it('reads a measure the same in inches and millimetres', () => {
    const pitch = (text: string) =>
      parsePlan({ rootfall: 1, column: { sites: { pitch: text } } }).plan.column?.sites?.pitch_m
    expect(pitch('7 in')).toBe(pitch('177.8 mm'))
  })

  it.each([
    [{ rootfall: 1, column: { length: 1850 } }, 'column/length: no-unit'],
    [{ rootfall: 1, colum: {} }, 'colum: unknown-key'],
    [{ rootfall: 1, column: { sites: { rings: 2.5 } } }, 'column/sites/rings: not-whole'],
    [{ rootfall: 1, column: { stub: { angle: '450 deg' } } }, 'column/stub/angle: out-of-bounds'],
    [{ rootfall: 1, column: { length: '1,850 mm' } }, 'column/length: ambiguous-number'],
    [{ rootfall: 1, reservoir: { fillVolume: '5 gal' } }, 'reservoir/fillVolume: ambiguous-unit'],
    [{ rootfall: 1, feed: { conductivity: '1100 ppm' } }, 'feed/conductivity: which-scale'],
    [{ rootfall: 1, feed: { conductivity: '1,100 ppm' } }, 'feed/conductivity: ambiguous-unit'],
    [{ rootfall: 1, feed: { targets: { N: '150 ppm' } } }, 'feed/targets/N: ambiguous-unit'],
    [{ rootfall: 1, column: { pipe: { outside: '110 mm' } } }, 'column/pipe: incomplete'],
    [{ rootfall: 1, column: [] }, 'column: wrong-kind'],
    [{ name: 'no version' }, 'rootfall: version-missing'],
    [{ rootfall: 99 }, ': version-newer'],
    [{ rootfall: 'one' }, ': version-unknown'],
    [[], ': not-an-object'],
    [null, ': not-an-object'],
    ['text', ': not-an-object'],
  ])('%j is answered by %s', (json, expected) => expect(problems(json)).toContain(expected))

  it('asks whether a decimal point has slipped', () => {
    const meant = (angle: string) =>
      parsePlan({ rootfall: 1, measured: { sites: [{ site: 14, angle }] } }).issues[0]?.expected.slice(2)
    expect([meant('410 deg'), meant('91 deg'), meant('-5 deg')]).toEqual([['41 deg'], ['9.1 deg'], []])
  })

  it('names the nearest key', () => {
    expect(parsePlan({ rootfall: 1, pump: { maxHed: '2 m' } }).issues[0]?.expected).toContain('maxHead')
  })

  it('takes __proto__ and its friends for plain unknown keys', () => {
    const json = JSON.parse(
      '{"rootfall":1,"__proto__":{"polluted":1},"constructor":1,"column":{"prototype":1,"__proto__":{"x":1}},"water":{"sources":[{"analysis":{"ions":{"__proto__":"1 mg/L"}}}]}}',
    )
    expect(problems(json).filter((p) => p.endsWith('unknown-key'))).toHaveLength(5)
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined()
  })

  it('bounds depth, size and length before looking', () => {
    let deep: unknown = 1
    for (let i = 0; i < 100_000; i++) deep = [deep]
    expect(problems({ rootfall: 1, column: deep })).toEqual([': too-deep'])
    expect(problems({ rootfall: 1, crops: Array.from({ length: 30_000 }, () => ({})) })).toEqual([': too-large'])
    expect(problems({ rootfall: 1, name: 'x'.repeat(5000) })).toEqual(['name: too-long'])
    expect(readPlanText('x'.repeat(2_000_000)).issues[0]?.problem).toBe('too-large')
    expect(documentSize({ a: [1, 2] })).toEqual({ depth: 2, values: 3 })
  })

  it('reports text that is not JSON with its place', () => {
    const issue = readPlanText('{ "rootfall": 1, }').issues[0]!
    expect(issue.problem).toBe('not-json')
    expect(issue.received).toMatch(/position|line/)
  })
})

describe('migrations', () => {
  const steps = [
    { from: 1, name: 'pump renamed', step: ({ pomp, ...rest }: PlanDocument) => ({ ...rest, pump: pomp }) },
    { from: 2, name: 'nothing', step: (d: PlanDocument) => d },
  ]
  it('go step by step and write the version', () => {
    expect(migrate({ rootfall: 1, pomp: 7 }, 1, 3, steps)).toEqual({ rootfall: 3, pump: 7 })
  })
  it('refuse a gap', () => expect(() => migrate({}, 1, 4, steps)).toThrow(RangeError))
})

describe('the schema', () => {
  const ajv = new Ajv2020({ strict: true, allowUnionTypes: true, allErrors: false })
  const valid = ajv.compile(planSchema())
  it.each(good)('accepts %s', (_, text) => expect(valid(JSON.parse(text)), JSON.stringify(valid.errors)).toBe(true))

  it('describes every field', () => {
    const walk = (f: Field, at: string): string[] => {
      const own = f.about.length > 3 ? [] : [at]
      if (f.kind === 'section') return [...own, ...Object.entries(f.fields).flatMap(([k, x]) => walk(x, `${at}/${k}`))]
      if (f.kind === 'list' || f.kind === 'map') return [...own, ...walk(f.of, `${at}/*`)]
      return f.kind === 'named' ? [...own, ...walk(f.section, at)] : own
    }
    expect(walk(planFields, '')).toEqual([])
  })

  it('agrees with the parser on structure: what the schema refuses, the parser reports', () => {
    fc.assert(
      fc.property(mutated(), (json) => valid(json) || parsePlan(json).issues.length > 0),
      { seed: 3, numRuns: 5000 },
    )
  })
})

/** Values that a tired hand, a wrong program or an attacker would put into a plan. */
const nasty: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(
    null,
    true,
    '',
    ' ',
    '104',
    '0 mm',
    '-5 mm',
    '1e999 mm',
    'NaN mm',
    '1/0 in',
    '1,500 mm',
    '5 gal',
    '°',
    {},
    [],
    [[]],
    Number.MAX_VALUE,
    -0,
    1e-320,
    '__proto__',
    '\u0000',
    '𝟙 mm',
  ),
  fc.string({ unit: 'grapheme', maxLength: 30 }),
  fc.double(),
  fc.integer(),
  fc
    .tuple(fc.double(), fc.constantFrom('mm', 'in', 'deg', 'L', 'L/h', '°C', '%', 'mg/L', 'kg'))
    .map(([n, u]) => `${n} ${u}`),
)

function pathsOf(value: unknown, at: string): string[] {
  if (typeof value !== 'object' || value === null) return [at]
  return [at, ...Object.entries(value).flatMap(([k, v]) => pathsOf(v, at === '' ? k : `${at}/${k}`))].filter(
    (p) => p !== '',
  )
}

const paths = documents.map((d) => pathsOf(d, ''))

function mutated(): fc.Arbitrary<PlanDocument> {
  return fc
    .tuple(
      fc.nat(documents.length - 1),
      fc.array(fc.tuple(fc.nat(10_000), nasty, fc.boolean()), { minLength: 1, maxLength: 4 }),
    )
    .map(([n, changes]) =>
      changes.reduce((document, [pick, value, rename]) => {
        const list = paths[n]!
        const path = list[pick % list.length]!
        try {
          return withValue(document, rename ? `${path}x` : path, value)
        } catch {
          return document
        }
      }, documents[n]!),
    )
}

describe('mutated plans', () => {
  it('never crash the parser, and each issue has its sentence: 100,000 of them', () => {
    fc.assert(
      fc.property(mutated(), (json) => {
        const { plan, issues } = parsePlan(json)
        for (const issue of issues) {
          const sentence = issueText(issue, english)
          if (/\{\w+\}/.test(sentence) || sentence.length < 10) return false
        }
        return typeof plan === 'object'
      }),
      { seed: 1, numRuns: 100_000 },
    )
  }, 600_000)
})
