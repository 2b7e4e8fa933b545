import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { linearMinimum } from './linear-program.ts'
import { optimalityGap, quadraticMinimum } from './quadratic-program.ts'

const identity = (n: number) =>
  Array.from({ length: n }, (_, i) => Array.from({ length: n }, (__, j) => Number(i === j)))
const seeded = { seed: 20261125, numRuns: 100 } as const

describe('quadraticMinimum', () => {
  it('projects a point on a corner: the nearest point of x, y ≥ 1 to (0, 3) is (1, 3)', () => {
    const found = quadraticMinimum({
      quadratic: identity(2),
      linear: [0, 3],
      rows: [
        { coefficients: [1, 0], atLeast: 1 },
        { coefficients: [0, 1], atLeast: 1 },
      ],
    })
    expect(found.x[0]).toBeCloseTo(1, 12)
    expect(found.x[1]).toBeCloseTo(3, 12)
    expect(found.multipliers).toEqual([1, 0])
    expect(found.gap).toBeLessThan(1e-12)
  })

  it('says so where rows contradict each other', () => {
    const rows = [
      { coefficients: [1], atLeast: 1 },
      { coefficients: [-1], atLeast: 0 },
    ]
    expect(quadraticMinimum({ quadratic: identity(1), linear: [0], rows }).feasible).toBe(false)
  })

  it('refuses a function that is not convex', () => {
    expect(() => quadraticMinimum({ quadratic: [[-1]], linear: [0], rows: [] })).toThrow(RangeError)
  })

  it('proves its answers, and no feasible neighbour is better', () => {
    const number = fc.double({ min: -2, max: 2, noNaN: true })
    fc.assert(
      fc.property(
        fc.array(fc.array(number, { minLength: 4, maxLength: 4 }), { minLength: 4, maxLength: 4 }),
        number,
        (m, d) => {
          const quadratic = m.map((row, i) =>
            m.map((other, j) => row.reduce((s, x, k) => s + x * other[k]!, i === j ? 0.1 / 4 : 0)),
          )
          const linear = m.map((row) => row[0]! + d)
          const rows = identity(4).map((coefficients) => ({ coefficients, atLeast: 0 }))
          const found = quadraticMinimum({ quadratic, linear, rows })
          expect(found.gap).toBeLessThan(1e-8)
          const value = (x: readonly number[]) =>
            x.reduce((s, xi, i) => s + xi * (quadratic[i]!.reduce((t, q, j) => t + q * x[j]!, 0) / 2 - linear[i]!), 0)
          for (let i = 0; i < 4; i++)
            for (const step of [1e-3, -1e-3]) {
              const x = found.x.map((xi, k) => Math.max(0, k === i ? xi + step : xi))
              expect(value(x)).toBeGreaterThanOrEqual(found.objective - 1e-9)
            }
        },
      ),
      seeded,
    )
  })
})

describe('optimalityGap', () => {
  it('is large at a point that is not the optimum', () => {
    const program = { quadratic: identity(1), linear: [2], rows: [{ coefficients: [1], atLeast: 0 }] }
    expect(optimalityGap(program, [2], [0])).toBe(0)
    expect(optimalityGap(program, [1.9], [0])).toBeGreaterThan(0.01)
    expect(optimalityGap(program, [0], [-2])).toBeGreaterThan(0.1)
  })
})

describe('linearMinimum', () => {
  it('solves a textbook programme: 2 x + 3 y over x + y ≥ 4, x + 3 y ≥ 6, x, y ≥ 0 costs 9 at (3, 1)', () => {
    const found = linearMinimum({
      cost: [2, 3],
      rows: [
        { coefficients: [1, 1], atLeast: 4 },
        { coefficients: [1, 3], atLeast: 6 },
        { coefficients: [1, 0], atLeast: 0 },
        { coefficients: [0, 1], atLeast: 0 },
      ],
    })
    expect(found.cost).toBeCloseTo(9, 9)
    expect(found.x[0]).toBeCloseTo(3, 9)
    expect(found.gap).toBeLessThan(1e-9)
  })
})
