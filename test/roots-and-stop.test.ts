import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { boreForRoots, matArea, matVolume } from '../src/disciplines/hydraulics/equations-roots.ts'
import { weekOfLength } from '../src/disciplines/hydraulics/roots-facts.ts'
import { evaluate } from '../src/evaluate.ts'
import { parsePlan } from '../src/plan/document.ts'
import { isKnown } from '../src/plan/known.ts'
import { withValue } from '../src/plan/patch.ts'
import type { PlanDocument } from '../src/plan/plan.ts'

const balcony = JSON.parse(
  readFileSync(join(import.meta.dirname, '../examples/balcony.plan.json'), 'utf8'),
) as PlanDocument

type Changes = Readonly<Record<string, unknown>>

function looked(changes: Changes = {}) {
  const document = Object.entries(changes).reduce((d, [path, value]) => withValue(d, path, value), balcony)
  const { facts, findings } = evaluate(parsePlan(document).plan, { day: false })
  if (!isKnown(facts.hydraulics.roots)) throw new Error(JSON.stringify(facts.hydraulics.roots))
  return { roots: facts.hydraulics.roots.known, finding: findings.find((f) => f.id === 'hydraulics/root-room')! }
}

describe('roots in the bore', () => {
  it('take what lies in the bore: the mats of all rings, counted one by one at a height below the top', () => {
    const [perRing, pitch_m, volume_m3, length_m] = [3, 0.18, 3e-4, 0.5] as const
    // Roots of ring j hang from j·p down to j·p + L, as thick all along: mean of the sum over the height of one ring.
    const steps = 9000
    const at = (z: number) =>
      Array.from({ length: 40 }, (_, j) => j * pitch_m).filter((top) => z >= top && z < top + length_m).length
    const mean = Array.from({ length: steps }, (_, i) => at(20 * pitch_m + ((i + 0.5) * pitch_m) / steps))
    const counted = ((mean.reduce((a, b) => a + b) / steps) * perRing * volume_m3) / length_m
    expect(matArea({ perRing, pitch_m, volume_m3, length_m, rings: 40 })).toBeCloseTo(counted, 5)
  })

  it('leave half of a bore that is made for them', () => {
    const roots_m2 = matArea({ perRing: 3, pitch_m: 0.18, volume_m3: 4e-4, length_m: 0.3, rings: 8 })
    const bore_m = boreForRoots({ roots_m2, share: 0.5, tube_m2: 2e-4 })
    expect(roots_m2 / ((Math.PI / 4) * bore_m ** 2 - 2e-4)).toBeCloseTo(0.5, 12)
  })

  it('refuse what no root is', () => {
    expect(() => matVolume({ wetRoot_kg: -1, density_kg_m3: 1000, packing: 1 })).toThrow('m = -1')
    expect(() => matArea({ perRing: 3, pitch_m: 0, volume_m3: 1, length_m: 1, rings: 3 })).toThrow('p = 0')
    expect(() => boreForRoots({ roots_m2: 1, share: 0, tube_m2: 0 })).toThrow('s = 0')
  })

  it('of a column of lettuce and herbs fill half of 104 mm about day 52, as growers tell', () => {
    const { low, high } = looked().roots.halfFull_d
    expect(low).toBeLessThan(52)
    expect(high).toBeGreaterThan(52)
  })

  it('of tomatoes fill 75 mm in about five weeks', () => {
    const { roots } = looked({
      'column/pipe': { outside: '79 mm', wall: '2 mm', plastic: 'PVC-U' },
      'riser/inside': 'outside the column',
      'column/sites/perRing': 2,
      'column/sites/pitch': '200 mm',
      crops: [{ crop: 'tomato', sites: 16 }],
    })
    const at5 = roots.weeks.find((w) => w.week === 5)!.share
    expect(at5.low).toBeLessThan(1)
    expect(at5.high).toBeGreaterThan(1)
  })

  it('are watched, and nothing is said against young plants, a wide bore or few plants', () => {
    expect(looked().finding).toMatchObject({ verdict: 'watch', must: { max: 1 }, want: { max: 0.5 } })
    expect(looked({ 'column/sites/oldest': '4 weeks' }).finding.verdict).toBe('pass')
    expect(looked({ 'column/sites/perRing': 2 }).finding.verdict).toBe('pass')
    const { boreNeeded_m } = looked().roots
    const outside = `${(boreNeeded_m + 0.0064) * 1000 + 0.1} mm`
    const wide = { outside, wall: '3.2 mm', plastic: 'PVC-U' }
    expect(looked({ 'column/pipe': wide }).finding.verdict).toBe('pass')
    expect(looked({ crops: [{ crop: 'tomato' }], 'column/sites/oldest': '16 weeks' }).finding.verdict).toBe('fail')
  })

  it('name the crop to set lowest only where one has more root than the others', () => {
    expect(looked().finding.slots['deed']).toEqual({ phrase: 'roots-cut' })
    const mixed = looked({ 'crops/1/crop': 'chard' })
    expect(mixed.roots.heaviest).toBe('chard')
    expect(mixed.finding.slots['deed']).toEqual({ phrase: 'roots-swap', with: { crop: 'chard' } })
  })

  it('hang longer week by week', () => {
    const weeks = [0.05, 0.1, 0.2, 0.3].map(weekOfLength)
    for (const [i, w] of weeks.entries()) {
      expect(w.low).toBeLessThanOrEqual(w.high)
      if (i > 0) expect(w.low).toBeGreaterThanOrEqual(weeks[i - 1]!.low)
    }
  })
})

describe('the clock of a stop', () => {
  const stop = (changes: Changes) => {
    const document = Object.entries(changes).reduce((d, [path, value]) => withValue(d, path, value), balcony)
    const { facts, findings } = evaluate(parsePlan(document).plan, { day: false })
    return { ...facts.hydraulics.stop, finding: findings.find((f) => f.id === 'hydraulics/timer-off') }
  }

  it('off for six hours at 32 °C dries plants of four weeks within 40 minutes, and the finding says from which week', () => {
    const { hottest, finding } = stop({
      'place/airHigh': '32 °C',
      'pump/timerOn': '15 min',
      'pump/timerOff': '6 h',
    })
    const week4 = hottest.find((h) => h.week === 4)!
    expect(week4.dry_s.low).toBeLessThan(40 * 60)
    expect(week4.dry_s.high).toBeGreaterThan(40 * 60)
    const first = hottest.find((h) => h.dry_s.low < 6 * 3600)!
    expect(finding).toMatchObject({ verdict: 'fail' })
    expect(finding!.slots['from']).toMatchObject({ phrase: 'dries-from', with: { week: first.week } })
  })

  it('is the same as that of the airs where the air is the same, and keeps half in hand', () => {
    const { hottest, times } = stop({ 'place/airHigh': '30 °C' })
    for (const { week, dry_s, pause_s } of hottest) {
      expect(times.find((t) => t.week === week && t.air_C === 30)!.dry_s).toEqual(dry_s)
      expect(pause_s.low).toBeCloseTo(dry_s.low / 2, 9)
    }
  })
})
