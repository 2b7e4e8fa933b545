/** Most points of the trapezoid rule: enough for integrands that only just stay smooth. */
const MOST_POINTS = 16384

/**
 * Integral over one turn (0 to 2π) of a smooth function that repeats with it, by the trapezoid rule with points doubled
 * until two results agree: for such functions it converges faster than any power of the step.
 */
export function turnIntegral(f: (angle_rad: number) => number, relative = 1e-13): number {
  let points = 16
  let sum = 0
  for (let i = 0; i < points; i++) sum += f((2 * Math.PI * i) / points)
  let last = (sum * 2 * Math.PI) / points
  while (points < MOST_POINTS) {
    for (let i = 0; i < points; i++) sum += f((2 * Math.PI * (i + 0.5)) / points)
    points *= 2
    const next = (sum * 2 * Math.PI) / points
    if (points >= 64 && Math.abs(next - last) <= relative * Math.abs(next)) return next
    last = next
  }
  return last
}

/** Nodes and weights of the eight-point Gauss-Legendre rule on [-1, 1], upper half (Abramowitz & Stegun 1972, 25.4). */
const NODES = [0.1834346424956498, 0.525532409916329, 0.7966664774136267, 0.9602898564975363]
const WEIGHTS = [0.362683783378362, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763]

/** Nodes and weights of a composite Gauss-Legendre rule of `8 panels` points between two ends. */
export function gaussNodes(from: number, to: number, panels = 4): readonly (readonly [node: number, weight: number])[] {
  const half = (to - from) / panels / 2
  return Array.from({ length: panels }, (_, p) => from + (2 * p + 1) * half).flatMap((middle) =>
    NODES.flatMap((x, i) => {
      const weight = WEIGHTS[i]! * half
      return [[middle - x * half, weight] as const, [middle + x * half, weight] as const]
    }),
  )
}
