/**
 * Length of pipe that one cut turns into dust, measured along the pipe.
 *
 *   k = w / sin(theta)
 *
 * Symbols  k dust along the axis [m], w blade width square to the cut [m], theta angle between cut plane and axis [rad]
 * Valid    0 < theta <= pi/2; a square cut has theta = pi/2
 * Source   Stick.rule
 * Throws   RangeError where w is negative or theta outside the range
 */
export function kerfAlong(given: { readonly kerf_m: number; readonly angle_rad: number }): number {
  const { kerf_m: w, angle_rad: theta } = given
  if (!(w >= 0)) throw new RangeError(`kerfAlong: w = ${w} is no blade width`)
  if (!(theta > 0 && theta <= Math.PI / 2)) throw new RangeError(`kerfAlong: theta = ${theta} is no cutting angle`)
  return w / Math.sin(theta)
}

/**
 * Distance along the axis between the middle of a mitre and its farthest point.
 *
 *   h = r / tan(theta)
 *
 * Symbols  h half of the wedge [m], r outer radius of the pipe [m], theta angle between cut plane and axis [rad]
 * Valid    0 < theta <= pi/2
 * Source   Stick.rule
 * Throws   RangeError where r is not positive or theta outside the range
 */
export function mitreReach(given: { readonly radius_m: number; readonly angle_rad: number }): number {
  const { radius_m: r, angle_rad: theta } = given
  if (!(r > 0)) throw new RangeError(`mitreReach: r = ${r} is no radius`)
  if (!(theta > 0 && theta <= Math.PI / 2)) throw new RangeError(`mitreReach: theta = ${theta} is no cutting angle`)
  return r * (Math.cos(theta) / Math.sin(theta))
}

/**
 * Length taken by two stubs that share one mitre, the second turned end for end.
 *
 *   P = La + Lb + w/sin(theta) + w
 *
 * Symbols  P taken from the stick [m], La and Lb lengths on the centre line [m], w kerf [m], theta mitre angle [rad]
 * Valid    stubs with one mitred and one square end, the same theta and pipe
 * Source   Stick.rule
 * Throws   RangeError where a length is not positive
 */
export function pairLength(given: {
  readonly first_m: number
  readonly second_m: number
  readonly kerf_m: number
  readonly angle_rad: number
}): number {
  const { first_m: La, second_m: Lb, kerf_m: w } = given
  if (!(La > 0 && Lb > 0)) throw new RangeError(`pairLength: La = ${La}, Lb = ${Lb} are no lengths`)
  return La + Lb + kerfAlong(given) + w
}

/**
 * Length taken by one stub when each stands the same way round and the wedge is squared off.
 *
 *   S = L + r cot(theta) + w/sin(theta) + w
 *
 * Symbols  S taken from the stick [m], L length on the centre line [m], r outer radius [m], w kerf [m], theta angle [rad]
 * Valid    stubs with one mitred and one square end
 * Source   Stick.rule
 * Throws   RangeError where L is not positive
 */
export function oneWayLength(given: {
  readonly length_m: number
  readonly radius_m: number
  readonly kerf_m: number
  readonly angle_rad: number
}): number {
  const { length_m: L, kerf_m: w } = given
  if (!(L > 0)) throw new RangeError(`oneWayLength: L = ${L} is no length`)
  return L + mitreReach(given) + kerfAlong(given) + w
}

/**
 * What the mitres of one angle add on one stick to the lengths of their pieces.
 *
 *   F = ceil(n/2) (k + w) + m k + (n odd) h;  for n = 0, m > 0:  F = (m + 1) k + 2 h + w
 *
 * Symbols  F added [m], n stubs with one mitre, m pieces with both ends mitred parallel, k kerf along the axis [m], h reach of the mitre [m], w kerf [m]
 * Valid    pieces of one pipe and one angle, chained mitre to mitre
 * Source   Stick.rule
 * Throws   RangeError where a count is negative
 */
export function mitreAllowance(given: {
  readonly stubs_count: number
  readonly parallel_count: number
  readonly along_m: number
  readonly reach_m: number
  readonly kerf_m: number
}): number {
  const { stubs_count: n, parallel_count: m, along_m: k, reach_m: h, kerf_m: w } = given
  if (n < 0 || m < 0) throw new RangeError(`mitreAllowance: n = ${n}, m = ${m} are no counts`)
  if (n > 0) return Math.ceil(n / 2) * (k + w) + m * k + (n % 2) * h
  return m > 0 ? (m + 1) * k + 2 * h + w : 0
}

/**
 * Length of a stick that pieces may be taken from, with the last square kerf running off its end.
 *
 *   C = L - s - e (t + w) + w
 *
 * Symbols  C capacity [m], L length of the stick [m], s depth of its socket [m], e factory ends to trim, t trim of an end [m], w kerf [m]
 * Valid    a socket is cut away whole, its kerf taken from the socket
 * Source   Stick.rule
 * Throws   RangeError where the kerf, socket, or trim is negative
 */
export function stickCapacity(given: {
  readonly length_m: number
  readonly socket_m: number
  readonly ends_count: number
  readonly trim_m: number
  readonly kerf_m: number
}): number {
  const { length_m: L, socket_m: s, ends_count: e, trim_m: t, kerf_m: w } = given
  if (!(w >= 0 && s >= 0 && t >= 0)) throw new RangeError(`stickCapacity: w = ${w}, s = ${s}, t = ${t}`)
  return L - s - e * (t + w) + w
}

/**
 * How many equal mitred stubs come from one stick with shared mitres.
 *
 *   greatest n with  n L + ceil(n/2) (k + w) + (n odd) h <= C
 *
 * Symbols  n stubs, L length on the centre line [m], k kerf along the axis [m], w kerf [m], h reach [m], C stock + w [m]
 * Valid    L >= h, so that one stub more never takes less
 * Source   Stick.rule
 * Throws   RangeError where L is not positive
 */
export function stubsPerStick(given: {
  readonly length_m: number
  readonly radius_m: number
  readonly angle_rad: number
  readonly kerf_m: number
  readonly stock_m: number
}): number {
  const { length_m: L, stock_m, kerf_m: w } = given
  if (!(L > 0)) throw new RangeError(`stubsPerStick: L = ${L} is no length`)
  const room = stock_m + w + ROUNDING_M
  const pairs = Math.floor(room / (2 * L + kerfAlong(given) + w))
  const left = room - pairs * (2 * L + kerfAlong(given) + w)
  return 2 * pairs + (oneWayLength(given) <= left ? 1 : 0)
}

/** Slack for sums that meet a stick exactly but carry the rounding of floating point: far below any saw. */
export const ROUNDING_M = 1e-9

/**
 * Fewest equal sticks that can hold given pieces, by the argument that large pieces exclude one another.
 *
 *   L2 = max over a of  n1 + n2 + max(0, ceil((sum of middle sizes - (n2 C - sum of J2)) / C))
 *   n1 = pieces > C - a, J2 (n2 of them) = pieces in (C/2, C - a], middle = pieces in [a, C/2]
 *
 * Symbols  a threshold [m] in 0 to C/2, C capacity of a stick [m]
 * Valid    every piece fits a stick; all sticks equal
 * Source   MartelloToth1990
 * Throws   RangeError where the capacity is not positive or a piece exceeds it
 */
export function fewestSticks(given: { readonly sizes_m: readonly number[]; readonly capacity_m: number }): number {
  const { sizes_m: sizes, capacity_m: C } = given
  if (!(C > 0)) throw new RangeError(`fewestSticks: C = ${C} is no capacity`)
  if (sizes.some((s) => s > C + ROUNDING_M)) throw new RangeError(`fewestSticks: a piece exceeds C = ${C}`)
  let best = 0
  for (const a of new Set([0, ...sizes.filter((s) => s <= C / 2)])) {
    const sole = sizes.filter((s) => s > C - a + ROUNDING_M).length
    const large = sizes.filter((s) => s > C / 2 + ROUNDING_M && s <= C - a + ROUNDING_M)
    const middle = sizes.filter((s) => s >= a && s <= C / 2 + ROUNDING_M)
    const room = large.length * C - sum(large)
    const further = Math.max(0, Math.ceil((sum(middle) - room - ROUNDING_M) / C))
    best = Math.max(best, sole + large.length + further)
  }
  return best
}

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0)

/**
 * Pieces of pipe of a column that is put together from branch fittings, from foot to top.
 *
 *   foot: h1 - a + s;  between: h(i+1) - h(i) - l + 2 s;  top: L - h(n) - (l - a) + s
 *
 * Symbols  h heights of the marks, one for each fitting, upwards [m], L height of the whole column [m], l laying length of a fitting face to face [m], a from its lower end to the mark of its branch [m], s depth of its sockets [m]
 * Valid    0 < a < l, s > 0; a foot or top that would not show is left out, a piece between fittings that touch is two sockets long
 * Source   Geometry.other-sites
 * Throws   RangeError where a size is not positive
 */
export function fittingPipes(given: {
  readonly marks_m: readonly number[]
  readonly columnLength_m: number
  readonly layingLength_m: number
  readonly branchAt_m: number
  readonly socket_m: number
}): { readonly foot_m: number | null; readonly between_m: readonly number[]; readonly top_m: number | null } {
  const { marks_m: h, columnLength_m: L, layingLength_m: l, branchAt_m: a, socket_m: s } = given
  for (const [name, value] of Object.entries({ L, l, a, s }))
    if (!(value > 0)) throw new RangeError(`fittingPipes: ${name} = ${value} is not positive`)
  const shown = (seen_m: number) => (seen_m > ROUNDING_M ? seen_m + s : null)
  return {
    foot_m: h.length > 0 ? shown(h[0]! - a) : null,
    between_m: h.slice(1).map((next, i) => Math.max(0, next - h[i]! - l) + 2 * s),
    top_m: h.length > 0 ? shown(L - h.at(-1)! - (l - a)) : null,
  }
}
