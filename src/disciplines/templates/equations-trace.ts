import { maximum, minimum } from '../../kernel/extremum.ts'
import { requirePositive } from '../../kernel/require.ts'
import { curveHeight, curveTurn, requireCrossing } from './joint.ts'

/** Half the window round the traced point in which the nearest point of the true edge is sought. */
const WINDOW_RAD = 1

interface Traced {
  readonly columnRadius_m: number
  readonly stubRadius_m: number
  readonly angle_rad: number
}

/**
 * How much too high an edge is drawn that was traced round a mitred end pushed straight against the column.
 *
 *   Δ = cot θ (R - √(R² - y²))
 *
 * Symbols  Δ height error [m], y distance beside the column axis [m], R outside radius of the column [m], θ between the axes [rad]
 * Valid    |y| ≤ R, 0 < θ ≤ π/2; heights matched at y = 0
 * Source   Geometry.trace
 * Throws   RangeError where R or θ is not positive or |y| exceeds R
 */
export function traceError(given: {
  readonly columnRadius_m: number
  readonly angle_rad: number
  readonly beside_m: number
}): number {
  const { columnRadius_m: R, angle_rad: th, beside_m: y } = given
  requirePositive('traceError', { R, θ: th })
  if (!(Math.abs(y) <= R)) throw new RangeError(`traceError: y = ${y} is outside the column, R = ${R}`)
  return (R - Math.sqrt((R - y) * (R + y))) / Math.tan(th)
}

/**
 * Greatest height error of a traced edge: at the side of the stub that lies further from the column axis.
 *
 *   Δ_max = cot θ (R - √(R² - (r + |e|)²))
 *
 * Symbols  r outside radius of the stub [m], e offset [m], others as in traceError
 * Valid    r + |e| ≤ R, 0 < θ ≤ π/2
 * Source   Geometry.trace
 * Throws   RangeError where a size is not positive or the stub is wider than the column
 */
export function traceErrorMost(given: Traced & { readonly offset_m: number }): number {
  const { columnRadius_m, stubRadius_m: r, angle_rad, offset_m: e } = given
  requirePositive('traceErrorMost', { r })
  return traceError({ columnRadius_m, angle_rad, beside_m: r + Math.abs(e) })
}

/**
 * Widest gap between a traced edge and the true edge, on the unrolled outside, and where it stands.
 *
 *   g = max over ψ of the distance from (R φ(ψ), R cot θ + r cos ψ / sin θ) to the curve (R φ(ψ'), z(ψ'))
 *
 * Symbols  φ, z of crossingPoint for the stub's outside r on the column's outside R, ψ round the stub from its crown [rad]
 * Valid    r + |e| ≤ R, 0 < θ ≤ π/2; for e = 0 the other side is the mirror image
 * Source   Geometry.trace
 * Throws   RangeError where the stub is wider than the column or θ is out of range
 */
export function traceGap(given: Traced & { readonly offset_m: number }): {
  readonly gap_m: number
  readonly around_rad: number
} {
  const { columnRadius_m: R, stubRadius_m: r, angle_rad: th, offset_m: e } = given
  const edge = { pipeRadius_m: R, tubeRadius_m: r, angle_rad: th, offset_m: e }
  requireCrossing('traceGap', edge)
  const gap = (psi: number) => {
    const x = R * curveTurn(edge, psi)
    const y = R / Math.tan(th) + (r * Math.cos(psi)) / Math.sin(th)
    const of = (p: number) => (x - R * curveTurn(edge, p)) ** 2 + (y - curveHeight(edge, p)) ** 2
    return Math.sqrt(minimum({ of, low: psi - WINDOW_RAD, high: psi + WINDOW_RAD, pieces: 12, within: 1e-6 }).value)
  }
  const found = maximum({
    of: gap,
    low: 0,
    high: e === 0 ? Math.PI : 2 * Math.PI,
    pieces: e === 0 ? 20 : 40,
    within: 1e-6,
  })
  return { gap_m: found.value, around_rad: found.at }
}

/**
 * How much too low a stub ends whose hole was traced with the mitre held against the outside where its face should finish.
 *
 *   v = (R - d) cot θ
 *
 * Symbols  v drop of the whole stub [m], R outside radius of the column [m], d distance of the mitre's plane from the column axis [m], θ between the axes [rad]
 * Valid    0 < θ ≤ π/2
 * Source   Geometry.trace
 * Throws   RangeError where R or θ is not positive
 */
export function traceDrop(given: {
  readonly columnRadius_m: number
  readonly depth_m: number
  readonly angle_rad: number
}): number {
  const { columnRadius_m: R, depth_m: d, angle_rad: th } = given
  requirePositive('traceDrop', { R, θ: th })
  return (R - d) / Math.tan(th)
}
