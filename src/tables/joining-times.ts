/** Reading the tables of joining: the pair of plastics, and the times of a cemented joint. */
import { type CementTimeId, cements, cementTimes, dampAir } from './joining.ts'
import type { MaterialId } from './materials.ts'

export interface CementJoint {
  readonly row: CementTimeId
  /** Shorter and longer printed time to careful handling, with the allowance for damp air. Go by the longer. */
  readonly initialSet_s: { readonly low: number; readonly high: number }
  /** Shorter and longer printed time to full strength, with the allowance for damp air. Go by the longer. */
  readonly cure_s: { readonly low: number; readonly high: number }
}

/** Times of a cemented joint; null where neither table reaches: hotter than 38 °C, colder than -18 °C, over 225 mm. */
export function cementJoint(given: {
  readonly outside_m: number
  readonly temperature_C: number
  readonly relativeHumidity: number
}): CementJoint | null {
  const { outside_m, temperature_C, relativeHumidity } = given
  if (!(outside_m > 0)) throw new RangeError(`cementJoint: outside_m must be positive, got ${outside_m}`)
  const ids = Object.keys(cementTimes.rows) as CementTimeId[]
  // At a limit both rows hold; the colder one, which stands later, has the longer times.
  const row = ids.findLast((id) => {
    const { outsideOver_m, outsideTo_m, temperatureLow_C, temperatureHigh_C } = cementTimes.rows[id]
    const sized = outside_m > outsideOver_m && outside_m <= outsideTo_m
    return sized && temperature_C >= temperatureLow_C && temperature_C <= temperatureHigh_C
  })
  if (row === undefined) return null
  const { initialSetLow_s, initialSetHigh_s, cureLow_s, cureHigh_s } = cementTimes.rows[row]
  const { over, longer } = dampAir.rows.damp
  const factor = relativeHumidity > over ? longer : 1
  return {
    row,
    initialSet_s: { low: initialSetLow_s * factor, high: initialSetHigh_s * factor },
    cure_s: { low: cureLow_s * factor, high: cureHigh_s * factor },
  }
}

/** The row of a pair of plastics, in whichever order they are named. */
export function cementFor(one: MaterialId, other: MaterialId) {
  const pairs = Object.values(cements.rows)
  const fits = (a: string, b: string) => pairs.find((pair) => pair.one === a && pair.other === b)
  const row = fits(one, other) ?? fits(other, one)
  if (row === undefined) throw new RangeError(`cementFor: no row for ${one} and ${other}`)
  return row
}
