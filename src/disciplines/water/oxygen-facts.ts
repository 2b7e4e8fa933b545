import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { siteMasses } from '../../tables/canopy.ts'
import { SEA_LEVEL_Pa } from '../../tables/constants.ts'
import { heatPractice } from '../../tables/heat-day.ts'
import { airStones, oxygenGas, rootRespirations } from '../../tables/oxygen.ts'
import type { FilmFacts } from '../hydraulics/film-facts.ts'
import type { Range } from '../hydraulics/range.ts'
import {
  airStoneConductance,
  filmTransferVelocity,
  loopOxygen,
  oxygenSolubilityUnderPressure,
  rootOxygenUse,
  salinityOfConductivity,
} from './equations-oxygen.ts'
import type { SkyFacts } from './sky-facts.ts'

export interface OxygenFacts {
  readonly temperature_C: number
  /** What the solution can hold at this temperature, salinity and height; and at sea level. */
  readonly saturation_g_m3: number
  readonly saturationAtSea_g_m3: number
  /** At the foot of the column and in the tank, grown plants, over the band of how hard roots breathe. */
  readonly foot_g_m3: Range
  readonly tank_g_m3: Range
  readonly use_kg_s: Range
  readonly supply_kg_s: number
}

/** Film moves at its surface by half as much again as on the mean. */
const SURFACE_OVER_MEAN = 1.5

/** Temperatures of a solution at all: beyond them the heat itself is the finding. */
const LIQUID_C = [0, 60] as const
const liquid = (T: number): number => Math.min(LIQUID_C[1], Math.max(LIQUID_C[0], T))
const clamp = (n: number): number => Math.max(0, n)

function grownRoots_kg(week: number): number {
  const rows = Object.values(siteMasses.rows)
  const row = rows.reduce((a, b) => (Math.abs(b.week - week) < Math.abs(a.week - week) ? b : a))
  return row.wetRoot_kg * heatPractice.rows.rootDryShare.value
}

export function saturationOf(plan: Plan, sky: SkyFacts, temperature_C: number): number {
  const salinity = salinityOfConductivity({ conductivity_S_m: plan.feed?.conductivity_S_m ?? 0 })
  return oxygenSolubilityUnderPressure({
    temperature_C: liquid(temperature_C),
    salinity,
    pressure_Pa: sky.pressure_Pa,
  })
}

/** Oxygen in the loop of tank and column at a temperature, plants grown. */
export function oxygenFacts(
  plan: Plan,
  given: {
    readonly sky: SkyFacts
    readonly film: Known<FilmFacts>
    readonly flow: Known<Range>
    readonly sites: number | null
    readonly temperature_C: number
    readonly level_m: number
    readonly week: number
  },
): Known<OxygenFacts> {
  const { sky, film, flow, sites, temperature_C, level_m, week } = given
  if (plan.place?.altitude_m === undefined) return { needs: ['place/altitude'] }
  if (!isKnown(film)) return film
  if (!isKnown(flow)) return flow
  if (sites === null) return { needs: ['column/sites'] }
  const saturation_g_m3 = saturationOf(plan, sky, temperature_C)
  const columns = plan.towers?.perPump ?? plan.towers?.count ?? 1
  const length_m = plan.column?.length_m ?? 0
  const fall_m = Math.min(length_m, plan.column?.sites?.pitch_m ?? length_m)
  const speed_m_s = film.known.speed_m_s.low
  const flow_m3_s = flow.known.low * columns
  if (!(speed_m_s > 0 && flow_m3_s > 0 && fall_m > 0)) return { needs: ['riser/neededFlow'] }
  const transfer_m_s = filmTransferVelocity({
    diffusivity_m2_s: oxygenGas.rows.air.diffusivity_m2_s,
    surface_m_s: SURFACE_OVER_MEAN * speed_m_s,
    fall_m,
  })
  const stone = airStones.rows['small-stone']
  const tankConductance_m3_s = airStoneConductance({
    air_m3_s: plan.reservoir?.airStone_m3_s ?? 0,
    transfer_per_m: stone.transferLow_per_m,
    depth_m: Math.min(level_m, 1),
    saturation_g_m3,
  })
  const roots = rootRespirations.rows['leafy-and-herbs']
  const dryRoot_kg = grownRoots_kg(week) * sites * columns
  const use = (respiration_per_s: number) =>
    rootOxygenUse({ dryRoot_kg, respiration_per_s, temperature_C, doubling_K: roots.doubling_K })
  const loop = (columnUse_kg_s: number) =>
    loopOxygen({
      saturation_g_m3,
      flow_m3_s,
      // Warm water takes oxygen up faster; the spread at 25 °C is kept, which is safe above it and close below.
      transfer_m_s,
      wetted_m2: film.known.perimeter_m * length_m * columns,
      columnUse_kg_s,
      tankUse_kg_s: 0,
      tankConductance_m3_s,
    })
  const use_kg_s = { low: use(roots.low_per_s), high: use(roots.high_per_s) }
  const [easy, hard] = [loop(use_kg_s.low), loop(use_kg_s.high)]
  const salinity = salinityOfConductivity({ conductivity_S_m: plan.feed?.conductivity_S_m ?? 0 })
  return {
    known: {
      temperature_C,
      saturation_g_m3,
      saturationAtSea_g_m3: oxygenSolubilityUnderPressure({
        temperature_C: liquid(temperature_C),
        salinity,
        pressure_Pa: SEA_LEVEL_Pa,
      }),
      foot_g_m3: { low: clamp(hard.columnEnd_g_m3), high: clamp(easy.columnEnd_g_m3) },
      tank_g_m3: { low: clamp(hard.tank_g_m3), high: clamp(easy.tank_g_m3) },
      use_kg_s,
      supply_kg_s: easy.supply_kg_s,
    },
  }
}
