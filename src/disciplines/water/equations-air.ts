import { root } from '../../kernel/solve.ts'
import { SEA_LEVEL_Pa, ZERO_CELSIUS_K } from '../../tables/constants.ts'

/**
 * Pressure of the air at a height above the sea, standard atmosphere.
 *
 *   P = 101325 (1 - 2.25577e-5 z)^5.2559
 *
 * Symbols  P pressure [Pa], z altitude [m]
 * Valid    -500 ≤ z ≤ 11 000
 * Source   ASHRAE.F2017.1, equation 3
 * Throws   RangeError where z lies outside of -500 to 11 000
 */
export function standardPressure(given: { readonly altitude_m: number }): number {
  const { altitude_m: z } = given
  if (!(z >= -500 && z <= 11_000)) throw new RangeError(`standardPressure: z = ${z} lies outside of -500 to 11000`)
  return SEA_LEVEL_Pa * (1 - 2.25577e-5 * z) ** 5.2559
}

/**
 * Vapour pressure over water, or over ice below the triple point, when the air can hold no more.
 *
 *   ln p = C8/T + C9 + C10 T + C11 T² + C12 T³ + C13 ln T           (water)
 *   ln p = C1/T + C2 + C3 T + C4 T² + C5 T³ + C6 T⁴ + C7 ln T        (ice)
 *
 * Symbols  p saturation pressure [Pa], T absolute temperature [K], C1 to C13 fitted numbers
 * Valid    -100 to 200 °C
 * Source   ASHRAE.F2017.1, equations 5 and 6 (Hyland and Wexler 1983)
 * Throws   RangeError where the temperature lies outside of the range
 */
export function saturationPressure(given: { readonly temperature_C: number }): number {
  const { temperature_C: t } = given
  if (!(t >= -100 && t <= 200)) throw new RangeError(`saturationPressure: t = ${t} lies outside of -100 to 200`)
  const T = t + ZERO_CELSIUS_K
  const ice = t <= 0.01
  return Math.exp(
    ice
      ? -5.6745359e3 / T +
          6.3925247 +
          T * (-9.677843e-3 + T * (6.2215701e-7 + T * (2.0747825e-9 - 9.484024e-13 * T))) +
          4.1635019 * Math.log(T)
      : -5.8002206e3 / T +
          1.3914993 +
          T * (-4.8640239e-2 + T * (4.1764768e-5 - 1.4452093e-8 * T)) +
          6.5459673 * Math.log(T),
  )
}

/**
 * Temperature at which air with a vapour pressure begins to drip.
 *
 *   p_s(t_d) = p_w
 *
 * Symbols  t_d dew point [°C], p_w vapour pressure [Pa], p_s saturation pressure [Pa]
 * Valid    -60 to 100 °C
 * Source   ASHRAE.F2017.1, dew point as the inverse of the saturation pressure
 * Throws   RangeError where the vapour pressure belongs to no dew point in the range
 */
export function dewPoint(given: { readonly vapour_Pa: number }): number {
  const { vapour_Pa: p } = given
  const of = (t: number) => Math.log(saturationPressure({ temperature_C: t }) / p)
  if (!(p > 0 && of(-60) <= 0 && of(100) >= 0)) throw new RangeError(`dewPoint: p_w = ${p} has no dew point`)
  return root({ of, low: -60, high: 100 })
}

/**
 * Water carried by a kilogram of dry air.
 *
 *   W = 0.621945 p_w/(P - p_w)
 *
 * Symbols  W humidity ratio [1], p_w vapour pressure [Pa], P pressure [Pa]
 * Valid    0 ≤ p_w < P
 * Source   ASHRAE.F2017.1, equation 20
 * Throws   RangeError where p_w is negative or not below P
 */
export function humidityRatio(given: { readonly vapour_Pa: number; readonly pressure_Pa: number }): number {
  const { vapour_Pa: p, pressure_Pa: P } = given
  if (!(p >= 0 && p < P)) throw new RangeError(`humidityRatio: p_w = ${p} is not between 0 and P = ${P}`)
  return (0.621945 * p) / (P - p)
}

/**
 * Heat content of moist air per kilogram of dry air, from 0 °C.
 *
 *   h = 1006 t + W (2 501 000 + 1860 t)
 *
 * Symbols  h enthalpy [J/kg], t temperature [°C], W humidity ratio [1]
 * Valid    0 to 60 °C; 0.3 % below the real-gas tables at saturation
 * Source   ASHRAE.F2017.1, equation 30
 * Throws   RangeError where W is negative
 */
export function moistAirEnthalpy(given: { readonly temperature_C: number; readonly humidityRatio: number }): number {
  const { temperature_C: t, humidityRatio: W } = given
  if (!(W >= 0)) throw new RangeError(`moistAirEnthalpy: W = ${W} is negative`)
  return 1006 * t + W * (2_501_000 + 1860 * t)
}

/**
 * Density of moist air.
 *
 *   v = 287.042 T (1 + 1.607858 W)/P, ρ = (1 + W)/v
 *
 * Symbols  ρ density [kg/m3], v volume per dry mass [m3/kg], T absolute temperature [K], W humidity ratio [1], P pressure [Pa]
 * Valid    0 to 60 °C
 * Source   ASHRAE.F2017.1, equations 26 and 11
 * Throws   RangeError where P is not positive or W is negative
 */
export function moistAirDensity(given: {
  readonly temperature_C: number
  readonly humidityRatio: number
  readonly pressure_Pa: number
}): number {
  const { temperature_C: t, humidityRatio: W, pressure_Pa: P } = given
  if (!(P > 0 && W >= 0)) throw new RangeError(`moistAirDensity: P = ${P}, W = ${W}`)
  return (1 + W) / ((287.042 * (t + ZERO_CELSIUS_K) * (1 + 1.607858 * W)) / P)
}

/**
 * Humidity ratio from a dry and a wet thermometer.
 *
 *   W = [(2501 - 2.326 t*) W_s* - 1.006 (t - t*)]/(2501 + 1.86 t - 4.186 t*)
 *
 * Symbols  W humidity ratio [1], t dry bulb [°C], t* wet bulb [°C], W_s* humidity ratio of saturated air at t* [1]
 * Valid    t* above freezing
 * Source   ASHRAE.F2017.1, equation 33
 * Throws   RangeError where the wet bulb is above the dry bulb
 */
export function humidityRatioOfWetBulb(given: {
  readonly temperature_C: number
  readonly wetBulb_C: number
  readonly pressure_Pa: number
}): number {
  const { temperature_C: t, wetBulb_C: w, pressure_Pa } = given
  if (!(w <= t)) throw new RangeError(`humidityRatioOfWetBulb: wet bulb ${w} is above dry bulb ${t}`)
  const saturated = humidityRatio({ vapour_Pa: saturationPressure({ temperature_C: w }), pressure_Pa })
  return ((2501 - 2.326 * w) * saturated - 1.006 * (t - w)) / (2501 + 1.86 * t - 4.186 * w)
}

/**
 * Temperature to which water falls by evaporating into the air: the coldest that shade and wind alone can make a tank.
 *
 *   W(t, t*) = W
 *
 * Symbols  t* wet bulb [°C], t dry bulb [°C], W humidity ratio [1]
 * Valid    0 to 60 °C, wet bulb above freezing
 * Source   ASHRAE.F2017.1, equation 33 solved for the wet bulb
 * Throws   RangeError where the relative humidity lies outside of 0 to 1
 */
export function wetBulb(given: {
  readonly temperature_C: number
  readonly relativeHumidity: number
  readonly pressure_Pa: number
}): number {
  const { temperature_C: t, relativeHumidity: r, pressure_Pa } = given
  if (!(r >= 0 && r <= 1)) throw new RangeError(`wetBulb: relative humidity ${r} lies outside of 0 to 1`)
  const W = humidityRatio({ vapour_Pa: r * saturationPressure({ temperature_C: t }), pressure_Pa })
  const of = (wetBulb_C: number) => humidityRatioOfWetBulb({ temperature_C: t, wetBulb_C, pressure_Pa }) - W
  return r === 1 ? t : root({ of, low: t - 45, high: t })
}

/**
 * Wet bulb at sea level without iteration, a second opinion.
 *
 *   t* = t atan(0.151977 sqrt(R + 8.313659)) + atan(t + R) - atan(R - 1.676331)
 *        + 0.00391838 R^1.5 atan(0.023101 R) - 4.686035
 *
 * Symbols  t* wet bulb [°C], t dry bulb [°C], R relative humidity in percent
 * Valid    sea level, 5 to 99 %, -20 to 50 °C; error -1 to +0.65 K
 * Source   Stull2011, equation 1
 * Throws   RangeError where the relative humidity lies outside of 0 to 1
 */
export function wetBulbStull2011(given: { readonly temperature_C: number; readonly relativeHumidity: number }): number {
  const { temperature_C: t, relativeHumidity } = given
  const R = 100 * relativeHumidity
  if (!(R >= 0 && R <= 100)) throw new RangeError(`wetBulbStull2011: R = ${R} lies outside of 0 to 100`)
  return (
    t * Math.atan(0.151977 * Math.sqrt(R + 8.313659)) +
    Math.atan(t + R) -
    Math.atan(R - 1.676331) +
    0.00391838 * R ** 1.5 * Math.atan(0.023101 * R) -
    4.686035
  )
}

/**
 * Vapour pressure that the air still lacks over a leaf, or over itself where leaf and air are equally warm.
 *
 *   D = p_s(t_leaf) - r p_s(t_air)
 *
 * Symbols  D vapour pressure deficit [Pa], p_s saturation pressure [Pa], r relative humidity [1]
 * Valid    0 to 60 °C; negative where dew settles on a cold leaf
 * Source   ASHRAE.F2017.1, difference of saturation and vapour pressure
 * Throws   RangeError where the relative humidity lies outside of 0 to 1
 */
export function vapourDeficit(given: {
  readonly air_C: number
  readonly leaf_C: number
  readonly relativeHumidity: number
}): number {
  const { air_C, leaf_C, relativeHumidity: r } = given
  if (!(r >= 0 && r <= 1)) throw new RangeError(`vapourDeficit: relative humidity ${r} lies outside of 0 to 1`)
  return saturationPressure({ temperature_C: leaf_C }) - r * saturationPressure({ temperature_C: air_C })
}
