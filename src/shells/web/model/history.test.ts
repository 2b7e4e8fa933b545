import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import balcony from '../../../../examples/balcony.plan.json'
import { planText } from '../../../plan/document.ts'
import { valueAt } from '../../../plan/patch.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import { begun, type History, numbered, redo, STEPS_KEPT, undo, withChange, withDocument } from './history.ts'

const paths = [
  'name',
  'note',
  'column/length',
  'column/sites/pitch',
  'column/stub/angle',
  'column/stub/mouthTilt',
  'lamps/power',
  'towers',
  'crops/0/sites',
  'reservoir/container/depth',
  'measured/columnWall',
]

const edit = fc.record({
  kind: fc.constantFrom('set', 'remove', 'whole', 'undo', 'redo'),
  path: fc.constantFrom(...paths),
  value: fc.oneof(fc.integer({ min: 0, max: 9 }), fc.constantFrom('10 mm', '11 mm', '12 mm')),
})

function applied(h: History, e: { kind: string; path: string; value: unknown }, at_ms: number): History {
  const from = valueAt(h.document, e.path)
  switch (e.kind) {
    case 'set':
      return withChange(h, { path: e.path, value: e.value, from, at_ms })
    case 'remove':
      return from === undefined ? h : withChange(h, { path: e.path, value: undefined, from, at_ms })
    case 'whole':
      return withDocument(h, { rootfall: 1, name: String(e.value), column: {} }, { kind: 'opened', name: '' }, at_ms)
    case 'undo':
      return undo(h)
    default:
      return redo(h)
  }
}

/** Towers as a number would run through a value; such a path is never offered by a field. */
const allowed = (h: History, path: string): boolean => {
  const inner = h.document[path.split('/')[0]!]
  return inner === undefined || typeof inner === 'object' || !path.includes('/')
}

describe('the history of a plan', () => {
  it('gives the same text after n undos and n redos, 1,000 sequences', () => {
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 60 }), (edits) => {
        let h = begun(balcony as PlanDocument)
        const texts = [planText(h.document)]
        for (const [i, e] of edits.entries()) {
          if (
            e.kind === 'set' &&
            (!allowed(h, e.path) || (e.path.startsWith('crops/') && !Array.isArray(h.document['crops'])))
          )
            continue
          const was = h
          h = applied(h, e, i * 1000)
          if (h !== was) texts[h.done.length] = planText(h.document)
        }
        const last = planText(h.document)
        const steps = h.done.length
        for (let n = steps; n > 0; n--) {
          h = undo(h)
          expect(planText(h.document)).toBe(texts[n - 1])
        }
        expect(planText(h.document)).toBe(planText(balcony as PlanDocument))
        for (let n = 0; n < steps; n++) h = redo(h)
        expect(planText(h.document)).toBe(last)
      }),
      { numRuns: 1000, seed: 20261125 },
    )
  })

  it('keeps at least 200 steps and forgets the oldest beyond its bound', () => {
    let h = begun({ rootfall: 1 })
    for (let i = 1; i <= STEPS_KEPT + 5; i++)
      h = withChange(h, { path: 'name', value: `plan ${i}`, from: h.document['name'], at_ms: i * 1000 })
    expect(STEPS_KEPT).toBeGreaterThanOrEqual(200)
    expect(h.done.length).toBe(STEPS_KEPT)
    for (let i = 0; i < STEPS_KEPT; i++) h = undo(h)
    expect(h.document['name']).toBe('plan 5')
    expect(undo(h)).toBe(h)
  })

  it('takes what is done within a moment as one step', () => {
    const set = (h: History, value: string, from: string, at_ms: number) =>
      withChange(h, { path: 'column/sites/pitch', value, from, at_ms })
    const h = set(
      set(set(begun(balcony as PlanDocument), '181 mm', '180 mm', 0), '182 mm', '181 mm', 300),
      '183 mm',
      '182 mm',
      600,
    )
    expect(h.done.length).toBe(1)
    expect(planText(undo(h).document)).toBe(planText(balcony as PlanDocument))
    expect(set(h, '184 mm', '183 mm', 5000).done.length).toBe(2)
  })

  it('numbers the plan itself with the last change, on from what its file said', () => {
    const set = (h: History, value: string, at_ms: number) =>
      withChange(h, { path: 'name', value, from: h.document['name'], at_ms })
    const opened = begun({ rootfall: 1, name: 'a', change: 7 })
    expect(numbered(opened)['change']).toBe(7)
    const first = set(opened, 'b', 0)
    expect(numbered(first)['change']).toBe(8)
    expect(numbered(set(first, 'bc', 300))['change']).toBe(8)
    const second = set(first, 'c', 5000)
    expect([second.done.at(-1)?.number, numbered(second)['change']]).toEqual([9, 9])
    expect(numbered(undo(second))['change']).toBe(8)
    expect(numbered(undo(undo(second)))).toEqual(opened.document)
    expect(numbered(redo(undo(second)))).toEqual(numbered(second))
    expect(numbered(set(begun({ rootfall: 1 }), 'x', 0))['change']).toBe(1)
  })

  it('takes no step where nothing changes', () => {
    const h = begun(balcony as PlanDocument)
    expect(withChange(h, { path: 'name', value: balcony.name, from: balcony.name, at_ms: 0 })).toBe(h)
  })
})
