import type { Plan } from '../../plan/plan.ts'
import { heatPractice } from '../../tables/heat-day.ts'
import { moistAirDensity, standardPressure } from './equations-air.ts'
import { clearSun, sunAboveAir, sunAboveAirHour, sunBearing } from './equations-sun.ts'
import { halfOpenSun, sunHeightSine, wallSun } from './equations-wall-sun.ts'

/** Air and sun of the place, as far as the plan states them; what is missing is listed with what stands for it. */
export interface SkyFacts {
  readonly pressure_Pa: number
  /** Dry air at the temperature of the standard atmosphere's sea level: the heaviest that a gust brings. */
  readonly air_kg_m3: number
  readonly kind: PlaceKind
  /** Wind and open sky reach the tower. */
  readonly outdoors: boolean
  /** Sun reaches it, through glass too. */
  readonly sunny: boolean
  /** Sun on level ground and round an upright wall through the sunniest day, hour by hour from midnight by the sun. */
  readonly ground_W_m2: readonly number[]
  readonly wall_W_m2: readonly number[]
  /** Mean of the sunniest day above the air and on the ground under a clear sky, the place's share of it taken. */
  readonly aboveAir_W_m2: number
  readonly groundMean_W_m2: number
  /** Share of the day's sun that reaches the place. */
  readonly reaches: number
  readonly assumed: readonly string[]
}

const HOURS = 24
const HOUR_s = 3600
/** Solstices and equinox: the sunniest day is one of them, or near. */
const DAYS = [80, 172, 355] as const
const STANDARD_C = 15
const INDOORS: readonly string[] = ['indoors', 'community kitchen', 'care home']

/** What weather can reach the tower. */
export type PlaceKind = 'indoors' | 'greenhouse' | 'balcony' | 'outdoors'

/** Stated by a gust or sun, else by the kind of place: glass keeps the wind out and lets the sun in. */
export function placeKind(plan: Plan): PlaceKind {
  const { gust_m_s: gust, setting, sun } = plan.place ?? {}
  if (setting === 'greenhouse' && !((gust ?? 0) > 0)) return 'greenhouse'
  const out = gust !== undefined ? gust > 0 : setting !== undefined ? !INDOORS.includes(setting) : sun !== 0
  if (!out) return 'indoors'
  return setting === 'balcony' ? 'balcony' : 'outdoors'
}

/** Whether wind and weather reach the tower. */
export const isOutdoors = (plan: Plan): boolean => ['balcony', 'outdoors'].includes(placeKind(plan))

/** Whether the sun can reach the tower. */
export const hasSun = (plan: Plan): boolean => placeKind(plan) !== 'indoors' || (plan.place?.sun ?? 0) > 0

/** Quarters of an hour about its middle at which the sun is looked for. */
const QUARTERS_s = [-1350, -450, 450, 1350] as const

interface Hour {
  readonly ground: number
  readonly wall: number
}

const NIGHT: Hour = { ground: 0, wall: 0 }

const total = (hours: readonly Hour[]): number => hours.reduce((sum, h) => sum + h.ground, 0)

/**
 * The day's sun as far as it reaches the place. The stated share tells how much of it in all, the open side when: less
 * than the open side lets in dims every hour, more than it lets in comes over the closed side.
 */
function reaching(open: readonly Hour[], half: readonly Hour[], stated: number | undefined): readonly Hour[] {
  const [all, letIn] = [total(open), total(half)]
  const wanted = stated === undefined ? letIn : stated * all
  if (!(all > 0 && letIn > 0)) return open.map(() => ({ ground: 0, wall: 0 }))
  if (wanted <= letIn)
    return half.map((h) => ({ ground: (h.ground * wanted) / letIn, wall: (h.wall * wanted) / letIn }))
  const over = (wanted - letIn) / (all - letIn)
  return half.map((h, i) => ({
    ground: h.ground + over * (open[i]!.ground - h.ground),
    wall: h.wall + over * (open[i]!.wall - h.wall),
  }))
}

/** Sun on level ground and round an upright wall, hour by hour from midnight, as far as it reaches the place. */
function hoursOf(plan: Plan, day: { readonly latitude_rad: number; readonly dayOfYear: number }): readonly Hour[] {
  const { altitude_m, sun, faces_rad } = plan.place ?? {}
  const { diffuseShare, groundAlbedo, leastSunHeight } = heatPractice.rows
  const altitude = Math.max(0, altitude_m ?? 0)
  const { latitude_rad, dayOfYear } = day
  const at = (clock_s: number) => ({ latitude_rad, dayOfYear, clock_s, west_rad: 0, clockWest_rad: 0 })
  const hours = Array.from({ length: HOURS }, (_, h) => {
    const Ra = sunAboveAirHour(at(h * HOUR_s))
    if (!(Ra > 0)) return { open: NIGHT, half: NIGHT }
    const ground_W_m2 = clearSun({ sunAboveAir_W_m2: Ra, altitude_m: altitude })
    const rays = {
      ground_W_m2,
      heightSine: sunHeightSine({ sunAboveAir_W_m2: Ra, dayOfYear }),
      diffuseShare: diffuseShare.value,
      albedo: groundAlbedo.value,
      leastSine: leastSunHeight.value,
    }
    const before = (by_s: number) => Math.cos(sunBearing(at(h * HOUR_s + by_s)) - (faces_rad ?? 0)) > 0
    const openShare = faces_rad === undefined ? 1 : QUARTERS_s.filter(before).length / QUARTERS_s.length
    const half = halfOpenSun({ ...rays, openShare })
    return {
      open: { ground: ground_W_m2, wall: wallSun(rays) },
      half: { ground: half.ground_W_m2, wall: half.wall_W_m2 },
    }
  })
  const open = hours.map((h) => h.open)
  if (faces_rad !== undefined && hasSun(plan))
    return reaching(
      open,
      hours.map((h) => h.half),
      sun,
    )
  const share = sun ?? (hasSun(plan) ? 1 : 0)
  return open.map((h) => ({ ground: h.ground * share, wall: h.wall * share }))
}

export function skyFacts(plan: Plan): SkyFacts {
  const { altitude_m, latitude_rad, sun, faces_rad } = plan.place ?? {}
  const [kind, outdoors, sunny] = [placeKind(plan), isOutdoors(plan), hasSun(plan)]
  const pressure_Pa = standardPressure({ altitude_m: altitude_m ?? 0 })
  const latitude = latitude_rad ?? 0
  const dayOfYear = DAYS.reduce((best, J) => {
    const at = (day: number) => sunAboveAir({ latitude_rad: latitude, dayOfYear: day })
    return at(J) > at(best) ? J : best
  }, DAYS[0])
  const day = { latitude_rad: latitude, dayOfYear }
  const hours = hoursOf(plan, day)
  const aboveAir_W_m2 = sunAboveAir(day)
  const clear_W_m2 = clearSun({ sunAboveAir_W_m2: aboveAir_W_m2, altitude_m: Math.max(0, altitude_m ?? 0) })
  const reaches = sun ?? (faces_rad === undefined ? (sunny ? 1 : 0) : Math.min(1, total(hours) / HOURS / clear_W_m2))
  return {
    pressure_Pa,
    air_kg_m3: moistAirDensity({ temperature_C: STANDARD_C, humidityRatio: 0, pressure_Pa }),
    kind,
    outdoors,
    sunny,
    ground_W_m2: hours.map((h) => h.ground),
    wall_W_m2: hours.map((h) => h.wall),
    aboveAir_W_m2,
    groundMean_W_m2: clear_W_m2 * reaches,
    reaches,
    assumed: [
      ...(altitude_m === undefined ? ['place/altitude'] : []),
      ...(sunny && sun === undefined && faces_rad === undefined ? ['place/sun'] : []),
      ...(sunny && latitude_rad === undefined ? ['place/latitude'] : []),
    ],
  }
}
