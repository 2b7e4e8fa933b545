import { GRAVITY_m_s2 as g } from '../../tables/constants.ts'

/** A level force at a height over the floor. */
export interface Push {
  readonly force_N: number
  readonly height_m: number
}

/**
 * Distance from the weight to the nearest tipping edge: the shortest of the perpendiculars on the sides of the base.
 *
 *   b = min over sides of the distance from the weight to the side
 *
 * Symbols  b arm [m]
 * Valid    corners in order round a base without dents; negative where the weight lies outside
 * Source   derived.moments, a tower tips over the side that is nearest
 * Throws   RangeError where there are fewer than three corners or they enclose nothing
 */
export function tippingArm(given: {
  readonly corners: readonly { readonly x_m: number; readonly y_m: number }[]
  readonly weight: { readonly x_m: number; readonly y_m: number }
}): number {
  const { corners, weight: p } = given
  const sides = corners.map((a, i) => ({ a, b: corners[(i + 1) % corners.length]! }))
  const turn = sides.reduce((sum, { a, b }) => sum + a.x_m * b.y_m - b.x_m * a.y_m, 0)
  if (corners.length < 3 || turn === 0) throw new RangeError(`tippingArm: ${corners.length} corners enclose no base`)
  const distances = sides.map(({ a, b }) => {
    const [dx, dy] = [b.x_m - a.x_m, b.y_m - a.y_m]
    return (Math.sign(turn) * (dx * (p.y_m - a.y_m) - dy * (p.x_m - a.x_m))) / Math.hypot(dx, dy)
  })
  return Math.min(...distances)
}

/**
 * Moment that holds the tower down about the tipping edge, also where it leans.
 *
 *   M_r = m g (b cos θ - z sin θ)
 *
 * Symbols  M_r righting moment [N m], m mass [kg], g free fall [m/s2], b arm from weight to edge [m], z height of the
 *          centre of gravity [m], θ lean towards the edge [rad]
 * Valid    stiff tower on a stiff floor; water that follows the lean makes it worse
 * Source   derived.moments, weight about the edge
 * Throws   RangeError where the mass is negative
 */
export function rightingMoment(given: {
  readonly mass_kg: number
  readonly arm_m: number
  readonly height_m?: number
  readonly lean_rad?: number
}): number {
  const { mass_kg: m, arm_m: b, height_m: z = 0, lean_rad: θ = 0 } = given
  if (!(m >= 0)) throw new RangeError(`rightingMoment: m = ${m} is negative`)
  return m * g * (b * Math.cos(θ) - z * Math.sin(θ))
}

/**
 * Moment of level forces about the floor.
 *
 *   M_o = Σ F_i z_i
 *
 * Symbols  M_o overturning moment [N m], F_i forces [N], z_i heights [m]
 * Valid    all forces to one side
 * Source   derived.moments, forces about the edge
 * Throws   RangeError where a force or a height is negative
 */
export function overturningMoment({ pushes }: { readonly pushes: readonly Push[] }): number {
  return pushes.reduce((sum, { force_N: F, height_m: z }) => {
    if (!(F >= 0 && z >= 0)) throw new RangeError(`overturningMoment: F = ${F}, z = ${z}`)
    return sum + F * z
  }, 0)
}

/**
 * How many times the weight resists what overturns.
 *
 *   n = M_r/M_o
 *
 * Symbols  n righting ratio [1], M_r righting and M_o overturning moment [N m]
 * Valid    endless where nothing pushes
 * Source   derived.moments, ratio of the moments
 * Throws   RangeError where the overturning moment is negative
 */
export function rightingRatio(given: { readonly righting_N_m: number; readonly overturning_N_m: number }): number {
  const { righting_N_m: Mr, overturning_N_m: Mo } = given
  if (!(Mo >= 0)) throw new RangeError(`rightingRatio: M_o = ${Mo} is negative`)
  return Mo === 0 ? Number.POSITIVE_INFINITY : Mr / Mo
}

/**
 * Lean at which the weight passes over the edge.
 *
 *   tan θ = b/z
 *
 * Symbols  θ lean [rad], b arm [m], z height of the centre of gravity [m]
 * Valid    no other force
 * Source   derived.moments, weight over the edge
 * Throws   RangeError where the height is not positive
 */
export function tippingLean(given: { readonly arm_m: number; readonly height_m: number }): number {
  const { arm_m: b, height_m: z } = given
  if (!(z > 0)) throw new RangeError(`tippingLean: z = ${z} must be positive`)
  return Math.atan2(b, z)
}

/**
 * Force in a strap that gives the tower the ratio it lacks.
 *
 *   S = (n M_o - M_r)/(z cos α), 0 where nothing lacks
 *
 * Symbols  S pull in the strap [N], n wanted ratio [1], M_o overturning and M_r righting moment [N m], z height of the
 *          strap on the column [m], α slope of the strap against level [rad]
 * Valid    strap on the side from which the push comes; its down pull is left out, which is safe
 * Source   derived.moments, moments about the edge with the strap
 * Throws   RangeError where height or ratio is not positive or the strap is not nearer to level than to upright
 */
export function strapForce(given: {
  readonly righting_N_m: number
  readonly overturning_N_m: number
  readonly ratio: number
  readonly height_m: number
  readonly slope_rad?: number
}): number {
  const { righting_N_m: Mr, overturning_N_m: Mo, ratio: n, height_m: z, slope_rad: α = 0 } = given
  if (!(z > 0 && n > 0 && Math.abs(α) < Math.PI / 4)) throw new RangeError(`strapForce: z = ${z}, n = ${n}, α = ${α}`)
  return Math.max(0, (n * Mo - Mr) / (z * Math.cos(α)))
}

/**
 * Mass to add over the weight line to reach a ratio without a strap.
 *
 *   m = (n M_o - M_r)/(g b), 0 where nothing lacks
 *
 * Symbols  m ballast [kg], n wanted ratio [1], M_o overturning and M_r righting moment [N m], g free fall [m/s2], b arm [m]
 * Valid    ballast at the foot, centred
 * Source   derived.moments, moments about the edge with the ballast
 * Throws   RangeError where the arm is not positive
 */
export function ballastMass(given: {
  readonly righting_N_m: number
  readonly overturning_N_m: number
  readonly ratio: number
  readonly arm_m: number
}): number {
  const { righting_N_m: Mr, overturning_N_m: Mo, ratio: n, arm_m: b } = given
  if (!(b > 0)) throw new RangeError(`ballastMass: b = ${b} must be positive`)
  return Math.max(0, (n * Mo - Mr) / (g * b))
}

/**
 * How many times friction resists a level push.
 *
 *   n = μ m g/F
 *
 * Symbols  n ratio [1], μ friction [1], m mass [kg], g free fall [m/s2], F push [N]
 * Valid    flat dry base
 * Source   derived.moments, friction of a weight
 * Throws   RangeError where a symbol is negative
 */
export function slidingRatio(given: {
  readonly friction: number
  readonly mass_kg: number
  readonly push_N: number
}): number {
  const { friction: μ, mass_kg: m, push_N: F } = given
  if (!(μ >= 0 && m >= 0 && F >= 0)) throw new RangeError(`slidingRatio: μ = ${μ}, m = ${m}, F = ${F}`)
  return F === 0 ? Number.POSITIVE_INFINITY : (μ * m * g) / F
}

/**
 * Depth to which a post must be buried to stand against a push without other help.
 *
 *   d = A/2 [1 + sqrt(1 + 4.36 h/A)], A = 2.34 P/(S1 b), S1 = s d/3
 *
 * Symbols  d depth [m], P push [N], h its height over the ground [m], b width or diameter of the foot [m], s allowed
 *          lateral pressure per depth [Pa/m], S1 that at a third of the depth [Pa]
 * Valid    no floor slab round the post; up to 3.66 m deep; the local code decides
 * Source   IBC.1807, embedded posts, nonconstrained
 * Throws   RangeError where a symbol is not positive
 */
export function burialDepth(given: {
  readonly push_N: number
  readonly height_m: number
  readonly foot_m: number
  readonly bearing_Pa_m: number
}): number {
  const { push_N: P, height_m: h, foot_m: b, bearing_Pa_m: s } = given
  if (!(P > 0 && h > 0 && b > 0 && s > 0)) throw new RangeError(`burialDepth: P = ${P}, h = ${h}, b = ${b}, s = ${s}`)
  // With A = k/d the relation is d² (d - k/d) = 1.09 k h: a cubic whose positive root the rule of Newton finds from above.
  const k = (2.34 * P * 3) / (s * b)
  let d = Math.cbrt(1.09 * k * h) + Math.sqrt(k)
  for (let round = 0; round < 50; round++) d -= (d ** 3 - k * d - 1.09 * k * h) / (3 * d * d - k)
  return d
}
