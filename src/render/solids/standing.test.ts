import { describe, expect, it } from 'vitest'
import balcony from '../../../examples/balcony.plan.json'
import hall from '../../../examples/hall.plan.json'
import school from '../../../examples/school.plan.json'
import { evaluate } from '../../evaluate.ts'
import { parsePlan } from '../../plan/document.ts'
import { boxOf, volumeOf } from './measure.ts'
import type { Mesh } from './mesh.ts'
import { standing } from './standing.ts'

const stood = (document: unknown) => {
  const { plan } = parsePlan(document)
  return standing({ plan, facts: evaluate(plan, { day: false }).facts })
}

/** Sides of triangles that are not met by a neighbour the other way round: none on a closed surface. */
function openSides({ indices }: Mesh): number {
  const sides = new Set<string>()
  for (let f = 0; f < indices.length; f += 3)
    for (const [i, j] of [
      [0, 1],
      [1, 2],
      [2, 0],
    ] as const)
      sides.add(`${indices[f + i]} ${indices[f + j]}`)
  return [...sides].filter((s) => !sides.has(s.split(' ').reverse().join(' '))).length
}

describe('what stands with the column', () => {
  it.each(Object.entries({ balcony, hall, school }))('is closed and right side out: %s', (_, document) => {
    const all = stood(document)
    expect(all.map((s) => s.name)).toEqual(
      expect.arrayContaining(['reservoir', 'lid', 'water', 'pump', 'riser', 'cup']),
    )
    for (const { name, mesh } of all) {
      expect(openSides(mesh), name).toBe(0)
      expect(volumeOf(mesh), name).toBeGreaterThan(0)
    }
  })

  it('has the sizes of the plan: water at its fill line, hose to its outlet, a cup for each site', () => {
    const all = new Map(stood(balcony).map((s) => [s.name, s]))
    // 36 L in a box of 500 × 330 mm with column and pump in it stand at 219.6 mm; the outlet is at 1850 mm.
    const high = (name: 'water' | 'riser' | 'reservoir') => boxOf(all.get(name)!.mesh).high
    expect(high('water')[2]).toBeCloseTo(0.2196, 3)
    expect(high('riser')[2]).toBeCloseTo(1.85, 2)
    expect(high('reservoir')[2]).toBeCloseTo(0.27, 3)
    expect(all.get('cup')!.places).toHaveLength(24)
    expect(all.get('base')).toBeDefined()
    expect(all.get('strap')).toBeUndefined()
  })

  it('ties the column where the plan has a strap, at its height', () => {
    const tied = structuredClone(balcony) as { column: { base: Record<string, unknown> } }
    Object.assign(tied.column.base, { anchored: true, strapHeight: '1.4 m' })
    const strap = stood(tied).find((s) => s.name === 'strap')!
    const { low, high } = boxOf(strap.mesh)
    expect((low[2] + high[2]) / 2).toBeCloseTo(1.4, 6)
    expect(volumeOf(strap.mesh)).toBeGreaterThan(0)
  })

  it('is nothing where the plan says nothing', () => {
    expect(stood({ rootfall: 1 })).toEqual([])
  })
})
