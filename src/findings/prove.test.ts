import { describe, expect, it } from 'vitest'
import { readQuantity } from '../kernel/quantity-text.ts'
import { band, quantity, type Unit } from '../kernel/units.ts'
import { valueAt } from '../plan/patch.ts'
import type { PlanDocument } from '../plan/plan.ts'
import { withRemedy } from './apply.ts'
import type { Band, Finding, Lever } from './finding.ts'
import { judge } from './judge.ts'
import { along, among, together } from './levers.ts'
import { type Judge, withRemedies } from './prove.ts'
import { scaleOf } from './steps.ts'

const read = (d: PlanDocument, path: string, unit: Unit): number => {
  const typed = valueAt(d, path)
  if (typeof typed === 'number') return typed
  const r = typeof typed === 'string' ? readQuantity(typed, unit) : null
  return r?.ok ? r.value : 0
}

/** One finding: a band from the depth to twice the depth must lie within limits. */
const judgeDepth =
  (limits: Band, levers: readonly Lever[], other: (d: PlanDocument) => readonly Finding[] = () => []): Judge =>
  (d) => {
    const depth_m = read(d, 'distributor/depth', 'm') * (read(d, 'distributor/holes', 'count') || 1)
    const terms = { at: 'distributor/depth', must: limits, source: 'common-practice' as const, levers }
    return [judge('a/depth', band(depth_m, 2 * depth_m, 'm'), terms), ...other(d)]
  }

const document = { rootfall: 1, distributor: { depth: '10 mm' } } as PlanDocument
const remediesOf = (j: Judge, d = document) => withRemedies(d, j)[0]!.remedies

describe('a remedy', () => {
  const deeper = along('distributor/depth', 0.2, 'm', 0.001)

  it('is sought where the finding holds over the whole band, though it ends to fail sooner', () => {
    // From 25 mm on the upper end is within, from 50 mm on both.
    expect(remediesOf(judgeDepth({ min: 0.05 }, [deeper]))).toMatchObject([{ to: '50 mm', leaves: 'pass' }])
  })

  it('leaves a watch only where nothing holds altogether, and says so', () => {
    // The band spans a factor of two, so that it never fits in 50 to 60 mm.
    expect(remediesOf(judgeDepth({ min: 0.05, max: 0.06 }, [deeper]))).toMatchObject([{ to: '25 mm', leaves: 'watch' }])
  })

  it('of one lever that holds stands before one that would leave a watch', () => {
    const found = remediesOf(judgeDepth({ min: 0.05 }, [among('distributor/depth', ['30 mm']), deeper]))
    expect(found.map((r) => r.to)).toEqual(['50 mm'])
  })

  it('that would worsen something else is not offered, nor does a watch left behind excuse it', () => {
    const other = (d: PlanDocument) => [
      judge('a/other', quantity(read(d, 'distributor/depth', 'm'), 'm'), {
        at: 'column',
        must: { max: 0.03 },
        source: 'common-practice',
      }),
    ]
    expect(remediesOf(judgeDepth({ min: 0.05 }, [deeper], other))).toMatchObject([{ to: '25 mm', leaves: 'watch' }])
    expect(remediesOf(judgeDepth({ min: 0.09 }, [deeper], other))).toEqual([])
  })

  it('may take several fields hand in hand; what stands already is not told', () => {
    const pairs = together([
      [
        { set: 'distributor/depth', to: '20 mm' },
        { set: 'distributor/holes', to: 2 },
      ],
      [
        { set: 'distributor/depth', to: '10 mm' },
        { set: 'distributor/holes', to: 5 },
      ],
    ])
    const j = judgeDepth({ min: 0.05 }, pairs)
    const [found] = remediesOf(j)
    expect(found).toMatchObject({ set: 'distributor/holes', from: null, to: 5, with: [], leaves: 'pass' })
    const both = remediesOf(judgeDepth({ min: 0.04 }, pairs))
    expect(both).toMatchObject([{ set: 'distributor/depth', with: [{ set: 'distributor/holes', from: null, to: 2 }] }])
    expect(j(withRemedy(document, found!))[0]!.verdict).toBe('pass')
  })
})

describe('a step', () => {
  const typed = (path: string, text: string): PlanDocument => {
    const [section, field] = path.split('/') as [string, string]
    return { rootfall: 1, [section]: { [field]: text } } as PlanDocument
  }
  it.each([
    ['pump/timerOff', '2 h', 's', 60, 109, '109 min'],
    ['pump/timerOff', '2 h', 's', 3600, 3, '3 h'],
    ['pump/timerOff', '120 min', 's', 300, 3, '15 min'],
    ['reservoir/fillVolume', '8 US gal', 'm3', 0.001, 7, '1.75 US gal'],
    ['reservoir/fillVolume', '36 L', 'm3', 0.001, 31, '31 L'],
    ['pump/maxHead', '8.2 ft', 'm', 0.1, 33, '8.25 ft'],
    ['column/length', '5.5 ft', 'm', 0.001, 17, '1 1/16 in'],
    ['distributor/turn', '0 deg', 'rad', (2 * Math.PI) / 84, 3, '7.5 deg'],
    ['column/length', '1.85 m', 'm', 0.001, 1850, '1.85 m'],
  ] as const)('of %s, typed as %s, is told as it can be set', (path, text, unit, step, n, expected) => {
    const scale = scaleOf(typed(path, text), path, unit, step)
    expect(scale.text(n)).toBe(expected)
    const back = readQuantity(scale.text(n), unit)
    expect(back.ok && Math.abs(back.value - n * scale.step)).toBeLessThan(1e-9)
  })
})
