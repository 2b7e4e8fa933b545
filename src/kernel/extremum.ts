const GOLDEN = (Math.sqrt(5) - 1) / 2

/** A place and the value of a function there. */
export interface Extremum {
  readonly at: number
  readonly value: number
}

/** Golden-section search of the least value of a function that falls and then rises between `low` and `high`. */
function golden(f: (x: number) => number, low: number, high: number, within: number): Extremum {
  let [a, b] = [low, high]
  let c = b - GOLDEN * (b - a)
  let d = a + GOLDEN * (b - a)
  let fc = f(c)
  let fd = f(d)
  while (b - a > within) {
    if (fc <= fd) {
      ;[b, d, fd] = [d, c, fc]
      c = b - GOLDEN * (b - a)
      fc = f(c)
    } else {
      ;[a, c, fc] = [c, d, fd]
      d = a + GOLDEN * (b - a)
      fd = f(d)
    }
  }
  return fc <= fd ? { at: c, value: fc } : { at: d, value: fd }
}

/**
 * Least value of a continuous function between two ends: a scan in `pieces` steps, then golden section round the best.
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
  const fine = golden(f, from, to, within * (high - low))
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
  let value = f(at)
  let scale = 1
  let tried = 0
  for (let halving = 0; halving < halvings && tried < most; ) {
    let moved = false
    for (const move of moves) {
      const next = at.map((x, i) => x + scale * move[i]! * steps[i]!)
      const found = f(next)
      tried++
      if (found < value) {
        ;[at, value, moved] = [next, found, true]
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
