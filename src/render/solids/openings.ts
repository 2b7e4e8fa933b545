import { type Crossing, curveEdges, curveTurn, type Hole } from '../../disciplines/templates/joint.ts'
import { squareEdges, squareSides } from '../../disciplines/templates/square-cut.ts'
import { samples } from './facets.ts'
import type { Place } from './mesh.ts'
import type { Opening } from './sheet.ts'

/** The same opening somewhere else: sites are alike. */
export const standing = (o: Opening, turn_rad: number, height_m: number): Opening => ({
  ...o,
  at: turn_rad,
  edges: (u) => {
    const [low, high] = o.edges(u)
    return [low + height_m, high + height_m]
  },
})

const onRound = (radius_m: number, u: number, v: number): Place => [radius_m * Math.cos(u), radius_m * Math.sin(u), v]

/** Values of u between two sides, close where the edges turn: u runs as the sine of an even parameter. */
function between(given: {
  readonly at: (t: number) => number
  readonly edges: (u: number) => readonly [number, number]
  readonly place: (u: number, v: number) => Place
  readonly error_m: number
}): readonly number[] {
  const { at, edges, place, error_m } = given
  const curve = (side: 0 | 1) => (t: number) => place(at(t), edges(at(t))[side])
  const found = samples({ curves: [curve(0), curve(1)], from: -Math.PI / 2, to: Math.PI / 2, error_m, pieces: 6 })
  return found.slice(1, -1).map(at)
}

/** Where a tube passes a cylinder about the column's axis. */
export function tubeOpening(c: Crossing, error_m: number): Opening {
  const { pipeRadius_m: rho, tubeRadius_m: q, offset_m: e } = c
  const edges = (u: number) => curveEdges(c, u)
  const at = (t: number) => curveTurn(c, t)
  return {
    at: 0,
    left: at(-Math.PI / 2),
    right: at(Math.PI / 2),
    samples: between({ at, edges, place: (u, v) => onRound(rho, u, v), error_m }),
    edges,
    share: (u) => (rho * Math.sin(u) - e) / q,
  }
}

/** A hole cut square to the wall: the same outline at every depth of the wall. */
export function squareOpening(hole: Hole, error_m: number): Opening {
  const { left, right } = squareSides(hole)
  const [middle, half] = [(left + right) / 2, (right - left) / 2]
  const edges = (u: number) => squareEdges(hole, u)
  const at = (t: number) => middle + half * Math.sin(t)
  return {
    at: 0,
    left,
    right,
    samples: between({ at, edges, place: (u, v) => onRound(hole.columnRadius_m, u, v), error_m }),
    edges,
    share: (u) => (u - middle) / half,
  }
}

/** A round hole in a plate that is told by angle and distance from its middle. */
export function roundOpening(given: {
  readonly turn_rad: number
  readonly distance_m: number
  readonly radius_m: number
  readonly error_m: number
}): Opening {
  const { turn_rad, distance_m: c, radius_m: h, error_m } = given
  const side = Math.asin(h / c)
  const edges = (u: number): readonly [number, number] => {
    const half = Math.sqrt(Math.max(0, h * h - (c * Math.sin(u)) ** 2))
    return [c * Math.cos(u) - half, c * Math.cos(u) + half]
  }
  const at = (t: number) => Math.asin((h / c) * Math.sin(t))
  return {
    at: turn_rad,
    left: -side,
    right: side,
    samples: between({ at, edges, place: (u, v) => [v * Math.cos(u), v * Math.sin(u), 0], error_m }),
    edges,
    share: (u) => (c * Math.sin(u)) / h,
  }
}
