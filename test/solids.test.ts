import Module from 'manifold-3d'
import { beforeAll, describe, expect, it } from 'vitest'
import { mitreDepth, plugVolume, stubVolume } from '../src/disciplines/templates/equations.ts'
import type { Stub } from '../src/disciplines/templates/joint.ts'

/**
 * Joint volumes against boolean solids of a geometry kernel that shares nothing with our formulas.
 * Circles are polygons of the same area, so the first error of the mesh cancels. What is left falls about eightfold when
 * the facets double (over these joints 3.6e-5 at 128, 4.7e-6 at 256): the tolerance is set by the mesh, not by us, and
 * at 5e-5 is a thousand times finer than a formula that forgot the wall, the slant or the offset. A mitre is flat, so
 * equal areas make it exact up to the rounding of the kernel.
 */
const FACETS = 128
const WITHIN = 5e-5
const FLAT_WITHIN = 1e-6
const JOINTS = 200
/** The kernel is at its best with numbers about 1: solids are in units of 0.1 m. */
const UNIT_m = 0.1

type Kernel = Awaited<ReturnType<typeof Module>>
type Solid = InstanceType<Kernel['Manifold']>
let kernel: Kernel

beforeAll(async () => {
  kernel = await Module()
  kernel.setup()
})

function* stream(seed: number): Generator<number, never> {
  let state = seed
  while (true) {
    state = (state * 16807) % 2147483647
    yield state / 2147483647
  }
}

/** Runs with a list of solids that are freed at the end. */
function freed<R>(work: (keep: (solid: Solid) => Solid) => R): R {
  const solids: Solid[] = []
  try {
    return work((solid) => {
      solids.push(solid)
      return solid
    })
  } finally {
    for (const solid of solids) solid.delete()
  }
}

/** Upright prism on a polygon that has the area of the circle. */
function tube(radius: number, from: number, to: number): Solid {
  const share = (2 * Math.PI) / FACETS
  const equal = radius * Math.sqrt(share / Math.sin(share))
  const ring = Array.from({ length: FACETS }, (_, i): [number, number] => [
    equal * Math.cos(i * share),
    equal * Math.sin(i * share),
  ])
  const flat = new kernel.CrossSection([ring])
  const low = flat.extrude(to - from)
  flat.delete()
  const solid = low.translate([0, 0, from])
  low.delete()
  return solid
}

/** The stub's own frame: s along z, turned to the slant and moved by the offset. */
function placed(solid: Solid, stub: Stub): Solid {
  const turned = solid.rotate([0, (stub.angle_rad * 180) / Math.PI, 0])
  const moved = turned.translate([0, stub.offset_m / UNIT_m, 0])
  turned.delete()
  return moved
}

function joints(): readonly (Stub & { readonly axisLength_m: number })[] {
  const next = stream(7)
  const between = (low: number, high: number) => low + (high - low) * next.next().value
  return Array.from({ length: JOINTS }, (_, i) => {
    const columnRadius_m = between(0.04, 0.11)
    const columnWall_m = between(0.03, 0.11) * columnRadius_m
    const bore = columnRadius_m - columnWall_m
    const stubRadius_m = between(0.25, 0.8) * bore
    const offset_m = i % 2 === 0 ? 0 : between(-0.8, 0.8) * (bore - stubRadius_m)
    const stubWall_m = between(0.06, 0.15) * stubRadius_m
    const angle_rad = (between(32, 90) * Math.PI) / 180
    const axisLength_m = (1.3 * columnRadius_m + stubRadius_m * Math.cos(angle_rad)) / Math.sin(angle_rad) + 0.05
    return { columnRadius_m, columnWall_m, stubRadius_m, stubWall_m, angle_rad, offset_m, axisLength_m }
  })
}

const solidVolume = (solid: Solid) => solid.volume() * UNIT_m ** 3

describe(`${JOINTS} joints against boolean solids`, () => {
  it('plug of the hole, stub with a saddle, and stub with a mitre', () => {
    let [worstPlug, worstSaddle, worstMitre] = [0, 0, 0]
    for (const stub of joints()) {
      const { columnRadius_m, columnWall_m, stubRadius_m, stubWall_m, offset_m, axisLength_m } = stub
      const u = (length_m: number) => length_m / UNIT_m
      const depth_m = mitreDepth({ pipeRadius_m: columnRadius_m - columnWall_m, stubRadius_m, offset_m })
      const found = freed((keep) => {
        const far = u(4 * columnRadius_m + 2 * axisLength_m)
        const body = keep(tube(u(columnRadius_m), -far, far))
        const bore = keep(tube(u(columnRadius_m - columnWall_m), -far, far))
        const from = u(-stubRadius_m * 2)
        const rod = keep(placed(keep(tube(u(stubRadius_m), from, u(axisLength_m))), stub))
        const hollow = keep(placed(keep(tube(u(stubRadius_m - stubWall_m), from, u(axisLength_m))), stub))
        const pipe = keep(rod.subtract(hollow))
        // Only the branch beyond the axis: the other side of the column is cut off by the stub's square start.
        const outside = keep(keep(pipe.subtract(body)).trimByPlane([1, 0, 0], 0))
        const wall = keep(body.subtract(bore))
        const plug = keep(keep(wall.intersect(rod)).trimByPlane([1, 0, 0], 0))
        const mitre = keep(pipe.trimByPlane([1, 0, 0], u(depth_m)))
        return {
          plug: solidVolume(plug),
          saddle: solidVolume(outside),
          mitre: solidVolume(mitre),
        }
      })
      const off = (ours: number, theirs: number) => Math.abs(ours / theirs - 1)
      const plug = off(plugVolume({ ...stub, holeRadius_m: stubRadius_m }), found.plug)
      const saddle = off(stubVolume({ stub, end: { kind: 'saddle' }, axisLength_m }), found.saddle)
      const mitre = off(stubVolume({ stub, end: { kind: 'mitre', depth_m }, axisLength_m }), found.mitre)
      worstPlug = Math.max(worstPlug, plug)
      worstSaddle = Math.max(worstSaddle, saddle)
      worstMitre = Math.max(worstMitre, mitre)
    }
    expect(worstPlug).toBeLessThan(WITHIN)
    expect(worstSaddle).toBeLessThan(WITHIN)
    expect(worstMitre).toBeLessThan(FLAT_WITHIN)
  })
})
