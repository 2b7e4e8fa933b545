import { piecewiseLinear } from '../../kernel/interpolate.ts'
import { pvcDerating, pvcStiffness } from '../../tables/pvc-strength.ts'

/**
 * Second moment of area of a whole pipe.
 *
 *   I = π/64 (D⁴ - d⁴)
 *
 * Symbols  I second moment [m4], D outside diameter [m], d bore [m]
 * Valid    round pipe without holes
 * Source   Timoshenko.beams, ring
 * Throws   RangeError where bore and outside make no pipe
 */
export function pipeSecondMoment(given: { readonly outside_m: number; readonly bore_m: number }): number {
  const { outside_m: D, bore_m: d } = given
  if (!(d > 0 && D > d)) throw new RangeError(`pipeSecondMoment: D = ${D}, d = ${d} make no pipe`)
  return (Math.PI / 64) * (D ** 4 - d ** 4)
}

/**
 * Section modulus of a whole pipe.
 *
 *   W = 2 I/D
 *
 * Symbols  W section modulus [m3], I second moment [m4], D outside diameter [m]
 * Valid    round pipe without holes
 * Source   Timoshenko.beams, ring
 * Throws   RangeError where bore and outside make no pipe
 */
export function pipeSectionModulus(given: { readonly outside_m: number; readonly bore_m: number }): number {
  return (2 * pipeSecondMoment(given)) / given.outside_m
}

/**
 * Share of the second moment that three or more equal holes at one level leave of a thin ring.
 *
 *   s = 1 - n β/π, β = asin(a/2r)
 *
 * Symbols  s share [1], n holes [1], β half angle of a hole [rad], a width of the hole [m], r mean radius of the wall [m]
 * Valid    n ≥ 3, equal spacing, thin wall; a second opinion on the exact section of the joint
 * Source   derived.thin-ring, integral outside of the holes
 * Throws   RangeError where fewer than three holes are given or they leave nothing
 */
export function ringShare(given: {
  readonly holes: number
  readonly hole_m: number
  readonly meanRadius_m: number
}): number {
  const { holes: n, hole_m: a, meanRadius_m: r } = given
  const share = 1 - (n * Math.asin(a / (2 * r))) / Math.PI
  if (!(n >= 3 && a >= 0 && share > 0)) throw new RangeError(`ringShare: n = ${n}, a = ${a}, r = ${r} leave no ring`)
  return share
}

/**
 * Stress in the weakest section under bending and weight, with the peak at the edge of a hole.
 *
 *   σ = k M/W + N/A
 *
 * Symbols  σ stress [Pa], M moment [N m], W section modulus of what is left [m3], N weight above [N], A area of what is
 *          left [m2], k peak at a hole [1]
 * Valid    plane sections; two wide opposite holes behave worse than this: keep a factor of 3
 * Source   Timoshenko.beams, bending and compression
 * Throws   RangeError where section or area is not positive or a load negative
 */
export function sectionStress(given: {
  readonly moment_N_m: number
  readonly section_m3: number
  readonly weight_N: number
  readonly area_m2: number
  readonly peak: number
}): number {
  const { moment_N_m: M, section_m3: W, weight_N: N, area_m2: A, peak: k } = given
  if (!(W > 0 && A > 0 && M >= 0 && N >= 0 && k >= 1))
    throw new RangeError(`sectionStress: M = ${M}, W = ${W}, N = ${N}, A = ${A}, k = ${k}`)
  return (k * M) / W + N / A
}

const strength = piecewiseLinear({
  x: Object.values(pvcDerating.rows).map((row) => row.temperature_C),
  y: Object.values(pvcDerating.rows).map((row) => row.strengthShare),
})
const stiffness = piecewiseLinear({
  x: Object.values(pvcStiffness.rows).map((row) => row.temperature_C),
  y: Object.values(pvcStiffness.rows).map((row) => row.modulusShare),
})
/** Last row of the table: above it the pipe is not to carry anything. */
export const PVC_DERATING_VALID = { temperature_C: { max: pvcDerating.rows['140F'].temperature_C } } as const

/**
 * Stress that PVC pipe may carry when its wall is warm.
 *
 *   S(t) = S f(t), 0 above 60 °C
 *
 * Symbols  S stress allowed at 22.8 °C [Pa], f share by temperature, straight lines between the rows of the table [1], t
 *          temperature of the wall [°C]
 * Valid    up to 60 °C; below 22.8 °C no bonus is taken
 * Source   PVC.pressure-derating, table
 * Throws   RangeError where the stress is negative
 */
export function warmStrength(given: { readonly strength_Pa: number; readonly temperature_C: number }): number {
  const { strength_Pa: S, temperature_C: t } = given
  if (!(S >= 0)) throw new RangeError(`warmStrength: S = ${S} is negative`)
  return t > PVC_DERATING_VALID.temperature_C.max ? 0 : S * strength(t)
}

/**
 * Modulus of PVC pipe when its wall is warm.
 *
 *   E(t) = E f(t)
 *
 * Symbols  E modulus at 22.8 °C [Pa], f share by temperature [1], t temperature of the wall [°C]
 * Valid    up to 60 °C; numbers unconfirmed
 * Source   from-memory, table of the modulus with temperature
 * Throws   RangeError where the modulus is not positive
 */
export function warmModulus(given: { readonly modulus_Pa: number; readonly temperature_C: number }): number {
  const { modulus_Pa: E, temperature_C: t } = given
  if (!(E > 0)) throw new RangeError(`warmModulus: E = ${E} must be positive`)
  return E * stiffness(t)
}

/**
 * Share of the allowed stress that is used.
 *
 *   u = n σ/S
 *
 * Symbols  u share used [1], n factor of safety [1], σ stress [Pa], S stress allowed [Pa]
 * Valid    endless where the pipe may carry nothing
 * Source   Timoshenko.beams, working stress
 * Throws   RangeError where a symbol is negative
 */
export function strengthUse(given: {
  readonly stress_Pa: number
  readonly allowed_Pa: number
  readonly factor: number
}): number {
  const { stress_Pa: σ, allowed_Pa: S, factor: n } = given
  if (!(σ >= 0 && S >= 0 && n >= 0)) throw new RangeError(`strengthUse: σ = ${σ}, S = ${S}, n = ${n}`)
  return S === 0 ? Number.POSITIVE_INFINITY : (n * σ) / S
}

/**
 * How far the top of a column moves under a wind that presses evenly along it, and under a push at a height.
 *
 *   y = F h³/(8 E I) + P z² (3 h - z)/(6 E I)
 *
 * Symbols  y movement of the top [m], F even force in all [N], h height [m], P push [N], z its height [m], E modulus [Pa],
 *          I second moment, the least along the column [m4]
 * Valid    foot held fast, small movement; holes all the way up at their least section, which is safe
 * Source   Timoshenko.beams, cantilever
 * Throws   RangeError where height or stiffness is not positive or the push lies above the top
 */
export function topMovement(given: {
  readonly even_N: number
  readonly push_N: number
  readonly pushHeight_m: number
  readonly height_m: number
  readonly modulus_Pa: number
  readonly second_m4: number
}): number {
  const { even_N: F, push_N: P, pushHeight_m: z, height_m: h, modulus_Pa: E, second_m4: I } = given
  if (!(h > 0 && E * I > 0 && z >= 0 && z <= h)) throw new RangeError(`topMovement: h = ${h}, E I = ${E * I}, z = ${z}`)
  return (F * h ** 3) / (8 * E * I) + (P * z * z * (3 * h - z)) / (6 * E * I)
}

/**
 * Height at which an upright pipe would bend under its own weight.
 *
 *   h = (7.8373 E I/w)^(1/3)
 *
 * Symbols  h height [m], E modulus [Pa], I second moment [m4], w weight per length with all that hangs on it [N/m]
 * Valid    foot held fast, top free, even weight
 * Source   Timoshenko.beams, buckling of a column under its own weight
 * Throws   RangeError where a symbol is not positive
 */
export function bucklingHeight(given: {
  readonly modulus_Pa: number
  readonly second_m4: number
  readonly weight_N: number
  readonly length_m: number
}): number {
  const { modulus_Pa: E, second_m4: I, weight_N, length_m } = given
  const w = weight_N / length_m
  if (!(E > 0 && I > 0 && w > 0)) throw new RangeError(`bucklingHeight: E = ${E}, I = ${I}, w = ${w} must be positive`)
  return Math.cbrt((7.8373 * E * I) / w)
}

/**
 * How much longer a pipe gets when warmed.
 *
 *   ΔL = α L ΔT
 *
 * Symbols  ΔL growth [m], α expansion [1/K], L length [m], ΔT warming [K]
 * Valid    -10 to 60 °C
 * Source   PVC.maker-properties, thermal expansion
 * Throws   RangeError where the length is negative
 */
export function thermalGrowth(given: {
  readonly expansion_per_K: number
  readonly length_m: number
  readonly warming_K: number
}): number {
  const { expansion_per_K: α, length_m: L, warming_K: ΔT } = given
  if (!(L >= 0)) throw new RangeError(`thermalGrowth: L = ${L} is negative`)
  return α * L * ΔT
}
