import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { evaluate } from '../src/evaluate.ts'
import { parsePlan } from '../src/plan/document.ts'
import { isKnown } from '../src/plan/known.ts'
import { withValue } from '../src/plan/patch.ts'
import type { PlanDocument } from '../src/plan/plan.ts'

const example = (name: string): PlanDocument =>
  JSON.parse(readFileSync(join(import.meta.dirname, '..', `examples/${name}.plan.json`), 'utf8')) as PlanDocument

type Changes = Readonly<Record<string, unknown>>

function looked(name: string, changes: Changes = {}) {
  const document = Object.entries(changes).reduce((d, [path, value]) => withValue(d, path, value), example(name))
  const { facts, findings } = evaluate(parsePlan(document).plan, { day: false })
  const wetting = isKnown(facts.hydraulics.wetting) ? facts.hydraulics.wetting.known : null
  return { wetting, finding: (id: string) => findings.find((f) => f.id === `hydraulics/${id}`)! }
}

const verdicts = (name: string, changes: Changes = {}) => {
  const { finding } = looked(name, changes)
  return [finding('dry-sites').verdict, finding('drop-sites').verdict]
}

describe('sites of a tower that runs', () => {
  it('of the balcony are struck by drops, all of them: not dry, and not wet by film', () => {
    const { wetting } = looked('balcony')
    expect(wetting).toMatchObject({ byDrops: 24, dry: { low: 0, high: 0 } })
    expect(verdicts('balcony')).toEqual(['pass', 'watch'])
  })

  it('of school and hall get film', () => {
    for (const name of ['school', 'hall']) expect(verdicts(name)).toEqual(['pass', 'pass'])
  })

  it('of the balcony with a circle at the wall get film too', () => {
    expect(verdicts('balcony', { 'distributor/diameter': '110 mm', 'distributor/circle': '99 mm' })[1]).toBe('pass')
  })

  it('are told how far roots must hang to the rain once the cup is known', () => {
    expect(looked('balcony').wetting!.rootGap_m).toBeNull()
    const cup = { 'column/cup/rim': '54 mm', 'column/cup/foot': '33 mm', 'column/cup/depth': '48 mm' }
    const { wetting, finding } = looked('balcony', cup)
    expect(wetting!.rootGap_m!).toBeGreaterThan(0)
    expect(wetting!.rootWeeks!.high).toBeGreaterThan(wetting!.rootWeeks!.low)
    expect(finding('drop-sites').slots['until']).toMatchObject({ phrase: 'roots-to-rain' })
  })
})

describe('sites without a stub', () => {
  const bareStub = (name: string, changes: Changes) => {
    const { column, ...rest } = example(name) as { column: Record<string, unknown> }
    const { stub: _, ...pipe } = column
    const document = Object.entries(changes).reduce<PlanDocument>((d, [path, value]) => withValue(d, path, value), {
      ...rest,
      column: pipe,
    })
    const { facts, findings } = evaluate(parsePlan(document).plan, { day: false })
    return { wetting: facts.hydraulics.wetting, finding: findings.find((f) => f.id === 'hydraulics/dry-sites')! }
  }
  const pocket = {
    'column/sites/method': 'pocket',
    'column/pocket/former': '50 mm',
    'column/pocket/strain': '15 %',
    'column/pocket/slit': '70 mm',
  }

  it('are judged by the slit of a pocket, and a longer one meets no fewer streams', () => {
    const { finding, wetting } = bareStub('hall', pocket)
    expect(finding.verdict).not.toBe('unknown')
    expect(isKnown(wetting) && wetting.known.case.sites[0]!.halfAngle_rad).toBeCloseTo(0.07 / 0.1143, 6)
    const wet = (slit: string) => {
      const { wetting } = bareStub('hall', { ...pocket, 'column/pocket/slit': slit })
      if (!isKnown(wetting)) throw new Error('not known')
      return wetting.known.worst.filter((s) => s.water === 'wet').length
    }
    expect(wet('90 mm')).toBeGreaterThanOrEqual(wet('50 mm'))
  })

  it('ask for what a pocket, a hole or a branch is measured by, not for a stub', () => {
    const needs = (changes: Changes) => bareStub('balcony', changes).finding.needs
    expect(needs({ 'column/sites/method': 'pocket' })).toEqual(['column/pocket/former', 'column/pocket/strain'])
    expect(needs({ 'column/sites/method': 'hole', 'column/cup/body': '45 mm' })).toEqual([])
    expect(needs({ 'column/sites/method': 'fitting' })).toEqual(['column/stub/pipe'])
  })
})
