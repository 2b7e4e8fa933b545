import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { heatPractice, rootZone } from '../../tables/heat-day.ts'
import { shades } from '../../tables/surfaces.ts'
import { iced, rankedCooling, shaded } from './cooling.ts'
import type { SolutionDay } from './day.ts'
import { solutionCourse } from './equations-day.ts'
import { hasSun, type SkyFacts } from './sky-facts.ts'
import { type DayOf, type HeatNeeds, pumpDuty, solutionDay } from './tank-day.ts'

export type CoolingId = 'foil' | 'white' | 'shade' | 'foam' | 'full' | 'rest' | 'ice'

/** What one measure does to the warmest hour of the hot day with the tank low. */
export interface Cooling {
  readonly id: CoolingId
  readonly highest_C: number
  readonly cooler_K: number
  readonly price_money: number | null
  /** Kelvin per money; null without a price. */
  readonly perMoney: number | null
}

interface Given {
  readonly plan: Plan
  readonly sky: SkyFacts
  readonly needs: HeatNeeds
  readonly day: DayOf
  readonly base: SolutionDay
  readonly full: SolutionDay | null
}

const withTank = (plan: Plan, change: NonNullable<Plan['reservoir']>): Plan => ({
  ...plan,
  reservoir: { ...plan.reservoir, ...change },
})

/** The day after each measure, as far as it is one: who has foil is not offered foil. */
function daysAfter(g: Given): readonly { readonly id: CoolingId; readonly day: Known<SolutionDay> }[] {
  const { plan, sky, needs, day, base, full } = g
  const r = plan.reservoir
  const again = (change: NonNullable<Plan['reservoir']>) => solutionDay(withTank(plan, change), sky, needs, day)
  const { bottles, bottle, freezer, bottlesAt, sleeve } = heatPractice.rows
  const ice = [{ at_s: bottlesAt.value, mass_kg: bottles.value * bottle.value, ice_C: freezer.value }]
  // Where no sun comes, nothing is gained by keeping it off.
  const bright = r?.colour === 'foil' || !hasSun(plan)
  const rested = { ...plan, pump: { ...plan.pump, timerOn_s: pumpDuty(plan), timerOff_s: 2 - pumpDuty(plan) } }
  const shade = shades.rows['board-or-skirt'].transmittance
  return [
    ...(bright ? [] : [{ id: 'foil' as const, day: again({ colour: 'foil' }) }]),
    ...(bright || r?.colour === 'white' ? [] : [{ id: 'white' as const, day: again({ colour: 'white' }) }]),
    ...(r?.shaded === true || !hasSun(plan)
      ? []
      : [{ id: 'shade' as const, day: { known: shaded({ day: base, transmittance: shade }) } }]),
    { id: 'foam', day: again({ insulation_m: (r?.insulation_m ?? 0) + sleeve.value }) },
    ...(full === null ? [] : [{ id: 'full' as const, day: { known: full } }]),
    { id: 'rest', day: solutionDay(rested, sky, needs, day) },
    { id: 'ice', day: { known: iced({ day: base, ice }) } },
  ]
}

/** What can be reached with what is bought once: shade and white paint, with foam where that helps. */
export interface AllCooling {
  readonly foam: boolean
  readonly highest_C: number
  /** Sum of what has a price; null where nothing has one. */
  readonly price_money: number | null
}

/** The hot day with the tank low after all of that together; null where it is cool enough, or no sun comes. */
export function allCooling(g: Pick<Given, 'plan' | 'sky' | 'needs' | 'day'>, highest_C: number): AllCooling | null {
  const { plan, sky, needs, day } = g
  if (highest_C <= rootZone.rows.wanted.high_C || !hasSun(plan)) return null
  const r = plan.reservoir
  const price = pricesOf(plan)
  const colour = r?.colour === 'foil' ? 'foil' : 'white'
  const reached = [false, true].flatMap((foam): AllCooling[] => {
    const insulation_m = (r?.insulation_m ?? 0) + (foam ? heatPractice.rows.sleeve.value : 0)
    const changed = withTank(
      { ...plan, column: { ...plan.column, colour: 'white' } },
      { shaded: true, colour, insulation_m },
    )
    const after = solutionDay(changed, sky, needs, day)
    if (!isKnown(after)) return []
    const paid = [price.shade, price.white, foam ? price.foam : null].filter((x) => x !== null)
    const price_money = paid.length === 0 ? null : paid.reduce((sum, x) => sum + x, 0)
    return [{ foam, highest_C: solutionCourse(after.known).highest_C, price_money }]
  })
  return reached.toSorted((a, b) => a.highest_C - b.highest_C)[0] ?? null
}

function pricesOf(plan: Plan): Readonly<Record<CoolingId, number | null>> {
  const p = plan.prices
  return {
    foil: p?.foil ?? null,
    white: p?.paint ?? null,
    shade: p?.shade ?? null,
    foam: p?.insulation ?? null,
    full: 0,
    rest: 0,
    ice: p?.ice ?? null,
  }
}

/** Whether a measure that has to be paid has a price, so that measures can be compared by what they cost. */
export const anyPriced = (cooling: readonly Cooling[]): boolean => cooling.some((c) => (c.price_money ?? 0) > 0)

/**
 * Measures ranked by kelvin per money, those that cost nothing first and those without a price after all others by
 * kelvin; where nothing to be paid has a price, all by kelvin.
 */
export function coolingFacts(g: Given): readonly Cooling[] {
  const price = pricesOf(g.plan)
  const known = daysAfter(g).flatMap(({ id, day }) => (isKnown(day) ? [{ id, day: day.known }] : []))
  const choices = known.map(({ id, day }) => ({ id, day, price_money: price[id] ?? 0 }))
  const ranked = rankedCooling({ base: g.base, choices }).map((c): Cooling => {
    const id = c.id as CoolingId
    const { highest_C, cooler_K } = c
    const price_money = price[id]
    return { id, highest_C, cooler_K, price_money, perMoney: price_money === null ? null : c.perMoney }
  })
  const byKelvin = ranked.toSorted((a, b) => b.cooler_K - a.cooler_K)
  if (!anyPriced(ranked)) return byKelvin
  return [...ranked.filter((c) => c.price_money !== null), ...byKelvin.filter((c) => c.price_money === null)]
}
