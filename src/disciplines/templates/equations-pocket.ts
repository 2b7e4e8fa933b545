import { requireNotNegative, requirePositive } from '../../kernel/require.ts'

/**
 * Length of the slit for a pocket formed with heat over a round former: the slit opens into a loop of twice its length.
 *
 *   l = π D / (2 (1 + ε))
 *
 * Symbols  l length of the slit along the surface [m], D outside diameter of the former [m], ε stretch of the lips [1]
 * Valid    ε ≥ 0
 * Source   Geometry.pocket
 * Throws   RangeError where D is not positive or ε negative
 */
export function pocketSlit(given: { readonly former_m: number; readonly stretch: number }): number {
  const { former_m: D, stretch: eps } = given
  requirePositive('pocketSlit', { D })
  requireNotNegative('pocketSlit', { ε: eps })
  return (Math.PI * D) / (2 * (1 + eps))
}

/**
 * Wall left in the lips of a pocket that were stretched in one direction.
 *
 *   t = T / (1 + ε)
 *
 * Symbols  t wall of the lip [m], T wall of the pipe [m], ε stretch [1]
 * Valid    ε ≥ 0; volume is kept and the other direction does not shrink
 * Source   Geometry.pocket
 * Throws   RangeError where T is not positive or ε negative
 */
export function pocketWall(given: { readonly columnWall_m: number; readonly stretch: number }): number {
  const { columnWall_m: T, stretch: eps } = given
  requirePositive('pocketWall', { T })
  requireNotNegative('pocketWall', { ε: eps })
  return T / (1 + eps)
}

/**
 * Opening of a slit whose one lip is pushed through to its mirror image, without any stretch: a lens.
 *
 *   width = 2 R sin b, gap = 2 R (1 - cos b), b = l / (2 R)
 *
 * Symbols  l length of the slit [m], R outside radius of the column [m], b half angle of the slit [rad]
 * Valid    l < π R
 * Source   Geometry.pocket
 * Throws   RangeError where a size is not positive
 */
export function pocketLens(given: { readonly columnRadius_m: number; readonly slit_m: number }): {
  readonly width_m: number
  readonly gap_m: number
} {
  const { columnRadius_m: R, slit_m: l } = given
  requirePositive('pocketLens', { R, l })
  const b = l / (2 * R)
  return { width_m: 2 * R * Math.sin(b), gap_m: 2 * R * (1 - Math.cos(b)) }
}

/**
 * Wall left round a level with slits, and its share of the circumference.
 *
 *   left = 2 π R - k l, share = left / (2 π R)
 *
 * Symbols  R outside radius of the column [m], k slits at the level, l length of a slit [m]
 * Valid    any k; not positive where the slits meet
 * Source   Geometry.pocket
 * Throws   RangeError where a size is not positive
 */
export function pocketLigament(given: {
  readonly columnRadius_m: number
  readonly slit_m: number
  readonly count: number
}): { readonly left_m: number; readonly share: number } {
  const { columnRadius_m: R, slit_m: l, count: k } = given
  requirePositive('pocketLigament', { R, l, k })
  const round = 2 * Math.PI * R
  return { left_m: round - k * l, share: 1 - (k * l) / round }
}
