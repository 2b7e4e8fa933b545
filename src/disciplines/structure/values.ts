import { value } from '../../kernel/published.ts'
import { pipeSecondMoment, pipeSectionModulus, warmStrength } from './equations-bending.ts'
import { gustPressure, roundForceCoefficient, velocityPressure } from './equations-wind.ts'

const inch = 0.0254
const standardPipe = { outside_m: 4.5 * inch, bore_m: 4.026 * inch }
/** Pascal of a pound-force per square inch. */
const psi = 6894.757

export default [
  value(gustPressure, { air_kg_m3: 1.225, wind_m_s: 1 }, 0.613, {
    within: 0.0005,
    absolute: true,
    source: 'ASCE.7',
    why: 'the standard rounds half of the standard density to three digits',
  }),
  value(
    velocityPressure,
    { gust_m_s: 40, exposure: 0.85, topography: 1, directionality: 0.95 },
    0.00256 * 0.85 * 0.95 * 89.477 ** 2 * 47.8803,
    {
      within: 0.003,
      source: 'ASCE.7',
      why: 'the same relation in US units, 0.00256 psf per (mile per hour)², rounded to three digits',
    },
  ),
  value(roundForceCoefficient, { height_m: 1, outside_m: 1 }, 0.7, {
    within: 1e-9,
    source: 'ASCE.7',
    why: 'figure 29.4-1, exact at its points',
  }),
  value(roundForceCoefficient, { height_m: 7, outside_m: 1 }, 0.8, {
    within: 1e-9,
    source: 'ASCE.7',
    why: 'figure 29.4-1, exact at its points',
  }),
  value(roundForceCoefficient, { height_m: 25, outside_m: 1 }, 1.2, {
    within: 1e-9,
    source: 'ASCE.7',
    why: 'figure 29.4-1, exact at its points',
  }),
  value(pipeSecondMoment, standardPipe, 7.23 * inch ** 4, {
    within: 7e-4,
    source: 'AISC.pipe',
    why: 'printed to 0.01 in4 of 7.23',
  }),
  value(pipeSectionModulus, standardPipe, 3.21 * inch ** 3, {
    within: 1.6e-3,
    source: 'AISC.pipe',
    why: 'printed to 0.01 in3 of 3.21',
  }),
  value(warmStrength, { strength_Pa: 230 * psi, temperature_C: (120 - 32) / 1.8 }, 92 * psi, {
    within: 0.005,
    source: 'PVC.pressure-derating',
    why: "a maker's example, 10 in pipe at 120 °F, printed to 1 psi of 92",
  }),
]
