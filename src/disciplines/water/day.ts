/** A wall between solution and air, with the sun on it. */
export interface SunlitWall {
  readonly name: string
  readonly area_m2: number
  /** From water to air, all layers and films: `wallConductance`. */
  readonly conductance_W_m2_K: number
  /** Film on the outside alone. */
  readonly outside_W_m2_K: number
  readonly absorptance: number
  /** Sun on the surface through the day, evenly spaced values from midnight; empty where it never shines. */
  readonly sun_W_m2: readonly number[]
  /** What it shines away to the open sky beyond what air of the same warmth would give back; none where left out. */
  readonly sky_W_m2?: number
}

/** A day that repeats itself, and the tank and column that stand in it. Series are evenly spaced from midnight. */
export interface SolutionDay {
  readonly volume_m3: number
  readonly air_C: readonly number[]
  readonly walls: readonly SunlitWall[]
  /** The column as a heat exchanger; `running` is the share of time that the pump runs. */
  readonly column: {
    readonly wall: SunlitWall
    readonly flow_kg_s: number
    readonly running: readonly number[]
  } | null
  /** Heat that the pump leaves in the water. */
  readonly pump_W: readonly number[]
  readonly ground: { readonly conductance_W_K: number; readonly ground_C: number } | null
  readonly evaporation: {
    readonly area_m2: number
    readonly convection_W_m2_K: number
    readonly vapour_Pa: readonly number[]
    readonly pressure_Pa: number
  } | null
  /** Frozen bottles put in each day. */
  readonly ice: readonly { readonly at_s: number; readonly mass_kg: number; readonly ice_C: number }[]
}

/** Ways by which heat comes into the solution; what leaves is negative. */
export interface HeatPaths {
  readonly walls_J: number
  readonly sun_J: number
  readonly column_J: number
  readonly columnSun_J: number
  /** Shone away by tank and column to the open sky. */
  readonly sky_J: number
  readonly pump_J: number
  readonly ground_J: number
  readonly evaporation_J: number
  readonly ice_J: number
}

export interface SolutionCourse {
  /** Temperature at the start of each step and at the end of the day. */
  readonly temperature_C: readonly number[]
  readonly step_s: number
  readonly highest_C: number
  readonly highestAt_s: number
  readonly lowest_C: number
  readonly lowestAt_s: number
  readonly mean_C: number
  readonly heat: HeatPaths
  readonly evaporated_kg: number
}

const DAY_s = 86_400

/** Value of an evenly spaced series of a repeating day, straight lines between. Empty means zero. */
export function throughDay(series: readonly number[], time_s: number): number {
  const n = series.length
  if (n === 0) return 0
  const at = (((time_s / DAY_s) % 1) + 1) % 1
  const i = Math.floor(at * n)
  const share = at * n - i
  return series[i % n]! * (1 - share) + series[(i + 1) % n]! * share
}

/**
 * Air temperature through a day from its ends: a cosine, warmest in the afternoon. A measured series is better.
 * Values stand an hour apart from midnight.
 */
export function airThroughDay(given: {
  readonly lowest_C: number
  readonly highest_C: number
  readonly warmestAt_s: number
}): readonly number[] {
  const { lowest_C, highest_C, warmestAt_s } = given
  const hours = 24
  return Array.from({ length: hours }, (_, h) => {
    const phase = (2 * Math.PI * ((h / hours) * DAY_s - warmestAt_s)) / DAY_s
    return (lowest_C + highest_C) / 2 + ((highest_C - lowest_C) / 2) * Math.cos(phase)
  })
}

/** Time of the day that the solution spends outside of two temperatures, straight lines between the steps. */
export function timeBeyond(given: {
  readonly course: SolutionCourse
  readonly low_C: number
  readonly high_C: number
}): { readonly colder_s: number; readonly warmer_s: number } {
  const { course, low_C, high_C } = given
  const { temperature_C: T, step_s } = course
  const above = (limit: number, sign: number) =>
    T.slice(1).reduce((sum, end, k) => {
      const [a, b] = [sign * (T[k]! - limit), sign * (end - limit)]
      if (a <= 0 && b <= 0) return sum
      return sum + (a > 0 && b > 0 ? step_s : (step_s * Math.max(a, b)) / Math.abs(b - a))
    }, 0)
  return { colder_s: above(low_C, -1), warmer_s: above(high_C, 1) }
}
