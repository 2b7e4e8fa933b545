import { STANDARD_GRAVITY } from '../../tables/hydraulic-constants.ts'
import { notNegative, positive } from './possible.ts'

/** Bore at which Unwin's fit was made, and heads of the printed values. */
export const ORIFICE_FIT_VALID = { boreMin_m: 0.0254, boreMax_m: 0.0762 } as const

/** Weber numbers of a jet at the hole: below the first it drips, from the second on it is sure to run as a jet. */
export const JET_CLASS = { dripsBelow: 4, jetsFrom: 8 } as const

/**
 * Flow through equal round holes under a head.
 *
 *   Q = n Cd (π/4) d² √(2 g h)
 *
 * Symbols  Q flow [m³/s], n number of holes [1], Cd discharge coefficient [1], d bore of a hole [m], h head [m]
 * Valid    Re of the hole above about 1000; below it Cd falls
 * Source   Torricelli
 * Throws   RangeError where d or Cd is not positive, or n or h negative
 */
export function orificeFlow(given: {
  readonly count: number
  readonly discharge: number
  readonly hole_m: number
  readonly head_m: number
}): number {
  const { count: n, discharge: Cd, hole_m: d, head_m: h } = given
  positive('orificeFlow', { Cd, d })
  notNegative('orificeFlow', { n, h })
  return n * Cd * (Math.PI / 4) * d * d * Math.sqrt(2 * STANDARD_GRAVITY * h)
}

/**
 * Head over equal round holes that pass a flow.
 *
 *   h = (Q/(n Cd (π/4) d²))²/(2 g)
 *
 * Symbols  h head [m], Q flow [m³/s], n number of holes [1], Cd discharge coefficient [1], d bore of a hole [m]
 * Valid    as `orificeFlow`
 * Source   Torricelli
 * Throws   RangeError where n, d or Cd is not positive, or Q negative
 */
export function orificeHead(given: {
  readonly flow_m3_s: number
  readonly count: number
  readonly discharge: number
  readonly hole_m: number
}): number {
  const { flow_m3_s: Q, count: n, discharge: Cd, hole_m: d } = given
  positive('orificeHead', { n, Cd, d })
  notNegative('orificeHead', { Q })
  return (Q / (n * Cd * (Math.PI / 4) * d * d)) ** 2 / (2 * STANDARD_GRAVITY)
}

/**
 * Time in which a pool empties through its holes.
 *
 *   t = (A/(Cd a)) √(2 h/g), a = n (π/4) d²
 *
 * Symbols  t time [s], A area of the pool [m²], h depth at the start [m], n number of holes [1], Cd discharge coefficient
 *          [1], d bore of a hole [m]
 * Valid    upright walls; the last drops hang on below the start head of the holes
 * Source   Torricelli, integrated over the falling head
 * Throws   RangeError where A, n, d or Cd is not positive, or h negative
 */
export function poolDrainTime(given: {
  readonly area_m2: number
  readonly depth_m: number
  readonly count: number
  readonly discharge: number
  readonly hole_m: number
}): number {
  const { area_m2: A, depth_m: h, count: n, discharge: Cd, hole_m: d } = given
  positive('poolDrainTime', { A, n, Cd, d })
  notNegative('poolDrainTime', { h })
  return (A / (Cd * n * (Math.PI / 4) * d * d)) * Math.sqrt((2 * h) / STANDARD_GRAVITY)
}

/**
 * Discharge coefficient of a sharp round hole by head and bore.
 *
 *   Cd = 0.6075 + 0.0098/√h − 0.0037 d, h in feet, d in inches
 *
 * Symbols  Cd discharge coefficient [1], h head [m], d bore [m]
 * Valid    25 mm ≤ d ≤ 76 mm; small holes lie outside, where Cd is seen to rise as hole and head shrink
 * Source   Britannica1911.hydraulics, Unwin's fit
 * Throws   RangeError where h or d is not positive
 */
export function sharpOrificeDischarge(given: { readonly hole_m: number; readonly head_m: number }): number {
  const { hole_m: d, head_m: h } = given
  positive('sharpOrificeDischarge', { d, h })
  return 0.6075 + 0.0098 / Math.sqrt(h / 0.3048) - (0.0037 * d) / 0.0254
}

/**
 * Head that pushes water out of a hole whose underside is dry.
 *
 *   h* = 4 σ/(ρ g d)
 *
 * Symbols  h* start head [m], σ surface tension [N/m], ρ density [kg/m³], d bore of the hole [m]
 * Valid    clean water on plastic; a start limit, not a stop limit: once wet, a hole may go on dripping below it
 * Source   Laplace.hole, hemispherical meniscus
 * Throws   RangeError where a symbol is not positive
 */
export function startHead(given: {
  readonly hole_m: number
  readonly tension_N_m: number
  readonly density_kg_m3: number
}): number {
  const { hole_m: d, tension_N_m: σ, density_kg_m3: ρ } = given
  positive('startHead', { d, σ, ρ })
  return (4 * σ) / (ρ * STANDARD_GRAVITY * d)
}

/**
 * Weber number of the water at a hole: its push against the grip of its surface.
 *
 *   We = ρ v² d/σ, v = √(2 g h)
 *
 * Symbols  We Weber number [1], ρ density [kg/m³], v speed [m/s], d bore [m], σ surface tension [N/m], h head [m]
 * Valid    speed after Torricelli; the start head is exactly We = 8
 * Source   Laplace.hole, from the same balance
 * Throws   RangeError where d, σ or ρ is not positive, or h negative
 */
export function holeWeber(given: {
  readonly hole_m: number
  readonly head_m: number
  readonly tension_N_m: number
  readonly density_kg_m3: number
}): number {
  const { hole_m: d, head_m: h, tension_N_m: σ, density_kg_m3: ρ } = given
  positive('holeWeber', { d, σ, ρ })
  notNegative('holeWeber', { h })
  return (ρ * 2 * STANDARD_GRAVITY * h * d) / σ
}

/**
 * How the water leaves a hole.
 *
 *   drips where We < 4, jets where We ≥ 8, either between
 *
 * Symbols  We Weber number of the hole [1]
 * Valid    dry underside at the start; the safe end is taken
 * Source   Laplace.hole, We = 8 is the start head; We = 4 is the usual rule for a jet, from memory
 * Throws   RangeError where We is negative
 */
export function jetRegime(given: { readonly weber: number }): 'drips' | 'either' | 'jets' {
  notNegative('jetRegime', { We: given.weber })
  if (given.weber < JET_CLASS.dripsBelow) return 'drips'
  return given.weber < JET_CLASS.jetsFrom ? 'either' : 'jets'
}

/**
 * Weber number at which drops from a tube that points down become a jet.
 *
 *   We = 4 [1 + K Bo² − √((1 + K Bo²)² − 1)]², Bo = √(ρ g d²/(2 σ)), K = 0.37, thin wall
 *
 * Symbols  We Weber number [1], Bo Bond number [1], ρ density [kg/m³], d bore [m], σ surface tension [N/m]
 * Valid    tube of 1 to 6 mm with inner and outer bore nearly equal, water in air
 * Source   ClanetLasheras1999, closed form from memory
 * Throws   RangeError where a symbol is not positive
 */
export function jettingWeber(given: {
  readonly hole_m: number
  readonly tension_N_m: number
  readonly density_kg_m3: number
}): number {
  const { hole_m: d, tension_N_m: σ, density_kg_m3: ρ } = given
  positive('jettingWeber', { d, σ, ρ })
  const x = 1 + (0.37 * ρ * STANDARD_GRAVITY * d * d) / (2 * σ)
  return 4 * (x - Math.sqrt(x * x - 1)) ** 2
}

/** Range of r/V^(1/3) in which the correction of the drop weight was fitted. */
export const DROP_FIT_VALID = { min: 0.3, max: 1.2 } as const

/**
 * Mass of a drop that would fall if all of its neck tore off.
 *
 *   m = π d σ/g
 *
 * Symbols  m mass [kg], d wetted diameter of the tip [m], σ surface tension [N/m]
 * Valid    slow dripping; the real drop is 60 to 75 % of it
 * Source   Senese.drop, worked example of Tate's law
 * Throws   RangeError where d or σ is not positive
 */
export function idealDropMass(given: { readonly tip_m: number; readonly tension_N_m: number }): number {
  const { tip_m: d, tension_N_m: σ } = given
  positive('idealDropMass', { d, σ })
  return (Math.PI * d * σ) / STANDARD_GRAVITY
}

/**
 * Volume of a drop that falls from a wetted tip.
 *
 *   V = f π d σ/(ρ g), f = 1/(2 π F), F = 0.14782 + 0.27896 x − 0.1662 x², x = (d/2)/V^(1/3)
 *
 * Symbols  V volume [m³], f share that falls [1], d wetted diameter [m], σ surface tension [N/m], ρ density [kg/m³]
 * Valid    0.3 < x < 1.2, tips of 2 mm and more; d is the wetted patch, on a flat plate wider than the hole
 * Source   Heertjes1971, fit of F
 * Throws   RangeError where a symbol is not positive
 */
export function dropVolume(given: {
  readonly tip_m: number
  readonly tension_N_m: number
  readonly density_kg_m3: number
}): number {
  const { tip_m, tension_N_m, density_kg_m3: ρ } = given
  positive('dropVolume', { ρ })
  const ideal = idealDropMass({ tip_m, tension_N_m }) / ρ
  let V = ideal
  // The share that falls depends weakly on V, so that repeating gains more than a digit each time.
  for (let step = 0; step < 40; step++) {
    const x = tip_m / 2 / Math.cbrt(V)
    V = ideal / (2 * Math.PI * (0.14782 + 0.27896 * x - 0.1662 * x * x))
  }
  return V
}
