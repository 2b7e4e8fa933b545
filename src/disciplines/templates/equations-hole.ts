import { completeElliptic } from '../../kernel/elliptic.ts'
import { maximum, minimum } from '../../kernel/extremum.ts'
import { turnIntegral } from '../../kernel/integrate.ts'
import { type Point, polyline } from '../../kernel/polyline.ts'
import { paperStretch } from './equations-curve.ts'
import {
  type Crossing,
  curveHeight,
  curveTurn,
  type Hole,
  holeCrossing,
  requireCrossing,
  requireHole,
} from './joint.ts'

/** How far an opening reaches on a cylinder about the column axis. */
export interface Extent {
  readonly top_m: number
  readonly bottom_m: number
  readonly height_m: number
  /** Angles of the two sides round the column. */
  readonly left_rad: number
  readonly right_rad: number
  /** Width along the surface. */
  readonly arc_m: number
  /** Heights of the two sides. */
  readonly leftHeight_m: number
  readonly rightHeight_m: number
}

/**
 * Top, bottom and sides of the opening of a tube in a cylinder about the column axis.
 *
 *   e = 0: top, bottom = ρ cot θ ± q / sin θ;  sides φ = asin((e ± q) / ρ) at z = √(ρ² - (e ± q)²) cot θ
 *
 * Symbols  as in crossingPoint; for e ≠ 0 the top and bottom are found where dz/dψ = 0
 * Valid    |e| + q ≤ ρ, 0 < θ ≤ π/2
 * Source   Geometry.hole
 * Throws   RangeError where the tube does not enter the cylinder whole or θ is out of range
 */
export function openingExtent(given: Crossing): Extent {
  requireCrossing('openingExtent', given)
  const { pipeRadius_m: rho, offset_m: e } = given
  const height = (psi: number) => curveHeight(given, psi)
  const quarter = Math.PI / 2
  const top = e === 0 ? height(0) : maximum({ of: height, low: -quarter, high: quarter }).value
  const bottom = e === 0 ? height(Math.PI) : minimum({ of: height, low: quarter, high: 3 * quarter }).value
  const left = curveTurn(given, -quarter)
  const right = curveTurn(given, quarter)
  return {
    top_m: top,
    bottom_m: bottom,
    height_m: top - bottom,
    left_rad: left,
    right_rad: right,
    arc_m: rho * (right - left),
    leftHeight_m: height(-quarter),
    rightHeight_m: height(quarter),
  }
}

/**
 * Outline of an opening on the unrolled surface: x along the arc, y up, as seen from outside, from the crown to the right.
 *
 *   x = ρ f φ(ψ),  y = z(ψ),  f = 1 + τ / (2 ρ)
 *
 * Symbols  φ, z as in crossingPoint, τ thickness of the paper (0 for the pipe itself) [m]; no straight piece strays from the curve by more than the tolerance [m]
 * Valid    |e| + q ≤ ρ, 0 < θ ≤ π/2
 * Source   Geometry.hole
 * Throws   RangeError where the tube does not enter the cylinder whole, θ is out of range or the tolerance not positive
 */
export function openingOutline(
  given: Crossing & { readonly paper_m: number; readonly tolerance_m: number },
): readonly Point[] {
  requireCrossing('openingOutline', given)
  const { pipeRadius_m: rho, paper_m, tolerance_m } = given
  const wide = rho * paperStretch({ radius_m: rho, paper_m })
  const of = (psi: number) => ({ x_m: wide * curveTurn(given, psi), y_m: curveHeight(given, psi) })
  return polyline({ of, from: 0, to: 2 * Math.PI, tolerance_m }).slice(0, -1)
}

/**
 * Area of an opening, measured on the surface of the cylinder.
 *
 *   e = 0: A = (4 ρ² / sin θ) [E(k) - (1 - k²) K(k)], k = q / ρ
 *   else:  A = (ρ q² / sin θ) ∮ cos² ψ / √(ρ² - (e + q sin ψ)²) dψ
 *
 * Symbols  A area [m²], K, E complete elliptic integrals of modulus k, others as in crossingPoint
 * Valid    |e| + q ≤ ρ (below ρ for e ≠ 0), 0 < θ ≤ π/2
 * Source   Geometry.hole
 * Throws   RangeError where the tube does not enter the cylinder whole or θ is out of range
 */
export function openingArea(given: Crossing): number {
  requireCrossing('openingArea', given)
  const { pipeRadius_m: rho, tubeRadius_m: q, angle_rad: th, offset_m: e } = given
  if (e === 0) {
    const { second, firstReduced } = completeElliptic(Math.min(1, q / rho))
    return ((4 * rho * rho) / Math.sin(th)) * (second - firstReduced)
  }
  const weight = (psi: number) => {
    const y = e + q * Math.sin(psi)
    return Math.cos(psi) ** 2 / Math.sqrt(rho * rho - y * y)
  }
  return ((rho * q * q) / Math.sin(th)) * turnIntegral(weight)
}

/**
 * Volume inside a tube from the plane square to its axis at s = 0 out to a cylinder about the column axis.
 *
 *   e = 0: V = (4 ρ / (3 sin θ)) [(ρ² + q²) E(k) - (ρ² - q²) K(k)], k = q / ρ
 *   else:  V = (q² / sin θ) ∮ cos² ψ √(ρ² - (e + q sin ψ)²) dψ
 *
 * Symbols  V volume [m³], others as in openingArea
 * Valid    |e| + q ≤ ρ, 0 < θ ≤ π/2; twice V at q = ρ, θ = π/2 is the Steinmetz solid, 16/3 ρ³
 * Source   Geometry.hole
 * Throws   RangeError where the tube does not enter the cylinder whole or θ is out of range
 */
export function coreVolume(given: Crossing): number {
  requireCrossing('coreVolume', given)
  const { pipeRadius_m: rho, tubeRadius_m: q, angle_rad: th, offset_m: e } = given
  if (e === 0) {
    const k = Math.min(1, q / rho)
    const { second, firstReduced } = completeElliptic(k)
    return ((4 * rho ** 3) / (3 * Math.sin(th))) * ((1 + k * k) * second - firstReduced)
  }
  const weight = (psi: number) => {
    const y = e + q * Math.sin(psi)
    return Math.cos(psi) ** 2 * Math.sqrt(Math.max(0, rho * rho - y * y))
  }
  return ((q * q) / Math.sin(th)) * turnIntegral(weight)
}

/**
 * Volume of the wall that a hole cut along the stub axis takes out.
 *
 *   V = V(R) - V(Ri), V of coreVolume
 *
 * Symbols  V volume of the plug [m³], R outside radius of the column [m], Ri its bore radius [m]
 * Valid    |e| + q ≤ Ri, 0 < θ ≤ π/2
 * Source   Geometry.hole
 * Throws   RangeError where the hole does not fit the bore or θ is out of range
 */
export function plugVolume(given: Hole): number {
  requireHole('plugVolume', given)
  return coreVolume(holeCrossing(given, 'outside')) - coreVolume(holeCrossing(given, 'bore'))
}
