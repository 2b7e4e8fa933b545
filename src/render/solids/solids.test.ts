import { describe, expect, it } from 'vitest'
import { plugVolume, stubVolume } from '../../disciplines/templates/equations.ts'
import { columnMesh } from './column.ts'
import { boxOf, volumeOf, areaOf } from './measure.ts'
import type { Mesh } from './mesh.ts'
import { stubMesh, standingStub } from './stub.ts'

/** Edges that are not walked exactly once each way: a closed surface that is everywhere turned outward has none. */
export function openEdges(m: Mesh): number {
  const seen = new Map<string, number>()
  for (let f = 0; f < m.indices.length; f += 3)
    for (let k = 0; k < 3; k++) {
      const [a, b] = [m.indices[f + k]!, m.indices[f + ((k + 1) % 3)]!]
      const key = `${a} ${b}`
      seen.set(key, (seen.get(key) ?? 0) + 1)
    }
  let open = 0
  for (const [key, count] of seen) {
    const [a, b] = key.split(' ')
    if (count !== 1 || seen.get(`${b} ${a}`) !== 1) open += 1
  }
  return open
}
const stub = { columnRadius_m: 0.055, columnWall_m: 0.0032, stubRadius_m: 0.025, stubWall_m: 0.0018, angle_rad: Math.PI / 4, offset_m: 0.006 }
describe('try', () => {
  it.each(['saddle', 'flush', 'mitre'] as const)('stub %s', (kind) => {
    const end = kind === 'mitre' ? { kind, depth_m: 0.04 } : { kind }
    const g = { stub, end, axisLength_m: 0.19, mouthTilt_rad: 0.2, error_m: 5e-5 }
    const m = stubMesh(g)
    console.log(kind, m.indices.length / 3, openEdges(m), volumeOf(m) / stubVolume(g), areaOf(m), boxOf(standingStub(m, g)))
  })
  it.each(['axis', 'square'] as const)('column %s', (cut) => {
    const hole = { columnRadius_m: 0.055, columnWall_m: 0.0032, holeRadius_m: 0.0253, angle_rad: Math.PI / 4, offset_m: 0.006 }
    const sites = Array.from({ length: 24 }, (_, i) => ({ turn_rad: (i % 3) * 2 * Math.PI / 3 + (Math.floor(i / 3) % 2) * Math.PI / 3, height_m: 0.2 + 0.18 * Math.floor(i / 3) }))
    const t0 = performance.now()
    const m = columnMesh({ outside_m: 0.11, bore_m: 0.1036, length_m: 1.85, cut, hole, sites, error_m: 5e-5 })!
    const V = Math.PI * (0.055 ** 2 - 0.0518 ** 2) * 1.85 - 24 * plugVolume(hole)
    console.log(cut, performance.now() - t0, m.indices.length / 3, openEdges(m), volumeOf(m) / V)
  })
})
import { guideOf, guideMesh, guideHalves } from './guide.ts'
import { gaugeMesh } from './gauge.ts'
import { cupMesh, lidMesh, ringMesh, tubeMesh } from './round-parts.ts'
import { squareCutExtent } from '../../disciplines/templates/equations.ts'
describe('more', () => {
  const hole = { columnRadius_m: 0.055, columnWall_m: 0.0032, holeRadius_m: 0.0253, angle_rad: Math.PI / 4, offset_m: 0.006 }
  const say = (name: string, m: Mesh | null) => m === null ? console.log(name, null) : console.log(name, m.indices.length / 3, openEdges(m), volumeOf(m) * 1e6, JSON.stringify(boxOf(m)))
  it('parts', () => {
    const markRise_m = Math.sqrt(0.055 ** 2 - 0.006 ** 2)
    const ga = guideOf({ hole, cut: 'axis', square: null, markRise_m })!
    const gs = guideOf({ hole, cut: 'square', square: squareCutExtent(hole), markRise_m })!
    say('guide axis', guideMesh(ga, 5e-5))
    const h = guideHalves(ga, 5e-5)!
    say('half 1', h[0]); say('half 2', h[1])
    say('guide square', guideMesh(gs, 5e-5))
    say('gauge', gaugeMesh({ stub, width_m: 0.03, tall_m: 0.07, out_m: 0.05, relief_m: 0.012, error_m: 5e-5 }))
    const holes = Array.from({ length: 12 }, (_, i) => ({ turn_rad: i * Math.PI / 6, distance_m: 0.04, radius_m: 0.0015 }))
    say('cup', cupMesh({ outside_m: 0.1, depth_m: 0.06, wall_m: 0.0025, floor_m: 0.0025, holes, error_m: 5e-5 }))
    say('ring', ringMesh({ inside_m: 0.111, wall_m: 0.004, depth_m: 0.03, windows: { count: 8, radius_m: 0.006, height_m: 0.01 }, error_m: 5e-5 }))
    say('lid', lidMesh({ outside_m: 0.33, sheet_m: 0.004, hole_m: 0.111, skirt: { outside_m: 0.28, wall_m: 0.003, depth_m: 0.015 }, holes: [{ turn_rad: 1, distance_m: 0.1, radius_m: 0.03 }], error_m: 5e-5 }))
    say('tube', tubeMesh({ outside_m: 0.11, bore_m: 0.1, length_m: 1, error_m: 5e-5 }))
  })
})
