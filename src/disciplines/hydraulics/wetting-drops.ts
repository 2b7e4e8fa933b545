/**
 * Which sites falling water strikes without running down the wall to them.
 *
 * A stream that leaves the plate off the wall breaks into drops and falls. It strikes what stands in its way: the end of
 * a stub in the bore, the foot of a cup. Surely so where drilled square; and, where the drill stood a little askew, after
 * it has drifted out to the wall. What strikes fast enough throws droplets about the bore, on to sites of the same ring
 * and of the rings below: that is the likely end. Left out: how much of it a plug keeps. Only wet paper tells.
 */
import { fallingWater } from '../../tables/hydraulic-orifices.ts'
import { dropSpeed, splashNumber, streamDrift } from './equations-splash.ts'
import type { Water } from './equations-water.ts'

/** Where the stream of a hole is at a depth. Does not depend on its flow, so it is worked out once. */
export interface Place {
  readonly bearing_rad: number
  readonly radius_m: number
  readonly onWall: boolean
}

export interface StruckSite {
  readonly angle_rad: number
  readonly depth_m: number
  readonly halfAngle_rad: number
  /** How far the cup stands into the bore, and how far the end of its stub does. */
  readonly reach_m: number
  readonly end_m: number
}

interface Falling {
  readonly bore_m: number
  readonly hole_m: number
  readonly water: Water
  readonly head_m: number
  readonly sites: readonly StruckSite[]
  /** By hole, then by site. */
  readonly places: readonly (readonly Place[])[]
}

/** What the stream of one hole does to each site. */
export interface Strikes {
  readonly sure: readonly boolean[]
  readonly likely: readonly boolean[]
  /** Depth from which on it has splashed; endless where it does not. */
  readonly splashes_m: number
}

export type Drops = 'sure' | 'likely' | null

const { dropOverJet, drillError, jetSpeedShare, splashNumber: limit, largestDrop } = fallingWater.rows

/** Angle between two bearings, 0 to π. */
export function apart(one_rad: number, other_rad: number): number {
  const turn = Math.abs(one_rad - other_rad) % (2 * Math.PI)
  return turn > Math.PI ? 2 * Math.PI - turn : turn
}

/** Strikes of the streams that fall free; streams on the wall strike nothing. */
export function strikesOf(f: Falling): readonly Strikes[] {
  const drop_m = Math.min(largestDrop.value, dropOverJet.value * f.hole_m)
  const { density_kg_m3, tension_N_m, viscosity_Pa_s } = f.water
  const broken = new Map<number, boolean>()
  const breaks = (depth_m: number): boolean => {
    const known = broken.get(depth_m)
    if (known !== undefined) return known
    const speed_m_s = dropSpeed({ fall_m: depth_m, drop_m, density_kg_m3 })
    const own = splashNumber({ speed_m_s, drop_m, density_kg_m3, tension_N_m, viscosity_Pa_s }) > limit.value
    broken.set(depth_m, own)
    return own
  }
  const drift = new Map<number, number>()
  const driftAt = (fall_m: number): number => {
    const known = drift.get(fall_m)
    if (known !== undefined) return known
    const own = streamDrift({
      // Over the middle of a plate that leans the water may stand below the holes.
      head_m: Math.max(0, f.head_m),
      speedShare: jetSpeedShare.value,
      askew_rad: drillError.value,
      fall_m,
    })
    drift.set(fall_m, own)
    return own
  }
  const none = f.sites.map(() => false)
  return f.places.map((bySite): Strikes => {
    if (bySite.every((p) => p.onWall)) return { sure: none, likely: none, splashes_m: Number.POSITIVE_INFINITY }
    // What is missing from the edge of the stream to what stands in the bore; none where the stream goes by.
    const missing_m = f.sites.map((site, i) => {
      const { bearing_rad, radius_m, onWall } = bySite[i]!
      if (onWall || apart(bearing_rad, site.angle_rad) > site.halfAngle_rad) return Number.POSITIVE_INFINITY
      return f.bore_m / 2 - Math.max(site.reach_m, site.end_m) - radius_m - drop_m / 2
    })
    const sure = missing_m.map((m) => m <= 0)
    const likely = missing_m.map((m, i) => m <= 0 || (m < f.bore_m && m <= driftAt(f.sites[i]!.depth_m)))
    let splashes_m = Number.POSITIVE_INFINITY
    for (let i = 0; i < likely.length; i++) {
      const { depth_m } = f.sites[i]!
      if (likely[i] && depth_m < splashes_m && breaks(depth_m)) splashes_m = depth_m
    }
    return { sure, likely, splashes_m }
  })
}

/** What drops do to each site while some of the holes run. */
export function dropsOf(
  strikes: readonly Strikes[],
  sites: readonly StruckSite[],
  runs: (hole: number) => boolean,
): readonly Drops[] {
  // Asked for every row of holes that may clog: plain loops, as for the strips.
  const open: Strikes[] = []
  let splashed_m = Number.POSITIVE_INFINITY
  for (let hole = 0; hole < strikes.length; hole++) {
    if (!runs(hole)) continue
    const own = strikes[hole]!
    open.push(own)
    if (own.splashes_m < splashed_m) splashed_m = own.splashes_m
  }
  return sites.map(({ depth_m }, i): Drops => {
    let likely = depth_m >= splashed_m
    for (let k = 0; k < open.length; k++) {
      if (open[k]!.sure[i]) return 'sure'
      likely ||= open[k]!.likely[i]!
    }
    return likely ? 'likely' : null
  })
}
