import { requireNotNegative, requirePositive } from '../../kernel/require.ts'

/** Share of a pitch by which rounding may miss a whole number of pitches. */
const ROUNDING = 1e-9

/** Where a site stands on the column: ring from the bottom and line round the column, both from 0. */
export interface Place {
  readonly ring: number
  readonly line: number
  readonly turn_rad: number
  readonly height_m: number
}

/** Refuses a number of things that is not whole and from 1. */
function requireCount(of: string, symbol: string, count: number): void {
  if (!(Number.isInteger(count) && count >= 1))
    throw new RangeError(`${of}: ${symbol} = ${count} is not a whole number from 1`)
}

/**
 * Sites in rings one above the other, every other ring turned.
 *
 *   φ = 2 π j / m + (i odd ? α : 0),  z = z0 + i p
 *
 * Symbols  i ring, j site of the ring, n rings, m sites of a ring, α turn of every other ring [rad], z0 height of the first ring, p pitch from ring to ring [m]; a turned ring has lines of its own unless α is a whole number of 2 π / m
 * Valid    n, m ≥ 1, p > 0
 * Source   Geometry.lattice
 * Throws   RangeError where n or m is not a whole number from 1 or p is not positive
 */
export function ringPlaces(given: {
  readonly rings: number
  readonly perRing: number
  readonly pitch_m: number
  readonly first_m: number
  readonly alternateTurn_rad: number
}): readonly Place[] {
  const { rings: n, perRing: m, pitch_m: p, first_m: z0, alternateTurn_rad: alpha } = given
  requireCount('ringPlaces', 'n', n)
  requireCount('ringPlaces', 'm', m)
  requirePositive('ringPlaces', { p })
  const spacing = (2 * Math.PI) / m
  const turned = Math.abs(alpha / spacing - Math.round(alpha / spacing)) > ROUNDING
  return Array.from({ length: n * m }, (_, site) => {
    const ring = Math.floor(site / m)
    const j = site % m
    const odd = ring % 2
    return {
      ring,
      line: turned ? 2 * j + odd : j,
      turn_rad: spacing * j + odd * alpha,
      height_m: z0 + ring * p,
    }
  })
}

/**
 * Sites that lines give which stand evenly round the column, every other one raised.
 *
 *   N = Σ over lines [floor((H - o) / p) + 1],  o = 0 on even lines, σ p on odd ones
 *
 * Symbols  H usable height from the first to the last possible site [m], k lines, p pitch on a line [m], σ raise of every other line as a share of the pitch [1]
 * Valid    H ≥ 0, k ≥ 1, 0 ≤ σ < 1
 * Source   Geometry.lattice
 * Throws   RangeError where k is not a whole number from 1, p is not positive, H or σ negative
 */
export function sitesThatFit(given: {
  readonly usable_m: number
  readonly lines: number
  readonly pitch_m: number
  readonly raise: number
}): number {
  const { usable_m: H, lines: k, pitch_m: p, raise } = given
  requireCount('sitesThatFit', 'k', k)
  requirePositive('sitesThatFit', { p })
  requireNotNegative('sitesThatFit', { H, σ: raise })
  const onLine = (offset: number) => Math.max(0, Math.floor((H - offset) / p + ROUNDING) + 1)
  const odd = Math.floor(k / 2)
  return (k - odd) * onLine(0) + odd * onLine(raise * p)
}

/** Distances between the middles of neighbouring mouths; null where there is no such neighbour. */
export interface Distances {
  readonly diagonal_m: number
  readonly line_m: number
  readonly ring_m: number | null
  readonly nearest_m: number
}

/**
 * Distances between the middles of mouths on a lattice with every other line raised by half the pitch.
 *
 *   diagonal √((2 C sin(π/k))² + (p/2)²), line p, ring 2 C sin(2 π/k)
 *
 * Symbols  C distance of the mouths from the column axis [m], k lines, p pitch on a line [m]
 * Valid    k even and at least 2; with k = 2 a ring has one site
 * Source   Geometry.lattice
 * Throws   RangeError where k is not an even number from 2, C or p is not positive
 */
export function latticeDistances(given: {
  readonly reach_m: number
  readonly lines: number
  readonly pitch_m: number
}): Distances {
  const { reach_m: C, lines: k, pitch_m: p } = given
  requirePositive('latticeDistances', { C, p })
  requireEven('latticeDistances', k)
  const diagonal_m = Math.hypot(2 * C * Math.sin(Math.PI / k), p / 2)
  const ring_m = k === 2 ? null : 2 * C * Math.sin((2 * Math.PI) / k)
  return { diagonal_m, line_m: p, ring_m, nearest_m: Math.min(diagonal_m, p, ring_m ?? Number.POSITIVE_INFINITY) }
}

function requireEven(of: string, k: number): void {
  if (!(Number.isInteger(k) && k >= 2 && k % 2 === 0))
    throw new RangeError(`${of}: k = ${k} is not an even number from 2`)
}

/**
 * Distance of the nearest two mouths of any set of sites, in space; null for fewer than two sites.
 *
 *   min √((2 C sin(Δφ / 2))² + Δz²)
 *
 * Symbols  C distance of the mouths from the column axis [m], Δφ, Δz turn and rise between two sites [rad, m]
 * Valid    all stubs alike
 * Source   Geometry.lattice
 * Throws   RangeError where C is not positive
 */
export function nearestMouths(given: {
  readonly reach_m: number
  readonly places: readonly { readonly turn_rad: number; readonly height_m: number }[]
}): number | null {
  const { reach_m: C, places } = given
  requirePositive('nearestMouths', { C })
  let least = Number.POSITIVE_INFINITY
  places.forEach((a, i) => {
    for (const b of places.slice(i + 1)) {
      const across = 2 * C * Math.sin((b.turn_rad - a.turn_rad) / 2)
      least = Math.min(least, across * across + (b.height_m - a.height_m) ** 2)
    }
  })
  return places.length < 2 ? null : Math.sqrt(least)
}

/**
 * Smallest pitch on a line at which no two mouths come nearer than the width of the plants; null where a ring is too tight.
 *
 *   needs 2 C sin(2 π/k) ≥ D;  p = max(D, 2 √(D² - 4 C² sin²(π/k)))
 *
 * Symbols  C distance of the mouths from the column axis [m], k lines, every other one raised by p/2, D width of the plants [m]
 * Valid    k even and at least 2; with k = 2 a ring has one site
 * Source   Geometry.lattice
 * Throws   RangeError where k is not an even number from 2, C or D is not positive
 */
export function smallestPitch(given: {
  readonly reach_m: number
  readonly lines: number
  readonly canopy_m: number
}): number | null {
  const { reach_m: C, lines: k, canopy_m: D } = given
  requirePositive('smallestPitch', { C, D })
  requireEven('smallestPitch', k)
  if (k > 2 && 2 * C * Math.sin((2 * Math.PI) / k) < D * (1 - ROUNDING)) return null
  const beside = 2 * C * Math.sin(Math.PI / k)
  return Math.max(D, 2 * Math.sqrt(Math.max(0, D * D - beside * beside)))
}

/**
 * Number of plants that no arrangement on the cylinder of mouths can pass, edge effects aside: hexagonal packing.
 *
 *   N = 2 π C H / (√3/2 D²)
 *
 * Symbols  C distance of the mouths from the column axis [m], H usable height [m], D width of the plants [m]
 * Valid    H much more than D; distances taken along the cylinder
 * Source   Geometry.lattice
 * Throws   RangeError where a size is not positive
 */
export function hexagonalBound(given: {
  readonly reach_m: number
  readonly usable_m: number
  readonly canopy_m: number
}): number {
  const { reach_m: C, usable_m: H, canopy_m: D } = given
  requirePositive('hexagonalBound', { C, H, D })
  return (2 * Math.PI * C * H) / ((Math.sqrt(3) / 2) * D * D)
}
