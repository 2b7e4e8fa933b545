/** Liquid water at 0.1 MPa. Nutrient solution differs by less than 0.5 % in all four. */

const KELVIN = 273.15

/** Range over which the equations of this file are fitted or checked; `checks` judge what leaves it. */
export const WATER_VALID = { min_C: 0, max_C: 40 } as const

function liquid(at: string, temperature_C: number): number {
  if (!(temperature_C > -20 && temperature_C < 110))
    throw new RangeError(`${at}: temperature_C = ${temperature_C} is no liquid water`)
  return temperature_C
}

/**
 * Density of water at atmospheric pressure.
 *
 *   ρ = (999.83952 + 16.945176 t − 7.9870401e-3 t² − 46.170461e-6 t³ + 105.56302e-9 t⁴ − 280.54253e-12 t⁵)
 *       / (1 + 16.879850e-3 t)
 *
 * Symbols  ρ density [kg/m³], t temperature [°C]
 * Valid    0 °C ≤ t ≤ 40 °C, within 0.005 kg/m³ of IAPWS R6-95
 * Source   Kell1975, density at one atmosphere
 * Throws   RangeError where t is no liquid water
 */
export function waterDensity(given: { readonly temperature_C: number }): number {
  const t = liquid('waterDensity', given.temperature_C)
  const above =
    999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 + t * -280.54253e-12))))
  return above / (1 + 16.87985e-3 * t)
}

/**
 * Dynamic viscosity of water at 0.1 MPa.
 *
 *   μ = (280.68 x^−1.9 + 511.45 x^−7.7 + 61.131 x^−19.6 + 0.45903 x^−40) µPa s, x = T/300
 *
 * Symbols  μ dynamic viscosity [Pa s], T absolute temperature [K]
 * Valid    253 K ≤ T ≤ 383 K at 0.1 MPa
 * Source   IAPWS.SR6-08, viscosity equation
 * Throws   RangeError where T is no liquid water
 */
export function waterViscosity(given: { readonly temperature_C: number }): number {
  const x = (liquid('waterViscosity', given.temperature_C) + KELVIN) / 300
  return 1e-6 * (280.68 * x ** -1.9 + 511.45 * x ** -7.7 + 61.131 * x ** -19.6 + 0.45903 * x ** -40)
}

/**
 * Kinematic viscosity of water at 0.1 MPa.
 *
 *   ν = μ/ρ
 *
 * Symbols  ν kinematic viscosity [m²/s], μ dynamic viscosity [Pa s], ρ density [kg/m³]
 * Valid    0 °C ≤ t ≤ 40 °C
 * Source   IAPWS.SR6-08, viscosity equation over the density of Kell 1975
 * Throws   RangeError where t is no liquid water
 */
export function waterKinematicViscosity(given: { readonly temperature_C: number }): number {
  return waterViscosity(given) / waterDensity(given)
}

/**
 * Surface tension of water against air.
 *
 *   σ = 0.2358 τ^1.256 (1 − 0.625 τ), τ = 1 − T/647.096
 *
 * Symbols  σ surface tension [N/m], T absolute temperature [K]
 * Valid    triple point to critical point; clean water, a trace of soap halves it
 * Source   IAPWS.R1-76, interpolating equation
 * Throws   RangeError where T is no liquid water
 */
export function surfaceTension(given: { readonly temperature_C: number }): number {
  const τ = 1 - (liquid('surfaceTension', given.temperature_C) + KELVIN) / 647.096
  return 0.2358 * τ ** 1.256 * (1 - 0.625 * τ)
}

/**
 * Vapour pressure of water at saturation.
 *
 *   p = [2C/(−B + √(B² − 4AC))]⁴ MPa, ϑ = T + n9/(T − n10),
 *   A = ϑ² + n1 ϑ + n2, B = n3 ϑ² + n4 ϑ + n5, C = n6 ϑ² + n7 ϑ + n8
 *
 * Symbols  p saturation pressure [Pa], T absolute temperature [K], n1 to n10 coefficients of the release
 * Valid    273.15 K ≤ T ≤ 647.096 K
 * Source   IAPWS.R7-97, equation 30
 * Throws   RangeError where T is no liquid water
 */
export function vapourPressure(given: { readonly temperature_C: number }): number {
  const T = liquid('vapourPressure', given.temperature_C) + KELVIN
  const ϑ = T - 0.23855557567849 / (T - 650.17534844798)
  const A = ϑ * ϑ + 1167.0521452767 * ϑ - 724213.16703206
  const B = -17.073846940092 * ϑ * ϑ + 12020.82470247 * ϑ - 3232555.0322333
  const C = 14.91510861353 * ϑ * ϑ - 4823.2657361591 * ϑ + 405113.40542057
  return 1e6 * ((2 * C) / (-B + Math.sqrt(B * B - 4 * A * C))) ** 4
}

/** What the water of a plan is at one temperature. */
export interface Water {
  readonly density_kg_m3: number
  readonly viscosity_Pa_s: number
  readonly viscosity_m2_s: number
  readonly tension_N_m: number
}

/**
 * The four properties of water that the path needs, at one temperature.
 *
 *   ρ(t), μ(t), ν = μ/ρ, σ(t)
 *
 * Symbols  ρ density [kg/m³], μ, ν viscosities [Pa s, m²/s], σ surface tension [N/m], t temperature [°C]
 * Valid    0 °C ≤ t ≤ 40 °C
 * Source   IAPWS.SR6-08, with Kell 1975 and IAPWS R1-76
 * Throws   RangeError where t is no liquid water
 */
export function water(given: { readonly temperature_C: number }): Water {
  const density_kg_m3 = waterDensity(given)
  const viscosity_Pa_s = waterViscosity(given)
  return {
    density_kg_m3,
    viscosity_Pa_s,
    viscosity_m2_s: viscosity_Pa_s / density_kg_m3,
    tension_N_m: surfaceTension(given),
  }
}
