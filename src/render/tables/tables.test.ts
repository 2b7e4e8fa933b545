import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import balcony from '../../../examples/balcony.plan.json'
import hall from '../../../examples/hall.plan.json'
import school from '../../../examples/school.plan.json'
import { evaluate } from '../../evaluate.ts'
import { parsePlan } from '../../plan/document.ts'
import { isKnown } from '../../plan/known.ts'
import type { PlanDocument } from '../../plan/plan.ts'
import { inches, metric } from '../display.ts'
import { english } from '../words/en/english.ts'
import { spanish } from '../words/es/spanish.ts'
import { csv, unescaped } from './csv.ts'
import { patternTexts } from './cuts.ts'
import { cutsCsv } from './cuts-csv.ts'
import { partTexts } from './parts.ts'
import { partsCsv } from './parts-csv.ts'
import { runningTables } from './running-csv.ts'
import { BLANK, blanksIn, stepTexts } from './steps.ts'
import { textTable } from './text.ts'

/** A reader of comma-separated values, written from RFC 4180 and not from the writer. */
function read(text: string): string[][] {
  const rows: string[][] = [[]]
  let cell = ''
  let inside = false
  for (let i = 0; i < text.length; i++) {
    const c = text[i]!
    if (inside) {
      if (c !== '"') cell += c
      else if (text[i + 1] === '"') cell += text[i++]
      else inside = false
    } else if (c === '"') inside = true
    else if (c === ',' || (c === '\r' && text[i + 1] === '\n')) {
      rows.at(-1)!.push(cell)
      cell = ''
      if (c === '\r') {
        rows.push([])
        i++
      }
    } else cell += c
  }
  expect(cell).toBe('')
  expect(rows.pop()).toEqual([])
  return rows
}

const documents: readonly (readonly [string, PlanDocument])[] = [
  ['balcony', balcony],
  ['school', school],
  ['hall', hall],
]

describe('csv', () => {
  it('has semicolons and a decimal comma in a language with one, and its own words', () => {
    expect(
      csv(
        ['a', 'b'],
        [
          [1.5, 'x;y'],
          [-0.25, '1.5'],
        ],
        ',',
      ),
    ).toBe('a;b\r\n1,5;"x;y"\r\n-0,25;1.5\r\n')
  })

  it('escapes text that a spreadsheet would run, and leaves numbers', () => {
    expect(csv(['a'], [['=1+1'], ['@x'], ['+cmd'], ['-2+3'], ['\tx'], [-5.2], [1e-7]])).toBe(
      "a\r\n'=1+1\r\n'@x\r\n'+cmd\r\n'-2+3\r\n'\tx\r\n-5.2\r\n1e-7\r\n",
    )
  })
  it('quotes commas, quotes and line ends', () => {
    expect(csv(['a', 'b'], [['1,5 "x"', 'two\r\nlines']])).toBe('a,b\r\n"1,5 ""x""","two\r\nlines"\r\n')
  })
  it('gives back any text', () => {
    const text = fc.string({
      unit: fc.constantFrom('"', ',', '\r', '\n', "'", '=', '+', '-', '@', '\t', 'a', 'ł', '\0'),
    })
    fc.assert(
      fc.property(fc.array(fc.tuple(text, text), { minLength: 1 }), (rows) => {
        const back = read(csv(['one', 'two'], rows)).slice(1)
        expect(back.map((r) => r.map(unescaped))).toEqual(rows)
      }),
      { seed: 3, numRuns: 300 },
    )
  })
  it('refuses ragged rows and what is no number', () => {
    expect(() => csv(['a', 'b'], [['x']])).toThrow(/row 0 has 1 cells/)
    expect(() => csv(['a'], [[Number.NaN]])).toThrow(RangeError)
  })
})

describe.each(documents)('tables of %s', (name, document) => {
  const { plan } = parsePlan(document)
  const { facts } = evaluate(plan)
  const parts = isKnown(facts.parts) ? facts.parts.known : null
  const build = isKnown(facts.build) ? facts.build.known : null

  it('knows parts and steps', () => expect([parts === null, build === null]).toEqual([false, false]))

  it('writes every part on a line of its own, with its price', () => {
    const [header, ...rows] = read(partsCsv(parts!, facts.nutrients, english))
    expect(rows.map((r) => r[0])).toEqual(parts!.parts.map((p) => p.id))
    const price = header!.findIndex((h) => h.startsWith('price ('))
    const sum = rows
      .filter((r) => r[header!.indexOf('from')] === 'shop')
      .reduce((total, r) => total + Number(r[price]), 0)
    expect(sum).toBeCloseTo(parts!.total.known_money, 1)
  })

  it('writes every piece, and pieces end before the rest of their length', () => {
    const [header, ...rows] = read(cutsCsv(facts.cuts, english))
    const at = (r: string[], h: string) => Number(r[header!.indexOf(h)])
    const wanted = facts.cuts.materials
      .filter((m) => m.plan !== null)
      .reduce((n, m) => n + m.pieces.reduce((k, p) => k + p.count, 0), 0)
    expect(rows.length).toBe(wanted)
    for (const r of rows)
      expect(at(r, 'to (mm)')).toBeLessThanOrEqual(at(r, 'length (mm)') - at(r, 'left over on this length (mm)') + 0.01)
  })

  it('shows each way of cutting with all its pieces', () => {
    for (const m of facts.cuts.materials)
      for (const p of patternTexts(m, english, metric)) expect(p.pieces, m.of).toMatch(/^\d+ × /)
  })

  it('has a name for every part, tool, step, act, caution and test', () => {
    for (const p of parts!.parts) {
      expect(english.parts.names, name).toHaveProperty([p.id])
      expect(english.parts.kinds).toHaveProperty([p.kind])
      for (const size of Object.keys(p.sizes)) expect(english.parts.sizes).toHaveProperty([size])
    }
    for (const t of parts!.tools) expect(english.parts.tools).toHaveProperty([t.id])
    for (const it of stepTexts(build!, english, inches)) {
      const text = [it.title, ...it.acts, ...it.cautions, ...it.waits, it.test ?? ''].join(' ')
      expect(text, it.id).not.toMatch(/[{}]|undefined|NaN/)
    }
  })

  it('names every part that a step uses', () => {
    for (const s of build!.steps) {
      for (const key of s.actions) expect(english.steps.acts).toHaveProperty([key])
      for (const key of s.cautions) expect(english.cautions).toHaveProperty([key])
    }
    expect(partTexts(parts!, english, metric).every((p) => p.name.length > 0)).toBe(true)
  })

  it('leaves no empty place where a pump has no name, and tells its head in metres', () => {
    const nameless: PlanDocument = { ...balcony, pump: { ...balcony.pump, name: ' ' } }
    const { parts: facts } = evaluate(parsePlan(nameless).plan).facts
    if (!isKnown(facts)) throw new RangeError('the parts are not known')
    const pump = partTexts(facts.known, english, metric).find((p) => p.id === 'pump')
    expect(pump?.size).toMatch(/^head 2\.2 m, /)
  })
})

describe('steps', () => {
  const method = (sites: object, stub: object = {}, base: object = {}): PlanDocument => ({
    ...balcony,
    column: {
      ...balcony.column,
      sites: { ...balcony.column.sites, ...sites },
      stub: { ...balcony.column.stub, ...stub },
      base: { ...balcony.column.base, ...base },
    },
  })
  const textsOf = (document: PlanDocument) => {
    const { build } = evaluate(parsePlan(document).plan).facts
    return isKnown(build) ? stepTexts(build.known, english, metric) : []
  }

  it('uses every act and caution it has words for', () => {
    const plans: PlanDocument[] = [
      ...['stub', 'pocket', 'hole', 'fitting'].map((m) => method({ method: m })),
      ...['silicone', 'weld', 'epoxy', 'grommet'].map((joint) => method({}, { joint })),
      method({}, { gap: '0.4 mm' }),
      method({}, { hole: 'square to the wall', end: 'saddle' }),
      ...['flange on the lid', 'own foot'].map((kind) => method({}, {}, { kind })),
      ...['ring', 'tee'].map((kind) => ({ ...balcony, distributor: { ...balcony.distributor, kind } })),
      ...['glued cap', 'test plug'].map((cap) => ({ ...balcony, column: { ...balcony.column, cap } })),
      { ...balcony, place: { ...balcony.place, setting: 'care home', children: true } },
      { ...balcony, pump: { ...balcony.pump, supply: '12 V' }, tools: { ...balcony.tools, laser: true } },
      method({}, { pipe: { outside: '50 mm', wall: '1.8 mm' } }),
    ]
    const none = { ...balcony, distributor: undefined, column: { ...balcony.column, base: undefined } }
    const facts = [...plans, none, school].map((p) => evaluate(parsePlan(p).plan).facts.build)
    const steps = facts.flatMap((b) => (isKnown(b) ? b.known.steps : []))
    const missing = (have: object, used: string[]) => Object.keys(have).filter((k) => !used.includes(k))
    expect(
      missing(
        english.steps.acts,
        steps.flatMap((s) => s.actions),
      ),
    ).toEqual([])
    expect(
      missing(
        english.cautions,
        steps.flatMap((s) => s.cautions),
      ),
    ).toEqual([])
    expect(
      missing(
        english.steps.tests,
        steps.flatMap((s) => (s.test === null ? [] : [s.test.id])),
      ),
    ).toEqual([])
    expect(
      missing(
        english.steps.titles,
        steps.map((s) => s.id),
      ),
    ).toEqual([])
  })

  it('leaves a line to write on where the plan does not say a number', () => {
    const { neededFlow: _flow, ...riser } = balcony.riser
    const texts = textsOf({ ...balcony, riser })
    expect(texts.find((t) => t.id === 'bucket-test')?.acts[0]).toContain(BLANK)
    expect(blanksIn(texts)).toBe(blanksIn(textsOf(balcony)) + 1)
  })

  it('names the numbers of the steps it needs, all of them before it', () => {
    for (const t of textsOf(balcony)) for (const n of t.needs) expect(n).toBeLessThan(t.number)
  })

  it('speaks in the owner’s units', () => {
    const { build } = evaluate(parsePlan(hall).plan).facts
    const texts = isKnown(build) ? stepTexts(build.known, english, inches) : []
    expect(texts.find((t) => t.id === 'cut-column')?.acts.join(' ')).toContain('64 in')
  })
})

it('sets a table for a terminal with figures on a right edge', () => {
  const columns = [
    { heading: 'Part', align: 'words' },
    { heading: 'n', align: 'figures' },
  ] as const
  expect(
    textTable(columns, [
      ['Cup', '24'],
      ['Pump — a', '1'],
    ]),
  ).toBe('Part       n\nCup       24\nPump — a   1')
})

describe('tables of what is watched', () => {
  const { plan } = parsePlan(balcony as PlanDocument)
  const { facts, findings } = evaluate(plan)
  const of = (name: string, words = english) =>
    runningTables({ facts, findings, words, display: { ...metric, decimal: words.decimal } }).find(
      (t) => t.name === name,
    )!.text
  const numbers = (name: string) =>
    read(of(name))
      .slice(1)
      .map((r) => r.map(Number))

  it('give every finding with its number between its limits where it holds', () => {
    const rows = read(of('findings.csv')).slice(1)
    expect(rows.map((r) => r[0])).toEqual(findings.map((f) => f.id))
    for (const [id, , , verdict, low, high, , min, max] of rows.filter((r) => r[3] === 'holds')) {
      if (min !== '') expect(Number(low), `${id} ${verdict}`).toBeGreaterThanOrEqual(Number(min) - 1e-3)
      if (max !== '') expect(Number(high), `${id} ${verdict}`).toBeLessThanOrEqual(Number(max) + 1e-3)
    }
  })

  it('give the hours of the day that the course is drawn from, in degrees', () => {
    if (facts.day === null || !isKnown(facts.day)) throw new Error('the balcony has a day')
    const { highest_C, lowest_C } = facts.day.known.hotLow.course
    const low = numbers('day.csv').map((r) => r[3]!)
    expect(low).toHaveLength(24)
    expect(Math.max(...low)).toBeLessThanOrEqual(highest_C + 0.005)
    expect(Math.max(...low)).toBeGreaterThan(highest_C - 0.5)
    expect(Math.min(...low)).toBeGreaterThanOrEqual(lowest_C - 0.005)
  })

  it('give a stick that fills as it rises, with its two lines', () => {
    const rows = numbers('dip-stick.csv')
    for (const [i, [level, volume]] of rows.slice(1).entries()) {
      expect(level).toBeGreaterThanOrEqual(rows[i]![0]!)
      expect(volume).toBeGreaterThanOrEqual(rows[i]![1]!)
    }
    expect(of('dip-stick.csv')).toMatch(/,FILL\r\n/)
    expect(of('dip-stick.csv')).toMatch(/,LOW\r\n/)
  })

  it('tell ages and gusts as the facts have them', () => {
    const { tipping } = facts.structure
    if (!isKnown(tipping)) throw new Error('the balcony can tip')
    const gust = tipping.known.cells.map((c) => Number(c.falls_m_s.toFixed(2)))
    expect(numbers('tipping.csv').map((r) => r[5])).toEqual(gust)
    const { times, hottest } = facts.hydraulics.stop
    expect(numbers('stop.csv')).toHaveLength(times.length + hottest.length)
  })

  it('are written with semicolons and commas in Spanish, and with as many columns', () => {
    for (const { name, text } of runningTables({ facts, findings, words: english, display: metric })) {
      const other = of(name, spanish)
      expect(other.split('\r\n')[0]!.split(';').length, name).toBe(read(text)[0]!.length)
      expect(other).not.toMatch(/(^|;)-?\d+\.\d+(;|$)/m)
    }
    expect(of('day.csv', spanish)).toMatch(/\r\n0;\d+,\d/)
  })
})
