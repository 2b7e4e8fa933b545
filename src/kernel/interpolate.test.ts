import { describe, expect, it } from 'vitest'
import { monotoneCubic, piecewiseLinear } from './interpolate.ts'

const x = [0, 1, 2, 4, 5]
const y = [0, 1, 1.1, 6, 20]

describe('interpolation', () => {
  it('passes through its points and holds the end values outside of them', () => {
    for (const curve of [piecewiseLinear({ x, y }), monotoneCubic({ x, y })]) {
      for (const [i, at] of x.entries()) expect(curve(at)).toBeCloseTo(y[i]!, 12)
      expect(curve(-3)).toBe(0)
      expect(curve(9)).toBe(20)
    }
  })

  it('rises where the points rise, also beside a flat and a steep piece', () => {
    const curve = monotoneCubic({ x, y })
    let before = curve(0)
    for (let at = 0.01; at <= 5; at += 0.01) {
      const now = curve(at)
      expect(now).toBeGreaterThanOrEqual(before)
      before = now
    }
  })

  it('gives a straight line back exactly', () => {
    const curve = monotoneCubic({ x: [0, 1, 3], y: [2, 4, 8] })
    for (const at of [0.2, 0.9, 1.7, 2.9]) expect(curve(at)).toBeCloseTo(2 + 2 * at, 12)
  })

  it('follows a parabola to second order', () => {
    const xs = Array.from({ length: 21 }, (_, i) => i / 10 + 1)
    const curve = monotoneCubic({ x: xs, y: xs.map((v) => v * v) })
    for (let at = 1.03; at < 3; at += 0.07) expect(Math.abs(curve(at) - at * at)).toBeLessThan(5e-4)
  })

  it('refuses points that do not rise', () => {
    expect(() => piecewiseLinear({ x: [0, 0], y: [1, 2] })).toThrow(RangeError)
    expect(() => monotoneCubic({ x: [0], y: [1] })).toThrow(RangeError)
  })
})
