import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { hydraulicsFindings, wettingFindings } from '../src/disciplines/hydraulics/checks.ts'
import { distributorSuggestions, hydraulicsFacts, wettingCures } from '../src/disciplines/hydraulics/index.ts'
import { dayNumber } from '../src/disciplines/hydraulics/pump-tests.ts'
import { layoutFacts } from '../src/disciplines/layout/index.ts'
import { reservoirFindings } from '../src/disciplines/reservoir/checks.ts'
import { reservoirFacts, tankFacts } from '../src/disciplines/reservoir/index.ts'
import { jointFacts, jointRoom, pocketFacts, templatesFacts } from '../src/disciplines/templates/index.ts'
import { evaluateDocument } from '../src/evaluate.ts'
import { parsePlan } from '../src/plan/document.ts'
import { isKnown, type Known } from '../src/plan/known.ts'
import { withValue } from '../src/plan/patch.ts'
import type { PlanDocument } from '../src/plan/plan.ts'

const examples = join(import.meta.dirname, '..', 'examples')
const example = (name: string): PlanDocument => JSON.parse(readFileSync(join(examples, `${name}.plan.json`), 'utf8'))
const known = <F>(facts: Known<F>): F => {
  if (!isKnown(facts)) throw new Error(`unknown: ${facts.needs.join(', ')}`)
  return facts.known
}

type Changes = Readonly<Record<string, unknown>>

function looked(name: string, changes: Changes = {}) {
  const document = Object.entries(changes).reduce((d, [path, value]) => withValue(d, path, value), example(name))
  const { plan, issues } = parsePlan(document)
  expect(issues).toEqual([])
  const room = jointRoom(plan)
  const joint = jointFacts(plan, room)
  const layout = layoutFacts(plan, isKnown(joint) ? joint.known : null)
  const templates = templatesFacts(plan, joint, isKnown(layout) ? layout.known : null)
  const tank = tankFacts(plan)
  const near = {
    tank,
    layout,
    templates: isKnown(templates) ? templates.known : null,
    pocket: pocketFacts(plan, null),
    oldest_weeks: 5,
  }
  const h = hydraulicsFacts(plan, near)
  const reservoir = reservoirFacts(plan, { tank, held: h.held, layout })
  const findings = [
    ...hydraulicsFindings(plan, h, { layout, templates, tank }),
    ...wettingFindings(plan, h),
    ...reservoirFindings(plan, reservoir),
  ]
  const verdict = (id: string) => findings.find((f) => f.id === id)?.verdict
  const finding = (id: string) => findings.find((f) => f.id === id)
  return { plan, h, reservoir: known(reservoir), findings, verdict, finding }
}

const mild = { 'place/airLow': '20 °C', 'place/airHigh': '20 °C' }
const LITRE_MIN = 1 / 60_000
const GPH = 0.003785411784 / 3600
const within = (n: number, expected: number, share: number) => expect(Math.abs(n / expected - 1)).toBeLessThan(share)

// Expected figures were worked out once by hand for these invented places, apart from this code.
describe('a balcony', () => {
  it('the small pump gives 3.8 to 6.1 L/min at low water (within 2 %: the hand figure takes water of 20 °C, the place has 8 to 31 °C)', () => {
    const { least_m3_s } = known(looked('balcony').h.flow)
    within(least_m3_s.low, 3.8 * LITRE_MIN, 0.02)
    within(least_m3_s.high, 6.1 * LITRE_MIN, 0.02)
  })
  it('at 20 °C and a lift of 1.78 m it is the hand figure to its last digit', () => {
    const { least_m3_s } = known(looked('balcony', { ...mild, 'reservoir/lowLine': '70 mm' }).h.flow)
    expect(Math.abs(least_m3_s.low / LITRE_MIN - 3.8)).toBeLessThan(0.05)
    expect(Math.abs(least_m3_s.high / LITRE_MIN - 6.1)).toBeLessThan(0.05)
  })
  it('the larger pump gives 7.8 to 10.5 L/min (within 2 %, as above)', () => {
    const { least_m3_s } = known(looked('balcony', { 'pump/maxHead': '3.0 m', 'pump/maxFlow': '2000 L/h' }).h.flow)
    within(least_m3_s.low, 7.8 * LITRE_MIN, 0.02)
    within(least_m3_s.high, 10.5 * LITRE_MIN, 0.02)
  })
  it('the lift is 1.78 m, 81 % of the pump’s head (last digit)', () => {
    const { h, finding } = looked('balcony')
    expect(known(h.lift).fromLow_m).toBeCloseTo(1.78, 2)
    expect(finding('hydraulics/static-share')?.measured).toMatchObject({ value: expect.closeTo(0.81, 2) })
    expect(looked('balcony').verdict('hydraulics/static-share')).toBe('watch')
  })
  it('twelve holes of 3 mm flood the cup above 3.4 L/min (last digit) and stand 48 and 97 mm at 3 L/min', () => {
    const d = known(looked('balcony').h.distributor)!
    expect(Math.abs(d.full_m3_s / LITRE_MIN - 3.4)).toBeLessThan(0.05)
    expect(d.neededHead_m).toBeCloseTo(0.048, 3)
    expect(d.neededCloggedHead_m).toBeCloseTo(0.097, 3)
  })
  it('twelve holes of 4 mm stand 15 and 31 mm at 3 L/min, and a degree of lean makes 5 % (last digit)', () => {
    const d = known(looked('balcony', { 'distributor/hole': '4 mm' }).h.distributor)!
    expect(d.neededHead_m).toBeCloseTo(0.015, 3)
    expect(d.neededCloggedHead_m).toBeCloseTo(0.031, 3)
    expect(d.tiltShare).toBeCloseTo(0.05, 2)
  })
  it('fill at most 229 mm with 1.8 L running back: 226.5 here, since the unthrottled pump keeps the cup full (0.35 L more)', () => {
    const { reservoir, h } = looked('balcony', { 'distributor/hole': '4 mm' })
    const held = known(h.held)
    expect(known(reservoir.safeFill)!.running_m).toBeGreaterThan(0.225)
    expect(known(reservoir.safeFill)!.running_m).toBeLessThan(0.23)
    expect(held.riser_m3).toBeCloseTo(0.28e-3, 5)
    expect(held.roots_m3.high).toBeCloseTo(1.2e-3, 6)
    within(held.film_m3.low, 0.22e-3, 0.05)
  })
  it('the low line of 12 L stands at 73 mm (last digit), and the fill of 36 L at 218 mm within 2 mm for the column’s foot in it', () => {
    const tank = looked('balcony').reservoir.tank
    expect(known(tank.low).level_m).toBeCloseTo(0.073, 3)
    expect(Math.abs(known(tank.fill).level_m - 0.218)).toBeLessThan(0.002)
  })
  it('24 L last 5 to 10 days for 24 plants of 0.1 to 0.2 L: 6 and more with two thirds of them at 0.2', () => {
    const { days } = looked('balcony').reservoir
    expect(known(days)).toMatchObject({ low: expect.closeTo(6, 1) })
    const all = looked('balcony', { crops: [{ crop: 'lettuce', sites: 24, thirst: '0.2 L/day' }] }).reservoir.days
    expect(known(all)).toMatchObject({ low: expect.closeTo(5, 1), high: expect.closeTo(10.5, 1) })
  })
  it('a bucket test draws the band together to 4.9 ± 0.25 L/min, which is the 5 % of bucket and stopwatch', () => {
    const tests = [{ on: '2026-05-01', volume: '4.9 L', time: '60 s', outletHeight: '1.777 m' }]
    const { least_m3_s } = known(
      looked('balcony', { 'pump/tests': tests, 'place/airLow': '20 °C', 'place/airHigh': '20 °C' }).h.flow,
    )
    within(least_m3_s.low, 4.9 * 0.95 * LITRE_MIN, 0.005)
    within(least_m3_s.high, 4.9 * 1.05 * LITRE_MIN, 0.005)
  })
})

describe('a school', () => {
  it('the pump gives 29 to 37 L/min for six columns with the full flow through the whole header; 5 to 10 % more here, since the flow thins out along it', () => {
    const { total_m3_s } = known(looked('school').h.flow)
    const [low, high] = [total_m3_s.low / LITRE_MIN, total_m3_s.high / LITRE_MIN]
    expect(low).toBeGreaterThan(29)
    expect(low).toBeLessThan(29 * 1.1)
    expect(high).toBeGreaterThan(37)
    expect(high).toBeLessThan(37 * 1.1)
  })
  it('is that hand figure within 2 % when the header feeds all columns at its end and the lift is 1.75 m', () => {
    const header = { bore: '25 mm', length: '8 m', losses: 6, spacing: '0 m' }
    const { total_m3_s } = known(
      looked('school', { ...mild, 'riser/header': header, 'riser/length': '0 m', 'reservoir/lowLine': '100 mm' }).h
        .flow,
    )
    within(total_m3_s.low, 29 * LITRE_MIN, 0.02)
    within(total_m3_s.high, 37 * LITRE_MIN, 0.02)
  })
  it('restarting root-filled columns may draw the sump below the pump', () => {
    expect(looked('school').finding('reservoir/pump-covered')).toMatchObject({ verdict: 'watch', holds: 'part' })
  })
})

describe('a hall', () => {
  it('each pump gives 71 to 101 gph at low water (within 2 %) and 90 to 120 at the fill line (within 1 %)', () => {
    const flow = known(looked('hall').h.flow)
    within(flow.total_m3_s.low, 71 * GPH, 0.02)
    within(flow.total_m3_s.high, 101 * GPH, 0.02)
    within(2 * flow.leastAtFill_m3_s!.low, 90 * GPH, 0.01)
    within(2 * flow.leastAtFill_m3_s!.high, 120 * GPH, 0.01)
  })
  it('so that 96 gph lie in the band, unproven', () => {
    expect(looked('hall').finding('hydraulics/column-flow')).toMatchObject({ verdict: 'watch', holds: 'part' })
  })
  it('33 gal last 16 days when all plants are grown (last digit)', () => {
    expect(known(looked('hall').reservoir.days)).toMatchObject({ low: expect.closeTo(15.6, 0) })
  })
})

describe('what cannot be', () => {
  it.each([
    ['a pump that stops below the lift', 'balcony', { 'pump/maxHead': '1.5 m' }, 'hydraulics/pump-lifts'],
    [
      'a bucket test of 300 L/min',
      'balcony',
      { 'pump/tests': [{ volume: '10 L', time: '2 s', outletHeight: '1.8 m' }] },
      'hydraulics/bucket-test',
    ],
    ['holes of half a millimetre', 'balcony', { 'distributor/hole': '0.5 mm' }, 'hydraulics/hole-size'],
    ['a fill of 45 L in a box of 44', 'balcony', { 'reservoir/fillVolume': '45 L' }, 'reservoir/fill-fits'],
    ['a low line above the fill line', 'balcony', { 'reservoir/lowVolume': '40 L' }, 'reservoir/low-below-fill'],
    [
      'a rest of six hours in the heat',
      'balcony',
      { 'pump/timerOn': '15 min', 'pump/timerOff': '6 h' },
      'hydraulics/timer-off',
    ],
    [
      'ten columns on 600 L/h',
      'hall',
      { 'towers/count': 10, 'towers/perPump': 10, 'pump/maxFlow': '600 L/h' },
      'hydraulics/column-flow',
    ],
    ['a foot with one small hole', 'balcony', { 'drain/holes': 1, 'drain/hole': '5 mm' }, 'hydraulics/foot-water'],
    ['a tank filled to its rim', 'balcony', { 'reservoir/fillVolume': '44 L' }, 'reservoir/drain-back'],
    ['a low line under the pump', 'balcony', { 'reservoir/lowVolume': '5 L' }, 'reservoir/pump-covered'],
    [
      'an outlet under water without an air break',
      'balcony',
      { 'riser/outletHeight': '100 mm', 'riser/airBreak': 'no' },
      'hydraulics/siphon',
    ],
    ['a return pipe of 20 mm for six columns', 'school', { 'drain/bore': '20 mm' }, 'hydraulics/return-pipe'],
  ] as const)('%s fails', (_, name, changes, id) => {
    expect(looked(name, changes).verdict(id)).toBe('fail')
  })
  it('names what may have been meant', () => {
    const { finding } = looked('balcony', { 'pump/tests': [{ volume: '10 L', time: '2 s', outletHeight: '1.8 m' }] })
    expect(finding('hydraulics/bucket-test')?.slots).toMatchObject({ meant: { value: 20 } })
    expect(finding('hydraulics/hole-size')?.slots).toBeDefined()
    const small = looked('balcony', { 'distributor/hole': '0.5 mm' }).finding('hydraulics/hole-size')
    expect(small?.slots).toMatchObject({ needed: 432 })
  })
  it('a missing measure is asked for, and the rest is computed', () => {
    const { h, finding } = looked('balcony', { pump: { minimumDepth: '40 mm' } })
    expect(h.flow).toEqual({ needs: ['pump/maxHead', 'pump/maxFlow'] })
    expect(finding('hydraulics/pump-lifts')).toMatchObject({
      verdict: 'unknown',
      needs: ['pump/maxHead', 'pump/maxFlow'],
    })
    expect(isKnown(h.distributor)).toBe(true)
  })
})

describe('the circle of holes', () => {
  it('leaves a millimetre of plate on the balcony and at least half of one in the other two', () => {
    const left = (name: string) => looked(name).finding('hydraulics/hole-circle')
    // 100 mm outside less two walls of 2.5 mm, less a circle of 90 mm and a hole of 3 mm, halved.
    expect(left('balcony')).toMatchObject({ verdict: 'pass', measured: { value: expect.closeTo(0.001, 9) } })
    expect(left('school')?.verdict).toBe('pass')
    expect(left('hall')?.verdict).toBe('pass')
  })
  it('fails where it runs in the cup’s wall, watches what a drill wanders, and says which circle would do', () => {
    const at = (circle: string) => looked('balcony', { 'distributor/circle': circle }).finding('hydraulics/hole-circle')
    expect(at('92 mm')).toMatchObject({ verdict: 'watch', measured: { value: expect.closeTo(0, 9) } })
    expect(at('93 mm')?.verdict).toBe('fail')
    expect(at('98 mm')).toMatchObject({ verdict: 'fail', slots: { most: { value: expect.closeTo(0.091, 9) } } })
    expect(at('91 mm')?.verdict).toBe('pass')
  })
  it.each([
    ['a smaller circle', 'balcony', { 'distributor/circle': '93 mm' }, 'distributor/circle'],
    // The circle must stay where the streams cling to the column: a thinner cup makes the room.
    [
      'a thinner cup',
      'school',
      { 'distributor/thickness': '3 mm', 'distributor/circle': '144 mm' },
      'distributor/thickness',
    ],
  ])('proves %s as the remedy', (_, name, changes, set) => {
    const document = Object.entries(changes).reduce((d, [path, value]) => withValue(d, path, value), example(name))
    const found = evaluateDocument(document).findings.find((f) => f.id === 'hydraulics/hole-circle')
    expect(found?.verdict).toBe('fail')
    const remedy = found?.remedies.find((r) => r.set === set)
    expect(remedy).toBeDefined()
    const cured = looked(name, { ...changes, [set]: remedy!.to })
    expect(cured.verdict('hydraulics/hole-circle')).not.toBe('fail')
    expect(cured.verdict('hydraulics/dry-sites')).toBe(looked(name, changes).verdict('hydraulics/dry-sites'))
  })
  it('asks for the cup where it is not measured, and not at all of a ring', () => {
    const { diameter: _, ...cup } = example('balcony')['distributor'] as Record<string, unknown>
    expect(looked('balcony', { distributor: cup }).finding('hydraulics/hole-circle')).toMatchObject({
      verdict: 'unknown',
      needs: ['distributor/diameter'],
    })
    expect(looked('balcony', { 'distributor/kind': 'ring' }).finding('hydraulics/hole-circle')).toBeUndefined()
  })
  it('of a clinging stream stays within the cup: school and hall wet every site as drawn', () => {
    for (const name of ['school', 'hall']) expect(known(looked(name).h.wetting).dry.high, name).toBe(0)
  })
})

describe('properties of the path', () => {
  it('more head never gives less flow', () => {
    let before = 0
    for (const head of ['1.9 m', '2.2 m', '2.6 m', '3 m', '4 m', '8 m']) {
      const now = known(looked('balcony', { 'pump/maxHead': head }).h.flow).least_m3_s.low
      expect(now).toBeGreaterThan(before)
      before = now
    }
  })
  it('what is lent is the sum of its parts', () => {
    const { riser_m3, header_m3, drops_m3, pool_m3, film_m3, roots_m3, back_m3 } = known(looked('school').h.held)
    expect(back_m3.high).toBeCloseTo(riser_m3 + header_m3 + drops_m3 + pool_m3.high + film_m3.high + roots_m3.high, 12)
  })
  it('a check valve keeps the riser full, and a start is reckoned with it leaking', () => {
    const open = known(looked('balcony').h.held)
    const shut = known(looked('balcony', { 'riser/checkValve': true }).h.held)
    expect(open.back_m3.high - shut.back_m3.high).toBeCloseTo(open.riser_m3, 12)
    expect(shut.up_m3.high).toBeCloseTo(open.up_m3.high, 12)
  })
  it('a tree by branches is the same as header and drops', () => {
    const drops = { bore: '13 mm', length: '2 m', losses: 6 }
    const tree = ['a', 'b', 'c'].map((name) => ({ name, ...drops, outletHeight: '1.35 m' }))
    const towers = { count: 3, perPump: 3 }
    const riser = { bore: '25 mm', length: '1 m', outletHeight: '1.35 m', neededFlow: '3 L/min' }
    const one = looked('school', { towers, riser: { ...riser, drops } }).h
    const other = looked('school', { towers, riser: { ...riser, branches: tree } }).h
    expect(known(other.flow).total_m3_s.low).toBeCloseTo(known(one.flow).total_m3_s.low, 12)
  })
  it('a branch that leaves nothing is named and left out', () => {
    const branches = [
      { name: 'a', bore: '13 mm', length: '2 m', outletHeight: '1.3 m' },
      { name: 'b', from: 'c', bore: '13 mm', length: '2 m', outletHeight: '1.3 m' },
      { name: 'c', from: 'b', bore: '13 mm', length: '2 m' },
    ]
    const { h, verdict } = looked('school', { 'riser/branches': branches })
    expect(known(h.tubes).loose).toEqual(['b', 'c'])
    expect(verdict('hydraulics/loose-branches')).toBe('fail')
  })
  it('valves as proposed even the columns', () => {
    const { columns } = known(looked('school').h.flow)
    const set = columns.map((c, i) => ({ column: i + 1, valveLosses: c.valveLosses! }))
    const { spread } = known(looked('school', { 'riser/columns': set }).h.flow)
    expect(spread.low).toBeLessThan(0.002)
  })
  it('a later, weaker test shows the wear', () => {
    const tests = [
      { on: '2026-05-01', volume: '5 L', time: '60 s', outletHeight: '1.777 m' },
      { on: '2026-07-01', volume: '3 L', time: '60 s', outletHeight: '1.777 m' },
    ]
    const { wear, strength } = known(looked('balcony', { 'pump/tests': tests }).h.pump)
    expect(wear!.strengths[1]!.strength).toBeLessThan(1)
    expect(wear!.trend_per_d).toBeLessThan(0)
    expect(wear!.strengths[1]!.at_d - wear!.strengths[0]!.at_d).toBe(61)
    expect(strength!.low).toBeLessThanOrEqual(strength!.high)
  })
  it('counts days across months and leap years', () => {
    expect(dayNumber('2028-03-01')! - dayNumber('2028-02-28')!).toBe(2)
    expect(dayNumber('2027-01-01')! - dayNumber('2026-12-31')!).toBe(1)
    expect(dayNumber('1 May')).toBeNull()
  })
  it('suggestions hold what they promise when they are built', () => {
    const { plan, h } = looked('balcony')
    const facts = known(h.distributor)!
    const best = distributorSuggestions(plan, { facts, most_m3_s: known(h.column_m3_s).high, water: h.water })[0]!
    const built = { 'distributor/hole': `${best.hole_m * 1000} mm`, 'distributor/holes': best.count }
    const then = looked('balcony', built)
    for (const id of ['hole-size', 'distributor-overflow', 'distributor-clogged', 'drips-evenly', 'tilt-effect'])
      expect(then.verdict(`hydraulics/${id}`), id).toBe('pass')
  })
  it('a circle of holes at the wall wets the sites that a narrow one misses', () => {
    expect(looked('balcony').verdict('hydraulics/drop-sites')).toBe('watch')
    expect(looked('balcony', { 'distributor/circle': '98 mm' }).verdict('hydraulics/drop-sites')).toBe('pass')
    const { plan, h } = looked('hall')
    expect(Array.isArray(wettingCures(plan, known(h.wetting)))).toBe(true)
  })
})
