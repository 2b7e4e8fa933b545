import { describe, expect, it } from 'vitest'
import { evaluateDocument } from '../src/evaluate.ts'
import { isKnown } from '../src/plan/known.ts'
import { withValue } from '../src/plan/patch.ts'
import type { PlanDocument } from '../src/plan/plan.ts'
import { metric } from '../src/render/display.ts'
import { partTexts } from '../src/render/tables/parts.ts'
import { english } from '../src/render/words/en/english.ts'
import { findingText } from '../src/render/words/sentences.ts'
import { example } from './print/set-of.ts'

type Changes = Readonly<Record<string, string | boolean | number>>
const changed = (changes: Changes, document: PlanDocument = example('balcony')): PlanDocument =>
  Object.entries(changes).reduce((d, [path, value]) => withValue(d, path, value), document)
const looked = (changes: Changes, remedies = false) => {
  const { findings, facts } = evaluateDocument(changed(changes), { remedies })
  return { facts, of: (id: string) => findings.find((f) => f.id === id)! }
}

/** A wind in which the balcony's tower falls without a strap. */
const storm = { 'place/gust': '20 m/s' }
const standing = ['tips-full', 'tips-low', 'child-pull', 'lean', 'strap', 'base-width'].map((id) => `structure/${id}`)

describe('a strap counts when it is known what it carries', () => {
  it('alone, as “tied”, proves nothing where it decides', () => {
    const { of } = looked({ ...storm, 'column/base/anchored': true })
    for (const id of standing) {
      expect([id, of(id).verdict]).toEqual([id, 'unknown'])
      expect(of(id).needs).toEqual(['column/base/strapLoad', 'column/base/strapHeight'])
      expect(of(id).safety).toBe(true)
    }
    expect(findingText(of('structure/tips-low'), english, metric).sentence).toMatch(/has to carry \d+ N/)
  })

  it('asks only for what is missing', () => {
    const { of } = looked({ ...storm, 'column/base/anchored': true, 'column/base/strapHeight': '1.4 m' })
    expect(of('structure/tips-low').needs).toEqual(['column/base/strapLoad'])
  })

  it('does not matter to a tower that stands by itself', () => {
    const calm = { 'place/gust': '3 m/s' }
    expect(looked(calm).of('structure/tips-low').verdict).toBe('pass')
    expect(looked({ ...calm, 'column/base/anchored': true }).of('structure/tips-low').verdict).toBe('pass')
  })

  it('of 20 N excuses no narrow base', () => {
    const tied = { ...storm, 'column/base/anchored': true, 'column/base/strapHeight': '1.4 m' }
    const weak = looked({ ...tied, 'column/base/strapLoad': '20 N' })
    expect(weak.of('structure/tips-low').verdict).toBe('fail')
    expect(weak.of('structure/strap').verdict).toBe('fail')
    expect(weak.of('structure/base-width').verdict).toBe('watch')
    const strong = looked({ ...tied, 'column/base/strapLoad': '1000 N' })
    for (const id of standing) expect([id, strong.of(id).verdict]).toEqual([id, 'pass'])
  })

  it('is offered with its load and its height', () => {
    const { of } = looked(storm, true)
    for (const id of ['structure/tips-low', 'structure/strap', 'build/strap']) {
      const sets = of(id).remedies.map((r) => [r.set, ...r.with.map((w) => w.set)].sort())
      expect([id, sets]).toEqual([
        id,
        expect.arrayContaining([['column/base/anchored', 'column/base/strapHeight', 'column/base/strapLoad']]),
      ])
    }
  })
})

describe('the list of parts', () => {
  it('says what the strap carries and at what current the earth-leakage device trips', () => {
    const { facts } = looked({ 'column/base/anchored': true, 'column/base/strapLoad': '300 N' })
    if (!isKnown(facts.parts)) throw new Error('no parts')
    const { known } = facts.parts
    const size = (id: string) => partTexts(known, english, metric).find((p) => p.id === id)?.size
    expect(size('strap')).toBe('carries 300 N, a weight of 30.6 kg')
    expect(size('rcd')).toBe('30 mA')
  })
})
