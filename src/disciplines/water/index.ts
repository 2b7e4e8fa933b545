import { isKnown, type Known, needed } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { heatPractice, rootZone } from '../../tables/heat-day.ts'
import type { LayoutFacts } from '../layout/index.ts'
import type { TemplatesFacts } from '../templates/index.ts'
import { type AllCooling, allCooling, anyPriced, type Cooling, coolingFacts } from './cooling-facts.ts'
import { type SolutionCourse, type SolutionDay, timeBeyond } from './day.ts'
import { solutionCourse } from './equations-day.ts'
import { type IceFacts, iceFacts } from './ice-facts.ts'
import { type OxygenFacts, oxygenFacts, saturationOf } from './oxygen-facts.ts'
import { type PlaceKind, type SkyFacts, skyFacts } from './sky-facts.ts'
import { type DayOf, type HeatNeeds, solutionDay } from './tank-day.ts'
import { hotNight, type ThirstFacts, thirstFacts } from './thirst-facts.ts'
import { type TrappedFacts, trappedFacts } from './trapped-facts.ts'

/** Oxygen and temperature through a day, as drawn. */
export interface DayCourse {
  readonly level: 'fill' | 'low'
  readonly course: SolutionCourse
  /** Time of the day that roots are colder or warmer than wanted. */
  readonly colder_s: number
  readonly warmer_s: number
  readonly air_C: readonly number[]
  /** Oxygen that the solution can hold, at the times of the course. */
  readonly saturation_g_m3: readonly number[]
}

export interface DayFacts {
  /** The hot day and the cold one, each with the tank full and low. */
  readonly hotFull: DayCourse
  readonly hotLow: DayCourse
  readonly coldFull: DayCourse
  readonly coldLow: DayCourse
  /** Sun is part of the hot day. */
  readonly sunny: boolean
  /** Ice of the plan against what the tank at its low line can take; null without any. */
  readonly ice: IceFacts | null
  readonly oxygen: Known<OxygenFacts>
  readonly cooling: readonly Cooling[]
  /** What shade, paint and foam reach together on a day that is too hot; null on one that is not. */
  readonly together: AllCooling | null
  /** Fields of the plan that are missing, for which the worst case stood in. */
  readonly assumed: readonly string[]
}

/** What needs no simulation. */
export interface WaterFacts {
  readonly sky: SkyFacts
  readonly thirst: Known<ThirstFacts>
  /** What freezes where it stands. */
  readonly trapped: Known<TrappedFacts>
}

/** What heat needs of the neighbours' facts. */
export const heatNeeds = (given: {
  readonly tank: HeatNeeds['tank']
  readonly flow: HeatNeeds['flow']
  readonly film: HeatNeeds['film']
  readonly layout: Known<LayoutFacts>
  readonly templates: TemplatesFacts | null
}): HeatNeeds => ({
  tank: given.tank,
  flow: given.flow,
  film: given.film,
  sites: isKnown(given.layout) ? given.layout.known.sites.length : null,
  mouth_m2: given.templates === null ? null : (Math.PI / 4) * given.templates.joint.stubPipe.bore_m ** 2,
})

const isSunny = (sky: SkyFacts): boolean => sky.wall_W_m2.some((s) => s > 0)

export function waterFacts(
  plan: Plan,
  given: { readonly week: number; readonly layout: Known<LayoutFacts>; readonly templates: TemplatesFacts | null },
): WaterFacts {
  const sky = skyFacts(plan)
  return { sky, thirst: thirstFacts(plan, sky, given.week), trapped: trappedFacts(plan, given) }
}

function assumedOf(plan: Plan, sky: SkyFacts): readonly string[] {
  if (!isSunny(sky)) return []
  return [
    ...(plan.reservoir?.colour === undefined && plan.reservoir?.shaded !== true ? ['reservoir/colour'] : []),
    ...(plan.column?.colour === undefined ? ['column/colour'] : []),
    ...sky.assumed,
  ]
}

function courseOf(plan: Plan, sky: SkyFacts, day: SolutionDay, level: 'fill' | 'low'): DayCourse {
  const course = solutionCourse(day)
  const { low_C, high_C } = rootZone.rows.wanted
  return {
    level,
    course,
    ...timeBeyond({ course, low_C, high_C }),
    air_C: day.air_C,
    saturation_g_m3: course.temperature_C.map((t) => saturationOf(plan, sky, t)),
  }
}

/** The solution through a hot and a cold day. Costs some milliseconds: left out where only the shape changes. */
export function dayFacts(
  plan: Plan,
  given: HeatNeeds & { readonly sky: SkyFacts; readonly week: number },
): Known<DayFacts> {
  const { sky, tank } = given
  const air = needed({
    airLow_C: ['place/airLow', plan.place?.airLow_C],
    airHigh_C: ['place/airHigh', plan.place?.airHigh_C],
  })
  if (!isKnown(air)) return air
  if (!isKnown(tank)) return tank
  const { fill, low } = tank.known
  if (!isKnown(fill)) return fill
  if (!isKnown(low)) return low
  const highest_C = Math.max(air.known.airHigh_C, air.known.airLow_C)
  const lowest_C = Math.min(air.known.airHigh_C, air.known.airLow_C)
  const hot = (level: DayOf['level']): DayOf => ({
    highest_C,
    lowest_C: hotNight(highest_C, lowest_C, plan.place?.hotNight_C),
    sunny: true,
    level,
  })
  const chilly = (level: DayOf['level']): DayOf => ({
    lowest_C,
    highest_C: Math.min(highest_C, lowest_C + heatPractice.rows.swing.value),
    sunny: false,
    level,
  })
  const full = solutionDay(plan, sky, given, hot(fill.known))
  const base = solutionDay(plan, sky, given, hot(low.known))
  const coldFull = solutionDay(plan, sky, given, chilly(fill.known))
  const coldLow = solutionDay(plan, sky, given, chilly(low.known))
  if (!isKnown(full)) return full
  if (!isKnown(base)) return base
  if (!isKnown(coldFull)) return coldFull
  if (!isKnown(coldLow)) return coldLow
  const hotLow = courseOf(plan, sky, base.known, 'low')
  return {
    known: {
      hotFull: courseOf(plan, sky, full.known, 'fill'),
      hotLow,
      coldFull: courseOf(plan, sky, coldFull.known, 'fill'),
      coldLow: courseOf(plan, sky, coldLow.known, 'low'),
      sunny: sky.sunny,
      ice: iceFacts(plan, base.known),
      oxygen: oxygenFacts(plan, { ...given, temperature_C: hotLow.course.highest_C, level_m: low.known.level_m }),
      cooling: coolingFacts({ plan, sky, needs: given, day: hot(low.known), base: base.known, full: full.known }),
      together: allCooling({ plan, sky, needs: given, day: hot(low.known) }, hotLow.course.highest_C),
      assumed: assumedOf(plan, sky),
    },
  }
}

export type { AllCooling, Cooling, HeatNeeds, IceFacts, OxygenFacts, PlaceKind, SkyFacts, ThirstFacts, TrappedFacts }
export { anyPriced }
