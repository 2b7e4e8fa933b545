import { value } from '../../kernel/published.ts'
import {
  axisLength,
  boreContactArea,
  boreGap,
  coreVolume,
  crossingLength,
  freeboard,
  heelRise,
  holeSawDepth,
  mitreDepth,
  mitreRise,
  openingArea,
  openingExtent,
  plainHoleGap,
  plugVolume,
  pocketLens,
  pocketLigament,
  pocketSlit,
  saddleArea,
  squareCutExtent,
  stubVolume,
  traceErrorMost,
  traceGap,
  wallLigament,
  worstSection,
} from './equations.ts'

const turns = (degrees: number) => (degrees * Math.PI) / 180
const sixDigits = { within: 1e-5, source: 'Geometry.solids', why: 'printed to six digits' }
const decimals = (digits: number, source: string) => ({
  within: 0.5 * 10 ** -digits,
  absolute: true,
  source,
  why: `printed to ${digits} decimals`,
})

/** 4 in Sch 40 column with a 2 in Sch 40 stub at 45°, sizes by the minimum wall. */
const inch = {
  columnRadius_m: 0.05715,
  columnWall_m: 0.0060198,
  stubRadius_m: 0.0301625,
  holeRadius_m: 0.0301625,
  stubWall_m: 0.0039116,
  angle_rad: turns(45),
  offset_m: 0,
}
/** 160 x 4 column with a 75 x 3 stub at 35°, 8 mm beside the axis. */
const beside = {
  columnRadius_m: 0.08,
  columnWall_m: 0.004,
  stubRadius_m: 0.0375,
  holeRadius_m: 0.0375,
  stubWall_m: 0.003,
  angle_rad: turns(35),
  offset_m: 0.008,
}
const level = { columnRadius_m: 0.0625, columnWall_m: 0.0032, holeRadius_m: 0.025, angle_rad: turns(90), offset_m: 0 }
const outside = (joint: typeof inch) => ({
  pipeRadius_m: joint.columnRadius_m,
  tubeRadius_m: joint.stubRadius_m,
  angle_rad: joint.angle_rad,
  offset_m: joint.offset_m,
})
const equal = { pipeRadius_m: 1, tubeRadius_m: 1, offset_m: 0, angle_rad: turns(90) }
const six = [-1, 0, 1].flatMap((n) =>
  [0, 1, 2, 3, 4, 5].map((line) => ({ turn_rad: (Math.PI / 3) * line, height_m: 0.2 * n + 0.1 * (line % 2) })),
)

export default [
  value(coreVolume, equal, 8 / 3, {
    within: 1e-12,
    source: 'Steinmetz',
    why: 'exact: half of 16/3 r³; rounding of floating point',
  }),
  value(crossingLength, { ...equal, around_rad: turns(90) }, 0, {
    within: 1e-7,
    absolute: true,
    source: 'Geometry.solids',
    why: 'equal pipes meet on their axes; root of a rounding error',
  }),
  value(openingExtent, outside(inch), 0.0853124, { ...sixDigits, pick: 'height_m' }),
  value(openingExtent, outside(inch), 0.0635488, { ...sixDigits, pick: 'arc_m' }),
  value(openingExtent, outside(beside), 0.13128, { ...sixDigits, pick: 'height_m' }),
  value(openingExtent, outside(beside), 0.0786119, { ...sixDigits, pick: 'arc_m' }),
  value(squareCutExtent, inch, 0.0913322, { ...sixDigits, pick: 'height_m' }),
  value(squareCutExtent, inch, 0.0721181, { ...sixDigits, pick: 'arc_m' }),
  value(openingArea, outside(inch), 4200.05e-6, sixDigits),
  value(plugVolume, inch, 25412.8e-9, sixDigits),
  value(plugVolume, beside, 32008.9e-9, sixDigits),
  value(plugVolume, level, 6424.84e-9, sixDigits),
  value(saddleArea, inch, 1050.48e-6, sixDigits),
  value(boreContactArea, inch, 1767.46e-6, sixDigits),
  value(boreContactArea, level, 526.129e-6, sixDigits),
  value(mitreDepth, { pipeRadius_m: 0.0511302, stubRadius_m: 0.0301625, offset_m: 0 }, 0.0412858, sixDigits),
  value(mitreDepth, { pipeRadius_m: 0.076, stubRadius_m: 0.0375, offset_m: 0.008 }, 0.0608749, sixDigits),
  value(mitreRise, beside, 0.107111, sixDigits),
  value(boreGap, { stub: inch, end: { kind: 'mitre', depth_m: 0.04128583 }, count: 3 }, 0.0413467, sixDigits),
  value(stubVolume, { stub: inch, end: { kind: 'saddle' }, axisLength_m: 0.170985 }, 66110.6e-9, sixDigits),
  value(stubVolume, { stub: beside, end: { kind: 'saddle' }, axisLength_m: 0.253031 }, 82622.3e-9, sixDigits),
  value(freeboard, { stub: inch, axisLength_m: 0.18, mouthTilt_rad: 0 }, 0.0947112, sixDigits),
  value(holeSawDepth, inch, 0.0688383, sixDigits),
  value(holeSawDepth, beside, 0.115496, sixDigits),
  value(holeSawDepth, { ...inch, holeRadius_m: 0.0254, angle_rad: turns(60) }, 0.0363, decimals(4, 'Geometry.saw')),
  value(holeSawDepth, { ...inch, holeRadius_m: 0.03015, angle_rad: turns(60) }, 0.0421, decimals(4, 'Geometry.saw')),
  value(holeSawDepth, level, 0.00873, decimals(5, 'Geometry.saw')),
  value(wallLigament, { hole: inch, turn_rad: turns(90), rise_m: 0.15 }, 0.0859786, sixDigits),
  value(wallLigament, { hole: inch, turn_rad: turns(60), rise_m: 0.1 }, 0.0309575, {
    ...sixDigits,
    why: 'printed to six digits; smallest gap of boolean solids',
  }),
  value(worstSection, { hole: inch, cut: 'square', sites: six }, 20937.8e-9, { ...sixDigits, pick: 'modulus_m3' }),
  value(traceErrorMost, { columnRadius_m: 1, stubRadius_m: 0.6, angle_rad: turns(45), offset_m: 0 }, 0.2, {
    within: 1e-12,
    source: 'Geometry.trace-table',
    why: 'exact: 1 - √(1 - 0.36)',
  }),
  value(traceGap, { columnRadius_m: 1, stubRadius_m: 0.3, angle_rad: turns(30), offset_m: 0 }, 0.0198, {
    ...decimals(4, 'Geometry.trace-table'),
    pick: 'gap_m',
  }),
  value(traceGap, { columnRadius_m: 1, stubRadius_m: 0.7, angle_rad: turns(60), offset_m: 0 }, 0.0681, {
    ...decimals(4, 'Geometry.trace-table'),
    pick: 'gap_m',
  }),
  value(heelRise, { heelOutside_m: 0.09, angle_rad: turns(80) }, 0.016, decimals(3, 'Geometry.stub-end')),
  value(axisLength, { stub: { ...inch, angle_rad: turns(90) }, heelOutside_m: 0.1, mouthTilt_rad: 0 }, 0.15715, {
    within: 1e-12,
    source: 'Geometry.stub-end',
    why: 'exact: a level stub starts at the radius of the column',
  }),
  value(pocketSlit, { former_m: 0.05, stretch: 0.15 }, 0.0683, decimals(4, 'Geometry.pocket')),
  value(pocketSlit, { former_m: 0.075, stretch: 0.3 }, 0.0906, decimals(4, 'Geometry.pocket')),
  value(pocketLens, { columnRadius_m: 0.05715, slit_m: 0.0785 }, 0.0725, {
    ...decimals(4, 'Geometry.pocket'),
    pick: 'width_m',
  }),
  value(pocketLens, { columnRadius_m: 0.05715, slit_m: 0.0785 }, 0.0259, {
    ...decimals(4, 'Geometry.pocket'),
    pick: 'gap_m',
  }),
  value(pocketLigament, { columnRadius_m: 0.05715, slit_m: 0.0785, count: 1 }, 1 - 0.219, {
    ...decimals(3, 'Geometry.pocket'),
    pick: 'share',
  }),
  value(plainHoleGap, { columnRadius_m: 0.055, holeRadius_m: 0.025 }, 0.006, decimals(4, 'Geometry.other-sites')),
]
