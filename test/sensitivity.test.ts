import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { evaluate } from '../src/evaluate.ts'
import { parsePlan } from '../src/plan/document.ts'
import { orNull } from '../src/plan/known.ts'
import { withoutValue, withValue } from '../src/plan/patch.ts'
import type { PlanDocument } from '../src/plan/plan.ts'
import { inputsOf } from '../src/sensitivity/inputs.ts'
import { withValueAt } from '../src/sensitivity/numbers.ts'
import { watched } from '../src/sensitivity/read.ts'
import { type ResultId, resultIds } from '../src/sensitivity/results.ts'
import { type ResultSwings, type SensitivityOptions, sensitivity, sensitivitySteps } from '../src/sensitivity/swings.ts'
import { readingBands } from '../src/tables/readings.ts'

const example = (name: string): PlanDocument =>
  JSON.parse(readFileSync(join(import.meta.dirname, '..', 'examples', `${name}.plan.json`), 'utf8'))
const balcony = example('balcony')
const planOf = (document: PlanDocument) => parsePlan(document).plan
const swingsOf = (document: PlanDocument, id: ResultId, options: SensitivityOptions = {}): ResultSwings =>
  sensitivity(planOf(document), { told: 0, ...options, only: [id] }).results[0]!
const swing = (of: ResultSwings, at: string) => of.swings.find((s) => s.at === at)

describe('swings by hand', () => {
  it('of the usable volume are what the pail is off, line by line', () => {
    const usable = swingsOf(balcony, 'usable')
    const { highShare } = readingBands.rows.pour
    expect(usable.value).toBeCloseTo(0.024, 12)
    expect(swing(usable, 'reservoir/fillVolume')!.high).toBeCloseTo(highShare * 0.036, 12)
    expect(swing(usable, 'reservoir/fillVolume')!.low).toBeCloseTo(-highShare * 0.036, 12)
    expect(swing(usable, 'reservoir/lowVolume')!.high).toBeCloseTo(-highShare * 0.012, 12)
    expect(usable.swings).toHaveLength(2)
  })

  it('of the cost of a month are shares of it, by power and by price', () => {
    const energy = swingsOf(balcony, 'energy')
    const { ratedPower, price } = readingBands.rows
    expect(swing(energy, 'pump/power')!.high! / energy.value).toBeCloseTo(ratedPower.highShare, 9)
    expect(swing(energy, 'prices/energyPerKWh')!.low! / energy.value).toBeCloseTo(-price.lowShare, 9)
    expect(energy.own).toBe(0)
  })

  it('of righting go with one over the square of the gust', () => {
    const tips = swingsOf(balcony, 'tips')
    const { highShare, lowShare } = readingBands.rows.gust
    const gust = swing(tips, 'place/gust')!
    expect(tips.value + gust.high!).toBeCloseTo(tips.value / (1 + highShare) ** 2, 6)
    expect(tips.value + gust.low!).toBeCloseTo(tips.value / (1 - lowShare) ** 2, 6)
  })

  it('of the highest site are the tape’s error over its whole height, since all marks count from one end', () => {
    const highest = swingsOf(balcony, 'highest')
    const { highShare, high } = readingBands.rows.tape
    const way_m = 7 * 0.18
    expect(swing(highest, 'column/sites/pitch')!.high).toBeCloseTo(highShare * way_m + high + 0.0005, 9)
    expect(swing(highest, 'column/sites/first')!.high).toBeCloseTo(highShare * 0.22 + high + 0.0005, 9)
  })

  it('of the days between top-ups by thirst, one crop at a time', () => {
    const days = swingsOf(balcony, 'days')
    const { highShare } = readingBands.rows.thirst
    const use = 16 * 0.2 + 8 * 0.1
    const more = 16 * 0.2 * (1 + highShare) + 8 * 0.1
    expect((days.value + swing(days, 'crops/0/thirst')!.high!) / days.value).toBeCloseTo(use / more, 9)
  })

  it('of the flow span the shapes between the box figures', () => {
    const flow = swingsOf(balcony, 'flow')
    const shape = swing(flow, 'pump/shape')!
    expect(shape.low).toBeLessThan(0)
    expect(shape.high).toBeGreaterThan(0)
    // The page’s band at the low line; the middle of each end lies half of what warm and cold water make of it away.
    const { low, high } = orNull(evaluate(planOf(balcony)).facts.hydraulics.flow)!.least_m3_s
    expect(Math.abs(flow.value + shape.low! - low)).toBeLessThan(2.5 * flow.own)
    expect(Math.abs(flow.value + shape.high! - high)).toBeLessThan(2.5 * flow.own)
  })
})

describe('readings that say nothing', () => {
  it('have no swing: the colour of the wind does not move the tank', () => {
    const usable = swingsOf(balcony, 'usable')
    expect(swing(usable, 'place/gust')).toBeUndefined()
    expect(usable.rest).toEqual({ count: 0, size: 0 })
  })

  it('are summed up below the told share, and the greatest of them is told', () => {
    const all = swingsOf(balcony, 'flow').swings
    const few = swingsOf(balcony, 'flow', { told: 0.99 })
    expect(few.swings).toHaveLength(1)
    expect(few.rest.size).toBe(all[1]!.size)
    for (const s of all.slice(1)) expect(s.size).toBeLessThanOrEqual(few.rest.size)
  })

  it('a maker’s curve takes the shape’s place, and a bucket test knows its own error', () => {
    const curve = [
      { head: '2.2 m', flow: '0 L/h' },
      { head: '1.4 m', flow: '900 L/h' },
      { head: '0 m', flow: '1800 L/h' },
    ]
    const made = inputsOf(planOf(withValue(balcony, 'pump/curve', curve))).map((i) => i.at)
    expect(made).toContain('pump/curve')
    expect(made).not.toContain('pump/shape')
    const tests = [{ volume: '5 L', time: '62 s', outletHeight: '1.78 m' }]
    const tested = inputsOf(planOf(withValue(balcony, 'pump/tests', tests))).map((i) => i.at)
    expect(tested).not.toContain('pump/shape')
    expect(tested.filter((at) => at.startsWith('pump/tests'))).toEqual([])
  })
})

describe('what is kept', () => {
  const cheap: readonly ResultId[] = ['flow', 'overflow', 'usable', 'days', 'dry', 'tips', 'highest', 'energy']
  it.each(['balcony', 'school', 'hall'])(
    '%s: swings are the same as with everything computed afresh for every reading',
    (name) => {
      const plan = planOf(example(name))
      const kept = sensitivity(plan, { only: cheap, told: 0 })
      expect(sensitivity(plan, { only: cheap, told: 0, afresh: true })).toEqual(kept)
      expect(kept.results.length).toBeGreaterThan(4)
    },
    120_000,
  )

  it('notes what a computation reads, and what it only copies', () => {
    const { watched: plan, seen } = watched({ a: { b: 1, c: [2, 3] }, d: 4 })
    expect(plan.a.c.map((n) => n + plan.a.b)).toEqual([3, 4])
    expect(seen.has('a/c/1')).toBe(true)
    expect(seen.has('a/b')).toBe(true)
    expect(seen.has('d')).toBe(false)
    expect({ ...plan.a }.b).toBe(1)
  })

  it('leaves the plan as it was', () => {
    const whole = { a: [{ b: 1 }, { b: 2 }] }
    expect(withValueAt(whole, ['a', '1', 'b'], 5)).toEqual({ a: [{ b: 1 }, { b: 5 }] })
    expect(whole).toEqual({ a: [{ b: 1 }, { b: 2 }] })
  })
})

describe('properties', () => {
  it('a swing is never negative, and grows with what a reading may be off', () => {
    const monotone: readonly ResultId[] = ['usable', 'flow', 'tips', 'energy', 'highest']
    const plan = planOf(balcony)
    fc.assert(
      fc.property(
        fc.constantFrom(...monotone),
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        fc.double({ min: 1.01, max: 2, noNaN: true }),
        (id, factor, times) => {
          const at = (f: number) => sensitivity(plan, { only: [id], told: 0, factor: f }).results[0]!.swings
          const wide = new Map(at(factor * times).map((s) => [s.at, s.size]))
          for (const s of at(factor)) {
            expect(s.size).toBeGreaterThan(0)
            if (wide.has(s.at)) expect(wide.get(s.at)!, `${id} ${s.at}`).toBeGreaterThanOrEqual(s.size * (1 - 1e-9))
          }
        },
      ),
      { numRuns: 6, seed: 52 },
    )
  }, 120_000)

  it('inches give the same swings', () => {
    const inches = withValue(
      withValue(withValue(balcony, 'column/length', '72.83464566929134 in'), 'riser/bore', '0.5118110236220472 in'),
      'place/gust',
      '65.61679790026247 ft/s',
    )
    for (const id of ['flow', 'tips', 'highest'] as const) {
      const [a, b] = [swingsOf(balcony, id), swingsOf(inches, id)]
      for (const s of a.swings) expect(swing(b, s.at)!.size / s.size, `${id} ${s.at}`).toBeCloseTo(1, 6)
    }
  }, 60_000)
})

describe('plans with blanks', () => {
  it('give the rest, and say what is missing', () => {
    const { results, unknown } = sensitivity(planOf(withoutValue(balcony, 'pump')), {
      only: ['flow', 'usable', 'tips'],
    })
    expect(results.map((r) => r.id)).toEqual(['usable', 'tips'])
    expect(unknown).toEqual([{ id: 'flow', needs: ['pump/maxHead', 'pump/maxFlow'] }])
  })

  it('without anything in them give nothing but blanks', () => {
    const { results, unknown, improve } = sensitivity({})
    expect([results, improve]).toEqual([[], []])
    expect(unknown.length).toBeGreaterThan(10)
    for (const u of unknown) expect(u.needs.length, u.id).toBeGreaterThan(0)
  })

  it('tell where a reading at its end leaves the result unknown', () => {
    const full = withValue(balcony, 'reservoir/fillVolume', '44.2 L')
    const usable = swingsOf(full, 'usable')
    const line = swing(usable, 'reservoir/fillVolume')!
    expect(line.high).toBeNull()
    expect(line.low).toBeLessThan(0)
  })
})

it('tells how far it has come, one reading a step', () => {
  const steps = sensitivitySteps(planOf(balcony), { only: ['usable'] })
  const told = []
  for (let step = steps.next(); !step.done; step = steps.next()) told.push(step.value)
  expect(told.at(-1)!.done).toBe(told.at(-1)!.of)
  expect(told.map((t) => t.done)).toEqual(told.map((_, i) => i + 1))
})

describe('the examples', () => {
  it.each(['balcony', 'school', 'hall'])(
    '%s: every result is told or says what is missing, and the first reading to improve moves one',
    (name) => {
      const { results, unknown, improve } = sensitivity(planOf(example(name)))
      const told = [...results.map((r) => r.id), ...unknown.map((u) => u.id)]
      expect(resultIds.filter((id) => !told.includes(id)).length).toBeLessThanOrEqual(2)
      expect(results.length).toBeGreaterThan(8)
      expect(improve[0]!.results.length).toBeGreaterThan(0)
      for (const r of results) for (const s of r.swings) expect(Number.isFinite(s.size)).toBe(true)
    },
    180_000,
  )
})
