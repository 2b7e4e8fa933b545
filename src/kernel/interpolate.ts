/** Points of a curve, abscissae rising. */
export interface Points {
  readonly x: readonly number[]
  readonly y: readonly number[]
}

function checked(name: string, { x, y }: Points): void {
  if (x.length < 2 || x.length !== y.length)
    throw new RangeError(`${name}: ${x.length} x and ${y.length} y make no curve`)
  for (let i = 1; i < x.length; i++)
    if (!(x[i]! > x[i - 1]!)) throw new RangeError(`${name}: x must rise, ${x[i - 1]} is followed by ${x[i]}`)
}

/** Index of the interval that holds `at`; the end intervals also serve what lies outside. */
function interval(x: readonly number[], at: number): number {
  let low = 0
  let high = x.length - 1
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (x[middle]! <= at) low = middle
    else high = middle
  }
  return low
}

/** Straight lines between the points; held at the first and last value outside of them. */
export function piecewiseLinear(points: Points): (at: number) => number {
  checked('piecewiseLinear', points)
  const { x, y } = points
  const last = x.length - 1
  return (at) => {
    if (at <= x[0]!) return y[0]!
    if (at >= x[last]!) return y[last]!
    const i = interval(x, at)
    return y[i]! + ((y[i + 1]! - y[i]!) * (at - x[i]!)) / (x[i + 1]! - x[i]!)
  }
}

/** Slopes that keep a cubic monotone where its points are: harmonic means inside, one-sided at the ends. */
function monotoneSlopes(h: readonly number[], d: readonly number[]): readonly number[] {
  const n = d.length
  const inside = Array.from({ length: n - 1 }, (_, k) => {
    const [d0, d1, h0, h1] = [d[k]!, d[k + 1]!, h[k]!, h[k + 1]!]
    if (d0 * d1 <= 0) return 0
    return (3 * (h0 + h1)) / ((2 * h1 + h0) / d0 + (h1 + 2 * h0) / d1)
  })
  const end = (h0: number, h1: number, d0: number, d1: number) => {
    const slope = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1)
    if (slope * d0 <= 0) return 0
    return d0 * d1 < 0 && Math.abs(slope) > 3 * Math.abs(d0) ? 3 * d0 : slope
  }
  if (n === 1) return [d[0]!, d[0]!]
  return [end(h[0]!, h[1]!, d[0]!, d[1]!), ...inside, end(h[n - 1]!, h[n - 2]!, d[n - 1]!, d[n - 2]!)]
}

/**
 * A smooth curve through the points that rises only where they rise (monotone cubic after Fritsch and Carlson, with
 * the harmonic slopes of Fritsch and Butland); held at the first and last value outside of them.
 */
export function monotoneCubic(points: Points): (at: number) => number {
  checked('monotoneCubic', points)
  const { x, y } = points
  const last = x.length - 1
  const h = x.slice(1).map((xi, i) => xi - x[i]!)
  const d = y.slice(1).map((yi, i) => (yi - y[i]!) / h[i]!)
  const m = monotoneSlopes(h, d)
  return (at) => {
    if (at <= x[0]!) return y[0]!
    if (at >= x[last]!) return y[last]!
    const i = interval(x, at)
    const t = (at - x[i]!) / h[i]!
    const s = 1 - t
    const cubic = (1 + 2 * t) * s * s * y[i]! + t * t * (3 - 2 * t) * y[i + 1]!
    return cubic + h[i]! * t * s * (s * m[i]! - t * m[i + 1]!)
  }
}
