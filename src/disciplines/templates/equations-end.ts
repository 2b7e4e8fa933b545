import { minimum } from '../../kernel/extremum.ts'
import { type Point, polyline } from '../../kernel/polyline.ts'
import { requirePositive } from '../../kernel/require.ts'
import { paperStretch } from './equations-curve.ts'
import {
  type Crossing,
  curveLength,
  requireCrossing,
  requireStub,
  type Stub,
  type StubEnd,
  stubCrossing,
} from './joint.ts'
import { endLength, mouthLength } from './stub-end.ts'

/**
 * Distance along the axis at which the outer surface of a stub ends, on the line at ψ round the stub.
 *
 *   saddle: s(ψ; r, R);  flush: s(ψ; r, Ri);  mitre: (d + r cos ψ cos θ) / sin θ
 *
 * Symbols  s of crossingLength, from the crossing of the axes [m], r outside radius of the stub [m], R, Ri outside and bore radius of the column [m], d distance of the mitre's plane from the column axis [m]
 * Valid    |e| + r ≤ Ri, 0 < θ ≤ π/2
 * Source   Geometry.stub-end
 * Throws   RangeError where the stub does not fit the bore or θ is out of range
 */
export function endStart(given: { readonly stub: Stub; readonly end: StubEnd; readonly around_rad: number }): number {
  requireStub('endStart', given.stub)
  return endLength(given.stub, given.end, given.around_rad)
}

/**
 * Where to end a stub that is cut square to its own wall, so that no depth of its wall cuts into the column.
 *
 *   s = max s(ψ; q, ρ) over ri ≤ q ≤ r; stands at q* = (y* - e) / sin ψ, y* = ρ cos ψ cos θ sgn(sin ψ) / √(sin² ψ + cos² ψ cos² θ), brought into the range
 *
 * Symbols  s of crossingLength [m], ρ radius of the surface the stub sits on [m], r, ri outside and bore radius of the stub [m], ψ round the stub from its crown [rad]
 * Valid    |e| + r ≤ ρ, 0 < θ ≤ π/2
 * Source   Geometry.stub-end
 * Throws   RangeError where the stub is wider than the cylinder, t does not leave a bore, or θ is out of range
 */
export function squareTrimStart(
  given: Crossing & { readonly tubeWall_m: number; readonly around_rad: number },
): number {
  const { pipeRadius_m: rho, tubeRadius_m: r, tubeWall_m: t, angle_rad: th, offset_m: e, around_rad: psi } = given
  requireCrossing('squareTrimStart', given)
  requirePositive('squareTrimStart', { t, ri: r - t })
  const S = Math.sin(psi)
  const C = Math.cos(psi) * Math.cos(th)
  const length = (q: number) => (Math.sqrt(Math.max(0, rho * rho - (e + q * S) ** 2)) + q * C) / Math.sin(th)
  if (Math.abs(S) < 1e-12) return length(C > 0 ? r : r - t)
  const y = (rho * C * Math.sign(S)) / Math.hypot(S, C)
  return length(Math.min(r, Math.max(r - t, (y - e) / S)))
}

/**
 * Depth of a mitre at which the sides of the rim just reach a cylinder about the column axis.
 *
 *   d = √(ρ² - (r + |e|)²)
 *
 * Symbols  d distance of the plane from the column axis [m], ρ radius of the bore (sides flush inside) or of the outside (sides just reach the column) [m], r outside radius of the stub [m], e offset [m]
 * Valid    |e| + r ≤ ρ
 * Source   Geometry.stub-end
 * Throws   RangeError where a radius is not positive or the stub is wider than the cylinder
 */
export function mitreDepth(given: {
  readonly pipeRadius_m: number
  readonly stubRadius_m: number
  readonly offset_m: number
}): number {
  const { pipeRadius_m: rho, stubRadius_m: r, offset_m: e } = given
  requireCrossing('mitreDepth', { pipeRadius_m: rho, tubeRadius_m: r, angle_rad: Math.PI / 2, offset_m: e })
  const y = r + Math.abs(e)
  return Math.sqrt(Math.max(0, (rho - y) * (rho + y)))
}

/**
 * How far a mitred end stands in the bore on the centre line.
 *
 *   b = Ri - d
 *
 * Symbols  b reach into the bore [m], Ri bore radius of the column [m], d distance of the plane from the column axis [m]
 * Valid    0 ≤ d ≤ Ri for an end that reaches the bore
 * Source   Geometry.stub-end
 * Throws   RangeError where Ri is not positive
 */
export function mitreReach(given: { readonly boreRadius_m: number; readonly depth_m: number }): number {
  requirePositive('mitreReach', { Ri: given.boreRadius_m })
  return given.boreRadius_m - given.depth_m
}

/**
 * Angle of the saw from a square cut, for a plane parallel to the column axis.
 *
 *   β = π/2 - θ
 *
 * Symbols  β turn of the saw from square [rad], θ between stub axis and column axis [rad]
 * Valid    0 < θ ≤ π/2
 * Source   Geometry.stub-end
 * Throws   RangeError where θ is not positive
 */
export function mitreSawAngle(given: { readonly angle_rad: number }): number {
  requirePositive('mitreSawAngle', { θ: given.angle_rad })
  return Math.PI / 2 - given.angle_rad
}

/**
 * Difference between the longest and the shortest line of a mitred stub.
 *
 *   2 r cot θ
 *
 * Symbols  r outside radius of the stub [m], θ between the axes [rad]
 * Valid    0 < θ ≤ π/2; also heel minus crown of a saddle with e = 0
 * Source   Geometry.stub-end
 * Throws   RangeError where r or θ is not positive
 */
export function mitreRise(given: { readonly stubRadius_m: number; readonly angle_rad: number }): number {
  const { stubRadius_m: r, angle_rad: th } = given
  requirePositive('mitreRise', { r, θ: th })
  return (2 * r) / Math.tan(th)
}

/** Lengths of a stub from its inner end to its mouth. */
export interface StubLengths {
  /** Along the axis. */
  readonly centre_m: number
  /** Along the lower outer line. */
  readonly heel_m: number
  /** Along the upper outer line. */
  readonly crown_m: number
  /** Shortest piece of pipe, cut square at both ends, that the stub can be made of. */
  readonly blank_m: number
}

/**
 * Lengths of a stub along its axis, its lower and its upper outer line, and of the piece of pipe it is made of.
 *
 *   heel = L + r tan δ - s(π), crown = L - r tan δ - s(0), centre = L - s on the axis, blank = L + r tan |δ| - min s(ψ)
 *
 * Symbols  L from the crossing of the axes to the mouth along the axis [m], δ tilt of the mouth from square toward level (level at δ = θ) [rad], s of endStart [m]
 * Valid    |e| + r ≤ Ri, 0 < θ ≤ π/2, |δ| < π/2
 * Source   Geometry.stub-end
 * Throws   RangeError where the stub does not fit the bore or θ is out of range
 */
export function stubLengths(given: {
  readonly stub: Stub
  readonly end: StubEnd
  readonly axisLength_m: number
  readonly mouthTilt_rad: number
}): StubLengths {
  const { stub, end, axisLength_m: L, mouthTilt_rad } = given
  requireStub('stubLengths', stub)
  const start = (psi: number) => endLength(stub, end, psi)
  const onAxis = { ...stub, stubRadius_m: 0 }
  const least = stub.offset_m === 0 ? start(Math.PI) : minimum({ of: start, low: 0, high: 2 * Math.PI }).value
  return {
    centre_m: L - endLength(onAxis, end, 0),
    heel_m: mouthLength(stub, L, mouthTilt_rad, Math.PI) - start(Math.PI),
    crown_m: mouthLength(stub, L, mouthTilt_rad, 0) - start(0),
    blank_m: L + stub.stubRadius_m * Math.tan(Math.abs(mouthTilt_rad)) - least,
  }
}

/**
 * Length from the crossing of the axes to the mouth, of a stub measured outside the column along its lower line.
 *
 *   L = l + s(π; r, R) - r tan δ
 *
 * Symbols  l length outside the column on the lower outer line [m], s of crossingLength on the outside [m], δ tilt of the mouth from square toward level [rad]
 * Valid    |e| + r ≤ Ri, 0 < θ ≤ π/2
 * Source   Geometry.stub-end
 * Throws   RangeError where l is not positive, the stub does not fit the bore or θ is out of range
 */
export function axisLength(given: {
  readonly stub: Stub
  readonly heelOutside_m: number
  readonly mouthTilt_rad: number
}): number {
  const { stub, heelOutside_m: l, mouthTilt_rad } = given
  requirePositive('axisLength', { l })
  requireStub('axisLength', stub)
  return l + endLength(stub, { kind: 'saddle' }, Math.PI) - stub.stubRadius_m * Math.tan(mouthTilt_rad)
}

/** Template that is wrapped round a stub: x along the arc from the crown, y along the axis away from the column. */
export interface StubWrap {
  /** Once round on the paper. */
  readonly width_m: number
  readonly end: readonly Point[]
  readonly mouth: readonly Point[]
}

/**
 * Wrap template of a stub, both ends, from the crown once round: as seen from outside with the mouth down.
 *
 *   x = r f ψ, y = s(ψ) at the end, y = L - r cos ψ tan δ at the mouth, f = 1 + τ / (2 r)
 *
 * Symbols  ψ from the crown toward +y of the column's frame, 0 to 2 π [rad], s of endStart [m], L, δ as in stubLengths, τ thickness of the paper [m]; pieces stay within the tolerance
 * Valid    |e| + r ≤ Ri, 0 < θ ≤ π/2, |δ| < π/2
 * Source   Geometry.stub-end
 * Throws   RangeError where the stub does not fit the bore, θ is out of range or the tolerance not positive
 */
export function stubWrap(given: {
  readonly stub: Stub
  readonly end: StubEnd
  readonly axisLength_m: number
  readonly mouthTilt_rad: number
  readonly paper_m: number
  readonly tolerance_m: number
}): StubWrap {
  const { stub, end, axisLength_m, mouthTilt_rad, paper_m, tolerance_m } = given
  requireStub('stubWrap', stub)
  const wide = stub.stubRadius_m * paperStretch({ radius_m: stub.stubRadius_m, paper_m })
  const line = (y: (psi: number) => number) =>
    polyline({ of: (psi) => ({ x_m: wide * psi, y_m: y(psi) }), from: 0, to: 2 * Math.PI, tolerance_m })
  return {
    width_m: 2 * Math.PI * wide,
    end: line((psi) => endLength(stub, end, psi)),
    mouth: line((psi) => mouthLength(stub, axisLength_m, mouthTilt_rad, psi)),
  }
}

/**
 * How deep the inner edge of a saddle cut along its outer curve, square to the stub's wall, would stand in the column.
 *
 *   i(ψ) = s(ψ; ri, R) - s(ψ; r, R);  e = 0: heel t cot θ, sides [√(R² - ri²) - √(R² - r²)] / sin θ, crown -t cot θ (a gap)
 *
 * Symbols  i interference at ψ, negative for a gap [m], r, ri outside and bore radius of the stub [m], t its wall [m], R outside radius of the column [m]
 * Valid    |e| + r ≤ Ri, 0 < θ ≤ π/2
 * Source   Geometry.stub-end
 * Throws   RangeError where the stub does not fit the bore or θ is out of range
 */
export function squareTrimInterference(given: { readonly stub: Stub; readonly around_rad: number }): number {
  requireStub('squareTrimInterference', given.stub)
  const { stub, around_rad: psi } = given
  return (
    curveLength(stubCrossing(stub, 'outside', 'bore'), psi) - curveLength(stubCrossing(stub, 'outside', 'outside'), psi)
  )
}
