import { describe, expect, it } from 'vitest'
import { quantity } from '../../../kernel/units.ts'
import { limitOf } from './limits.ts'

const limit = (value: number, must: { min?: number; max?: number }, want: { min?: number; max?: number } = {}) =>
  limitOf({ measured: quantity(value, 'count'), must, want })

describe('the limit beside a finding', () => {
  it('is told with its side: the one that is missed, else the nearer one', () => {
    expect(limit(0.6, { min: 1 })).toEqual({ word: 'least', at: quantity(1, 'count') })
    expect(limit(90, { max: 60 })).toEqual({ word: 'most', at: quantity(60, 'count') })
    expect(limit(9, { min: 0, max: 10 })?.word).toBe('most')
    expect(limit(1, { min: 0, max: 10 })?.word).toBe('least')
  })
  it('is the wanted one where what must be is kept', () => {
    expect(limit(70, { max: 100 }, { max: 50 })).toEqual({ word: 'most', at: quantity(50, 'count') })
    expect(limit(120, { max: 100 }, { max: 50 })).toEqual({ word: 'most', at: quantity(100, 'count') })
  })
  it('is none where nothing is asked', () => expect(limit(3, {})).toBeNull())
})
