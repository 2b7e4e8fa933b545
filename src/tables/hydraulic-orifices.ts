import { table } from './table.ts'

/** Discharge coefficients of holes: flow = Cd A √(2 g h). */
export const orificeDischarge = table({
  title: 'Discharge coefficients of holes',
  columns: { dischargeLow: 'low end [1]', dischargeUsual: 'usual [1]', dischargeHigh: 'high end [1]' },
  source: 'CECalc.orifice',
  rows: {
    sharpEdge: { dischargeLow: 0.61, dischargeUsual: 0.61, dischargeHigh: 0.62 },
    shortTube: { dischargeLow: 0.8, dischargeUsual: 0.8, dischargeHigh: 0.8 },
    projectingTube: { dischargeLow: 0.51, dischargeUsual: 0.51, dischargeHigh: 0.51 },
    rounded: { dischargeLow: 0.98, dischargeUsual: 0.98, dischargeHigh: 0.98 },
    overflowRim: {
      dischargeLow: 0.6,
      dischargeUsual: 0.6,
      dischargeHigh: 0.65,
      source: 'from-memory',
      note: 'round crest of an upright pipe, as a weir while shallow and as a mouth when deep',
    },
    drilledPlastic: {
      dischargeLow: 0.61,
      dischargeUsual: 0.61,
      dischargeHigh: 0.8,
      source: 'common-practice',
      note: 'wall about as thick as the hole is wide, no burr; the low end is the safe one for the head that is needed',
    },
  },
})

/** What distributors of growing columns are sized by in the trade. */
export const distributorPractice = table({
  title: 'Practice for distributor holes',
  columns: { value: 'value in the unit of the row', unit: 'unit' },
  source: 'common-practice',
  rows: {
    smallestHole: { value: 0.0025, unit: 'm', note: 'smaller holes clog within days' },
    cloggedShare: { value: 0.3, unit: '1', note: 'share of holes taken as blocked between two cleanings' },
    tiltAllowance: { value: Math.PI / 180, unit: 'rad', note: 'one degree out of level' },
  },
})

/** Jets and drops in the air. */
export const fallingWater = table({
  title: 'Jets and drops in the air',
  columns: { value: 'value in the unit of the row', unit: 'unit' },
  source: 'from-memory',
  rows: {
    jetSpeedShare: { value: 0.97, unit: '1', note: 'speed of a jet over that of Torricelli' },
    dropDrag: { value: 0.5, unit: '1', note: 'drag coefficient of drops of 2 to 5 mm, on their own diameter' },
    airDensity: { value: 1.2, unit: 'kg/m3', note: 'air at 20 °C near sea level' },
    dropOverJet: { value: 1.89, unit: '1', note: 'drops into which a jet breaks, over its diameter' },
    largestDrop: { value: 0.005, unit: 'm', note: 'larger ones break up in the air' },
    drillError: {
      value: (2 * Math.PI) / 180,
      unit: 'rad',
      source: 'common-practice',
      note: 'a hole drilled by hand stands so far from square',
    },
    splashNumber: { value: 57.7, unit: '1', source: 'Mundo1995' },
  },
})
