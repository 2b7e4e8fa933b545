import { piecewiseLinear } from '../../kernel/interpolate.ts'
import { roundPipeForce } from '../../tables/wind.ts'

/**
 * Pressure of a gust.
 *
 *   q = ρ v²/2
 *
 * Symbols  q dynamic pressure [Pa], ρ density of air [kg/m3], v speed of the gust where the tower stands [m/s]
 * Valid    speeds well below that of sound
 * Source   White.FluidMechanics, dynamic pressure
 * Throws   RangeError where density or speed is negative
 */
export function gustPressure(given: { readonly air_kg_m3: number; readonly wind_m_s: number }): number {
  const { air_kg_m3: ρ, wind_m_s: v } = given
  if (!(ρ >= 0 && v >= 0)) throw new RangeError(`gustPressure: ρ = ${ρ}, v = ${v}`)
  return (ρ * v * v) / 2
}

/**
 * Pressure near the ground of a gust that the weather service names for open country.
 *
 *   q = 0.613 Kz Kzt Kd V²
 *
 * Symbols  q velocity pressure [Pa], V 3-second gust at 10 m over open country [m/s], Kz share near the ground [1],
 *          Kzt speed-up over hills and roof edges [1], Kd directionality [1]
 * Valid    Kz of the table below 4.6 m; a balcony high up needs a measured gust
 * Source   ASCE.7, velocity pressure in SI units
 * Throws   RangeError where a symbol is negative
 */
export function velocityPressure(given: {
  readonly gust_m_s: number
  readonly exposure: number
  readonly topography: number
  readonly directionality: number
}): number {
  const { gust_m_s: V, exposure: Kz, topography: Kzt, directionality: Kd } = given
  if (!(V >= 0 && Kz >= 0 && Kzt >= 0 && Kd >= 0))
    throw new RangeError(`velocityPressure: V = ${V}, Kz = ${Kz}, Kzt = ${Kzt}, Kd = ${Kd}`)
  return 0.613 * Kz * Kzt * Kd * V * V
}

const { rows } = roundPipeForce
const stack = piecewiseLinear({
  x: Object.values(rows).map((row) => row.slenderness),
  y: Object.values(rows).map((row) => row.forceCoefficient),
})

/**
 * Force coefficient of an upright round pipe.
 *
 *   Cf by h/D, straight lines between 0.7 at 1, 0.8 at 7 and 1.2 at 25
 *
 * Symbols  Cf force coefficient [1], h height [m], D outside diameter [m]
 * Valid    D sqrt(q) ≤ 5.3 (m, Pa), which each growing column keeps
 * Source   ASCE.7, figure 29.4-1, round
 * Throws   RangeError where a size is not positive
 */
export function roundForceCoefficient(given: { readonly height_m: number; readonly outside_m: number }): number {
  const { height_m: h, outside_m: D } = given
  if (!(h > 0 && D > 0)) throw new RangeError(`roundForceCoefficient: h = ${h}, D = ${D} must be positive`)
  return stack(h / D)
}

/**
 * Force of the wind on a body.
 *
 *   F = q G C A
 *
 * Symbols  F force [N], q pressure [Pa], G gust factor [1], C force or drag coefficient [1], A area seen by the wind [m2]
 * Valid    stiff body; G 1 where the pressure is that of the gust itself
 * Source   ASCE.7, force on other structures
 * Throws   RangeError where a symbol is negative
 */
export function windForce(given: {
  readonly pressure_Pa: number
  readonly gustFactor: number
  readonly coefficient: number
  readonly area_m2: number
}): number {
  const { pressure_Pa: q, gustFactor: G, coefficient: C, area_m2: A } = given
  if (!(q >= 0 && G >= 0 && C >= 0 && A >= 0)) throw new RangeError(`windForce: q = ${q}, G = ${G}, C = ${C}, A = ${A}`)
  return q * G * C * A
}

/**
 * Wind that brings the righting ratio down to one.
 *
 *   v_1 = v sqrt(n)
 *
 * Symbols  v_1 wind at which the tower tips [m/s], v wind at which the ratio is n [m/s], n righting over overturning moment [1]
 * Valid    wind is all that overturns; coefficients do not change with speed
 * Source   derived.moments, force as the square of the speed
 * Throws   RangeError where wind or ratio is negative
 */
export function tippingWind(given: { readonly wind_m_s: number; readonly ratio: number }): number {
  const { wind_m_s: v, ratio: n } = given
  if (!(v >= 0 && n >= 0)) throw new RangeError(`tippingWind: v = ${v}, n = ${n}`)
  return v * Math.sqrt(n)
}
