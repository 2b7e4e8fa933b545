import { describe, expect, it } from 'vitest'
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
import { barbLoss, lossOnBore } from './equations-minor.ts'
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
