/**
 * Water that stands in a slanted stub up to its lip once roots dam its inner end.
 *
 *   V = ∫ 2 √(r² - u²) (z/cos θ - u/(sin θ cos θ)) du, u = -r to min(r, z sin θ), z = (l - r cot θ) cos θ - r sin θ
 *
 * Symbols  V volume [m³], r inside radius of the stub [m], u height across its axis [m], θ angle between the axes of stub
 *          and column [rad], l length along its lower side [m], z lip over the place where the axes meet the wall [m]
 * Valid    flat wall of the column, square mouth; nothing where the lip lies below the inner end
 * Source   derived.trapped, level water in a cylinder between a wall and its mouth
 * Throws   RangeError where r or l is not positive or θ not between 0 and a right angle
 */
export function stubPocket(given: {
  readonly radius_m: number
  readonly angle_rad: number
  readonly lowerSide_m: number
}): number {
  const { radius_m: r, angle_rad: θ, lowerSide_m: l } = given
  if (!(r > 0 && l > 0)) throw new RangeError(`stubPocket: r = ${r}, l = ${l} must be positive`)
  if (!(θ > 0 && θ <= Math.PI / 2)) throw new RangeError(`stubPocket: θ = ${θ} is no slant`)
  const [sin, cos] = [Math.sin(θ), Math.max(1e-9, Math.cos(θ))]
  const z = (l - (r * cos) / sin) * cos - r * sin
  const top = Math.min(r, z * sin)
  if (top <= -r) return 0
  // Both parts have closed integrals: area of a segment of the bore, and its moment about the axis.
  const area = r * r * (Math.asin(top / r) + Math.PI / 2) + top * Math.sqrt(r * r - top * top)
  const moment = (-2 / 3) * (r * r - top * top) ** 1.5
  return Math.max(0, (z / cos) * area - moment / (sin * cos))
}

/**
 * Water that stands in a pocket formed with heat once roots dam it.
 *
 *   V = π D³/12
 *
 * Symbols  V volume [m³], D diameter of the former [m]
 * Valid    at most: a skew cone as deep as the former is wide, of which the wall of the column cuts a part away
 * Source   derived.trapped
 * Throws   RangeError where D is not positive
 */
export function formedPocket({ former_m: D }: { readonly former_m: number }): number {
  if (!(D > 0)) throw new RangeError(`formedPocket: D = ${D} must be positive`)
  return (Math.PI * D ** 3) / 12
}
