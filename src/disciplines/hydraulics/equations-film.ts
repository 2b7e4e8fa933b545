import { STANDARD_GRAVITY } from '../../tables/hydraulic-constants.ts'
import { notNegative, positive } from './possible.ts'

/** Film Reynolds numbers up to which the laminar film holds: smooth, then with waves but of the same mean thickness. */
export const FILM_VALID = { smoothBelow: 30, wavyBelow: 1800 } as const

/** What every film relation needs of the water. */
export interface FilmWater {
  readonly density_kg_m3: number
  readonly viscosity_Pa_s: number
}

/**
 * Film flow per length of wetted perimeter.
 *
 *   Γ = ρ Q/P
 *
 * Symbols  Γ film flow [kg/(m s)], ρ density [kg/m³], Q flow [m³/s], P wetted perimeter [m], π D for a whole bore
 * Valid    even spread over P
 * Source   Nusselt1916, laminar film
 * Throws   RangeError where ρ or P is not positive, or Q negative
 */
export function filmRate(given: {
  readonly flow_m3_s: number
  readonly perimeter_m: number
  readonly density_kg_m3: number
}): number {
  const { flow_m3_s: Q, perimeter_m: P, density_kg_m3: ρ } = given
  positive('filmRate', { ρ, P })
  notNegative('filmRate', { Q })
  return (ρ * Q) / P
}

/**
 * Reynolds number of a film.
 *
 *   Re = 4 Γ/μ
 *
 * Symbols  Re film Reynolds number [1], Γ film flow [kg/(m s)], μ dynamic viscosity [Pa s]
 * Valid    any film
 * Source   Nusselt1916, laminar film
 * Throws   RangeError where μ is not positive or Γ negative
 */
export function filmReynolds(given: { readonly rate_kg_m_s: number; readonly viscosity_Pa_s: number }): number {
  const { rate_kg_m_s: Γ, viscosity_Pa_s: μ } = given
  positive('filmReynolds', { μ })
  notNegative('filmReynolds', { Γ })
  return (4 * Γ) / μ
}

/**
 * Thickness of a film that runs down an upright wall.
 *
 *   δ = (3 μ Γ/(ρ² g))^(1/3)
 *
 * Symbols  δ thickness [m], μ dynamic viscosity [Pa s], Γ film flow [kg/(m s)], ρ density [kg/m³]
 * Valid    film Reynolds number below about 1800 (waves leave the mean within a few %); δ far below the bore
 * Source   Nusselt1916, laminar film
 * Throws   RangeError where μ or ρ is not positive, or Γ negative
 */
export function filmThickness(given: { readonly rate_kg_m_s: number } & FilmWater): number {
  const { rate_kg_m_s: Γ, viscosity_Pa_s: μ, density_kg_m3: ρ } = given
  positive('filmThickness', { μ, ρ })
  notNegative('filmThickness', { Γ })
  return Math.cbrt((3 * μ * Γ) / (ρ * ρ * STANDARD_GRAVITY))
}

/**
 * Mean speed of a film; its surface runs half as fast again.
 *
 *   u = ρ g δ²/(3 μ)
 *
 * Symbols  u mean speed [m/s], δ thickness [m], μ dynamic viscosity [Pa s], ρ density [kg/m³]
 * Valid    as `filmThickness`
 * Source   Nusselt1916, laminar film
 * Throws   RangeError where μ or ρ is not positive, or δ negative
 */
export function filmSpeed(given: { readonly thickness_m: number } & FilmWater): number {
  const { thickness_m: δ, viscosity_Pa_s: μ, density_kg_m3: ρ } = given
  positive('filmSpeed', { μ, ρ })
  notNegative('filmSpeed', { δ })
  return (ρ * STANDARD_GRAVITY * δ * δ) / (3 * μ)
}

/**
 * Time in which a film runs down a column.
 *
 *   t = L/u
 *
 * Symbols  t time [s], L height of fall [m], u mean film speed [m/s]
 * Valid    settled film; drops in the free bore are faster
 * Source   Nusselt1916, laminar film
 * Throws   RangeError where u is not positive or L negative
 */
export function filmFallTime(given: { readonly height_m: number; readonly speed_m_s: number }): number {
  const { height_m: L, speed_m_s: u } = given
  positive('filmFallTime', { u })
  notNegative('filmFallTime', { L })
  return L / u
}

/**
 * Water that hangs in a running film.
 *
 *   V = P δ L
 *
 * Symbols  V volume [m³], P wetted perimeter [m], δ thickness [m], L height [m]
 * Valid    δ far below the bore
 * Source   Nusselt1916, laminar film
 * Throws   RangeError where a symbol is negative
 */
export function filmHoldUp(given: {
  readonly perimeter_m: number
  readonly thickness_m: number
  readonly height_m: number
}): number {
  const { perimeter_m: P, thickness_m: δ, height_m: L } = given
  notNegative('filmHoldUp', { P, δ, L })
  return P * δ * L
}

/**
 * Least film flow that closes a dry patch on an upright wall.
 *
 *   Γ_min = (15^0.6/3) (μ ρ/g)^0.2 [σ (1 − cos θ)]^0.6
 *
 * Symbols  Γ_min film flow [kg/(m s)], μ dynamic viscosity [Pa s], ρ density [kg/m³], σ surface tension [N/m],
 *          θ contact angle [rad]
 * Valid    laminar film, new dry wall: an upper bound in practice, run-in walls stay wet well below it
 * Source   HartleyMurgatroyd1964, dry-patch force balance
 * Throws   RangeError where a symbol is not positive
 */
export function wettingRate(given: {
  readonly contactAngle_rad: number
  readonly tension_N_m: number
  readonly density_kg_m3: number
  readonly viscosity_Pa_s: number
}): number {
  const { contactAngle_rad: θ, tension_N_m: σ, density_kg_m3: ρ, viscosity_Pa_s: μ } = given
  positive('wettingRate', { θ, σ, ρ, μ })
  return (15 ** 0.6 / 3) * ((μ * ρ) / STANDARD_GRAVITY) ** 0.2 * (σ * (1 - Math.cos(θ))) ** 0.6
}

/**
 * Thickness of the thinnest film that closes a dry patch.
 *
 *   δ_min = 15^0.2 [σ (1 − cos θ)/ρ]^0.2 [μ/(ρ g)]^0.4
 *
 * Symbols  δ_min thickness [m], μ dynamic viscosity [Pa s], ρ density [kg/m³], σ surface tension [N/m], θ angle [rad]
 * Valid    as `wettingRate`
 * Source   HartleyMurgatroyd1964, dry-patch force balance
 * Throws   RangeError where a symbol is not positive
 */
export function wettingThickness(given: {
  readonly contactAngle_rad: number
  readonly tension_N_m: number
  readonly density_kg_m3: number
  readonly viscosity_Pa_s: number
}): number {
  const { contactAngle_rad: θ, tension_N_m: σ, density_kg_m3: ρ, viscosity_Pa_s: μ } = given
  positive('wettingThickness', { θ, σ, ρ, μ })
  return 15 ** 0.2 * ((σ * (1 - Math.cos(θ))) / ρ) ** 0.2 * (μ / (ρ * STANDARD_GRAVITY)) ** 0.4
}

/**
 * Speed at which a turbulent film runs down a stack.
 *
 *   v = 3.0 (Q/D)^0.4, v in ft/s, Q in US gal/min, D in inches
 *
 * Symbols  v terminal speed [m/s], Q flow [m³/s], D bore [m]
 * Valid    turbulent film, film Reynolds number above about 1800
 * Source   WylyEaton1961, terminal velocity, quoted second hand
 * Throws   RangeError where D is not positive or Q negative
 */
export function stackSpeed(given: { readonly flow_m3_s: number; readonly bore_m: number }): number {
  const { flow_m3_s: Q, bore_m: D } = given
  positive('stackSpeed', { D })
  notNegative('stackSpeed', { Q })
  const gallonsPerMinute = (Q * 60) / 3.785411784e-3
  return 0.3048 * 3 * (gallonsPerMinute / (D / 0.0254)) ** 0.4
}

/**
 * Water left on the wall some time after the flow has stopped.
 *
 *   V = (2/3) P L √(μ L/(ρ g t)), at most the running hold-up
 *
 * Symbols  V volume [m³], P wetted perimeter [m], L height [m], μ dynamic viscosity [Pa s], ρ density [kg/m³], t time [s]
 * Valid    laminar draining; the last hundredth of a millimetre stays by surface tension and evaporation
 * Source   Jeffreys1930, thickness √(μ z/(ρ g t)) at depth z, integrated
 * Throws   RangeError where t, μ or ρ is not positive, or P or L negative
 */
export function drainingFilm(
  given: { readonly perimeter_m: number; readonly height_m: number; readonly time_s: number } & FilmWater,
): number {
  const { perimeter_m: P, height_m: L, time_s: t, viscosity_Pa_s: μ, density_kg_m3: ρ } = given
  positive('drainingFilm', { t, μ, ρ })
  notNegative('drainingFilm', { P, L })
  return (2 / 3) * P * L * Math.sqrt((μ * L) / (ρ * STANDARD_GRAVITY * t))
}
