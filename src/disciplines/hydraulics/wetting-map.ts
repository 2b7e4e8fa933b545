/**
 * Which sites get water: a model that says less than the truth rather than more, and what it leaves out.
 *
 * In it: the pool over the holes stands level, so a leaning plate gives its low side more; a stream that leaves within
 * a capillary length of the wall runs down the wall, one further in falls free and, in a leaning column, meets the wall
 * lower down; a stream on the wall keeps a strip wet whose width its own flow can hold open; strips creep towards the
 * low line of a leaning wall. Clogged holes are taken in a row, dirt settling on one side, at their worst place.
 * Left out: spreading by stubs, roots and splashes, which in a grown column mend dry strips, and water turned aside at
 * openings higher up. A site is judged for the strip alone; the paper strip in the column has the last word.
 */
import { holeFlows } from './equations-distributor.ts'
import type { Water } from './equations-water.ts'
import { capillaryLength, coveredShare, filmBearing, freeFallToWall, rivuletWidth } from './equations-wetting.ts'

export interface Holes {
  readonly count: number
  /** Bearing of the first hole; the others follow evenly. */
  readonly first_rad: number
  /** Diameter of the circle of holes; that of the bore for a ring of holes in the wall. */
  readonly circle_m: number
  readonly hole_m: number
  readonly discharge: number
}

export interface WetSite {
  readonly id: string
  readonly angle_rad: number
  /** Below the distributor. */
  readonly depth_m: number
  /** Half of the angle that the opening takes up in the wall. */
  readonly halfAngle_rad: number
  /** How far the cup stands into the bore from the wall; zero where it does not. */
  readonly reach_m: number
}

export interface WettingCase {
  readonly flow_m3_s: number
  readonly water: Water
  readonly contactAngle_rad: number
  readonly bore_m: number
  /** Lean of the column, and the bearing to which its top leans: there is the low line of the wall. */
  readonly lean_rad: number
  readonly toward_rad: number
  readonly holes: Holes
  readonly sites: readonly WetSite[]
}

interface Stream {
  readonly bearing_rad: number
  readonly radius_m: number
  readonly flow_m3_s: number
  readonly width_rad: number
  /** Depth at which it is on the wall. */
  readonly wall_m: number
}

export interface SiteWetting {
  readonly id: string
  readonly reached: boolean
  /** By how much of an angle the nearest strip overlaps the opening; negative: misses it. */
  readonly margin_rad: number
}

export interface WettingMap {
  readonly sites: readonly SiteWetting[]
  /** Head over the middle of the plate. */
  readonly head_m: number
  /** Share of the perimeter that is wet at the depth of each site, deepest included. */
  readonly wetShares: readonly { readonly depth_m: number; readonly share: number }[]
}

export const holeAngles = (holes: Holes): readonly number[] =>
  Array.from({ length: holes.count }, (_, i) => holes.first_rad + (2 * Math.PI * i) / holes.count)

function streamsOf(c: WettingCase, blocked: ReadonlySet<number>): { head_m: number; streams: readonly Stream[] } {
  const angles = holeAngles(c.holes).filter((_, i) => !blocked.has(i))
  const { head_m, flows_m3_s } = holeFlows({ ...c, ...c.holes, angles_rad: angles })
  const radius_m = Math.min(c.holes.circle_m, c.bore_m) / 2
  const clings = (c.bore_m - c.holes.hole_m) / 2 - radius_m <= capillaryLength(c.water)
  const streams = angles.map((bearing_rad, i): Stream => {
    const flow_m3_s = flows_m3_s[i]!
    const width_rad = rivuletWidth({ ...c, flow_m3_s }) / (c.bore_m / 2)
    const wall_m = clings ? 0 : freeFallToWall({ ...c, radius_m, bearing_rad, low_rad: c.toward_rad })
    return { bearing_rad, radius_m, flow_m3_s, width_rad, wall_m }
  })
  return { head_m, streams: streams.filter((s) => s.flow_m3_s > 0) }
}

/** Place of a stream in the section at a depth. */
function placeAt(c: WettingCase, stream: Stream, depth_m: number): { bearing_rad: number; radius_m: number } {
  const fall = Math.min(depth_m, stream.wall_m)
  const drift = stream.wall_m === 0 ? 0 : fall * Math.tan(Math.abs(c.lean_rad))
  const x = stream.radius_m * Math.cos(stream.bearing_rad) + drift * Math.cos(c.toward_rad)
  const y = stream.radius_m * Math.sin(stream.bearing_rad) + drift * Math.sin(c.toward_rad)
  const bearing_rad = Math.atan2(y, x)
  if (depth_m < stream.wall_m) return { bearing_rad, radius_m: Math.hypot(x, y) }
  const run = { ...c, bearing_rad, low_rad: c.toward_rad, run_m: depth_m - stream.wall_m }
  return { bearing_rad: filmBearing(run), radius_m: c.bore_m / 2 }
}

/** Angle between two bearings, 0 to π. */
function apart(one_rad: number, other_rad: number): number {
  const turn = Math.abs(one_rad - other_rad) % (2 * Math.PI)
  return turn > Math.PI ? 2 * Math.PI - turn : turn
}

function marginOf(c: WettingCase, stream: Stream, site: WetSite): number {
  const place = placeAt(c, stream, site.depth_m)
  const away = apart(place.bearing_rad, site.angle_rad)
  if (site.depth_m >= stream.wall_m) return site.halfAngle_rad + stream.width_rad / 2 - away
  return place.radius_m >= c.bore_m / 2 - site.reach_m ? site.halfAngle_rad - away : -Math.PI
}

/** The map at one flow, lean and set of blocked holes. With all holes blocked, or no flow, every site is dry. */
export function wettingMap(c: WettingCase, blocked: ReadonlySet<number> = new Set()): WettingMap {
  if (blocked.size >= c.holes.count || c.flow_m3_s === 0)
    return { sites: c.sites.map(({ id }) => ({ id, reached: false, margin_rad: -Math.PI })), head_m: 0, wetShares: [] }
  const { head_m, streams } = streamsOf(c, blocked)
  const sites = c.sites.map((site): SiteWetting => {
    const margin_rad = streams.reduce((best, s) => Math.max(best, marginOf(c, s, site)), -Math.PI)
    return { id: site.id, reached: margin_rad >= 0, margin_rad }
  })
  const depths = [...new Set(c.sites.map((site) => site.depth_m))].sort((a, b) => a - b)
  const wetShares = depths.map((depth_m) => {
    const onWall = streams.filter((s) => depth_m >= s.wall_m)
    const arcs = onWall.map((s) => ({ middle_rad: placeAt(c, s, depth_m).bearing_rad, width_rad: s.width_rad }))
    return { depth_m, share: coveredShare({ arcs }) }
  })
  return { sites, head_m, wetShares }
}

/** Each site at the worst place of a row of clogged holes. */
export function cloggedWetting(c: WettingCase, cloggedShare: number): readonly SiteWetting[] {
  const blockedCount = Math.round(cloggedShare * c.holes.count)
  if (blockedCount === 0) return wettingMap(c).sites
  const maps = Array.from({ length: c.holes.count }, (_, from) => {
    const row = Array.from({ length: blockedCount }, (_, i) => (from + i) % c.holes.count)
    return wettingMap(c, new Set(row)).sites
  })
  return c.sites.map(({ id }, i) => {
    const margin_rad = Math.min(...maps.map((sites) => sites[i]!.margin_rad))
    return { id, reached: margin_rad >= 0, margin_rad }
  })
}

export interface SiteWater {
  readonly id: string
  /** `wet` even on the wall that is hardest to wet, `dry` even on the easiest, `doubtful` between. */
  readonly water: 'wet' | 'doubtful' | 'dry'
  readonly hardMargin_rad: number
  readonly easyMargin_rad: number
}

/** What can be said of each site while the state of the wall is only known to lie between two. */
export function wettingBand(
  c: Omit<WettingCase, 'contactAngle_rad'>,
  wall: { readonly hard_rad: number; readonly easy_rad: number },
  cloggedShare: number,
): readonly SiteWater[] {
  const hard = cloggedWetting({ ...c, contactAngle_rad: wall.hard_rad }, cloggedShare)
  const easy = cloggedWetting({ ...c, contactAngle_rad: wall.easy_rad }, cloggedShare)
  return hard.map((site, i): SiteWater => {
    const either = easy[i]!.reached ? 'doubtful' : 'dry'
    const water = site.reached ? 'wet' : either
    return { id: site.id, water, hardMargin_rad: site.margin_rad, easyMargin_rad: easy[i]!.margin_rad }
  })
}
