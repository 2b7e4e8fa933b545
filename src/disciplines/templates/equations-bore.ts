import { requirePositive } from '../../kernel/require.ts'
import { requireStub, type Stub, type StubEnd } from './joint.ts'

/** Distance of a point from a straight piece between two others. */
function toPiece(p: readonly [number, number], a: readonly [number, number], b: readonly [number, number]): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]]
  const t = ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / (dx * dx + dy * dy)
  const u = Math.min(1, Math.max(0, t))
  return Math.hypot(p[0] - a[0] - u * dx, p[1] - a[1] - u * dy)
}

/** Signed gap between two neighbouring mitre faces that stand at one level: negative where they meet. */
function faceGap(d: number, r: number, e: number, count: number): number {
  const turn = (2 * Math.PI) / count
  const [c, s] = [Math.cos(turn), Math.sin(turn)]
  const first = [
    [d, e - r],
    [d, e + r],
  ] as const
  const second = first.map(([x, y]) => [x * c - y * s, x * s + y * c] as const) as [
    readonly [number, number],
    readonly [number, number],
  ]
  const near = Math.min(toPiece(first[1], ...second), toPiece(second[0], ...first))
  const apart = turn - Math.atan2(e + r, d) + Math.atan2(e - r, d)
  return apart >= 0 ? near : -Math.hypot(first[1][0] - second[0][0], first[1][1] - second[0][1])
}

/**
 * Gap in the bore between the inner ends of neighbouring stubs that stand evenly round one level; null for ends that do
 * not reach the bore.
 *
 *   mitre: 2: 2 d;  k: 2 [d sin(π/k) - r cos(π/k)] (e = 0);  flush: 2 Ri sin(π/k - β), β half the angle between its sides
 *
 * Symbols  d distance of the mitre's plane from the column axis [m], k stubs at the level, r outside radius of the stub [m], Ri bore radius of the column [m]; negative where the ends meet
 * Valid    k ≥ 2, |e| + r ≤ Ri, d > 0
 * Source   Geometry.bore
 * Throws   RangeError where the stub does not fit the bore, or k is less than 2
 */
export function boreGap(given: { readonly stub: Stub; readonly end: StubEnd; readonly count: number }): number | null {
  const { stub, end, count } = given
  requireStub('boreGap', stub)
  if (!(Number.isInteger(count) && count >= 2))
    throw new RangeError(`boreGap: k = ${count} is not a whole number from 2`)
  const { columnRadius_m: R, columnWall_m: T, stubRadius_m: r, offset_m: e } = stub
  const Ri = R - T
  if (end.kind === 'saddle') return null
  if (end.kind === 'mitre') return count === 2 ? 2 * end.depth_m : faceGap(end.depth_m, r, e, count)
  const half = (Math.asin((e + r) / Ri) - Math.asin((e - r) / Ri)) / 2
  return 2 * Ri * Math.sin(Math.PI / count - half)
}

/**
 * Diameter of the core of the bore that the stubs leave free.
 *
 *   mitre: min(2 d, 2 Ri);  saddle and flush ends: 2 Ri
 *
 * Symbols  d distance of the mitre's plane from the column axis [m], Ri bore radius of the column [m]
 * Valid    any depth
 * Source   Geometry.bore
 * Throws   RangeError where Ri is not positive
 */
export function freeCore(given: { readonly boreRadius_m: number; readonly end: StubEnd }): number {
  const { boreRadius_m: Ri, end } = given
  requirePositive('freeCore', { Ri })
  return 2 * (end.kind === 'mitre' ? Math.max(0, Math.min(Ri, end.depth_m)) : Ri)
}
