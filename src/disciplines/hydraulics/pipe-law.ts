import { STANDARD_GRAVITY } from '../../tables/hydraulic-constants.ts'
import { TRANSITION, transitionCubic } from './equations-friction.ts'
import { notNegative, positive } from './possible.ts'

/** A tube with what sits in it: as the plan knows it. */
export interface Tube {
  readonly length_m: number
  readonly bore_m: number
  readonly roughness_m: number
  /** Sum of the loss coefficients, all on this bore. */
  readonly fittingLoss: number
}

/** A tube made ready for many questions: the same law as `pipeLoss`, with all that does not depend on the flow done. */
export interface PipeLaw {
  /** L/D /(2 g A²): head per friction factor and squared flow. */
  readonly perFriction: number
  /** K/(2 g A²): head per squared flow. */
  readonly perSquare: number
  readonly reynoldsPerFlow: number
  readonly roughTerm: number
  readonly cubic: readonly [number, number, number, number]
}

export function pipeLaw(tube: Tube, viscosity_m2_s: number, gravity_m_s2: number = STANDARD_GRAVITY): PipeLaw {
  const { length_m: L, bore_m: D, roughness_m: ε, fittingLoss: K } = tube
  positive('pipeLaw', { L, D, viscosity_m2_s, gravity_m_s2 })
  notNegative('pipeLaw', { ε, K })
  const area = (Math.PI / 4) * D * D
  const perSquareSpeed = 1 / (2 * gravity_m_s2 * area * area)
  const roughTerm = ε / (3.7 * D)
  return {
    perFriction: (L / D) * perSquareSpeed,
    perSquare: K * perSquareSpeed,
    reynoldsPerFlow: D / (area * viscosity_m2_s),
    roughTerm,
    cubic: transitionCubic({ roughTerm }),
  }
}

export interface LossAndSlope {
  readonly loss_m: number
  /** m per m³/s, always positive. */
  readonly slope: number
}

/** Head lost at a flow, and how it grows with the flow. */
export function lossAndSlope(law: PipeLaw, flow_m3_s: number): LossAndSlope {
  const { perFriction: c, perSquare: k, reynoldsPerFlow: r } = law
  const Q = flow_m3_s
  const Re = r * Q
  if (Re <= TRANSITION.laminarBelow) {
    const a = (64 * c) / r
    return { loss_m: (a + k * Q) * Q, slope: a + 2 * k * Q }
  }
  const { f, growth } = Re < TRANSITION.turbulentAbove ? between(law, Re) : turbulent(law, Re)
  return { loss_m: (c * f + k) * Q * Q, slope: (c * f * (2 + growth) + 2 * k) * Q }
}

/** Friction factor, and growth = (Re/f) df/dRe. */
function turbulent(law: PipeLaw, Re: number): { readonly f: number; readonly growth: number } {
  const b = 5.74 * Re ** -0.9
  const y = law.roughTerm + b
  const ln = Math.log(y)
  return { f: (0.25 * Math.LN10 * Math.LN10) / (ln * ln), growth: (1.8 * b) / (y * ln) }
}

function between(law: PipeLaw, Re: number): { readonly f: number; readonly growth: number } {
  const R = Re / TRANSITION.laminarBelow
  const [x1, x2, x3, x4] = law.cubic
  const f = x1 + R * (x2 + R * (x3 + R * x4))
  return { f, growth: (R * (x2 + R * (2 * x3 + 3 * R * x4))) / f }
}

const STEP_LIMIT = 60
/** Relative closure of the head; far below what any reading can see, and above the rounding of the sums. */
const CLOSED = 1e-12

/** Friction factor from which the search of a turbulent flow starts: small smooth tubes lie near it. */
const START_FRICTION = 0.03

/** Flow that a head drives through the tube; none where the head is not positive. Never backward. */
export function pipeFlow(law: PipeLaw, head_m: number): number {
  if (!(head_m > 0)) return 0
  const { perFriction: c, perSquare: k, reynoldsPerFlow: r } = law
  const a = (64 * c) / r
  const smooth = (2 * head_m) / (a + Math.sqrt(a * a + 4 * k * head_m))
  const edge = TRANSITION.laminarBelow / r
  if (smooth <= edge) return smooth
  // Above the laminar range friction is never below the laminar line continued, so the smooth flow is an upper bound.
  let [low, high] = [edge, smooth]
  let Q = Math.min(Math.max(Math.sqrt(head_m / (START_FRICTION * c + k)), low), high)
  for (let step = 0; step < STEP_LIMIT; step++) {
    const { loss_m, slope } = lossAndSlope(law, Q)
    const over = loss_m - head_m
    if (Math.abs(over) <= CLOSED * head_m) return Q
    if (over > 0) high = Q
    else low = Q
    const next = Q - over / slope
    const inside = next > low && next < high
    const to = inside ? next : (low + high) / 2
    if (to === Q) return Q
    Q = to
  }
  return Q
}
