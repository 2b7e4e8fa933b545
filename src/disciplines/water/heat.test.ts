import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bodies, films } from '../../tables/heat.ts'
import { shades, surfaces } from '../../tables/surfaces.ts'
import { iced, painted, rankedCooling, refilled, shaded, wrapped } from './cooling.ts'
import { airThroughDay, type SolutionDay, throughDay, timeBeyond } from './day.ts'
import { saturationPressure, wetBulb } from './equations-air.ts'
import { solutionCourse } from './equations-day.ts'
import {
  buriedConductance,
  evaporation,
  evaporationHeat,
  groundConductance,
  radiationFilm,
  solAirTemperature,
  streamConductance,
  wallConductance,
} from './equations-heat.ts'
import {
  heatCapacity,
  heaterPower,
  icedTemperature,
  iceNeeded,
  relaxationTime,
  relaxedTemperature,
} from './equations-tank.ts'

const hours = (h: number) => h * 3600

describe('heat relations', () => {
  it('cross-checks of a tank of 60 L that warms in a hot room', () => {
    const tank = { start_C: 20, surroundings_C: 35, conductance_W_K: 6, heat_W: 15, volume_m3: 0.06 }
    for (const [h, expected] of [
      [1, 21.445],
      [6, 27.067],
      [12, 31.28],
      [24, 35.289],
    ] as const)
      expect(relaxedTemperature({ ...tank, time_s: hours(h) })).toBeCloseTo(expected, 3)
    expect(heatCapacity({ volume_m3: 0.06 }) / 6 / 3600).toBeCloseTo(11.601, 3)
    expect((30 * 3600) / heatCapacity({ volume_m3: 0.06 })).toBeCloseTo(0.431, 3)
  })

  it('time to a temperature goes round trip with the temperature after a time', () => {
    const tank = { start_C: 20, surroundings_C: 35, conductance_W_K: 6, heat_W: 15, volume_m3: 0.06 }
    for (const h of [1, 5, 20]) {
      const wanted_C = relaxedTemperature({ ...tank, time_s: hours(h) })
      expect(relaxationTime({ ...tank, wanted_C })).toBeCloseTo(hours(h), 4)
    }
    expect(relaxationTime({ ...tank, wanted_C: 38 })).toBeNull()
    expect(relaxationTime({ ...tank, wanted_C: 19 })).toBeNull()
    expect(relaxationTime({ ...tank, wanted_C: 20 })).toBe(0)
  })

  it('a heater of the computed power holds the wanted temperature', () => {
    const heat_W = heaterPower({ conductance_W_K: 6, wanted_C: 19, surroundings_C: 16, present_W: 10 })
    expect(heat_W).toBeCloseTo(8, 12)
    const tank = { start_C: 19, surroundings_C: 16, conductance_W_K: 6, heat_W: heat_W + 10, volume_m3: 0.06 }
    expect(relaxedTemperature({ ...tank, time_s: hours(30) })).toBeCloseTo(19, 12)
    expect(heaterPower({ conductance_W_K: 6, wanted_C: 15, surroundings_C: 16, present_W: 0 })).toBe(0)
  })

  it('cross-checks of films and sol-air rise', () => {
    expect(radiationFilm({ emittance: 0.9, temperature_C: 25 })).toBeCloseTo(5.41, 2)
    expect(radiationFilm({ emittance: 0.04, temperature_C: 25 })).toBeCloseTo(0.24, 2)
    const sun = { air_C: 0, sun_W_m2: 800, outside_W_m2_K: 17 }
    expect(solAirTemperature({ ...sun, absorptance: 0.25 })).toBeCloseTo(11.8, 1)
    expect(solAirTemperature({ ...sun, absorptance: 0.95 })).toBeCloseTo(44.7, 1)
  })

  it('two bottles of 1 kg take 36 L from 31 to about 25 °C, and the ice for it comes out the same', () => {
    const after = icedTemperature({ volume_m3: 36e-3, start_C: 31, ice_kg: 2, ice_C: 0 })
    expect(after).toBeCloseTo(25.2, 1)
    expect(iceNeeded({ volume_m3: 36e-3, start_C: 31, wanted_C: after, ice_C: 0 })).toBeCloseTo(2, 9)
    expect(icedTemperature({ volume_m3: 36e-3, start_C: 31, ice_kg: 50, ice_C: -18 })).toBe(0)
  })

  it('a wet surface in moving air settles near the wet bulb, where convection pays for evaporation', () => {
    const pressure_Pa = 101325
    for (const [t, r] of [
      [30, 0.3],
      [25, 0.6],
      [35, 0.2],
    ] as const) {
      const water_C = wetBulb({ temperature_C: t, relativeHumidity: r, pressure_Pa })
      const vapour_Pa = r * saturationPressure({ temperature_C: t })
      const cooling =
        evaporation({ water_C, vapour_Pa, pressure_Pa, convection_W_m2_K: 10 }) *
        evaporationHeat({ temperature_C: water_C })
      // Water in air: mass spreads 10 % better than heat (Le^(-2/3)), which is all that separates the two.
      expect(cooling / (10 * (t - water_C))).toBeGreaterThan(1)
      expect(cooling / (10 * (t - water_C))).toBeLessThan(1.13)
    }
  })

  it('insulation only takes away, and a long thin buried tank loses more than a short one', () => {
    const bare = wallConductance({ inside_W_m2_K: 200, outside_W_m2_K: 12, layers: [] })
    const wrap = wallConductance({
      inside_W_m2_K: 200,
      outside_W_m2_K: 12,
      layers: [{ thickness_m: 0.02, conductivity_W_m_K: 0.036 }],
    })
    expect(wrap).toBeLessThan(bare / 5)
    const ground = { conductivity_W_m_K: 1.3, diameter_m: 0.5 }
    expect(buriedConductance({ ...ground, depth_m: 1.2 })).toBeGreaterThan(
      buriedConductance({ ...ground, depth_m: 0.8 }),
    )
    expect(groundConductance({ conductivity_W_m_K: 1.3, bottom_m: 0.5 })).toBeCloseTo(1.3, 12)
  })

  it('a slow stream gives up all it carries, a fast one what the wall lets through', () => {
    expect(streamConductance({ flow_kg_s: 1e-4, wall_W_K: 8 })).toBeCloseTo(1e-4 * 4184, 6)
    expect(streamConductance({ flow_kg_s: 100, wall_W_K: 8 })).toBeCloseTo(8, 3)
    expect(streamConductance({ flow_kg_s: 0, wall_W_K: 8 })).toBe(0)
  })

  it('refuses impossible sizes', () => {
    expect(() => wallConductance({ inside_W_m2_K: 0, outside_W_m2_K: 12, layers: [] })).toThrow('h_i = 0')
    expect(() => heatCapacity({ volume_m3: -1 })).toThrow('V = -1')
    expect(() => iceNeeded({ volume_m3: 0.04, start_C: 20, wanted_C: 25, ice_C: 0 })).toThrow(RangeError)
    expect(() => icedTemperature({ volume_m3: 0.04, start_C: 20, ice_kg: 1, ice_C: 5 })).toThrow(RangeError)
  })
})

/** A sine of sun between 6 and 18 h. */
const sun = (peak: number) =>
  Array.from({ length: 24 }, (_, h) => Math.max(0, peak * Math.sin((Math.PI * (h - 6)) / 12)))

/** A dark box of 36 L on a hot balcony, its column in the same sun. */
const balcony: SolutionDay = {
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

const total = (heat: object) => Object.values(heat).reduce((a: number, b: number) => a + b, 0)

describe('a day of the solution', () => {
  it('ends where it began, and the heat of its paths adds to nothing', () => {
    const course = solutionCourse(balcony)
    expect(course.temperature_C.at(-1)).toBeCloseTo(course.temperature_C[0]!, 6)
    expect(Math.abs(total(course.heat))).toBeLessThan(heatCapacity({ volume_m3: 36e-3 }) * 1e-6)
    expect(course.heat.sun_J).toBeGreaterThan(0)
    expect(course.heat.pump_J).toBeCloseTo(35 * 86_400, 3)
    expect(course.heat.evaporation_J).toBeLessThan(0)
    expect(course.highestAt_s).toBeGreaterThan(hours(13))
    expect(course.highestAt_s).toBeLessThan(hours(19))
  })

  it('conserves energy in random tanks, with ice and without', () => {
    const any = fc.record({
      volume_m3: fc.double({ min: 0.005, max: 0.3, noNaN: true }),
      pump: fc.double({ min: 0, max: 80, noNaN: true }),
      peak: fc.double({ min: 0, max: 900, noNaN: true }),
      open: fc.double({ min: 0, max: 0.2, noNaN: true }),
      bottles: fc.integer({ min: 0, max: 2 }),
      low: fc.double({ min: 12, max: 25, noNaN: true }),
    })
    fc.assert(
      fc.property(any, ({ volume_m3, pump, peak, open, bottles, low }) => {
        const day: SolutionDay = {
          ...balcony,
          volume_m3,
          pump_W: [pump],
          air_C: airThroughDay({ lowest_C: low, highest_C: low + 10, warmestAt_s: hours(15) }),
          walls: balcony.walls.map((wall) => ({ ...wall, sun_W_m2: sun(peak) })),
          evaporation: { ...balcony.evaporation!, area_m2: open },
          ice: Array.from({ length: bottles }, () => ({ at_s: hours(12), mass_kg: 0.3 * volume_m3 * 100, ice_C: -18 })),
        }
        const course = solutionCourse(day)
        expect(Math.abs(total(course.heat))).toBeLessThan(heatCapacity({ volume_m3 }) * 1e-5)
        expect(course.lowest_C).toBeLessThanOrEqual(course.mean_C)
      }),
      { seed: 5, numRuns: 60 },
    )
  })

  it('without sun and wind that change, relaxes to the analytic steady state', () => {
    const still: SolutionDay = {
      ...balcony,
      air_C: [35],
      walls: [{ ...balcony.walls[0]!, area_m2: 1, conductance_W_m2_K: 6, sun_W_m2: [] }],
      column: null,
      pump_W: [15],
      ground: null,
      evaporation: null,
    }
    const { highest_C, lowest_C } = solutionCourse(still)
    expect(highest_C).toBeCloseTo(37.5, 6)
    expect(lowest_C).toBeCloseTo(37.5, 6)
  })

  it('under the open sky rests where the wall’s film pays for what it shines away', () => {
    const wall = { ...balcony.walls[0]!, area_m2: 1, conductance_W_m2_K: 6, outside_W_m2_K: 12, sun_W_m2: [] }
    const bare = { ...balcony, air_C: [20], column: null, pump_W: [], ground: null, evaporation: null }
    const { highest_C, heat } = solutionCourse({ ...bare, walls: [{ ...wall, sky_W_m2: 48 }] })
    // The sol-air temperature of a wall that takes in -48 W/m2: 20 - 48/12.
    expect(highest_C).toBeCloseTo(16, 6)
    expect(heat.sky_J).toBeCloseTo(-(6 / 12) * 48 * 86_400, 3)
    expect(heat.walls_J).toBeCloseTo(-heat.sky_J, 3)
  })

  it('a column under the open sky cools by what its stream carries', () => {
    const under = (sky_W_m2: number) => ({
      ...balcony,
      column: { ...balcony.column!, wall: { ...balcony.column!.wall, sky_W_m2 } },
    })
    const [clear, covered] = [solutionCourse(under(60)), solutionCourse(under(0))]
    expect(clear.mean_C).toBeLessThan(covered.mean_C)
    const { wall, flow_kg_s } = balcony.column!
    const carried = streamConductance({ flow_kg_s, wall_W_K: wall.area_m2 * wall.conductance_W_m2_K })
    expect(clear.heat.sky_J).toBeCloseTo((-carried * 60 * 86_400) / wall.outside_W_m2_K, 3)
  })

  it('follows the analytic exponential after ice has been put in', () => {
    const tank: SolutionDay = {
      ...balcony,
      volume_m3: 0.06,
      air_C: [35],
      walls: [{ ...balcony.walls[0]!, area_m2: 1, conductance_W_m2_K: 6, sun_W_m2: [] }],
      column: null,
      pump_W: [15],
      ground: null,
      evaporation: null,
      ice: [{ at_s: 0, mass_kg: 3, ice_C: -10 }],
    }
    const course = solutionCourse(tank)
    const start_C = icedTemperature({ volume_m3: 0.06, start_C: course.temperature_C[0]!, ice_kg: 3, ice_C: -10 })
    for (const k of [6, 36, 72, 144]) {
      const exact = relaxedTemperature({
        start_C,
        surroundings_C: 35,
        conductance_W_K: 6,
        heat_W: 15,
        volume_m3: 0.06,
        time_s: k * course.step_s,
      })
      expect(course.temperature_C[k]).toBeCloseTo(exact, 8)
    }
  })

  it('a swinging air temperature passes damped and late, as the linear equation has it', () => {
    const tank: SolutionDay = {
      ...balcony,
      air_C: airThroughDay({ lowest_C: 20, highest_C: 30, warmestAt_s: hours(15) }),
      walls: [{ ...balcony.walls[0]!, area_m2: 1, conductance_W_m2_K: 6, sun_W_m2: [] }],
      column: null,
      pump_W: [],
      ground: null,
      evaporation: null,
    }
    const ω = (2 * Math.PI) / 86_400
    const τ = heatCapacity({ volume_m3: 36e-3 }) / 6
    const course = solutionCourse(tank)
    // Straight lines between hourly values of a cosine pass on (sin x/x)² of its swing, x = π/24.
    const hourly = (Math.sin(Math.PI / 24) / (Math.PI / 24)) ** 2
    expect((course.highest_C - course.lowest_C) / ((10 * hourly) / Math.hypot(1, ω * τ))).toBeCloseTo(1, 3)
    expect(course.mean_C).toBeCloseTo(25, 6)
    expect(Math.abs(course.highestAt_s - hours(15) - Math.atan(ω * τ) / ω)).toBeLessThan(course.step_s)
  })

  it('halving the step changes little: the answer lies within 0.02 K of a fine explicit integration', () => {
    const course = solutionCourse(balcony)
    const [C, dt] = [heatCapacity({ volume_m3: balcony.volume_m3 }), 10]
    const [box, column] = [balcony.walls[0]!, balcony.column!]
    const G = streamConductance({
      flow_kg_s: column.flow_kg_s,
      wall_W_K: column.wall.area_m2 * column.wall.conductance_W_m2_K,
    })
    let T = course.temperature_C[0]!
    let highest = T
    for (let t = 0; t < 3 * 86_400; t += dt) {
      const air_C = throughDay(balcony.air_C, t)
      const boxAir = solAirTemperature({
        air_C,
        absorptance: box.absorptance,
        sun_W_m2: throughDay(box.sun_W_m2, t),
        outside_W_m2_K: box.outside_W_m2_K,
      })
      const columnAir = solAirTemperature({
        air_C,
        absorptance: column.wall.absorptance,
        sun_W_m2: throughDay(column.wall.sun_W_m2, t),
        outside_W_m2_K: column.wall.outside_W_m2_K,
      })
      const lost =
        0.02 *
        evaporation({ water_C: T, vapour_Pa: 1500, pressure_Pa: 101325, convection_W_m2_K: 6 }) *
        evaporationHeat({ temperature_C: T })
      T +=
        (dt / C) *
        (box.area_m2 * box.conductance_W_m2_K * (boxAir - T) + G * (columnAir - T) + 35 + 0.6 * (22 - T) - lost)
      if (t > 2 * 86_400) highest = Math.max(highest, T)
    }
    expect(Math.abs(highest - course.highest_C)).toBeLessThan(0.02)
  })

  it('gets warmer with more sun, a darker box, a stronger pump and warmer air', () => {
    const usual = solutionCourse(balcony).highest_C
    const warmer: readonly SolutionDay[] = [
      { ...balcony, walls: balcony.walls.map((wall) => ({ ...wall, sun_W_m2: sun(400) })) },
      { ...balcony, pump_W: [50] },
      { ...balcony, air_C: balcony.air_C.map((t) => t + 1) },
      { ...balcony, evaporation: null },
    ]
    for (const day of warmer) expect(solutionCourse(day).highest_C).toBeGreaterThan(usual)
    expect(solutionCourse(painted({ day: balcony, absorptance: 0.2 })).highest_C).toBeLessThan(usual)
  })

  it('hours too warm and too cold: none, half and all of the day', () => {
    const course = solutionCourse(balcony)
    expect(timeBeyond({ course, low_C: 0, high_C: 60 })).toEqual({ colder_s: 0, warmer_s: 0 })
    expect(timeBeyond({ course, low_C: 60, high_C: 0 })).toEqual({ colder_s: 86_400, warmer_s: 86_400 })
    const { colder_s, warmer_s } = timeBeyond({ course, low_C: course.mean_C, high_C: course.mean_C })
    expect(colder_s + warmer_s).toBeCloseTo(86_400, 6)
    expect(warmer_s).toBeGreaterThan(hours(8))
    expect(warmer_s).toBeLessThan(hours(14))
  })

  it('is told within 5 ms', () => {
    solutionCourse(balcony)
    const times = Array.from({ length: 30 }, () => {
      const start = performance.now()
      solutionCourse(balcony)
      return performance.now() - start
    }).sort((a, b) => a - b)
    expect(times[15]).toBeLessThan(5)
  })

  it('refuses a tank that passes no heat', () => {
    expect(() => solutionCourse({ ...balcony, walls: [], column: null, ground: null })).toThrow('UA = 0')
  })
})

describe('what helps against heat', () => {
  const foam = 0.02 / 0.036
  const calm = films.rows['outdoors-calm'].film_W_m2_K
  const foilFilm = calm - radiationFilm({ emittance: 0.9 - surfaces.rows['bright-foil'].emittance, temperature_C: 30 })

  it('shade, white paint, foam and ice all cool a black box in the sun; more water only delays', () => {
    const before = solutionCourse(balcony)
    const choices = rankedCooling({
      base: balcony,
      choices: [
        {
          id: 'shade',
          day: shaded({ day: balcony, transmittance: shades.rows['board-or-skirt'].transmittance }),
          price_money: 10,
        },
        {
          id: 'white',
          day: painted({ day: balcony, absorptance: surfaces.rows['white-new'].absorptance }),
          price_money: 12,
        },
        {
          id: 'foam',
          day: wrapped({ day: balcony, resistance_m2_K_W: foam, absorptance: 0.95, outside_W_m2_K: calm }),
          price_money: 20,
        },
        { id: 'ice', day: iced({ day: balcony, ice: [{ at_s: hours(12), mass_kg: 2, ice_C: -18 }] }), price_money: 0 },
      ],
    })
    expect(choices[0]!.id).toBe('ice')
    for (const { cooler_K } of choices) expect(cooler_K).toBeGreaterThan(0.5)
    for (let i = 2; i < choices.length; i++)
      expect(choices[i]!.perMoney!).toBeLessThanOrEqual(choices[i - 1]!.perMoney!)
    const large = solutionCourse(refilled({ day: balcony, volume_m3: 0.2 }))
    expect(large.highest_C).toBeLessThan(before.highest_C)
    expect(large.mean_C).toBeCloseTo(before.mean_C, 0)
  })

  it('in the sun bright foil is warmer than white paint', () => {
    const white = painted({ day: balcony, absorptance: 0.2 })
    const foil = wrapped({ day: balcony, resistance_m2_K_W: 0, absorptance: 0.192, outside_W_m2_K: foilFilm })
    const onlyTank = { ...foil, column: white.column }
    expect(solutionCourse(onlyTank).heat.sun_J).toBeGreaterThan(0.9 * solutionCourse(white).heat.sun_J)
    expect(solutionCourse(onlyTank).highest_C).toBeGreaterThan(solutionCourse(white).highest_C)
  })

  it('water is what the table says', () => {
    expect(heatCapacity({ volume_m3: 1 })).toBe(bodies.rows.water.density_kg_m3 * bodies.rows.water.specificHeat_J_kg_K)
  })
})
