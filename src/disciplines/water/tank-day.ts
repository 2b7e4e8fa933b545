import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { siteMasses } from '../../tables/canopy.ts'
import { conductors, films } from '../../tables/heat.ts'
import { heatPractice } from '../../tables/heat-day.ts'
import { standingPractice } from '../../tables/standing.ts'
import { colours, shades, surfaces } from '../../tables/surfaces.ts'
import type { FilmFacts } from '../hydraulics/film-facts.ts'
import type { Range } from '../hydraulics/range.ts'
import type { TankFacts } from '../reservoir/tank.ts'
import { airThroughDay, type SolutionDay, type SunlitWall } from './day.ts'
import { saturationPressure } from './equations-air.ts'
import { buriedConductance, groundConductance, radiationFilm, wallConductance } from './equations-heat.ts'
import { skyLoss } from './equations-sun.ts'
import { iceNeeded } from './equations-tank.ts'
import type { SkyFacts } from './sky-facts.ts'

/** What facts of other disciplines the heat of the solution needs. */
export interface HeatNeeds {
  readonly tank: Known<TankFacts>
  /** Flow of one column. */
  readonly flow: Known<Range>
  readonly film: Known<FilmFacts>
  /** Sites of one column, and their mouths. */
  readonly sites: number | null
  readonly mouth_m2: number | null
}

/** No colour is taken as dark, the worst case. */
export type Colour = keyof typeof colours

const FILM_W_m2_K = {
  out: films.rows['outdoors-calm'].film_W_m2_K,
  in: films.rows['indoors-wall'].film_W_m2_K,
  water: films.rows['water-in-tank'].film_W_m2_K,
  lid: films.rows['indoors-heat-down'].film_W_m2_K,
  falling: films.rows['falling-film'].film_W_m2_K,
}
/** Mean temperature of a surface in the sun, for the part of its film that is radiation. */
const SURFACE_C = 30
const EMITTANCE = 0.9
const DAY_s = 86_400

/** One day: which air, whether the sun shines, how much water. */
export interface DayOf {
  readonly lowest_C: number
  readonly highest_C: number
  readonly sunny: boolean
  readonly level: { readonly volume_m3: number; readonly level_m: number }
}

/** Share of the time that the pump runs. */
export function pumpDuty(plan: Plan): number {
  const { timerOn_s: on, timerOff_s: off } = plan.pump ?? {}
  return on === undefined || off === undefined || !(on + off > 0) ? 1 : on / (on + off)
}

/** Outside film of a colour: bright foil cannot shine heat away. */
function outsideFilm(colour: Colour, outdoors: boolean): number {
  const film = outdoors ? FILM_W_m2_K.out : FILM_W_m2_K.in
  const lost = EMITTANCE - surfaces.rows[colours[colour]].emittance
  return Math.max(1, film - radiationFilm({ emittance: Math.max(0, lost), temperature_C: SURFACE_C }))
}

interface Skin {
  readonly name: string
  readonly area_m2: number
  readonly inside_W_m2_K: number
  readonly colour: Colour
  readonly outdoors: boolean
  readonly sun_W_m2: readonly number[]
  /** What a black surface that sees as much of the sky would shine away. */
  readonly sky_W_m2: number
  readonly layers: readonly { readonly thickness_m: number; readonly conductivity_W_m_K: number }[]
}

function wallOf(s: Skin): SunlitWall {
  const outside_W_m2_K = outsideFilm(s.colour, s.outdoors)
  return {
    name: s.name,
    area_m2: s.area_m2,
    conductance_W_m2_K: wallConductance({ inside_W_m2_K: s.inside_W_m2_K, outside_W_m2_K, layers: s.layers }),
    outside_W_m2_K,
    absorptance: surfaces.rows[colours[s.colour]].absorptance,
    sun_W_m2: s.sun_W_m2,
    sky_W_m2: s.sky_W_m2 * surfaces.rows[colours[s.colour]].emittance,
  }
}

/** An upright wall sees half of the sky. */
const UPRIGHT = 0.5

/**
 * Heat shone away to a clear sky, of which the place's share is open; none indoors, nor where the humidity, and with it
 * the warmth of the sky, is not known: the warmer case.
 */
function openSky(plan: Plan, sky: SkyFacts, { highest_C, lowest_C }: DayOf): number {
  const humidity = plan.place?.humidity
  if (!sky.outdoors || humidity === undefined) return 0
  const vapour_Pa = humidity * saturationPressure({ temperature_C: highest_C })
  return Math.max(0, skyLoss({ highest_C, lowest_C, vapour_Pa, clearShare: 1 })) * sky.reaches
}

/** Girth and plan of the tank, means over its depth. */
function tankSize(plan: Plan): { girth_m: number; plan_m2: number } | null {
  const c = plan.reservoir?.container
  if (c === undefined) return null
  const [length_m, width_m] = [(c.topLength_m + c.footLength_m) / 2, (c.topWidth_m + c.footWidth_m) / 2]
  if (c.shape === 'round') return { girth_m: Math.PI * length_m, plan_m2: (Math.PI / 4) * length_m ** 2 }
  return { girth_m: 2 * (length_m + width_m), plan_m2: length_m * width_m }
}

function tankWalls(plan: Plan, size: { girth_m: number; plan_m2: number }, sky: SkyFacts, day: DayOf): SunlitWall[] {
  const r = plan.reservoir
  const colour = r?.colour ?? 'dark'
  const shade = r?.shaded === true ? shades.rows['board-or-skirt'].transmittance : 1
  const sun = (series: readonly number[]) => (day.sunny ? series.map((s) => s * shade) : [])
  const away_W_m2 = openSky(plan, sky, day) * shade
  const skin = {
    thickness_m: heatPractice.rows.tankWall.value,
    conductivity_W_m_K: conductors.rows.polypropylene.conductivity_W_m_K,
  }
  const foam_m = r?.insulation_m ?? 0
  const foam = { thickness_m: foam_m, conductivity_W_m_K: conductors.rows.polystyrene.conductivity_W_m_K }
  const layers = foam_m > 0 ? [skin, foam] : [skin]
  const above = 1 - (r?.buried ?? 0)
  const rest = { colour, outdoors: sky.outdoors, layers } as const
  return [
    wallOf({
      name: 'sides',
      area_m2: size.girth_m * day.level.level_m * above,
      inside_W_m2_K: FILM_W_m2_K.water,
      sun_W_m2: sun(sky.wall_W_m2),
      sky_W_m2: away_W_m2 * UPRIGHT,
      ...rest,
    }),
    // Under the lid lies air: what the lid takes in reaches the water through it.
    wallOf({
      name: 'lid',
      area_m2: size.plan_m2,
      inside_W_m2_K: FILM_W_m2_K.lid,
      sun_W_m2: sun(sky.ground_W_m2),
      sky_W_m2: away_W_m2,
      ...rest,
    }),
  ]
}

function groundOf(plan: Plan, size: { plan_m2: number }, depth_m: number, mean_C: number): SolutionDay['ground'] {
  const buried = plan.reservoir?.buried ?? 0
  if (buried <= 0) return null
  const conductivity_W_m_K = conductors.rows['soil-moist'].conductivity_W_m_K
  const diameter_m = Math.sqrt((4 / Math.PI) * size.plan_m2)
  const sunk_m = buried * depth_m
  const bottom = groundConductance({ conductivity_W_m_K, bottom_m: diameter_m })
  const deep = 4 * sunk_m > 1.5 * diameter_m
  const conductance_W_K = deep
    ? Math.max(bottom, buriedConductance({ conductivity_W_m_K, depth_m: sunk_m, diameter_m }))
    : bottom
  return { conductance_W_K, ground_C: mean_C }
}

/**
 * Share of the sun that passes between the leaves to the column, plants of all ages side by side: leaves fallen at
 * random leave e^(-cover) of a wall in the sun.
 */
function betweenLeaves(plan: Plan, sites: number | null): number {
  const pipe = plan.column?.pipe
  const length_m = plan.column?.length_m
  if (sites === null || pipe === undefined || length_m === undefined) return 1
  const weeks = Object.values(siteMasses.rows).filter((w) => w.week <= standingPractice.rows.oldestWeek.value)
  const leaf_m2 = weeks.reduce((sum, w) => sum + (Math.PI / 4) * w.outline_m ** 2, 0) / weeks.length
  return Math.exp((-sites * leaf_m2) / (Math.PI * 2 * pipe.outside_m * length_m))
}

function columnOf(plan: Plan, sky: SkyFacts, needs: HeatNeeds, day: DayOf, columns: number): SolutionDay['column'] {
  const pipe = plan.column?.pipe
  const length_m = plan.column?.length_m
  if (pipe === undefined || length_m === undefined || !isKnown(needs.flow)) return null
  const { low, high } = needs.flow.known
  const open = betweenLeaves(plan, needs.sites)
  const wall = wallOf({
    name: 'column',
    area_m2: Math.PI * pipe.outside_m * length_m * columns,
    inside_W_m2_K: FILM_W_m2_K.falling,
    colour: plan.column?.colour ?? 'dark',
    outdoors: sky.outdoors,
    sun_W_m2: day.sunny ? sky.wall_W_m2.map((sun) => sun * open) : [],
    sky_W_m2: openSky(plan, sky, day) * UPRIGHT * open,
    layers: [
      {
        thickness_m: (pipe.outside_m - pipe.bore_m) / 2,
        conductivity_W_m_K: conductors.rows['pvc-u'].conductivity_W_m_K,
      },
    ],
  })
  return { wall, flow_kg_s: ((low + high) / 2) * 1000 * columns, running: [pumpDuty(plan)] }
}

/** Air that the column breathes through its mouths; none where the humidity of the place is not known. */
function breath(plan: Plan, sky: SkyFacts, needs: HeatNeeds, day: DayOf, columns: number): SolutionDay['evaporation'] {
  const humidity = plan.place?.humidity
  if (humidity === undefined || needs.sites === null || needs.mouth_m2 === null) return null
  const film = sky.outdoors ? FILM_W_m2_K.out : FILM_W_m2_K.in
  return {
    area_m2: needs.sites * columns * needs.mouth_m2 * heatPractice.rows.mouthOpen.value,
    convection_W_m2_K: film - radiationFilm({ emittance: EMITTANCE, temperature_C: SURFACE_C }),
    vapour_Pa: [humidity * saturationPressure({ temperature_C: day.highest_C })],
    pressure_Pa: sky.pressure_Pa,
  }
}

/** Bottles of the plan by hour. More than would freeze the tank is not reckoned: that much is a finding of its own. */
export function iceOf(plan: Plan, start_C: number, volume_m3: number): SolutionDay['ice'] {
  const { mass_kg = 0, at = [] } = plan.reservoir?.ice ?? {}
  if (!(mass_kg > 0)) return []
  const { bottlesAt, freezer } = heatPractice.rows
  const hours = at.length > 0 ? at : [bottlesAt.value]
  const most_kg = iceNeeded({ volume_m3, start_C: Math.max(0, start_C), wanted_C: 0, ice_C: freezer.value })
  const each_kg = Math.min(mass_kg, most_kg) / hours.length
  return hours.map((at_s) => ({ at_s: Math.min(at_s, DAY_s - 1), mass_kg: each_kg, ice_C: freezer.value }))
}

/** Less than this has no day of its own: it follows the air at once. */
const PUDDLE_m3 = 1e-4

/** The tank and column through one kind of day. */
export function solutionDay(plan: Plan, sky: SkyFacts, needs: HeatNeeds, day: DayOf): Known<SolutionDay> {
  const size = tankSize(plan)
  if (size === null || !isKnown(needs.tank)) return { needs: ['reservoir/container'] }
  if (!(day.level.volume_m3 >= PUDDLE_m3)) return { needs: ['reservoir/lowVolume'] }
  const power_W = plan.pump?.power_W
  if (power_W === undefined) return { needs: ['pump/power'] }
  const columns = plan.towers?.perPump ?? plan.towers?.count ?? 1
  const mean_C = (day.lowest_C + day.highest_C) / 2
  return {
    known: {
      volume_m3: day.level.volume_m3,
      air_C: airThroughDay({
        lowest_C: day.lowest_C,
        highest_C: day.highest_C,
        warmestAt_s: heatPractice.rows.warmestAt.value,
      }),
      walls: tankWalls(plan, size, sky, day),
      column: columnOf(plan, sky, needs, day, columns),
      pump_W: [power_W * pumpDuty(plan)],
      ground: groundOf(plan, size, needs.tank.known.depth_m, mean_C),
      evaporation: breath(plan, sky, needs, day, columns),
      ice: day.sunny ? iceOf(plan, day.highest_C, day.level.volume_m3) : [],
    },
  }
}
