import { STEFAN_BOLTZMANN_W_m2_K4, ZERO_CELSIUS_K } from '../../tables/constants.ts'
import { bodies } from '../../tables/heat.ts'
import { humidityRatio, saturationPressure } from './equations-air.ts'

const { water } = bodies.rows

/**
 * Heat passed through a wall from water to air.
 *
 *   U = 1/(1/h_i + Σ t/k + 1/h_o)
 *
 * Symbols  U conductance per area [W/(m2 K)], h_i and h_o films inside and outside [W/(m2 K)], t thickness [m],
 *          k conduction of the material [W/(m K)]
 * Valid    flat wall, or one thin against its radius
 * Source   ISO.6946, resistances in series
 * Throws   RangeError where a film or a conduction is not positive or a thickness negative
 */
export function wallConductance(given: {
  readonly inside_W_m2_K: number
  readonly outside_W_m2_K: number
  readonly layers: readonly { readonly thickness_m: number; readonly conductivity_W_m_K: number }[]
}): number {
  const { inside_W_m2_K: hi, outside_W_m2_K: ho, layers } = given
  if (!(hi > 0 && ho > 0)) throw new RangeError(`wallConductance: h_i = ${hi}, h_o = ${ho} must be positive`)
  const resistance = layers.reduce((sum, { thickness_m: t, conductivity_W_m_K: k }) => {
    if (!(t >= 0 && k > 0)) throw new RangeError(`wallConductance: layer t = ${t}, k = ${k}`)
    return sum + t / k
  }, 0)
  return 1 / (1 / hi + resistance + 1 / ho)
}

/**
 * Part of the outside film that is radiation: what foil takes away.
 *
 *   h_r = 4 ε σ T³
 *
 * Symbols  h_r film by radiation [W/(m2 K)], ε emittance [1], σ Stefan-Boltzmann constant [W/(m2 K4)], T mean
 *          temperature of surface and surroundings [K]
 * Valid    differences of a few tens of kelvin
 * Source   Incropera, linear radiation film
 * Throws   RangeError where the emittance lies outside of 0 to 1
 */
export function radiationFilm(given: { readonly emittance: number; readonly temperature_C: number }): number {
  const { emittance: ε, temperature_C } = given
  if (!(ε >= 0 && ε <= 1)) throw new RangeError(`radiationFilm: ε = ${ε} lies outside of 0 to 1`)
  return 4 * ε * STEFAN_BOLTZMANN_W_m2_K4 * (temperature_C + ZERO_CELSIUS_K) ** 3
}

/**
 * Temperature of air that would warm a wall as much as air and sun together do.
 *
 *   T_sa = T_a + α I/h_o
 *
 * Symbols  T_sa sol-air temperature [°C], T_a air [°C], α absorptance [1], I sun on the surface [W/m2], h_o outside film [W/(m2 K)]
 * Valid    loss to the clear sky left out: up to 4 K too warm for level surfaces at night
 * Source   Incropera, balance of heat at the surface
 * Throws   RangeError where the film is not positive or the absorptance lies outside of 0 to 1
 */
export function solAirTemperature(given: {
  readonly air_C: number
  readonly absorptance: number
  readonly sun_W_m2: number
  readonly outside_W_m2_K: number
}): number {
  const { air_C: T, absorptance: α, sun_W_m2: I, outside_W_m2_K: h } = given
  if (!(h > 0 && α >= 0 && α <= 1)) throw new RangeError(`solAirTemperature: h_o = ${h}, α = ${α}`)
  return T + (α * I) / h
}

/**
 * Heat that makes a kilogram of water into vapour.
 *
 *   L = 2.501 - 0.002361 T
 *
 * Symbols  L heat of evaporation [MJ/kg, returned in J/kg], T temperature [°C]
 * Valid    0 to 50 °C
 * Source   Allen1998.FAO56, annex 3
 * Throws   RangeError where T lies outside of -10 to 100
 */
export function evaporationHeat(given: { readonly temperature_C: number }): number {
  const T = given.temperature_C
  if (!(T >= -10 && T <= 100)) throw new RangeError(`evaporationHeat: T = ${T} lies outside of -10 to 100`)
  return 2.501e6 - 2361 * T
}

/**
 * Water that leaves an open surface.
 *
 *   w = h_c (W_s(T) - W_a)/(c_a Le^(2/3))
 *
 * Symbols  w evaporation [kg/(m2 s)], h_c film by convection alone [W/(m2 K)], W_s humidity ratio of saturated air at
 *          the water's temperature T [1], W_a of the air [1], c_a specific heat of air, 1006 [J/(kg K)], Le Lewis number, 0.865 [1]
 * Valid    slow evaporation; negative where the water is colder than the dew point
 * Source   Incropera, analogy of heat and mass transfer
 * Throws   RangeError where the film is negative
 */
export function evaporation(given: {
  readonly water_C: number
  readonly vapour_Pa: number
  readonly pressure_Pa: number
  readonly convection_W_m2_K: number
}): number {
  const { water_C, vapour_Pa, pressure_Pa, convection_W_m2_K: h } = given
  if (!(h >= 0)) throw new RangeError(`evaporation: h_c = ${h} is negative`)
  const saturated = humidityRatio({ vapour_Pa: saturationPressure({ temperature_C: water_C }), pressure_Pa })
  return (h * (saturated - humidityRatio({ vapour_Pa, pressure_Pa }))) / (1006 * 0.865 ** (2 / 3))
}

/**
 * Conductance from the bottom of a tank into the ground under it, in the long run.
 *
 *   G = 2 k D
 *
 * Symbols  G conductance [W/K], k conduction of the ground [W/(m K)], D diameter of the bottom, or of a disc of equal area [m]
 * Valid    disc of one temperature on deep, even ground
 * Source   Incropera, conduction shape factor of a disc on a half space
 * Throws   RangeError where a size is not positive
 */
export function groundConductance(given: { readonly conductivity_W_m_K: number; readonly bottom_m: number }): number {
  const { conductivity_W_m_K: k, bottom_m: D } = given
  if (!(k > 0 && D > 0)) throw new RangeError(`groundConductance: k = ${k}, D = ${D} must be positive`)
  return 2 * k * D
}

/**
 * Conductance from a tank sunk upright into the ground, in the long run.
 *
 *   G = 2 π k z/ln(4 z/D)
 *
 * Symbols  G conductance [W/K], k conduction of the ground [W/(m K)], z depth of burial [m], D diameter [m]
 * Valid    z well above D; below z = D use no more than the sum of bottom and wall
 * Source   Incropera, conduction shape factor of a vertical cylinder in a half space
 * Throws   RangeError where 4 z is not above D or a size is not positive
 */
export function buriedConductance(given: {
  readonly conductivity_W_m_K: number
  readonly depth_m: number
  readonly diameter_m: number
}): number {
  const { conductivity_W_m_K: k, depth_m: z, diameter_m: D } = given
  if (!(k > 0 && D > 0 && 4 * z > D)) throw new RangeError(`buriedConductance: k = ${k}, z = ${z}, D = ${D}`)
  return (2 * Math.PI * k * z) / Math.log((4 * z) / D)
}

/**
 * Conductance between the tank and the air round the column, by way of the water that runs down it.
 *
 *   G = w c (1 - e^(-UA/(w c)))
 *
 * Symbols  G conductance [W/K], w flow [kg/s], c specific heat [J/(kg K)], UA conductance of the column's wall [W/K]
 * Valid    water passes the column once and returns to the tank
 * Source   Incropera, effectiveness of an exchanger with one stream at constant temperature
 * Throws   RangeError where the flow or the conductance is negative
 */
export function streamConductance(given: { readonly flow_kg_s: number; readonly wall_W_K: number }): number {
  const { flow_kg_s: w, wall_W_K: UA } = given
  if (!(w >= 0 && UA >= 0)) throw new RangeError(`streamConductance: w = ${w}, UA = ${UA}`)
  if (w === 0) return 0
  const wc = w * water.specificHeat_J_kg_K
  return -wc * Math.expm1(-UA / wc)
}
