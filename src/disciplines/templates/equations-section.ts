import { requirePositive } from '../../kernel/require.ts'
import { openingExtent } from './equations-hole.ts'
import { squareCutExtent } from './equations-square-cut.ts'
import { type Crossing, type Cut, type Hole, holeCrossing, requireCrossing, requireHole } from './joint.ts'
import { type Arc, remaining, type Section, sectionOf, throughWall } from './section.ts'
import { type LevelSection, type Stand, sectionsOf, unlikeHeights } from './section-level.ts'
import { axisSpan, squareSpan } from './span.ts'

/** Levels looked at within the height of each ring's holes, besides those at which the holes are widest. */
const LEVELS = 24

/**
 * Part of the turn that an opening cut along the stub axis takes at a level, on one radius of the wall; null above and below.
 *
 *   e = 0: cos φ = (√(h² + ρ² - q²) - h cos θ) / (ρ sin θ), from -φ to φ; else where z-(φ) ≤ h ≤ z+(φ)
 *
 * Symbols  h level over the crossing of the axes [m], others as in crossingHeights
 * Valid    |e| + q ≤ ρ, 0 < θ ≤ π/2
 * Source   Geometry.section
 * Throws   RangeError where the tube does not enter the cylinder whole or θ is out of range
 */
export function axisCutSpan(given: Crossing & { readonly level_m: number }): Arc | null {
  requireCrossing('axisCutSpan', given)
  return axisSpan(given, given.level_m)
}

/**
 * Part of the turn that a square-cut hole takes at a level, through the whole wall; null above and below.
 *
 *   where z_low(φ) ≤ h ≤ z_high(φ) of squareCutHeights
 *
 * Symbols  h level over the crossing of the axes [m], others as in squareCutHeights
 * Valid    |e| + q ≤ Ri, 0 < θ ≤ π/2
 * Source   Geometry.section
 * Throws   RangeError where the hole does not fit the bore or θ is out of range
 */
export function squareCutSpan(given: Hole & { readonly level_m: number }): Arc | null {
  requireHole('squareCutSpan', given)
  return squareSpan(given, given.level_m)
}

/**
 * Section of a whole column.
 *
 *   A = π (R² - Ri²), I = π (R⁴ - Ri⁴) / 4, W = I / R
 *
 * Symbols  A area [m²], I second moment [m⁴], W section modulus [m³], R, Ri outside and bore radius [m]
 * Valid    0 < T < R
 * Source   Geometry.section
 * Throws   RangeError where the wall does not leave a bore
 */
export function wholeSection(given: { readonly columnRadius_m: number; readonly columnWall_m: number }): Section {
  return remainingSection({ ...given, openings: [] })
}

/**
 * Section that is left of a column where openings go straight through its wall over parts of the turn.
 *
 *   A = (R² - Ri²)/2 Σ(b - a), S = (R³ - Ri³)/3 Σ∫(cos φ, sin φ), I = (R⁴ - Ri⁴)/4 Σ∫(sin² φ, cos² φ, sin φ cos φ)
 *   over what is left, moved to the centroid and turned to the principal axes;  W = 1 / max hypot(y'/I1, x'/I2)
 *
 * Symbols  a, b ends of the arcs that are left [rad], I1, I2 least and greatest second moment [m⁴], x', y' places on the edge of what is left in the principal axes [m], R, Ri outside and bore radius [m]
 * Valid    0 < T < R; openings may overlap; nothing left gives zeros
 * Source   Geometry.section
 * Throws   RangeError where the wall does not leave a bore
 * Why      the corners of slots govern when bending is skew: I / c in fixed directions is not enough
 */
export function remainingSection(given: {
  readonly columnRadius_m: number
  readonly columnWall_m: number
  readonly openings: readonly Arc[]
}): Section {
  const { columnRadius_m: R, columnWall_m: T, openings } = given
  const Ri = R - T
  requirePositive('remainingSection', { T, Ri })
  const left = remaining(openings)
  const edges = [R, Ri].map((radius_m) => ({ radius_m, left }))
  return sectionOf([throughWall(R, Ri, left)], edges)
}

/**
 * Section that is left of a column at a level, with the holes of all sites near it.
 *
 *   square cut: remainingSection with the spans of squareCutSpan;  axis cut: the same with axisCutSpan, layer by layer ∫…dρ
 *
 * Symbols  as in remainingSection; the level is measured like the heights of the sites [m]
 * Valid    |e| + q ≤ Ri, 0 < θ ≤ π/2; plane sections are taken to stay plane
 * Source   Geometry.section
 * Throws   RangeError where the hole does not fit the bore or θ is out of range
 */
export function sectionAtLevel(given: {
  readonly hole: Hole
  readonly cut: Cut
  readonly sites: readonly Stand[]
  readonly level_m: number
}): LevelSection {
  requireHole('sectionAtLevel', given.hole)
  return sectionsOf(given.hole, given.cut, given.sites)(given.level_m)
}

/**
 * The level at which a column is weakest in bending, and the section left there.
 *
 *   least W over the levels through each ring of holes, those at which the holes are widest among them
 *
 * Symbols  W as in remainingSection [m³]
 * Valid    |e| + q ≤ Ri, 0 < θ ≤ π/2; at least one site
 * Source   Geometry.section
 * Throws   RangeError where there is no site, the hole does not fit the bore or θ is out of range
 */
export function worstSection(given: {
  readonly hole: Hole
  readonly cut: Cut
  readonly sites: readonly Stand[]
}): LevelSection {
  const { hole, cut, sites } = given
  requireHole('worstSection', hole)
  if (sites.length === 0) throw new RangeError('worstSection: there is no site')
  const bore = openingExtent(holeCrossing(hole, 'bore'))
  const whole = squareCutExtent(hole)
  const over = [
    bore.leftHeight_m,
    bore.rightHeight_m,
    whole.leftHeight_m,
    whole.rightHeight_m,
    ...Array.from({ length: LEVELS }, (_, i) => whole.bottom_m + ((i + 0.5) * whole.height_m) / LEVELS),
  ]
  const at = sectionsOf(hole, cut, sites)
  const rings = unlikeHeights(hole, sites)
  return rings
    .flatMap((height) => over.map((level) => height + level))
    .map(at)
    .reduce((worst, next) => (next.modulus_m3 < worst.modulus_m3 ? next : worst))
}
