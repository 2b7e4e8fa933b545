import { piecewiseLinear } from '../../kernel/interpolate.ts'
import { siteMasses } from '../../tables/canopy.ts'

const rows = Object.values(siteMasses.rows)
const byWeek = (y: readonly number[]) => piecewiseLinear({ x: rows.map((row) => row.week), y })
const mass = byWeek(rows.map((row) => row.shoot_kg + row.wetRoot_kg + row.cupAndMedium_kg))
const outline = byWeek(rows.map((row) => row.outline_m))

/** What hangs at one site some weeks after planting, and how wide it is seen from the side; straight lines between rows. */
export function siteAtWeek({ week }: { readonly week: number }): {
  readonly mass_kg: number
  readonly outline_m: number
} {
  if (!(week >= 0)) throw new RangeError(`siteAtWeek: week = ${week} is negative`)
  return { mass_kg: mass(week), outline_m: outline(week) }
}
