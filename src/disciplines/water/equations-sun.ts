/** Megajoules per square metre and day, the unit of the source, per W/m2. */
const megajoulesDay = 86_400 / 1e6
/** Megajoules per square metre and hour per W/m2. */
const megajoulesHour = 3600 / 1e6

interface SunDay {
  readonly latitude_rad: number
  readonly dayOfYear: number
}

/** Inverse relative distance, declination and sunset angle of a day: equations 23 to 25 of the source. */
function sunOfDay({ latitude_rad: φ, dayOfYear: J }: SunDay) {
  if (!(Math.abs(φ) <= Math.PI / 2 && J >= 1 && J <= 366))
    throw new RangeError(`sun of the day: φ = ${φ}, J = ${J} is no place or day`)
  const dr = 1 + 0.033 * Math.cos((2 * Math.PI * J) / 365)
  const δ = 0.409 * Math.sin((2 * Math.PI * J) / 365 - 1.39)
  const ωs = Math.acos(Math.min(1, Math.max(-1, -Math.tan(φ) * Math.tan(δ))))
  return { dr, δ, ωs }
}

/**
 * Sunshine above the air on level ground, mean of a day.
 *
 *   Ra = (24·60/π) 0.0820 dr [ωs sin φ sin δ + cos φ cos δ sin ωs]
 *
 * Symbols  Ra radiation [MJ/(m2 d), returned as W/m2], dr inverse relative distance [1], δ declination [rad], ωs sunset
 *          angle [rad], φ latitude [rad]
 * Valid    all latitudes; polar night gives 0
 * Source   Allen1998.FAO56, equations 21 and 23 to 25
 * Throws   RangeError where latitude or day do not exist
 */
export function sunAboveAir(given: SunDay): number {
  const φ = given.latitude_rad
  const { dr, δ, ωs } = sunOfDay(given)
  const Ra =
    ((24 * 60) / Math.PI) * 0.082 * dr * (ωs * Math.sin(φ) * Math.sin(δ) + Math.cos(φ) * Math.cos(δ) * Math.sin(ωs))
  return Math.max(0, Ra) / megajoulesDay
}

/**
 * Longest possible sunshine of a day.
 *
 *   N = 24 ωs/π
 *
 * Symbols  N time from sunrise to sunset [h, returned in s], ωs sunset angle [rad]
 * Valid    level horizon
 * Source   Allen1998.FAO56, equation 34
 * Throws   RangeError where latitude or day do not exist
 */
export function daylight(given: SunDay): number {
  return (86_400 * sunOfDay(given).ωs) / Math.PI
}

/**
 * Sunshine on level ground from hours of sun.
 *
 *   Rs = (0.25 + 0.50 n/N) Ra
 *
 * Symbols  Rs and Ra radiation on the ground and above the air [W/m2], n/N share of the possible sunshine [1]
 * Valid    where the local numbers are not known
 * Source   Allen1998.FAO56, equation 35
 * Throws   RangeError where the share lies outside of 0 to 1
 */
export function sunOnGround(given: { readonly sunAboveAir_W_m2: number; readonly sunshineShare: number }): number {
  const { sunAboveAir_W_m2: Ra, sunshineShare: s } = given
  if (!(s >= 0 && s <= 1)) throw new RangeError(`sunOnGround: n/N = ${s} lies outside of 0 to 1`)
  return (0.25 + 0.5 * s) * Ra
}

/**
 * Sunshine on level ground under a clear sky.
 *
 *   Rso = (0.75 + 2e-5 z) Ra
 *
 * Symbols  Rso and Ra radiation [W/m2], z altitude [m]
 * Valid    where the local numbers are not known
 * Source   Allen1998.FAO56, equation 37
 * Throws   RangeError where the radiation is negative
 */
export function clearSun(given: { readonly sunAboveAir_W_m2: number; readonly altitude_m: number }): number {
  const { sunAboveAir_W_m2: Ra, altitude_m: z } = given
  if (!(Ra >= 0)) throw new RangeError(`clearSun: Ra = ${Ra} is negative`)
  return (0.75 + 2e-5 * z) * Ra
}

/**
 * Heat shone away to the sky, mean of a day.
 *
 *   Rnl = 4.903e-9 (Tx⁴ + Tn⁴)/2 (0.34 - 0.14 sqrt(ea)) (1.35 Rs/Rso - 0.35)
 *
 * Symbols  Rnl net long-wave radiation [MJ/(m2 d), returned as W/m2], Tx and Tn highest and lowest temperature [K],
 *          ea vapour pressure [kPa], Rs/Rso share of the clear sun [1]
 * Valid    Rs/Rso up to 1
 * Source   Allen1998.FAO56, equation 39
 * Throws   RangeError where the vapour pressure or the share of the sun is negative
 */
export function skyLoss(given: {
  readonly highest_C: number
  readonly lowest_C: number
  readonly vapour_Pa: number
  readonly clearShare: number
}): number {
  const { highest_C, lowest_C, vapour_Pa, clearShare: s } = given
  if (!(vapour_Pa >= 0 && s >= 0)) throw new RangeError(`skyLoss: ea = ${vapour_Pa}, Rs/Rso = ${s}`)
  const fourth = ((highest_C + 273.16) ** 4 + (lowest_C + 273.16) ** 4) / 2
  return (
    (4.903e-9 * fourth * (0.34 - 0.14 * Math.sqrt(vapour_Pa / 1000)) * (1.35 * Math.min(1, s) - 0.35)) / megajoulesDay
  )
}

/**
 * Radiation that a green cover keeps.
 *
 *   Rn = (1 - 0.23) Rs - Rnl
 *
 * Symbols  Rn net radiation [W/m2], Rs sun on the ground [W/m2], Rnl net long-wave radiation [W/m2]
 * Valid    green cover, albedo 0.23
 * Source   Allen1998.FAO56, equations 38 and 40
 * Throws   RangeError where the sun is negative
 */
export function netRadiation(given: { readonly sun_W_m2: number; readonly skyLoss_W_m2: number }): number {
  const { sun_W_m2: Rs, skyLoss_W_m2: Rnl } = given
  if (!(Rs >= 0)) throw new RangeError(`netRadiation: Rs = ${Rs} is negative`)
  return 0.77 * Rs - Rnl
}

/** A moment of the day by a clock, at a place. */
interface Moment {
  readonly dayOfYear: number
  readonly clock_s: number
  readonly west_rad: number
  readonly clockWest_rad: number
}

/** Angle of the sun past noon: equations 31 to 33 of the source. */
function hourAngle({ dayOfYear: J, clock_s, west_rad, clockWest_rad }: Moment): number {
  const b = (2 * Math.PI * (J - 81)) / 364
  const Sc = 0.1645 * Math.sin(2 * b) - 0.1255 * Math.cos(b) - 0.025 * Math.sin(b)
  const solar = clock_s / 3600 + (0.06667 * (clockWest_rad - west_rad) * 180) / Math.PI + Sc
  return (Math.PI / 12) * (solar - 12)
}

/**
 * Compass bearing of the sun.
 *
 *   A = atan2(-sin ω, tan δ cos φ - sin φ cos ω)
 *
 * Symbols  A bearing from north through east [rad], ω hour angle [rad], δ declination [rad], φ latitude [rad]
 * Valid    declination and hour angle as for the radiation: within a degree and a half; unsure where the sun stands
 *          overhead
 * Source   USNO.sun-position, spherical triangle; hour angle and declination of Allen1998.FAO56
 * Throws   RangeError where latitude or day do not exist
 */
export function sunBearing(given: SunDay & Moment): number {
  const φ = given.latitude_rad
  const { δ } = sunOfDay(given)
  const ω = hourAngle(given)
  const A = Math.atan2(-Math.sin(ω), Math.tan(δ) * Math.cos(φ) - Math.sin(φ) * Math.cos(ω))
  return A < 0 ? A + 2 * Math.PI : A
}

/**
 * Sunshine above the air on level ground, mean of an hour.
 *
 *   Ra = (12·60/π) 0.0820 dr [(ω2 - ω1) sin φ sin δ + cos φ cos δ (sin ω2 - sin ω1)]
 *   ω = π/12 [(t + 0.06667 (Lz - Lm) + Sc) - 12], ω1 = ω - π/24, ω2 = ω + π/24
 *   Sc = 0.1645 sin 2b - 0.1255 cos b - 0.025 sin b, b = 2π (J - 81)/364
 *
 * Symbols  Ra radiation [MJ/(m2 h), returned as W/m2], t clock time at the middle of the hour [h], Lz and Lm longitudes
 *          west of Greenwich of the clock's meridian and of the place [degree], Sc correction for the season [h], dr, δ, φ
 *          as for the day
 * Valid    0 while the sun is down; hours of sunrise and sunset in part
 * Source   Allen1998.FAO56, equations 28 to 33
 * Throws   RangeError where latitude or day do not exist
 */
export function sunAboveAirHour(given: SunDay & Moment): number {
  const { latitude_rad: φ, dayOfYear: J, clock_s, west_rad, clockWest_rad } = given
  const { dr, δ, ωs } = sunOfDay(given)
  const ω = hourAngle({ dayOfYear: J, clock_s, west_rad, clockWest_rad })
  const clip = (angle: number) => Math.min(ωs, Math.max(-ωs, angle))
  const [ω1, ω2] = [clip(ω - Math.PI / 24), clip(ω + Math.PI / 24)]
  const Ra =
    ((12 * 60) / Math.PI) *
    0.082 *
    dr *
    ((ω2 - ω1) * Math.sin(φ) * Math.sin(δ) + Math.cos(φ) * Math.cos(δ) * (Math.sin(ω2) - Math.sin(ω1)))
  return Math.max(0, Ra) / megajoulesHour
}
