import { value } from '../../kernel/published.ts'
import {
  fewestSticks,
  kerfAlong,
  mitreAllowance,
  mitreReach,
  oneWayLength,
  pairLength,
  stickCapacity,
  stubsPerStick,
} from './equations.ts'

const degrees = (n: number) => (n / 180) * Math.PI
const source = 'Stick.reckoning'
const why = 'printed to 0.001 mm'
const stub = { radius_m: 0.0301625, kerf_m: 0.0025 }
const at45 = { ...stub, length_m: 0.15, angle_rad: degrees(45) }
const at60 = { ...stub, length_m: 0.13, angle_rad: degrees(60) }
const exact = { within: 0, absolute: true, source, why: 'a whole number' }

/** Widths of the benchmark, each as often as it is wanted. */
const rolls = (
  [
    [1380, 22],
    [1520, 25],
    [1560, 12],
    [1710, 14],
    [1820, 18],
    [1880, 18],
    [1930, 20],
    [2000, 10],
    [2050, 12],
    [2100, 14],
    [2140, 16],
    [2150, 18],
    [2200, 20],
  ] as const
).flatMap(([width, count]) => Array.from({ length: count }, () => width / 1000))

export default [
  value(pairLength, { ...at45, first_m: 0.15, second_m: 0.15 }, 0.306036, {
    within: 5e-7,
    absolute: true,
    source,
    why,
  }),
  value(pairLength, { ...at60, first_m: 0.13, second_m: 0.13 }, 0.265387, {
    within: 5e-7,
    absolute: true,
    source,
    why,
  }),
  value(oneWayLength, at45, 0.186198, { within: 5e-7, absolute: true, source, why }),
  value(oneWayLength, at60, 0.152801, { within: 5e-7, absolute: true, source, why }),
  value(stubsPerStick, { ...at45, stock_m: 3 }, 19, exact),
  value(stubsPerStick, { ...at45, stock_m: 3.048 }, 19, exact),
  value(stubsPerStick, { ...at45, stock_m: 6 }, 39, exact),
  value(stubsPerStick, { ...at45, length_m: 0.18, stock_m: 3.048 }, 16, exact),
  value(kerfAlong, at45, 0.306036 - 0.3 - 0.0025, {
    within: 5e-7,
    absolute: true,
    source,
    why: `${why}, pair less stubs`,
  }),
  value(mitreReach, at60, 0.152801 - 0.13 - (0.265387 - 0.26), {
    within: 1e-6,
    absolute: true,
    source,
    why: `${why}, one-way length less half of what a pair adds twice`,
  }),
  value(
    mitreAllowance,
    { stubs_count: 18, parallel_count: 0, along_m: kerfAlong(at45), reach_m: mitreReach(at45), kerf_m: 0.0025 },
    9 * (0.306036 - 0.3),
    { within: 9 * 5e-7, absolute: true, source, why: `${why}, nine pairs` },
  ),
  value(stickCapacity, { length_m: 3, socket_m: 0, ends_count: 0, trim_m: 0, kerf_m: 0.0025 }, 3.0025, {
    within: 1e-12,
    source,
    why: 'exact: stock and one kerf',
  }),
  value(fewestSticks, { sizes_m: rolls, capacity_m: 5.6 }, 73, { ...exact, source: 'CuttingStock.benchmark' }),
]
