import { requirePositive } from '../../kernel/require.ts'

/** Where a tube of one radius passes a cylinder about the column axis: the curve that templates are drawn from. */
export interface Crossing {
  /** Radius of the cylinder about the column axis: of its outside, or of its bore. */
  readonly pipeRadius_m: number
  /** Radius of the tube: outside or bore of the stub, or of the hole made for it. */
  readonly tubeRadius_m: number
  /** Between the stub axis, outward and up, and the column axis, up: 90° is level. */
  readonly angle_rad: number
  /** How far the stub axis passes beside the column axis. */
  readonly offset_m: number
}

/** A hole through the wall of a column. */
export interface Hole {
  readonly columnRadius_m: number
  readonly columnWall_m: number
  /** Outside radius of the stub and the clearance for the joint. */
  readonly holeRadius_m: number
  readonly angle_rad: number
  readonly offset_m: number
}

/** A stub in the wall of a column. */
export interface Stub {
  readonly columnRadius_m: number
  readonly columnWall_m: number
  readonly stubRadius_m: number
  readonly stubWall_m: number
  readonly angle_rad: number
  readonly offset_m: number
}

/** How a hole is cut: along the stub axis (hole saw at the angle, file), or square to the wall (jigsaw, router). */
export type Cut = 'axis' | 'square'

/** The inner end of a stub: saddle on the outside, saddle flush with the bore, or plane parallel to the column axis. */
export type StubEnd =
  | { readonly kind: 'saddle' }
  | { readonly kind: 'flush' }
  | {
      readonly kind: 'mitre'
      /** Distance of the plane from the column axis. */
      readonly depth_m: number
    }

/** Rounding allowed where a tube just fits a bore. */
const ROUNDING = 1e-12

/** Refuses a crossing that cannot be: the tube must enter the cylinder whole, and the angle lie in (0, 90°]. */
export function requireCrossing(of: string, { pipeRadius_m, tubeRadius_m, angle_rad, offset_m }: Crossing): void {
  requirePositive(of, { ρ: pipeRadius_m, q: tubeRadius_m, θ: angle_rad })
  if (angle_rad > Math.PI / 2 + ROUNDING) throw new RangeError(`${of}: θ = ${angle_rad} is above a right angle`)
  if (!(Math.abs(offset_m) + tubeRadius_m <= pipeRadius_m * (1 + ROUNDING)))
    throw new RangeError(`${of}: |e| + q = ${Math.abs(offset_m) + tubeRadius_m} exceeds ρ = ${pipeRadius_m}`)
}

/** The hole as it meets the outside, `outside`, or the bore, `bore`. */
export const holeCrossing = (hole: Hole, at: 'outside' | 'bore'): Crossing => ({
  pipeRadius_m: at === 'outside' ? hole.columnRadius_m : hole.columnRadius_m - hole.columnWall_m,
  tubeRadius_m: hole.holeRadius_m,
  angle_rad: hole.angle_rad,
  offset_m: hole.offset_m,
})

/** The stub's outside (`tube: 'outside'`) or bore as it meets the column's outside or bore. */
export const stubCrossing = (stub: Stub, at: 'outside' | 'bore', tube: 'outside' | 'bore'): Crossing => ({
  pipeRadius_m: at === 'outside' ? stub.columnRadius_m : stub.columnRadius_m - stub.columnWall_m,
  tubeRadius_m: tube === 'outside' ? stub.stubRadius_m : stub.stubRadius_m - stub.stubWall_m,
  angle_rad: stub.angle_rad,
  offset_m: stub.offset_m,
})

/** Refuses a hole that cannot be. */
export function requireHole(of: string, hole: Hole): void {
  requirePositive(of, { T: hole.columnWall_m })
  requireCrossing(of, holeCrossing(hole, 'bore'))
}

/** Refuses a stub that cannot be. */
export function requireStub(of: string, stub: Stub): void {
  requirePositive(of, { T: stub.columnWall_m, t: stub.stubWall_m, ri: stub.stubRadius_m - stub.stubWall_m })
  requireCrossing(of, stubCrossing(stub, 'bore', 'outside'))
}

/** Height of the crossing curve at the angle ψ round the tube, without checks: the innermost loop of all searches. */
export function curveHeight({ pipeRadius_m: rho, tubeRadius_m: q, angle_rad: th, offset_m: e }: Crossing, psi: number) {
  const y = e + q * Math.sin(psi)
  return (Math.sqrt(Math.max(0, rho * rho - y * y)) * Math.cos(th) + q * Math.cos(psi)) / Math.sin(th)
}

/** Distance along the tube's axis of the crossing curve at ψ, without checks. */
export function curveLength({ pipeRadius_m: rho, tubeRadius_m: q, angle_rad: th, offset_m: e }: Crossing, psi: number) {
  const y = e + q * Math.sin(psi)
  return (Math.sqrt(Math.max(0, rho * rho - y * y)) + q * Math.cos(psi) * Math.cos(th)) / Math.sin(th)
}

/** Angle round the column of the crossing curve at ψ, without checks. */
export function curveTurn({ pipeRadius_m: rho, tubeRadius_m: q, offset_m: e }: Crossing, psi: number) {
  return Math.asin(Math.max(-1, Math.min(1, (e + q * Math.sin(psi)) / rho)))
}

/** Lower and upper edge of the opening at the angle φ round the column, without checks; beside it the middle twice. */
export function curveEdges(crossing: Crossing, phi: number): readonly [low: number, high: number] {
  const { pipeRadius_m: rho, tubeRadius_m: q, angle_rad: th, offset_m: e } = crossing
  const across = rho * Math.sin(phi) - e
  const middle = (rho * Math.cos(phi)) / Math.tan(th)
  const half = Math.sqrt(Math.max(0, q * q - across * across)) / Math.sin(th)
  return [middle - half, middle + half]
}
