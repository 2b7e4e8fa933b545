import type { Point } from '../../kernel/polyline.ts'
import { requireNotNegative } from '../../kernel/require.ts'

/**
 * Volume of cement or primer that coats the faces of a joint.
 *
 *   V = A d
 *
 * Symbols  A area of the joint [m2], d volume used over area, both faces coated [m]
 * Valid    brushed joints; d from the table of what joints use up
 * Source   Joint.use
 * Throws   RangeError where A or d is negative
 */
export function coatVolume(given: { readonly area_m2: number; readonly perArea_m: number }): number {
  const { area_m2: A, perArea_m: d } = given
  requireNotNegative('coatVolume', { A, d })
  return A * d
}

/**
 * Volume of a triangular bead of sealant along a joint, with what is lost in nozzle and tooling.
 *
 *   V = a² / 2 · l (1 + w)
 *
 * Symbols  a leg of the right-angled section [m], l length of the bead [m], w share lost [1]
 * Valid    beads in an inner corner
 * Source   Joint.use
 * Throws   RangeError where a, l or w is negative
 */
export function beadVolume(given: {
  readonly leg_m: number
  readonly length_m: number
  readonly waste: number
}): number {
  const { leg_m: a, length_m: l, waste: w } = given
  requireNotNegative('beadVolume', { a, l, w })
  return ((a * a) / 2) * l * (1 + w)
}

/**
 * Length of a closed outline.
 *
 *   l = sum of |p(i+1) - p(i)|, the last point joined to the first
 *
 * Symbols  p points of the outline [m]
 * Valid    outlines whose points stand closely
 * Source   Joint.use
 * Throws   nothing
 */
export function outlineLength(outline: readonly Point[]): number {
  return outline.reduce((sum, p, i) => {
    const q = outline[(i + 1) % outline.length]!
    return sum + Math.hypot(q.x_m - p.x_m, q.y_m - p.y_m)
  }, 0)
}

/**
 * Hose ends, each of which takes a clamp, of the columns that one pump feeds.
 *
 *   without header: 2 for one column, 2 + 2 n for n columns behind a tee
 *   with header:    2 + 2 n ends of riser and header, cut at each column, and 2 n of the drops
 *
 * Symbols  n columns that the pump feeds [1]
 * Valid    a header that is cut for a tee at each column and ends in an elbow
 * Source   Joint.use
 * Throws   RangeError where n is no positive whole number
 */
export function hoseEnds(given: { readonly columns_count: number; readonly header: boolean }): number {
  const { columns_count: n, header } = given
  if (!Number.isInteger(n) || n < 1) throw new RangeError(`hoseEnds: n = ${n} is no positive whole number`)
  if (header) return 2 + 4 * n
  return n === 1 ? 2 : 2 + 2 * n
}
