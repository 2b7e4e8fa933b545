import { describe, expect, it } from 'vitest'
import { readingBands } from '../tables/readings.ts'
import type { Field } from './field.ts'
import { planFields } from './plan.ts'
import { chosen, readingAt, readings } from './readings.ts'

/** Every number of the field definitions by its path, `_` for entries; lists and maps where `wholes` asks for them. */
function numbers(field: Field, path: string, wholes: boolean): readonly string[] {
  if (field.kind === 'quantity' || field.kind === 'number') return [path]
  if (field.kind === 'list' || field.kind === 'map')
    return [...(wholes ? [path] : []), ...numbers(field.of, `${path}/_`, wholes)]
  if (field.kind !== 'section') return []
  return Object.entries(field.fields).flatMap(([key, f]) =>
    numbers(f as Field, path === '' ? key : `${path}/${key}`, wholes),
  )
}

const all = numbers(planFields, '', true)
const named = [...Object.values(readings).flat(), ...chosen]
/** What stands in a list or map that is off as a whole has no reading of its own. */
const within = (path: string, whole: string): boolean => path.startsWith(`${whole}/`)
const wholes = ['pump/curve', 'feed/shelf/_/label']

describe('readings', () => {
  it('name fields that the plan has', () => {
    expect(named.filter((path) => !all.includes(path) && !path.startsWith('prices/'))).toEqual([])
  })

  it('name no field twice', () => expect(named.filter((path, i) => named.indexOf(path) !== i)).toEqual([]))

  it('tell of every number how it came about, or that it is chosen', () => {
    const untold = numbers(planFields, '', false)
      .filter((path) => !wholes.some((w) => within(path, w)))
      .filter((path) => readingAt(path) === null && !chosen.includes(path))
    expect(untold).toEqual([])
  })

  it('have a band each, and none is without width', () => {
    for (const [kind, row] of Object.entries(readingBands.rows)) {
      const { lowShare, highShare, low, high } = row
      expect(Math.min(lowShare, highShare, low, high), kind).toBeGreaterThanOrEqual(0)
      expect(lowShare + highShare + low + high, kind).toBeGreaterThan(0)
    }
  })

  it('take a whole currency of prices by the section', () => {
    expect(readingAt('prices/pump')).toBe('price')
    expect(readingAt('riser/neededFlow')).toBeNull()
  })
})
