import { type Point, polyline } from '../../kernel/polyline.ts'
import { requirePositive } from '../../kernel/require.ts'
import { paperStretch } from './equations-curve.ts'
import { type Extent, openingExtent } from './equations-hole.ts'
import { type Hole, holeCrossing, requireHole } from './joint.ts'
import { squareEdges, squareSides } from './square-cut.ts'

/**
 * Lower and upper edge, at an angle round the column, of a hole cut square to the wall that lets the stub through at
 * every depth of the wall; null beside the hole.
 *
 *   z_low = min z-(φ; ρ), z_high = max z+(φ; ρ) over Ri ≤ ρ ≤ R;
 *   both stand at ρ* = (e + w) / sin φ, w = ± q a sgn(sin φ) / √(a² + sin² φ), a = cos φ cos θ, brought into the range
 *
 * Symbols  z± as in crossingHeights [m], R, Ri outside and bore radius of the column [m], q radius of the hole [m], θ between the axes [rad], e offset [m]
 * Valid    |e| + q ≤ Ri, 0 < θ ≤ π/2
 * Source   Geometry.square-cut
 * Throws   RangeError where the hole does not fit the bore or θ is out of range
 */
export function squareCutHeights(given: Hole & { readonly turn_rad: number }): {
  readonly low_m: number
  readonly high_m: number
} | null {
  requireHole('squareCutHeights', given)
  const { left, right } = squareSides(given)
  if (given.turn_rad < left || given.turn_rad > right) return null
  const [low_m, high_m] = squareEdges(given, given.turn_rad)
  return { low_m, high_m }
}

/**
 * Top, bottom and sides of a hole cut square to the wall.
 *
 *   top = top at R, bottom = bottom at Ri; e = 0: height 2 q / sin θ + T cot θ, sides φ = ± asin(q / Ri)
 *
 * Symbols  T wall of the column [m], others as in squareCutHeights; arcs are measured on the outside
 * Valid    |e| + q ≤ Ri, 0 < θ ≤ π/2
 * Source   Geometry.square-cut
 * Throws   RangeError where the hole does not fit the bore or θ is out of range
 */
export function squareCutExtent(given: Hole): Extent {
  requireHole('squareCutExtent', given)
  const outside = openingExtent(holeCrossing(given, 'outside'))
  const bore = openingExtent(holeCrossing(given, 'bore'))
  const { left, right } = squareSides(given)
  return {
    top_m: outside.top_m,
    bottom_m: bore.bottom_m,
    height_m: outside.top_m - bore.bottom_m,
    left_rad: left,
    right_rad: right,
    arc_m: given.columnRadius_m * (right - left),
    leftHeight_m: squareEdges(given, left)[0],
    rightHeight_m: squareEdges(given, right)[0],
  }
}

/**
 * Outline, on the unrolled outside, of a hole cut square to the wall: x along the arc, y up, from the right side over the top.
 *
 *   φ = middle + half cos t;  y = z_high(φ) for 0 ≤ t ≤ π, z_low(φ) for π ≤ t ≤ 2 π
 *
 * Symbols  as in squareCutHeights and openingOutline
 * Valid    |e| + q ≤ Ri, 0 < θ ≤ π/2
 * Source   Geometry.square-cut
 * Throws   RangeError where the hole does not fit the bore, θ is out of range or the tolerance not positive
 */
export function squareCutOutline(
  given: Hole & { readonly paper_m: number; readonly tolerance_m: number },
): readonly Point[] {
  requireHole('squareCutOutline', given)
  const { columnRadius_m: R, paper_m, tolerance_m } = given
  const wide = R * paperStretch({ radius_m: R, paper_m })
  const { left, right } = squareSides(given)
  const edge = (upper: 0 | 1) => (t: number) => {
    const turn = (left + right) / 2 + ((right - left) / 2) * Math.cos(t)
    return { x_m: wide * turn, y_m: squareEdges(given, turn)[upper] }
  }
  const over = polyline({ of: edge(1), from: 0, to: Math.PI, tolerance_m })
  const under = polyline({ of: edge(0), from: Math.PI, to: 2 * Math.PI, tolerance_m })
  return [...over.slice(0, -1), ...under.slice(0, -1)]
}

/**
 * Widest wedge left open between a square-cut hole and the slanted stub, at its top inside and its bottom outside.
 *
 *   g = T cot θ
 *
 * Symbols  g gap along the column [m], T wall of the column [m], θ between the axes [rad]
 * Valid    0 < θ ≤ π/2
 * Source   Geometry.square-cut
 * Throws   RangeError where T or θ is not positive
 */
export function squareCutWedge(given: { readonly columnWall_m: number; readonly angle_rad: number }): number {
  const { columnWall_m: T, angle_rad: th } = given
  requirePositive('squareCutWedge', { T, θ: th })
  return T / Math.tan(th)
}
