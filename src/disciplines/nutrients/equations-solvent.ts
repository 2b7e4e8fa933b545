import { feedConstants, solvent } from '../../tables/solvent.ts'

const c = solvent.rows

/** Kelvin from °C; throws RangeError at and below absolute zero. */
export const kelvin = (temperature_C: number): number => {
  const T = temperature_C + feedConstants.rows.zeroCelsius.value
  if (!(T > 0)) throw new RangeError(`kelvin: temperature t is ${temperature_C} °C`)
  return T
}

/**
 * Relative permittivity of water.
 *
 *   ε = a + b T + c ln T + d / T
 *
 * Symbols  ε relative permittivity [1], T temperature [K]
 * Valid    0 to 100 °C at ordinary pressure
 * Source   USGS.permittivity
 * Throws   RangeError where the temperature is not above absolute zero
 */
export function permittivity(given: { readonly temperature_C: number }): number {
  const T = kelvin(given.temperature_C)
  return (
    c.permittivity0.value + c.permittivity1.value * T + c.permittivity2.value * Math.log(T) + c.permittivity3.value / T
  )
}

/**
 * Viscosity of water as the conductivity equation uses it.
 *
 *   log10(η/η20) = (20 - t)/(t + 96) [1.2364 - 0.00137 (20 - t) + 5.7e-6 (20 - t)²]
 *
 * Symbols  η viscosity [Pa s], t temperature [°C]
 * Valid    -8 to 150 °C
 * Source   Kestin1978
 * Throws   RangeError where the temperature is not above absolute zero
 */
export function solventViscosity(given: { readonly temperature_C: number }): number {
  kelvin(given.temperature_C)
  const t = given.temperature_C
  const d = 20 - t
  const power =
    (d / (t + c.viscosityPole.value)) * (c.viscosity0.value + c.viscosity1.value * d + c.viscosity2.value * d * d)
  return c.viscosity20.value * 10 ** power
}

/**
 * Density of air-free water.
 *
 *   ρ = (a0 + a1 t + a2 t² + a3 t³ + a4 t⁴ + a5 t⁵) / (1 + b t)
 *
 * Symbols  ρ density [kg/m³], t temperature [°C]
 * Valid    0 to 150 °C at ordinary pressure
 * Source   Kell1975
 * Throws   RangeError where the temperature is not above absolute zero
 */
export function solventDensity(given: { readonly temperature_C: number }): number {
  kelvin(given.temperature_C)
  const t = given.temperature_C
  const a = [c.density0, c.density1, c.density2, c.density3, c.density4, c.density5]
  return a.reduceRight((sum, row) => sum * t + row.value, 0) / (1 + c.densityBelow.value * t)
}

/**
 * Slope of the Debye-Hückel law.
 *
 *   A = 1.82483e6 √ρ / (ε T)^1.5
 *
 * Symbols  A slope [(kg/mol)^0.5], ρ density of water [kg/L], ε permittivity [1], T temperature [K]
 * Valid    0 to 100 °C
 * Source   Davies1938
 * Throws   RangeError where the temperature is not above absolute zero
 */
export function debyeSlope(given: { readonly temperature_C: number }): number {
  const ρ = solventDensity(given) / 1000
  const εT = permittivity(given) * kelvin(given.temperature_C)
  return (c.debyeSlope.value * Math.sqrt(ρ)) / εT ** 1.5
}

/**
 * Activity coefficient of an ion.
 *
 *   log10 γ = -A z² [ √I/(1 + √I) - 0.2 I ]
 *
 * Symbols  γ activity coefficient [1], A Debye-Hückel slope, z charge number, I ionic strength [mol/kg]
 * Valid    I up to 0.1 mol/kg; an order of magnitude beyond 0.5
 * Source   Davies1938, with the first value 0.2 of the linear term
 * Throws   RangeError where the ionic strength is negative
 * Why      0.3, his second value, puts the phosphate buffers 0.014 pH too high
 */
export function activityCoefficient(given: {
  readonly charge: number
  readonly ionicStrength_mol_m3: number
  readonly slope: number
}): number {
  const { charge: z, slope: A } = given
  const I = given.ionicStrength_mol_m3 / 1000
  if (!(I >= 0)) throw new RangeError(`activityCoefficient: ionic strength I is ${I} mol/kg`)
  const s = Math.sqrt(I)
  return 10 ** (-A * z * z * (s / (1 + s) - c.daviesLinear.value * I))
}
