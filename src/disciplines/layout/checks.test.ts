import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { parsePlan } from '../../plan/document.ts'
import type { Known } from '../../plan/known.ts'
import { withValue } from '../../plan/patch.ts'
import type { PlanDocument } from '../../plan/plan.ts'
import type { TemplatesFacts } from '../templates/index.ts'
import { layoutFindings } from './checks.ts'
import { layoutFacts } from './index.ts'

const folder = join(import.meta.dirname, '../../../examples')
const balcony = JSON.parse(readFileSync(join(folder, 'balcony.plan.json'), 'utf8')) as PlanDocument

type Values = Readonly<Record<string, unknown>>

/** The joint of the balcony as the layout needs it, by hand: 110 × 3.2 and 50 mm at 45°, 90 mm along the lower side. */
const angle_rad = Math.PI / 4
const axisLength_m = 0.09 + 0.055 / Math.sin(angle_rad) - 0.025
const templates = {
  known: {
    edges: { top_m: 0.0353, bottom_m: -0.0385 },
    stub: { mouthRise_m: axisLength_m * Math.cos(angle_rad) },
    joint: { axisLength_m, markRise_m: 0.055, stub: { stubRadius_m: 0.025, angle_rad } },
  },
} as unknown as Known<TemplatesFacts>
const joint = 'known' in templates ? templates.known.joint : null

function verdict(id: string, values: Values) {
  const document = Object.entries(values).reduce((d, [path, value]) => withValue(d, path, value), balcony)
  const { plan } = parsePlan(document)
  const outside = { ...joint, column: plan.column!.pipe } as typeof joint
  return layoutFindings(plan, layoutFacts(plan, outside), templates).find((f) => f.id === id)?.verdict ?? 'absent'
}

// 1850 - 1750 - 35.3 is left over the highest hole; the lowest opens 220 - 38.5 over the lid.
const mouth = 2 * (axisLength_m * Math.sin(angle_rad) * 1000) * Math.sin(Math.PI / 3)
const cup = (depth: number) => ({ 'column/cup/depth': `${depth} mm` })
const lines = 360 * Math.SQRT1_2 - 50
const highest = 1750 - 55 + axisLength_m * Math.cos(angle_rad) * 1000

const cases: readonly (readonly [id: string, what: string, values: Values, expected: string])[] = [
  ['layout/top-margin', 'less than stated', { 'column/topMargin': '64.71 mm' }, 'fail'],
  ['layout/top-margin', 'as stated', { 'column/topMargin': '64.7 mm' }, 'pass'],
  [
    'layout/top-margin',
    'as stated, under the rule of the trade',
    { 'column/topMargin': '40 mm', 'column/length': '1.84 m' },
    'watch',
  ],
  ['layout/top-margin', 'nothing stated, over 60 mm', { 'column/topMargin': undefined }, 'watch'],
  [
    'layout/top-margin',
    'nothing stated, under 60 mm',
    { 'column/topMargin': undefined, 'column/length': '1845.2 mm' },
    'fail',
  ],
  [
    'layout/top-margin',
    'nothing stated, 60 mm',
    { 'column/topMargin': undefined, 'column/length': '1845.3 mm' },
    'watch',
  ],
  [
    'layout/top-margin',
    'nothing stated, 100 mm',
    { 'column/topMargin': undefined, 'column/length': '1885.3 mm' },
    'pass',
  ],
  ['layout/first-hole', 'one radius over the lid', { 'column/sites/first': '63.5 mm' }, 'pass'],
  ['layout/first-hole', 'less', { 'column/sites/first': '63.4 mm' }, 'fail'],
  [
    'layout/first-hole',
    'base not stated',
    { 'column/base/kind': undefined, 'column/sites/firstFrom': 'foot', reservoir: {} },
    'unknown',
  ],
  ['layout/canopy', 'as wide as the plant', { 'column/sites/canopy': `${mouth} mm` }, 'pass'],
  ['layout/canopy', 'narrower', { 'column/sites/canopy': `${mouth + 0.01} mm` }, 'watch'],
  ['layout/canopy', 'stubs that meet', { 'column/sites/perRing': 14, 'column/sites/turn': '0 deg' }, 'fail'],
  ['layout/canopy', 'plant not stated', { 'column/sites/canopy': undefined }, 'unknown'],
  ['layout/headroom', 'as deep as the cup', cup(lines), 'pass'],
  ['layout/headroom', 'deeper', cup(lines + 0.01), 'watch'],
  ['layout/headroom', 'overlap', { ...cup(48), 'column/sites/pitch': '35 mm' }, 'fail'],
  ['layout/ceiling', 'room for the distributor', { 'place/ceiling': '1.91 m' }, 'pass'],
  ['layout/ceiling', 'less', { 'place/ceiling': '1909 mm' }, 'watch'],
  ['layout/ceiling', 'as high as the column', { 'place/ceiling': '1.85 m' }, 'watch'],
  ['layout/ceiling', 'lower', { 'place/ceiling': '1849 mm' }, 'fail'],
  ['layout/ceiling', 'none', { 'place/ceiling': undefined }, 'absent'],
  ['layout/reach', 'not stated', {}, 'absent'],
  ['layout/reach', 'just', { 'place/reach': `${highest} mm` }, 'pass'],
  ['layout/reach', 'too high', { 'place/reach': `${highest - 0.01} mm` }, 'watch'],
  ['layout/standing-room', '0.6 m', { 'place/walkRound': '0.6 m' }, 'pass'],
  ['layout/standing-room', 'less', { 'place/walkRound': '599 mm' }, 'watch'],
  ['layout/marks', 'on a millimetre', {}, 'pass'],
  ['layout/marks', 'no tape', { 'tools/tape': undefined }, 'unknown'],
  ['layout/stagger', 'half of half a step', { 'column/sites/turn': '30 deg' }, 'pass'],
  ['layout/stagger', 'less', { 'column/sites/turn': '29.9 deg' }, 'watch'],
  ['layout/stagger', 'past the next line', { 'column/sites/turn': '180 deg' }, 'pass'],
  ['layout/stagger', 'in line', { 'column/sites/turn': '120 deg' }, 'watch'],
  ['layout/site-height', '2 mm high', { 'measured/sites': [{ site: 1, height: '492 mm' }] }, 'pass'],
  ['layout/site-height', 'more', { 'measured/sites': [{ site: 1, height: '492.1 mm' }] }, 'watch'],
  ['layout/site-height', '2 mm low', { 'measured/sites': [{ site: 1, height: '488 mm' }] }, 'pass'],
  ['layout/site-height', 'less', { 'measured/sites': [{ site: 1, height: '487.9 mm' }] }, 'watch'],
]

describe('checks of the layout', () => {
  it.each(cases)('%s: %s', (id, _what, values, expected) => expect(verdict(id, values)).toBe(expected))
})
