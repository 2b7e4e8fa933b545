import { type Cut, type Hole, holeCrossing } from '../../disciplines/templates/joint.ts'
import { stepOf } from './facets.ts'
import { draft, type Mesh, mesh } from './mesh.ts'
import { squareOpening, standing, tubeOpening } from './openings.ts'
import { close, type SheetGiven, sheet } from './sheet.ts'

/** A pipe standing on the origin with a hole for each site. */
export interface ColumnSolid {
  readonly outside_m: number
  readonly bore_m: number
  readonly length_m: number
  readonly cut: Cut
  readonly hole: Hole | null
  /** Turn of each site and height of the crossing of its axes. */
  readonly sites: readonly { readonly turn_rad: number; readonly height_m: number }[]
  readonly error_m: number
}

function wall(g: ColumnSolid, at: 'outside' | 'bore'): SheetGiven {
  const radius_m = (at === 'outside' ? g.outside_m : g.bore_m) / 2
  const { hole, cut, error_m } = g
  const one =
    hole === null ? null : cut === 'axis' ? tubeOpening(holeCrossing(hole, at), error_m) : squareOpening(hole, error_m)
  return {
    openings: one === null ? [] : g.sites.map((s) => standing(one, s.turn_rad, s.height_m)),
    must: [],
    step: stepOf(radius_m, error_m),
    closed: true,
    bottom: () => 0,
    top: () => g.length_m,
    place: (u, v) => [radius_m * Math.cos(u), radius_m * Math.sin(u), v],
    flip: at === 'bore',
  }
}

/** The column with its holes; null where holes meet each other or an end of the pipe. */
export function columnMesh(g: ColumnSolid): Mesh | null {
  const d = draft()
  const outer = sheet(d, wall(g, 'outside'))
  const inner = outer === null ? null : sheet(d, wall(g, 'bore'))
  if (outer === null || inner === null) return null
  close(d, outer, inner, true)
  return mesh(d)
}
