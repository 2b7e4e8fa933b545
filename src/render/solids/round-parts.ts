import { stepOf } from './facets.ts'
import { type Draft, draft, type Edge, type Mesh, mesh, sew, vertex } from './mesh.ts'
import { roundOpening, standing, tubeOpening } from './openings.ts'
import { close, type Sheet, sheet } from './sheet.ts'

const TURN = 2 * Math.PI

/** Round holes of a plate on one circle. */
export interface PlateHole {
  readonly turn_rad: number
  readonly distance_m: number
  readonly radius_m: number
}

interface Plate {
  readonly holes: readonly PlateHole[]
  /** Hole in the middle; 0 for none. */
  readonly inner_m: number
  readonly outer_m: number
  readonly step: number
  readonly error_m: number
}

/** A flat face at one height, seen from above or from below, with holes. */
function flat(d: Draft, p: Plate, height_m: number, upward: boolean): Sheet | null {
  return sheet(d, {
    openings: p.holes.map((h) => roundOpening({ ...h, error_m: p.error_m })),
    must: [0],
    step: p.step,
    closed: true,
    bottom: () => p.inner_m,
    top: () => p.outer_m,
    place: (u, v) => [v * Math.cos(u), v * Math.sin(u), height_m],
    pointed: p.inner_m === 0,
    flip: upward,
  })
}

const raised = (d: Draft, e: Edge, radius_m: number, height_m: number): Edge => ({
  along: e.along,
  ids: e.along.map((u) => vertex(d, [radius_m * Math.cos(u), radius_m * Math.sin(u), height_m])),
})

/** An open cup standing on its floor, with holes through the floor. */
export function cupMesh(g: {
  readonly outside_m: number
  readonly depth_m: number
  readonly wall_m: number
  readonly floor_m: number
  readonly holes: readonly PlateHole[]
  readonly error_m: number
}): Mesh | null {
  const { holes, error_m } = g
  const d = draft()
  const outer_m = g.outside_m / 2
  const inner_m = outer_m - g.wall_m
  const step = stepOf(outer_m, error_m)
  const under = flat(d, { holes, inner_m: 0, outer_m, step, error_m }, 0, false)
  const floor = under === null ? null : flat(d, { holes, inner_m: 0, outer_m: inner_m, step, error_m }, g.floor_m, true)
  if (under === null || floor === null) return null
  under.openings.forEach((o, n) => {
    sew(d, o, floor.openings[n]!, { period: TURN, flip: true })
  })
  const rim = raised(d, under.top, outer_m, g.depth_m)
  const lip = raised(d, floor.top, inner_m, g.depth_m)
  const round = { period: TURN }
  sew(d, under.top, rim, round)
  sew(d, rim, lip, round)
  sew(d, lip, floor.top, round)
  return mesh(d)
}

/** A ring with round windows through its wall, level with each other. */
export function ringMesh(g: {
  readonly inside_m: number
  readonly wall_m: number
  readonly depth_m: number
  readonly windows: { readonly count: number; readonly radius_m: number; readonly height_m: number } | null
  readonly error_m: number
}): Mesh | null {
  const d = draft()
  const { windows, error_m } = g
  const wall = (radius_m: number, flip: boolean) => {
    const one =
      windows === null
        ? null
        : tubeOpening(
            { pipeRadius_m: radius_m, tubeRadius_m: windows.radius_m, angle_rad: Math.PI / 2, offset_m: 0 },
            error_m,
          )
    const openings = Array.from({ length: windows?.count ?? 0 }, (_, i) =>
      standing(one!, (TURN * (i + 0.5)) / windows!.count, windows!.height_m),
    )
    return sheet(d, {
      openings,
      must: [0],
      step: stepOf(radius_m, error_m),
      closed: true,
      bottom: () => 0,
      top: () => g.depth_m,
      place: (u, v) => [radius_m * Math.cos(u), radius_m * Math.sin(u), v],
      flip,
    })
  }
  const outer = wall(g.inside_m / 2 + g.wall_m, false)
  const inner = outer === null ? null : wall(g.inside_m / 2, true)
  if (outer === null || inner === null) return null
  close(d, outer, inner, true)
  return mesh(d)
}

/** A round lid lying on its face: a plate with holes and a skirt that stands into the tank. */
export function lidMesh(g: {
  readonly outside_m: number
  readonly sheet_m: number
  /** Hole for the column in the middle. */
  readonly hole_m: number
  readonly skirt: { readonly outside_m: number; readonly wall_m: number; readonly depth_m: number }
  readonly holes: readonly PlateHole[]
  readonly error_m: number
}): Mesh | null {
  const d = draft()
  const { holes, error_m, skirt } = g
  const step = stepOf(g.outside_m / 2, error_m)
  const [inner_m, outer_m] = [g.hole_m / 2, g.outside_m / 2]
  const within_m = skirt.outside_m / 2 - skirt.wall_m
  const face = flat(d, { holes, inner_m, outer_m, step, error_m }, 0, false)
  const back = face === null ? null : flat(d, { holes, inner_m, outer_m: within_m, step, error_m }, g.sheet_m, true)
  if (face === null || back === null) return null
  const round = { period: TURN }
  const top_m = g.sheet_m + skirt.depth_m
  const edge = raised(d, face.top, outer_m, g.sheet_m)
  const foot = raised(d, face.top, skirt.outside_m / 2, g.sheet_m)
  const rim = raised(d, face.top, skirt.outside_m / 2, top_m)
  const lip = raised(d, back.top, within_m, top_m)
  sew(d, face.top, edge, round)
  sew(d, edge, foot, round)
  sew(d, foot, rim, round)
  sew(d, rim, lip, round)
  sew(d, lip, back.top, round)
  sew(d, back.bottom, face.bottom, round)
  face.openings.forEach((o, n) => {
    sew(d, o, back.openings[n]!, { period: TURN, flip: true })
  })
  return mesh(d)
}
