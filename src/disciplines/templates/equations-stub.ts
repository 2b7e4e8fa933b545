import { requirePositive } from '../../kernel/require.ts'
import { coreVolume, openingExtent } from './equations-hole.ts'
import { requireStub, type Stub, type StubEnd, stubCrossing } from './joint.ts'

/**
 * Volume of plastic in a stub.
 *
 *   saddle, flush: V = π (r² - ri²) L - [V(r; ρ) - V(ri; ρ)], ρ = R or Ri;  mitre: V = π (r² - ri²) (L - d / sin θ)
 *
 * Symbols  V of coreVolume [m³], r, ri outside and bore radius of the stub [m], L from the crossing of the axes to the mouth [m], d distance of the mitre's plane from the column axis [m]; a tilted mouth changes nothing
 * Valid    |e| + r ≤ Ri, 0 < θ ≤ π/2, L beyond the end all round
 * Source   Geometry.stub-end
 * Throws   RangeError where the stub does not fit the bore, L is not positive or θ is out of range
 */
export function stubVolume(given: {
  readonly stub: Stub
  readonly end: StubEnd
  readonly axisLength_m: number
}): number {
  const { stub, end, axisLength_m: L } = given
  requireStub('stubVolume', stub)
  requirePositive('stubVolume', { L })
  const { stubRadius_m: r, stubWall_m: t, angle_rad: th } = stub
  const ring = Math.PI * t * (2 * r - t)
  if (end.kind === 'mitre') return ring * (L - end.depth_m / Math.sin(th))
  const at = end.kind === 'saddle' ? 'outside' : 'bore'
  return ring * L - coreVolume(stubCrossing(stub, at, 'outside')) + coreVolume(stubCrossing(stub, at, 'bore'))
}

/**
 * Place of the middle of a stub's mouth: reach from the column axis and height over the crossing of the axes.
 *
 *   C = L sin θ, h = L cos θ
 *
 * Symbols  C reach in the plane of the stub [m], h height [m], L length along the axis [m], θ between the axes [rad]
 * Valid    0 < θ ≤ π/2
 * Source   Geometry.stub-end
 * Throws   RangeError where L or θ is not positive
 */
export function mouthCentre(given: { readonly axisLength_m: number; readonly angle_rad: number }): {
  readonly reach_m: number
  readonly height_m: number
} {
  const { axisLength_m: L, angle_rad: th } = given
  requirePositive('mouthCentre', { L, θ: th })
  return { reach_m: L * Math.sin(th), height_m: L * Math.cos(th) }
}

/**
 * Height of the lip, the lowest point of a stub's mouth on its inner edge, over the crossing of the axes.
 *
 *   z = L cos θ - ri |sin θ - tan δ cos θ|
 *
 * Symbols  z height [m], L length along the axis [m], ri bore radius of the stub [m], θ between the axes [rad], δ tilt of the mouth from square toward level [rad]
 * Valid    0 < θ ≤ π/2, |δ| < π/2; δ = 0: L cos θ - ri sin θ
 * Source   Geometry.stub-end
 * Throws   RangeError where L, ri or θ is not positive
 */
export function lipHeight(given: {
  readonly axisLength_m: number
  readonly stubBoreRadius_m: number
  readonly angle_rad: number
  readonly mouthTilt_rad: number
}): number {
  const { axisLength_m: L, stubBoreRadius_m: ri, angle_rad: th, mouthTilt_rad: delta } = given
  requirePositive('lipHeight', { L, ri, θ: th })
  return L * Math.cos(th) - ri * Math.abs(Math.sin(th) - Math.tan(delta) * Math.cos(th))
}

/**
 * Freeboard of the lip: its height over the lowest point of the stub's bore where it opens into the column bore.
 *
 *   δ = 0, e = 0: f = cos θ [L - (Ri - ri cos θ) / sin θ]
 *
 * Symbols  f freeboard, how high water must climb to spill [m], L length along the axis [m], Ri, ri bore radii of column and stub [m], θ between the axes [rad], δ as in lipHeight
 * Valid    |e| + r ≤ Ri, 0 < θ ≤ π/2
 * Source   Geometry.stub-end
 * Throws   RangeError where the stub does not fit the bore, L is not positive or θ is out of range
 */
export function freeboard(given: {
  readonly stub: Stub
  readonly axisLength_m: number
  readonly mouthTilt_rad: number
}): number {
  const { stub, axisLength_m, mouthTilt_rad } = given
  requireStub('freeboard', stub)
  const stubBoreRadius_m = stub.stubRadius_m - stub.stubWall_m
  const lip = lipHeight({ axisLength_m, stubBoreRadius_m, angle_rad: stub.angle_rad, mouthTilt_rad })
  return lip - openingExtent(stubCrossing(stub, 'bore', 'bore')).bottom_m
}

/**
 * Rise of the lower outer line of a stub from the low edge of the hole to the mouth.
 *
 *   z = l cos θ
 *
 * Symbols  z rise [m], l length outside the column on the lower outer line [m], θ between the axes [rad]
 * Valid    0 < θ ≤ π/2
 * Source   Geometry.stub-end
 * Throws   RangeError where l or θ is not positive
 */
export function heelRise(given: { readonly heelOutside_m: number; readonly angle_rad: number }): number {
  const { heelOutside_m: l, angle_rad: th } = given
  requirePositive('heelRise', { l, θ: th })
  return l * Math.cos(th)
}
