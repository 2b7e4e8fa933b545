import { requireNotNegative, requirePositive } from '../../kernel/require.ts'
import { requireCrossing } from './joint.ts'

/**
 * Gap at the sides under the rim of a cup that lies over a plain hole: the rim touches only the top and bottom lines.
 *
 *   g = R - √(R² - q²)
 *
 * Symbols  g gap [m], R outside radius of the column [m], q radius of the hole [m]
 * Valid    q ≤ R
 * Source   Geometry.other-sites
 * Throws   RangeError where a radius is not positive or the hole is wider than the column
 */
export function plainHoleGap(given: { readonly columnRadius_m: number; readonly holeRadius_m: number }): number {
  const { columnRadius_m: R, holeRadius_m: q } = given
  requireCrossing('plainHoleGap', { pipeRadius_m: R, tubeRadius_m: q, angle_rad: Math.PI / 2, offset_m: 0 })
  return R - Math.sqrt((R - q) * (R + q))
}

/**
 * Depth at which a straight cup put level into a plain hole touches the far wall of the bore, measured from the near bore wall.
 *
 *   h = Ri + √(Ri² - q²)
 *
 * Symbols  h depth [m], Ri bore radius of the column [m], q radius of the hole [m]
 * Valid    q ≤ Ri; leave room for roots
 * Source   Geometry.other-sites
 * Throws   RangeError where a radius is not positive or the hole is wider than the bore
 */
export function plainHoleCupDepth(given: { readonly boreRadius_m: number; readonly holeRadius_m: number }): number {
  const { boreRadius_m: Ri, holeRadius_m: q } = given
  requireCrossing('plainHoleCupDepth', { pipeRadius_m: Ri, tubeRadius_m: q, angle_rad: Math.PI / 2, offset_m: 0 })
  return Ri + Math.sqrt((Ri - q) * (Ri + q))
}

/**
 * Least pitch of sites made of branch fittings: on the column, and on one line where each fitting is clocked to the next line.
 *
 *   column p = l + g;  line p = (l + g) k / b
 *
 * Symbols  l laying length of the fitting as measured, what it adds to the column [m], g pipe between two fittings [m], k lines round the column, b branches of a fitting
 * Valid    k a multiple of b
 * Source   Geometry.other-sites
 * Throws   RangeError where l, k or b is not positive or g negative
 */
export function fittingPitch(given: {
  readonly layingLength_m: number
  readonly between_m: number
  readonly lines: number
  readonly branches: number
}): { readonly column_m: number; readonly line_m: number } {
  const { layingLength_m: l, between_m: g, lines: k, branches: b } = given
  requirePositive('fittingPitch', { l, k, b })
  requireNotNegative('fittingPitch', { g })
  return { column_m: l + g, line_m: ((l + g) * k) / b }
}

/**
 * Sites that branch fittings give on a height.
 *
 *   N = b floor((H + g) / (l + g))
 *
 * Symbols  H height for fittings [m], l laying length as measured [m], g pipe between two fittings [m], b branches of a fitting
 * Valid    H ≥ 0
 * Source   Geometry.other-sites
 * Throws   RangeError where l or b is not positive, H or g negative
 */
export function fittingSites(given: {
  readonly usable_m: number
  readonly layingLength_m: number
  readonly between_m: number
  readonly branches: number
}): number {
  const { usable_m: H, layingLength_m: l, between_m: g, branches: b } = given
  requirePositive('fittingSites', { l, b })
  requireNotNegative('fittingSites', { H, g })
  return b * Math.floor((H + g) / (l + g) + 1e-9)
}
