import { beforeAll, describe, expect, it } from 'vitest'
import type { BatchFacts } from '../src/disciplines/nutrients/index.ts'
import { isKnown, type Known } from '../src/plan/known.ts'
import { withValue } from '../src/plan/patch.ts'
import type { PlanDocument } from '../src/plan/plan.ts'
import { metric } from '../src/render/display.ts'
import { bounds } from '../src/render/drawing/bounds.ts'
import type { Circle, Drawing, Lettering, Path } from '../src/render/drawing/primitives.ts'
import type { PaperName } from '../src/render/paper/size.ts'
import type { SheetInput } from '../src/render/sheets/context.ts'
import { plainFiles } from '../src/render/sheets/plain.ts'
import { type SheetSet, sheetSet } from '../src/render/sheets/set.ts'
import { doseTexts } from '../src/render/tables/feed.ts'
import { orderLines } from '../src/render/tables/feed-order.ts'
import { chargeBalance } from '../src/render/views/charge-balance.ts'
import { ionBands } from '../src/render/views/ions.ts'
import { phLadder } from '../src/render/views/ph-ladder.ts'
import { english } from '../src/render/words/en/english.ts'
import { example, inputOf } from './print/set-of.ts'

const names = ['balcony', 'school', 'hall'] as const
const known = <T>(fact: Known<T>): T => {
  if (!isKnown(fact)) throw new Error(`not known: ${fact.needs.join(', ')}`)
  return fact.known
}
const batchOf = (input: SheetInput): BatchFacts => known(input.facts.nutrients.batch)
/** A plan that does not tell of its feed, or not of one field of it. */
function without(document: PlanDocument, field?: string): PlanDocument {
  const { feed, ...rest } = document as PlanDocument & { readonly feed: Readonly<Record<string, unknown>> }
  if (field === undefined) return rest as PlanDocument
  const { [field]: _, ...told } = feed
  return { ...rest, feed: told } as PlanDocument
}
const inputs = new Map<string, SheetInput>()
const sets = new Map<string, SheetSet>()
const input = (name: string, paper: PaperName = 'A4') => inputs.get(`${name} ${paper}`)!
const texts = (drawing: Drawing): string[] => drawing.flatMap((p) => (p.kind === 'text' ? [p.text] : []))
/** Everything that a sheet of a set says, in one line. */
const said = (name: string, id: string, paper: PaperName = 'A4'): string =>
  sets
    .get(`${name} ${paper}`)!
    .pages.filter((p) => p.id === id)
    .flatMap((p) => texts(p.page.drawing))
    .join(' ')

/** Numbers hold to their units by a space that does not break. */
const plain = (text: string): string => text.replaceAll('\u00a0', ' ')

const feedSheets = ['batch', 'labels', 'disposal'] as const

beforeAll(() => {
  for (const name of names)
    for (const paper of ['A4', 'Letter'] as const) {
      const made = inputOf(example(name), paper)
      inputs.set(`${name} ${paper}`, made)
      sets.set(`${name} ${paper}`, sheetSet(made))
    }
}, 60_000)

describe('the sheets of the feed', () => {
  it('are in the set of every plan with a feed, and of none without', () => {
    for (const [key, set] of sets) {
      const ids = new Set(set.pages.map((p) => p.id))
      for (const id of feedSheets) expect(ids, `${key} ${id}`).toContain(id)
    }
    const bare = sheetSet(inputOf(without(example('hall')), 'A4'))
    expect(bare.pages.filter((p) => (feedSheets as readonly string[]).includes(p.id))).toEqual([])
    expect(bare.leftOut.join(' ')).not.toContain('bottle labels')
  }, 60_000)

  it('name what is missing where the feed is not told', () => {
    const set = sheetSet(inputOf(without(example('hall'), 'targets'), 'A4'))
    const about = set.leftOut.filter((t) => t.includes('batch') || t.includes('labels') || t.includes('disposal'))
    expect(about.length).toBe(3)
    for (const text of about) expect(text).toContain('targets')
  }, 60_000)

  it('tell every dose with the mass that the scale shows, on both papers', () => {
    for (const name of names)
      for (const paper of ['A4', 'Letter'] as const) {
        const doses = doseTexts(batchOf(input(name, paper)), english, input(name, paper).display)
        expect(doses.length).toBeGreaterThan(2)
        for (const dose of doses)
          for (const text of [dose.name, dose.mass, dose.perLitre]) expect(said(name, 'batch', paper)).toContain(text)
      }
  })

  it('let the tank hold the nitrogen and phosphorus of water and doses together', () => {
    // From the labels as printed on the bags, not from the engine's own composition.
    const shares: Readonly<Record<string, readonly [N: number, P: number]>> = {
      'calcium nitrate': [0.155, 0],
      'Two-bag B': [0.07, 0.14 * 0.4364],
    }
    const batch = batchOf(input('school'))
    const litres = 210
    const perLitre = known(batch.doses).reduce<readonly [number, number]>(
      ([N, P], { id, mass_kg }) => {
        const [n, p] = shares[id] ?? [0, 0]
        return [N + (mass_kg * 1000 * n) / 180, P + (mass_kg * 1000 * p) / 180]
      },
      // Sixty per cent of the borehole's 0.8 mg/L of nitrate nitrogen.
      [0.6 * 0.0008, 0],
    )
    const text = said('school', 'disposal')
    const told = (of: string) => Number(new RegExp(`${of} ([\\d.]+) g`).exec(text)?.[1])
    expect(told('nitrogen \\(N\\)')).toBeCloseTo(perLitre[0] * litres, 0)
    expect(told('phosphorus \\(P\\)')).toBeCloseTo(perLitre[1] * litres, 1)
    expect(text).toContain('210.0 L')
  })

  it('give each bottle its label, and name the danger of the acid on it', () => {
    const stock = known(input('balcony').facts.nutrients.stock)
    const text = said('balcony', 'labels')
    for (const { contents } of stock.bottles) for (const { id } of contents) expect(text).toContain(id)
    for (const name of ['Bottle A', 'Bottle B', 'Acid bottle', 'Nutrient solution']) expect(text).toContain(name)
    expect(text).toContain('ACID')
    expect(text).toContain('Never pour bottle into bottle undiluted')
    // The batch's five weak stocks get their labels as well.
    for (const { id, weakStock } of known(batchOf(input('balcony')).doses))
      if (weakStock) expect(text).toMatch(new RegExp(`Weak stock: ${id.split(' ')[0]}`))
  })

  it('pack the labels: cut lines apart from each other, all at full size on few pages', () => {
    const pagesOf = (name: string) => sets.get(`${name} A4`)!.pages.filter((p) => p.id === 'labels')
    expect(names.map((name) => pagesOf(name).length)).toEqual([2, 1, 1])
    for (const name of names)
      for (const { page } of pagesOf(name)) {
        const cuts = page.drawing.filter((p): p is Path => p.kind === 'path' && p.pen === 'hidden')
        const boxes = cuts.map((cut) => bounds([cut])!)
        expect(boxes.length).toBeGreaterThan(2)
        for (const [i, a] of boxes.entries())
          for (const b of boxes.slice(i + 1))
            expect(a.right < b.left || b.right < a.left || a.bottom > b.top || b.bottom > a.top).toBe(true)
      }
  })

  it('give dry portions where no bottles are made, as heavy as the batch sheet says', () => {
    const text = plain(said('hall', 'labels'))
    for (const name of ['Portion A, dry', 'Portion B, dry', 'A and B never in one bucket']) expect(text).toContain(name)
    for (const { name, mass, bottle } of doseTexts(batchOf(input('hall')), english, input('hall').display))
      expect(text.includes(`${mass} ${name}`), name).toBe(bottle !== 'acid')
    expect(said('balcony', 'labels')).not.toContain('Portion')
  })

  it('tell the contents of a bottle to the step of the scale', () => {
    // A scale of one gram shows no hundredths: 5 L of bottle A hold 190.66 g.
    expect(plain(said('school', 'labels'))).toContain('191 g calcium nitrate')
  })

  it('defer to local rules, and never send spent solution to a street drain', () => {
    for (const name of names) {
      const text = said(name, 'disposal')
      expect(text).toContain('The rules of your place decide')
      expect(text).toMatch(/Never: a street drain, a ditch, a pond/)
    }
    expect(said('school', 'disposal')).toContain('household bleach')
    expect(said('hall', 'disposal')).not.toContain('household bleach')
  })
})

describe('the batch as plain files', () => {
  it('weighs to the step of the scale and near the exact dose', () => {
    const files = plainFiles(input('balcony'))
    const rows = files
      .find((f) => f.name === 'batch.csv')!
      .text.trim()
      .split('\r\n')
      .slice(1)
    const doses = known(batchOf(input('balcony')).doses).filter((d) => d.mass_kg > 0)
    expect(rows.length).toBe(doses.length)
    for (const row of rows.slice(0, 4)) {
      const [, mass, exact] = row.split(',').map(Number) as [number, number, number]
      expect(Math.abs(mass * 100 - Math.round(mass * 100))).toBeLessThan(1e-6)
      // The doses are rounded together, so that one may stand two steps off.
      expect(Math.abs(mass - exact)).toBeLessThan(0.02)
    }
    expect(files.find((f) => f.name === 'batch.txt')!.text).toContain('! Goggles and gloves')
  })
})

describe('the order of mixing', () => {
  const lines = (name: string) => orderLines(batchOf(input(name)), english, metric)
  it('is water, acid with its cautions, calcium, sulfate, fill, readings', () => {
    for (const name of names) {
      const all = lines(name)
      const at = (text: string) => all.findIndex((l) => l.text.includes(text))
      const acid = name === 'school' ? 'sulfuric acid' : 'phosphoric acid'
      const order = [
        0,
        at(acid),
        at('calcium nitrate'),
        at('Epsom salt'),
        at('Fill up'),
        at('Read the pen'),
        at('Read pH'),
      ]
      expect(order).toEqual([...order].sort((a, b) => a - b))
      expect(Math.min(...order.slice(1))).toBeGreaterThan(0)
      expect(all[at(acid)]?.cautions).toEqual([english.cautions['acid'], english.cautions['bleach']])
      expect(all.at(-2)!.text).toContain('do not plant')
    }
  })
  it('has cautions that defer to the label and to the rules of the place', () => {
    expect(english.cautions['acid']).toMatch(/into water, never water into acid.*label/)
    expect(english.cautions['bleach']).toMatch(/poisonous.*label.*rules/)
  })
})

describe('the charts of the feed', () => {
  const common = { words: english.feedViews, display: metric, width_mm: 80 }
  const circles = (drawing: Drawing) => drawing.filter((p): p is Circle => p.kind === 'circle')

  it('mark each element as its finding says: a disc fails, a ring is watched', () => {
    for (const name of names) {
      const { findings } = input(name)
      const count = (verdict: string) =>
        findings.filter((f) => f.id === 'nutrients/element' && f.verdict === verdict).length
      const { marks } = ionBands({ ...common, batch: batchOf(input(name)), row_mm: 6 })
      expect(circles(marks).filter((c) => c.fill === 'solid').length, name).toBe(count('fail'))
      expect(circles(marks).filter((c) => c.fill === 'paper').length, name).toBe(count('watch'))
    }
    expect(input('balcony').findings.filter((f) => f.id === 'nutrients/element' && f.verdict === 'fail').length).toBe(1)
  })

  it('keep within the ruler whatever is reached, and say with an arrow what lies beyond it', () => {
    const batch = batchOf(input('hall'))
    const wild = { ...batch, reached_g_m3: { ...batch.reached_g_m3, N: 5000, K: 0 } }
    const { marks } = ionBands({ ...common, batch: wild, row_mm: 6 })
    for (const c of circles(marks)) {
      expect(c.centre[0]).toBeGreaterThanOrEqual(12)
      expect(c.centre[0]).toBeLessThanOrEqual(80 - 33)
    }
    expect(
      marks.filter((p): p is Path => p.kind === 'path' && p.pen === 'dimension' && p.fill === 'solid').length,
    ).toBe(2)
  })

  it('balance: both columns are of one height, in charges worked from the printed masses', () => {
    for (const name of names) {
      const batch = batchOf(input(name))
      const { figures } = chargeBalance({ ...common, batch, height_mm: 60 })
      const sums = figures.map((f) => f.text.text).filter((t) => /^\d+\.\d\d$/.test(t))
      expect(sums.length).toBe(2)
      expect(sums[0]).toBe(sums[1])
      const of = (ion: string) => batch.predicted.charges.find((c) => c.ion === ion)!.charge_eq_m3
      expect(of('K')).toBeCloseTo(batch.reached_g_m3.K / 39.098, 3)
      expect(of('Ca')).toBeCloseTo((2 * batch.reached_g_m3.Ca) / 40.078, 3)
      expect(-of('NO3')).toBeCloseTo(batch.reached_g_m3['NO3-N'] / 14.007, 3)
      const total = batch.predicted.charges.reduce((sum, c) => sum + c.charge_eq_m3, 0)
      expect(Math.abs(total)).toBeLessThan(1e-9)
    }
  })

  it('climb the ladder: water and batch rise in the air, the dose for today misses, the lasting one hits', () => {
    for (const name of names) {
      const batch = batchOf(input(name))
      const pH = input(name).plan.feed!.pH!
      const acid = batch.acids.find((a) => !a.product.passing)!
      expect(batch.waterPh.inAir).toBeGreaterThan(batch.waterPh.closed)
      expect(acid.driftsTo_pH).toBeGreaterThan(pH + 0.3)
      expect(acid.startsAt_pH).toBeLessThan(pH)
      const { figures } = phLadder({ ...common, batch, wanted: { pH, half: 0.3 }, height_mm: 60 })
      const texts = figures.map((f) => f.text.text)
      for (const n of [batch.waterPh.closed, acid.driftsTo_pH, acid.startsAt_pH, pH])
        expect(texts).toContain(n.toFixed(2))
      for (const f of figures) expect('field' in f.why || f.why.fact.startsWith('feed/')).toBe(true)
    }
  })

  it('write no figure over another', () => {
    const overlap = (a: Lettering, b: Lettering) =>
      Math.abs(a.at[0] - b.at[0]) < 3 && Math.abs(a.at[1] - b.at[1]) < 1.5 && a.text !== b.text
    for (const name of names) {
      const batch = batchOf(input(name))
      const { figures } = chargeBalance({ ...common, batch, height_mm: 44 })
      const all = figures.map((f) => f.text)
      for (const [i, a] of all.entries()) for (const b of all.slice(i + 1)) expect(overlap(a, b), a.text).toBe(false)
    }
  })
})

describe('a plan that changes', () => {
  it('has a batch sheet that follows: doubled grams for the doubled batch', () => {
    const twice = inputOf(withValue(example('hall'), 'feed/batch', '40 US gal'), 'A4')
    const grams = (i: SheetInput) => known(batchOf(i).doses).map((d) => d.exact_kg)
    const [once, more] = [grams(input('hall')), grams(twice)]
    for (const [i, g] of once.entries()) expect(more[i]).toBeCloseTo(2 * g, 9)
  })
})
