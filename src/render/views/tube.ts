import type { Stub } from '../../disciplines/templates/joint.ts'
import type { Point } from '../drawing/primitives.ts'

/** A point of the tower: x to the right of the viewer, y up, z toward the viewer, in metres about the mark's height. */
type Spot = readonly [x: number, y: number, z: number]

const STEPS = 72

/** Turns the plane of the stub, outward and up, to its place round the column; `aside` is 0 where it points at the viewer. */
const turnedBy =
  (aside_rad: number) =>
  (out: number, side: number, up: number): Spot => {
    const s = Math.sin(aside_rad)
    const c = Math.cos(aside_rad)
    return [out * s + side * c, up, out * c - side * s]
  }

const flat = ([x, y]: Spot): Point => [x, y]

/** Outline of a set of points in the plane (Andrew's monotone chain): counter-clockwise, no three on a line. */
export function hull(points: readonly Point[]): readonly Point[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1])
  const chain = (list: readonly Point[]): Point[] => {
    const out: Point[] = []
    for (const p of list) {
      while (out.length > 1) {
        const a = out.at(-2)!
        const b = out.at(-1)!
        if ((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]) > 1e-15) break
        out.pop()
      }
      out.push(p)
    }
    return out.slice(0, -1)
  }
  return [...chain(sorted), ...chain([...sorted].reverse())]
}

export interface TubeSight {
  /** Silhouette of the stub outside the column. */
  readonly outline: readonly Point[]
  /** Edge of the mouth, outside and bore; empty where the mouth looks away. */
  readonly mouth: readonly Point[]
  readonly bore: readonly Point[]
  /** Toward the viewer, 1 straight at them, -1 straight away. */
  readonly front: number
}

/** A stub as it is seen from the side, about the height of its mark, in metres. */
export function tubeSight(given: {
  readonly stub: Stub
  readonly axisLength_m: number
  readonly markRise_m: number
  readonly mouthTilt_rad: number
  readonly aside_rad: number
}): TubeSight {
  const { stub, axisLength_m: L, markRise_m, mouthTilt_rad, aside_rad } = given
  const { columnRadius_m: R, stubRadius_m: r, stubWall_m, angle_rad: th, offset_m: e } = stub
  const place = turnedBy(aside_rad)
  const round = Array.from({ length: STEPS }, (_, i) => (2 * Math.PI * i) / STEPS)
  const at = (s: number, q: number, psi: number): Spot => {
    const up = q * Math.cos(psi)
    return place(
      s * Math.sin(th) - up * Math.cos(th),
      e + q * Math.sin(psi),
      s * Math.cos(th) + up * Math.sin(th) - markRise_m,
    )
  }
  const rim = (q: number) => round.map((psi) => flat(at(L - q * Math.cos(psi) * Math.tan(mouthTilt_rad), q, psi)))
  const root = round.map((psi) => {
    const y = e + r * Math.sin(psi)
    return flat(at((Math.sqrt(Math.max(0, R * R - y * y)) + r * Math.cos(psi) * Math.cos(th)) / Math.sin(th), r, psi))
  })
  const front = Math.cos(aside_rad)
  const seen = front > 1e-6
  return {
    outline: hull([...root, ...rim(r)]),
    mouth: seen ? rim(r) : [],
    bore: seen ? rim(r - stubWall_m) : [],
    front,
  }
}
