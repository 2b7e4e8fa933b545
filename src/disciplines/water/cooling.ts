import type { SolutionDay, SunlitWall } from './day.ts'
import { solutionCourse } from './equations-day.ts'

const everyWall = (day: SolutionDay, change: (wall: SunlitWall) => SunlitWall): SolutionDay => ({
  ...day,
  walls: day.walls.map(change),
  column: day.column === null ? null : { ...day.column, wall: change(day.column.wall) },
})

const tankWalls = (day: SolutionDay, change: (wall: SunlitWall) => SunlitWall): SolutionDay => ({
  ...day,
  walls: day.walls.map(change),
})

/** The same day with the tank in a shade that lets through a share of the sun, and hides the sky as much. */
export const shaded = ({ day, transmittance }: { readonly day: SolutionDay; readonly transmittance: number }) =>
  tankWalls(day, (wall) => ({
    ...wall,
    sun_W_m2: wall.sun_W_m2.map((sun) => sun * transmittance),
    sky_W_m2: (wall.sky_W_m2 ?? 0) * transmittance,
  }))

/** The same day with tank and column in another colour. */
export const painted = ({ day, absorptance }: { readonly day: SolutionDay; readonly absorptance: number }) =>
  everyWall(day, (wall) => ({ ...wall, absorptance }))

/** The same day with the tank wrapped; the wrap's outside keeps the film and takes the absorptance of its cover. */
export const wrapped = (given: {
  readonly day: SolutionDay
  readonly resistance_m2_K_W: number
  readonly absorptance: number
  /** Film outside of the wrap; bright foil loses most of the part by radiation. */
  readonly outside_W_m2_K: number
}) =>
  tankWalls(given.day, (wall) => {
    const { resistance_m2_K_W: R, absorptance, outside_W_m2_K } = given
    const inner = 1 / wall.conductance_W_m2_K - 1 / wall.outside_W_m2_K
    return { ...wall, absorptance, outside_W_m2_K, conductance_W_m2_K: 1 / (inner + R + 1 / outside_W_m2_K) }
  })

/** The same day with frozen bottles put in. */
export const iced = (given: { readonly day: SolutionDay; readonly ice: SolutionDay['ice'] }): SolutionDay => ({
  ...given.day,
  ice: [...given.day.ice, ...given.ice],
})

/** The same day with more or less solution behind the same walls. */
export const refilled = (given: { readonly day: SolutionDay; readonly volume_m3: number }): SolutionDay => ({
  ...given.day,
  volume_m3: given.volume_m3,
})

export interface CoolingChoice {
  readonly id: string
  readonly day: SolutionDay
  /** Price of the measure, per season where it must be done daily. */
  readonly price_money: number
}

export interface RankedChoice {
  readonly id: string
  readonly highest_C: number
  /** How much the warmest hour falls; negative where the measure warms. */
  readonly cooler_K: number
  /** Kelvin per money; null where it costs nothing or does nothing. */
  readonly perMoney: number | null
}

/** What each measure does to the warmest hour, most kelvin per money first; measures that cost nothing lead. */
export function rankedCooling(given: {
  readonly base: SolutionDay
  readonly choices: readonly CoolingChoice[]
}): readonly RankedChoice[] {
  const before = solutionCourse(given.base).highest_C
  const ranked = given.choices.map(({ id, day, price_money }) => {
    const { highest_C } = solutionCourse(day)
    const cooler_K = before - highest_C
    return { id, highest_C, cooler_K, perMoney: price_money > 0 ? cooler_K / price_money : null }
  })
  const rank = (choice: RankedChoice) =>
    choice.perMoney ?? (choice.cooler_K > 0 ? Number.POSITIVE_INFINITY : choice.cooler_K)
  return ranked.toSorted((a, b) => rank(b) - rank(a) || b.cooler_K - a.cooler_K)
}
