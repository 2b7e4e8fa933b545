import { describe, expect, it } from 'vitest'
import { root } from './solve.ts'

describe('root', () => {
  it('finds known zeros to the last digits', () => {
    expect(root({ of: (x) => x * x - 2, low: 0, high: 2 })).toBeCloseTo(Math.SQRT2, 14)
    expect(root({ of: (x) => Math.cos(x), low: 0, high: 3 })).toBeCloseTo(Math.PI / 2, 14)
    expect(root({ of: (x) => x ** 9, low: -1, high: 1.5, within: 1e-12 })).toBeCloseTo(0, 10)
    expect(root({ of: (x) => Math.exp(x) - 1e-8, low: -50, high: 50 })).toBeCloseTo(Math.log(1e-8), 10)
  })

  it('takes an end that is itself the zero, and ends in either order', () => {
    expect(root({ of: (x) => x, low: 0, high: 1 })).toBe(0)
    expect(root({ of: (x) => x - 1, low: 3, high: 0 })).toBeCloseTo(1, 14)
  })

  it('refuses ends of one sign', () => {
    expect(() => root({ of: (x) => x * x + 1, low: -1, high: 1 })).toThrow(RangeError)
    expect(() => root({ of: () => Number.NaN, low: -1, high: 1 })).toThrow(RangeError)
  })
})
