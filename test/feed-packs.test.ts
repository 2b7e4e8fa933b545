import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { evaluateDocument } from '../src/evaluate.ts'
import { isKnown } from '../src/plan/known.ts'
import { valueAt, withoutValue, withValue } from '../src/plan/patch.ts'
import type { PlanDocument } from '../src/plan/plan.ts'

const file = join(import.meta.dirname, '..', 'examples', 'balcony.plan.json')
const balcony = JSON.parse(readFileSync(file, 'utf8')) as PlanDocument
/** Epsom salt is the fourth of the balcony's shelf: its recipe takes some ten grams a batch. */
const EPSOM = 'feed/shelf/3'
const judged = (document: PlanDocument, remedies = false) => {
  const { facts, findings } = evaluateDocument(document, { remedies })
  const { packs } = facts.nutrients
  if (!isKnown(packs)) throw new Error(packs.needs.join(', '))
  const own = findings.find((f) => f.id === 'nutrients/pack' && f.at === `${EPSOM}/onHand`)
  return { packs: packs.known, finding: own, epsom: packs.known.packs.find((p) => p.at === EPSOM)! }
}

describe('packs on the shelf', () => {
  it('hold what batch and bottles take: nothing is short, and more of it lasts as much longer', () => {
    const one = judged(balcony)
    const two = judged(withValue(balcony, `${EPSOM}/onHand`, '2 kg'))
    expect(one.finding?.verdict).toBe('pass')
    expect(one.epsom.onHand_kg).toBe(1)
    expect(Math.abs(two.epsom.batches - 2 * one.epsom.batches)).toBeLessThanOrEqual(1)
    expect(one.packs.untold).toEqual([])
  })

  it('fail below a batch, are watched below batch and bottles, and pass at just that', () => {
    const { epsom } = judged(balcony)
    // The bottle holds a hundredfold litre for a batch of 36 L: 100/36 of the grams, by the recipe before weighing.
    expect(epsom.bottles_kg / epsom.dose_kg).toBeCloseTo(100 / 36, 1)
    const at = (kg: number) => judged(withValue(balcony, `${EPSOM}/onHand`, `${kg * 1000} g`)).finding?.verdict
    const need_kg = epsom.batch_kg + epsom.bottles_kg
    expect([at(epsom.batch_kg - 1e-6), at(epsom.batch_kg), at(need_kg - 1e-6), at(need_kg)]).toEqual([
      ...['fail', 'watch', 'watch', 'pass'],
    ])
  })

  it('that are short are made good by the amount, and by whole packs', () => {
    const short = withValue(balcony, `${EPSOM}/pack`, '8 g')
    const { epsom, finding } = judged(short, true)
    expect(finding?.verdict).toBe('fail')
    expect(epsom.short_kg).toBeCloseTo(epsom.batch_kg + epsom.bottles_kg - 0.008, 9)
    expect(epsom.buy).toBe(Math.ceil(epsom.short_kg / 0.008))
    const [remedy] = finding!.remedies
    expect(remedy).toMatchObject({ set: `${EPSOM}/onHand`, leaves: 'pass' })
    expect(judged(withValue(short, `${EPSOM}/onHand`, remedy!.to)).finding?.verdict).toBe('pass')
  }, 30_000)

  it('of a dose from a weaker stock hold the whole of that stock', () => {
    const molybdate = judged(balcony).packs.packs.find(({ id }) => id === 'sodium molybdate')!
    expect(molybdate.batch_kg).toBeGreaterThan(20 * molybdate.dose_kg)
  })

  it('that nobody told are asked for', () => {
    const bare = withoutValue(valueAt(balcony, EPSOM) as PlanDocument, 'pack')
    const { finding, packs } = judged(withValue(balcony, EPSOM, bare))
    expect(finding).toBeUndefined()
    expect(packs.untold).toEqual([{ id: 'Epsom salt', at: EPSOM }])
  })
})
