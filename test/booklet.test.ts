import { describe, expect, it } from 'vitest'
import type { PlanDocument } from '../src/plan/plan.ts'
import { booklet } from '../src/render/booklet/booklet.ts'
import { bookletHtml } from '../src/render/booklet/html.ts'
import { type BookletInput, given } from '../src/render/booklet/input.ts'
import type { Block, ExampleBlock } from '../src/render/booklet/model.ts'
import { bookletPages } from '../src/render/booklet/pages.ts'
import { examplesOf } from '../src/render/booklet/pupils.ts'
import { CROP_mm } from '../src/render/booklet/style.ts'
import { bounds } from '../src/render/drawing/bounds.ts'
import { bookletSentences } from '../src/render/words/en/booklet.ts'
import { pupilSentences } from '../src/render/words/en/booklet-pupils.ts'
import { bookletSentences as cuaderno } from '../src/render/words/es/booklet.ts'
import { pupilSentences as alumnos } from '../src/render/words/es/booklet-pupils.ts'
import { sheetSentences as hojas } from '../src/render/words/es/sheets.ts'
import { spanish } from '../src/render/words/es/spanish.ts'
import { BAD, EXAMPLES, example, madeByHand, varied } from './plans.ts'
import { letteringFaults } from './print/lettering.ts'
import { inputOf } from './print/set-of.ts'

const bases = new Map<PlanDocument, ReturnType<typeof inputOf>>()
const input = (document: PlanDocument, units: 'mm' | 'in', paper: 'A4' | 'Letter' = 'A4'): BookletInput => {
  const known = bases.get(document) ?? inputOf(document, 'A4')
  bases.set(document, known)
  const base = { ...known, paper }
  return { ...base, booklet: bookletSentences, pupils: pupilSentences, display: { ...base.display, lengths: units } }
}
const made = (document: PlanDocument, units: 'mm' | 'in', paper: 'A4' | 'Letter' = 'A4') =>
  booklet(input(document, units, paper))
const blocks = (b: ReturnType<typeof booklet>): readonly Block[] => b.chapters.flatMap((c) => c.blocks)
const examples = (b: ReturnType<typeof booklet>): readonly ExampleBlock[] =>
  blocks(b).filter((x): x is ExampleBlock => x.kind === 'example')

const read = { balcony: example('balcony'), hall: example('hall'), school: example('school') }
const plans: readonly (readonly [string, PlanDocument])[] = [
  ...EXAMPLES.map((name) => [name, read[name]] as const),
  ...Object.entries(madeByHand),
  ...varied(12, 4)
    .slice(5)
    .map((d, i) => [`varied ${i}`, d] as const),
]

/** The sum as it stands on the page, worked out again by nothing but the four operations on the printed figures. */
function workedOut(work: string): { readonly value: number; readonly said: number; readonly digits: number } {
  const [left, right] = work.split(' = ') as [string, string]
  const plain = left
    .replaceAll('×', '*')
    .replaceAll('÷', '/')
    .replaceAll('−', '-')
    .replaceAll('²', '**2')
    .replaceAll('^', '**')
    .replaceAll(',', '.')
  if (!/^[\d.+\-*/() ]+$/.test(plain)) throw new Error(`not a sum: ${work}`)
  const figure = /^−?[\d.,]+/.exec(right)![0].replace('−', '-').replace(',', '.')
  const value = new Function(`return ${plain}`)() as number
  return { value, said: Number(figure), digits: (figure.split('.')[1] ?? '').length }
}

describe('the page for pupils', () => {
  it.each(plans)('reaches the plan’s numbers by hand in both systems: %s', (_, document) => {
    for (const units of ['mm', 'in'] as const) {
      const own = examplesOf(given(input(document, units)))
      for (const e of own) {
        expect(e.agrees, `${e.question} ${e.work} ${e.plan}`).not.toBe('different')
        const { value, said, digits } = workedOut(e.work)
        expect(Math.abs(value - said), e.work).toBeLessThanOrEqual(Math.max(0.5 * 10 ** -digits, 0.05) + 1e-9)
        expect(`${e.question} ${e.given} ${e.rule} ${e.plan}`).not.toMatch(/[{}]|undefined|NaN/)
      }
    }
  })

  it('has the examples that the plan has numbers for', () => {
    const ids = (name: (typeof EXAMPLES)[number]) => examples(made(read[name], 'mm')).map((e) => e.id)
    const all = ['round', 'spacing', 'sites', 'height', 'saw', 'bucket', 'grams-1', 'grams-2', 'ions']
    expect(ids('balcony')).toEqual(expect.arrayContaining([...all, 'hole', 'box']))
    expect(ids('school')).toEqual(expect.arrayContaining([...all, 'pail']))
    // π × 110 mm, a sixth of it, 90° − 45°, and 500 × 330 mm by the depth: by hand, from the plan's own text.
    const text = examples(made(read.balcony, 'mm')).map((e) => e.plan)
    expect(text.slice(0, 5).map((t) => t.split('. ')[0])).toEqual([
      'The plan says 345.6 mm',
      'The plan says 57.6 mm',
      'The plan says 24',
      'The plan says 1030 mm',
      'The plan says 45°',
    ])
  })
})

describe('the worksheet', () => {
  it('hides the steps and the results, which stand among the answers in the same order', () => {
    for (const units of ['mm', 'in'] as const) {
      const b = made(read.balcony, units)
      const asked = examples(b)
      const html = bookletHtml({ booklet: b, sentences: bookletSentences, paper: 'A4', faces: [] })
      const sheet = html.slice(html.indexOf('<section id="pupils"'), html.indexOf('<section id="answers"'))
      const answers = b.chapters
        .find((c) => c.id === 'answers')!
        .blocks.flatMap((x) => (x.kind === 'text' ? [x.text] : []))
      expect(answers.length).toBe(asked.length + 1)
      for (const [i, e] of asked.entries()) {
        expect(e.question.startsWith(`${i + 1}. `)).toBe(true)
        expect(answers[i + 1]).toBe(`${i + 1}. ${e.work}. ${e.plan}`)
        expect(sheet).not.toContain(e.plan)
        expect(sheet).not.toContain(e.work)
      }
    }
  })

  it('goes from lengths over ratios to pH, each band under its name', () => {
    const sheet = made(read.balcony, 'mm').chapters.find((c) => c.id === 'pupils')!
    const names = sheet.blocks.flatMap((b) => (b.kind === 'heading' ? [b.text] : []))
    expect(names).toEqual([pupilSentences['band-arcs'], pupilSentences['band-ratios'], pupilSentences['band-pH']])
  })
})

describe('the booklet', () => {
  it('says every chapter in both systems of units', () => {
    for (const units of ['mm', 'in'] as const) {
      const b = made(read.balcony, units)
      expect(b.chapters.map((c) => c.id)).toEqual([
        'purpose',
        'parts',
        'drawings',
        'steps',
        'wet',
        'start',
        'batch',
        'running',
        'log',
        'pupils',
        'answers',
        'templates',
      ])
      const steps = JSON.stringify(b.chapters.find((c) => c.id === 'steps'))
      expect(steps).toContain(units === 'mm' ? '345.6 mm' : '13 5/8 in')
      expect(steps).not.toMatch(units === 'mm' ? /\d in\b/ : /345\.6 mm/)
    }
  })

  it('has cautions and a test at its steps, and a picture at each', () => {
    const steps = blocks(made(read.balcony, 'mm')).filter((b) => b.kind === 'step')
    const cut = steps.find((s) => s.id === 'cut-holes')!
    expect(cut.cautions.length).toBeGreaterThan(0)
    expect(steps.filter((s) => s.test !== null).length).toBeGreaterThan(8)
  })

  it.each(EXAMPLES)('draws every step from the model: %s', (name) => {
    const steps = blocks(made(read[name], 'in')).filter((b) => b.kind === 'step')
    expect(steps.length).toBeGreaterThan(25)
    expect(steps.filter((s) => s.picture === null).map((s) => s.id)).toEqual([])
  })

  it('has no batch sheet without a feed, and counts its blanks', () => {
    const { feed: _, pump: __, ...rest } = example('balcony')
    const b = made(rest, 'mm')
    expect(b.chapters.map((c) => c.id)).not.toContain('batch')
    expect(b.blanks).toBeGreaterThan(made(read.balcony, 'mm').blanks)
    expect(JSON.stringify(b.chapters[0])).toContain(`This booklet has ${b.blanks} blanks`)
  })

  it.each([...plans, ...BAD.map((name) => [name, example(`bad/${name}`)] as const)])(
    'is whole for %s',
    (_, document) => {
      const i = input(document, 'mm')
      const b = booklet(i)
      const html = bookletHtml({ booklet: b, sentences: bookletSentences, paper: 'A4', faces: [] })
      const visible = html.replace(/<(style|script)[\s\S]*?<\/\1>/g, '')
      expect(visible).not.toMatch(/undefined|NaN|\{[a-z-]+\}/i)
      // Every tick has a name of its own, or one would tick another.
      const kept = [...html.matchAll(/data-keep="([^"]+)"/g)].map((m) => m[1])
      expect(new Set(kept).size).toBe(kept.length)
      expect(html).not.toMatch(/(src|href)="(?!#|data:)/)
      expect(html).not.toMatch(/url\((?!data:)/)
      // Sheets have tests of their own.
      const sheets = new Set(blocks(b).flatMap((x) => (x.kind === 'sheet' ? [x.page] : [])))
      for (const page of bookletPages(given(i), b)) if (!sheets.has(page)) expect(letteringFaults(page)).toEqual([])
    },
  )

  it.each(EXAMPLES.flatMap((name) => (['A4', 'Letter'] as const).map((paper) => [name, paper] as const)))(
    'has 12 to 20 pages and an appendix, in letters that are read at arm’s length: %s on %s',
    (name, paper) => {
      const languages = [
        input(read[name], 'mm', paper),
        { ...input(read[name], 'in', paper), words: spanish, sentences: hojas, booklet: cuaderno, pupils: alumnos },
      ]
      for (const i of languages) {
        const b = booklet(i)
        const pages = bookletPages(given(i), b)
        const texts = pages.map((p) => p.drawing.filter((x) => x.kind === 'text'))
        // Its number stands last on every page.
        const numbers = texts.map((t) => t.at(-1)!.text)
        const [body, apart] = [numbers.filter((n) => !/ A\d/.test(n)), numbers.filter((n) => / A\d/.test(n))]
        expect(body.length).toBeGreaterThanOrEqual(12)
        expect(body.length).toBeLessThanOrEqual(20)
        expect(body.at(-1)).toMatch(new RegExp(`${body.length} \\S+ ${body.length}$`))
        expect(apart).toEqual(numbers.slice(body.length))
        // The answers and what the full-size sheets are for, a page each, then the sheets.
        expect(apart.length).toBe(2 + b.chapters.at(-1)!.blocks.filter((x) => x.kind === 'sheet').length)
        // The contents tell on which page a chapter begins; its title stands there.
        const first = texts[0]!.map((t) => t.text)
        const page = (title: string) => Number(first[first.indexOf(title) + 1])
        const log = b.chapters.find((c) => c.id === 'log')!.title
        expect(texts[page(log) - 1]!.map((t) => t.text)).toContain(log)
        // A sheet has bars, balloons and a title block of its own.
        const words = texts.slice(0, body.length).filter((t) => !t.some((x) => x.text === `4 ${i.sentences.inch}`))
        const own = words.flat().filter((t) => t.face !== 'drafting')
        expect(Math.min(...own.map((t) => t.size_mm))).toBeGreaterThanOrEqual(2.7)
      }
    },
  )

  it('tells when to top up, to which line and by which stick', () => {
    const running = JSON.stringify(made(read.balcony, 'mm').chapters.find((c) => c.id === 'running'))
    // From the plan’s own text: fill line 36 L, low line 12 L in a box of 500 × 330 mm.
    expect(running).toContain('219.6 mm')
    expect(running).toContain('73.2 mm')
    expect(running).toContain('24.0 L')
    expect(running).toContain('dip stick')
    const { reservoir: _, ...rest } = read.balcony
    const bare = made(rest, 'mm').chapters.find((c) => c.id === 'running')
    expect(JSON.stringify(bare)).toContain('Top up every ________')
  })

  it('keeps every full-size sheet within what the printed page shows of it', () => {
    for (const paper of ['A4', 'Letter'] as const)
      for (const name of EXAMPLES)
        for (const block of blocks(made(read[name], 'mm', paper))) {
          if (block.kind !== 'sheet') continue
          const box = bounds(block.page.drawing)!
          expect(box.left, `${name} ${block.title}`).toBeGreaterThan(CROP_mm)
          expect(box.bottom).toBeGreaterThan(CROP_mm)
          expect(box.right).toBeLessThan(block.page.width_mm - CROP_mm)
          expect(box.top).toBeLessThan(block.page.height_mm - CROP_mm)
        }
  })

  it('is the same from print to print', () => {
    const html = () =>
      bookletHtml({ booklet: made(read.hall, 'in'), sentences: bookletSentences, paper: 'Letter', faces: [] })
    expect(html()).toBe(html())
  })
})
