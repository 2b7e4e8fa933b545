import { describe, expect, it } from 'vitest'
import { batteries, supplies } from '../../tables/power-supply.ts'
import {
  batteryCurrent,
  batterySize,
  batteryTime,
  chargeNeeded,
  dailyEnergy,
  dayNightDuty,
  dutySaving,
  dutyShare,
  energyCost,
  generatorSize,
  hydraulicPower,
  plugPower,
} from './equations.ts'

const kWh = 3.6e6
const Ah = 3600
const hours = (h: number) => h * 3600

describe('energy', () => {
  it('10 L/min lifted 2.5 m at 10 % takes 41 W, 0.98 kWh a day and 107 a year at 0.30', () => {
    const hydraulic_W = hydraulicPower({ density_kg_m3: 998.207, flow_m3_s: 10e-3 / 60, head_m: 2.5 })
    expect(hydraulic_W).toBeCloseTo(4.08, 2)
    const power_W = plugPower({ hydraulic_W, efficiency: 0.1 })
    const energy_J = dailyEnergy({ draws: [{ power_W, duty: 1 }] })
    expect(energy_J / kWh).toBeCloseTo(0.979, 3)
    expect(energyCost({ energy_J: 365 * energy_J, price_money_J: 0.3 / kWh })).toBeCloseTo(107, 0)
  })

  it('lamps of 6 x 96 W for 16 h and two pumps of 40 W take 11.1 kWh', () => {
    const draws = [
      { power_W: 576, duty: 16 / 24 },
      { power_W: 80, duty: 1 },
    ]
    expect(dailyEnergy({ draws }) / kWh).toBeCloseTo(11.1, 1)
  })

  it('15 on 30 off by day and 15 on 120 off by night saves most of a 35 W pump', () => {
    const duty = dayNightDuty({ litShare: 0.5, day: { on_s: 900, off_s: 1800 }, night: { on_s: 900, off_s: 7200 } })
    expect(duty).toBeCloseTo((1 / 3 + 1 / 9) / 2, 12)
    expect(dutySaving({ power_W: 35, duty }) / kWh).toBeCloseTo(0.84 * (1 - duty), 9)
  })

  it('what runs and what is saved add to running all day', () => {
    for (const duty of [0, 0.2, 1])
      expect(dutySaving({ power_W: 50, duty }) + dailyEnergy({ draws: [{ power_W: 50, duty }] })).toBeCloseTo(
        1.2 * kWh,
        3,
      )
  })
})

describe('battery', () => {
  it('3 A for a third of four hours is 4 Ah', () => {
    const duty = dutyShare({ on_s: 300, off_s: 600 })
    expect(chargeNeeded({ current_A: 3, duty, time_s: hours(4) }) / Ah).toBeCloseTo(4, 12)
  })

  it('12 V 7 Ah keeps 3 A going for about 5 hours at a third', () => {
    const { usableShare } = batteries.rows['lead-deep-cycle']
    const time = batteryTime({ charge_As: 7 * Ah, usableShare, current_A: 3, duty: 1 / 3 })
    expect(time / 3600).toBeCloseTo(4.9, 9)
  })

  it('size, charge and time agree, and an inverter costs current', () => {
    const efficiency = (supplies.rows['inverter-efficiency'].low + supplies.rows['inverter-efficiency'].high) / 2
    const current_A = batteryCurrent({ load_W: 35, battery_V: 12, efficiency })
    expect(current_A).toBeGreaterThan(batteryCurrent({ load_W: 35, battery_V: 12, efficiency: 1 }))
    const needed_As = chargeNeeded({ current_A, duty: 0.5, time_s: hours(6) })
    const charge_As = batterySize({ needed_As, usableShare: 0.5 })
    expect(batteryTime({ charge_As, usableShare: 0.5, current_A, duty: 0.5 })).toBeCloseTo(hours(6), 6)
  })

  it('refuses no voltage and a duty above one', () => {
    expect(() => batteryCurrent({ load_W: 35, battery_V: 0, efficiency: 1 })).toThrow('V = 0')
    expect(() => dailyEnergy({ draws: [{ power_W: 35, duty: 1.2 }] })).toThrow('d = 1.2')
    expect(() => dutyShare({ on_s: 0, off_s: 0 })).toThrow(RangeError)
  })
})

describe('generator', () => {
  const pump = { power_W: 85, powerFactor: 0.7, startRatio: 3 }
  it('carries the running sum and the hardest start', () => {
    const lamp = { power_W: 100, powerFactor: 1, startRatio: 1 }
    expect(generatorSize({ loads: [lamp], loadShare: 1 })).toBe(100)
    expect(generatorSize({ loads: [pump, lamp], loadShare: 1 })).toBeCloseTo(100 + (3 * 85) / 0.7, 9)
    const weaker = { ...pump, power_W: 40 }
    expect(generatorSize({ loads: [pump, weaker], loadShare: 0.8 })).toBeCloseTo(((3 * 85) / 0.7 + 40 / 0.7) / 0.8, 9)
  })
})
