import { requireNotNegative, requirePositive } from '../../kernel/require.ts'
import { curveLength, requireStub, type Stub, stubCrossing } from './joint.ts'

/**
 * How a cup sits in the mouth of a stub: width of the ledge its rim rests on, and play of its body in the bore.
 *
 *   ledge = (Dr - Ds) / 2, play = (Ds - Db) / 2, overhang = (Dr - Do) / 2
 *
 * Symbols  Dr diameter over the rim [m], Db of the body just under the rim [m], Ds, Do bore and outside diameter of the stub [m]
 * Valid    square mouth; ledge ≤ 0: the cup falls in; play < 0: the cup is too wide and must be slit (cupSlit)
 * Source   Geometry.cup
 * Throws   RangeError where a diameter is not positive
 */
export function cupSeat(given: {
  readonly rim_m: number
  readonly body_m: number
  readonly stubBore_m: number
  readonly stubOutside_m: number
}): { readonly ledge_m: number; readonly play_m: number; readonly overhang_m: number } {
  const { rim_m: Dr, body_m: Db, stubBore_m: Ds, stubOutside_m: Do } = given
  requirePositive('cupSeat', { Dr, Db, Ds, Do })
  return { ledge_m: (Dr - Ds) / 2, play_m: (Ds - Db) / 2, overhang_m: (Dr - Do) / 2 }
}

/**
 * Slit that lets a cup that is too wide close to the bore of the stub: overlap under the rim, and length down its side.
 *
 *   overlap = π (Db - Ds), depth x = h (Db - Ds) / (Db - Df), side = x √(1 + ((Db - Df) / (2 h))²)
 *
 * Symbols  Db, Df diameters of the body under the rim and at the foot [m], h depth of the cup [m], Ds bore of the stub [m]
 * Valid    straight taper; zeros where the cup fits; where Df ≥ Ds > 0 the slit runs the whole side
 * Source   Geometry.cup
 * Throws   RangeError where a size is not positive
 */
export function cupSlit(given: {
  readonly body_m: number
  readonly foot_m: number
  readonly depth_m: number
  readonly stubBore_m: number
}): { readonly overlap_m: number; readonly slit_m: number } {
  const { body_m: Db, foot_m: Df, depth_m: h, stubBore_m: Ds } = given
  requirePositive('cupSlit', { Db, Df, h, Ds })
  if (Db <= Ds) return { overlap_m: 0, slit_m: 0 }
  const x = Df >= Ds ? h : (h * (Db - Ds)) / (Db - Df)
  return { overlap_m: Math.PI * (Db - Ds), slit_m: x * Math.hypot(1, (Db - Df) / (2 * h)) }
}

/** Lengths on three lines along a stub. */
export interface ByLine {
  readonly axis_m: number
  /** Lower line. */
  readonly heel_m: number
  /** Upper line. */
  readonly crown_m: number
}

/**
 * Distance from the mouth of a stub to the bore wall of the column, along lines at a distance from the stub axis.
 *
 *   axis: L - √(Ri² - e²) / sin θ;  crown, heel: L - [√(Ri² - e²) ± q cos θ] / sin θ
 *
 * Symbols  L length along the axis [m], Ri bore radius of the column [m], q distance of the lines from the axis [m], θ between the axes [rad], e offset [m]
 * Valid    |e| ≤ Ri, 0 < θ ≤ π/2, q at most the bore radius of the stub; square mouth
 * Source   Geometry.cup
 * Throws   RangeError where the stub does not fit the bore, L is not positive or q negative
 */
export function mouthToBore(given: {
  readonly stub: Stub
  readonly axisLength_m: number
  readonly lineRadius_m: number
}): ByLine {
  const { stub, axisLength_m: L, lineRadius_m: q } = given
  requireStub('mouthToBore', stub)
  requirePositive('mouthToBore', { L })
  requireNotNegative('mouthToBore', { q })
  const wall = { ...stubCrossing(stub, 'bore', 'outside'), tubeRadius_m: q }
  return {
    axis_m: L - curveLength({ ...wall, tubeRadius_m: 0 }, 0),
    heel_m: L - curveLength(wall, Math.PI),
    crown_m: L - curveLength(wall, 0),
  }
}

/**
 * How far the foot of a cup stands past the bore wall into the falling water, along its axis and its outer lines;
 * negative where it stays in the stub.
 *
 *   reach = h - distance of mouthToBore with q the radius of the foot
 *
 * Symbols  h depth of the cup below its rim, along the stub axis [m]
 * Valid    as in mouthToBore; the rim rests on the mouth
 * Source   Geometry.cup
 * Throws   RangeError where h is not positive or mouthToBore throws
 */
export function cupReach(given: {
  readonly stub: Stub
  readonly axisLength_m: number
  readonly cupDepth_m: number
  readonly footRadius_m: number
}): ByLine {
  const { stub, axisLength_m, cupDepth_m: h, footRadius_m } = given
  requirePositive('cupReach', { h })
  const to = mouthToBore({ stub, axisLength_m, lineRadius_m: footRadius_m })
  return { axis_m: h - to.axis_m, heel_m: h - to.heel_m, crown_m: h - to.crown_m }
}

/**
 * Distance from the column axis of the edge of a cup's foot that stands furthest into the column.
 *
 *   x = (L - h) sin θ - q cos θ
 *
 * Symbols  x in the plane of the stub, negative past the axis [m], L length along the axis [m], h depth of the cup [m], q radius of its foot [m], θ between the axes [rad]
 * Valid    0 < θ ≤ π/2
 * Source   Geometry.cup
 * Throws   RangeError where L, h or θ is not positive or q negative
 */
export function cupFootNearest(given: {
  readonly axisLength_m: number
  readonly cupDepth_m: number
  readonly footRadius_m: number
  readonly angle_rad: number
}): number {
  const { axisLength_m: L, cupDepth_m: h, footRadius_m: q, angle_rad: th } = given
  requirePositive('cupFootNearest', { L, h, θ: th })
  requireNotNegative('cupFootNearest', { q })
  return (L - h) * Math.sin(th) - q * Math.cos(th)
}

/**
 * Gap between the feet of neighbouring cups that stand evenly round one level; negative where they meet.
 *
 *   g = 2 [(L - h) sin θ sin(π/k) - q √(cos² θ sin²(π/k) + cos²(π/k))]
 *
 * Symbols  g gap [m], L length along the axis [m], h depth of the cup [m], θ between the axes [rad], k cups at the level, q radius of the foot [m]
 * Valid    k ≥ 2, 0 < θ ≤ π/2, stubs through the column axis; twice the distance of a foot from the plane midway between two
 * Source   Geometry.cup
 * Throws   RangeError where L, h or θ is not positive, q is negative or k is less than 2
 */
export function cupFeetGap(given: {
  readonly axisLength_m: number
  readonly cupDepth_m: number
  readonly footRadius_m: number
  readonly angle_rad: number
  readonly count: number
}): number {
  const { axisLength_m: L, cupDepth_m: h, footRadius_m: q, angle_rad: th, count: k } = given
  requirePositive('cupFeetGap', { L, h, θ: th })
  requireNotNegative('cupFeetGap', { q })
  if (!(Number.isInteger(k) && k >= 2)) throw new RangeError(`cupFeetGap: k = ${k} is not a whole number from 2`)
  const [s, c] = [Math.sin(Math.PI / k), Math.cos(Math.PI / k)]
  return 2 * ((L - h) * Math.sin(th) * s - q * Math.hypot(Math.cos(th) * s, c))
}
