import type { Plan } from '../../plan/plan.ts'
import { heatPractice } from '../../tables/heat-day.ts'
import { moistAirDensity, standardPressure } from './equations-air.ts'
import { clearSun, sunAboveAir, sunAboveAirHour } from './equations-sun.ts'
import { sunHeightSine, wallSun } from './equations-wall-sun.ts'

/** Air and sun of the place, as far as the plan states them; what is missing is listed with what stands for it. */
export interface SkyFacts {
  readonly pressure_Pa: number
  /** Dry air at the temperature of the standard atmosphere's sea level: the heaviest that a gust brings. */
  readonly air_kg_m3: number
  readonly outdoors: boolean
  /** Sun on level ground and round an upright wall through the sunniest day, hour by hour from midnight by the sun. */
  readonly ground_W_m2: readonly number[]
  readonly wall_W_m2: readonly number[]
  /** Mean of the sunniest day above the air and on the ground under a clear sky, the place's share of it taken. */
  readonly aboveAir_W_m2: number
  readonly groundMean_W_m2: number
  readonly assumed: readonly string[]
}

const HOURS = 24
const HOUR_s = 3600
/** Solstices and equinox: the sunniest day is one of them, or near. */
const DAYS = [80, 172, 355] as const
const STANDARD_C = 15
const INDOORS: readonly string[] = ['indoors', 'community kitchen', 'care home']

/** Whether wind and weather reach the tower: stated by a gust or sun, else by the kind of place. */
export function isOutdoors(plan: Plan): boolean {
  const { gust_m_s: gust, setting, sun } = plan.place ?? {}
  if (gust !== undefined) return gust > 0
  if (setting !== undefined) return !INDOORS.includes(setting)
  return sun !== 0
}

export function skyFacts(plan: Plan): SkyFacts {
  const { altitude_m, latitude_rad, sun } = plan.place ?? {}
  const outdoors = isOutdoors(plan)
  const pressure_Pa = standardPressure({ altitude_m: altitude_m ?? 0 })
  const share = sun ?? (outdoors ? 1 : 0)
  const latitude = latitude_rad ?? 0
  const dayOfYear = DAYS.reduce((best, J) => {
    const at = (day: number) => sunAboveAir({ latitude_rad: latitude, dayOfYear: day })
    return at(J) > at(best) ? J : best
  }, DAYS[0])
  const day = { latitude_rad: latitude, dayOfYear }
  const { diffuseShare, groundAlbedo, leastSunHeight } = heatPractice.rows
  const altitude = Math.max(0, altitude_m ?? 0)
  const hours = Array.from({ length: HOURS }, (_, h) => {
    const Ra = sunAboveAirHour({ ...day, clock_s: h * HOUR_s, west_rad: 0, clockWest_rad: 0 })
    const ground_W_m2 = clearSun({ sunAboveAir_W_m2: Ra, altitude_m: altitude })
    const wall = wallSun({
      ground_W_m2,
      heightSine: sunHeightSine({ sunAboveAir_W_m2: Ra, dayOfYear }),
      diffuseShare: diffuseShare.value,
      albedo: groundAlbedo.value,
      leastSine: leastSunHeight.value,
    })
    return { ground: ground_W_m2 * share, wall: wall * share }
  })
  const aboveAir_W_m2 = sunAboveAir(day)
  return {
    pressure_Pa,
    air_kg_m3: moistAirDensity({ temperature_C: STANDARD_C, humidityRatio: 0, pressure_Pa }),
    outdoors,
    ground_W_m2: hours.map((h) => h.ground),
    wall_W_m2: hours.map((h) => h.wall),
    aboveAir_W_m2,
    groundMean_W_m2: clearSun({ sunAboveAir_W_m2: aboveAir_W_m2, altitude_m: altitude }) * share,
    assumed: [
      ...(altitude_m === undefined ? ['place/altitude'] : []),
      ...(outdoors && sun === undefined ? ['place/sun'] : []),
      ...(outdoors && latitude_rad === undefined ? ['place/latitude'] : []),
    ],
  }
}
