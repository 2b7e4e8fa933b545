import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { GRAVITY_m_s2 } from '../../tables/constants.ts'
import { bodies as stores } from '../../tables/heat.ts'
import { practiceRatios } from '../../tables/practice.ts'
import { baseFriction, peopleForces, soils, stabilityFactors } from '../../tables/stability.ts'
import { standingPractice } from '../../tables/standing.ts'
import { type Body, centreOfGravity, towerBodies } from './equations-mass.ts'
import {
  ballastMass,
  burialDepth,
  overturningMoment,
  type Push,
  rightingRatio,
  slidingRatio,
} from './equations-tipping.ts'
import { tippingWind } from './equations-wind.ts'
import { siteAtWeek } from './site-mass.ts'
import type { Level, StandFacts } from './stand.ts'
import { tippingResult } from './tipping-map.ts'
import { canopyAt, pressureOf, windPushes } from './wind-pushes.ts'

/** The tower at one level and one age of the crop, against the gust of the place. */
export interface TippingCell {
  readonly level: Level
  readonly week: number
  readonly mass_kg: number
  readonly centre_m: number
  readonly righting_N_m: number
  readonly overturning_N_m: number
  /** Free-standing; null where nothing pushes. */
  readonly ratio: number | null
  /** Gust at which it falls, and up to which it stands free with the wanted reserve. */
  readonly falls_m_s: number
  readonly free_m_s: number
  readonly strap_N: number
}

/** Ratios of what holds to what pushes for the hardest and the softest of a kind of people. */
export interface PeopleRatio {
  readonly low: number
  readonly high: number
  readonly strap_N: number
}

export interface TippingFacts {
  readonly arm_m: number
  readonly base_m: number
  readonly gust_m_s: number
  readonly oldest: number
  readonly wanted: number
  /** By level, lowest first, and week. */
  readonly cells: readonly TippingCell[]
  readonly atFill: TippingCell
  readonly atLow: TippingCell
  readonly worst: TippingCell
  readonly child: PeopleRatio
  readonly adult: PeopleRatio
  /** Least solution with which it stands free in the gust; null where no level of the tank does, 0 where none is needed. */
  readonly refill_m3: number | null
  readonly strap: {
    readonly height_m: number
    readonly heightGiven: boolean
    /** What the weaker of strap and anchor carries; null where the plan does not say. */
    readonly capacity_N: number | null
    /** Pull for the gust and for people, the worst of levels and weeks. */
    readonly wind_N: number
    readonly people_N: number
  }
  readonly ballast_kg: number
  readonly baseNeeded_m: number
  /** Against the gust on a wet floor; null where nothing pushes. */
  readonly sliding: number | null
  /** Depth in clay that would hold a buried foot without a strap. */
  readonly burial_m: number | null
  readonly pushes: readonly Push[]
}

const LEVELS = 7
const DAYS_OF_WEEK = 7
/** A gust by which ratios of a tower out of the wind are still told; they go with the square of it. */
const YARDSTICK_m_s = 10

/** Narrow side of the base under the weight; what to measure where nobody has. */
export function baseWidth(plan: Plan): Known<number> {
  if (plan.column?.base?.kind === 'own foot') {
    const width_m = plan.column.base.footWidth_m
    return width_m === undefined ? { needs: ['column/base/footWidth'] } : { known: width_m }
  }
  const r = plan.reservoir
  const round = r?.container?.shape === 'round'
  const width_m = r?.outsideWidth_m ?? (round ? r?.outsideLength_m : undefined)
  if (width_m === undefined) return { needs: ['reservoir/outsideWidth'] }
  return { known: Math.min(width_m, r?.outsideLength_m ?? width_m) }
}

export const oldestWeek = (plan: Plan): number =>
  plan.column?.sites?.oldest_d === undefined
    ? standingPractice.rows.oldestWeek.value
    : plan.column.sites.oldest_d / DAYS_OF_WEEK

export function bodiesAt(stand: StandFacts, level: Level, week: number): readonly Body[] {
  return towerBodies({
    fixed: stand.fixed,
    solution: {
      ...level,
      bottom_m: stand.tankFloor_m,
      density_kg_m3: stores.rows.water.density_kg_m3,
    },
    siteHeights_m: stand.siteHeights_m,
    site_kg: siteAtWeek({ week }).mass_kg * stand.columns,
  })
}

function levelsBetween(stand: StandFacts): readonly Level[] {
  const { low, fill } = stand
  if (fill.volume_m3 <= low.volume_m3) return [low]
  const at = (a: number, b: number, share: number) => a + (b - a) * share
  return Array.from({ length: LEVELS }, (_, i) => {
    const share = i / (LEVELS - 1)
    return { volume_m3: at(low.volume_m3, fill.volume_m3, share), level_m: at(low.level_m, fill.level_m, share) }
  })
}

function people(
  row: 'child-pull' | 'adult-lean',
  stand: StandFacts,
  of: { righting_N_m: number; wanted: number; strap_m: number },
): PeopleRatio {
  const { low_N, high_N, low_m, high_m } = peopleForces.rows[row]
  const moment = (force_N: number, height_m: number) =>
    overturningMoment({ pushes: [{ force_N, height_m: Math.min(height_m, stand.top_m) }] })
  const [soft, hard] = [moment(low_N, low_m), moment(high_N, high_m)]
  const ratio = (overturning_N_m: number) => rightingRatio({ righting_N_m: of.righting_N_m, overturning_N_m })
  return {
    low: ratio(hard),
    high: ratio(soft),
    strap_N: Math.max(0, (of.wanted * hard - of.righting_N_m) / of.strap_m),
  }
}

/** Least volume whose weight rights the tower in the gust; weight grows in step with volume, so this is exact. */
function refillVolume(stand: StandFacts, needed_N_m: number, arm_m: number, dry_kg: number): number | null {
  const volume_m3 = Math.max(0, needed_N_m / (GRAVITY_m_s2 * arm_m) - dry_kg) / stores.rows.water.density_kg_m3
  return volume_m3 > stand.fill.volume_m3 ? null : volume_m3
}

interface Wind {
  readonly plan: Plan
  readonly stand: StandFacts
  readonly air_kg_m3: number
  readonly arm_m: number
  readonly gust_m_s: number
  readonly strap_m: number
}

const wanted = stabilityFactors.rows['free-standing'].ratio

/** Pushes of a wind on the tower at an age of its plants. */
function pushesOf({ plan, stand, air_kg_m3 }: Wind): (week: number, wind_m_s: number) => readonly Push[] {
  const pressure = pressureOf(plan, air_kg_m3)
  const across_m = plan.column?.sites?.across_m ?? null
  const oldest = oldestWeek(plan)
  return (week, wind_m_s) => windPushes(stand, canopyAt(stand, { week, oldest, across_m }), pressure(wind_m_s))
}

/** Results at any level and week; the yardstick stands in for the gust of a place without wind. */
function cellsOf(w: Wind): (level: Level, week: number) => TippingCell {
  const { stand, arm_m, gust_m_s, strap_m } = w
  const pushes = pushesOf(w)
  const blown = gust_m_s > 0
  const wind_m_s = blown ? gust_m_s : YARDSTICK_m_s
  return (level, week) => {
    const bodies = bodiesAt(stand, level, week)
    const r = tippingResult({ bodies, pushes: pushes(week, wind_m_s), arm_m, wantedRatio: wanted, strap_m })
    return {
      level,
      week,
      mass_kg: r.mass_kg,
      centre_m: r.centre_m,
      righting_N_m: r.righting_N_m,
      overturning_N_m: blown ? r.overturning_N_m : 0,
      ratio: blown ? r.ratio : null,
      falls_m_s: tippingWind({ wind_m_s, ratio: r.ratio }),
      free_m_s: tippingWind({ wind_m_s, ratio: r.ratio / wanted }),
      strap_N: blown ? r.strap_N : 0,
    }
  }
}

/** What a gust does to a level floor: sliding, and how deep a buried foot would have to go. */
function groundFacts(stand: StandFacts, pushes: readonly Push[], mass_kg: number) {
  const push_N = pushes.reduce((sum, p) => sum + p.force_N, 0)
  if (!(push_N > 0)) return { sliding: null, burial_m: null }
  return {
    sliding: slidingRatio({ friction: baseFriction.rows['plastic-wet'].friction, mass_kg, push_N }),
    burial_m: burialDepth({
      push_N: push_N / stand.columns,
      height_m: overturningMoment({ pushes }) / push_N,
      foot_m: stand.pipe.outside_m,
      bearing_Pa_m: soils.rows.clay.bearing_Pa_m,
    }),
  }
}

/** Where the strap sits, as stated or by rule, and what it may carry: that no rule tells. */
function strapOf(plan: Plan, stand: StandFacts) {
  const { strapHeight_m, strapLoad_N } = plan.column?.base ?? {}
  return {
    height_m: Math.min(strapHeight_m ?? practiceRatios.rows.strap.low * stand.top_m, stand.top_m),
    heightGiven: strapHeight_m !== undefined,
    capacity_N: strapLoad_N ?? null,
  }
}

export function tippingFacts(
  plan: Plan,
  stand: StandFacts,
  sky: { air_kg_m3: number; outdoors: boolean },
): Known<TippingFacts> {
  const base = baseWidth(plan)
  if (!isKnown(base)) return base
  if (sky.outdoors && plan.place?.gust_m_s === undefined) return { needs: ['place/gust'] }
  const gust_m_s = plan.place?.gust_m_s ?? 0
  const arm_m = base.known / 2
  const oldest = oldestWeek(plan)
  const strap = strapOf(plan, stand)
  const wind: Wind = { plan, stand, air_kg_m3: sky.air_kg_m3, arm_m, gust_m_s, strap_m: strap.height_m }
  const cell = cellsOf(wind)
  const levels = levelsBetween(stand)
  // Where the water changes nothing the weeks are followed instead.
  const ages = levels.length > 1 ? 2 : LEVELS - 1
  const weeks = [...new Set(Array.from({ length: ages + 1 }, (_, i) => (oldest * i) / ages))]
  const cells = levels.flatMap((level) => weeks.map((week) => cell(level, week)))
  const worst = cells.reduce((a, b) => (b.falls_m_s < a.falls_m_s ? b : a))
  const lightest = cells.reduce((a, b) => (b.righting_N_m < a.righting_N_m ? b : a))
  const of = { righting_N_m: lightest.righting_N_m, wanted, strap_m: strap.height_m }
  const [child, adult] = [people('child-pull', stand, of), people('adult-lean', stand, of)]
  const pushes = gust_m_s > 0 ? pushesOf(wind)(oldest, gust_m_s) : []
  const atLow = cell(stand.low, oldest)
  const dry_kg = centreOfGravity({ bodies: bodiesAt(stand, { volume_m3: 0, level_m: 0 }, oldest) }).mass_kg
  const { righting_N_m, overturning_N_m } = worst
  return {
    known: {
      arm_m,
      base_m: base.known,
      gust_m_s,
      oldest,
      wanted,
      cells,
      atFill: cell(stand.fill, oldest),
      atLow,
      worst,
      child,
      adult,
      refill_m3: stand.kind === 'own foot' ? null : refillVolume(stand, wanted * atLow.overturning_N_m, arm_m, dry_kg),
      strap: {
        ...strap,
        wind_N: Math.max(...cells.map((c) => c.strap_N)),
        people_N: Math.max(child.strap_N, adult.strap_N),
      },
      ballast_kg: ballastMass({ righting_N_m, overturning_N_m, ratio: wanted, arm_m }),
      baseNeeded_m: (2 * wanted * overturning_N_m) / (GRAVITY_m_s2 * worst.mass_kg),
      ...groundFacts(stand, pushes, atLow.mass_kg),
      pushes,
    },
  }
}

/** What a strap adds: the ratio with the strap pulling as hard as it may. */
export const strappedRatio = (facts: TippingFacts, given: { righting_N_m: number; overturning_N_m: number }): number =>
  rightingRatio({
    righting_N_m: given.righting_N_m + (facts.strap.capacity_N ?? 0) * facts.strap.height_m,
    overturning_N_m: given.overturning_N_m,
  })
