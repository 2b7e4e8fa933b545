/** The smaller part of a length in the golden section. */
const SECTION = (3 - Math.sqrt(5)) / 2

/** A place and the value of a function there. */
export interface Extremum {
  readonly at: number
  readonly value: number
}

/**
 * Least value of a function that falls and then rises between `low` and `high`: a parabola through the three best places
 * where it can be trusted, a golden section where not (R. P. Brent, Algorithms for Minimization without Derivatives, 1973,
 * chapter 5).
 */
function brent(f: (x: number) => number, low: number, high: number, within: number): Extremum {
  let [a, b] = [low, high]
  let x = a + SECTION * (b - a)
  let [w, v] = [x, x]
  let fx = f(x)
  let [fw, fv] = [fx, fx]
  let [step, before] = [0, 0]
  for (;;) {
    const middle = (a + b) / 2
    if (Math.abs(x - middle) + (b - a) / 2 <= 2 * within) return { at: x, value: fx }
    const r = (x - w) * (fx - fv)
    const q = (x - v) * (fx - fw)
    const under = 2 * (q - r)
    const over = (x - v) * q - (x - w) * r
    const p = under > 0 ? -over : over
    const d = Math.abs(under)
    const trusted = Math.abs(p) < Math.abs((d * before) / 2) && p > d * (a - x) && p < d * (b - x)
    before = trusted ? step : x < middle ? b - x : a - x
    step = trusted ? p / d : SECTION * before
    if (trusted && (x + step - a < 2 * within || b - x - step < 2 * within)) step = x < middle ? within : -within
    const u = x + (Math.abs(step) >= within ? step : Math.sign(step) * within)
    const fu = f(u)
    if (fu <= fx) {
      if (u < x) b = x
      else a = x
      ;[v, fv, w, fw, x, fx] = [w, fw, x, fx, u, fu]
    } else {
      if (u < x) a = u
      else b = u
      if (fu <= fw || w === x) [v, fv, w, fw] = [w, fw, u, fu]
      else if (fu <= fv || v === x || v === w) [v, fv] = [u, fu]
    }
  }
}

/**
 * Least value of a continuous function between two ends: a scan in `pieces` steps, then Brent's search round the best.
 * By default the value is good to the rounding of floating point; the ends themselves count.
 */
export function minimum(given: {
  readonly of: (x: number) => number
  readonly low: number
  readonly high: number
  readonly pieces?: number
  /** Share of the range to which the place is found; the value is good to about its square. */
  readonly within?: number
}): Extremum {
  const { of: f, low, high, pieces = 32, within = 1e-8 } = given
  const step = (high - low) / pieces
  let best: Extremum = { at: low, value: f(low) }
  let place = 0
  for (let i = 1; i <= pieces; i++) {
    const x = i === pieces ? high : low + i * step
    const value = f(x)
    if (value < best.value) [best, place] = [{ at: x, value }, i]
  }
  const from = low + Math.max(0, place - 1) * step
  const to = Math.min(high, low + (place + 1) * step)
  const fine = brent(f, from, to, within * (high - low))
  return fine.value < best.value ? fine : best
}

/** Greatest value of a continuous function between two ends; see `minimum`. */
export function maximum(given: Parameters<typeof minimum>[0]): Extremum {
  const { at, value } = minimum({ ...given, of: (x) => -given.of(x) })
  return { at, value: -value }
}

/**
 * Least value of a function of a few variables near a start, by trying a step each way along each axis and along the
 * diagonals of neighbouring axes, and halving the step when none helps. Ends after `most` values at the latest: where
 * two curves touch, the least distance is a long flat valley in which ever smaller steps still help.
 */
export function patternMinimum(given: {
  readonly of: (x: readonly number[]) => number
  readonly start: readonly number[]
  readonly steps: readonly number[]
  readonly halvings?: number
  readonly most?: number
}): { readonly at: readonly number[]; readonly value: number } {
  const { of: f, start, steps, halvings = 30, most = 4000 } = given
  const moves = directions(start.length)
  let at = [...start]
  let next = [...start]
  let value = f(at)
  let scale = 1
  let tried = 0
  for (let halving = 0; halving < halvings && tried < most; ) {
    let moved = false
    for (const move of moves) {
      for (let i = 0; i < at.length; i++) next[i] = at[i]! + scale * move[i]! * steps[i]!
      const found = f(next)
      tried++
      if (found < value) {
        ;[at, next, value, moved] = [next, at, found, true]
        break
      }
    }
    if (!moved) {
      scale /= 2
      halving++
    }
  }
  return { at, value }
}

function directions(count: number): readonly (readonly number[])[] {
  const moves: number[][] = []
  for (let i = 0; i < count; i++)
    for (const sign of [1, -1]) moves.push(Array.from({ length: count }, (_, k) => (k === i ? sign : 0)))
  for (let i = 0; i < count; i++)
    for (let j = i + 1; j < count; j++)
      for (const [a, b] of [
        [1, 1],
        [1, -1],
        [-1, 1],
        [-1, -1],
      ] as const)
        moves.push(Array.from({ length: count }, (_, k) => (k === i ? a : k === j ? b : 0)))
  return moves
}
