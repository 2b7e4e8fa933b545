import { describe, expect, it } from 'vitest'
import { distributorPractice } from '../../tables/hydraulic-orifices.ts'
import { wallWetting } from '../../tables/hydraulic-walls.ts'
import { distributorChoices } from './distributor-choice.ts'
import { bucketBand, bucketFit, bucketFlow, bucketHead, wearRecord } from './equations-bucket.ts'
import {
  distributorHead,
  fillingFlow,
  holeFlows,
  overflowPipeFlow,
  overflowPipeHead,
  tiltFlowShare,
  tiltHeight,
} from './equations-distributor.ts'
import { drainDepthShare, drainFlow, stackCapacity } from './equations-drain.ts'
import {
  drainingFilm,
  filmFallTime,
  filmHoldUp,
  filmRate,
  filmReynolds,
  filmSpeed,
  filmThickness,
  stackSpeed,
  wettingRate,
  wettingThickness,
} from './equations-film.ts'
import { pipeLoss } from './equations-friction.ts'
import { barbLoss, gateValveClosed, lossOnBore } from './equations-minor.ts'
import {
  dropVolume,
  holeWeber,
  jetRegime,
  jettingWeber,
  orificeFlow,
  orificeHead,
  poolDrainTime,
  startHead,
} from './equations-orifice.ts'
import { type PumpCurve, pumpBand, pumpHead, pumpOfStrength, pumpStrength, wornPump } from './equations-pump.ts'
import { siphonCrest, siphonFlow, siphonHead } from './equations-siphon.ts'
import { dropSpeed, splashNumber } from './equations-splash.ts'
import { drainBack, dutyShare, fillTime, longestPause, timeToDry, tubeVolume } from './equations-stop.ts'
import { water } from './equations-water.ts'

const LPM = 1 / 60_000
const mm = (x: number) => x / 1000
const w20 = water({ temperature_C: 20 })
const off = (got: number, expected: number) => Math.abs(got / expected - 1)

// Tables of our own arithmetic by an independent script: cross-checks to the digits given, not published values.
describe('cross-checks by independent arithmetic', () => {
  it('loss per metre of small tubes', () => {
    // The script used Colebrook, ours is the explicit equation: within 1.2 % from Re 8000 up.
    for (const [bore, flow, loss] of [
      [10, 5, 0.176],
      [10, 10, 0.5939],
      [13, 5, 0.0507],
      [13, 10, 0.1699],
      [16, 10, 0.0632],
      [19, 10, 0.028],
      [25, 10, 0.0076],
    ] as const) {
      const tube = { length_m: 1, bore_m: mm(bore), roughness_m: 1.5e-6, fittingLoss: 0, viscosity_m2_s: 1.0034e-6 }
      expect(off(pipeLoss({ ...tube, flow_m3_s: flow * LPM }), loss), `${bore} mm`).toBeLessThan(0.012)
    }
  })

  it('holes: flow, start head, Weber number', () => {
    for (const [d, flow, we] of [
      [2, 0.072, 10.8],
      [3, 0.162, 16.1],
      [4, 0.2881, 21.5],
      [5, 0.4501, 26.9],
      [6, 0.6481, 32.3],
    ] as const) {
      const hole = { hole_m: mm(d), head_m: mm(20) }
      expect(orificeFlow({ count: 1, discharge: 0.61, ...hole }) / LPM).toBeCloseTo(flow, 4)
      expect(off(holeWeber({ ...hole, ...w20 }), we)).toBeLessThan(0.005)
    }
    for (const [d, head] of [
      [1, 29.7],
      [2, 14.9],
      [3, 9.91],
      [4, 7.43],
      [6, 4.95],
    ] as const)
      expect(off(startHead({ hole_m: mm(d), ...w20 }), mm(head))).toBeLessThan(0.004)
  })

  it('heads over plates, pools and tilt', () => {
    const head = (flow: number, count: number, d: number) =>
      1000 * orificeHead({ flow_m3_s: flow * LPM, count, discharge: 0.61, hole_m: mm(d) })
    expect(head(5, 20, 3)).toBeCloseTo(47.6, 1)
    expect(head(5, 20, 4)).toBeCloseTo(15.1, 1)
    expect(head(10, 20, 3)).toBeCloseTo(190, 0)
    expect(head(2, 20, 3)).toBeCloseTo(7.6, 1)
    const area_m2 = (Math.PI / 4) * 0.01
    expect(poolDrainTime({ area_m2, depth_m: 0.05, count: 20, discharge: 0.61, hole_m: 0.003 })).toBeCloseTo(9.2, 1)
    const tiltHeight_m = tiltHeight({ circle_m: 0.1, lean_rad: Math.PI / 180 })
    expect(tiltHeight_m * 1000).toBeCloseTo(1.75, 2)
    expect(tiltFlowShare({ tiltHeight_m, head_m: 0.015 })).toBeCloseTo(0.058, 3)
    expect(tiltFlowShare({ tiltHeight_m, head_m: 0.004 })).toBeCloseTo(0.22, 2)
    const clogged = { flow_m3_s: 3 * LPM, count: 12, discharge: 0.61, hole_m: 0.003 }
    expect(1000 * distributorHead({ ...clogged, cloggedShare: 0 })).toBeCloseTo(47.6, 0)
    expect(1000 * distributorHead({ ...clogged, cloggedShare: 0.3 })).toBeCloseTo(97, 0)
    const builder = { flow_m3_s: 4 * LPM, count: 8, discharge: 0.61, hole_m: 0.0032 }
    expect(1000 * distributorHead({ ...builder, cloggedShare: 0 })).toBeCloseTo(147, 0)
    expect(1000 * distributorHead({ ...builder, cloggedShare: 0.5 })).toBeCloseTo(588, -1)
  })

  it('drops and jetting', () => {
    for (const [d, volume] of [
      [2, 34.1],
      [3, 47.5],
      [4, 60.2],
      [5, 72.8],
      [6, 85.5],
    ] as const)
      expect(off(1e9 * dropVolume({ tip_m: mm(d), ...w20 }), volume)).toBeLessThan(0.003)
    for (const [d, we] of [
      [1, 2.56],
      [2, 1.65],
      [3, 1.07],
      [4, 0.709],
    ] as const)
      expect(off(jettingWeber({ hole_m: mm(d), ...w20 }), we)).toBeLessThan(0.005)
  })

  it('films', () => {
    for (const [flow, bore, rate, re, δ, u, hold] of [
      [1, 100, 0.05296, 211.5, 0.2535, 0.2093, 159],
      [2, 100, 0.10591, 423, 0.3194, 0.3322, 201],
      [5, 100, 0.26478, 1057, 0.4334, 0.612, 272],
      [10, 100, 0.52957, 2115, 0.5461, 0.9715, 343],
      [20, 100, 1.0591, 4230, 0.688, 1.542, 432],
      [10, 77.9, 0.6798, 2715, 0.5935, 1.148, 290],
      [10, 154.1, 0.34365, 1372, 0.4728, 0.7282, 458],
    ] as const) {
      const perimeter_m = Math.PI * mm(bore)
      const rate_kg_m_s = filmRate({ flow_m3_s: flow * LPM, perimeter_m, ...w20 })
      const thickness_m = filmThickness({ rate_kg_m_s, ...w20 })
      expect(off(rate_kg_m_s, rate)).toBeLessThan(2e-4)
      expect(off(filmReynolds({ rate_kg_m_s, ...w20 }), re)).toBeLessThan(5e-4)
      expect(off(thickness_m, mm(δ))).toBeLessThan(3e-4)
      expect(off(filmSpeed({ thickness_m, ...w20 }), u)).toBeLessThan(5e-4)
      expect(off(filmHoldUp({ perimeter_m, thickness_m, height_m: 2 }), hold * 1e-6)).toBeLessThan(5e-3)
    }
    expect(filmFallTime({ height_m: 2, speed_m_s: 0.2093 })).toBeCloseTo(9.6, 1)
    for (const [θ, rate, δ] of [
      [20, 0.0413, 0.233],
      [60, 0.1468, 0.356],
      [85, 0.2106, 0.402],
      [90, 0.2225, 0.409],
    ] as const) {
      const given = { contactAngle_rad: (θ * Math.PI) / 180, ...w20 }
      expect(off(wettingRate(given), rate)).toBeLessThan(1.5e-3)
      expect(off(wettingThickness(given), mm(δ))).toBeLessThan(1.5e-3)
    }
    expect(stackSpeed({ flow_m3_s: 10 * LPM, bore_m: 0.1016 })).toBeCloseTo(0.775, 2)
    expect(stackSpeed({ flow_m3_s: 20 * LPM, bore_m: 0.1016 })).toBeCloseTo(1.02, 2)
  })

  it('barbed fittings on the tube bore', () => {
    expect(barbLoss({ barb_m: 0.01, tube_m: 0.013 })).toBeCloseTo(1.06, 2)
    expect(lossOnBore({ fittingLoss: 1.8, from_m: 0.01, onto_m: 0.013 })).toBeCloseTo(5.1, 1)
  })
})

describe('two routes to one number', () => {
  it('the start head is a Weber number of exactly eight', () => {
    for (const d of [1, 2, 3, 5, 8]) {
      const head_m = startHead({ hole_m: mm(d), ...w20 })
      expect(holeWeber({ hole_m: mm(d), head_m, ...w20 })).toBeCloseTo(8, 10)
    }
    expect([3.99, 4, 7.99, 8].map((weber) => jetRegime({ weber }))).toEqual(['drips', 'either', 'either', 'jets'])
  })

  it('the thinnest film carries the least rate', () => {
    for (const θ of [0.3, 0.8, 1.4]) {
      const thickness_m = wettingThickness({ contactAngle_rad: θ, ...w20 })
      const rate = filmSpeed({ thickness_m, ...w20 }) * thickness_m * w20.density_kg_m3
      expect(rate / wettingRate({ contactAngle_rad: θ, ...w20 })).toBeCloseTo(1, 12)
    }
  })

  it('head of a flow and flow of a head undo each other', () => {
    const holes = { count: 12, discharge: 0.61, hole_m: 0.003 }
    const head_m = orificeHead({ ...holes, flow_m3_s: 3 * LPM })
    expect(orificeFlow({ ...holes, head_m }) / LPM).toBeCloseTo(3, 12)
    expect(fillingFlow({ ...holes, depth_m: head_m, cloggedShare: 0 }) / LPM).toBeCloseTo(3, 12)
    for (const flow of [1, 5, 20, 60]) {
      const over_m = overflowPipeHead({ bore_m: 0.025, flow_m3_s: flow * LPM })
      expect(overflowPipeFlow({ bore_m: 0.025, over_m }) / LPM).toBeCloseTo(flow, 10)
    }
  })

  it('a draining film is the running film at the time in which it would run down', () => {
    // At the foot the drained thickness √(μL/(ρgt)) is that of a film of surface speed L/t.
    const [L, t] = [2, 30]
    const foot = Math.sqrt((w20.viscosity_Pa_s * L) / (w20.density_kg_m3 * 9.80665 * t))
    expect(3 * filmSpeed({ thickness_m: foot, ...w20 })).toBeCloseTo(L / t, 12)
    const volume = drainingFilm({ perimeter_m: 0.3, height_m: L, time_s: t, ...w20 })
    expect(volume).toBeCloseTo((2 / 3) * 0.3 * L * foot, 12)
  })

  it('holes of a leaning plate pass the whole flow, the low side more', () => {
    const angles_rad = Array.from({ length: 12 }, (_, i) => (i * Math.PI) / 6)
    const plate = { angles_rad, circle_m: 0.09, toward_rad: 0, discharge: 0.61, hole_m: 0.003 }
    for (const flow of [0.2, 1, 3])
      for (const lean_rad of [0, 0.01, 0.05]) {
        const { flows_m3_s } = holeFlows({ ...plate, flow_m3_s: flow * LPM, lean_rad })
        expect(flows_m3_s.reduce((a, b) => a + b, 0) / LPM).toBeCloseTo(flow, 8)
        expect(flows_m3_s[0]!).toBeGreaterThanOrEqual(flows_m3_s[6]!)
      }
    const { flows_m3_s, head_m } = holeFlows({ ...plate, flow_m3_s: 3 * LPM, lean_rad: Math.PI / 180 })
    const tiltHeight_m = tiltHeight({ circle_m: 0.09, lean_rad: Math.PI / 180 })
    const seen = (flows_m3_s[0]! - flows_m3_s[6]!) / ((3 * LPM) / 12)
    expect(seen).toBeCloseTo(tiltFlowShare({ tiltHeight_m, head_m }), 3)
  })

  it('drains: a full and a half-full tube run at one speed, and depth undoes flow', () => {
    const drain = { bore_m: 0.032, slope: 0.02, manning: 0.01 }
    expect(drainFlow({ ...drain, depthShare: 1 }) / drainFlow({ ...drain, depthShare: 0.5 })).toBeCloseTo(2, 10)
    const share = drainDepthShare({ ...drain, flow_m3_s: drainFlow({ ...drain, depthShare: 0.37 }) })
    expect(share).toBeCloseTo(0.37, 9)
    const most = drainFlow({ ...drain, depthShare: 0.8 })
    expect(drainDepthShare({ ...drain, flow_m3_s: most * 0.9999 })).toBeLessThanOrEqual(0.8)
    expect(drainDepthShare({ ...drain, flow_m3_s: most * 1.0001 })).toBeNull()
    expect(stackCapacity({ bore_m: 0.05, waterShare: 0.3 })).toBeGreaterThan(
      stackCapacity({ bore_m: 0.05, waterShare: 0.25 }),
    )
  })
})

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
