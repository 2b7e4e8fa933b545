import { feedConstants } from '../../tables/solvent.ts'

/**
 * Partial pressure of carbon dioxide in open air at a height above the sea, standard atmosphere.
 *
 *   p = p0 (1 - 2.25577e-5 z)^5.2559
 *
 * Symbols  p partial pressure [Pa], p0 at sea level [Pa], z altitude [m]
 * Valid    -500 ≤ z ≤ 11 000; a closed room with people holds two to three times as much
 * Source   ASHRAE.F2017.1, equation 3
 * Throws   RangeError where z lies outside of -500 to 11 000
 * Why      at 1850 m a hard water in the air stands about 0.1 pH higher than at the sea
 */
export function airCarbonDioxide(given: { readonly altitude_m: number }): number {
  const { altitude_m: z } = given
  if (!(z >= -500 && z <= 11_000)) throw new RangeError(`airCarbonDioxide: z is ${z} m`)
  return feedConstants.rows.carbonDioxideInAir.value * (1 - 2.25577e-5 * z) ** 5.2559
}
