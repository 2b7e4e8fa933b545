import { SEA_LEVEL_Pa, ZERO_CELSIUS_K } from '../../tables/constants.ts'
import { oxygenGas } from '../../tables/oxygen.ts'

/** Range of the fit; leaving it is a finding. */
export const OXYGEN_SOLUBILITY_VALID = { temperature_C: { min: 0, max: 40 }, salinity: { min: 0, max: 40 } } as const

/**
 * Oxygen that water holds under moist air at sea level.
 *
 *   ln C* = -139.34411 + 1.575701e5/T - 6.642308e7/T² + 1.243800e10/T³ - 8.621949e11/T⁴
 *           - S (1.7674e-2 - 10.754/T + 2140.7/T²)
 *
 * Symbols  C* dissolved oxygen [g/m3 = mg/L], T absolute temperature [K], S practical salinity [1]
 * Valid    0 to 40 °C, S 0 to 40
 * Source   BensonKrause1984, equation for mg/L
 * Throws   RangeError where S is negative or the temperature lies outside of -2 to 60 °C
 */
export function oxygenSolubility(given: { readonly temperature_C: number; readonly salinity: number }): number {
  const { temperature_C: t, salinity: S } = given
  if (!(t >= -2 && t <= 60)) throw new RangeError(`oxygenSolubility: t = ${t} is no temperature of a solution`)
  if (!(S >= 0)) throw new RangeError(`oxygenSolubility: S = ${S} is negative`)
  const T = t + ZERO_CELSIUS_K
  const fresh = -139.34411 + 1.575701e5 / T - 6.642308e7 / T ** 2 + 1.2438e10 / T ** 3 - 8.621949e11 / T ** 4
  return Math.exp(fresh - S * (1.7674e-2 - 10.754 / T + 2140.7 / T ** 2))
}

/**
 * Oxygen that water holds under moist air at any pressure: less on a mountain.
 *
 *   C = C* P (1 - p/P)(1 - θ P)/[(1 - p)(1 - θ)]
 *   p = exp(11.8571 - 3840.70/T - 216961/T²), θ = 0.000975 - 1.426e-5 t + 6.436e-8 t²
 *
 * Symbols  C dissolved oxygen [g/m3], C* same at 1 atm [g/m3], P pressure [atm], p vapour pressure [atm],
 *          θ number of the non-ideal gas [1/atm], t temperature [°C], T absolute temperature [K]
 * Valid    0 to 40 °C, 0.5 to 1.1 atm
 * Source   BensonKrause1984, correction for pressure
 * Throws   RangeError where the pressure does not exceed that of the vapour
 */
export function oxygenSolubilityUnderPressure(given: {
  readonly temperature_C: number
  readonly salinity: number
  readonly pressure_Pa: number
}): number {
  const { temperature_C: t, salinity, pressure_Pa } = given
  const T = t + ZERO_CELSIUS_K
  const P = pressure_Pa / SEA_LEVEL_Pa
  const p = Math.exp(11.8571 - 3840.7 / T - 216961 / T ** 2)
  const θ = 0.000975 - 1.426e-5 * t + 6.436e-8 * t * t
  if (!(P > p)) throw new RangeError(`oxygenSolubilityUnderPressure: P = ${pressure_Pa} Pa is below vapour pressure`)
  return (oxygenSolubility({ temperature_C: t, salinity }) * P * (1 - p / P) * (1 - θ * P)) / ((1 - p) * (1 - θ))
}

/**
 * Salinity that stands for the dissolved salts, from conductivity. Nutrients are not sea salt; the effect on oxygen
 * stays below 1 % either way.
 *
 *   S = 5.572e-4 κ + 2.02e-9 κ²
 *
 * Symbols  S practical salinity [1], κ conductivity at 25 °C [µS/cm]
 * Valid    up to 5000 µS/cm
 * Source   USGS.conductivity-salinity, quadratic fit
 * Throws   RangeError where the conductivity is negative
 */
export function salinityOfConductivity(given: { readonly conductivity_S_m: number }): number {
  const κ = given.conductivity_S_m * 1e4
  if (!(κ >= 0)) throw new RangeError(`salinityOfConductivity: κ = ${κ} is negative`)
  return 5.572e-4 * κ + 2.02e-9 * κ * κ
}

/**
 * Transfer rate of a gas at the temperature of the water.
 *
 *   KLa = KLa20 1.024^(t - 20)
 *
 * Symbols  KLa transfer rate [1/s], KLa20 same at 20 °C [1/s], t temperature [°C]
 * Valid    5 to 35 °C
 * Source   ASCE.2-06, temperature correction
 * Throws   RangeError where the rate is negative
 */
export function transferRate(given: { readonly rate20_per_s: number; readonly temperature_C: number }): number {
  const { rate20_per_s: k, temperature_C: t } = given
  if (!(k >= 0)) throw new RangeError(`transferRate: KLa20 = ${k} is negative`)
  return k * 1.024 ** (t - 20)
}

/**
 * Oxygen in a stirred tank after a time.
 *
 *   C = C∞ + (C0 - C∞) e^(-KLa t), C∞ = C* - r/KLa
 *
 * Symbols  C dissolved oxygen [g/m3], C0 at the start, C* at saturation, C∞ in the end [g/m3], KLa transfer rate [1/s],
 *          r use [g/(m3 s)], t time [s]
 * Valid    well stirred, constant temperature and use; negative means that the use cannot be met
 * Source   derived.oxygen-balance, exact solution
 * Throws   RangeError where the transfer rate is not positive
 */
export function oxygenAfter(given: {
  readonly start_g_m3: number
  readonly saturation_g_m3: number
  readonly rate_per_s: number
  readonly use_g_m3_s: number
  readonly time_s: number
}): number {
  const { start_g_m3: C0, saturation_g_m3: Cs, rate_per_s: k, use_g_m3_s: r, time_s: t } = given
  if (!(k > 0)) throw new RangeError(`oxygenAfter: KLa = ${k} must be positive`)
  const end = Cs - r / k
  return end + (C0 - end) * Math.exp(-k * t)
}

/**
 * Oxygen that an aerator brings in clean water of 20 °C without oxygen: its rating.
 *
 *   SOTR = KLa20 C*20 V
 *
 * Symbols  SOTR standard oxygen transfer rate [kg/s], KLa20 transfer rate at 20 °C [1/s], C*20 saturation [g/m3], V volume [m3]
 * Valid    clean water
 * Source   ASCE.2-06, definition of the standard oxygen transfer rate
 * Throws   RangeError where a symbol is negative
 */
export function standardOxygenTransfer(given: {
  readonly rate20_per_s: number
  readonly saturation20_g_m3: number
  readonly volume_m3: number
}): number {
  const { rate20_per_s: k, saturation20_g_m3: C, volume_m3: V } = given
  if (!(k >= 0 && C >= 0 && V >= 0)) throw new RangeError(`standardOxygenTransfer: KLa20 = ${k}, C*20 = ${C}, V = ${V}`)
  return k * C * V * 1e-3
}

/**
 * Oxygen taken by roots.
 *
 *   r = m R 2^((t - 20)/d)
 *
 * Symbols  r oxygen [kg/s], m dry mass of roots [kg], R respiration at 20 °C, oxygen per dry mass and time [1/s],
 *          t temperature [°C], d rise that doubles it [K]
 * Valid    5 to 35 °C
 * Source   vanKeulen1982, doubling in 10 K
 * Throws   RangeError where mass or respiration is negative or the doubling not positive
 */
export function rootOxygenUse(given: {
  readonly dryRoot_kg: number
  readonly respiration_per_s: number
  readonly temperature_C: number
  readonly doubling_K: number
}): number {
  const { dryRoot_kg: m, respiration_per_s: R, temperature_C: t, doubling_K: d } = given
  if (!(m >= 0 && R >= 0 && d > 0)) throw new RangeError(`rootOxygenUse: m = ${m}, R = ${R}, d = ${d}`)
  return m * R * 2 ** ((t - 20) / d)
}

/**
 * Conductance of an air stone for oxygen: what it brings per missing concentration.
 *
 *   K = Q c η z/C*
 *
 * Symbols  K conductance [m3/s], Q air flow at 0 °C and 1 atm [m3/s], c oxygen in air [kg/m3], η share dissolved per
 *          metre [1/m], z depth of the stone [m], C* saturation [kg/m3]
 * Valid    η z well below 1
 * Source   ASCE.2-06, transfer efficiency is what dissolves over what is blown in, in water without oxygen
 * Throws   RangeError where more than all would dissolve
 */
export function airStoneConductance(given: {
  readonly air_m3_s: number
  readonly transfer_per_m: number
  readonly depth_m: number
  readonly saturation_g_m3: number
}): number {
  const { air_m3_s: Q, transfer_per_m: η, depth_m: z, saturation_g_m3: C } = given
  if (!(Q >= 0 && η * z >= 0 && η * z <= 1)) throw new RangeError(`airStoneConductance: Q = ${Q}, η z = ${η * z}`)
  return (Q * oxygenGas.rows.air.inAir_kg_m3 * η * z) / (C * 1e-3)
}

/**
 * Speed at which oxygen enters a falling film between two places that mix it.
 *
 *   k = 2 sqrt(D u/(π L))
 *
 * Symbols  k transfer velocity [m/s], D spread of oxygen in water [m2/s], u speed of the surface [m/s] (1.5 times the
 *          mean of a smooth film), L length of fall between mixings [m]
 * Valid    smooth film, short contact: sqrt(4 D L/u) below the film's thickness; ripples only help
 * Source   Higbie1935, penetration theory, with the surface speed of the film (BirdStewartLightfoot)
 * Throws   RangeError where a size is not positive
 */
export function filmTransferVelocity(given: {
  readonly diffusivity_m2_s: number
  readonly surface_m_s: number
  readonly fall_m: number
}): number {
  const { diffusivity_m2_s: D, surface_m_s: u, fall_m: L } = given
  if (!(D > 0 && u > 0 && L > 0)) throw new RangeError(`filmTransferVelocity: D = ${D}, u = ${u}, L = ${L}`)
  return 2 * Math.sqrt((D * u) / (Math.PI * L))
}

/**
 * Oxygen in the loop of tank and column, day in, day out.
 *
 *   N = k A/Q, C∞ = C* - r_c/(k A)
 *   C_end = C∞ + (C_tank - C∞) e^(-N)
 *   Q (C_end - C_tank) + K (C* - C_tank) - r_t = 0
 *
 * Symbols  C_tank and C_end dissolved oxygen in the tank and at the foot of the column [g/m3], C* saturation [g/m3],
 *          k transfer velocity of the film [m/s], A wetted area [m2], Q flow [m3/s], r_c use of the roots in the column
 *          [g/s], r_t use in the tank [g/s], K conductance of surface and air stone [m3/s]
 * Valid    film falls without mixing backwards; tank stirred; negative means that the use cannot be met
 * Source   derived.oxygen-balance, plug flow in the column, stirred tank
 * Throws   RangeError where flow or film exchange is not positive
 */
export function loopOxygen(given: {
  readonly saturation_g_m3: number
  readonly flow_m3_s: number
  readonly transfer_m_s: number
  readonly wetted_m2: number
  readonly columnUse_kg_s: number
  readonly tankUse_kg_s: number
  readonly tankConductance_m3_s: number
}): { readonly tank_g_m3: number; readonly columnEnd_g_m3: number; readonly supply_kg_s: number } {
  const { saturation_g_m3: Cs, flow_m3_s: Q, transfer_m_s: k, wetted_m2: A, tankConductance_m3_s: K } = given
  const [rc, rt] = [given.columnUse_kg_s * 1e3, given.tankUse_kg_s * 1e3]
  if (!(Q > 0 && k * A > 0 && K >= 0)) throw new RangeError(`loopOxygen: Q = ${Q}, k A = ${k * A}, K = ${K}`)
  const fresh = -Math.expm1((-k * A) / Q)
  const end = Cs - rc / (k * A)
  const tank = (Q * fresh * end + K * Cs - rt) / (Q * fresh + K)
  // What the loop could bring if the water had none: the most that roots can ask for.
  return { tank_g_m3: tank, columnEnd_g_m3: end + (tank - end) * (1 - fresh), supply_kg_s: (Q * fresh + K) * Cs * 1e-3 }
}
