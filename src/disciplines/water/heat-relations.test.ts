import { describe, expect, it } from 'vitest'
import { hours } from '../../../test/hot-balcony.ts'
import { saturationPressure, wetBulb } from './equations-air.ts'
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
