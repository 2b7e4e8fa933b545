import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { edgeUnits } from './edge-units.ts'
import { inUnit, readQuantity } from './quantity-text.ts'
import type { Unit } from './units.ts'

const ok = (text: string, unit: Unit) => {
  const read = readQuantity(text, unit)
  if (!read.ok) throw new Error(`${text}: ${read.problem}`)
  return read.value
}
const problem = (text: string, unit: Unit) => {
  const read = readQuantity(text, unit)
  return read.ok ? 'ok' : read.problem
}

describe('quantities as people type them', () => {
  const inch = 0.0254
  it.each([
    ['104 mm', 'm', 0.104],
    ['104mm', 'm', 0.104],
    ['88,9 mm', 'm', 0.0889],
    ['1 1/2 in', 'm', 1.5 * inch],
    ['1-1/2"', 'm', 1.5 * inch],
    ['1½ in', 'm', 1.5 * inch],
    ['3/4 in', 'm', 0.75 * inch],
    ['4.5"', 'm', 4.5 * inch],
    ['1\' 6 3/4"', 'm', 18.75 * inch],
    ['5 ft 4 in', 'm', 64 * inch],
    ['5 US gal', 'm3', 5 * 0.003785411784],
    ['1800 L/h', 'm3_s', 1800 / 3.6e6],
    ['1,234.5 mm', 'm', 1.2345],
    ['45 deg', 'rad', Math.PI / 4],
    ['45°', 'rad', Math.PI / 4],
    ['0.57 mS/cm', 'S_m', 0.057],
    ['1800 µS/cm', 'S_m', 0.18],
    ['31 °C', 'C', 31],
    ['61 F', 'C', (61 - 32) / 1.8],
    ['-5 °C', 'C', -5],
    ['−5 °C', 'C', -5],
    ['36 %', '1', 0.36],
    ['1e3 mm', 'm', 1],
    ['2,1 m', 'm', 2.1],
    ['250 kg/m2', 'kg_m2', 250],
  ] as const)('%s', (text, unit, expected) => {
    expect(ok(text, unit)).toBeCloseTo(expected, 12)
  })

  it('keeps 104 mm exactly 0.104', () => expect(ok('104 mm', 'm')).toBe(0.104))

  it.each([
    ['104', 'm', 'no-unit'],
    ['', 'm', 'empty'],
    ['   ', 'm', 'empty'],
    ['mm', 'm', 'not-a-number'],
    ['1/0 in', 'm', 'not-a-number'],
    ['1 2 3 mm', 'm', 'not-a-number'],
    ['1.2.3 mm', 'm', 'not-a-number'],
    ['5 gal', 'm3', 'ambiguous-unit'],
    ['1100 ppm', 'S_m', 'ambiguous-unit'],
    ['1,500 mm', 'm', 'ambiguous-number'],
    ['5.8 pH', 'm', 'unknown-unit'],
    ['10 kg', 'm', 'unknown-unit'],
    ['Infinity mm', 'm', 'not-a-number'],
    [`${'9'.repeat(80)} mm`, 'm', 'too-long'],
  ] as const)('%s is refused: %s as %s', (text, unit, expected) => {
    expect(problem(text, unit)).toBe(expected)
  })

  it('offers both readings of an ambiguous number', () => {
    const read = readQuantity('1,500 mm', 'm')
    expect(read).toMatchObject({ choices: ['1500 mm', '1.500 mm'] })
  })

  it('gives back the number that was written, in every unit', () => {
    const cases = Object.entries(edgeUnits).flatMap(([unit, list]) =>
      list!.map((u) => [unit as Unit, u.spell[0]!] as const),
    )
    fc.assert(
      fc.property(fc.constantFrom(...cases), fc.integer({ min: 1, max: 9_999_999 }), ([unit, spelled], n) => {
        const text = `${n / 1000} ${spelled}`
        expect(inUnit(ok(text, unit), unit, spelled)).toBeCloseTo(n / 1000, 6)
      }),
      { seed: 7, numRuns: 3000 },
    )
  })

  it('never throws and never hangs on any text', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 200 }),
        fc.constantFrom(...(Object.keys(edgeUnits) as Unit[])),
        (text, unit) => {
          const read = readQuantity(text, unit)
          return !read.ok || Number.isFinite(read.value)
        },
      ),
      { seed: 11, numRuns: 20_000 },
    )
  })

  it('takes what is smaller than any number that can be reckoned with as nothing', () => {
    expect(readQuantity('2.96e-322 m/s', 'm_s')).toMatchObject({ ok: true, value: 0 })
    expect(readQuantity('1e-9 m/s', 'm_s')).toMatchObject({ ok: true, value: 1e-9 })
  })
})
