import { describe, expect, it } from 'vitest'
import { sunAboveAirHour } from './equations-sun.ts'
import { sunHeightSine, wallSun } from './equations-wall-sun.ts'

const bare = { diffuseShare: 0, albedo: 0, leastSine: 0.1 }

describe('sun on an upright wall', () => {
  it('is the mean over all directions of what a flat wall gets', () => {
    const height_rad = 0.7
    const ground_W_m2 = 600
    const beam = ground_W_m2 / Math.sin(height_rad)
    const n = 3600
    const facing = Array.from({ length: n }, (_, i) => Math.max(0, Math.cos((2 * Math.PI * i) / n)))
    const mean = (beam * Math.cos(height_rad) * facing.reduce((a, b) => a + b)) / n
    expect(wallSun({ ground_W_m2, heightSine: Math.sin(height_rad), ...bare }) / mean).toBeCloseTo(1, 5)
  })

  it('gets half of an even sky and half of what the ground throws back, and nothing from a zenith sun', () => {
    const sky = { ground_W_m2: 400, heightSine: 1, diffuseShare: 1, albedo: 0.2, leastSine: 0.1 }
    expect(wallSun(sky)).toBeCloseTo(400 * 0.6, 9)
    expect(wallSun({ ground_W_m2: 400, heightSine: 1, ...bare })).toBe(0)
    expect(wallSun({ ground_W_m2: 400, heightSine: 0.05, ...bare })).toBe(0)
    expect(() => wallSun({ ...sky, ground_W_m2: -1 })).toThrow('R = -1')
  })

  it('knows the height of the sun as the almanac does', () => {
    // Declination by Cooper 1969, another fit than that of the radiation.
    const declination = (J: number) => ((23.45 * Math.PI) / 180) * Math.sin((2 * Math.PI * (284 + J)) / 365)
    for (const [latitude, J] of [
      [0.9489, 172],
      [-0.0052, 80],
      [0.8166, 355],
    ] as const) {
      const series = Array.from({ length: 24 * 12 }, (_, i) =>
        sunAboveAirHour({ latitude_rad: latitude, dayOfYear: J, clock_s: i * 300, west_rad: 0, clockWest_rad: 0 }),
      )
      const noon = sunHeightSine({ sunAboveAir_W_m2: Math.max(...series), dayOfYear: J })
      // The mean of an hour lies 1 % below its middle; both fits of the declination agree within half a degree.
      expect(Math.abs(noon - Math.cos(latitude - declination(J)))).toBeLessThan(0.02)
    }
  })
})
