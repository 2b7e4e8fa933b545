import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { GRAVITY_m_s2 } from '../../tables/constants.ts'
import { pipePlastics } from '../../tables/pvc-strength.ts'
import { peopleForces, stabilityFactors } from '../../tables/stability.ts'
import { cylinderDrag } from '../../tables/wind.ts'
import {
  bucklingHeight,
  pipeSecondMoment,
  pipeSectionModulus,
  ringShare,
  sectionStress,
  strengthUse,
  thermalGrowth,
  topMovement,
  warmModulus,
  warmStrength,
} from './equations-bending.ts'
import { boardSide, floorLoad, footLoad } from './equations-floor.ts'
import { centreOfGravity, towerBodies } from './equations-mass.ts'
import {
  ballastMass,
  burialDepth,
  overturningMoment,
  rightingMoment,
  rightingRatio,
  slidingRatio,
  strapForce,
  tippingArm,
  tippingLean,
} from './equations-tipping.ts'
import { gustPressure, roundForceCoefficient, tippingWind, windForce } from './equations-wind.ts'
import { siteAtWeek } from './site-mass.ts'
import { tippingMap, tippingResult } from './tipping-map.ts'

const wanted = stabilityFactors.rows['free-standing'].ratio

/** A balcony tower: canopy 0.35 m by 1.45 m, drag 1, arm 1.1 m, half base 0.195 m, 17 kg without solution. */
const balcony = (wind_m_s: number) => {
  const pressure_Pa = gustPressure({ air_kg_m3: 1.225, wind_m_s })
  return { force_N: windForce({ pressure_Pa, gustFactor: 1, coefficient: 1, area_m2: 0.35 * 1.45 }), height_m: 1.1 }
}
const bodies = (litres: number) => [
  { name: 'tower', mass_kg: 17, height_m: 1 },
  { name: 'solution', mass_kg: litres, height_m: 0.1 },
]
const result = (litres: number, wind: number) =>
  tippingResult({ bodies: bodies(litres), pushes: [balcony(wind)], arm_m: 0.195, wantedRatio: wanted, strap_m: 1.4 })

describe('tipping in the wind', () => {
  it('with 36 L resists 3.0, 1.3, 0.7 and 0.5 times what overturns at 10, 15, 20 and 25 m/s', () => {
    for (const [wind, ratio] of [
      [10, 3],
      [15, 1.3],
      [20, 0.7],
      [25, 0.5],
    ] as const)
      expect(result(36, wind).ratio).toBeCloseTo(ratio, 1)
  })

  it('with 12 L only 1.6, 0.7 and 0.4 times', () => {
    for (const [wind, ratio] of [
      [10, 1.6],
      [15, 0.7],
      [20, 0.4],
    ] as const)
      expect(result(12, wind).ratio).toBeCloseTo(ratio, 1)
  })

  it('at 12 m/s needs 22 L to stand free, and at 20 m/s with 22 L a strap of 93 N at 1.4 m', () => {
    expect(result(22, 12).ratio).toBeGreaterThan(wanted)
    expect(result(21, 12).ratio).toBeLessThan(wanted)
    expect(result(22, 20).strap_N).toBeCloseTo(93, 0)
    expect(result(36, 10).strap_N).toBe(0)
  })

  it('is worst with the tank low, the plants grown and the wind strong', () => {
    const { cells, worst } = tippingMap({
      levels: [12, 22, 36],
      weeks: [1, 3, 5],
      winds: [8, 12, 20],
      bodies: (litres, week) => [...bodies(litres), { name: 'plants', mass_kg: week, height_m: 1.1 }],
      pushes: (wind, week) => [{ ...balcony(wind), force_N: balcony(wind).force_N * (0.4 + 0.12 * week) }],
      arm_m: 0.195,
      wantedRatio: wanted,
      strap_m: 1.4,
    })
    expect(cells.length).toBe(27)
    expect(worst).toMatchObject({ level: 12, week: 5, wind: 20 })
  })

  it('tips at the wind whose square is the ratio', () => {
    const tipping = tippingWind({ wind_m_s: 15, ratio: result(36, 15).ratio })
    expect(result(36, tipping).ratio).toBeCloseTo(1, 9)
  })
})

describe('moments', () => {
  it('strap or ballast of the computed size restore the wanted ratio', () => {
    const run = fc.record({
      Mr: fc.double({ min: 1, max: 300, noNaN: true }),
      Mo: fc.double({ min: 1, max: 300, noNaN: true }),
    })
    fc.assert(
      fc.property(run, ({ Mr, Mo }) => {
        const tower = { righting_N_m: Mr, overturning_N_m: Mo, ratio: 1.5 }
        const strap = strapForce({ ...tower, height_m: 1.4 })
        expect(rightingRatio({ righting_N_m: Mr + strap * 1.4, overturning_N_m: Mo })).toBeGreaterThanOrEqual(
          1.5 - 1e-9,
        )
        const mass_kg = ballastMass({ ...tower, arm_m: 0.2 })
        const heavier = Mr + rightingMoment({ mass_kg, arm_m: 0.2 })
        expect(rightingRatio({ righting_N_m: heavier, overturning_N_m: Mo })).toBeGreaterThanOrEqual(1.5 - 1e-9)
        if (1.5 * Mo > Mr) expect(heavier / Mo).toBeCloseTo(1.5, 9)
      }),
      { seed: 3, numRuns: 200 },
    )
  })

  it('a lean to the tipping angle leaves nothing that rights', () => {
    const tower = { mass_kg: 50, arm_m: 0.2, height_m: 0.6 }
    const lean_rad = tippingLean(tower)
    expect(rightingMoment({ ...tower, lean_rad })).toBeCloseTo(0, 9)
    expect(rightingMoment({ ...tower, lean_rad: lean_rad / 2 })).toBeLessThan(rightingMoment(tower))
  })

  it('the arm of a rectangle is its shorter half, of a triangle its inradius, outside negative', () => {
    const box = [
      { x_m: 0, y_m: 0 },
      { x_m: 0.56, y_m: 0 },
      { x_m: 0.56, y_m: 0.39 },
      { x_m: 0, y_m: 0.39 },
    ]
    expect(tippingArm({ corners: box, weight: { x_m: 0.28, y_m: 0.195 } })).toBeCloseTo(0.195, 12)
    expect(tippingArm({ corners: box.toReversed(), weight: { x_m: 0.28, y_m: 0.195 } })).toBeCloseTo(0.195, 12)
    expect(tippingArm({ corners: box, weight: { x_m: 0.28, y_m: -0.05 } })).toBeCloseTo(-0.05, 12)
    const triangle = [0, 1, 2].map((i) => ({
      x_m: Math.cos((2 * Math.PI * i) / 3),
      y_m: Math.sin((2 * Math.PI * i) / 3),
    }))
    expect(tippingArm({ corners: triangle, weight: { x_m: 0, y_m: 0 } })).toBeCloseTo(0.5, 12)
  })

  it('the centre of gravity lies between the bodies and sinks as the tank fills', () => {
    const tower = (litres: number) =>
      centreOfGravity({
        bodies: towerBodies({
          fixed: [{ name: 'column', mass_kg: 9, height_m: 0.95 }],
          solution: { volume_m3: litres / 1000, level_m: litres / 165, bottom_m: 0, density_kg_m3: 1000 },
          siteHeights_m: [0.5, 0.7, 0.9],
          site_kg: 0.25,
        }),
      })
    expect(tower(36).height_m).toBeLessThan(tower(12).height_m)
    expect(tower(36).mass_kg).toBeCloseTo(9 + 36 + 0.75, 9)
  })

  it('a buried foot satisfies the relation of the code', () => {
    const post = { push_N: 200, height_m: 1.2, foot_m: 0.16, bearing_Pa_m: 15_710 }
    const d = burialDepth(post)
    const A = (2.34 * post.push_N) / (((post.bearing_Pa_m * d) / 3) * post.foot_m)
    expect((A / 2) * (1 + Math.sqrt(1 + (4.36 * post.height_m) / A))).toBeCloseTo(d, 10)
    expect(burialDepth({ ...post, push_N: 400 })).toBeGreaterThan(d)
    expect(burialDepth({ ...post, bearing_Pa_m: 31_420 })).toBeLessThan(d)
  })

  it('the code relation gives the same depth in feet and pounds', () => {
    const [foot, pound] = [0.3048, 4.4482216]
    const metric = burialDepth({
      push_N: 50 * pound,
      height_m: 4 * foot,
      foot_m: 0.5 * foot,
      bearing_Pa_m: (100 * pound) / foot ** 3,
    })
    expect(metric / foot).toBeCloseTo(burialDepth({ push_N: 50, height_m: 4, foot_m: 0.5, bearing_Pa_m: 100 }), 9)
  })

  it('a child who pulls 150 N at 1.2 m tips the balcony tower, full or not, without a strap', () => {
    const pull = (litres: number, force_N: number) =>
      tippingResult({
        bodies: bodies(litres),
        pushes: [{ force_N, height_m: 1.2 }],
        arm_m: 0.195,
        wantedRatio: wanted,
        strap_m: 1.4,
      })
    for (const litres of [36, 12]) {
      const { ratio, strap_N, righting_N_m } = pull(litres, 150)
      expect(ratio).toBeLessThan(1)
      expect((righting_N_m + 1.4 * strap_N) / (150 * 1.2)).toBeCloseTo(wanted, 9)
    }
    expect(pull(36, peopleForces.rows['child-pull'].low_N).strap_N).toBeLessThan(
      pull(36, peopleForces.rows['child-pull'].high_N).strap_N,
    )
  })

  it('slides before it tips where the floor is smooth', () => {
    expect(slidingRatio({ friction: 0.4, mass_kg: 77.9, push_N: 100 })).toBeCloseTo(3.06, 2)
    expect(slidingRatio({ friction: 0.4, mass_kg: 50, push_N: 0 })).toBe(Number.POSITIVE_INFINITY)
  })

  it('refuses what cannot be', () => {
    expect(() => centreOfGravity({ bodies: [{ name: 'tank', mass_kg: -1, height_m: 0 }] })).toThrow('m of tank = -1')
    expect(() => tippingArm({ corners: [], weight: { x_m: 0, y_m: 0 } })).toThrow(RangeError)
    expect(() => strapForce({ righting_N_m: 1, overturning_N_m: 1, ratio: 1, height_m: 0 })).toThrow('z = 0')
    expect(() => overturningMoment({ pushes: [{ force_N: -1, height_m: 1 }] })).toThrow(RangeError)
  })
})

describe('bending of a 2 m column of 4 in pipe at 20 m/s, a cross-check worked by hand', () => {
  const pipe = { outside_m: 0.1143, bore_m: 0.10226 }
  const pressure_Pa = gustPressure({ air_kg_m3: 1.226, wind_m_s: 20 })
  const coefficient = roundForceCoefficient({ height_m: 2, outside_m: 0.1143 })
  const force_N = windForce({ pressure_Pa, gustFactor: 1, coefficient, area_m2: 2 * 0.1143 })

  it('force, moment, stress and movement', () => {
    expect(coefficient).toBeCloseTo(1.0333, 4)
    expect(force_N).toBeCloseTo(57.9, 1)
    const I = pipeSecondMoment(pipe)
    expect(I).toBeCloseTo(3.0105e-6, 10)
    const section_m3 = pipeSectionModulus(pipe)
    expect(section_m3).toBeCloseTo(5.2678e-5, 9)
    const stress = sectionStress({ moment_N_m: force_N, section_m3, weight_N: 0, area_m2: 2.0478e-3, peak: 1 })
    expect(stress / 1e6).toBeCloseTo(1.1, 2)
    const beam = { even_N: force_N, push_N: 0, pushHeight_m: 0, height_m: 2, second_m4: I }
    expect(topMovement({ ...beam, modulus_Pa: pipePlastics.rows['pvc-u'].modulus_Pa })).toBeCloseTo(6.97e-3, 5)
  })

  it('three holes of 60 mm in a ring leave 44 %, four 25 %', () => {
    expect(ringShare({ holes: 3, hole_m: 0.06, meanRadius_m: 0.05414 })).toBeCloseTo(0.439, 3)
    expect(ringShare({ holes: 4, hole_m: 0.06, meanRadius_m: 0.05414 })).toBeCloseTo(0.252, 3)
    expect(() => ringShare({ holes: 6, hole_m: 0.06, meanRadius_m: 0.05414 })).toThrow(RangeError)
  })

  it('buckling never governs, and warmth lengthens by millimetres', () => {
    const modulus_Pa = 2.76e9
    const weight_N = 2.87 * 2 * GRAVITY_m_s2
    expect(bucklingHeight({ modulus_Pa, second_m4: 3.0105e-6, weight_N, length_m: 2 })).toBeCloseTo(13.2, 1)
    expect(thermalGrowth({ expansion_per_K: 5.2e-5, length_m: 2, warming_K: 30 })).toBeCloseTo(3.1e-3, 4)
  })
})

describe('warm pipe', () => {
  it('30 % of the strength at 20 °C is 79 % at 50 °C, and above 60 °C nothing may hang on it', () => {
    const use = (temperature_C: number) =>
      strengthUse({ stress_Pa: 0.3, allowed_Pa: warmStrength({ strength_Pa: 1, temperature_C }), factor: 1 })
    expect(use(20)).toBeCloseTo(0.3, 9)
    expect(use(50)).toBeCloseTo(0.79, 2)
    expect(use(60)).toBeCloseTo(0.3 / 0.22, 9)
    expect(use(60.1)).toBe(Number.POSITIVE_INFINITY)
  })

  it('loses strength and stiffness with each kelvin', () => {
    for (let t = 23; t < 60; t++) {
      expect(warmStrength({ strength_Pa: 1, temperature_C: t + 1 })).toBeLessThan(
        warmStrength({ strength_Pa: 1, temperature_C: t }),
      )
      expect(warmModulus({ modulus_Pa: 1, temperature_C: t + 1 })).toBeLessThan(
        warmModulus({ modulus_Pa: 1, temperature_C: t }),
      )
    }
  })

  it('top movement of an even load equals the sum of many small pushes', () => {
    const beam = { height_m: 1.85, modulus_Pa: 1.2e9, second_m4: 1e-6 }
    const even = topMovement({ ...beam, even_N: 60, push_N: 0, pushHeight_m: 0 })
    const n = 2000
    let sum = 0
    for (let i = 0; i < n; i++)
      sum += topMovement({ ...beam, even_N: 0, push_N: 60 / n, pushHeight_m: (1.85 * (i + 0.5)) / n })
    expect(sum / even).toBeCloseTo(1, 6)
  })
})

describe('wind on a pipe', () => {
  it('the code lies above the drag measured on finite cylinders where columns are, and below for stumps', () => {
    for (const { slenderness, dragCoefficient } of Object.values(cylinderDrag.rows)) {
      const code = roundForceCoefficient({ height_m: slenderness, outside_m: 1 })
      if (slenderness >= 15) expect(code).toBeGreaterThan(dragCoefficient)
      expect(Math.abs(code / dragCoefficient - 1)).toBeLessThan(0.25)
    }
  })

  it('grows with the square of the speed', () => {
    expect(balcony(20).force_N / balcony(10).force_N).toBeCloseTo(4, 12)
  })
})

describe('plants by week', () => {
  it('get heavier and wider, and keep the last row after it', () => {
    for (let week = 0; week < 8; week += 0.5) {
      expect(siteAtWeek({ week: week + 0.5 }).mass_kg).toBeGreaterThan(siteAtWeek({ week }).mass_kg)
      expect(siteAtWeek({ week: week + 0.5 }).outline_m).toBeGreaterThan(siteAtWeek({ week }).outline_m)
    }
    expect(siteAtWeek({ week: 12 })).toEqual(siteAtWeek({ week: 8 }))
    expect(() => siteAtWeek({ week: -1 })).toThrow('week = -1')
  })
})

describe('floor', () => {
  it('53 kg on a box of 560 x 390 is 243 kg/m2, on a board of 0.6 m 147', () => {
    const box = floorLoad({ mass_kg: 53, area_m2: 0.56 * 0.39 })
    expect(box.load_kg_m2).toBeCloseTo(243, 0)
    expect(box.pressure_Pa).toBeCloseTo(2380, -1)
    expect(floorLoad({ mass_kg: 53, area_m2: 0.36 }).load_kg_m2).toBeCloseTo(147, 0)
  })

  it('a board of the computed side meets the limit', () => {
    const side = boardSide({ mass_kg: 53, limit_kg_m2: 150 })
    expect(floorLoad({ mass_kg: 53, area_m2: side ** 2 }).load_kg_m2).toBeCloseTo(150, 9)
  })

  it('a foot carries a quarter at rest and half the tower where it is about to tip', () => {
    const tower = { mass_kg: 60, feet: 4, spread_m: 0.4 }
    expect(footLoad({ ...tower, overturning_N_m: 0 })).toBeCloseTo(15 * GRAVITY_m_s2, 9)
    const tipping = 60 * GRAVITY_m_s2 * 0.2
    expect(footLoad({ ...tower, overturning_N_m: tipping })).toBeCloseTo(30 * GRAVITY_m_s2, 9)
    expect(footLoad({ ...tower, overturning_N_m: 9 * tipping })).toBeCloseTo(30 * GRAVITY_m_s2, 9)
  })
})
