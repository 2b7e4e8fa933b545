import { describe, expect, it } from 'vitest'
import balcony from '../../../examples/balcony.plan.json'
import hall from '../../../examples/hall.plan.json'
import school from '../../../examples/school.plan.json'
import { parsePlan } from '../../plan/document.ts'
import type { Known } from '../../plan/known.ts'
import { withValue } from '../../plan/patch.ts'
import type { Plan, PlanDocument } from '../../plan/plan.ts'
import type { LayoutFacts } from '../layout/index.ts'
import type { TemplatesFacts } from '../templates/index.ts'
import { cutsFindings } from './checks.ts'
import { type CutsFacts, cutsFacts, type MaterialCuts } from './index.ts'

const DEGREE_rad = Math.PI / 180

/** A mitred stub by the figures of the joint that the plan states, worked without the discipline of templates. */
function neighbours(plan: Plan, sites: number): { templates: Known<TemplatesFacts>; layout: Known<LayoutFacts> } {
  const { pipe, stub } = plan.column ?? {}
  if (!pipe || !stub?.pipe || !stub.angle_rad || !stub.lowerSide_m)
    return { templates: { needs: ['column/stub'] }, layout: { needs: ['column'] } }
  const [R, Ri, r, th] = [pipe.outside_m / 2, pipe.bore_m / 2, stub.pipe.outside_m / 2, stub.angle_rad]
  const axis = stub.lowerSide_m + (R - r * Math.cos(th)) / Math.sin(th)
  const centre_m = axis - Math.sqrt(Ri * Ri - r * r) / Math.sin(th)
  const joint = { end: { kind: 'mitre', depth_m: 0 }, stub: { angle_rad: th, stubRadius_m: r }, mouthTilt_rad: 0 }
  const templates = {
    joint,
    stub: { lengths: { centre_m, heel_m: 0, crown_m: 0, blank_m: 0 } },
  } as unknown as TemplatesFacts
  const columns = plan.towers?.count ?? 1
  return { templates: { known: templates }, layout: { known: { plants: sites * columns } as LayoutFacts } }
}

function cutsOf(document: PlanDocument, sites: number): CutsFacts {
  const { plan } = parsePlan(document)
  const { templates, layout } = neighbours(plan, sites)
  return cutsFacts(plan, templates, layout)
}

const of = (facts: CutsFacts, kind: MaterialCuts['of']) => facts.materials.find((m) => m.of === kind)!
const verdicts = (facts: CutsFacts) =>
  Object.fromEntries(cutsFindings(facts).map((f) => [`${f.id} ${f.at}`, f.verdict]))

describe('the balcony, by hand', () => {
  const facts = cutsOf(balcony, 24)

  it('cuts the column from one length of 2 m: 2000 - 2 (5 + 1.4) - 1850 - 1.4 = 135.8 mm are left', () => {
    const column = of(facts, 'column')
    expect(column.plan?.value).toBe(1)
    expect(column.plan?.price_money).toBe(38)
    expect(column.usable_m).toBeCloseTo(1.9872, 12)
    expect(column.plan?.leftover_m).toBeCloseTo(0.1358, 12)
  })

  it('cuts 24 stubs in 12 pairs from one length: 1988.6 - 12 (2 × 78.6219 + 1.9799 + 1.4) - 1.4 = 59.715 mm are left', () => {
    const stub = of(facts, 'stub')
    expect(stub.pieces[0]?.length_m).toBeCloseTo(0.0786219, 6)
    expect(stub.plan?.status).toBe('proved-best')
    expect(stub.plan?.sticks.length).toBe(1)
    expect(stub.plan?.leftover_m).toBeCloseTo(0.059715, 5)
    // Alone: centre line, one slanted cut, and r cot 45° of wedge.
    expect(stub.longest_m).toBeCloseTo(0.0786219 + 0.0014 / Math.sin(45 * DEGREE_rad) + 0.025, 6)
  })

  it('buys hose by the metre where no length of it is listed', () => {
    const hose = of(facts, 'hose')
    expect(hose).toMatchObject({ job: null, plan: null, usable_m: null, bore_m: 0.013 })
    expect(hose.pieces_m).toBeCloseTo(2.1, 12)
  })

  it('finds nothing wrong', () => {
    expect(new Set(cutsFindings(facts).map((f) => f.verdict))).toEqual(new Set(['pass']))
  })
})

describe.each([
  ['balcony', balcony as PlanDocument, 24],
  ['school', school as PlanDocument, 20],
  ['hall', hall as PlanDocument, 24],
])('mass balance of %s', (_, document, sites) => {
  it('pieces, kerf, loss and rest make up every stick; every piece is cut once', () => {
    const facts = cutsOf(document, sites)
    const planned = facts.materials.filter((m) => m.plan !== null)
    expect(planned.length).toBeGreaterThan(1)
    for (const { plan, pieces } of planned) {
      for (const s of plan!.sticks) expect(s.pieces_m + s.kerf_m + s.loss_m + s.leftover_m).toBeCloseTo(s.length_m, 9)
      const wanted = pieces.reduce((sum, p) => sum + p.count, 0)
      expect(plan!.sticks.reduce((sum, s) => sum + s.pieces.length, 0)).toBe(wanted)
    }
  })
})

describe('kerf and trim', () => {
  it('takes the widest kerf of the saw where none is stated, and names its source', () => {
    const facts = cutsOf({ ...balcony, stock: { lengths: balcony.stock.lengths, trim: '5 mm' } }, 24)
    expect(facts.kerf).toEqual({ kerf_m: 0.0018, from: 'saw', source: 'common-practice' })
  })
  it('asks for the kerf where neither it nor a saw is stated', () => {
    const { kerf: _kerf, ...stock } = balcony.stock
    const { saw: _saw, ...tools } = balcony.tools
    const facts = cutsOf({ ...balcony, stock, tools }, 24)
    expect(of(facts, 'column').needs).toEqual(['stock/kerf'])
    expect(verdicts(facts)['cuts/longest-piece column/length']).toBe('unknown')
  })
  it('says that the trim is a rule of the trade where the plan states none', () => {
    const { trim: _trim, ...stock } = balcony.stock
    expect(cutsOf({ ...balcony, stock }, 24)).toMatchObject({ trim_m: 0.005, trimFrom: 'practice' })
  })
})

describe('bounds of the findings', () => {
  it('the longest piece just fits, and a tenth of a millimetre more does not', () => {
    const longest = (length: string) => verdicts(cutsOf(withValue(balcony, 'column/length', length), 24))
    expect(longest('1987.2 mm')['cuts/longest-piece column/length']).toBe('pass')
    expect(longest('1987.3 mm')['cuts/longest-piece column/length']).toBe('fail')
  })
  it('offers to shorten the column to a whole millimetre that fits', () => {
    const finding = cutsFindings(cutsOf(withValue(balcony, 'column/length', '2 m'), 24))[0]
    const lever = finding?.levers[0]
    expect(lever).toMatchObject({ set: 'column/length', along: { unit: 'm', step: 0.001 } })
    const to = lever && 'along' in lever ? lever.along.to : 0
    // From 2000 mm down in whole millimetres, the last before the end must fit: 1987 mm of 1987.2 mm.
    expect(2 - 0.001 * Math.floor((2 - to) / 0.001 + 1e-9)).toBeCloseTo(1.987, 9)
  })
  it('asks for lengths of pipe where none is listed', () => {
    const finding = cutsFindings(cutsOf({ ...balcony, stock: { kerf: '1.4 mm' } }, 24))[0]
    expect(finding).toMatchObject({ id: 'cuts/longest-piece', verdict: 'unknown', needs: ['stock/lengths'] })
  })
  it('counts pieces that the lengths on hand do not give', () => {
    const lengths = [{ of: 'column', length: '2 m', count: 1 }]
    const document = { ...balcony, towers: { count: 3, perPump: 1 }, stock: { ...balcony.stock, lengths } }
    const finding = cutsFindings(cutsOf(document, 24)).find((f) => f.id === 'cuts/stock-enough')
    expect(finding).toMatchObject({ verdict: 'fail', measured: { value: 2, unit: 'count' } })
    expect(finding?.levers[0]).toMatchObject({ set: 'stock/lengths/0/count' })
  })
  it('refuses a mitre that comes out at the mouth', () => {
    const short = verdicts(cutsOf(withValue(balcony, 'column/stub/lowerSide', '36 mm'), 24))
    expect(short['cuts/short-stub column/stub/lowerSide']).toBe('fail')
    const long = verdicts(cutsOf(withValue(balcony, 'column/stub/lowerSide', '37 mm'), 24))
    expect(long['cuts/short-stub column/stub/lowerSide']).toBe('pass')
  })
})

describe('hose and return', () => {
  it('parts tubes by bore; coils in stock are for the bore at the column', () => {
    const hoses = cutsOf(school, 20).materials.filter((m) => m.of === 'hose')
    expect(hoses.map((m) => [m.bore_m, m.pieces_m, m.plan === null])).toEqual([
      [0.025, 9, true],
      [0.013, 12, false],
    ])
  })
  it('cuts a return that is longer than a stick into equal pieces', () => {
    const lengths = [...school.stock.lengths, { of: 'return', length: '3 m' }]
    const pipe = of(cutsOf({ ...school, stock: { ...school.stock, lengths } }, 20), 'return')
    expect(pipe.pieces[0]).toMatchObject({ count: 3 })
    expect(pipe.pieces_m).toBeCloseTo(7, 12)
  })
})

describe('a column of branch fittings, by hand', () => {
  const fitting = { layingLength: '185 mm', socket: '60 mm', branchAt: '100 mm', branches: 2 }
  const document = withValue(withValue(balcony, 'column/sites/method', 'fitting'), 'column/fitting', fitting)
  const marks_m = [0.4, 0.6, 0.8, 1.05]
  const layout = { sites: marks_m.map((mark_m) => ({ mark_m })), columnLength_m: 1.5 } as unknown as LayoutFacts
  const cuts = (d: PlanDocument) => cutsFacts(parsePlan(d).plan, { needs: [] }, { known: layout })

  it('is cut into foot 360, between 135 twice and 185 once, and top 425 mm', () => {
    const column = of(cuts(document), 'column')
    const list = column.pieces.map((p) => [p.id, p.count, Math.round(p.length_m * 1e4) / 10])
    expect(list).toEqual([
      ['foot-piece', 1, 360],
      ['between', 2, 135],
      ['between-2', 1, 185],
      ['top-piece', 1, 425],
    ])
    expect(column.plan?.value).toBe(1)
  })

  it('asks for the fitting’s measures before it says what to cut', () => {
    const column = of(cuts(withValue(document, 'column/fitting', { branches: 2 })), 'column')
    expect(column.pieces).toEqual([])
    expect(column.needs).toEqual(['column/fitting/layingLength', 'column/fitting/socket', 'column/fitting/branchAt'])
  })
})
