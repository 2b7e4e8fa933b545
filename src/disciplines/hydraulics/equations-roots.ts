import { notNegative, positive } from './possible.ts'

/**
 * Room that the hanging roots of one plant take, air between them included.
 *
 *   V = m/(ρ χ)
 *
 * Symbols  V room [m³], m mass of wet roots [kg], ρ density of water [kg/m³], χ share of the mat that is root and water [1]
 * Valid    roots as heavy as water
 * Source   derived.root-mat
 * Throws   RangeError where ρ or χ is not positive or m negative
 */
export function matVolume(given: {
  readonly wetRoot_kg: number
  readonly density_kg_m3: number
  readonly packing: number
}): number {
  const { wetRoot_kg: m, density_kg_m3: ρ, packing: χ } = given
  positive('matVolume', { ρ, χ })
  notNegative('matVolume', { m })
  return m / (ρ * χ)
}

/**
 * Cross-section of the bore that hanging roots take below the topmost rings, mean over the height of a ring.
 *
 *   A = k V/max(p, L/N)
 *
 * Symbols  A area [m²], k sites of a ring [1], V room of the roots of one plant [m³], p height from ring to ring [m],
 *          L length of the roots [m], N rings [1]
 * Valid    each ring adds its roots over the height of one ring; roots longer than the column hang below it
 * Source   derived.root-mat
 * Throws   RangeError where k, p or N is not positive, or V or L negative
 */
export function matArea(given: {
  readonly perRing: number
  readonly volume_m3: number
  readonly length_m: number
  readonly pitch_m: number
  readonly rings: number
}): number {
  const { perRing: k, volume_m3: V, length_m: L, pitch_m: p, rings: N } = given
  positive('matArea', { k, p, N })
  notNegative('matArea', { V, L })
  return (k * V) / Math.max(p, L / N)
}

/**
 * Bore in which an area of roots takes a wanted share, beside a tube.
 *
 *   D = √(4 (A/s + A_t)/π)
 *
 * Symbols  D bore [m], A area of roots [m²], s share that they may take [1], A_t area of a tube in the bore [m²]
 * Valid    any
 * Source   derived.root-mat
 * Throws   RangeError where s is not positive or an area negative
 */
export function boreForRoots(given: {
  readonly roots_m2: number
  readonly share: number
  readonly tube_m2: number
}): number {
  const { roots_m2: A, share: s, tube_m2: At } = given
  positive('boreForRoots', { s })
  notNegative('boreForRoots', { A, A_t: At })
  return Math.sqrt((4 * (A / s + At)) / Math.PI)
}
