import { STANDARD_GRAVITY } from '../../tables/hydraulic-constants.ts'
import { fallingWater } from '../../tables/hydraulic-orifices.ts'
import { notNegative, positive } from './possible.ts'

/**
 * Speed of a drop that has fallen a height from rest.
 *
 *   v = v_t √(1 − e^(−2 g y/v_t²)), v_t = √(4 ρ g d/(3 ρ_a C))
 *
 * Symbols  v speed [m/s], v_t settled speed [m/s], y fall [m], d diameter of the drop [m], ρ, ρ_a density of water and air
 *          [kg/m³], C drag coefficient [1]
 * Valid    drops of 2 to 5 mm in still air
 * Source   Torricelli, with quadratic drag; drag coefficient from memory
 * Throws   RangeError where d or ρ is not positive or y negative
 */
export function dropSpeed(given: {
  readonly fall_m: number
  readonly drop_m: number
  readonly density_kg_m3: number
}): number {
  const { fall_m: y, drop_m: d, density_kg_m3: ρ } = given
  positive('dropSpeed', { d, ρ })
  notNegative('dropSpeed', { y })
  const { airDensity, dropDrag } = fallingWater.rows
  const settledSquare = (4 * ρ * STANDARD_GRAVITY * d) / (3 * airDensity.value * dropDrag.value)
  return Math.sqrt(settledSquare * (1 - Math.exp((-2 * STANDARD_GRAVITY * y) / settledSquare)))
}

/**
 * Splash number of a drop on a wet or dry wall; above the limit in the table it throws droplets.
 *
 *   K = We^(1/2) Re^(1/4), We = ρ v² d/σ, Re = ρ v d/μ
 *
 * Symbols  K splash number [1], ρ density [kg/m³], v speed across the wall [m/s], d diameter [m], σ surface tension [N/m],
 *          μ dynamic viscosity [Pa s]
 * Valid    hard wall; leaves and roots give way and splash less
 * Source   Mundo1995, deposition or splash
 * Throws   RangeError where d, ρ, σ or μ is not positive or v negative
 */
export function splashNumber(given: {
  readonly speed_m_s: number
  readonly drop_m: number
  readonly density_kg_m3: number
  readonly tension_N_m: number
  readonly viscosity_Pa_s: number
}): number {
  const { speed_m_s: v, drop_m: d, density_kg_m3: ρ, tension_N_m: σ, viscosity_Pa_s: μ } = given
  positive('splashNumber', { d, ρ, σ, μ })
  notNegative('splashNumber', { v })
  return Math.sqrt((ρ * v * v * d) / σ) * ((ρ * v * d) / μ) ** 0.25
}

/**
 * How far aside a stream has come after a fall, from a hole that was drilled askew.
 *
 *   x = v sin ε t, t = (√(v² + 2 g y) − v)/g, v = c √(2 g h)
 *
 * Symbols  x way aside [m], v speed at the hole [m/s], c speed of a jet over that of Torricelli [1], h head over the hole
 *          [m], ε angle of the hole from the plumb [rad], y fall [m], t time of the fall [s]
 * Valid    ε of a few degrees, still air
 * Source   Torricelli, free fall
 * Throws   RangeError where h or y is negative
 */
export function streamDrift(given: {
  readonly head_m: number
  readonly speedShare: number
  readonly askew_rad: number
  readonly fall_m: number
}): number {
  const { head_m: h, speedShare: c, askew_rad: ε, fall_m: y } = given
  notNegative('streamDrift', { h, y })
  const v = c * Math.sqrt(2 * STANDARD_GRAVITY * h)
  const t = (Math.sqrt(v * v + 2 * STANDARD_GRAVITY * y) - v) / STANDARD_GRAVITY
  return v * Math.sin(ε) * t
}
