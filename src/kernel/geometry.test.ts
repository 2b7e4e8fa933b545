import { describe, expect, it } from 'vitest'
import { completeElliptic } from './elliptic.ts'
import { maximum, minimum, patternMinimum } from './extremum.ts'
import { gaussNodes, turnIntegral } from './integrate.ts'
import { polyline } from './polyline.ts'
import { requireNotNegative, requirePositive } from './require.ts'

describe('complete elliptic integrals', () => {
  it('at the ends of the range', () => {
    expect(completeElliptic(0)).toEqual({ first: Math.PI / 2, second: Math.PI / 2, firstReduced: Math.PI / 2 })
    expect(completeElliptic(1)).toEqual({ first: Number.POSITIVE_INFINITY, second: 1, firstReduced: 0 })
    for (const k of [-1e-9, 1.0000001, Number.NaN]) expect(() => completeElliptic(k)).toThrow(RangeError)
  })
  it('at k² = 1/2 as printed (Abramowitz & Stegun, tables 17.1 and 17.2)', () => {
    const { first, second } = completeElliptic(Math.SQRT1_2)
    expect(Math.abs(first - 1.85407467730137)).toBeLessThan(1e-14)
    expect(Math.abs(second - 1.350643881)).toBeLessThan(1e-10)
  })
  it("hold Legendre's relation at every modulus", () => {
    for (let k = 0.05; k < 1; k += 0.05) {
      const a = completeElliptic(k)
      const b = completeElliptic(Math.sqrt(1 - k * k))
      expect(a.second * b.first + b.second * a.first - a.first * b.first).toBeCloseTo(Math.PI / 2, 12)
    }
  })
})

describe('integrals', () => {
  it('over a turn are exact for what repeats', () => {
    expect(turnIntegral((x) => Math.cos(x) ** 2)).toBeCloseTo(Math.PI, 13)
    // ∮ dx / (2 + cos x) = 2π / √3
    expect(turnIntegral((x) => 1 / (2 + Math.cos(x)))).toBeCloseTo((2 * Math.PI) / Math.sqrt(3), 12)
  })
  it('by Gauss are exact to the fifteenth power', () => {
    const sum = gaussNodes(1, 3, 1).reduce((total, [x, weight]) => total + weight * x ** 15, 0)
    expect(sum / ((3 ** 16 - 1) / 16)).toBeCloseTo(1, 12)
    expect(gaussNodes(0, 1, 3)).toHaveLength(24)
  })
})

describe('extrema', () => {
  it('are found inside and at the ends', () => {
    expect(minimum({ of: (x) => (x - 0.3) ** 2, low: -1, high: 2 }).at).toBeCloseTo(0.3, 7)
    expect(minimum({ of: (x) => x, low: -1, high: 2 })).toEqual({ at: -1, value: -1 })
    expect(maximum({ of: (x) => x, low: -1, high: 2 })).toEqual({ at: 2, value: 2 })
    expect(maximum({ of: Math.sin, low: 0, high: 3 * Math.PI, pieces: 40 }).value).toBeCloseTo(1, 14)
  })
  it('of two variables are found down a slanted valley', () => {
    const of = ([x, y]: readonly number[]) => (x! - y!) ** 2 * 50 + (x! + y! - 2) ** 2
    const { at, value } = patternMinimum({ of, start: [3, -2], steps: [0.5, 0.5] })
    expect(value).toBeLessThan(1e-12)
    expect(at[0]).toBeCloseTo(1, 6)
  })
})

describe('a polyline', () => {
  const circle = (t: number) => ({ x_m: Math.cos(t), y_m: Math.sin(t) })
  it('stays within its tolerance of the curve, and needs no more points than about that', () => {
    for (const tolerance_m of [1e-2, 1e-4, 1e-6]) {
      const points = polyline({ of: circle, from: 0, to: 2 * Math.PI, tolerance_m })
      const sags = points.slice(1).map((p, i) => 1 - Math.hypot(p.x_m + points[i]!.x_m, p.y_m + points[i]!.y_m) / 2)
      expect(Math.max(...sags)).toBeLessThanOrEqual(tolerance_m)
      expect(points.length).toBeLessThan(2.5 * Math.ceil(Math.PI / Math.sqrt(2 * tolerance_m)) + 16)
    }
  })
  it('keeps both ends and refuses a tolerance of nothing', () => {
    const points = polyline({ of: circle, from: 0, to: 1, tolerance_m: 0.1 })
    expect([points[0], points.at(-1)]).toEqual([circle(0), circle(1)])
    expect(() => polyline({ of: circle, from: 0, to: 1, tolerance_m: 0 })).toThrow(RangeError)
  })
})

describe('refusals', () => {
  it('name the function, the symbol and the value', () => {
    expect(() => requirePositive('f', { a: 1, b: 0 })).toThrow('f: b = 0 is not positive')
    expect(() => requirePositive('f', { a: Number.POSITIVE_INFINITY })).toThrow(RangeError)
    expect(() => requireNotNegative('f', { a: 0, b: -1 })).toThrow('f: b = -1 is negative')
    expect(() => requireNotNegative('f', { a: Number.NaN })).toThrow(RangeError)
  })
})
