/**
 * How each number of the plan came about: read from a tape, a box, a pen, or chosen. It stands here once for all
 * fields; how far such a reading may be off stands in `tables/readings.ts`. `_` is any entry of a list or map.
 */
import type { Reading } from '../tables/readings.ts'

/** By kind of reading, the fields that are read in that way; a map or list named here is off as a whole. */
export const readings: Readonly<
  Record<Exclude<Reading, 'pipeOutside' | 'pipeWall' | 'tankOfTable'>, readonly string[]>
> = {
  tape: [
    ...['place/ceiling', 'place/floorLength', 'place/floorWidth', 'place/boardLength', 'place/boardWidth'],
    ...['reservoir/lidHeight', 'reservoir/outsideLength', 'reservoir/outsideWidth', 'reservoir/insulation'],
    ...['pump/height', 'pump/tests/_/outletHeight'],
    ...['riser/length', 'riser/outletHeight', 'riser/header/length', 'riser/header/spacing', 'riser/drops/length'],
    ...['riser/columns/_/outletHeight', 'riser/columns/_/dropLength'],
    ...['riser/branches/_/length', 'riser/branches/_/outletHeight'],
    ...['distributor/circle', 'distributor/diameter', 'distributor/depth', 'distributor/overflowHeight'],
    ...['column/length', 'column/sites/pitch', 'column/sites/rise', 'column/sites/first'],
    ...['column/stub/lowerSide', 'column/stub/insertion', 'column/stub/offset'],
    ...['column/pocket/slit', 'column/fitting/layingLength', 'column/fitting/between', 'column/fitting/socket'],
    ...['column/fitting/branchAt', 'column/base/ringDepth', 'column/base/footWidth', 'column/base/strapHeight'],
    ...['drain/length', 'drain/fall', 'lamps/length', 'stock/lengths/_/length', 'tools/barAcross', 'tools/barUp'],
    ...['measured/columnCircumference', 'measured/stubCircumference', 'measured/sites/_/height'],
  ],
  caliper: [
    ...['reservoir/lidThickness', 'distributor/thickness', 'distributor/overflow', 'drain/bore'],
    ...['column/cup/rim', 'column/cup/body', 'column/cup/foot', 'column/cup/depth', 'column/pocket/former'],
    ...['riser/fittings/_/bore', 'riser/branches/_/fittings/_/bore'],
    ...['measured/columnWall', 'measured/stubWall', 'stock/kerf'],
  ],
  drill: ['distributor/hole', 'drain/hole', 'tools/holeSaws/_'],
  level: ['reservoir/fillLine', 'reservoir/lowLine', 'reservoir/marks/_/level'],
  hoseBore: [
    'riser/bore',
    'riser/header/bore',
    'riser/drops/bore',
    'riser/columns/_/dropBore',
    'riser/branches/_/bore',
  ],
  angle: ['column/stub/angle', 'column/stub/mouthTilt', 'measured/sites/_/angle'],
  bearing: ['place/faces', 'column/sites/bearing', 'column/sites/turn', 'column/sites/divergence', 'distributor/turn'],
  altitude: ['place/altitude'],
  pour: [
    ...[
      'reservoir/fillVolume',
      'reservoir/lowVolume',
      'reservoir/marks/_/volume',
      'pump/tests/_/volume',
      'pump/volume',
    ],
    ...['feed/batch', 'feed/stock/volume', 'feed/sanitiser/volume', 'feed/topUp', 'water/sources/_/share'],
  ],
  stopwatch: ['pump/tests/_/time'],
  weighed: ['reservoir/mass', 'column/base/ballast', 'reservoir/ice/mass', 'feed/shelf/_/onHand'],
  pumpBox: ['pump/maxHead', 'pump/maxFlow'],
  pumpCurve: ['pump/curve'],
  ratedPower: ['pump/power', 'lamps/power', 'pump/battery/current'],
  label: ['reservoir/airStone', 'lamps/efficacy', 'pump/battery/charge', 'pump/noise', 'column/base/strapLoad'],
  fitting: [
    ...['riser/losses', 'riser/valveLosses', 'riser/header/losses', 'riser/drops/losses'],
    ...['riser/columns/_/dropLosses', 'riser/columns/_/valveLosses'],
    ...['riser/branches/_/losses', 'riser/branches/_/valveLosses'],
  ],
  gust: ['place/gust'],
  air: ['place/airLow', 'place/airHigh', 'place/hotNight'],
  thermometer: ['feed/temperature', 'feed/stock/storage'],
  humidity: ['place/humidity'],
  sun: ['place/sun'],
  byEye: ['column/sites/across', 'column/sites/canopy', 'crops/_/canopy', 'reservoir/buried', 'pump/worn'],
  harvest: ['crops/_/mass'],
  thirst: ['crops/_/thirst'],
  age: ['column/sites/oldest'],
  waterReport: [
    ...['water/sources/_/analysis/alkalinity', 'water/sources/_/analysis/alkalinityAsCaCO3'],
    ...['water/sources/_/analysis/ions/_', 'water/sources/_/analysis/asElement/_'],
    'water/sources/_/analysis/equivalents/_',
  ],
  waterConductivity: ['water/sources/_/analysis/conductivity'],
  waterPh: ['water/sources/_/analysis/pH'],
  waterHardness: ['water/sources/_/analysis/hardnessGerman'],
  bag: ['feed/shelf/_/label', 'feed/shelf/_/purity'],
  liquid: ['feed/shelf/_/strength', 'feed/sanitiser/strength'],
  ecPen: ['feed/conductivity'],
  phPen: ['feed/pH'],
  price: ['stock/lengths/_/price', 'feed/shelf/_/price', 'prices/_'],
}

/** Numbers that are chosen, printed of themselves, or allowances already: they are not off. */
export const chosen: readonly string[] = [
  ...['rootfall', 'place/latitude', 'place/longitude', 'place/floorLimit', 'place/walkRound', 'place/reach'],
  ...['reservoir/freeboard', 'reservoir/ice/at/_', 'reservoir/gap', 'reservoir/mesh'],
  ...['pump/minimumDepth', 'pump/timerOn', 'pump/timerOff', 'pump/powerCut'],
  ...['pump/battery/voltage', 'pump/battery/inverter', 'riser/neededFlow', 'distributor/clogged', 'distributor/tilt'],
  ...['column/topMargin', 'column/stub/gap', 'column/pocket/strain', 'drain/clogged', 'lamps/hours'],
  ...['feed/targets/_', 'feed/limits/_', 'feed/within', 'feed/ammoniumShare', 'feed/shelf/_/density'],
  ...['feed/shelf/_/pack', 'feed/stock/strength', 'feed/scale', 'feed/fineScale', 'feed/penCalibrated'],
  ...['feed/penCompensation', 'feed/penDrift', 'stock/trim', 'tools/paperThickness', 'tools/bed'],
]

const byPath = new Map(Object.entries(readings).flatMap(([kind, paths]) => paths.map((p) => [p, kind as Reading])))

/** How the number at a path of the field definitions came about; null where it is chosen. */
export const readingAt = (pattern: string): Reading | null =>
  byPath.get(pattern) ?? byPath.get(pattern.replace(/[^/]+$/, '_')) ?? null
