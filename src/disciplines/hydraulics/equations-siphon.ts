import { STANDARD_GRAVITY } from '../../tables/hydraulic-constants.ts'
import { pipeFlow, pipeLaw, type Tube } from './pipe-law.ts'
import { notNegative, positive } from './possible.ts'

/**
 * Head that drives a siphon once the pump has stopped.
 *
 *   h = z_water − max(z_end, z_break)
 *
 * Symbols  h head [m], z_water level in the reservoir [m], z_end open end, z_break air break [m], all above one datum
 * Valid    tube full; positive means that the reservoir empties down to the higher of end and break
 * Source   Hydrostatics, free surface against open end
 * Throws   nothing: any heights are possible
 */
export function siphonHead(given: {
  readonly level_m: number
  readonly end_m: number
  /** Lowest opening to the air on the way; absent where there is none. */
  readonly airBreak_m?: number
}): number {
  const { level_m, end_m, airBreak_m = Number.NEGATIVE_INFINITY } = given
  return level_m - Math.max(end_m, airBreak_m)
}

/**
 * Flow of a siphon through the riser.
 *
 *   h = (f L/D + K) v²/(2 g), solved for the flow
 *
 * Symbols  h siphon head [m], f friction factor [1], L length [m], D bore [m], K sum of loss coefficients [1], v mean
 *          speed [m/s]
 * Valid    tube full, crest below `siphonCrest`; none where h is not positive
 * Source   Maurer.Hydraulics, chapter 4, Darcy-Weisbach
 * Throws   RangeError where the tube is impossible
 */
export function siphonFlow(given: {
  readonly head_m: number
  readonly tube: Tube
  readonly viscosity_m2_s: number
}): number {
  return pipeFlow(pipeLaw(given.tube, given.viscosity_m2_s), given.head_m)
}

/**
 * Height over the water at which a siphon, or a suction line, tears off.
 *
 *   z = (p − p_v)/(ρ g)
 *
 * Symbols  z height [m], p air pressure [Pa], p_v vapour pressure [Pa], ρ density [kg/m³]
 * Valid    still water; air that leaves the water breaks it earlier
 * Source   Hydrostatics, vacuum against vapour
 * Throws   RangeError where p or ρ is not positive or p_v negative
 */
export function siphonCrest(given: {
  readonly air_Pa: number
  readonly vapour_Pa: number
  readonly density_kg_m3: number
}): number {
  const { air_Pa: p, vapour_Pa, density_kg_m3: ρ } = given
  positive('siphonCrest', { p, ρ })
  notNegative('siphonCrest', { vapour_Pa })
  return (p - vapour_Pa) / (ρ * STANDARD_GRAVITY)
}

/**
 * Head that a check valve takes before it opens.
 *
 *   h = p_c/(ρ g)
 *
 * Symbols  h head [m], p_c opening pressure of the spring [Pa], ρ density [kg/m³]
 * Valid    adds to the static lift; the loss of the open valve comes on top
 * Source   Hydrostatics, pressure of a column of water
 * Throws   RangeError where ρ is not positive or p_c negative
 */
export function checkValveHead(given: { readonly opening_Pa: number; readonly density_kg_m3: number }): number {
  const { opening_Pa, density_kg_m3: ρ } = given
  positive('checkValveHead', { ρ })
  notNegative('checkValveHead', { opening_Pa })
  return opening_Pa / (ρ * STANDARD_GRAVITY)
}
