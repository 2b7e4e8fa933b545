import { describe, expect, it } from 'vitest'
import { band, quantity } from '../kernel/units.ts'
import { judge, unknown } from './judge.ts'

const terms = { at: 'pump', must: { min: 3 }, want: { min: 4 }, source: 'common-practice' } as const
const verdict = (value: number) => judge('a/b', quantity(value, 'm'), terms).verdict

describe('judge', () => {
  it.each([
    [2.999, 'fail'],
    [3, 'watch'],
    [3.001, 'watch'],
    [3.999, 'watch'],
    [4, 'pass'],
    [400, 'pass'],
  ] as const)('%d is a %s', (value, expected) => expect(verdict(value)).toBe(expected))

  it('forgives the rounding of floating point on a bound, and no more', () => {
    expect(verdict(0.1 * 30 - 4e-16)).toBe('watch')
    expect(verdict(3 - 1e-6)).toBe('fail')
  })

  it.each([
    [4, 5, 'pass', 'whole'],
    [3, 5, 'watch', 'whole'],
    [2, 5, 'watch', 'part'],
    [1, 2, 'fail', 'none'],
  ] as const)('a band of %d to %d is a %s that holds in the %s', (low, high, expected, holds) => {
    const f = judge('a/b', band(low, high, 'm'), terms)
    expect([f.verdict, f.holds]).toEqual([expected, holds])
  })

  it('judges both ends', () => {
    const both = { ...terms, must: { min: 3, max: 9 }, want: {} }
    expect(judge('a/b', quantity(9, 'm'), both).verdict).toBe('pass')
    expect(judge('a/b', quantity(9.1, 'm'), both).verdict).toBe('fail')
  })

  it('refuses a number that is none', () => {
    expect(() => judge('a/b', quantity(Number.NaN, 'm'), terms)).toThrow(RangeError)
  })

  it('says what is missing', () => {
    const f = unknown('a/b', { ...terms, needs: ['pump/maxHead'] })
    expect(f).toMatchObject({ verdict: 'unknown', measured: null, needs: ['pump/maxHead'] })
  })
})
