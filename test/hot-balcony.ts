import { airThroughDay, type SolutionDay } from '../src/disciplines/water/day.ts'
import { wallConductance } from '../src/disciplines/water/equations-heat.ts'
import { films } from '../src/tables/heat.ts'
import { surfaces } from '../src/tables/surfaces.ts'

export const hours = (h: number) => h * 3600

/** A sine of sun between 6 and 18 h. */
export const sun = (peak: number) =>
  Array.from({ length: 24 }, (_, h) => Math.max(0, peak * Math.sin((Math.PI * (h - 6)) / 12)))

/** A dark box of 36 L on a hot balcony, its column in the same sun. */
export const balcony: SolutionDay = {
  volume_m3: 36e-3,
  air_C: airThroughDay({ lowest_C: 20, highest_C: 31, warmestAt_s: hours(15) }),
  walls: [
    {
      name: 'box',
      area_m2: 0.5,
      conductance_W_m2_K: wallConductance({
        inside_W_m2_K: films.rows['water-in-tank'].film_W_m2_K,
        outside_W_m2_K: films.rows['outdoors-calm'].film_W_m2_K,
        layers: [{ thickness_m: 0.003, conductivity_W_m_K: 0.22 }],
      }),
      outside_W_m2_K: films.rows['outdoors-calm'].film_W_m2_K,
      absorptance: surfaces.rows.black.absorptance,
      sun_W_m2: sun(300),
    },
  ],
  column: {
    wall: {
      name: 'column',
      area_m2: 0.64,
      conductance_W_m2_K: 9,
      outside_W_m2_K: 12,
      absorptance: 0.4,
      sun_W_m2: sun(150),
    },
    flow_kg_s: 0.05,
    running: [1],
  },
  pump_W: [35],
  ground: { conductance_W_K: 0.6, ground_C: 22 },
  evaporation: { area_m2: 0.02, convection_W_m2_K: 6, vapour_Pa: [1500], pressure_Pa: 101325 },
  ice: [],
}

export const total = (heat: object) => Object.values(heat).reduce((a: number, b: number) => a + b, 0)
