import { describe, expect, it } from 'vitest'
import type { Field } from '../../plan/field.ts'
import { planFields } from '../../plan/plan.ts'
import { english } from './en/english.ts'
import { spanish } from './es/spanish.ts'
import { placeName } from './place-names.ts'

/** Every place of the plan; lists by their first entry, maps left out: their keys are the reader's own names. */
function placesOf(field: Field, path: string): readonly string[] {
  const below = (inner: Field, key: string) => placesOf(inner, path === '' ? key : `${path}/${key}`)
  const own = path === '' ? [] : [path]
  switch (field.kind) {
    case 'section':
      return [...own, ...Object.entries(field.fields).flatMap(([key, inner]) => below(inner, key))]
    case 'named':
      return [...own, ...Object.entries(field.section.fields).flatMap(([key, inner]) => below(inner, key))]
    case 'list':
      return [...own, ...below(field.of, '0')]
    default:
      return own
  }
}

const all = placesOf(planFields, '')

describe('a place of the plan in words', () => {
  it('is found for every place', () => expect(all.length).toBeGreaterThan(300))

  it.each([english, spanish])('never is a path, nor holds a key of two words written as one', (words) => {
    const coded = all.filter((path) => {
      const name = placeName(path, words)
      return name === path || path.split('/').some((key) => /\p{Ll}\p{Lu}\p{Ll}/u.test(key) && name.includes(key))
    })
    expect(coded).toEqual([...(words === english ? ['note'] : [])])
  })

  it('is in Spanish never the English key', () => {
    const alike = ['column/base']
    const keyed = all.filter((path) => {
      const key = path.split('/').findLast((k) => !/^\d+$/.test(k))!
      return new RegExp(`(^|[( ])${key}($|\\))`).test(placeName(path, spanish))
    })
    expect(keyed).toEqual(alike)
  })

  it.each([english, spanish])('has a short name for every figure of the form', ({ labels }) => {
    const keys = all.filter((path) => {
      const plain = path.split('/').filter((k) => !/^\d+$/.test(k))
      return /\p{Ll}\p{Lu}/u.test(plain.at(-1)!) && (labels[plain.join('/')] ?? labels[plain.at(-1)!]) === undefined
    })
    expect(keys).toEqual([])
  })
})
