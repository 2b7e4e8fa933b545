import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { balcony, hours, sun, total } from '../../../test/hot-balcony.ts'
import { painted } from './cooling.ts'
import { airThroughDay, type SolutionDay, throughDay, timeBeyond } from './day.ts'
import { solutionCourse } from './equations-day.ts'
import { evaporation, evaporationHeat, solAirTemperature, streamConductance } from './equations-heat.ts'
import { heatCapacity, icedTemperature, relaxedTemperature } from './equations-tank.ts'

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
