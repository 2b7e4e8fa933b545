import { table } from './table.ts'

/** Net cups. No standard exists: the bands show what is sold; the cup in hand must be measured. */
export const cups = table({
  title: 'Net cups',
  columns: {
    nominal: 'size as the trade names it',
    rimLow_m: 'smallest outside diameter over the rim',
    rimHigh_m: 'largest outside diameter over the rim',
    bodyTopLow_m: 'smallest outside diameter of the body just under the rim',
    bodyTopHigh_m: 'largest outside diameter of the body just under the rim',
    bodyFootLow_m: 'smallest outside diameter at the foot',
    bodyFootHigh_m: 'largest outside diameter at the foot',
    depthLow_m: 'smallest depth under the rim',
    depthHigh_m: 'largest depth under the rim',
  },
  source: 'common-practice',
  // biome-ignore format: one row a line
  rows: {
    'cup-50': { nominal: '2 in (50 mm)', rimLow_m: 0.05, rimHigh_m: 0.057, bodyTopLow_m: 0.044, bodyTopHigh_m: 0.048, bodyFootLow_m: 0.03, bodyFootHigh_m: 0.036, depthLow_m: 0.048, depthHigh_m: 0.055 },
    'cup-65': { nominal: '2.5 in (65 mm)', rimLow_m: 0.064, rimHigh_m: 0.07, bodyTopLow_m: 0.056, bodyTopHigh_m: 0.06, bodyFootLow_m: 0.04, bodyFootHigh_m: 0.045, depthLow_m: 0.05, depthHigh_m: 0.062 },
    'cup-75': { nominal: '3 in (75 mm)', rimLow_m: 0.08, rimHigh_m: 0.09, bodyTopLow_m: 0.07, bodyTopHigh_m: 0.075, bodyFootLow_m: 0.046, bodyFootHigh_m: 0.054, depthLow_m: 0.065, depthHigh_m: 0.078 },
    'cup-95': { nominal: '3.75 in (95 mm)', rimLow_m: 0.103, rimHigh_m: 0.11, bodyTopLow_m: 0.092, bodyTopHigh_m: 0.097, bodyFootLow_m: 0.06, bodyFootHigh_m: 0.068, depthLow_m: 0.078, depthHigh_m: 0.098 },
    'cup-125': { nominal: '5 in (125 mm)', rimLow_m: 0.135, rimHigh_m: 0.145, bodyTopLow_m: 0.12, bodyTopHigh_m: 0.127, bodyFootLow_m: 0.08, bodyFootHigh_m: 0.095, depthLow_m: 0.09, depthHigh_m: 0.115 },
    'cup-150': { nominal: '6 in (150 mm)', rimLow_m: 0.16, rimHigh_m: 0.17, bodyTopLow_m: 0.142, bodyTopHigh_m: 0.15, bodyFootLow_m: 0.1, bodyFootHigh_m: 0.115, depthLow_m: 0.11, depthHigh_m: 0.145 },
  },
})

export type CupId = keyof typeof cups.rows
