import { completeElliptic } from '../../kernel/elliptic.ts'
import { maximum, minimum } from '../../kernel/extremum.ts'
import { turnIntegral } from '../../kernel/integrate.ts'
import { openingArea } from './equations-hole.ts'
import { curveLength, type Hole, holeCrossing, requireHole, requireStub, type Stub, stubCrossing } from './joint.ts'

/**
 * Area of the ring on which a saddle sits on the outside of the column.
 *
 *   A = A(r; R) - A(ri; R), A of openingArea
 *
 * Symbols  A area on the surface [m²], r, ri outside and bore radius of the stub [m], R outside radius of the column [m]
 * Valid    |e| + r ≤ Ri, 0 < θ ≤ π/2
 * Source   Geometry.contact
 * Throws   RangeError where the stub does not fit the bore or θ is out of range
 */
export function saddleArea(given: Stub): number {
  requireStub('saddleArea', given)
  return openingArea(stubCrossing(given, 'outside', 'outside')) - openingArea(stubCrossing(given, 'outside', 'bore'))
}

/**
 * Area on which the outside of a tube touches the wall of an axis-cut hole.
 *
 *   e = 0: A = (4 q / sin θ) [R E(q/R) - Ri E(q/Ri)];  else A = q ∮ [s(ψ; q, R) - s(ψ; q, Ri)] dψ
 *
 * Symbols  A area [m²], q radius of the hole [m], R, Ri outside and bore radius of the column [m], E complete elliptic integral of the second kind of the modulus
 * Valid    |e| + q ≤ Ri, 0 < θ ≤ π/2; about 2 π q T / sin θ for a thin wall T; a square-cut hole touches on edges only
 * Source   Geometry.contact
 * Throws   RangeError where the hole does not fit the bore or θ is out of range
 */
export function boreContactArea(given: Hole): number {
  requireHole('boreContactArea', given)
  const { columnRadius_m: R, columnWall_m: T, holeRadius_m: q, angle_rad: th, offset_m: e } = given
  const Ri = R - T
  if (e === 0) {
    const outer = R * completeElliptic(q / R).second
    return ((4 * q) / Math.sin(th)) * (outer - Ri * completeElliptic(Math.min(1, q / Ri)).second)
  }
  const [outside, bore] = [holeCrossing(given, 'outside'), holeCrossing(given, 'bore')]
  return q * turnIntegral((psi) => curveLength(outside, psi) - curveLength(bore, psi))
}

/**
 * Depth that a hole saw held along the stub axis needs, from the first tooth on the wall to the last tooth through it.
 *
 *   h = max s(ψ; q, R) - min s(ψ; q, Ri)
 *   e = 0: (T + 2 q cos θ) / sin θ where cos θ ≥ q / Ri, else R / sin θ + q cot θ - √(Ri² - q²)
 *
 * Symbols  s of crossingLength [m], q outside radius of the saw [m], R, Ri outside and bore radius, T wall of the column [m], θ between the axes [rad]
 * Valid    |e| + q ≤ Ri, 0 < θ ≤ π/2
 * Source   Geometry.saw
 * Throws   RangeError where the saw does not fit the bore or θ is out of range
 */
export function holeSawDepth(given: Hole): number {
  requireHole('holeSawDepth', given)
  const { columnRadius_m: R, columnWall_m: T, holeRadius_m: q, angle_rad: th, offset_m: e } = given
  const Ri = R - T
  if (e === 0) {
    if (Math.cos(th) >= q / Ri) return (T + 2 * q * Math.cos(th)) / Math.sin(th)
    return R / Math.sin(th) + q / Math.tan(th) - Math.sqrt(Math.max(0, Ri * Ri - q * q))
  }
  const [outside, bore] = [holeCrossing(given, 'outside'), holeCrossing(given, 'bore')]
  const turn = { low: 0, high: 2 * Math.PI, pieces: 64 }
  const first = maximum({ of: (psi) => curveLength(outside, psi), ...turn }).value
  return first - minimum({ of: (psi) => curveLength(bore, psi), ...turn }).value
}
