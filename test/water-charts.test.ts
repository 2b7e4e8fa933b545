import { describe, expect, it } from 'vitest'
import { strips } from '../src/disciplines/hydraulics/index.ts'
import { isKnown, type Known } from '../src/plan/known.ts'
import { withValue } from '../src/plan/patch.ts'
import type { PlanDocument } from '../src/plan/plan.ts'
import { bounds } from '../src/render/drawing/bounds.ts'
import type { Circle, Drawing, Lettering, Line, Point } from '../src/render/drawing/primitives.ts'
import { sheetSet } from '../src/render/sheets/set.ts'
import { levels } from '../src/render/views/levels.ts'
import { pumpCurve } from '../src/render/views/pump-curve.ts'
import { spotsAlong, tags } from '../src/render/views/tags.ts'
import { wettingMapView } from '../src/render/views/wetting-map.ts'
import { waterPathWords as words } from '../src/render/words/en/water-path.ts'
import { letteringFaults } from './print/lettering.ts'
import { example, inputOf } from './print/set-of.ts'

const known = <F>(facts: Known<F>): F => {
  if (!isKnown(facts)) throw new Error(`unknown: ${facts.needs.join(', ')}`)
  return facts.known
}
const inputs = new Map(['balcony', 'school', 'hall'].map((name) => [name, inputOf(example(name), 'A4')]))
const input = (name: string) => inputs.get(name)!
const texts = (d: Drawing) => d.filter((p): p is Lettering => p.kind === 'text').map((t) => t.text)
const circles = (d: Drawing) => d.filter((p): p is Circle => p.kind === 'circle')

const SIZE = { width_mm: 100, height_mm: 60 }
const chartOf = (document: PlanDocument) => {
  const { facts, plan, display } = inputOf(document, 'A4')
  const needed_m3_s = plan.riser?.neededFlow_m3_s ?? null
  return { facts, chart: pumpCurve({ facts: facts.hydraulics, needed_m3_s, words, display, ...SIZE })! }
}

describe('the pump’s band against lift and hose', () => {
  it('marks both crossings at their flow and head, with the flows between them told', () => {
    const { facts, chart } = chartOf(example('balcony'))
    const { states } = known(facts.hydraulics.flow)
    const rings = circles(chart).map((c) => c.centre)
    const most_m3_s = (1800 / 3.6e6) * 1.05
    for (const s of [states.low, states.high]) {
      const x = (s.flow_m3_s / most_m3_s) * SIZE.width_mm
      const y = (s.pumpHead_m / (2.2 * 1.12)) * SIZE.height_mm
      expect(rings.some((p) => Math.hypot(p[0] - x, p[1] - y) < 0.01)).toBe(true)
    }
    expect(texts(chart)).toContain('3.8–6.2 L/min')
  })

  it('shows a bucket test where it lies, and its flow within the narrower band', () => {
    const test = { on: '2026-05-01', volume: '4.9 L', time: '60 s', outletHeight: '1.777 m' }
    const { chart } = chartOf(withValue(example('balcony'), 'pump/tests', [test]))
    expect(texts(chart).some((t) => t.includes('2026-05-01'))).toBe(true)
    const dot = circles(chart).find((c) => c.fill === 'solid')!
    const rings = circles(chart)
      .filter((c) => c.fill === 'paper')
      .map((c) => c.centre[0])
    expect(dot.centre[0]).toBeGreaterThan(Math.min(...rings))
    expect(dot.centre[0]).toBeLessThan(Math.max(...rings))
  })

  it('leaves a test of 300 L/min out of the picture', () => {
    const test = { volume: '10 L', time: '2 s', outletHeight: '1.8 m' }
    const { chart } = chartOf(withValue(example('balcony'), 'pump/tests', [test]))
    expect(circles(chart).some((c) => c.fill === 'solid')).toBe(false)
    expect(bounds(chart)!.right).toBeLessThan(SIZE.width_mm + 5)
  })
})

describe('levels in the tank', () => {
  it.each(['balcony', 'school', 'hall'])('of the %s stand at their heights, both lines among them', (name) => {
    const { facts, display } = input(name)
    const reservoir = known(facts.reservoir)
    const drawing = levels({ facts: reservoir, cover_m: 0.04, words, display, ratio: 200 })
    const across = drawing.filter((p): p is Line => p.kind === 'line' && p.pen === 'cut').map((l) => l.from[1])
    const lines = [known(reservoir.tank.low).level_m, known(reservoir.tank.fill).level_m].map((m) => m * 200)
    for (const y of lines) expect(Math.min(...across.map((a) => Math.abs(a - y)))).toBeLessThan(1e-9)
  })
})

describe('the map of wetted sites', () => {
  it.each(['balcony', 'school', 'hall'])('of the %s tells each site once, crossed out where it is missed', (name) => {
    const { facts } = input(name)
    const wetting = known(facts.hydraulics.wetting)
    const layout = known(facts.layout)
    const drawing = wettingMapView({ facts: wetting, layout, at: 'worst', ratio: 100 })
    const numbers = texts(drawing)
    expect([...numbers].sort()).toEqual(wetting.worst.map((s) => s.id).sort())
    const missed = wetting.worst.filter((s) => s.water === 'dry').length
    const crosses = drawing.filter((p) => p.kind === 'line' && p.pen === 'cut').length
    expect(crosses).toBe(2 * missed)
    const box = bounds(drawing)!
    expect(box.right - box.left).toBeLessThan(layout.circumference_m * 100 + 6)
    expect(strips(wetting).length).toBe(wetting.holes.count)
  })
})

describe('names on a chart', () => {
  const line: readonly Point[] = [
    [0, 5],
    [40, 5],
  ]
  const within = { left: 0, right: 40, bottom: 0, top: 10 }
  it('cover no other, and cross no line where there is room beside it', () => {
    const names = ['one', 'two', 'three'].map((text) => ({ text, spots: spotsAlong(line) }))
    const drawing = tags({ names, lines: [line], within })
    expect(letteringFaults({ drawing: drawing.map(shifted), width_mm: 100, height_mm: 100 })).toEqual([])
    for (const t of drawing as Lettering[]) expect(t.at[1] > 5 || t.at[1] + t.size_mm * 0.75 < 5).toBe(true)
  })
  const shifted = (p: Drawing[number]) => (p.kind === 'text' ? { ...p, at: [p.at[0] + 20, p.at[1] + 20] as const } : p)
})

describe('the sheets of water and stand', () => {
  it.each(['balcony', 'school', 'hall'])(
    'are in the set of the %s, three pages and one, one of evening uneven columns, and one of cooling where that has a price',
    (name) => {
      const ids = sheetSet(input(name), ['water', 'stand']).pages.map((p) => p.id)
      const cooling = name === 'balcony' ? ['stand'] : []
      const even = name === 'school' ? ['water'] : []
      expect(ids).toEqual(['water', 'water', 'water', ...even, 'stand', ...cooling])
    },
  )
  it('say what is missing where nothing can be drawn', () => {
    const { pump: _, riser: __, reservoir: ___, distributor: ____, ...bare } = example('balcony')
    const { leftOut } = sheetSet(inputOf(bare, 'A4'))
    expect(leftOut.some((s) => s.startsWith('Left out: water.'))).toBe(true)
  })
})
