import { openingExtent } from '../../disciplines/templates/equations.ts'
import { type Crossing, type Cut, curveLength, type Hole } from '../../disciplines/templates/joint.ts'
import { printedSizes } from '../../tables/printing.ts'
import { stepOf } from './facets.ts'
import { type Draft, draft, type Edge, type Mesh, mesh, sew, vertex } from './mesh.ts'
import { squareOpening, tubeOpening } from './openings.ts'
import { close, type SheetGiven, sheet } from './sheet.ts'
import { alongStub } from './stub.ts'

const TURN = 2 * Math.PI
const sizes = printedSizes.rows

/** Least margin beside the collar, and most of the half turn that a stiff sleeve may take and still come off. */
const LEAST_SHARE = 0.3
const MOST_rad = 1.52

/** A sleeve that lies round half of the pipe with the hole in it, and a collar along the stub's axis. */
export interface Guide {
  readonly hole: Hole
  readonly cut: Cut
  /** Sleeve from its inside to its outside. */
  readonly inner_m: number
  readonly outer_m: number
  /** Half of the angle it takes round the pipe. */
  readonly half_rad: number
  readonly bottom_m: number
  readonly top_m: number
  /** Outside of the collar, and how far along the axis it reaches; null where the hole is cut square to the wall. */
  readonly collar: { readonly radius_m: number; readonly reach_m: number } | null
  /** Lower edge of the sleeve under the site's mark. */
  readonly belowMark_m: number
  readonly notch: { readonly half_rad: number; readonly depth_m: number }
}

/** Sizes of the guide for a hole, or null where it would not come off the pipe any more. */
export function guideOf(given: {
  readonly hole: Hole
  readonly cut: Cut
  /** The hole's extent where it is cut square; null for a hole along the stub. */
  readonly square: {
    readonly top_m: number
    readonly bottom_m: number
    readonly left_rad: number
    readonly right_rad: number
  } | null
  readonly markRise_m: number
}): Guide | null {
  const { hole, cut, square, markRise_m } = given
  const wall_m = sizes['guide-wall'].length_m
  const margin_m = sizes['guide-margin'].length_m
  const inner_m = hole.columnRadius_m + sizes['guide-play'].length_m
  const outer_m = inner_m + wall_m
  const radius_m = hole.holeRadius_m + wall_m
  if (cut === 'axis' && radius_m + Math.abs(hole.offset_m) >= inner_m) return null
  const around = { pipeRadius_m: outer_m, tubeRadius_m: radius_m, angle_rad: hole.angle_rad, offset_m: hole.offset_m }
  const e = square ?? openingExtent(around)
  const widest = Math.max(e.right_rad, -e.left_rad)
  const half_rad = Math.min(MOST_rad, widest + margin_m / outer_m)
  if (half_rad - widest < (LEAST_SHARE * margin_m) / outer_m) return null
  const step_m = sizes['guide-step'].length_m
  const belowMark_m = Math.ceil((markRise_m - e.bottom_m + margin_m) / step_m) * step_m
  const notch_m = sizes['guide-notch'].length_m
  return {
    hole,
    cut,
    inner_m,
    outer_m,
    half_rad,
    belowMark_m,
    bottom_m: markRise_m - belowMark_m,
    top_m: e.top_m + margin_m,
    collar: cut === 'axis' ? { radius_m, reach_m: curveLength(around, 0) + sizes['guide-collar'].length_m } : null,
    notch: { half_rad: notch_m / outer_m, depth_m: notch_m },
  }
}

const crossing = (g: Guide, pipeRadius_m: number, tubeRadius_m: number): Crossing => ({
  pipeRadius_m,
  tubeRadius_m,
  angle_rad: g.hole.angle_rad,
  offset_m: g.hole.offset_m,
})

/** Depth of the notch that stands on the line. */
const notched = ({ notch }: Guide, u: number): number => notch.depth_m * Math.max(0, 1 - Math.abs(u) / notch.half_rad)

function wall(g: Guide, at: 'inner' | 'outer', error_m: number): SheetGiven {
  const radius_m = at === 'inner' ? g.inner_m : g.outer_m
  const tube_m = at === 'outer' && g.collar !== null ? g.collar.radius_m : g.hole.holeRadius_m
  const { half_rad, notch, hole } = g
  const must = [-half_rad, -notch.half_rad, 0, notch.half_rad, half_rad]
  return {
    openings: [g.cut === 'axis' ? tubeOpening(crossing(g, radius_m, tube_m), error_m) : squareOpening(hole, error_m)],
    must,
    step: stepOf(radius_m, error_m),
    closed: false,
    bottom: (u) => g.bottom_m + notched(g, u),
    top: (u) => g.top_m - notched(g, u),
    place: (u, v) => [radius_m * Math.cos(u), radius_m * Math.sin(u), v],
    flip: at === 'inner',
  }
}

/** The collar's tube, from its foot on the sleeve to its mouth and back through the hole. */
function collar(d: Draft, g: Guide, outer: Edge, inner: Edge): void {
  const { angle_rad, offset_m, holeRadius_m } = g.hole
  const { radius_m, reach_m } = g.collar!
  const mouth = (out_m: number, along: readonly number[]): Edge => ({
    ids: along.map((psi) => vertex(d, alongStub({ angle_rad, offset_m, s_m: reach_m, out_m, around_rad: psi }))),
    along,
  })
  const ring = [mouth(radius_m, outer.along), mouth(holeRadius_m, inner.along)] as const
  const how = { period: TURN, flip: true }
  sew(d, outer, ring[0], how)
  sew(d, ring[0], ring[1], how)
  sew(d, ring[1], inner, how)
}

/** The guide in one piece. */
export function guideMesh(g: Guide, error_m: number): Mesh | null {
  const d = draft()
  const outer = sheet(d, wall(g, 'outer', error_m))
  const inner = outer === null ? null : sheet(d, wall(g, 'inner', error_m))
  if (outer === null || inner === null) return null
  close(d, outer, inner, false, g.collar === null)
  if (g.collar !== null) collar(d, g, outer.openings[0]!, inner.openings[0]!)
  return mesh(d)
}
