import { bodies } from '../../tables/heat.ts'

const { water, ice } = bodies.rows

/**
 * Temperature of stirred water after a time under constant conditions.
 *
 *   T = T∞ + (T0 - T∞) e^(-t/τ), T∞ = T_a + q/UA, τ = m c/UA
 *
 * Symbols  T temperature [°C], T0 at the start, T∞ in the end [°C], t time [s], τ time constant [s], m mass [kg],
 *          c specific heat [J/(kg K)], UA conductance [W/K], T_a surroundings [°C], q heat put in [W]
 * Valid    well stirred, as a pumped tank is
 * Source   derived.heat-balance, exact solution
 * Throws   RangeError where volume or conductance is not positive
 */
export function relaxedTemperature(given: {
  readonly start_C: number
  readonly surroundings_C: number
  readonly conductance_W_K: number
  readonly heat_W: number
  readonly volume_m3: number
  readonly time_s: number
}): number {
  const { start_C: T0, surroundings_C: Ta, conductance_W_K: UA, heat_W: q, volume_m3: V, time_s: t } = given
  if (!(V > 0 && UA > 0)) throw new RangeError(`relaxedTemperature: V = ${V}, UA = ${UA} must be positive`)
  const end = Ta + q / UA
  return end + (T0 - end) * Math.exp((-t * UA) / heatCapacity({ volume_m3: V }))
}

/**
 * Time in which stirred water comes to a temperature under constant conditions.
 *
 *   t = τ ln[(T0 - T∞)/(T - T∞)], null where T is never reached
 *
 * Symbols  t time [s], τ = m c/UA time constant [s], T0 temperature at the start, T wanted, T∞ = T_a + q/UA in the end [°C]
 * Valid    well stirred; above freezing
 * Source   derived.heat-balance, exact solution
 * Throws   RangeError where volume or conductance is not positive
 */
export function relaxationTime(given: {
  readonly start_C: number
  readonly wanted_C: number
  readonly surroundings_C: number
  readonly conductance_W_K: number
  readonly heat_W: number
  readonly volume_m3: number
}): number | null {
  const { start_C: T0, wanted_C: T, surroundings_C: Ta, conductance_W_K: UA, heat_W: q, volume_m3: V } = given
  if (!(V > 0 && UA > 0)) throw new RangeError(`relaxationTime: V = ${V}, UA = ${UA} must be positive`)
  if (T === T0) return 0
  const end = Ta + q / UA
  const share = (T0 - end) / (T - end)
  return share > 1 ? (heatCapacity({ volume_m3: V }) / UA) * Math.log(share) : null
}

/**
 * Heat that holds the solution at a temperature in the long run.
 *
 *   q = UA (T - T_a) - q_0, 0 where none is needed
 *
 * Symbols  q heater [W], UA conductance [W/K], T wanted and T_a surroundings [°C], q_0 heat that is there anyway [W]
 * Valid    steady state; no spare for warming up
 * Source   derived.heat-balance, steady balance
 * Throws   RangeError where the conductance is negative
 */
export function heaterPower(given: {
  readonly conductance_W_K: number
  readonly wanted_C: number
  readonly surroundings_C: number
  readonly present_W: number
}): number {
  const { conductance_W_K: UA, wanted_C: T, surroundings_C: Ta, present_W: q0 } = given
  if (!(UA >= 0)) throw new RangeError(`heaterPower: UA = ${UA} is negative`)
  return Math.max(0, UA * (T - Ta) - q0)
}

/**
 * Heat that warms the solution by one kelvin.
 *
 *   C = ρ V c
 *
 * Symbols  C heat capacity [J/K], ρ density [kg/m3], V volume [m3], c specific heat [J/(kg K)]
 * Valid    10 to 35 °C, dilute solution
 * Source   IAPWS.R6-95, density and specific heat at 20 °C
 * Throws   RangeError where the volume is not positive
 */
export function heatCapacity(given: { readonly volume_m3: number }): number {
  const { volume_m3: V } = given
  if (!(V > 0)) throw new RangeError(`heatCapacity: V = ${V} must be positive`)
  return water.density_kg_m3 * V * water.specificHeat_J_kg_K
}

/** What ice takes up until it is water of the temperature of the solution, with the solution's warmth. */
interface Iced {
  readonly volume_m3: number
  readonly start_C: number
  readonly ice_kg: number
  readonly ice_C: number
}

/**
 * Temperature after frozen bottles have melted in the tank and come to the same temperature.
 *
 *   T = [m c T0 - m_i (L + c_i (0 - T_i))]/[(m + m_i) c]
 *
 * Symbols  T temperature [°C], m mass and T0 temperature of the solution, m_i mass and T_i temperature of the ice, L heat
 *          of melting [J/kg], c and c_i specific heats of water and ice [J/(kg K)]
 * Valid    all ice melts: 0 °C where it does not
 * Source   derived.heat-balance, mixing of water and ice
 * Throws   RangeError where a mass is negative or the ice is above freezing
 */
export function icedTemperature(given: Iced): number {
  const { volume_m3: V, start_C: T0, ice_kg: mi, ice_C: Ti } = given
  if (!(mi >= 0 && Ti <= 0)) throw new RangeError(`icedTemperature: m_i = ${mi}, T_i = ${Ti}`)
  const C = heatCapacity({ volume_m3: V })
  const taken = mi * (ice.melting_J_kg - ice.specificHeat_J_kg_K * Ti)
  return Math.max(0, (C * T0 - taken) / (C + mi * water.specificHeat_J_kg_K))
}

/**
 * Ice that brings the solution to a temperature.
 *
 *   m_i = m c (T0 - T)/[L + c_i (0 - T_i) + c T]
 *
 * Symbols  m_i ice [kg], m mass of the solution [kg], T0 and T temperatures before and after [°C], T_i temperature of the
 *          ice [°C], L heat of melting [J/kg], c and c_i specific heats of water and ice [J/(kg K)]
 * Valid    T above 0 °C
 * Source   derived.heat-balance, mixing of water and ice
 * Throws   RangeError where the wanted temperature is above the present or below freezing
 */
export function iceNeeded(given: {
  readonly volume_m3: number
  readonly start_C: number
  readonly wanted_C: number
  readonly ice_C: number
}): number {
  const { volume_m3: V, start_C: T0, wanted_C: T, ice_C: Ti } = given
  if (!(T <= T0 && T >= 0 && Ti <= 0)) throw new RangeError(`iceNeeded: T0 = ${T0}, T = ${T}, T_i = ${Ti}`)
  const perMass = ice.melting_J_kg - ice.specificHeat_J_kg_K * Ti + water.specificHeat_J_kg_K * T
  return (heatCapacity({ volume_m3: V }) * (T0 - T)) / perMass
}
