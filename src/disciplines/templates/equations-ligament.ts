import { patternMinimum } from '../../kernel/extremum.ts'
import { requirePositive } from '../../kernel/require.ts'
import { openingExtent } from './equations-hole.ts'
import { squareCutExtent } from './equations-square-cut.ts'
import { type Crossing, type Cut, curveHeight, curveTurn, type Hole, holeCrossing, requireHole } from './joint.ts'
import { squareEdges, squareSides } from './square-cut.ts'

/** Points round each hole in the first scan: near enough for the search that follows. */
const SCAN = 24

/** The edge of a hole on the unrolled outside, by a parameter that goes round it. */
type Outline = (parameter: number) => readonly [x: number, z: number]

function unrolled(hole: Hole, cut: Cut): Outline {
  const R = hole.columnRadius_m
  if (cut === 'axis') {
    const edge = holeCrossing(hole, 'outside')
    return (psi) => [R * curveTurn(edge, psi), curveHeight(edge, psi)]
  }
  const { left, right } = squareSides(hole)
  return (t) => {
    const turn = (left + right) / 2 + ((right - left) / 2) * Math.cos(t)
    return [R * turn, squareEdges(hole, turn)[Math.sin(t) >= 0 ? 1 : 0]]
  }
}

/** Keeps the last place: a search that moves along one edge asks for the same place of the other again and again. */
function lastKept(outline: Outline): Outline {
  let asked = Number.NaN
  let place: readonly [number, number] = [0, 0]
  return (parameter) => {
    if (parameter !== asked) [asked, place] = [parameter, outline(parameter)]
    return place
  }
}

/** The pair of scanned places with the least distance; `of` gives them as one, `to` as the other of the two holes. */
function scan(of: readonly (readonly number[])[], to: readonly (readonly number[])[]): readonly [number, number] {
  let best: readonly [number, number] = [0, 0]
  let least = Number.POSITIVE_INFINITY
  for (let i = 0; i < of.length; i++) {
    const a = of[i]!
    for (let j = 0; j < to.length; j++) {
      const b = to[j]!
      let squared = 0
      for (let k = 0; k < a.length; k++) squared += (b[k]! - a[k]!) * (b[k]! - a[k]!)
      if (squared < least) [least, best] = [squared, [i, j]]
    }
  }
  return best
}

/**
 * Wall left between two holes, as the shortest distance of their edges on the unrolled outside; 0 where they meet.
 *
 *   min over both edges of √((R (φ2 + Δφ - φ1))² + (z2 + Δz - z1)²)
 *
 * Symbols  φ, z of the edges as in crossingPoint (axis cut) or squareCutHeights (square cut), Δφ, Δz turn and rise from one site to the other [rad, m], R outside radius of the column [m]
 * Valid    |e| + q ≤ Ri, 0 < θ ≤ π/2, -π < Δφ ≤ π; both holes alike
 * Source   Geometry.ligament
 * Throws   RangeError where the hole does not fit the bore or θ is out of range
 */
export function outsideLigament(given: {
  readonly hole: Hole
  readonly cut: Cut
  readonly turn_rad: number
  readonly rise_m: number
}): number {
  const { hole, cut, turn_rad, rise_m: dz } = given
  requireHole('outsideLigament', hole)
  const outline = unrolled(hole, cut)
  const dx = hole.columnRadius_m * turn_rad
  const step = (2 * Math.PI) / SCAN
  const places = Array.from({ length: SCAN }, (_, i) => outline(i * step))
  const others = places.map(([x, z]) => [x + dx, z + dz])
  const [i, j] = scan(places, others)
  const [one, other] = [lastKept(outline), lastKept(outline)]
  const of = (at: readonly number[]) => {
    const [from, to] = [one(at[0]!), other(at[1]!)]
    const x = to[0] + dx - from[0]
    const z = to[1] + dz - from[1]
    return Math.sqrt(x * x + z * z)
  }
  return patternMinimum({ of, start: [i * step, j * step], steps: [step, step], halvings: 14 }).value
}

/** A point on the edge of the wall plug at a radius, in space. */
function inSpace(edge: Crossing, psi: number, turn: number, rise: number): readonly [number, number, number] {
  const phi = curveTurn(edge, psi) + turn
  return [edge.pipeRadius_m * Math.cos(phi), edge.pipeRadius_m * Math.sin(phi), curveHeight(edge, psi) + rise]
}

/**
 * Shortest straight distance between two axis-cut holes through the wall, which is mostly on the inside.
 *
 *   min over ψ1, ψ2 and Ri ≤ ρ1, ρ2 ≤ R of |P2 - P1|, P = (ρ cos φ, ρ sin φ, z)
 *
 * Symbols  φ, z of crossingPoint at the radius ρ, the second turned by Δφ and raised by Δz [rad, m], R, Ri outside and bore radius of the column [m]
 * Valid    |e| + q ≤ Ri, 0 < θ ≤ π/2; both holes alike
 * Source   Geometry.ligament
 * Throws   RangeError where the hole does not fit the bore or θ is out of range
 */
export function wallLigament(given: {
  readonly hole: Hole
  readonly turn_rad: number
  readonly rise_m: number
}): number {
  const { hole, turn_rad, rise_m } = given
  requireHole('wallLigament', hole)
  const { columnRadius_m: R, columnWall_m: T } = hole
  const edges = [holeCrossing(hole, 'bore'), holeCrossing(hole, 'outside')] as const
  const step = (2 * Math.PI) / SCAN
  const places = edges.flatMap((edge, depth) =>
    Array.from({ length: SCAN }, (_, i) => {
      const psi = i * step
      return { psi, depth, own: inSpace(edge, psi, 0, 0), other: inSpace(edge, psi, turn_rad, rise_m) }
    }),
  )
  const [i, j] = scan(
    places.map((p) => p.own),
    places.map((p) => p.other),
  )
  const at = (depth: number) => ({ ...edges[0], pipeRadius_m: R - T + T * Math.min(1, Math.max(0, depth)) })
  const of = (p: readonly number[]) => {
    const [one, two] = [at(p[2]!), at(p[3]!)]
    const [from, to] = [curveTurn(one, p[0]!), curveTurn(two, p[1]!) + turn_rad]
    const x = two.pipeRadius_m * Math.cos(to) - one.pipeRadius_m * Math.cos(from)
    const y = two.pipeRadius_m * Math.sin(to) - one.pipeRadius_m * Math.sin(from)
    const z = curveHeight(two, p[1]!) + rise_m - curveHeight(one, p[0]!)
    return Math.sqrt(x * x + y * y + z * z)
  }
  const start = [places[i]!.psi, places[j]!.psi, places[i]!.depth, places[j]!.depth]
  return patternMinimum({ of, start, steps: [step, step, 0.25, 0.25], halvings: 12 }).value
}

/**
 * Wall left between neighbouring holes on one line, along the outside; negative where they overlap.
 *
 *   p - h;  e = 0: axis cut h = 2 q / sin θ, square cut h = 2 q / sin θ + T cot θ
 *
 * Symbols  p pitch on the line [m], h height of the hole [m], q radius of the hole [m], T wall of the column [m], θ between the axes [rad]
 * Valid    |e| + q ≤ Ri, 0 < θ ≤ π/2; exact for e = 0, above the true value by the skew of the hole otherwise
 * Source   Geometry.ligament
 * Throws   RangeError where the hole does not fit the bore, p is not positive or θ is out of range
 */
export function lineLigament(given: { readonly hole: Hole; readonly cut: Cut; readonly pitch_m: number }): number {
  const { hole, cut, pitch_m: p } = given
  requirePositive('lineLigament', { p })
  const { height_m } = cut === 'axis' ? openingExtent(holeCrossing(hole, 'outside')) : squareCutExtent(hole)
  return p - height_m
}

/**
 * Wall left between neighbouring holes at one level, along the outside; not positive where the ring is impossible.
 *
 *   R (Δφ - 2 β);  e = 0: axis cut β = asin(q / R), square cut β = asin(q / Ri)
 *
 * Symbols  Δφ turn between neighbours [rad], β half angle of the hole [rad], R, Ri outside and bore radius of the column [m], q radius of the hole [m]
 * Valid    |e| + q ≤ Ri, 0 < θ ≤ π/2; exact for e = 0, below the true value otherwise
 * Source   Geometry.ligament
 * Throws   RangeError where the hole does not fit the bore, Δφ is not positive or θ is out of range
 */
export function ringLigament(given: { readonly hole: Hole; readonly cut: Cut; readonly turn_rad: number }): number {
  const { hole, cut, turn_rad } = given
  requirePositive('ringLigament', { Δφ: turn_rad })
  const { arc_m } = cut === 'axis' ? openingExtent(holeCrossing(hole, 'outside')) : squareCutExtent(hole)
  return hole.columnRadius_m * turn_rad - arc_m
}

/**
 * Clear height between the bodies of two stubs on one line, square to their axes.
 *
 *   p sin θ - 2 r
 *
 * Symbols  p pitch on the line [m], r outside radius of the stub [m], θ between the axes [rad]
 * Valid    0 < θ ≤ π/2
 * Source   Geometry.ligament
 * Throws   RangeError where a size is not positive
 */
export function stubHeadroom(given: {
  readonly pitch_m: number
  readonly stubRadius_m: number
  readonly angle_rad: number
}): number {
  const { pitch_m: p, stubRadius_m: r, angle_rad: th } = given
  requirePositive('stubHeadroom', { p, r, θ: th })
  return p * Math.sin(th) - 2 * r
}
