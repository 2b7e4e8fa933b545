import { describe, expect, it } from 'vitest'
import { distributorPractice } from '../../tables/hydraulic-orifices.ts'
import { wallWetting } from '../../tables/hydraulic-walls.ts'
import { distributorChoices } from './distributor-choice.ts'
import { bucketBand, bucketFit, bucketFlow, bucketHead, wearRecord } from './equations-bucket.ts'
import { wettingRate } from './equations-film.ts'
import { gateValveClosed } from './equations-minor.ts'
import { type PumpCurve, pumpBand, pumpHead, pumpOfStrength, pumpStrength, wornPump } from './equations-pump.ts'
import { siphonCrest, siphonFlow, siphonHead } from './equations-siphon.ts'
import { dropSpeed, splashNumber } from './equations-splash.ts'
import { drainBack, dutyShare, fillTime, longestPause, timeToDry, tubeVolume } from './equations-stop.ts'
import { water } from './equations-water.ts'

const LPM = 1 / 60_000
const w20 = water({ temperature_C: 20 })

describe('gate valve', () => {
  it('meets the printed openings, closes as the loss grows, and says when it cannot be set by eye', () => {
    expect([0.1, 0.26, 2.1, 17].map((fittingLoss) => gateValveClosed({ fittingLoss }))).toEqual([0, 0.25, 0.5, 0.75])
    expect(gateValveClosed({ fittingLoss: 6 })!).toBeGreaterThan(0.5)
    expect(gateValveClosed({ fittingLoss: 17.1 })).toBeNull()
  })
})

describe('pumps', () => {
  const box = { shutoff_m: 2.2, runout_m3_s: 30 * LPM }

  it('a band has the line below the parabola and meets it at both ends', () => {
    const { low, high } = pumpBand(box)
    for (const flow of [0, 30]) {
      expect(pumpHead({ curve: low, flow_m3_s: flow * LPM })).toBeCloseTo(flow === 0 ? 2.2 : 0, 12)
      expect(pumpHead({ curve: high, flow_m3_s: flow * LPM })).toBeCloseTo(flow === 0 ? 2.2 : 0, 12)
    }
    for (const flow of [5, 15, 25])
      expect(pumpHead({ curve: high, flow_m3_s: flow * LPM })).toBeGreaterThan(
        pumpHead({ curve: low, flow_m3_s: flow * LPM }),
      )
  })

  it('strength is found again from any point of the scaled curve', () => {
    for (const curve of [pumpBand(box).low, pumpBand(box).high])
      for (const strength of [0.6, 0.85, 1, 1.3]) {
        const scaled = pumpOfStrength({ curve, strength })
        for (const share of [0.1, 0.5, 0.9]) {
          const flow_m3_s = share * strength * 30 * LPM
          const point = { flow_m3_s, head_m: pumpHead({ curve: scaled, flow_m3_s }) }
          expect(pumpStrength({ curve, point })).toBeCloseTo(strength, 8)
        }
      }
    expect(pumpHead({ curve: wornPump({ curve: pumpBand(box).low, wornShare: 0.15 }), flow_m3_s: 0 })).toBeCloseTo(
      1.87,
      10,
    )
  })

  it('a hump above the shut-off head is cut, and points may come in any order', () => {
    const points = [
      { flow_m3_s: 2e-4, head_m: 1 },
      { flow_m3_s: 0, head_m: 2 },
      { flow_m3_s: 1e-4, head_m: 2.3 },
    ]
    expect(pumpHead({ curve: { kind: 'points', points }, flow_m3_s: 1e-4 })).toBe(2)
    expect(() => pumpHead({ curve: { kind: 'points', points: points.slice(0, 1) }, flow_m3_s: 0 })).toThrow(RangeError)
  })

  const truth = { kind: 'shape', ...box, exponent: 1.4 } as const
  const test = (flow: number) => ({ flow_m3_s: flow * LPM, head_m: pumpHead({ curve: truth, flow_m3_s: flow * LPM }) })

  it('one bucket test inside the band fixes the shape', () => {
    const fit = bucketFit({ ...box, tests: [test(8)] })
    expect(fit.strength).toBe(1)
    expect(fit.curve.exponent).toBeCloseTo(1.4, 9)
  })

  it('the error of the stopwatch leaves a band around the test, far narrower than that of the box', () => {
    const { low, high } = bucketBand({ ...box, tests: [test(8)], errorShare: 0.04 })
    const at = (curve: PumpCurve) => pumpHead({ curve, flow_m3_s: 8 * LPM })
    expect(at(low.curve)).toBeLessThan(test(8).head_m)
    expect(at(high.curve)).toBeGreaterThan(test(8).head_m)
    const wide = at(pumpBand(box).high) - at(pumpBand(box).low)
    expect(at(high.curve) - at(low.curve)).toBeLessThan(wide / 5)
  })

  it('one bucket test outside it says that the pump is weaker, or stronger, than its box', () => {
    const weak = bucketFit({ ...box, tests: [{ flow_m3_s: 10 * LPM, head_m: 1 }] })
    expect([weak.curve.exponent, weak.strength < 1]).toEqual([1, true])
    const strong = bucketFit({ ...box, tests: [{ flow_m3_s: 20 * LPM, head_m: 2 }] })
    expect([strong.curve.exponent, strong.strength > 1]).toEqual([2, true])
    for (const [fit, flow, head] of [
      [weak, 10, 1],
      [strong, 20, 2],
    ] as const)
      expect(pumpHead({ curve: fit.curve, flow_m3_s: flow * LPM })).toBeCloseTo(head, 6)
  })

  it('several tests give shape and strength together', () => {
    const worn = pumpOfStrength({ curve: truth, strength: 0.9 })
    const tests = [4, 10, 18].map((flow) => ({
      flow_m3_s: flow * LPM,
      head_m: pumpHead({ curve: worn, flow_m3_s: flow * LPM }),
    }))
    const fit = bucketFit({ ...box, tests })
    expect(fit.strength).toBeCloseTo(0.9, 2)
    expect(fit.curve.exponent).toBeCloseTo(1.4, 1)
    expect(fit.misfit_m).toBeLessThan(0.005)
  })

  it('tests over time show wear, and the day on which it meets a limit', () => {
    const tests = [0, 30, 60].map((at_d) => {
      const curve = pumpOfStrength({ curve: truth, strength: 1 - at_d / 600 })
      const flow_m3_s = (6 + at_d / 30) * LPM
      return { at_d, flow_m3_s, head_m: pumpHead({ curve, flow_m3_s }) }
    })
    const wear = wearRecord({ curve: truth, tests, leastStrength: 0.8 })
    expect(wear.trend_per_d).toBeCloseTo(-1 / 600, 8)
    expect(wear.least_d).toBeCloseTo(120, 4)
    expect(wearRecord({ curve: truth, tests: tests.slice(0, 1), leastStrength: 0.8 }).trend_per_d).toBeNull()
  })

  it('a bucket test is a flow and a head', () => {
    expect(bucketFlow({ volume_m3: 0.01, time_s: 60 }) / LPM).toBeCloseTo(10, 12)
    expect(bucketHead({ outlet_m: 2.1, level_m: 0.3, loss_m: 0.4 })).toBeCloseTo(2.2, 12)
    expect(() => bucketFlow({ volume_m3: 0.01, time_s: 0 })).toThrow(RangeError)
  })
})

describe('choice of holes', () => {
  const wish = {
    flow_m3_s: 3 * LPM,
    water: w20,
    discharge: 0.61,
    depth_m: 0.06,
    circleOf: (hole_m: number) => 0.092 - hole_m,
    lean_rad: distributorPractice.rows.tiltAllowance.value,
    cloggedShare: distributorPractice.rows.cloggedShare.value,
    tiltShare: 0.1,
    smallestHole_m: distributorPractice.rows.smallestHole.value,
    leastCount: 6,
    web_m: 0.004,
    drills_m: [0.001, 0.002, 0.0025, 0.003, 0.0035, 0.004, 0.005],
  }

  it('offers only what holds in all three ways, the most in hand first', () => {
    const choices = distributorChoices(wish)
    expect(choices.length).toBeGreaterThan(3)
    choices.forEach((c, i) => {
      expect(c.cloggedHead_m).toBeLessThanOrEqual(0.06)
      expect(c.head_m).toBeGreaterThanOrEqual(c.startHead_m)
      expect(c.tiltShare).toBeLessThanOrEqual(0.1)
      expect(c.hole_m).toBeGreaterThanOrEqual(0.0025)
      expect(c.circle_m + c.hole_m).toBeCloseTo(0.092, 12)
      expect(c.count * (c.hole_m + wish.web_m)).toBeLessThanOrEqual(Math.PI * c.circle_m)
      if (i > 0) expect(c.margin).toBeLessThanOrEqual(choices[i - 1]!.margin)
    })
    // Twelve holes of 3 mm flood a cup of 60 mm when clogged (97 mm); twelve of 4 mm hold.
    expect(choices.some((c) => c.hole_m === 0.003 && c.count === 12)).toBe(false)
    expect(choices.some((c) => c.hole_m === 0.004 && c.count === 12)).toBe(true)
  })

  it('offers nothing for no flow or for what cannot be', () => {
    expect(distributorChoices({ ...wish, flow_m3_s: 0 })).toEqual([])
    expect(distributorChoices({ ...wish, depth_m: 0.005 })).toEqual([])
  })
})

describe('stopping and siphons', () => {
  it('gives back all but a riser held by a check valve', () => {
    const held = { riser_m3: 2.8e-4, pool_m3: 1.2e-4, film_m3: 2.2e-4, roots_m3: 1.2e-3 }
    expect(drainBack({ ...held, checkValve: false })).toBeCloseTo(1.82e-3, 12)
    expect(drainBack({ ...held, checkValve: true })).toBeCloseTo(1.54e-3, 12)
    expect(tubeVolume({ bore_m: 0.1, length_m: 2 }) * 1000).toBeCloseTo(15.7, 1)
    expect(fillTime({ empty_m3: 1e-3, flow_m3_s: 10 * LPM })).toBeCloseTo(6, 10)
    expect(timeToDry({ held_m3: 2e-4, usableShare: 0.5, thirst_m3_s: 1e-4 / 3600 })).toBeCloseTo(3600, 8)
    expect(longestPause({ dry_s: 3600, keptShare: 0.5 })).toBe(1800)
    expect(dutyShare({ on_s: 900, off_s: 2700 })).toBe(0.25)
  })

  it('an air break ends a siphon, on both sides of the level', () => {
    const tube = { length_m: 2, bore_m: 0.013, roughness_m: 1.5e-6, fittingLoss: 2 }
    const flow = (airBreak_m?: number) => {
      const head_m = siphonHead({ level_m: 0.3, end_m: -0.5, ...(airBreak_m === undefined ? {} : { airBreak_m }) })
      return siphonFlow({ head_m, tube, viscosity_m2_s: 1e-6 })
    }
    expect(flow()).toBeGreaterThan(flow(0.2))
    expect(flow(0.2)).toBeGreaterThan(0)
    expect(flow(0.3)).toBe(0)
    expect(siphonCrest({ air_Pa: 101_325, vapour_Pa: 2339, density_kg_m3: 998.2 })).toBeCloseTo(10.11, 2)
  })

  it('a drop gains speed with its fall, never above that of the vacuum, and settles', () => {
    let last = 0
    for (const fall_m of [0.05, 0.2, 0.5, 1, 2, 20]) {
      const v = dropSpeed({ fall_m, drop_m: 0.004, ...w20 })
      expect(v).toBeGreaterThan(last)
      expect(v).toBeLessThan(Math.sqrt(2 * 9.80665 * fall_m))
      last = v
    }
    expect(last).toBeLessThan(10)
    const splash = (speed_m_s: number) => splashNumber({ speed_m_s, drop_m: 0.004, ...w20 })
    expect(splash(2)).toBeGreaterThan(splash(1))
  })

  it('run-in plastic needs less water than clean plastic', () => {
    const rate = (contactAngle_rad: number) => wettingRate({ contactAngle_rad, ...w20 })
    const { cleanPvc, runIn } = wallWetting.rows
    expect(rate(runIn.contactAngle_rad)).toBeLessThan(rate(cleanPvc.contactAngle_rad))
  })
})
