import { type Drawing, line, type Pen, type Point } from './primitives.ts'

/**
 * Parallel lines inside one or more rings, even-odd, so that a ring within a ring stays clear.
 * Lines of neighbouring outlines meet, since they are counted from the origin of the page.
 */
export function hatch(given: {
  readonly rings: readonly (readonly Point[])[]
  readonly pitch_mm?: number
  readonly angle_rad?: number
  readonly pen?: Pen
}): Drawing {
  const { rings, pitch_mm = 1.1, angle_rad = Math.PI / 4, pen = 'hatch' } = given
  if (!(pitch_mm > 0)) throw new RangeError(`hatch: pitch_mm ${pitch_mm} is not positive`)
  const c = Math.cos(angle_rad)
  const s = Math.sin(angle_rad)
  // Along the hatch u, across it v.
  const turnedRings = rings.map((r) => r.map(([x, y]): Point => [x * c + y * s, -x * s + y * c]))
  const across = turnedRings.flat().map((p) => p[1])
  if (across.length === 0) return []
  const first = Math.ceil(Math.min(...across) / pitch_mm)
  const last = Math.floor(Math.max(...across) / pitch_mm)
  const back = (u: number, v: number): Point => [u * c - v * s, u * s + v * c]
  const out: Drawing[number][] = []
  for (let k = first; k <= last; k++) {
    const v = k * pitch_mm
    const met = turnedRings.flatMap((ring) => crossings(ring, v)).sort((a, b) => a - b)
    for (let i = 0; i + 1 < met.length; i += 2)
      if (met[i + 1]! - met[i]! > 1e-6) out.push(line(back(met[i]!, v), back(met[i + 1]!, v), pen))
  }
  return out
}

/** Where a ring meets the line at v; a corner exactly on the line counts for the side above only. */
function crossings(ring: readonly Point[], v: number): readonly number[] {
  return ring.flatMap((b, i) => {
    const a = ring.at(i - 1)!
    if (a[1] > v === b[1] > v) return []
    return [a[0] + ((v - a[1]) / (b[1] - a[1])) * (b[0] - a[0])]
  })
}
