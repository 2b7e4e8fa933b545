import { STANDARD_GRAVITY } from '../../tables/hydraulic-constants.ts'
import { notNegative, positive } from './possible.ts'

/** Reynolds numbers between which the flow in a full tube is neither smooth nor fully turbulent. */
export const TRANSITION = { laminarBelow: 2000, turbulentAbove: 4000 } as const

/** Range in which the turbulent equation was fitted. */
export const TURBULENT_FRICTION_VALID = { reynoldsMin: 5e3, reynoldsMax: 1e8, roughRatioMin: 0, roughRatioMax: 0.05 }

/** Where friction is to be found. */
export interface FrictionPlace {
  readonly reynolds: number
  readonly roughness_m: number
  readonly bore_m: number
}

/**
 * Mean speed of the water in a full round tube.
 *
 *   v = 4 Q/(π D²)
 *
 * Symbols  v mean speed [m/s], Q flow [m³/s], D bore [m]
 * Valid    full tube
 * Source   Hydrostatics, continuity
 * Throws   RangeError where D is not positive
 */
export function pipeVelocity(given: { readonly flow_m3_s: number; readonly bore_m: number }): number {
  const { flow_m3_s: Q, bore_m: D } = given
  positive('pipeVelocity', { D })
  return (4 * Q) / (Math.PI * D * D)
}

/**
 * Reynolds number of the flow in a full round tube.
 *
 *   Re = v D/ν
 *
 * Symbols  Re Reynolds number [1], v mean speed [m/s], D bore [m], ν kinematic viscosity [m²/s]
 * Valid    full tube
 * Source   Maurer.Hydraulics, chapter 4
 * Throws   RangeError where D or ν is not positive
 */
export function reynoldsNumber(given: {
  readonly velocity_m_s: number
  readonly bore_m: number
  readonly viscosity_m2_s: number
}): number {
  const { velocity_m_s: v, bore_m: D, viscosity_m2_s: ν } = given
  positive('reynoldsNumber', { D, ν })
  return (v * D) / ν
}

/**
 * Friction factor of laminar flow in a full round tube.
 *
 *   f = 64/Re
 *
 * Symbols  f Darcy friction factor [1], Re Reynolds number [1]
 * Valid    Re ≤ 2000
 * Source   Maurer.Hydraulics, chapter 4
 * Throws   RangeError where Re is not positive
 */
export function laminarFriction(given: { readonly reynolds: number }): number {
  positive('laminarFriction', { Re: given.reynolds })
  return 64 / given.reynolds
}

/**
 * Friction factor of turbulent flow in a full tube, explicit in Re.
 *
 *   f = 0.25 / [log10(ε/(3.7 D) + 5.74/Re^0.9)]²
 *
 * Symbols  f Darcy friction factor [1], ε roughness [m], D bore [m], Re Reynolds number [1]
 * Valid    5e3 ≤ Re ≤ 1e8, ε/D ≤ 5e-2; within about 1.7 % of Colebrook from Re 4000 up
 * Source   SwameeJain1976, explicit friction equation
 * Throws   RangeError where Re or D is not positive, or ε is negative
 */
export function turbulentFriction(given: FrictionPlace): number {
  const { reynolds: Re, roughness_m: ε, bore_m: D } = given
  positive('turbulentFriction', { Re, D })
  notNegative('turbulentFriction', { ε })
  return 0.25 / Math.log10(ε / (3.7 * D) + 5.74 / Re ** 0.9) ** 2
}

/**
 * Friction factor between laminar and turbulent flow: the cubic that meets both with equal slope.
 *
 *   f = X1 + R (X2 + R (X3 + R X4)), R = Re/2000,
 *   X1 = 7 FA − FB, X2 = 0.128 − 17 FA + 2.5 FB, X3 = −0.128 + 13 FA − 2 FB, X4 = 0.032 − 3 FA + 0.5 FB,
 *   Y2 = ε/(3.7 D) + 5.74/4000^0.9, Y3 = −0.868589 ln Y2, FA = Y3^−2, FB = FA (2 − 0.00514215/(Y2 Y3))
 *
 * Symbols  f Darcy friction factor [1], ε roughness [m], D bore [m], Re Reynolds number [1]
 * Valid    2000 ≤ Re ≤ 4000, smooth to rough; real tubes scatter by up to 30 % here
 * Source   EPANET.2.3, hydcoeffs.c, cubic after Dunlop
 * Throws   RangeError where Re or D is not positive, or ε is negative
 */
export function transitionalFriction(given: FrictionPlace): number {
  const { reynolds: Re, roughness_m: ε, bore_m: D } = given
  positive('transitionalFriction', { Re, D })
  notNegative('transitionalFriction', { ε })
  const [X1, X2, X3, X4] = transitionCubic({ roughTerm: ε / (3.7 * D) })
  const R = Re / TRANSITION.laminarBelow
  return X1 + R * (X2 + R * (X3 + R * X4))
}

/**
 * Coefficients of the cubic of the transition, which depend on the roughness alone.
 *
 *   X1 to X4 as in `transitionalFriction`
 *
 * Symbols  roughTerm ε/(3.7 D) [1]
 * Valid    roughTerm ≥ 0
 * Source   EPANET.2.3, hydcoeffs.c
 * Throws   RangeError where the rough term is negative
 */
export function transitionCubic(given: { readonly roughTerm: number }): readonly [number, number, number, number] {
  notNegative('transitionCubic', { roughTerm: given.roughTerm })
  const Y2 = given.roughTerm + 5.74 / TRANSITION.turbulentAbove ** 0.9
  const Y3 = -0.868589 * Math.log(Y2)
  const FA = 1 / (Y3 * Y3)
  const FB = FA * (2 - 0.00514215 / (Y2 * Y3))
  return [7 * FA - FB, 0.128 - 17 * FA + 2.5 * FB, -0.128 + 13 * FA - 2 * FB, 0.032 - 3 * FA + 0.5 * FB]
}

/**
 * Friction factor of a full tube at any Reynolds number: the default of this discipline.
 *
 *   f = 64/Re below 2000, the cubic to 4000, the explicit turbulent equation above
 *
 * Symbols  f Darcy friction factor [1], Re Reynolds number [1], ε roughness [m], D bore [m]
 * Valid    Re ≤ 1e8, ε/D ≤ 5e-2
 * Source   SwameeJain1976, with the cubic of the transition and the laminar line
 * Throws   RangeError where Re or D is not positive, or ε is negative
 * Why      The three parts meet without a step, so that more head never gives less flow; exact Colebrook at 4000 would
 *          leave a step of 1.6 % in a smooth tube, and costs an iteration for a difference below 1 % beyond Re 6000.
 */
export function frictionFactor(given: FrictionPlace): number {
  const { reynolds: Re } = given
  if (Re <= TRANSITION.laminarBelow) return laminarFriction(given)
  return Re < TRANSITION.turbulentAbove ? transitionalFriction(given) : turbulentFriction(given)
}

/** Newton steps; five reach the last digit from the explicit equation as start. */
const COLEBROOK_STEPS = 8

/**
 * Friction factor of turbulent flow, implicit: the reference that the explicit one is measured by.
 *
 *   1/√f = −2 log10(ε/(3.7 D) + 2.51/(Re √f))
 *
 * Symbols  f Darcy friction factor [1], ε roughness [m], D bore [m], Re Reynolds number [1]
 * Valid    Re ≥ 4000
 * Source   Colebrook1939, implicit friction equation
 * Throws   RangeError where Re or D is not positive, or ε is negative
 */
export function colebrookFriction(given: FrictionPlace): number {
  const { reynolds: Re, roughness_m: ε, bore_m: D } = given
  let x = 1 / Math.sqrt(turbulentFriction(given))
  const a = ε / (3.7 * D)
  const b = 2.51 / Re
  for (let step = 0; step < COLEBROOK_STEPS; step++) {
    const within = a + b * x
    x -= (x + 2 * Math.log10(within)) / (1 + (2 * b) / (Math.LN10 * within))
  }
  return 1 / (x * x)
}

/**
 * Friction factor at any Reynolds number in one expression: a rival, used to cross-check the transition.
 *
 *   f = 8 [(8/Re)^12 + (A + B)^−1.5]^(1/12), A = {2.457 ln[1/((7/Re)^0.9 + 0.27 ε/D)]}^16, B = (37530/Re)^16
 *
 * Symbols  f Darcy friction factor [1], ε roughness [m], D bore [m], Re Reynolds number [1]
 * Valid    all Re; in the transition up to 30 % from the cubic
 * Source   Churchill1977, single equation
 * Throws   RangeError where Re or D is not positive, or ε is negative
 */
export function churchillFriction(given: FrictionPlace): number {
  const { reynolds: Re, roughness_m: ε, bore_m: D } = given
  positive('churchillFriction', { Re, D })
  notNegative('churchillFriction', { ε })
  const A = (2.457 * Math.log(1 / ((7 / Re) ** 0.9 + (0.27 * ε) / D))) ** 16
  const B = (37530 / Re) ** 16
  return 8 * ((8 / Re) ** 12 + (A + B) ** -1.5) ** (1 / 12)
}

/**
 * Head lost by friction in a full round tube.
 *
 *   h = f (L/D) v²/(2 g)
 *
 * Symbols  h head [m], f Darcy friction factor [1], L length [m], D bore [m], v mean speed [m/s], g gravity [m/s²]
 * Valid    full tube, settled flow
 * Source   Maurer.Hydraulics, chapter 4, Darcy-Weisbach
 * Throws   RangeError where D is not positive, or f or L is negative
 */
export function frictionLoss(given: {
  readonly friction: number
  readonly length_m: number
  readonly bore_m: number
  readonly velocity_m_s: number
}): number {
  const { friction: f, length_m: L, bore_m: D, velocity_m_s: v } = given
  positive('frictionLoss', { D })
  notNegative('frictionLoss', { f, L })
  return (f * (L / D) * v * v) / (2 * STANDARD_GRAVITY)
}

/**
 * Head lost in a full round tube at a flow, friction and fittings together, with the default friction law.
 *
 *   h = (f L/D + K) v²/(2 g)
 *
 * Symbols  h head [m], f friction factor [1], L length [m], D bore [m], K sum of fittings [1], v speed [m/s]
 * Valid    as `frictionFactor`
 * Source   Maurer.Hydraulics, chapter 4, Darcy-Weisbach
 * Throws   RangeError where D or ν is not positive, or Q, L, ε or K is negative
 */
export function pipeLoss(given: {
  readonly flow_m3_s: number
  readonly length_m: number
  readonly bore_m: number
  readonly roughness_m: number
  readonly fittingLoss: number
  readonly viscosity_m2_s: number
}): number {
  const { flow_m3_s: Q, length_m, bore_m, roughness_m, fittingLoss: K, viscosity_m2_s } = given
  notNegative('pipeLoss', { Q, K })
  if (Q === 0) return 0
  const velocity_m_s = pipeVelocity({ flow_m3_s: Q, bore_m })
  const reynolds = reynoldsNumber({ velocity_m_s, bore_m, viscosity_m2_s })
  const friction = frictionFactor({ reynolds, roughness_m, bore_m })
  return frictionLoss({ friction, length_m, bore_m, velocity_m_s }) + (K * velocity_m_s ** 2) / (2 * STANDARD_GRAVITY)
}
