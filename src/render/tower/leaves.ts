import { contour, type Drawing, type Point, polyline } from '../drawing/primitives.ts'

/** Ornament of a fixed seed: it says that a plant stands here, not how it grows. */
function turns(seed: number): () => number {
  let state = seed * 2654435761
  return () => {
    state = (state ^ (state << 13)) | 0
    state = state ^ (state >>> 17)
    state = (state ^ (state << 5)) | 0
    return (state >>> 0) / 2 ** 32
  }
}

const STEPS = 14

/** A leaf from its foot along a direction: wider towards the tip, its edge a little waved. */
function leaf(foot: Point, direction_rad: number, length_mm: number, wave: number): Drawing {
  const c = Math.cos(direction_rad)
  const s = Math.sin(direction_rad)
  const bend = 0.12 * Math.sin(wave * 6)
  const place = (t: number, side: number): Point => {
    const u = t * length_mm
    const v = side * length_mm + bend * length_mm * t * (1 - t)
    return [foot[0] + u * c - v * s, foot[1] + u * s + v * c]
  }
  const half = (t: number): number =>
    0.25 * Math.sin(Math.PI * t ** 1.5) ** 0.8 * (1 + 0.07 * Math.sin(22 * t + 9 * wave)) + 0.012
  const edge = (side: number) => Array.from({ length: STEPS + 1 }, (_, i) => place(i / STEPS, side * half(i / STEPS)))
  const veins = [0.35, 0.55, 0.74].flatMap((t) =>
    [1, -1].map((side) => polyline([place(t, 0), place(t + 0.13, side * 0.72 * half(t + 0.13))], 'ornament')),
  )
  return [
    contour([...edge(1), ...edge(-1).reverse()], 'ornament', { fill: 'paper', part: 'roots' }),
    polyline(
      Array.from({ length: 6 }, (_, i) => place((0.95 * i) / 5, 0)),
      'ornament',
    ),
    ...veins,
  ]
}

/** A grown plant in a mouth: leaves fan out to the side that it leans to. */
export function plant(given: {
  readonly at: Point
  readonly lean_rad: number
  readonly size_mm: number
  readonly seed: number
}): Drawing {
  const { at, lean_rad, size_mm, seed } = given
  const next = turns(seed + 1)
  const count = 6
  const order = [0, 5, 1, 4, 2, 3]
  return order.flatMap((k) => {
    const spread = ((k + 0.5) / count - 0.5) * 2.9
    const outer = Math.abs(k - 2.5) / 2.5
    return leaf(at, lean_rad + spread + (next() - 0.5) * 0.22, size_mm * (0.95 - 0.2 * outer + 0.1 * next()), next())
  })
}
