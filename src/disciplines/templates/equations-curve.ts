import { requireNotNegative, requirePositive } from '../../kernel/require.ts'
import { type Crossing, curveHeight, curveLength, curveTurn, requireCrossing } from './joint.ts'

/**
 * Distance along the stub axis at which a tube meets a cylinder about the column axis.
 *
 *   s(ψ) = [ √(ρ² - (e + q sin ψ)²) + q cos ψ cos θ ] / sin θ
 *
 * Symbols  s from the point of the stub axis nearest the column axis [m], ψ round the tube from its crown toward +y [rad], ρ radius of the cylinder [m], q of the tube [m], θ between the axes [rad], e offset [m]
 * Valid    |e| + q ≤ ρ, 0 < θ ≤ π/2
 * Source   Geometry.crossing
 * Throws   RangeError where the tube does not enter the cylinder whole or θ is out of range
 */
export function crossingLength(given: Crossing & { readonly around_rad: number }): number {
  requireCrossing('crossingLength', given)
  return curveLength(given, given.around_rad)
}

/**
 * A point of the curve in which a tube meets a cylinder about the column axis, as angle and height on the cylinder.
 *
 *   sin φ = (e + q sin ψ) / ρ,  z = √(ρ² - (e + q sin ψ)²) cot θ + q cos ψ / sin θ
 *
 * Symbols  φ round the column from the plane of the stub [rad], z above the crossing of the axes [m], others as in crossingLength
 * Valid    |e| + q ≤ ρ, 0 < θ ≤ π/2
 * Source   Geometry.crossing
 * Throws   RangeError where the tube does not enter the cylinder whole or θ is out of range
 */
export function crossingPoint(given: Crossing & { readonly around_rad: number }): {
  readonly turn_rad: number
  readonly height_m: number
} {
  requireCrossing('crossingPoint', given)
  return { turn_rad: curveTurn(given, given.around_rad), height_m: curveHeight(given, given.around_rad) }
}

/**
 * Lower and upper edge of the opening at an angle round the column; null beside the opening.
 *
 *   z± = ρ cos φ cot θ ± √(q² - (ρ sin φ - e)²) / sin θ
 *
 * Symbols  z± heights of the edges [m], others as in crossingPoint
 * Valid    |e| + q ≤ ρ, 0 < θ ≤ π/2
 * Source   Geometry.crossing
 * Throws   RangeError where the tube does not enter the cylinder whole or θ is out of range
 */
export function crossingHeights(given: Crossing & { readonly turn_rad: number }): {
  readonly low_m: number
  readonly high_m: number
} | null {
  requireCrossing('crossingHeights', given)
  const { pipeRadius_m: rho, tubeRadius_m: q, angle_rad: th, offset_m: e, turn_rad: phi } = given
  const across = rho * Math.sin(phi) - e
  if (Math.abs(across) > q || Math.cos(phi) < 0) return null
  const middle = (rho * Math.cos(phi)) / Math.tan(th)
  const half = Math.sqrt(q * q - across * across) / Math.sin(th)
  return { low_m: middle - half, high_m: middle + half }
}

/**
 * Room left beside a stub that enters the bore: negative where no such hole can be made.
 *
 *   m = Ri - r - |e|
 *
 * Symbols  m room at the nearer side [m], Ri radius of the bore [m], r outside radius of the stub with its clearance [m], e offset [m]
 * Valid    any sizes
 * Source   Geometry.crossing
 * Throws   RangeError where a radius is not positive
 */
export function entryRoom(given: {
  readonly boreRadius_m: number
  readonly holeRadius_m: number
  readonly offset_m: number
}): number {
  const { boreRadius_m: Ri, holeRadius_m: r, offset_m: e } = given
  requirePositive('entryRoom', { Ri, r })
  return Ri - r - Math.abs(e)
}

/**
 * Radius of the hole for a stub: the offset of a cylinder is a cylinder, so the clearance is exact all round.
 *
 *   q = r + c
 *
 * Symbols  q radius of the hole [m], r outside radius of the stub [m], c clearance on the radius for the joint [m]
 * Valid    c ≥ 0
 * Source   Geometry.crossing
 * Throws   RangeError where r is not positive or c negative
 */
export function holeRadius(given: { readonly stubRadius_m: number; readonly clearance_m: number }): number {
  const { stubRadius_m: r, clearance_m: c } = given
  requirePositive('holeRadius', { r })
  requireNotNegative('holeRadius', { c })
  return r + c
}

/**
 * Factor by which a paper template is drawn wider, since its middle lies half a paper thickness outside the pipe.
 *
 *   f = 1 + τ / (2 r)
 *
 * Symbols  f factor of widths round the pipe [1], τ paper thickness [m], r outside radius of the pipe [m]
 * Valid    τ much less than r
 * Source   Geometry.crossing
 * Throws   RangeError where r is not positive or τ negative
 */
export function paperStretch(given: { readonly radius_m: number; readonly paper_m: number }): number {
  const { radius_m: r, paper_m: tau } = given
  requirePositive('paperStretch', { r })
  requireNotNegative('paperStretch', { τ: tau })
  return 1 + tau / (2 * r)
}
