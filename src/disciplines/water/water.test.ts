import fc from 'fast-check'
import psychrolib from 'psychrolib'
import { beforeAll, describe, expect, it } from 'vitest'
import {
  dewPoint,
  humidityRatio,
  moistAirDensity,
  moistAirEnthalpy,
  saturationPressure,
  standardPressure,
  vapourDeficit,
  wetBulb,
  wetBulbStull2011,
} from './equations-air.ts'
import {
  airStoneConductance,
  filmTransferVelocity,
  loopOxygen,
  oxygenAfter,
  oxygenSolubility,
  oxygenSolubilityUnderPressure,
  rootOxygenUse,
  salinityOfConductivity,
  standardOxygenTransfer,
  transferRate,
} from './equations-oxygen.ts'
import { saturationPressureFAO56 } from './equations-thirst.ts'

const runs = { seed: 11, numRuns: 200 }
const air = fc.record({
  t: fc.double({ min: 1, max: 45, noNaN: true }),
  r: fc.double({ min: 0.2, max: 1, noNaN: true }),
  P: fc.double({ min: 70_000, max: 104_000, noNaN: true }),
})

describe('humid air against an open psychrometric library', () => {
  beforeAll(() => psychrolib.SetUnitSystem(psychrolib.SI))

  it('saturation pressure, dew point, humidity ratio, enthalpy, density', () => {
    fc.assert(
      fc.property(air, ({ t, r, P }) => {
        const saturated = saturationPressure({ temperature_C: t })
        expect(saturated / psychrolib.GetSatVapPres(t)).toBeCloseTo(1, 10)
        expect(dewPoint({ vapour_Pa: r * saturated })).toBeCloseTo(psychrolib.GetTDewPointFromRelHum(t, r), 2)
        const W = humidityRatio({ vapour_Pa: r * saturated, pressure_Pa: P })
        expect(W).toBeCloseTo(psychrolib.GetHumRatioFromRelHum(t, r, P), 10)
        expect(moistAirEnthalpy({ temperature_C: t, humidityRatio: W })).toBeCloseTo(
          psychrolib.GetMoistAirEnthalpy(t, W),
          6,
        )
        expect(moistAirDensity({ temperature_C: t, humidityRatio: W, pressure_Pa: P })).toBeCloseTo(
          psychrolib.GetMoistAirDensity(t, W, P),
          6,
        )
      }),
      runs,
    )
  })

  it('wet bulb, where it is above freezing', () => {
    fc.assert(
      fc.property(air, ({ t, r, P }) => {
        const theirs = psychrolib.GetTWetBulbFromRelHum(t, r, P)
        fc.pre(theirs > 0.1)
        expect(Math.abs(wetBulb({ temperature_C: t, relativeHumidity: r, pressure_Pa: P }) - theirs)).toBeLessThan(
          0.002,
        )
      }),
      runs,
    )
  })

  it('below freezing the ice branch joins', () => {
    for (const t of [-20, -5, 0.005, 0.02])
      expect(saturationPressure({ temperature_C: t }) / psychrolib.GetSatVapPres(t)).toBeCloseTo(1, 10)
  })
})

describe('humid air', () => {
  it('the short wet-bulb fit stays within the error that its author states', () => {
    for (const [temperature_C, relativeHumidity] of [
      [20, 0.5],
      [25, 0.6],
      [30, 0.7],
      [35, 0.4],
      [18, 0.8],
    ] as const) {
      const full = wetBulb({ temperature_C, relativeHumidity, pressure_Pa: 101325 })
      const error = wetBulbStull2011({ temperature_C, relativeHumidity }) - full
      expect(error).toBeGreaterThan(-1)
      expect(error).toBeLessThan(0.65)
    }
  })

  it('both saturation fits agree within 0.12 % between 0 and 40 °C', () => {
    for (let t = 0.1; t <= 40; t += 0.5)
      expect(
        Math.abs(saturationPressureFAO56({ temperature_C: t }) / saturationPressure({ temperature_C: t }) - 1),
      ).toBeLessThan(1.2e-3)
  })

  it('a leaf cooler than the air lacks less: 0.91 against 1.27 kPa at 23 and 25 °C, 60 %', () => {
    expect(vapourDeficit({ air_C: 25, leaf_C: 25, relativeHumidity: 0.6 })).toBeCloseTo(1267.7, 0)
    expect(Math.abs(vapourDeficit({ air_C: 25, leaf_C: 23, relativeHumidity: 0.6 }) - 909)).toBeLessThan(2)
  })

  it('dew point and saturation pressure go round trip', () => {
    for (let t = -30; t < 60; t += 3.7)
      expect(dewPoint({ vapour_Pa: saturationPressure({ temperature_C: t }) })).toBeCloseTo(t, 8)
  })

  it('refuses impossible air', () => {
    expect(() => humidityRatio({ vapour_Pa: 2e5, pressure_Pa: 1e5 })).toThrow('p_w = 200000')
    expect(() => wetBulb({ temperature_C: 20, relativeHumidity: 1.4, pressure_Pa: 1e5 })).toThrow(RangeError)
    expect(() => dewPoint({ vapour_Pa: -1 })).toThrow(RangeError)
    expect(() => standardPressure({ altitude_m: 20_000 })).toThrow(RangeError)
  })
})

describe('oxygen', () => {
  const at = (temperature_C: number, altitude_m: number) =>
    oxygenSolubilityUnderPressure({ temperature_C, salinity: 0, pressure_Pa: standardPressure({ altitude_m }) })

  it('at 24 °C is 8.4 mg/L by the sea and 6.7 at 1850 m', () => {
    expect(at(24, 0)).toBeCloseTo(8.4, 1)
    expect(at(24, 1850)).toBeCloseTo(6.7, 1)
  })

  it('cross-checks by altitude, 20 and 25 °C', () => {
    for (const [z, cold, warm] of [
      [500, 8.554, 7.77],
      [1000, 8.041, 7.3],
      [1500, 7.553, 6.852],
      [3000, 6.226, 5.637],
    ] as const) {
      expect(Math.abs(at(20, z) - cold)).toBeLessThan(0.002)
      expect(Math.abs(at(25, z) - warm)).toBeLessThan(0.002)
    }
  })

  it('cross-checks by salinity', () => {
    for (const [t, five, sea] of [
      [0, 14.118, 11.366],
      [20, 8.828, 7.353],
      [40, 6.249, 5.325],
    ] as const) {
      expect(oxygenSolubility({ temperature_C: t, salinity: 5 })).toBeCloseTo(five, 3)
      expect(oxygenSolubility({ temperature_C: t, salinity: 36 })).toBeCloseTo(sea, 3)
    }
  })

  it('falls with warmth, salt and height', () => {
    for (let t = 1; t <= 40; t++) {
      const here = oxygenSolubility({ temperature_C: t, salinity: 1 })
      expect(here).toBeLessThan(oxygenSolubility({ temperature_C: t - 1, salinity: 1 }))
      expect(here).toBeLessThan(oxygenSolubility({ temperature_C: t, salinity: 0 }))
      expect(at(t, 1000)).toBeLessThan(at(t, 900))
    }
  })

  it('at any pressure only the air beside the vapour counts, and at 1 atm the correction is none', () => {
    // The vapour pressure of humid air is another formulation; where it fills the air no oxygen is left.
    for (const t of [5, 15, 25, 35]) {
      const vapour = saturationPressure({ temperature_C: t })
      const at = (pressure_Pa: number) => oxygenSolubilityUnderPressure({ temperature_C: t, salinity: 0, pressure_Pa })
      expect(at(101325)).toBeCloseTo(oxygenSolubility({ temperature_C: t, salinity: 0 }), 12)
      const share = (60_000 - vapour) / (101_325 - vapour)
      expect(at(60_000) / at(101_325) / share).toBeCloseTo(1, 3)
      expect(() => at(0.998 * vapour)).toThrow(RangeError)
    }
  })

  it('nutrients of 2 mS/cm take less than 1 %', () => {
    const salinity = salinityOfConductivity({ conductivity_S_m: 0.2 })
    const share =
      oxygenSolubility({ temperature_C: 20, salinity }) / oxygenSolubility({ temperature_C: 20, salinity: 0 })
    expect(share).toBeGreaterThan(0.99)
    expect(share).toBeLessThan(1)
  })

  it('transfer into 60 L: rating, steady state and approach', () => {
    const rate20_per_s = 3 / 3600
    const rated = standardOxygenTransfer({ rate20_per_s, saturation20_g_m3: 9.092, volume_m3: 0.06 })
    expect(rated * 3600 * 1000).toBeCloseTo(1.637, 3)
    const rate_per_s = transferRate({ rate20_per_s, temperature_C: 25 })
    const tank = { start_g_m3: 4, saturation_g_m3: 8.263, rate_per_s, use_g_m3_s: 7.5 / 3600 }
    expect(oxygenAfter({ ...tank, time_s: 1e6 })).toBeCloseTo(6.043, 3)
    expect(oxygenAfter({ ...tank, rate_per_s: rate20_per_s, use_g_m3_s: 0, time_s: 1800 })).toBeCloseTo(7.312, 3)
    expect(oxygenAfter({ ...tank, time_s: 0 })).toBe(4)
  })

  it('30 plants with 3 g of dry roots at 5 mg/(g h) take 450 mg an hour, and twice that 10 K warmer', () => {
    const roots = { dryRoot_kg: 0.09, respiration_per_s: 5 / 3.6e6, doubling_K: 10 }
    expect(rootOxygenUse({ ...roots, temperature_C: 20 }) * 3.6e9).toBeCloseTo(450, 9)
    expect(rootOxygenUse({ ...roots, temperature_C: 30 }) * 3.6e9).toBeCloseTo(900, 9)
  })

  describe('in the loop', () => {
    const transfer_m_s = filmTransferVelocity({ diffusivity_m2_s: 2.1e-9, surface_m_s: 0.3, fall_m: 0.18 })
    const loop = {
      saturation_g_m3: 8.263,
      flow_m3_s: 3e-3 / 60,
      transfer_m_s,
      wetted_m2: 0.5,
      columnUse_kg_s: 1e-7,
      tankUse_kg_s: 2e-8,
      tankConductance_m3_s: 1e-6,
    }

    it('oxygen in equals oxygen used', () => {
      const { tank_g_m3, columnEnd_g_m3 } = loopOxygen(loop)
      const gained = loop.flow_m3_s * (columnEnd_g_m3 - tank_g_m3) + loop.tankConductance_m3_s * (8.263 - tank_g_m3)
      expect(gained).toBeCloseTo(loop.tankUse_kg_s * 1e3, 12)
      // Film: what enters is k ∫ (C* - C) dA, here by the trapezium rule along the fall.
      const steps = 20_000
      let [C, entered] = [tank_g_m3, 0]
      for (let i = 0; i < steps; i++) {
        const dA = loop.wetted_m2 / steps
        const inflow = transfer_m_s * (8.263 - C) * dA
        entered += inflow
        C += (inflow - (loop.columnUse_kg_s * 1e3) / steps) / loop.flow_m3_s
      }
      expect(C).toBeCloseTo(columnEnd_g_m3, 4)
      const used = (loop.columnUse_kg_s + loop.tankUse_kg_s) * 1e3
      expect(entered + loop.tankConductance_m3_s * (8.263 - tank_g_m3)).toBeCloseTo(used, 7)
    })

    it('without roots is saturated, with more roots or warmer has less, with a stone more', () => {
      const idle = loopOxygen({ ...loop, columnUse_kg_s: 0, tankUse_kg_s: 0 })
      expect(idle.tank_g_m3).toBeCloseTo(8.263, 9)
      const usual = loopOxygen(loop).tank_g_m3
      expect(loopOxygen({ ...loop, tankUse_kg_s: 4e-8 }).tank_g_m3).toBeLessThan(usual)
      const stone = airStoneConductance({
        air_m3_s: 2e-3 / 60,
        transfer_per_m: 0.05,
        depth_m: 0.2,
        saturation_g_m3: 8.263,
      })
      expect(loopOxygen({ ...loop, tankConductance_m3_s: 1e-6 + stone }).tank_g_m3).toBeGreaterThan(usual)
    })

    it('a film that falls over each ring brings far more than 24 lettuces breathe', () => {
      expect(loopOxygen(loop).supply_kg_s).toBeGreaterThan(1e-7)
      expect(loopOxygen(loop).tank_g_m3 / 8.263).toBeGreaterThan(0.5)
    })
  })

  it('refuses impossible water', () => {
    expect(() => oxygenSolubility({ temperature_C: 20, salinity: -1 })).toThrow('S = -1')
    expect(() => oxygenSolubility({ temperature_C: 90, salinity: 0 })).toThrow(RangeError)
    expect(() => oxygenSolubilityUnderPressure({ temperature_C: 20, salinity: 0, pressure_Pa: 0 })).toThrow(RangeError)
    expect(() => airStoneConductance({ air_m3_s: 1, transfer_per_m: 1, depth_m: 2, saturation_g_m3: 8 })).toThrow(
      RangeError,
    )
  })
})
