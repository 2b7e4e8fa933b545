import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { waterPathPractice } from '../../tables/water-path.ts'
import type { LayoutFacts } from '../layout/index.ts'
import type { TankFacts } from '../reservoir/tank.ts'
import type { PocketFacts, TemplatesFacts } from '../templates/index.ts'
import { type DistributorFacts, distributorFacts } from './distributor-facts.ts'
import { type DrainFacts, drainFacts } from './drain-facts.ts'
import { columnPipe, type FilmFacts, filmFacts } from './film-facts.ts'
import { columnFlow, type FlowFacts, flowFacts, type LiftFacts, liftFacts } from './flow-facts.ts'
import { type HeldFacts, heldFacts } from './held-facts.ts'
import { openingFacts } from './opening-facts.ts'
import { type PumpFacts, pumpFacts } from './pump-facts.ts'
import type { Range } from './range.ts'
import { type RootFacts, rootFacts } from './roots-facts.ts'
import { type StopFacts, stopFacts } from './stop-facts.ts'
import { type SolutionWater, solutionWater } from './temperature.ts'
import { hasCheckValve, type Tubes, tubesOf } from './tubes.ts'
import { type WettingFacts, wettingFacts } from './wetting-facts.ts'

/** The water's way round, each part as far as the plan states it. */
export interface HydraulicsFacts {
  readonly water: SolutionWater
  readonly tubes: Known<Tubes>
  readonly lift: Known<LiftFacts>
  readonly pump: Known<PumpFacts>
  readonly flow: Known<FlowFacts>
  /** Flow of one column for which all below the riser is judged: of the pump, else what is wanted. */
  readonly column_m3_s: Known<Range>
  readonly distributor: Known<DistributorFacts | null>
  readonly film: Known<FilmFacts>
  readonly wetting: Known<WettingFacts>
  readonly held: Known<HeldFacts>
  readonly drain: Known<DrainFacts>
  readonly roots: Known<RootFacts>
  readonly stop: StopFacts
}

interface Neighbours {
  readonly tank: Known<TankFacts>
  readonly layout: Known<LayoutFacts>
  readonly templates: TemplatesFacts | null
  readonly pocket: Known<PocketFacts>
  /** Age of the oldest plants, in weeks. */
  readonly oldest_weeks: number
}

type Levels = { readonly low_m: number; readonly fill_m: number | null }

/** Levels of the two set lines above the floor from which heights of outlets count. */
function levelsOf(tank: Known<TankFacts>): Known<Levels> {
  if (!isKnown(tank)) return tank
  const { low, fill, floor_m } = tank.known
  if (!isKnown(low)) return low
  return { known: { low_m: floor_m + low.known.level_m, fill_m: isKnown(fill) ? floor_m + fill.known.level_m : null } }
}

const needsOf = (...all: readonly Known<unknown>[]): { readonly needs: readonly string[] } => ({
  needs: [...new Set(all.flatMap((k) => (isKnown(k) ? [] : k.needs)))],
})

export function hydraulicsFacts(plan: Plan, given: Neighbours): HydraulicsFacts {
  const water = solutionWater(plan)
  const tubes = tubesOf(plan)
  const levels = levelsOf(given.tank)
  const pump = pumpFacts(
    plan,
    isKnown(tubes) ? { ...tubes.known.riser, branches: [] } : null,
    water.cold.viscosity_m2_s,
  )
  const lift: Known<LiftFacts> =
    isKnown(tubes) && isKnown(levels) ? { known: liftFacts(tubes.known, levels.known) } : needsOf(tubes, levels)
  const flow: Known<FlowFacts> =
    isKnown(tubes) && isKnown(levels) && isKnown(pump)
      ? { known: flowFacts({ tubes: tubes.known, pump: pump.known, water, levels: levels.known }) }
      : needsOf(tubes, levels, pump)
  const column = columnFlow(plan, flow)
  const total: Known<Range> = isKnown(flow) ? { known: flow.known.total_m3_s } : flow
  const film = filmFacts(plan, column, water)
  const distributor = distributorFacts(plan, { flow: column, water, bore_m: columnPipe(plan)?.bore_m ?? null })
  const held = heldFacts({
    tubes,
    film,
    distributor,
    sitesPerColumn: isKnown(given.layout) ? given.layout.known.sites.length : null,
    checkValve: hasCheckValve(plan),
  })
  // The map takes as long as all the rest: it is drawn when first looked at.
  let wetting: Known<WettingFacts> | null = null
  return {
    water,
    tubes,
    lift,
    pump,
    flow,
    column_m3_s: column,
    distributor,
    film,
    get wetting() {
      wetting ??= wettingFacts(plan, {
        ...{ flow: column, water, distributor },
        layout: given.layout,
        opening: openingFacts(plan, given),
      })
      return wetting
    },
    held,
    drain: drainFacts(plan, column, total),
    roots: rootFacts(plan, { layout: given.layout, film, oldest_weeks: given.oldest_weeks }),
    stop: stopFacts(plan, {
      warmest_C: water.warmest_C,
      keptShare: waterPathPractice.rows.pauseKept.value,
      held: isKnown(held) ? held.known : null,
      total_m3_s: isKnown(total) ? total.known : null,
      fall_s: isKnown(film) ? film.known.fallTime_s : null,
    }),
  }
}

export { type DistributorFacts, distributorSuggestions, plateDrills } from './distributor-facts.ts'
export type { DrainFacts } from './drain-facts.ts'
export type { FilmFacts } from './film-facts.ts'
export { type ColumnFlow, type FlowFacts, type LiftFacts, systemCurve } from './flow-facts.ts'
export type { HeldFacts } from './held-facts.ts'
export type { PumpFacts } from './pump-facts.ts'
export { pumpsToBuy } from './pump-to-buy.ts'
export type { RootFacts } from './roots-facts.ts'
export { AIRS_C, type DryTime, type StopFacts } from './stop-facts.ts'
export { type Strip, strips, type WettingFacts, wettingCures } from './wetting-facts.ts'
