import { type Published, value } from '../../kernel/published.ts'
import { sunBearing } from './equations-sun.ts'

const degree = Math.PI / 180
const HOUR_s = 3600

/** Latitude and longitude, day of the year, time in UTC; bearing of the sun as others computed it. */
const PLACES = [
  ['Golden', 39.742476, -105.1786, 290, 19 + 30.5 / 60, 194.340241, 'RedaAndreas.SPA'],
  ['London', 51.5074, -0.1278, 172, 12, 178.9197, 'astronomy-engine.2.1.19'],
  ['Phoenix', 33.4484, -112.074, 15, 16.5, 133.6105, 'astronomy-engine.2.1.19'],
  ['Nairobi', -1.2921, 36.8219, 274, 6.25, 93.32, 'astronomy-engine.2.1.19'],
  ['Melbourne', -37.8136, 144.9631, 356, 5, 280.844, 'astronomy-engine.2.1.19'],
  ['Tromsø', 69.6492, 18.9553, 100, 9, 150.6832, 'astronomy-engine.2.1.19'],
] as const

const rows: readonly Published[] = PLACES.map(([, latitude, longitude, dayOfYear, utc, bearing, source]) =>
  value(
    sunBearing,
    {
      latitude_rad: latitude * degree,
      dayOfYear,
      clock_s: utc * HOUR_s,
      west_rad: -longitude * degree,
      clockWest_rad: 0,
    },
    bearing * degree,
    {
      within: 1.5 * degree,
      absolute: true,
      source,
      why: 'the declination that goes with the radiation is a degree off in October, and its year is a mean one',
    },
  ),
)

export default rows
