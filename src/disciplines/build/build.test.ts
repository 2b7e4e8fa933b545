import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import balcony from '../../../examples/balcony.plan.json'
import school from '../../../examples/school.plan.json'
import { parsePlan } from '../../plan/document.ts'
import { isKnown } from '../../plan/known.ts'
import type { PlanDocument } from '../../plan/plan.ts'
import type { LayoutFacts } from '../layout/index.ts'
import { buildFindings } from './checks.ts'
import { criticalPath, earliestStarts, oneBuilder, type Task } from './equations.ts'
import { type BuildFacts, buildFacts } from './index.ts'

/** A small plan of work without circles: each task may need those before it. */
const work = fc
  .array(
    fc.record({
      lasts: fc.integer({ min: 0, max: 9 }),
      held: fc.double({ min: 0, max: 1, noNaN: true }),
      needs: fc.array(fc.tuple(fc.nat(20), fc.integer({ min: 0, max: 5 })), { maxLength: 3 }),
    }),
    { minLength: 1, maxLength: 8 },
  )
  .map((raw): Task[] =>
    raw.map((t, i) => ({
      id: `t${i}`,
      lasts_s: t.lasts,
      holds_s: Math.floor(t.lasts * t.held),
      needs: i === 0 ? [] : t.needs.map(([n, wait_s]) => ({ step: `t${n % i}`, wait_s })),
    })),
  )

/** Longest way by walking every way from every task. */
function longestByWalking(tasks: readonly Task[]): number {
  const from = (t: Task): number => {
    const after = tasks.flatMap((u) => u.needs.filter((n) => n.step === t.id).map((n) => n.wait_s + from(u)))
    return t.lasts_s + Math.max(0, ...after)
  }
  return Math.max(...tasks.map(from))
}

const end = (timed: readonly { end_s: number }[]) => Math.max(...timed.map((t) => t.end_s))

describe('plan of work', () => {
  it('ends as late as the longest of all ways through it', () => {
    fc.assert(
      fc.property(work, (tasks) => {
        expect(end(earliestStarts(tasks))).toBe(longestByWalking(tasks))
      }),
      { seed: 7, numRuns: 300 },
    )
  })

  it('has a critical path whose tasks and waits add up to its end', () => {
    fc.assert(
      fc.property(work, (tasks) => {
        const path = criticalPath(tasks)
        const by = new Map(tasks.map((t) => [t.id, t]))
        const sum = path.reduce((total, id, i) => {
          const waits = by
            .get(id)!
            .needs.filter((n) => n.step === path[i - 1])
            .map((n) => n.wait_s)
          return total + by.get(id)!.lasts_s + Math.max(0, ...waits)
        }, 0)
        expect(sum).toBe(end(earliestStarts(tasks)))
      }),
      { seed: 8, numRuns: 300 },
    )
  })

  it('lets one builder hold one task at a time, wait for every need, and never beat the longest way', () => {
    fc.assert(
      fc.property(work, (tasks) => {
        const timed = new Map(oneBuilder(tasks).map((t) => [t.id, t]))
        for (const t of tasks)
          for (const n of t.needs)
            expect(timed.get(t.id)!.start_s).toBeGreaterThanOrEqual(timed.get(n.step)!.end_s + n.wait_s)
        const spans = tasks
          .filter((t) => t.holds_s > 0)
          .map((t) => [timed.get(t.id)!.start_s, timed.get(t.id)!.start_s + t.holds_s] as const)
        for (const [i, a] of spans.entries())
          for (const b of spans.slice(i + 1)) expect(a[1] <= b[0] || b[1] <= a[0]).toBe(true)
        expect(end([...timed.values()])).toBeGreaterThanOrEqual(longestByWalking(tasks))
      }),
      { seed: 9, numRuns: 300 },
    )
  })

  it('refuses tasks that wait for each other, are missing, come twice or last less than they hold', () => {
    const t = (id: string, needs: string[], lasts_s = 1, holds_s = 0): Task => ({
      id,
      lasts_s,
      holds_s,
      needs: needs.map((step) => ({ step, wait_s: 0 })),
    })
    expect(() => earliestStarts([t('a', ['b']), t('b', ['a'])])).toThrow(/wait for each other: a,b/)
    expect(() => earliestStarts([t('a', ['b'])])).toThrow(/needs b/)
    expect(() => oneBuilder([t('a', []), t('a', [])])).toThrow(RangeError)
    expect(() => criticalPath([t('a', [], 1, 2)])).toThrow(/a lasts 1/)
  })
})

const layoutOf = (perRing: number, rings: number, columns: number, lines: number): LayoutFacts =>
  ({
    sites: Array.from({ length: perRing * rings }, (_, i) => ({ number: i + 1 })),
    lines: Array.from({ length: lines }, (_, i) => ({
      number: i + 1,
      arc: { exact_m: 0, marked_m: 0, error_m: 0 },
      marks: [],
    })),
    plants: perRing * rings * columns,
    datum: 'foot',
    firstMark_m: 0.49,
    lastMark_m: 1.75,
  }) as unknown as LayoutFacts

function built(
  document: PlanDocument,
  layout = layoutOf(3, 8, 1, 6),
): { facts: BuildFacts; verdict: (id: string) => string | undefined } {
  const { plan } = parsePlan(document)
  const build = buildFacts(plan, { layout: { known: layout }, templates: { needs: [] }, pocket: { needs: [] } })
  if (!isKnown(build)) throw new Error(build.needs.join())
  const findings = buildFindings(plan, build)
  return { facts: build.known, verdict: (id) => findings.find((f) => f.id === id)?.verdict }
}

const column = (change: object, stub: object = {}, base: object = {}, sites: object = {}): PlanDocument => ({
  ...balcony,
  column: {
    ...balcony.column,
    ...change,
    sites: { ...balcony.column.sites, ...sites },
    stub: { ...balcony.column.stub, ...stub },
    base: { ...balcony.column.base, ...base },
  },
})

describe('the balcony, by hand', () => {
  const { facts } = built(balcony)
  // 24 sites on 6 lines: minutes of the table, 428 up to the dry fit, 112 to glue, a day, 319 to the day's run, two days, 167.
  it('takes 5209 minutes from the first step to the last', () => {
    const before = 20 + 5 + 10 + 2 + 5 + 15 + 29 + 29 + 53 + 154 + 53 + 53
    const glue = 15 + 24 * 3 + 5 * 5
    const first = 30 + 20 + 25 + 10 + 20 + 25 + 20 + 12 + 20
    const rest = 10 + 1440 + 10 + 1440 + 25 + 60 + 40 + 22
    expect(before + glue + 1440 + first + rest).toBe(5209)
    expect(facts.elapsed_s).toBe(5209 * 60)
  })
  it('goes by the longer table at the coldest air, half as long again as nobody says how damp it is', () => {
    // 50 mm at 8 °C: set 2 h, cure 4 h, both by 1.5.
    const { humidity: _, ...place } = balcony.place
    const { waits } = built({ ...balcony, place }).facts
    expect(waits).toMatchObject({ set_s: 3 * 3600, water_s: 86_400, plants_s: 172_800, countedDamp: true })
    expect(waits.cement?.cure_s.high).toBe(6 * 3600)
  })
  it('goes by the table as it stands where the air is said to be dry', () => {
    expect(facts.waits).toMatchObject({ set_s: 2 * 3600, countedDamp: false })
  })
  it('waits a day before water', () => {
    expect(facts.steps.find((s) => s.id === 'plug-test')?.needs[0]).toEqual({
      step: 'join-stubs',
      wait_s: 86_400,
      waitFor: 'water',
    })
  })
  it('asks for a strap', () => expect(facts.steps.map((s) => s.id)).toContain('strap'))
})

describe('steps adapt', () => {
  const ids = (document: PlanDocument) => built(document).facts.steps.map((s) => s.id)
  it('to the way sites are made', () => {
    expect(ids(column({}, {}, {}, { method: 'pocket' }))).toContain('form-pockets')
    expect(ids(column({}, {}, {}, { method: 'hole' }))).not.toContain('join-stubs')
    expect(ids(column({}, {}, {}, { method: 'fitting' }))).toContain('assemble-fittings')
  })
  it('to a gap that cement does not fill, with three days for the bead', () => {
    const { facts } = built(column({}, { gap: '0.4 mm' }))
    const test = facts.steps.find((s) => s.id === 'plug-test')!
    expect(test.needs).toContainEqual({ step: 'fillet', wait_s: 3 * 86_400, waitFor: 'water' })
    expect(ids(balcony)).not.toContain('fillet')
  })
  it('to silicone, which needs three days for a bead of 6 mm', () => {
    expect(built(column({}, { joint: 'silicone' })).facts.waits.water_s).toBe(3 * 86_400)
  })
  it('to children: the same acts, with one caution more', () => {
    const plain = built(balcony).facts.steps
    const young = built({ ...balcony, place: { ...balcony.place, children: true } }).facts.steps
    expect(young.filter((s) => s.cautions.includes('children')).length).toBeGreaterThan(4)
    expect(plain.some((s) => s.cautions.includes('children'))).toBe(false)
    expect(young.map((s) => s.id)).toEqual(plain.map((s) => s.id))
  })
  it('to the number of columns', () => {
    const six = built(school, layoutOf(5, 4, 6, 10)).facts
    expect(six.steps.find((s) => s.id === 'cut-holes')?.hands_s).toBe((10 + 6 * 120) * 60)
  })
  it('names what is missing', () => {
    const { joint: _joint, ...stub } = balcony.column.stub
    const { plan } = parsePlan({ ...balcony, column: { ...balcony.column, stub } })
    expect(
      buildFacts(plan, { layout: { known: layoutOf(3, 8, 1, 6) }, templates: { needs: [] }, pocket: { needs: [] } }),
    ).toEqual({ needs: ['column/stub/joint'] })
  })
})

describe('every combination builds', () => {
  const methods = ['stub', 'pocket', 'hole', 'fitting']
  const joints = ['cement', 'silicone', 'weld', 'epoxy', 'grommet']
  const bases = ['through the lid', 'flange on the lid', 'own foot']
  for (const method of methods)
    for (const joint of method === 'stub' ? joints : ['cement'])
      for (const kind of bases)
        it(`${method}, ${joint}, ${kind}`, () => {
          const { facts } = built(column({}, { joint }, { kind }, { method }))
          const seen = new Set<string>()
          for (const s of facts.steps) {
            for (const n of s.needs) expect(seen.has(n.step), `${s.id} after ${n.step}`).toBe(true)
            seen.add(s.id)
          }
          expect(facts.critical.at(-1)).toBe('plant')
          // Everything leads to the first plants: nothing is built for nothing.
          const reached = new Set(['plant'])
          for (const s of [...facts.steps].reverse())
            if (reached.has(s.id)) for (const n of s.needs) reached.add(n.step)
          expect(facts.steps.filter((s) => !reached.has(s.id)).map((s) => s.id)).toEqual([])
        })
})

describe('findings', () => {
  it('tie columns above 1.2 m', () => {
    expect(built(column({ length: '1.2 m' })).verdict('build/strap')).toBe('pass')
    expect(built(column({ length: '1.201 m' })).verdict('build/strap')).toBe('fail')
    expect(built(column({}, {}, { anchored: true })).verdict('build/strap')).toBe('pass')
  })
  it('keep PVC, and what nobody has named, out of a laser', () => {
    const lased = (laser: boolean) => built({ ...balcony, tools: { ...balcony.tools, laser } }).verdict('build/laser')
    expect([lased(true), lased(false), built(balcony).verdict('build/laser')]).toEqual(['fail', 'pass', undefined])
    const cut = (holeTool: string) =>
      built({ ...balcony, tools: { ...balcony.tools, holeTool } }).verdict('build/laser')
    expect([cut('laser'), cut('jigsaw')]).toEqual(['fail', undefined])
  })
  it('hold glue to the temperatures of its tables', () => {
    const air = (airLow: string, airHigh: string) =>
      built({ ...balcony, place: { ...balcony.place, airLow, airHigh } }).verdict('build/temperature')
    expect(air('8 °C', '38 °C')).toBe('pass')
    expect(air('8 °C', '39 °C')).toBe('watch')
    expect(air('39 °C', '45 °C')).toBe('fail')
    const { airLow: _low, ...place } = balcony.place
    expect(built({ ...balcony, place }).verdict('build/temperature')).toBe('unknown')
  })
  it('count the steps for adults where children are', () => {
    expect(built({ ...balcony, place: { ...balcony.place, children: true } }).verdict('build/children')).toBe('watch')
  })
})
