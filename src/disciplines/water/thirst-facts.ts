import type { Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { siteMasses } from '../../tables/canopy.ts'
import { heatPractice } from '../../tables/heat-day.ts'
import { plantWater, referenceThirstHargreaves } from './equations-thirst.ts'
import type { SkyFacts } from './sky-facts.ts'

/** What the sunniest, hottest day draws from a grown plant by weather alone, a second opinion on stated thirst. */
export interface ThirstFacts {
  readonly reference_kg_m2_d: number
  readonly perPlant_m3_d: number
  readonly week: number
}

export function thirstFacts(plan: Plan, sky: SkyFacts, week: number): Known<ThirstFacts> {
  const { airHigh_C: highest_C, airLow_C, hotNight_C } = plan.place ?? {}
  if (highest_C === undefined) return { needs: ['place/airHigh'] }
  const lowest_C = hotNight(highest_C, airLow_C, hotNight_C)
  const sunAboveAir_W_m2 = sky.aboveAir_W_m2 * (sky.sunny ? sky.reaches : 0)
  const reference_kg_m2_d = referenceThirstHargreaves({ highest_C, lowest_C, sunAboveAir_W_m2 })
  const rows = Object.values(siteMasses.rows)
  const row = rows.reduce((a, b) => (Math.abs(b.week - week) < Math.abs(a.week - week) ? b : a))
  const area_m2 = (Math.PI / 4) * row.outline_m ** 2
  const cropFactor = heatPractice.rows.cropFactor.value
  return {
    known: {
      reference_kg_m2_d,
      perPlant_m3_d: plantWater({ cropFactor, reference_kg_m2_d, area_m2 }),
      week: row.week,
    },
  }
}

/** Night of the hottest day: as stated, else a usual swing below the afternoon, but not below the coldest air. */
export function hotNight(highest_C: number, airLow_C: number | undefined, stated_C: number | undefined): number {
  const usual = Math.max(airLow_C ?? Number.NEGATIVE_INFINITY, highest_C - heatPractice.rows.swing.value)
  return Math.min(highest_C, stated_C ?? usual)
}
