import { type Published, value } from '../../kernel/published.ts'
import {
  churchillFriction,
  colebrookFriction,
  frictionFactor,
  laminarFriction,
  pipeLoss,
  turbulentFriction,
} from './equations-friction.ts'
import { contractionLoss, enlargementLoss } from './equations-minor.ts'
import { idealDropMass, sharpOrificeDischarge } from './equations-orifice.ts'
import { fittedParabola, parabolaCrossing } from './equations-pump.ts'
import {
  surfaceTension,
  vapourPressure,
  waterDensity,
  waterKinematicViscosity,
  waterViscosity,
} from './equations-water.ts'

/** Table of water at 101.325 kPa: °C, kg/m³, µPa s, mm²/s, mN/m, kPa. */
const WATER_TABLE = [
  [0, 999.843, 1791.8, 1.792, 75.648, 0.61121],
  [5, 999.967, 1518.2, 1.5182, 74.942, 0.87257],
  [10, 999.703, 1305.9, 1.3063, 74.221, 1.22818],
  [15, 999.103, 1137.6, 1.1386, 73.486, 1.70574],
  [20, 998.207, 1001.6, 1.0034, 72.736, 2.33921],
  [25, 997.048, 890.02, 0.89266, 71.972, 3.16975],
  [30, 995.65, 797.22, 0.8007, 71.194, 4.24669],
  [35, 994.033, 719.13, 0.72344, 70.402, 5.62862],
  [40, 992.216, 652.73, 0.65785, 69.596, 7.38443],
] as const

const viscosityTerms = {
  within: 5e-5,
  source: 'IAPWS.R12-08',
  why: 'half of the last digit of a row of five figures; the simple equation of SR6-08 against the full formulation',
}

const waterValues: readonly Published[] = WATER_TABLE.flatMap(([temperature_C, ρ, μ, ν, σ, p]) => [
  value(waterDensity, { temperature_C }, ρ, {
    within: 0.005,
    absolute: true,
    source: 'IAPWS.R6-95',
    why: 'Kell 1975 is known within 0.004 kg/m³ of it, and half of the last digit',
  }),
  value(waterViscosity, { temperature_C }, μ * 1e-6, viscosityTerms),
  value(waterKinematicViscosity, { temperature_C }, ν * 1e-6, viscosityTerms),
  value(surfaceTension, { temperature_C }, σ * 1e-3, {
    within: 0.5e-6,
    absolute: true,
    source: 'IAPWS.R1-76',
    why: 'half of the last printed digit',
  }),
  value(vapourPressure, { temperature_C }, p * 1e3, {
    within: 0.0051,
    absolute: true,
    source: 'IAPWS.R7-97',
    why: 'half of the last printed digit',
  }),
])

/** Re, ε/D, Colebrook, Swamee-Jain, Churchill. */
const FRICTION_TABLE = [
  [4e3, 0, 0.039907, 0.040551, 0.04059],
  [1e4, 0, 0.030883, 0.030972, 0.031002],
  [1e5, 0, 0.01799, 0.017863, 0.017875],
  [1e6, 0, 0.011645, 0.011606, 0.011612],
  [1e5, 1e-4, 0.018514, 0.018452, 0.018463],
  [1e5, 1e-3, 0.022175, 0.022342, 0.022343],
  [1e5, 1e-2, 0.038504, 0.038751, 0.038734],
  [1e6, 1e-3, 0.019943, 0.020029, 0.020022],
  [1e8, 1e-3, 0.019639, 0.019642, 0.019633],
  [1e4, 0.05, 0.073801, 0.075044, 0.075009],
] as const

const sixDigits = {
  within: 0.51e-6,
  absolute: true,
  source: 'PyFluids.1.0.22',
  why: 'half of the last printed digit',
}

/** Re, Churchill, smooth, through the transition. */
const CHURCHILL_TRANSITION = [
  [2000, 0.03204],
  [2300, 0.03084],
  [2500, 0.03515],
  [3000, 0.04297],
  [3500, 0.04226],
  [4000, 0.04059],
] as const

const frictionValues: readonly Published[] = [
  ...FRICTION_TABLE.flatMap(([reynolds, rough, colebrook, explicit, churchill]) => {
    const given = { reynolds, roughness_m: rough, bore_m: 1 }
    return [
      value(colebrookFriction, given, colebrook, sixDigits),
      value(turbulentFriction, given, explicit, sixDigits),
      value(frictionFactor, given, explicit, sixDigits),
      value(churchillFriction, given, churchill, sixDigits),
    ]
  }),
  ...CHURCHILL_TRANSITION.map(([reynolds, churchill]) =>
    value(churchillFriction, { reynolds, roughness_m: 0, bore_m: 1 }, churchill, { ...sixDigits, within: 0.51e-5 }),
  ),
  ...([500, 1000, 2000] as const).map((reynolds) =>
    value(laminarFriction, { reynolds }, { 500: 0.128, 1000: 0.064, 2000: 0.032 }[reynolds], {
      within: 1e-12,
      source: 'Maurer.Hydraulics',
      why: 'exact',
    }),
  ),
  value(colebrookFriction, { reynolds: 1.0355e6, roughness_m: 0.000046, bore_m: 0.5 }, 0.0133, {
    within: 0.00005,
    absolute: true,
    source: 'Maurer.Hydraulics',
    why: 'example 4.1, half of the last printed digit',
  }),
]

const CFS = 0.3048 ** 3
const GPM = 3.785411784e-3 / 60

const pumpPoints = [
  [0, 81],
  [5000, 60],
  [7850, 20],
].map(([gpm, feet]) => ({ flow_m3_s: gpm! * GPM, head_m: feet! * 0.3048 }))

/** Example 7.1 to 7.3: the coefficients as printed, in feet and cubic feet per second, carried to SI. */
const printedCrossing = {
  lift_m: 30 * 0.3048,
  systemCurvature: (0.16 * 0.3048) / CFS ** 2,
  shutoff_m: 82.5 * 0.3048,
  pumpCurvature: (0.201 * 0.3048) / CFS ** 2,
}

const pumpValues: readonly Published[] = [
  value(fittedParabola, { points: pumpPoints }, 82.5 * 0.3048, {
    within: 0.05 * 0.3048,
    absolute: true,
    source: 'Maurer.Hydraulics',
    why: 'half of the last printed digit, example 7.1',
    pick: 'shutoff_m',
  }),
  value(fittedParabola, { points: pumpPoints }, (-0.201 * 0.3048) / CFS ** 2, {
    within: 0.0025,
    source: 'Maurer.Hydraulics',
    why: 'half of the last printed digit, example 7.1',
    pick: 'curvature',
  }),
  value(parabolaCrossing, printedCrossing, 12.051 * CFS, {
    within: 0.0025,
    source: 'Maurer.Hydraulics',
    why: 'coefficients are printed to three figures, example 7.3',
    pick: 'flow_m3_s',
  }),
  value(parabolaCrossing, printedCrossing, 53.285 * 0.3048, {
    within: 0.0025,
    source: 'Maurer.Hydraulics',
    why: 'coefficients are printed to three figures, example 7.3',
    pick: 'head_m',
  }),
]

/** Feet of head and printed coefficient of a round sharp hole of half an inch. */
const halfInchOrifice: readonly Published[] = (
  [
    [1, 0.62],
    [2, 0.613],
    [4, 0.608],
    [6, 0.607],
    [10, 0.605],
    [20, 0.603],
  ] as const
).map(([feet, printed]) =>
  value(sharpOrificeDischarge, { hole_m: 0.0127, head_m: feet * 0.3048 }, printed, {
    within: 0.01,
    source: 'Britannica1911.hydraulics',
    why: 'the fit begins at 1 in; the table of the same article for 0.5 in lies within 1 % of it',
  }),
)

/** Example 4.1: the text prints 0.061 m, its own program 0.61 m. */
const exampleMain = {
  flow_m3_s: 0.416,
  length_m: 100,
  bore_m: 0.5,
  roughness_m: 0.000046,
  fittingLoss: 0,
  viscosity_m2_s: 1.023053e-6,
}

export default [
  ...waterValues,
  value(vapourPressure, { temperature_C: 26.85 }, 3536.58941, {
    within: 1e-8,
    source: 'IAPWS.R7-97',
    why: 'verification value, nine digits printed',
  }),
  ...frictionValues,
  value(enlargementLoss, { smaller_m: 1, larger_m: 2 }, 0.5625, { within: 1e-12, source: 'BordaCarnot', why: 'exact' }),
  value(contractionLoss, { smaller_m: 1, larger_m: 2 }, 0.375, { within: 1e-12, source: 'BordaCarnot', why: 'exact' }),
  ...pumpValues,
  value(pipeLoss, exampleMain, 0.61, {
    within: 0.005,
    absolute: true,
    source: 'Maurer.Hydraulics',
    why: 'example 4.1, half of the last digit of the program output',
  }),
  value(sharpOrificeDischarge, { hole_m: 0.0254, head_m: 0.3048 }, 0.6136, {
    within: 0.00005,
    absolute: true,
    source: 'Britannica1911.hydraulics',
    why: 'half of the last printed digit',
  }),
  ...halfInchOrifice,
  value(idealDropMass, { tip_m: 0.001, tension_N_m: 0.0728 }, 0.000023, {
    within: 0.0000005,
    absolute: true,
    source: 'Senese.drop',
    why: 'half of the last printed digit',
  }),
] as readonly Published[]
