import { curveTurn, type Stub, type StubEnd, stubCrossing } from '../../disciplines/templates/joint.ts'
import { endLength } from '../../disciplines/templates/stub-end.ts'
import { samples, stepOf } from './facets.ts'
import { moved } from './measure.ts'
import { type Draft, draft, type Edge, type Mesh, mesh, type Place, sew, vertex } from './mesh.ts'

const TURN = 2 * Math.PI

/** Shortest side that a stub may have. */
const LEAST_m = 1e-4

/** A place told along a stub's axis, out from it and round it from its crown. */
export function alongStub(at: {
  readonly angle_rad: number
  readonly offset_m: number
  readonly s_m: number
  readonly out_m: number
  readonly around_rad: number
}): Place {
  const { angle_rad: th, offset_m, s_m: s, out_m: q, around_rad: psi } = at
  const crown = q * Math.cos(psi)
  return [
    s * Math.sin(th) - crown * Math.cos(th),
    offset_m + q * Math.sin(psi),
    s * Math.cos(th) + crown * Math.sin(th),
  ]
}

export interface StubSolid {
  readonly stub: Stub
  readonly end: StubEnd
  readonly axisLength_m: number
  readonly mouthTilt_rad: number
  readonly error_m: number
}

/** Steps through the wall such that a saddle's surface, straight from step to step, stays within the error. */
function wallSteps({ stub, end, error_m }: StubSolid, angles: readonly number[]): number {
  if (end.kind === 'mitre') return 1
  const at = end.kind === 'saddle' ? 'outside' : 'bore'
  const [outer, inner] = [stubCrossing(stub, at, 'outside'), stubCrossing(stub, at, 'bore')]
  const widest = Math.max(...angles.map((a) => Math.abs(curveTurn(outer, a) - curveTurn(inner, a))))
  return Math.max(1, Math.ceil(widest / stepOf(outer.pipeRadius_m, error_m / 2)))
}

function anglesRound(g: StubSolid): readonly number[] {
  const { stub, end, error_m } = g
  const { angle_rad, offset_m, stubRadius_m: r, stubWall_m: t } = stub
  const round = (out_m: number) => (psi: number) => {
    const s_m = endLength({ ...stub, stubRadius_m: out_m }, end, psi)
    return alongStub({ angle_rad, offset_m, s_m, out_m, around_rad: psi })
  }
  // The circle itself counts too: seen along the axis, a chord is as far off as on a square cut.
  const circle = (psi: number): Place => [r * Math.cos(psi), r * Math.sin(psi), 0]
  const found = samples({ curves: [round(r), round(r - t), circle], from: 0, to: TURN, error_m, pieces: 16 })
  return found.slice(0, -1)
}

function ring(d: Draft, angles: readonly number[], place: (psi: number) => Place): Edge {
  return { ids: angles.map((psi) => vertex(d, place(psi))), along: angles }
}

/**
 * A stub as it sits in the column: crossing of the axes at the origin, its axis outward and up in the plane of x and z.
 * Null where the mouth would cut into the inner end.
 */
export function stubMesh(g: StubSolid): Mesh | null {
  const { stub, end, axisLength_m, mouthTilt_rad } = g
  const { angle_rad, offset_m, stubRadius_m: r, stubWall_m: t } = stub
  const d = draft()
  const angles = anglesRound(g)
  const steps = wallSteps(g, angles)
  const round = (out_m: number, s_m: (psi: number) => number) =>
    ring(d, angles, (psi) => alongStub({ angle_rad, offset_m, s_m: s_m(psi), out_m, around_rad: psi }))
  const mouth = (out_m: number) => (psi: number) => axisLength_m - out_m * Math.cos(psi) * Math.tan(mouthTilt_rad)
  const long = angles.every((psi) =>
    [r, r - t].every((q) => mouth(q)(psi) - endLength({ ...stub, stubRadius_m: q }, end, psi) > LEAST_m),
  )
  if (!long) return null
  const ends = Array.from({ length: steps + 1 }, (_, k) => {
    const out_m = r - (t * k) / steps
    return round(out_m, (psi) => endLength({ ...stub, stubRadius_m: out_m }, end, psi))
  })
  const [outerMouth, innerMouth] = [round(r, mouth(r)), round(r - t, mouth(r - t))]
  // Seen from outside with the mouth up, the angle from the crown runs to the left.
  const loop = { period: TURN, flip: true }
  sew(d, ends[0]!, outerMouth, loop)
  sew(d, outerMouth, innerMouth, loop)
  sew(d, innerMouth, ends[steps]!, loop)
  for (let k = steps; k > 0; k--) sew(d, ends[k]!, ends[k - 1]!, loop)
  return mesh(d)
}

/** The stub standing on its mouth, its axis upright: as it is printed, and as it stands on the bench. */
export function standingStub(m: Mesh, g: StubSolid): Mesh {
  const lean = Math.PI - g.stub.angle_rad + g.mouthTilt_rad
  const [c, s] = [Math.cos(lean), Math.sin(lean)]
  return moved(m, ([x, y, z]) => [c * x + s * z, y, -s * x + c * z])
}
