import { maximum } from '../../kernel/extremum.ts'
import { requirePositive } from '../../kernel/require.ts'
import { root } from '../../kernel/solve.ts'
import type { Place } from './equations-lattice.ts'

/** Divergences looked at first: half a degree apart. */
const STEPS = 360
/** Best of those that are then refined. */
const REFINED = 12

interface Helix {
  /** Distance of the mouths from the column axis. */
  readonly reach_m: number
  /** Height from a site to the next. */
  readonly rise_m: number
}

/**
 * Sites on a helix: each turned and raised by the same from the one before, each in a line and ring of its own.
 *
 *   φ = n δ,  z = z0 + n h
 *
 * Symbols  n site from 0, δ divergence [rad], h rise [m], z0 height of the first site [m]
 * Valid    h > 0
 * Source   Geometry.helix
 * Throws   RangeError where h is not positive
 */
export function helixPlaces(given: {
  readonly count: number
  readonly divergence_rad: number
  readonly rise_m: number
  readonly first_m: number
}): readonly Place[] {
  const { count, divergence_rad: delta, rise_m: h, first_m: z0 } = given
  requirePositive('helixPlaces', { h })
  const turn = 2 * Math.PI
  return Array.from({ length: count }, (_, n) => {
    const turn_rad = (((n * delta) % turn) + turn) % turn
    return { ring: n, line: n, turn_rad, height_m: z0 + n * h }
  })
}

/** Nearest distance and how many sites on it is, without checks. */
function nearest({ reach_m: C, rise_m: h }: Helix, delta: number): readonly [squared: number, apart: number] {
  let squared = Number.POSITIVE_INFINITY
  let apart = 0
  for (let m = 1; m * m * h * h < squared; m++) {
    const across = 2 * C * Math.sin((m * delta) / 2)
    const found = across * across + m * m * h * h
    if (found < squared) [squared, apart] = [found, m]
  }
  return [squared, apart]
}

/**
 * Distance of the nearest two mouths on a helix, and how many sites apart they are.
 *
 *   d = min over m of √((2 C sin(m δ / 2))² + (m h)²)
 *
 * Symbols  C distance of the mouths from the column axis [m], δ divergence [rad], h rise [m]
 * Valid    as many sites as the m that is found
 * Source   Geometry.helix
 * Throws   RangeError where C or h is not positive
 */
export function helixNearest(given: Helix & { readonly divergence_rad: number }): {
  readonly distance_m: number
  readonly apart: number
} {
  requirePositive('helixNearest', { C: given.reach_m, h: given.rise_m })
  const [squared, apart] = nearest(given, given.divergence_rad)
  return { distance_m: Math.sqrt(squared), apart }
}

/**
 * Divergence of a helix at which its nearest mouths are furthest apart.
 *
 *   max over 0 < δ ≤ π of d(δ), d of helixNearest
 *
 * Symbols  as in helixNearest; 2 π - δ is the same helix the other way round
 * Valid    C, h > 0
 * Source   Geometry.helix
 * Throws   RangeError where C or h is not positive
 * Why      the golden angle is best for endless helices of any rise, not for a given one
 */
export function bestDivergence(given: Helix): { readonly divergence_rad: number; readonly distance_m: number } {
  requirePositive('bestDivergence', { C: given.reach_m, h: given.rise_m })
  const of = (delta: number) => nearest(given, delta)[0]
  const step = Math.PI / STEPS
  const best = Array.from({ length: STEPS }, (_, i) => (i + 1) * step)
    .map((at) => ({ at, value: of(at) }))
    .sort((a, b) => b.value - a.value)
    .slice(0, REFINED)
    .map(({ at }) => maximum({ of, low: at - step, high: Math.min(Math.PI, at + step), pieces: 8 }))
    .reduce((a, b) => (b.value > a.value ? b : a))
  return { divergence_rad: best.at, distance_m: Math.sqrt(best.value) }
}

/**
 * Smallest rise of a helix, with its best divergence, at which no two mouths come nearer than the width of the plants.
 *
 *   d(bestDivergence(h)) = D
 *
 * Symbols  C distance of the mouths from the column axis [m], D width of the plants [m], h rise [m]
 * Valid    the best distance grows with the rise, so the rise is single
 * Source   Geometry.helix
 * Throws   RangeError where C or D is not positive
 */
export function smallestRise(given: { readonly reach_m: number; readonly canopy_m: number }): {
  readonly rise_m: number
  readonly divergence_rad: number
} {
  const { reach_m, canopy_m: D } = given
  requirePositive('smallestRise', { C: reach_m, D })
  const spare = (rise_m: number) => bestDivergence({ reach_m, rise_m }).distance_m - D
  const rise_m = root({ of: spare, low: (D * D) / (40 * (reach_m + D)), high: D, within: 1e-6 * D })
  return { rise_m, divergence_rad: bestDivergence({ reach_m, rise_m }).divergence_rad }
}
