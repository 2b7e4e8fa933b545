import { minimum } from '../../kernel/extremum.ts'
import { gaussNodes } from '../../kernel/integrate.ts'
import { requirePositive } from '../../kernel/require.ts'
import { root } from '../../kernel/solve.ts'
import { crossingHeights } from './equations-curve.ts'
import { openingExtent } from './equations-hole.ts'
import { squareCutExtent } from './equations-square-cut.ts'
import { type Crossing, type Cut, curveTurn, type Hole, holeCrossing, requireCrossing, requireHole } from './joint.ts'
import { type Arc, remaining, type Section, sectionOf } from './section.ts'
import { squareEdges, squareSides } from './square-cut.ts'

/** Levels looked at within the height of each ring's holes, besides those at which the holes are widest. */
const LEVELS = 24

/** Where a site stands: turn round the column, and height of the crossing of its axes. */
export interface Stand {
  readonly turn_rad: number
  readonly height_m: number
}

/**
 * Part of the turn that an opening takes at a level; `excess` is negative inside it and positive outside.
 * At the level of a side the two edges meet there, up to rounding.
 */
function spanWhere(excess: (phi: number) => number, left: number, right: number, rounding: number): Arc | null {
  const middle = minimum({ of: excess, low: left, high: right, pieces: 24 })
  if (middle.value > rounding) return null
  const side = (end: number) =>
    excess(end) <= rounding || middle.value >= 0 ? end : root({ of: excess, low: middle.at, high: end })
  if (middle.value >= 0) return { from_rad: middle.at, to_rad: middle.at }
  return { from_rad: side(left), to_rad: side(right) }
}

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
  const { pipeRadius_m: rho, tubeRadius_m: q, angle_rad: th, offset_m: e, level_m: h } = given
  if (e === 0) {
    const cos = (Math.sqrt(Math.max(0, h * h + rho * rho - q * q)) - h * Math.cos(th)) / (rho * Math.sin(th))
    return cos >= 1 ? null : { from_rad: -Math.acos(cos), to_rad: Math.acos(cos) }
  }
  const left = curveTurn(given, -Math.PI / 2)
  const right = curveTurn(given, Math.PI / 2)
  const inside = (phi: number) => Math.min(right - 1e-12, Math.max(left + 1e-12, phi))
  const excess = (phi: number) => {
    const edges = crossingHeights({ ...given, turn_rad: inside(phi) })
    return edges === null ? rho : Math.max(edges.low_m - h, h - edges.high_m)
  }
  return spanWhere(excess, left, right, 1e-6 * q)
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
  const { left, right } = squareSides(given)
  const excess = (phi: number) => {
    const [low, high] = squareEdges(given, phi)
    return Math.max(low - given.level_m, given.level_m - high)
  }
  return spanWhere(excess, left, right, 1e-9 * given.holeRadius_m)
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
  const layer = { left, first: (R ** 2 - Ri ** 2) / 2, second: (R ** 3 - Ri ** 3) / 3, third: (R ** 4 - Ri ** 4) / 4 }
  return sectionOf(
    [layer],
    [
      { radius_m: R, left },
      { radius_m: Ri, left },
    ],
  )
}

/** A section and how it came to be. */
export interface LevelSection extends Section {
  readonly level_m: number
  /** Holes that the level passes through. */
  readonly count: number
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

/** Sections by level; spans are kept, since regular sites meet the same level over their own axes again and again. */
function sectionsOf(hole: Hole, cut: Cut, sites: readonly Stand[]): (level_m: number) => LevelSection {
  const { columnRadius_m: R, columnWall_m: T } = hole
  const Ri = R - T
  const nodes = cut === 'square' ? [] : gaussNodes(Ri, R, 2)
  const radii = [R, Ri, ...nodes.map(([rho]) => rho)]
  const known = new Map<number, readonly (Arc | null)[]>()
  const spans = (over: number): readonly (Arc | null)[] => {
    const key = Math.round(over * 1e12)
    const found =
      known.get(key) ??
      (cut === 'square'
        ? [squareCutSpan({ ...hole, level_m: over })]
        : radii.map((rho) => axisCutSpan({ ...holeCrossing(hole, 'outside'), pipeRadius_m: rho, level_m: over })))
    known.set(key, found)
    return found
  }
  return (level_m) => {
    const met = sites
      .map(({ turn_rad, height_m }) => ({ turn_rad, arcs: spans(level_m - height_m) }))
      .filter(({ arcs }) => arcs.some((arc) => arc !== null))
    const left = (k: number) =>
      remaining(
        met.flatMap(({ turn_rad, arcs }) => {
          const arc = arcs[k]
          return arc ? [{ from_rad: arc.from_rad + turn_rad, to_rad: arc.to_rad + turn_rad }] : []
        }),
      )
    if (cut === 'square') {
      const openings = met.flatMap(({ turn_rad, arcs }) =>
        arcs.map((arc) => ({ from_rad: arc!.from_rad + turn_rad, to_rad: arc!.to_rad + turn_rad })),
      )
      return { ...remainingSection({ columnRadius_m: R, columnWall_m: T, openings }), level_m, count: met.length }
    }
    const layers = nodes.map(([rho, weight], i) => ({
      left: left(i + 2),
      first: weight * rho,
      second: weight * rho ** 2,
      third: weight * rho ** 3,
    }))
    const edges = radii.map((radius_m, k) => ({ radius_m, left: left(k) }))
    return { ...sectionOf(layers, edges), level_m, count: met.length }
  }
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
  const rings = [...new Set(sites.map(({ height_m }) => height_m))]
  return rings
    .flatMap((height) => over.map((level) => height + level))
    .map(at)
    .reduce((worst, next) => (next.modulus_m3 < worst.modulus_m3 ? next : worst))
}
