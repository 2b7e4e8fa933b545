import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { parsePlan } from '../src/plan/document.ts'
import { metric } from '../src/render/display.ts'
import { bounds } from '../src/render/drawing/bounds.ts'
import { improveText, resultText, sensitivityCsv, swingText } from '../src/render/tables/sensitivity.ts'
import { swingChart } from '../src/render/views/swings.ts'
import { swingsPage } from '../src/render/views/swings-page.ts'
import { english } from '../src/render/words/en/english.ts'
import { spanish } from '../src/render/words/es/spanish.ts'
import { results } from '../src/sensitivity/results.ts'
import { type ResultSwings, type Swing, sensitivity } from '../src/sensitivity/swings.ts'

const swing = (at: string, low: number, high: number): Swing => ({
  ...{ at, reading: 'pumpBox', value: 1, unit: '1', off: { low: 0.1, high: 0.1 }, low, high },
  size: Math.max(Math.abs(low), Math.abs(high)),
})
const L_MIN = 1 / 60_000
const flow = (swings: readonly Swing[], rest: number): ResultSwings => ({
  ...{ id: 'flow', unit: 'm3_s', value: 4.2 * L_MIN, own: 0, swings },
  rest: { count: rest > 0 ? 3 : 0, size: rest },
})
const inch = { ...metric, lengths: 'in' as const }

describe('words of what decides', () => {
  it('name the reading with its swing, and bound all else from above', () => {
    const of = flow([swing('pump/shape', -1.2 * L_MIN, 0.9 * L_MIN)], 0.19 * L_MIN)
    expect(resultText(of, english, metric)).toBe(
      'Flow at the top 4.2 L/min: the pump’s curve between its box figures ±1.2 L/min; all else < 0.2 L/min.',
    )
    expect(resultText(of, spanish, { ...metric, decimal: ',' })).toContain('±1,2 L/min; todo lo demás < 0,2 L/min.')
  })

  it.each([0.2, 0.201, 0.9999, 0.0301, 1, 12.3])('the bound of %s L/min lies above it', (size) => {
    const text = resultText(flow([swing('pump/maxHead', -20 * L_MIN, 20 * L_MIN)], size * L_MIN), english, metric)
    const bound = Number(/all else < ([\d.]+) /.exec(text)![1])
    expect(bound).toBeGreaterThan(size * (1 - 1e-9))
    expect(bound).toBeLessThanOrEqual(size * 2.01)
  })

  it('say where nothing else, and where nothing at all, moves a result', () => {
    expect(resultText(flow([swing('pump/maxHead', -L_MIN, L_MIN)], 0), english, metric)).toContain(
      'nothing else moves it',
    )
    expect(resultText(flow([], 0), english, metric)).toContain('no reading of the plan moves it')
  })

  it('tell a change of temperature without the zero of the scale', () => {
    const hot: ResultSwings = { ...flow([], 0), id: 'hot', unit: 'C', value: 30 }
    expect(swingText(hot, 2, metric)).toBe('2 °C')
    expect(swingText(hot, 2, inch)).toBe('3.6 °F')
  })
})

const plan = parsePlan(
  JSON.parse(readFileSync(join(import.meta.dirname, '..', 'examples', 'hall.plan.json'), 'utf8')),
).plan
const found = sensitivity(plan, { only: ['flow', 'overflow', 'usable', 'days', 'energy', 'highest'] })

describe.each([
  ['en', english],
  ['es', spanish],
] as const)('drawn in %s', (_, words) => {
  it('bars and names stay on their strip, the value in the middle', () => {
    for (const result of found.results) {
      const chart = swingChart({ result, words, display: inch, width_mm: 84 })!
      const { left, right, top, bottom } = bounds(chart.drawing)!
      expect(Math.min(left, bottom), result.id).toBeGreaterThanOrEqual(-0.01)
      expect(right, result.id).toBeLessThanOrEqual(84.01)
      expect(top, result.id).toBeLessThanOrEqual(chart.height_mm + 0.01)
    }
  })

  it('one page holds all of them', () => {
    const page = swingsPage(found, words, inch)
    const { left, right, top, bottom } = bounds(page.drawing)!
    expect(Math.min(left, bottom)).toBeGreaterThan(0)
    expect(right).toBeLessThan(page.width_mm)
    expect(top).toBeLessThan(page.height_mm)
  })

  it('every reading to improve says how, and every field has a name', () => {
    for (const reading of found.improve) {
      const text = improveText(reading, words)
      expect(text, reading.at).not.toMatch(/\{|undefined/)
      expect(text, reading.at).not.toContain(reading.at)
    }
  })

  it('the table has a line for each reading and result, in the decimal sign of the language', () => {
    const lines = sensitivityCsv(found, words, inch).trim().split('\r\n')
    expect(lines).toHaveLength(1 + found.results.flatMap((r) => r.swings).length)
  })
})

it('every finding that asks for what decides is one that the engine makes', () => {
  const known = Object.keys(english.findings)
  expect(results.flatMap((r) => r.findings).filter((id) => !known.includes(id))).toEqual([])
})

it('every result has a name', () => {
  for (const { id } of results)
    expect([english.sensitivity.results[id], spanish.sensitivity.results[id]]).not.toContain('')
})
