import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import Module, { type Manifold } from 'manifold-3d'
import { layoutFacts } from '../src/disciplines/layout/index.ts'
import { plugVolume } from '../src/disciplines/templates/equations.ts'
import { jointFacts, jointRoom, orNull, templatesFacts } from '../src/disciplines/templates/index.ts'
import { parsePlan } from '../src/plan/document.ts'
import { withValue } from '../src/plan/patch.ts'
import type { PlanDocument } from '../src/plan/plan.ts'

/** A column of 40 sites, alternate rings turned: the balcony's pipes with eight rings of five. */
function column() {
  const path = join(import.meta.dirname, '..', 'examples', 'balcony.plan.json')
  const balcony = JSON.parse(readFileSync(path, 'utf8')) as PlanDocument
  const five = withValue(withValue(balcony, 'column/sites/perRing', 5), 'column/sites/turn', '36 deg')
  const wide = { outside: '160 mm', wall: '4 mm', plastic: 'PVC-U' }
  return parsePlan(withValue(withValue(five, 'column/pipe', wide), 'column/stub/gap', '0 mm')).plan
}

const plan = column()
const median = (xs: readonly number[]) => [...xs].sort((a, b) => a - b)[Math.floor(xs.length / 2)]!
const SEGMENTS = 64

function ours() {
  const room = jointRoom(plan)
  const joint = jointFacts(plan, room)
  const layout = layoutFacts(plan, orNull(joint))
  return { joint: orNull(joint)!, layout: orNull(layout)!, templates: templatesFacts(plan, joint, orNull(layout)) }
}

export const bench = {
  name: 'All templates of a 40-site column against the boolean solid of its pipe and holes (64 segments)',
  async run() {
    const wasm = await Module()
    wasm.setup()
    const { Manifold } = wasm
    const { joint, layout } = ours()
    const { columnRadius_m: R, columnWall_m: T, stubRadius_m: r, angle_rad } = joint.stub
    const mm = 1000
    const solid = (): number => {
      const length = layout.columnLength_m * mm
      const outside = Manifold.cylinder(length, R * mm, R * mm, SEGMENTS)
      const bore = Manifold.cylinder(length, (R - T) * mm, (R - T) * mm, SEGMENTS)
      const pipe = outside.subtract(bore)
      const drills: Manifold[] = layout.sites.map((s) =>
        Manifold.cylinder(3 * R * mm, r * mm, r * mm, SEGMENTS)
          .rotate([0, (angle_rad * 180) / Math.PI, 0])
          .translate([0, 0, (s.mark_m - joint.markRise_m) * mm])
          .rotate([0, 0, (s.turn_rad * 180) / Math.PI]),
      )
      const drilled = pipe.subtract(Manifold.union(drills))
      const removed = pipe.volume() - drilled.volume()
      for (const m of [outside, bore, pipe, ...drills, drilled]) m.delete()
      return removed
    }
    const removed = solid()
    const expected = layout.sites.length * plugVolume({ ...joint.hole, holeRadius_m: r }) * mm ** 3
    const off = Math.abs(removed / expected - 1)
    const times = { solid: [] as number[], ours: [] as number[] }
    for (let i = 0; i < 40; i++) ours()
    for (let i = 0; i < 20; i++) {
      const a = performance.now()
      solid()
      const b = performance.now()
      ours()
      times.solid.push(b - a)
      times.ours.push(performance.now() - b)
    }
    const [slow, fast] = [median(times.solid), median(times.ours)]
    return [
      {
        label: `${layout.sites.length} sites`,
        agreed: off < 0.01,
        detail: `wall removed agrees within ${(off * 100).toFixed(2)} %; ${fast.toFixed(2)} ms against ${slow.toFixed(0)} ms`,
        ratio: fast / slow,
        limit: 0.01,
      },
    ]
  },
}
