/**
 * Which sites get water: a model that says less than the truth rather than more, and what it leaves out.
 *
 * In it: the pool over the holes stands level, so a leaning plate gives its low side more; a stream that leaves within
 * a capillary length of the wall runs down the wall, one further in falls free and, in a leaning column, meets the wall
 * lower down; a stream on the wall keeps a strip wet whose width its own flow can hold open; strips creep towards the
 * low line of a leaning wall. Clogged holes are taken in a row, dirt settling on one side, at their worst place.
 * What falls free is followed in the drops. Left out: spreading by stubs and roots, which in a grown column mend dry
 * strips, and water turned aside at openings higher up. The paper strip in the column has the last word.
 */
import { holeFlows } from './equations-distributor.ts'
import type { Water } from './equations-water.ts'
import { capillaryLength, coveredShare, filmBearing, freeFallToWall, rivuletWidth } from './equations-wetting.ts'
import { apart, type Drops, dropsOf, type Place, type Strikes, strikesOf } from './wetting-drops.ts'

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
  /** How far the stub's end stands into the bore. */
  readonly end_m: number
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

/** What stays the same whichever holes are blocked and however wide the strips are. */
interface Paths {
  readonly angles_rad: readonly number[]
  readonly depths_m: readonly number[]
  /** By hole, then by depth. */
  readonly places: readonly (readonly Place[])[]
  /** By site, then by hole: margin of the middle of the stream; `wall` adds half the strip. */
  readonly bare: readonly (readonly { readonly margin_rad: number; readonly wall: boolean }[])[]
}

function pathsOf(c: Omit<WettingCase, 'contactAngle_rad'>): Paths {
  const angles_rad = holeAngles(c.holes)
  const radius_m = Math.min(c.holes.circle_m, c.bore_m) / 2
  const clings = (c.bore_m - c.holes.hole_m) / 2 - radius_m <= capillaryLength(c.water)
  const depths_m = [...new Set(c.sites.map((site) => site.depth_m))].sort((a, b) => a - b)
  const places = angles_rad.map((bearing_rad) => {
    const { bore_m, lean_rad, toward_rad: low_rad } = c
    const wall_m = clings ? 0 : freeFallToWall({ bore_m, lean_rad, low_rad, radius_m, bearing_rad })
    return depths_m.map((depth_m) => placeAt(c, { bearing_rad, radius_m, wall_m }, depth_m))
  })
  const bare = c.sites.map((site) => {
    const at = depths_m.indexOf(site.depth_m)
    return places.map((byDepth) => bareMargin(c, byDepth[at]!, site))
  })
  return { angles_rad, depths_m, places, bare }
}

/** Place at a depth of a stream that leaves at a radius and bearing and is on the wall from `wall_m` on. */
function placeAt(
  c: Omit<WettingCase, 'contactAngle_rad'>,
  stream: { readonly bearing_rad: number; readonly radius_m: number; readonly wall_m: number },
  depth_m: number,
): Place {
  const fall = Math.min(depth_m, stream.wall_m)
  const drift = fall * Math.tan(Math.abs(c.lean_rad))
  const x = stream.radius_m * Math.cos(stream.bearing_rad) + drift * Math.cos(c.toward_rad)
  const y = stream.radius_m * Math.sin(stream.bearing_rad) + drift * Math.sin(c.toward_rad)
  const bearing_rad = Math.atan2(y, x)
  if (depth_m < stream.wall_m) return { bearing_rad, radius_m: Math.hypot(x, y), onWall: false }
  const { bore_m, lean_rad, toward_rad: low_rad } = c
  const run = { bore_m, lean_rad, low_rad, bearing_rad, run_m: depth_m - stream.wall_m }
  return { bearing_rad: filmBearing(run), radius_m: bore_m / 2, onWall: true }
}

function bareMargin(
  c: Omit<WettingCase, 'contactAngle_rad'>,
  place: Place,
  site: WetSite,
): { readonly margin_rad: number; readonly wall: boolean } {
  const margin_rad = site.halfAngle_rad - apart(place.bearing_rad, site.angle_rad)
  const met = place.onWall || place.radius_m >= c.bore_m / 2 - site.reach_m
  return { margin_rad: met ? margin_rad : -Math.PI, wall: place.onWall }
}

/** Flow of each hole, none where it is blocked, and the head over the middle of the plate. */
function flowsOf(
  c: Omit<WettingCase, 'contactAngle_rad'>,
  paths: Paths,
  blocked: ReadonlySet<number>,
): { readonly head_m: number; readonly flows_m3_s: readonly number[] } {
  const open: number[] = []
  for (let i = 0; i < paths.angles_rad.length; i++) if (!blocked.has(i)) open.push(i)
  if (open.length === 0 || c.flow_m3_s === 0) return { head_m: 0, flows_m3_s: paths.angles_rad.map(() => 0) }
  const { circle_m, discharge, hole_m } = c.holes
  const { flow_m3_s, lean_rad, toward_rad } = c
  const angles_rad = open.map((i) => paths.angles_rad[i]!)
  const found = holeFlows({ flow_m3_s, lean_rad, toward_rad, circle_m, discharge, hole_m, angles_rad })
  const flows = paths.angles_rad.map(() => 0)
  open.forEach((hole, i) => {
    flows[hole] = found.flows_m3_s[i]!
  })
  return { head_m: found.head_m, flows_m3_s: flows }
}

/** Angle of wall that a cubic metre per second keeps wet. */
const widthPerFlow = (c: WettingCase): number => rivuletWidth({ ...c, flow_m3_s: 1 }) / (c.bore_m / 2)

function margins(paths: Paths, flows_m3_s: readonly number[], perFlow: number): readonly number[] {
  // Asked for every row of holes that may clog: plain loops, since nothing here costs more.
  return paths.bare.map((byHole) => {
    let best = -Math.PI
    for (let hole = 0; hole < byHole.length; hole++) {
      const flow = flows_m3_s[hole]!
      if (flow <= 0) continue
      const { margin_rad, wall } = byHole[hole]!
      const margin = wall ? margin_rad + (perFlow * flow) / 2 : margin_rad
      if (margin > best) best = margin
    }
    return best
  })
}

const judged = (c: { readonly sites: readonly WetSite[] }, margin: readonly number[]): readonly SiteWetting[] =>
  c.sites.map(({ id }, i) => ({ id, reached: margin[i]! >= 0, margin_rad: margin[i]! }))

/** The map at one flow, lean and set of blocked holes. With all holes blocked, or no flow, every site is dry. */
export function wettingMap(c: WettingCase, blocked: ReadonlySet<number> = new Set()): WettingMap {
  const paths = pathsOf(c)
  const { head_m, flows_m3_s } = flowsOf(c, paths, blocked)
  const perFlow = widthPerFlow(c)
  const wetShares = paths.depths_m.map((depth_m, at) => {
    const arcs = paths.places.flatMap((byDepth, hole) => {
      const { bearing_rad, onWall } = byDepth[at]!
      return onWall ? [{ middle_rad: bearing_rad, width_rad: perFlow * flows_m3_s[hole]! }] : []
    })
    return { depth_m, share: coveredShare({ arcs }) }
  })
  return { sites: judged(c, margins(paths, flows_m3_s, perFlow)), head_m, wetShares }
}

/** Places at which a row of clogged holes is tried; a circle of more holes is stepped over evenly. */
const ROWS_TRIED = 24

/** Rows of neighbouring holes that a share of clogging may take, round the circle. */
function cloggedRows(count: number, cloggedShare: number): readonly ReadonlySet<number>[] {
  const row = Math.round(cloggedShare * count)
  if (row === 0) return [new Set()]
  const tried = Math.min(count, ROWS_TRIED)
  return Array.from({ length: tried }, (_, i) => {
    const from = Math.floor((i * count) / tried)
    return new Set(Array.from({ length: row }, (_, k) => (from + k) % count))
  })
}

function worstMargins(
  c: Omit<WettingCase, 'contactAngle_rad'>,
  cloggedShare: number,
  perFlows: readonly number[],
): readonly (readonly number[])[] {
  const paths = pathsOf(c)
  const flows = cloggedRows(c.holes.count, cloggedShare).map((row) => flowsOf(c, paths, row).flows_m3_s)
  return perFlows.map((perFlow) => {
    const maps = flows.map((f) => margins(paths, f, perFlow))
    return c.sites.map((_, i) => Math.min(...maps.map((m) => m[i]!)))
  })
}

/** Each site at the worst place of a row of clogged holes. */
export function cloggedWetting(c: WettingCase, cloggedShare: number): readonly SiteWetting[] {
  return judged(c, worstMargins(c, cloggedShare, [widthPerFlow(c)])[0]!)
}

export interface SiteWater {
  readonly id: string
  /**
   * By film: `wet` even on the wall that is hardest to wet, `doubtful` only on one that has run in. Else `drops` where
   * falling water strikes it, `dry` where neither does.
   */
  readonly water: 'wet' | 'doubtful' | 'drops' | 'dry'
  readonly hardMargin_rad: number
  readonly easyMargin_rad: number
  readonly drops: Drops
}

/** What the drops strike with all holes running: the same whichever are blocked. */
function allStrikes(c: Omit<WettingCase, 'contactAngle_rad'>, paths: Paths): readonly Strikes[] {
  const { head_m } = flowsOf(c, paths, new Set())
  const at = c.sites.map((site) => paths.depths_m.indexOf(site.depth_m))
  const places = paths.places.map((byDepth) => at.map((depth) => byDepth[depth]!))
  const { bore_m, water, sites } = c
  return strikesOf({ bore_m, hole_m: c.holes.hole_m, water, head_m, sites, places })
}

interface RowMap {
  readonly dry: number
  readonly hard: readonly number[]
  readonly easy: readonly number[]
  readonly drops: readonly Drops[]
}

function siteWaters(c: { readonly sites: readonly WetSite[] }, map: RowMap): readonly SiteWater[] {
  return c.sites.map(({ id }, i): SiteWater => {
    const [hardMargin_rad, easyMargin_rad, drops] = [map.hard[i]!, map.easy[i]!, map.drops[i]!]
    const film = hardMargin_rad >= 0 ? 'wet' : easyMargin_rad >= 0 ? 'doubtful' : null
    return { id, water: film ?? (drops === null ? 'dry' : 'drops'), hardMargin_rad, easyMargin_rad, drops }
  })
}

/**
 * The map with a row of clogged holes at the one place where it leaves most sites dry, over walls from one that is hard
 * to wet to one that wets easily.
 */
export function worstRow(
  c: Omit<WettingCase, 'contactAngle_rad'>,
  wall: { readonly hard_rad: number; readonly easy_rad: number },
  cloggedShare: number,
): readonly SiteWater[] {
  const paths = pathsOf(c)
  const strikes = allStrikes(c, paths)
  const perFlow = (contactAngle_rad: number) => widthPerFlow({ ...c, contactAngle_rad })
  const [hardest, easiest] = [perFlow(wall.hard_rad), perFlow(wall.easy_rad)]
  let worst: RowMap | null = null
  for (const row of cloggedRows(c.holes.count, cloggedShare)) {
    const { flows_m3_s } = flowsOf(c, paths, row)
    const [hard, easy] = [margins(paths, flows_m3_s, hardest), margins(paths, flows_m3_s, easiest)]
    const drops = dropsOf(strikes, c.sites, (hole) => flows_m3_s[hole]! > 0)
    // A site that nothing reaches weighs more than one that drops reach, and that more than one on a new wall only.
    const all = c.sites.length
    const weight = (m: number, i: number) => (m >= 0 ? (hard[i]! < 0 ? 1 : 0) : drops[i] === null ? all * all : all)
    const dry = easy.reduce((n, m, i) => n + weight(m, i), 0)
    if (worst === null || dry > worst.dry) worst = { dry, hard, easy, drops }
  }
  return worst === null ? [] : siteWaters(c, worst)
}
