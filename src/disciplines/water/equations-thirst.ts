/** Megajoules per square metre and day, the unit of the source, per W/m2. */
const megajoulesDay = 86_400 / 1e6
/** Megajoules per square metre and hour per W/m2. */
const megajoulesHour = 3600 / 1e6

/**
 * Saturation vapour pressure as this source fits it (Tetens).
 *
 *   e = 0.6108 exp(17.27 T/(T + 237.3))
 *
 * Symbols  e vapour pressure [kPa, returned in Pa], T temperature [°C]
 * Valid    -40 to 50 °C
 * Source   Allen1998.FAO56, equation 11
 * Throws   RangeError where T is not above -237.3
 * Why      the worked examples of the source use this fit; `saturationPressure` differs by 0.05 %
 */
export function saturationPressureFAO56(given: { readonly temperature_C: number }): number {
  const T = given.temperature_C
  if (!(T > -237.3)) throw new RangeError(`saturationPressureFAO56: T = ${T} is below the pole of the fit`)
  return 610.8 * Math.exp((17.27 * T) / (T + 237.3))
}

/**
 * Rise of the saturation vapour pressure with temperature.
 *
 *   Δ = 4098 e/(T + 237.3)²
 *
 * Symbols  Δ slope [kPa/K, returned in Pa/K], e saturation vapour pressure [kPa], T temperature [°C]
 * Valid    -40 to 50 °C
 * Source   Allen1998.FAO56, equation 13
 * Throws   RangeError where T is not above -237.3
 */
export function saturationSlope(given: { readonly temperature_C: number }): number {
  return (4098 * saturationPressureFAO56(given)) / (given.temperature_C + 237.3) ** 2
}

/**
 * Pressure of the air at a height, as this source has it.
 *
 *   P = 101.3 ((293 - 0.0065 z)/293)^5.26
 *
 * Symbols  P pressure [kPa, returned in Pa], z altitude [m]
 * Valid    0 to 4000 m
 * Source   Allen1998.FAO56, equation 7
 * Throws   RangeError where z lies outside of -500 to 11 000
 */
export function pressureFAO56(given: { readonly altitude_m: number }): number {
  const z = given.altitude_m
  if (!(z >= -500 && z <= 11_000)) throw new RangeError(`pressureFAO56: z = ${z} lies outside of -500 to 11000`)
  return 101_300 * ((293 - 0.0065 * z) / 293) ** 5.26
}

/**
 * Psychrometric constant.
 *
 *   γ = 0.000665 P
 *
 * Symbols  γ psychrometric constant [kPa/K], P pressure [kPa]; pascal here in both
 * Valid    near 20 °C
 * Source   Allen1998.FAO56, equation 8
 * Throws   RangeError where P is not positive
 */
export function psychrometricConstant(given: { readonly pressure_Pa: number }): number {
  const P = given.pressure_Pa
  if (!(P > 0)) throw new RangeError(`psychrometricConstant: P = ${P} must be positive`)
  return 0.665e-3 * P
}

/**
 * Wind at 2 m from wind at another height over short grass.
 *
 *   u2 = uz 4.87/ln(67.8 z - 5.42)
 *
 * Symbols  u2 wind at 2 m [m/s], uz wind at z [m/s], z height [m]
 * Valid    z above 0.2 m, short grass
 * Source   Allen1998.FAO56, equation 47
 * Throws   RangeError where z is too low for the profile
 */
export function windAt2m(given: { readonly wind_m_s: number; readonly height_m: number }): number {
  const { wind_m_s: u, height_m: z } = given
  if (!(z > 0.2)) throw new RangeError(`windAt2m: z = ${z} is too low for the profile`)
  return (u * 4.87) / Math.log(67.8 * z - 5.42)
}

interface Thirst {
  readonly temperature_C: number
  readonly wind2m_m_s: number
  /** Mean saturation pressure less vapour pressure. */
  readonly deficit_Pa: number
  readonly netRadiation_W_m2: number
  readonly groundHeat_W_m2: number
  readonly pressure_Pa: number
}

/** The relation of the source for a period: `c` is 900 for a day, 37 for an hour; depth of water in mm. */
function penmanMonteith(given: Thirst, c: number, megajoules: number): number {
  const { temperature_C: T, wind2m_m_s: u2, deficit_Pa, netRadiation_W_m2: Rn, groundHeat_W_m2: G, pressure_Pa } = given
  if (!(u2 >= 0)) throw new RangeError(`referenceThirst: u2 = ${u2} is negative`)
  const Δ = saturationSlope({ temperature_C: T }) / 1000
  const γ = psychrometricConstant({ pressure_Pa }) / 1000
  const D = deficit_Pa / 1000
  return (0.408 * Δ * (Rn - G) * megajoules + γ * (c / (T + 273)) * u2 * D) / (Δ + γ * (1 + 0.34 * u2))
}

/**
 * Water that a short green cover gives to the air in a day.
 *
 *   ETo = [0.408 Δ (Rn - G) + γ 900/(T + 273) u2 (es - ea)]/[Δ + γ (1 + 0.34 u2)]
 *
 * Symbols  ETo water [mm/d = kg/(m2 d)], Δ slope [kPa/K], Rn net radiation and G heat into the ground [MJ/(m2 d)],
 *          γ psychrometric constant [kPa/K], T mean temperature [°C], u2 wind at 2 m [m/s], es - ea deficit [kPa]
 * Valid    cover of 0.12 m, well watered, mean of a day
 * Source   Allen1998.FAO56, equation 6
 * Throws   RangeError where wind or pressure is negative
 */
export function referenceThirst(given: Thirst): number {
  return penmanMonteith(given, 900, megajoulesDay)
}

/**
 * Water that a short green cover gives to the air in one hour.
 *
 *   ETo = [0.408 Δ (Rn - G) + γ 37/(T + 273) u2 (es - ea)]/[Δ + γ (1 + 0.34 u2)]
 *
 * Symbols  ETo water [mm/h = kg/m2 in the hour], Rn and G [MJ/(m2 h)], the others as in the relation for a day
 * Valid    cover of 0.12 m, well watered; G is 0.1 Rn by day and 0.5 Rn by night
 * Source   Allen1998.FAO56, equation 53
 * Throws   RangeError where wind or pressure is negative
 */
export function referenceThirstHour(given: Thirst): number {
  return penmanMonteith(given, 37, megajoulesHour)
}

/**
 * Water of a day from temperatures alone, where nothing else is known.
 *
 *   ETo = 0.0023 (Tm + 17.8) sqrt(Tx - Tn) Ra
 *
 * Symbols  ETo water [mm/d], Tm, Tx and Tn mean, highest and lowest temperature [°C], Ra sun above the air [mm/d]
 * Valid    to be checked against the fuller relation; off in wind and fog
 * Source   Allen1998.FAO56, equation 52
 * Throws   RangeError where the highest is below the lowest
 */
export function referenceThirstHargreaves(given: {
  readonly highest_C: number
  readonly lowest_C: number
  readonly sunAboveAir_W_m2: number
}): number {
  const { highest_C: Tx, lowest_C: Tn, sunAboveAir_W_m2 } = given
  if (!(Tx >= Tn)) throw new RangeError(`referenceThirstHargreaves: highest ${Tx} is below lowest ${Tn}`)
  return 0.0023 * ((Tx + Tn) / 2 + 17.8) * Math.sqrt(Tx - Tn) * 0.408 * sunAboveAir_W_m2 * megajoulesDay
}

/**
 * Water of one plant in a day.
 *
 *   q = Kc ETo A/ρ
 *
 * Symbols  q water [m3/d], Kc crop factor [1], ETo water of the reference cover [kg/(m2 d)], A area of leaves seen from
 *          the light [m2], ρ density of water, 1000 [kg/m3]
 * Valid    a plant in a column is lit and blown on from the side: Kc of the field is a lower end
 * Source   Allen1998.FAO56, equation 58
 * Throws   RangeError where factor, water or area is negative
 */
export function plantWater(given: {
  readonly cropFactor: number
  readonly reference_kg_m2_d: number
  readonly area_m2: number
}): number {
  const { cropFactor: K, reference_kg_m2_d: E, area_m2: A } = given
  if (!(K >= 0 && E >= 0 && A >= 0)) throw new RangeError(`plantWater: Kc = ${K}, ETo = ${E}, A = ${A}`)
  return (K * E * A) / 1000
}
