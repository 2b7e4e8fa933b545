import { table } from './table.ts'

/** Rules by which the water's path is judged where neither physics nor a standard draws the line. */
export const waterPathPractice = table({
  title: 'Practice for the water path',
  columns: { value: 'value in the unit of the row', unit: 'unit' },
  source: 'common-practice',
  rows: {
    coldestWater: { value: 5, unit: 'C', note: 'solution in which leafy crops still stand, where no air is given' },
    warmestWater: { value: 35, unit: 'C', note: 'as above, hot end' },
    riserSpeed: { value: 1.5, unit: 'm/s', note: 'faster hoses hum and lose head' },
    spread: { value: 0.15, unit: '1', note: 'largest less smallest flow of the columns, over their mean' },
    hopelessHole: { value: 0.0015, unit: 'm', note: 'a hole that salt and slime close between two looks' },
    tiltShare: { value: 0.2, unit: '1', note: 'difference of flow from low side to high side of the plate' },
    holeWeb: { value: 0.003, unit: 'm', note: 'plate left between two holes' },
    holeLand: {
      value: 0.0005,
      unit: 'm',
      note: 'plate left between a hole and the wall of its cup: what a drill wanders',
    },
    fewestHoles: { value: 8, unit: 'count', note: 'fewer streams leave lines dry' },
    largestDrill: { value: 0.008, unit: 'm', note: 'for distributor plates' },
    lipRise: { value: 0.025, unit: 'm', note: 'lip over the lowest edge of the opening, against splashes' },
    footWater: { value: 0.01, unit: 'm', note: 'water that may stand over the foot while the pump runs' },
    footClogged: { value: 0.5, unit: '1', note: 'share of the foot holes taken as shut by roots' },
    returnFull: { value: 0.5, unit: '1', note: 'depth over bore of a return pipe that also carries roots' },
    weakPump: { value: 0.85, unit: '1', note: 'strength against the first test at which pump and hose are cleaned' },
    topUpDays: { value: 2, unit: 'd', note: 'so that nobody need come every day' },
    pauseKept: { value: 0.5, unit: '1', note: 'share of the time to dry that a timer leaves in hand' },
    airBreak: { value: 0.025, unit: 'm', note: 'lowest open end over the highest water' },
    footShare: { value: 0.5, unit: '1', note: 'share of the tank’s plan that column and pump may take' },
  },
})

/**
 * Water that a plant has left once the flow stops. No measured time to wilt in film towers was found, so the band is
 * wide on purpose; one trial on a hot day narrows it.
 */
export const stopWater = table({
  title: 'Water within reach of the roots after a stop',
  columns: { low: 'low end', high: 'high end', unit: 'unit of both' },
  source: 'common-practice',
  rows: {
    plug: { low: 8e-6, high: 30e-6, unit: 'm3', note: 'seedling plug alone, to a cup filled with a medium that holds' },
    rootShare: { low: 0.05, high: 0.2, unit: '1', note: 'of the mass of wet roots, clinging and within reach' },
    usable: { low: 0.5, high: 0.8, unit: '1', note: 'before the leaves hang' },
    peakHour: {
      low: 2,
      high: Math.PI,
      unit: '1',
      note: 'thirst of the hottest hours over the mean of 24 h: an even day of 12 h, and half a sine',
    },
    rootDrain: { low: 0, high: 50e-6, unit: 'm3', note: 'runs out of the roots of one site within hours of a stop' },
    grownAt: { low: 5, high: 5, unit: 'week', note: 'age at which a plant counts as grown' },
    reference: { low: 25, high: 25, unit: 'C', note: 'air for which the thirst of a day is meant' },
  },
})

/** Volumes from mark to mark of a dip stick, coarser for larger tanks. */
export const dipStickSteps = table({
  title: 'Marks of dip sticks',
  columns: { system: 'mm or in', step_m3: 'volume from mark to mark' },
  source: 'common-practice',
  rows: {
    'L-0.5': { system: 'mm', step_m3: 0.0005 },
    'L-1': { system: 'mm', step_m3: 0.001 },
    'L-2': { system: 'mm', step_m3: 0.002 },
    'L-5': { system: 'mm', step_m3: 0.005 },
    'L-10': { system: 'mm', step_m3: 0.01 },
    'L-50': { system: 'mm', step_m3: 0.05 },
    'gal-0.25': { system: 'in', step_m3: 0.003785411784 / 4 },
    'gal-0.5': { system: 'in', step_m3: 0.003785411784 / 2 },
    'gal-1': { system: 'in', step_m3: 0.003785411784 },
    'gal-2': { system: 'in', step_m3: 2 * 0.003785411784 },
    'gal-5': { system: 'in', step_m3: 5 * 0.003785411784 },
    'gal-10': { system: 'in', step_m3: 10 * 0.003785411784 },
  },
})
