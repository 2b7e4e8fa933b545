import type { Quantity } from '../../kernel/units.ts'
import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { measuresOf } from '../../plan/tape.ts'
import { plantThirst, siteMasses } from '../../tables/canopy.ts'
import { dipStickSteps, stopWater } from '../../tables/water-path.ts'
import type { HeldFacts } from '../hydraulics/held-facts.ts'
import type { LayoutFacts } from '../layout/index.ts'
import { daysBetweenTopUps, dipStickMarks, fillLine, type Line, lowLine } from './equations-lines.ts'
import type { SetLine, TankFacts } from './tank.ts'
import { solutionLevel } from './vessel.ts'

export { type SetLine, type TankFacts, tankFacts } from './tank.ts'

/** What the tank must hold back and keep, against what the plan has set. */
export interface ReservoirFacts {
  readonly tank: TankFacts
  /** Highest fill line that survives the most that can run back; null where the tank cannot take it. */
  readonly safeFill: Known<Line | null>
  /** Lowest level from which a start leaves the pump covered; null where the tank cannot hold so much. */
  readonly safeLow: Known<Line | null>
  /** Level after the pump has stopped at the set fill line: least and most that runs back. */
  readonly afterStop: Known<{ readonly low_m: number; readonly high_m: number; readonly spilt_m3: number }>
  /** Level after a start at the set low line: most and least that is drawn up. */
  readonly afterStart: Known<{ readonly low_m: number; readonly high_m: number }>
  readonly usable_m3: Known<number>
  /** Use of all plants of this tank in a day: crops of all ages, and all grown. */
  readonly use_m3_d: Known<{ readonly low: number; readonly high: number; readonly from: 'crops' | 'table' }>
  readonly days: Known<Quantity>
  /** Volume from mark to mark of a dip stick. */
  readonly markStep_m3: number
}

const FEWEST_MARKS = 40

function markStep(plan: Plan, brim_m3: number): number {
  const system = measuresOf(plan)
  const steps = Object.values(dipStickSteps.rows).filter((r) => r.system === system)
  return (steps.find((r) => brim_m3 / r.step_m3 <= FEWEST_MARKS) ?? steps.at(-1)!).step_m3
}

/** Share of a grown plant's thirst where plants of all ages stand side by side, by the square of their outline. */
function mixedAges(): number {
  const { grownAt } = stopWater.rows
  const weeks = Object.values(siteMasses.rows).filter((w) => w.week <= grownAt.high)
  const grown = weeks.find((w) => w.week === grownAt.high)!
  return weeks.reduce((sum, w) => sum + (w.outline_m / grown.outline_m) ** 2, 0) / weeks.length
}

/** Water that the plants of one tank take in a day. */
function useOf(plan: Plan, layout: Known<LayoutFacts>): ReservoirFacts['use_m3_d'] {
  const count = plan.towers?.count ?? 1
  const share = Math.min(1, (plan.towers?.perPump ?? count) / count)
  const stated = (plan.crops ?? []).filter((c) => (c.sites ?? 0) > 0 && c.thirst_m3_d !== undefined)
  const grown = stated.reduce((sum, c) => sum + (c.sites ?? 0) * (c.thirst_m3_d ?? 0), 0) * share
  if (grown > 0) return { known: { low: grown * mixedAges(), high: grown, from: 'crops' } }
  if (!isKnown(layout)) return layout
  const plants = layout.known.plants * share
  const { low_m3_d, high_m3_d } = plantThirst.rows.leafy
  return { known: { low: plants * low_m3_d, high: plants * high_m3_d, from: 'table' } }
}

function afterStop(tank: TankFacts, fill: SetLine, held: HeldFacts) {
  const at = (back_m3: number) => {
    const volume_m3 = fill.volume_m3 + back_m3
    return volume_m3 >= tank.brim_m3 ? tank.depth_m : solutionLevel({ ...tank, volume_m3 })
  }
  const spilt_m3 = Math.max(0, fill.volume_m3 + held.back_m3.high - tank.brim_m3)
  return { low_m: at(held.back_m3.low), high_m: at(held.back_m3.high), spilt_m3 }
}

function afterStart(tank: TankFacts, low: SetLine, held: HeldFacts) {
  const at = (up_m3: number) => solutionLevel({ ...tank, volume_m3: Math.max(0, low.volume_m3 - up_m3) })
  return { low_m: at(held.up_m3.high), high_m: at(held.up_m3.low) }
}

const missing = (...all: readonly Known<unknown>[]): { readonly needs: readonly string[] } => ({
  needs: [...new Set(all.flatMap((k) => (isKnown(k) ? [] : k.needs)))],
})

function daysOf(usable: Known<number>, use: ReservoirFacts['use_m3_d']): Known<Quantity> {
  if (!isKnown(usable) || !isKnown(use)) return missing(usable, use)
  const perPlant = { low_m3_d: use.known.low, high_m3_d: use.known.high }
  return { known: daysBetweenTopUps({ usable_m3: Math.max(0, usable.known), plants: 1, perPlant }) }
}

/** Marks of the dip stick, from its foot: worked out when it is drawn. */
export const stickMarks = ({ tank, markStep_m3 }: Pick<ReservoirFacts, 'tank' | 'markStep_m3'>) =>
  tank.brim_m3 / markStep_m3 > 500 ? [] : dipStickMarks({ ...tank, step_m3: markStep_m3, upTo_m: tank.depth_m })

export function reservoirFacts(
  plan: Plan,
  given: { readonly tank: Known<TankFacts>; readonly held: Known<HeldFacts>; readonly layout: Known<LayoutFacts> },
): Known<ReservoirFacts> {
  if (!isKnown(given.tank)) return given.tank
  const tank = given.tank.known
  const { held } = given
  const freeboard_m = plan.reservoir?.freeboard_m
  const cover_m = plan.pump?.minimumDepth_m
  const room: Known<number> = freeboard_m === undefined ? { needs: ['reservoir/freeboard'] } : { known: freeboard_m }
  const cover: Known<number> = cover_m === undefined ? { needs: ['pump/minimumDepth'] } : { known: cover_m }
  const usable: Known<number> =
    isKnown(tank.fill) && isKnown(tank.low)
      ? { known: tank.fill.known.volume_m3 - tank.low.known.volume_m3 }
      : missing(tank.fill, tank.low)
  const use = useOf(plan, given.layout)
  const step_m3 = markStep(plan, tank.brim_m3)
  return {
    known: {
      tank,
      safeFill:
        isKnown(held) && isKnown(room)
          ? {
              known:
                room.known >= tank.depth_m
                  ? null
                  : fillLine({ ...tank, freeboard_m: room.known, drainBack_m3: held.known.back_m3.high }),
            }
          : missing(held, room),
      safeLow:
        isKnown(held) && isKnown(cover)
          ? {
              known:
                cover.known > tank.depth_m
                  ? null
                  : lowLine({ ...tank, pumpCover_m: cover.known, drawnUp_m3: held.known.up_m3.high }),
            }
          : missing(held, cover),
      afterStop:
        isKnown(held) && isKnown(tank.fill)
          ? { known: afterStop(tank, tank.fill.known, held.known) }
          : missing(held, tank.fill),
      afterStart:
        isKnown(held) && isKnown(tank.low)
          ? { known: afterStart(tank, tank.low.known, held.known) }
          : missing(held, tank.low),
      usable_m3: usable,
      use_m3_d: use,
      days: daysOf(usable, use),
      markStep_m3: step_m3,
    },
  }
}
