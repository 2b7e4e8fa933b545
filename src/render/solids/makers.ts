import type { JointFacts, TemplatesFacts } from '../../disciplines/templates/index.ts'
import type { Facts } from '../../evaluate.ts'
import { quantity } from '../../kernel/units.ts'
import { isKnown, type Known, needed } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { filletUse } from '../../tables/consumables.ts'
import { practiceLengths } from '../../tables/practice.ts'
import { printedOverhang, printedSizes } from '../../tables/printing.ts'
import type { SolidKey } from '../words/en/solids.ts'
import { gaugeMesh, lying } from './gauge.ts'
import { guideMesh, guideOf } from './guide.ts'
import { boxOf, moved, onBed } from './measure.ts'
import type { Mesh } from './mesh.ts'
import type { Made, Remark, SolidId, SolidPart } from './part.ts'
import { piecesFor } from './pieces.ts'
import { cupMesh, lidMesh, ringMesh } from './round-parts.ts'
import { sceneOf } from './scene.ts'
import { standingStub, stubMesh } from './stub.ts'

/** What solids are made from. */
export interface SolidInput {
  readonly plan: Plan
  readonly facts: Pick<Facts, 'room' | 'layout' | 'templates'>
  /** Greatest distance of a facet from the surface it stands for. */
  readonly error_m: number
}

const sizes = printedSizes.rows
const ONE_SIDE = 2

/** A part for a printer, put on the bed. */
export function printed(
  given: SolidInput,
  part: {
    readonly id: SolidId
    readonly name?: SolidKey
    readonly mesh: Mesh
    readonly wetted: boolean
    readonly remarks?: readonly Remark[]
  },
): SolidPart {
  const { id, mesh, wetted, remarks = [] } = part
  const name = part.name ?? id
  const { low, high } = boxOf(mesh)
  const size_m = [high[0] - low[0], high[1] - low[1], high[2] - low[2]] as const
  const bed_m = given.plan.tools?.bed_m
  const fits = bed_m === undefined ? null : size_m[0] <= bed_m && size_m[1] <= bed_m && size_m[2] <= bed_m
  return { id, name, scene: sceneOf(name, onBed(mesh)), size_m, printed: true, fits, wetted, remarks }
}

const stubbed = (plan: Plan): boolean => (plan.column?.sites?.method ?? 'stub') === 'stub'

/** Templates of a plan whose sites are stubs. */
function stubTemplates({ plan, facts }: SolidInput): Known<TemplatesFacts> | { readonly because: SolidKey } {
  return stubbed(plan) ? facts.templates : { because: 'why-no-stub' }
}

const solidOf = (j: JointFacts, error_m: number) => ({
  stub: j.stub,
  end: j.end,
  axisLength_m: j.axisLength_m,
  mouthTilt_rad: j.mouthTilt_rad,
  error_m,
})

/** The stub as it sits in the column; null where mouth and inner end meet. */
export const jointStub = (j: JointFacts, error_m: number): Mesh | null => stubMesh(solidOf(j, error_m))

export function stubPart(given: SolidInput): Made {
  const t = stubTemplates(given)
  if (!('known' in t)) return t
  const mesh = jointStub(t.known.joint, given.error_m)
  if (mesh === null) return { because: 'why-stub-short' }
  const standing = standingStub(mesh, solidOf(t.known.joint, given.error_m))
  return { parts: [printed(given, { id: 'stub', mesh: standing, wetted: true })] }
}

export function guideParts(given: SolidInput): Made {
  const t = stubTemplates(given)
  if (!('known' in t)) return t
  const { joint, holeSquare } = t.known
  const { hole, cut, markRise_m } = joint
  const guide = guideOf({ hole, cut, markRise_m, square: cut === 'square' ? holeSquare.extent : null })
  const mesh = guide === null ? null : guideMesh(guide, given.error_m)
  if (guide === null || mesh === null) return { because: 'why-guide-wide' }
  const leaning = guide.collar !== null && hole.angle_rad > printedOverhang.rows['without-support'].lean_rad + 1e-9
  const remarks: readonly Remark[] = [
    { key: 'guide-use', slots: { below: quantity(guide.belowMark_m, 'm') } },
    ...(guide.collar === null ? [{ key: 'guide-square' as const }] : []),
    ...(leaning ? [{ key: 'support' as const, slots: { angle: quantity(hole.angle_rad, 'rad') } }] : []),
  ]
  const whole = printed(given, { id: 'guide', mesh, wetted: false, remarks })
  const bed_m = given.plan.tools?.bed_m
  const pieces = whole.fits === false && bed_m !== undefined ? piecesFor(mesh, bed_m) : null
  if (pieces === null) return { parts: [whole] }
  const pin = { count: quantity(pieces.length, 'count'), hole: quantity(sizes['pin-hole'].length_m, 'm') }
  return {
    parts: pieces.map((piece, i) =>
      printed(given, {
        id: 'guide',
        name: `guide-${i + 1}` as SolidKey,
        mesh: piece,
        wetted: false,
        remarks: i === 0 ? [{ key: 'split', slots: pin }, ...remarks] : [],
      }),
    ),
  }
}

export function gaugePart(given: SolidInput): Made {
  const t = stubTemplates(given)
  if (!('known' in t)) return t
  const { stub, axisLength_m, mouthTilt_rad } = t.known.joint
  const { columnRadius_m: R, stubRadius_m: r, angle_rad: th } = stub
  const relief_m = ONE_SIDE * filletUse.rows.bead.leg_m
  const free_m = axisLength_m - r * Math.abs(Math.tan(mouthTilt_rad)) - (R + r * Math.cos(th)) / Math.sin(th)
  const long_m = sizes['gauge-long'].length_m
  const along_m = Math.min(long_m, free_m)
  if (along_m < ONE_SIDE * relief_m) return { because: 'why-gauge-short' }
  const mesh = gaugeMesh({
    stub,
    width_m: Math.min(sizes['gauge-width'].length_m, r, R - Math.abs(stub.offset_m)),
    tall_m: along_m * Math.cos(th) + long_m / 2,
    out_m: along_m * Math.sin(th),
    relief_m,
    error_m: given.error_m,
  })
  return {
    parts: [printed(given, { id: 'gauge', mesh: moved(mesh, lying), wetted: false, remarks: [{ key: 'gauge-use' }] })],
  }
}

/** The cup as it hangs, floor down; null where its holes meet something. */
export function cupOf({ plan, error_m }: SolidInput): Known<Mesh | null> | { readonly because: SolidKey } {
  const d = plan.distributor
  if (d?.kind === 'tee' || d?.kind === 'ring') return { because: 'why-no-cup' }
  const given = needed({
    kind: ['distributor/kind', d?.kind],
    holes: ['distributor/holes', d?.holes],
    hole_m: ['distributor/hole', d?.hole_m],
    circle_m: ['distributor/circle', d?.circle_m],
    diameter_m: ['distributor/diameter', d?.diameter_m],
    depth_m: ['distributor/depth', d?.depth_m],
    thickness_m: ['distributor/thickness', d?.thickness_m],
  })
  if (!isKnown(given)) return given
  const { holes: count, hole_m, circle_m, diameter_m, depth_m, thickness_m } = given.known
  if (hole_m >= circle_m || ONE_SIDE * thickness_m >= diameter_m || thickness_m >= depth_m)
    return { because: 'why-cup-holes' }
  const holes = Array.from({ length: count }, (_, i) => ({
    turn_rad: (d?.turn_rad ?? 0) + (2 * Math.PI * i) / count,
    distance_m: circle_m / 2,
    radius_m: hole_m / 2,
  }))
  const wall_m = thickness_m
  return { known: cupMesh({ outside_m: diameter_m, depth_m, wall_m, floor_m: thickness_m, holes, error_m }) }
}

export function cupPart(given: SolidInput): Made {
  const cup = cupOf(given)
  if (!('known' in cup)) return cup
  if (cup.known === null) return { because: 'why-cup-holes' }
  return {
    parts: [
      printed(given, { id: 'distributor', mesh: cup.known, wetted: true, remarks: [{ key: 'distributor-middle' }] }),
    ],
  }
}

export function ringPart(given: SolidInput): Made {
  const { plan, facts, error_m } = given
  const base = plan.column?.base
  if (base?.kind !== undefined && base.kind !== 'through the lid') return { because: 'why-no-ring' }
  const pipe = isKnown(facts.room) ? facts.room.known.column : plan.column?.pipe
  const need = needed({
    kind: ['column/base/kind', base?.kind],
    depth_m: ['column/base/ringDepth', base?.ringDepth_m || undefined],
    pipe: ['column/pipe', pipe],
  })
  if (!isKnown(need)) return need
  const { depth_m } = need.known
  const [wall_m, play_m] = [sizes['ring-wall'].length_m, sizes['ring-play'].length_m]
  const inside_m = need.known.pipe.outside_m + ONE_SIDE * play_m
  const shape = { inside_m, wall_m, depth_m, error_m }
  const [count, hole_m] = [plan.drain?.holes, plan.drain?.hole_m]
  const fit =
    count !== undefined &&
    hole_m !== undefined &&
    hole_m + ONE_SIDE * wall_m <= depth_m &&
    count * (hole_m + wall_m) <= Math.PI * inside_m
  const windows = fit ? { count, radius_m: hole_m / 2, height_m: wall_m / 2 + hole_m / 2 } : null
  const mesh = ringMesh({ ...shape, windows }) ?? ringMesh({ ...shape, windows: null })
  if (mesh === null) return { because: 'why-no-ring' }
  const remarks: readonly Remark[] = windows === null ? [{ key: 'ring-closed' }] : []
  return { parts: [printed(given, { id: 'base-ring', mesh, wetted: true, remarks })] }
}

export function lidPart(given: SolidInput): Made {
  const { plan, facts, error_m } = given
  const tank = plan.reservoir?.container
  if (tank !== undefined && tank.shape !== 'round') return { because: 'why-no-lid' }
  const pipe = isKnown(facts.room) ? facts.room.known.column : plan.column?.pipe
  const kind = plan.column?.base?.kind
  const need = needed({
    tank: ['reservoir/container', tank],
    kind: ['column/base/kind', kind],
    pipe: ['column/pipe', pipe],
  })
  if (!isKnown(need)) return need
  const hole_m = kind === 'through the lid' ? need.known.pipe.outside_m + practiceLengths.rows['lid-hole'].low_m : 0
  const wall_m = sizes['lid-skirt-wall'].length_m
  const rim_m = need.known.tank.topLength_m
  const skirt = {
    outside_m: rim_m - ONE_SIDE * sizes['lid-skirt-play'].length_m,
    wall_m,
    depth_m: sizes['lid-skirt'].length_m,
  }
  const within_m = skirt.outside_m / 2 - wall_m
  if (hole_m / 2 + wall_m > within_m) return { because: 'why-lid-tight' }
  const filler_m = practiceLengths.rows['lid-filler'].low_m / 2
  const distance_m = (hole_m / 2 + within_m) / 2
  const room = (within_m - hole_m / 2) / 2 - filler_m >= wall_m
  const mesh = lidMesh({
    outside_m: rim_m + ONE_SIDE * practiceLengths.rows['lid-land'].low_m,
    sheet_m: sizes['lid-sheet'].length_m,
    hole_m,
    skirt,
    holes: room ? [{ turn_rad: 0, distance_m, radius_m: filler_m }] : [],
    error_m,
  })
  if (mesh === null) return { because: 'why-lid-tight' }
  const remarks: readonly Remark[] = [
    ...(room ? [] : [{ key: 'lid-no-filler' as const }]),
    ...(hole_m > 0 ? [] : [{ key: 'lid-whole' as const }]),
  ]
  return { parts: [printed(given, { id: 'lid', mesh, wetted: true, remarks })] }
}
