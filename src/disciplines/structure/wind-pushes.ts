import type { Plan } from '../../plan/plan.ts'
import { canopyDrag, exposures, tankForce } from '../../tables/wind.ts'
import type { Push } from './equations-tipping.ts'
import { gustPressure, roundForceCoefficient, velocityPressure, windForce } from './equations-wind.ts'
import { siteAtWeek } from './site-mass.ts'
import type { StandFacts } from './stand.ts'

const EXPOSURE = { town: 'town', 'open land': 'open', shore: 'shore' } as const
/** Air for which the standard's 0.613 stands. */
const STANDARD_AIR_kg_m3 = 1.225

/** Pressure of a gust where the tower stands: measured there, or that of the weather service brought down to the ground. */
export function pressureOf(plan: Plan, air_kg_m3: number): (wind_m_s: number) => number {
  const of = plan.place?.gustOf ?? 'here'
  if (of === 'here') return (wind_m_s) => gustPressure({ air_kg_m3, wind_m_s })
  const exposure = exposures.rows[EXPOSURE[of]].pressureShare
  return (gust_m_s) =>
    (velocityPressure({ gust_m_s, exposure, topography: 1, directionality: 1 }) * air_kg_m3) / STANDARD_AIR_kg_m3
}

/** The leafy part of a column as the wind sees it. */
export interface Canopy {
  readonly across_m: number
  readonly bottom_m: number
  readonly top_m: number
}

/** Outline of the planted column some weeks after planting; a stated width is that of the oldest plants. */
export function canopyAt(stand: StandFacts, given: { week: number; oldest: number; across_m: number | null }): Canopy {
  const { outline_m } = siteAtWeek({ week: given.week })
  const grown_m = siteAtWeek({ week: given.oldest }).outline_m
  const bare_m = 2 * stand.reach_m
  const share = grown_m > 0 ? outline_m / grown_m : 1
  const across_m =
    given.across_m === null
      ? bare_m + outline_m
      : given.across_m <= bare_m
        ? given.across_m
        : bare_m + (given.across_m - bare_m) * share
  const low_m = Math.min(...stand.siteHeights_m)
  const high_m = Math.max(...stand.siteHeights_m)
  return { across_m, bottom_m: Math.max(0, low_m - outline_m / 2), top_m: high_m + outline_m / 2 }
}

/** Bare pipe below and above the leaves. */
function barePipe(stand: StandFacts, canopy: Canopy): readonly { from_m: number; to_m: number }[] {
  const seen_m = stand.kind === 'through the lid' ? Math.max(stand.foot_m, stand.tank?.height_m ?? 0) : stand.foot_m
  return [
    { from_m: seen_m, to_m: Math.min(stand.top_m, canopy.bottom_m) },
    { from_m: Math.max(canopy.top_m, seen_m), to_m: stand.top_m },
  ].filter((p) => p.to_m > p.from_m)
}

/** Forces of a pressure on all that stands on one base. */
export function windPushes(stand: StandFacts, canopy: Canopy, pressure_Pa: number): readonly Push[] {
  const force = (coefficient: number, area_m2: number) =>
    windForce({ pressure_Pa, gustFactor: 1, coefficient, area_m2 })
  const { outside_m } = stand.pipe
  const round = roundForceCoefficient({ height_m: stand.top_m - stand.foot_m, outside_m })
  const leaves: Push = {
    force_N: force(canopyDrag.rows.leafy.safe, canopy.across_m * (canopy.top_m - canopy.bottom_m)) * stand.columns,
    height_m: (canopy.bottom_m + canopy.top_m) / 2,
  }
  const pipe = barePipe(stand, canopy).map(({ from_m, to_m }) => ({
    force_N: force(round, outside_m * (to_m - from_m)) * stand.columns,
    height_m: (from_m + to_m) / 2,
  }))
  const t = stand.tank
  const tank =
    t === null
      ? []
      : [
          {
            force_N: force(tankForce.rows[t.shape].forceCoefficient, t.across_m * t.height_m),
            height_m: t.height_m / 2,
          },
        ]
  return [leaves, ...pipe, ...tank]
}
