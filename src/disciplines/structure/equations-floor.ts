import { GRAVITY_m_s2 as g } from '../../tables/constants.ts'

/**
 * Load of the tower spread on what it stands on.
 *
 *   p = m/A, and g p as pressure
 *
 * Symbols  p load per area [kg/m2], also as pressure [Pa = N/m2], m mass [kg], A area of the footprint or of a board under
 *          it [m2], g free fall [m/s2]
 * Valid    board stiff enough to spread the load; people and snow are not in it
 * Source   derived.moments, weight over area
 * Throws   RangeError where mass is negative or area not positive
 */
export function floorLoad(given: { readonly mass_kg: number; readonly area_m2: number }): {
  readonly load_kg_m2: number
  readonly pressure_Pa: number
} {
  const { mass_kg: m, area_m2: A } = given
  if (!(m >= 0 && A > 0)) throw new RangeError(`floorLoad: m = ${m}, A = ${A}`)
  return { load_kg_m2: m / A, pressure_Pa: (m * g) / A }
}

/**
 * Load under one foot where a tower stands on feet, the worst one when a push tips it towards a side.
 *
 *   P = m g/n + M_o/(2 a)
 *
 * Symbols  P load under the foot [N], m mass [kg], g free fall [m/s2], n feet [1], M_o overturning moment [N m],
 *          a distance between the two sides [m]
 * Valid    four feet in a rectangle, or n feet at rest; at most the whole weight on two feet
 * Source   derived.moments, balance about the middle
 * Throws   RangeError where a symbol is negative or there is no foot or distance
 */
export function footLoad(given: {
  readonly mass_kg: number
  readonly feet: number
  readonly overturning_N_m: number
  readonly spread_m: number
}): number {
  const { mass_kg: m, feet: n, overturning_N_m: Mo, spread_m: a } = given
  if (!(m >= 0 && n >= 1 && Mo >= 0 && a > 0))
    throw new RangeError(`footLoad: m = ${m}, n = ${n}, M_o = ${Mo}, a = ${a}`)
  return Math.min((m * g) / n + Mo / (2 * a), (m * g) / Math.min(n, 2))
}

/**
 * Side of a square board that spreads the tower to a limit.
 *
 *   s = sqrt(m/p)
 *
 * Symbols  s side [m], m mass [kg], p limit [kg/m2]
 * Valid    board stiff enough to spread the load
 * Source   derived.moments, weight over area
 * Throws   RangeError where mass is negative or the limit not positive
 */
export function boardSide(given: { readonly mass_kg: number; readonly limit_kg_m2: number }): number {
  const { mass_kg: m, limit_kg_m2: p } = given
  if (!(m >= 0 && p > 0)) throw new RangeError(`boardSide: m = ${m}, p = ${p}`)
  return Math.sqrt(m / p)
}
