import { plantThirst } from './canopy.ts'
import { feedTolerances } from './feed-practice.ts'
import { table } from './table.ts'

const grown = plantThirst.rows['leafy-mature']
const thirstShare = (grown.high_m3_d - grown.low_m3_d) / (grown.high_m3_d + grown.low_m3_d)
const { label, liquid, analysis, conductivityPen } = feedTolerances.rows

/**
 * How far a number of the plan may be off, by how it came about: a share of the number and an amount beside it, below
 * and above. What tells more of a plan's own reading outranks its row: the finest mark of the tape is added to `tape`,
 * the age of the pen's calibration stands for `phPen`.
 */
export const readingBands = table({
  title: 'How far a reading may be off',
  columns: {
    lowShare: 'share of the reading by which the truth may lie below it',
    highShare: 'share of the reading by which the truth may lie above it',
    low: 'the same as an amount, below',
    high: 'the same as an amount, above',
    unit: 'unit of both amounts',
  },
  source: 'common-practice',
  // biome-ignore format: one row a line
  rows: {
    tape: { lowShare: 0.0002, highShare: 0.0002, low: 0.0003, high: 0.0003, unit: 'm', source: 'EU.2014-32.MI-008', note: 'half of the tape’s finest mark is added' },
    caliper: { lowShare: 0, highShare: 0, low: 0.0001, high: 0.0001, unit: 'm', note: 'a shop caliper on plastic' },
    drill: { lowShare: 0, highShare: 0, low: 0.0001, high: 0.0001, unit: 'm', note: 'a hole in plastic against the drill' },
    level: { lowShare: 0, highShare: 0, low: 0.002, high: 0.002, unit: 'm', note: 'a line on a tank, read with the water moving' },
    hoseBore: { lowShare: 0, highShare: 0, low: 0.0005, high: 0.0005, unit: 'm', source: 'from-memory', note: 'bore of a soft hose against its print' },
    pipeOutside: { lowShare: 0, highShare: 0.003, low: 0, high: 0, unit: 'm', source: 'from-memory', note: 'pipe standards allow a little above the nominal outside and nothing below' },
    pipeWall: { lowShare: 0, highShare: 0.1, low: 0, high: 0.0002, unit: 'm', source: 'from-memory', note: 'tables print the least wall; standards allow a tenth and 0.2 mm above' },
    tankOfTable: { lowShare: 0.02, highShare: 0.02, low: 0, high: 0, unit: 'm', note: 'inside of a tank of that name, not measured' },
    angle: { lowShare: 0, highShare: 0, low: Math.PI / 180, high: Math.PI / 180, unit: 'rad', note: 'one degree on a saw or an angle gauge' },
    bearing: { lowShare: 0, highShare: 0, low: Math.PI / 18, high: Math.PI / 18, unit: 'rad', note: 'ten degrees: a telephone’s compass near steel' },
    altitude: { lowShare: 0, highShare: 0, low: 10, high: 10, unit: 'm', note: 'from a map' },
    pour: { lowShare: 0.03, highShare: 0.03, low: 0, high: 0, unit: 'm3', note: 'pail or bucket filled to its mark' },
    stopwatch: { lowShare: 0, highShare: 0, low: 0.3, high: 0.3, unit: 's', note: 'start and stop by hand' },
    weighed: { lowShare: 0.02, highShare: 0.02, low: 0, high: 0, unit: 'kg', note: 'household scale' },
    pumpBox: { lowShare: 0.1, highShare: 0.1, low: 0, high: 0, unit: '1', note: 'head and flow printed on a small pump’s box' },
    pumpCurve: { lowShare: 0.07, highShare: 0.07, low: 0, high: 0, unit: 'm', source: 'ISO.9906', note: 'heads of a maker’s curve' },
    ratedPower: { lowShare: 0.2, highShare: 0.2, low: 0, high: 0, unit: 'W', source: 'IEC.60335-1', note: 'the standard limits the upper side; below it the same is taken' },
    label: { lowShare: 0.2, highShare: 0.2, low: 0, high: 0, unit: '1', note: 'a figure printed for sale: air pump, lamp, battery' },
    fitting: { lowShare: 0.25, highShare: 0.25, low: 0, high: 0, unit: '1', source: 'from-memory', note: 'loss coefficients of the same fitting by different makers' },
    gust: { lowShare: 0.2, highShare: 0.2, low: 0, high: 0, unit: 'm_s', note: 'a guess, or the gust of the nearest station' },
    air: { lowShare: 0, highShare: 0, low: 2, high: 2, unit: 'C', note: 'air of a place on its hottest and coldest day, guessed' },
    thermometer: { lowShare: 0, highShare: 0, low: 1, high: 1, unit: 'C', note: 'pocket thermometer' },
    humidity: { lowShare: 0, highShare: 0, low: 0.1, high: 0.1, unit: '1', note: 'guessed, or by a household hygrometer' },
    sun: { lowShare: 0, highShare: 0, low: 0.15, high: 0.15, unit: '1', note: 'share of the open sky, by eye' },
    byEye: { lowShare: 0.15, highShare: 0.15, low: 0, high: 0, unit: '1', note: 'a width or a share judged by eye' },
    harvest: { lowShare: 0.2, highShare: 0.2, low: 0, high: 0, unit: 'kg', note: 'mass of one plant, before it was ever weighed' },
    thirst: { lowShare: thirstShare, highShare: thirstShare, low: 0, high: 0, unit: 'm3_d', note: 'half the band of a grown leafy plant over its middle' },
    age: { lowShare: 0, highShare: 0, low: 7, high: 7, unit: 'd', note: 'a week earlier or later to harvest' },
    waterReport: { lowShare: analysis.share, highShare: analysis.share, low: 0, high: 0, unit: 'g_m3', note: 'an ion of a report, and its alkalinity' },
    waterConductivity: { lowShare: 0.2, highShare: 0.2, low: 0, high: 0, unit: 'S_m', source: 'EU.2020-2184' },
    waterPh: { lowShare: 0, highShare: 0, low: 0.2, high: 0.2, unit: '1', source: 'EU.2020-2184' },
    waterHardness: { lowShare: 0, highShare: 0, low: 0.5, high: 0.5, unit: '1', note: 'half a drop of a drop test, °dH' },
    bag: { lowShare: label.share, highShare: label.share, low: 0, high: 0, unit: '1', note: 'what a bag holds of what is printed on it' },
    liquid: { lowShare: liquid.share, highShare: liquid.share, low: 0, high: 0, unit: '1', note: 'strength of an acid or liquid' },
    ecPen: { lowShare: conductivityPen.share, highShare: conductivityPen.share, low: 0, high: 0, unit: 'S_m', note: 'pocket conductivity pen, calibrated' },
    phPen: { lowShare: 0, highShare: 0, low: 0.1, high: 0.1, unit: '1', note: 'pocket pH pen, calibrated this month' },
    price: { lowShare: 0.1, highShare: 0.1, low: 0, high: 0, unit: 'money', note: 'from shop to shop' },
  },
})

/** How a number of the plan came about. */
export type Reading = keyof typeof readingBands.rows

/** Where the telling stops. */
export const swingPractice = table({
  title: 'Practice of telling what matters',
  columns: { value: 'value in the unit of the row', unit: 'unit' },
  source: 'common-practice',
  rows: {
    told: {
      value: 0.2,
      unit: '1',
      note: 'readings that move a result by less than this share of the greatest are summed up',
    },
    feltTemperature: {
      value: 5,
      unit: 'C',
      note: 'a change that surely calls for another act; other results are held against their own size',
    },
    feltPh: { value: 0.5, unit: '1', note: 'as above' },
    named: { value: 4, unit: 'count', note: 'readings named for one result at most' },
  },
})
