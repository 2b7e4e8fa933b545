/** Sun on level ground over that on a wall that always faces it, above the air. */
const SOLAR_W_m2 = (0.082 * 1e6) / 60

/**
 * Sine of the height of the sun from sunshine above the air.
 *
 *   sin h = Ra/(Gsc dr), dr = 1 + 0.033 cos(2π J/365)
 *
 * Symbols  h height of the sun [rad], Ra sun above the air on level ground [W/m2], Gsc solar constant, 0.0820 [MJ/(m2 min)],
 *          dr inverse relative distance [1], J day of the year
 * Valid    mean of the time over which Ra is a mean
 * Source   Allen1998.FAO56, equations 21 and 23
 * Throws   RangeError where Ra is negative
 */
export function sunHeightSine(given: { readonly sunAboveAir_W_m2: number; readonly dayOfYear: number }): number {
  const { sunAboveAir_W_m2: Ra, dayOfYear: J } = given
  if (!(Ra >= 0)) throw new RangeError(`sunHeightSine: Ra = ${Ra} is negative`)
  return Math.min(1, Ra / (SOLAR_W_m2 * (1 + 0.033 * Math.cos((2 * Math.PI * J) / 365))))
}

/**
 * Sun on the outside of an upright tank or column, mean round its girth.
 *
 *   I = (1 - f) R cot h/π + f R/2 + a R/2
 *
 * Symbols  I sun on the wall [W/m2], R sun on level ground [W/m2], f diffuse share [1], h height of the sun [rad],
 *          a share that the ground throws back [1]
 * Valid    convex outline, even sky, nothing in front; the lowest sun is left out, since it shines through houses
 * Source   derived.round-wall, mean of the shadow of a convex outline
 * Throws   RangeError where the sun is negative or a share lies outside of 0 to 1
 */
export function wallSun(given: {
  readonly ground_W_m2: number
  readonly heightSine: number
  readonly diffuseShare: number
  readonly albedo: number
  readonly leastSine: number
}): number {
  const { ground_W_m2: R, heightSine, diffuseShare: f, albedo: a, leastSine } = given
  if (!(R >= 0 && f >= 0 && f <= 1 && a >= 0 && a <= 1))
    throw new RangeError(`wallSun: R = ${R}, f = ${f}, a = ${a} is no sunshine`)
  const s = Math.min(1, heightSine)
  const cot = s < leastSine ? 0 : Math.sqrt(1 - s * s) / s
  return R * (((1 - f) * cot) / Math.PI + f / 2 + a / 2)
}

/**
 * Sun where one side of the place is closed: beam only while the sun stands on the open side, half of the sky.
 *
 *   level ground: I = [(1 - f) b + f/2] R
 *   upright wall: I = (1 - f) b R cot h/π + (f/2 + a/2) R/2
 *
 * Symbols  I sun [W/m2], R sun on open level ground [W/m2], f diffuse share [1], b share of the time that the sun stands
 *          on the open side [1], h height of the sun [rad], a share that the ground throws back [1]
 * Valid    closed side high and wide, and as far as the tower is small against it
 * Source   derived.round-wall, half of an even sky
 * Throws   RangeError where the sun is negative or a share lies outside of 0 to 1
 */
export function halfOpenSun(given: {
  readonly ground_W_m2: number
  readonly heightSine: number
  readonly diffuseShare: number
  readonly albedo: number
  readonly leastSine: number
  readonly openShare: number
}): { readonly ground_W_m2: number; readonly wall_W_m2: number } {
  const { ground_W_m2: R, diffuseShare: f, albedo: a, openShare: b } = given
  if (!(b >= 0 && b <= 1)) throw new RangeError(`halfOpenSun: b = ${b} is no share`)
  const whole = wallSun(given)
  const even = (f / 2 + a / 2) * R
  return { ground_W_m2: ((1 - f) * b + f / 2) * R, wall_W_m2: (whole - even) * b + even / 2 }
}
