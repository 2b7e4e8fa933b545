import { requireNotNegative, requirePositive } from '../../kernel/require.ts'

/**
 * Floor under a tower with its plants, and with room to walk round it, as squares about the column.
 *
 *   a = 2 (C + D / 2), footprint = a², with walking (a + 2 w)²
 *
 * Symbols  C distance of the mouths from the column axis [m], D width of the plants [m], w width of the walk [m]
 * Valid    a tower that stands alone; neighbours share walks
 * Source   Geometry.floor
 * Throws   RangeError where C is not positive, D or w negative
 */
export function standArea(given: { readonly reach_m: number; readonly canopy_m: number; readonly walk_m: number }): {
  readonly footprint_m2: number
  readonly walkRound_m2: number
} {
  const { reach_m: C, canopy_m: D, walk_m: w } = given
  requirePositive('standArea', { C })
  requireNotNegative('standArea', { D, w })
  const a = 2 * C + D
  return { footprint_m2: a * a, walkRound_m2: (a + 2 * w) ** 2 }
}

/**
 * Plants on an area of floor.
 *
 *   n = N / A
 *
 * Symbols  N plants, A floor [m²], n plants on a square metre [1/m²]
 * Valid    A > 0
 * Source   Geometry.floor
 * Throws   RangeError where A is not positive or N negative
 */
export function plantsPerArea(given: { readonly plants: number; readonly floor_m2: number }): number {
  const { plants: N, floor_m2: A } = given
  requirePositive('plantsPerArea', { A })
  requireNotNegative('plantsPerArea', { N })
  return N / A
}

/**
 * Height of a column between its margins that sites can use.
 *
 *   Hu = H - top - bottom
 *
 * Symbols  H length of the column [m], margins kept free at the top and bottom [m]
 * Valid    negative where the margins leave nothing
 * Source   Geometry.lattice
 * Throws   RangeError where H is not positive or a margin negative
 */
export function usableHeight(given: {
  readonly length_m: number
  readonly topMargin_m: number
  readonly bottomMargin_m: number
}): number {
  const { length_m: H, topMargin_m: top, bottomMargin_m: bottom } = given
  requirePositive('usableHeight', { H })
  requireNotNegative('usableHeight', { top, bottom })
  return H - top - bottom
}
