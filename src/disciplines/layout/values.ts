import { value } from '../../kernel/published.ts'
import {
  helixNearest,
  hexagonalBound,
  inchFraction,
  latticeDistances,
  sitesThatFit,
  smallestPitch,
  smallestRise,
  tapeMark,
} from './equations.ts'

const turns = (degrees: number) => (degrees * Math.PI) / 180
const table = { within: 1e-5, source: 'Geometry.layout-table', why: 'printed to six digits' }
const exact = { within: 0, absolute: true, source: 'Geometry.layout-table', why: 'a count' }
const tenth = { within: 0.05e-3, absolute: true, source: 'Geometry.marks', why: 'printed to a tenth of a millimetre' }
const fits = (lines: number, pitch_m: number) => ({ usable_m: 1.4, lines, pitch_m, raise: 0.5 })

export default [
  value(latticeDistances, { reach_m: 0.12, lines: 6, pitch_m: 0.15 }, 0.14151, { ...table, pick: 'nearest_m' }),
  value(latticeDistances, { reach_m: 0.15, lines: 8, pitch_m: 0.3 }, 0.212132, { ...table, pick: 'ring_m' }),
  value(smallestPitch, { reach_m: 0.12, lines: 8, canopy_m: 0.15 }, 0.237189, table),
  value(smallestPitch, { reach_m: 0.18, lines: 6, canopy_m: 0.25 }, 0.346987, table),
  value(sitesThatFit, fits(8, 0.15), 76, exact),
  value(sitesThatFit, fits(6, 0.2), 45, exact),
  value(hexagonalBound, { reach_m: 0.12, usable_m: 1.4, canopy_m: 0.15 }, 54.5, {
    within: 0.5,
    absolute: true,
    source: 'Geometry.lattice',
    why: 'printed rounded down, 54',
  }),
  value(hexagonalBound, { reach_m: 0.18, usable_m: 1.4, canopy_m: 0.2 }, 45.5, {
    within: 0.5,
    absolute: true,
    source: 'Geometry.lattice',
    why: 'printed rounded down, 45',
  }),
  value(helixNearest, { reach_m: 0.12, rise_m: 0.025, divergence_rad: turns(78) }, 0.139583, {
    ...table,
    pick: 'distance_m',
  }),
  value(helixNearest, { reach_m: 0.15, rise_m: 0.02, divergence_rad: turns(150) }, 5, { ...exact, pick: 'apart' }),
  ...[
    [0.15, 0.0215],
    [0.2, 0.03975],
    [0.25, 0.07175],
  ].map(([canopy_m, rise_m]) =>
    value(smallestRise, { reach_m: 0.15, canopy_m: canopy_m! }, rise_m!, {
      within: 0.25e-3,
      absolute: true,
      source: 'Geometry.layout-table',
      why: 'found by its author in steps of a quarter of a millimetre',
      pick: 'rise_m',
    }),
  ),
  value(tapeMark, { exact_m: 0.18, step_m: 0.0254 / 16 }, -0.6e-3, {
    ...tenth,
    pick: 'error_m',
    loose: 'an error of rounding, printed to one digit',
  }),
  value(tapeMark, { exact_m: 0.18, step_m: 0.0254 / 32 }, 0.2e-3, {
    ...tenth,
    pick: 'error_m',
    loose: 'an error of rounding, printed to one digit',
  }),
  value(inchFraction, { length_m: 0.18, parts: 16 }, 1, { ...exact, source: 'Geometry.marks', pick: 'numerator' }),
  value(inchFraction, { length_m: 0.18, parts: 32 }, 3, { ...exact, source: 'Geometry.marks', pick: 'numerator' }),
  value(inchFraction, { length_m: 7.09 * 0.0254, parts: 32 }, 0.1e-3, {
    ...tenth,
    pick: 'error_m',
    loose: 'an error of rounding, printed to one digit',
  }),
]
