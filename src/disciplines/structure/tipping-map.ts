import { type Body, centreOfGravity } from './equations-mass.ts'
import { overturningMoment, type Push, rightingMoment, rightingRatio, strapForce } from './equations-tipping.ts'

/** The tower at one water level and one age of the crop, and the pushes that one wind or one person puts on it. */
export interface TippingCase {
  readonly bodies: readonly Body[]
  readonly pushes: readonly Push[]
}

export interface TippingResult {
  readonly mass_kg: number
  readonly centre_m: number
  readonly righting_N_m: number
  readonly overturning_N_m: number
  readonly ratio: number
  readonly strap_N: number
}

/** Masses, moments, ratio and strap of one case. */
export function tippingResult(
  given: TippingCase & {
    readonly arm_m: number
    readonly lean_rad?: number
    readonly wantedRatio: number
    readonly strap_m: number
  },
): TippingResult {
  const { bodies, pushes, arm_m, lean_rad = 0, wantedRatio, strap_m } = given
  const { mass_kg, height_m } = centreOfGravity({ bodies })
  const righting_N_m = rightingMoment({ mass_kg, arm_m, height_m, lean_rad })
  const overturning_N_m = overturningMoment({ pushes })
  const ratio = rightingRatio({ righting_N_m, overturning_N_m })
  const strap_N = strapForce({ righting_N_m, overturning_N_m, ratio: wantedRatio, height_m: strap_m })
  return { mass_kg, centre_m: height_m, righting_N_m, overturning_N_m, ratio, strap_N }
}

/** Results of all levels × weeks × winds, and the worst of them. */
export function tippingMap<Level, Week, Wind>(given: {
  readonly levels: readonly Level[]
  readonly weeks: readonly Week[]
  readonly winds: readonly Wind[]
  readonly bodies: (level: Level, week: Week) => readonly Body[]
  readonly pushes: (wind: Wind, week: Week) => readonly Push[]
  readonly arm_m: number
  readonly lean_rad?: number
  readonly wantedRatio: number
  readonly strap_m: number
}) {
  const { levels, weeks, winds, bodies, pushes, ...tower } = given
  const cells = levels.flatMap((level) =>
    weeks.flatMap((week) => {
      const here = bodies(level, week)
      return winds.map((wind) => ({
        level,
        week,
        wind,
        ...tippingResult({ ...tower, bodies: here, pushes: pushes(wind, week) }),
      }))
    }),
  )
  const worst = cells.reduce<(typeof cells)[number] | null>(
    (low, cell) => (low === null || cell.ratio < low.ratio ? cell : low),
    null,
  )
  return { cells, worst }
}
