import { STANDARD_GRAVITY } from '../../tables/hydraulic-constants.ts'
import { wettingRate } from './equations-film.ts'
import type { Water } from './equations-water.ts'
import { notNegative, positive } from './possible.ts'

/**
 * Width of the strip that a stream keeps wet on the wall.
 *
 *   W = ρ q/Γ_min
 *
 * Symbols  W width [m], ρ density [kg/m³], q flow of the stream [m³/s], Γ_min least film flow of the wall [kg/(m s)]
 * Valid    settled rivulet: it widens where its film is thicker than the wall needs, and draws together where thinner;
 *          the way in which it gets there is not modelled
 * Source   RivuletWidth, with the dry-patch balance
 * Throws   RangeError where a symbol is impossible
 */
export function rivuletWidth(given: {
  readonly flow_m3_s: number
  readonly water: Water
  readonly contactAngle_rad: number
}): number {
  const { flow_m3_s: q, water, contactAngle_rad } = given
  notNegative('rivuletWidth', { q })
  return (water.density_kg_m3 * q) / wettingRate({ contactAngle_rad, ...water })
}

/**
 * Bearing of a film on the wall of a leaning column after it has run down a distance.
 *
 *   tan(φ/2) = tan(φ0/2) exp(−s tan α/R), φ measured from the low line of the wall
 *
 * Symbols  φ, φ0 bearing from the low line, after and before [rad], s distance run [m], α lean [rad], R radius [m]
 * Valid    thin film without momentum: it follows the steepest descent; α well below 45°
 * Source   LeaningFilm, integral of dφ/ds = −(tan α/R) sin φ
 * Throws   RangeError where R is not positive or s negative
 */
export function filmBearing(given: {
  readonly bearing_rad: number
  readonly low_rad: number
  readonly lean_rad: number
  readonly run_m: number
  readonly bore_m: number
}): number {
  const { bearing_rad, low_rad, lean_rad: α, run_m: s, bore_m } = given
  positive('filmBearing', { bore_m })
  notNegative('filmBearing', { s })
  const φ0 = Math.atan2(Math.sin(bearing_rad - low_rad), Math.cos(bearing_rad - low_rad))
  const shrink = Math.exp((-s * Math.tan(Math.abs(α))) / (bore_m / 2))
  return low_rad + 2 * Math.atan(Math.tan(φ0 / 2) * shrink)
}

/**
 * Distance that a stream falls free inside a leaning column before it meets the wall.
 *
 *   s = d/tan α, d = −p + √(p² + R² − r²), p = r cos(φ − φ_low)
 *
 * Symbols  s fall [m], α lean [rad], R radius of the bore [m], r, φ radius and bearing of the stream, φ_low low line
 * Valid    straight fall; endless where the column is plumb
 * Source   Hydrostatics, plumb line in a leaning cylinder
 * Throws   RangeError where R is not positive, or r is negative
 */
export function freeFallToWall(given: {
  readonly radius_m: number
  readonly bearing_rad: number
  readonly low_rad: number
  readonly lean_rad: number
  readonly bore_m: number
}): number {
  const { radius_m: r, bearing_rad: φ, low_rad, lean_rad: α, bore_m } = given
  positive('freeFallToWall', { bore_m })
  notNegative('freeFallToWall', { r })
  const R = bore_m / 2
  const p = r * Math.cos(φ - low_rad)
  const d = -p + Math.sqrt(Math.max(0, p * p + R * R - r * r))
  const slope = Math.tan(Math.abs(α))
  return slope === 0 ? Number.POSITIVE_INFINITY : d / slope
}

/**
 * Length at which weight and surface tension are equal: water bridges gaps narrower than this.
 *
 *   ℓ = √(σ/(ρ g))
 *
 * Symbols  ℓ capillary length [m], σ surface tension [N/m], ρ density [kg/m³]
 * Valid    clean water
 * Source   Laplace.hole, same balance on a flat meniscus
 * Throws   RangeError where σ or ρ is not positive
 */
export function capillaryLength(given: { readonly tension_N_m: number; readonly density_kg_m3: number }): number {
  const { tension_N_m: σ, density_kg_m3: ρ } = given
  positive('capillaryLength', { σ, ρ })
  return Math.sqrt(σ / (ρ * STANDARD_GRAVITY))
}

/**
 * Share of a circle that arcs cover, overlaps counted once.
 *
 *   |∪ [φ_i − w_i/2, φ_i + w_i/2]|/(2 π)
 *
 * Symbols  φ_i middle of an arc [rad], w_i its width [rad]
 * Valid    any number of arcs
 * Source   Hydrostatics, union of arcs
 * Throws   RangeError where a width is negative
 */
export function coveredShare(given: {
  readonly arcs: readonly { readonly middle_rad: number; readonly width_rad: number }[]
}): number {
  const round = 2 * Math.PI
  const pieces: [number, number][] = []
  for (const { middle_rad, width_rad } of given.arcs) {
    notNegative('coveredShare', { width_rad })
    if (width_rad >= round) return 1
    const from = (((middle_rad - width_rad / 2) % round) + round) % round
    const to = from + width_rad
    pieces.push([from, Math.min(to, round)])
    if (to > round) pieces.push([0, to - round])
  }
  pieces.sort((a, b) => a[0] - b[0])
  let covered = 0
  let reached = 0
  for (const [from, to] of pieces) {
    covered += Math.max(0, to - Math.max(from, reached))
    reached = Math.max(reached, to)
  }
  return covered / round
}
