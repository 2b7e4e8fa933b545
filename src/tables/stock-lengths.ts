import { table } from './table.ts'

const FOOT_m = 0.3048

/** Lengths in which pipe is sold. A length with a socket loses the depth of the socket unless the socket is used. */
export const stockLengths = table({
  title: 'Purchase lengths',
  columns: {
    country: 'ISO 3166 code, EU or GCC',
    standards: 'standards of pipe sold so, with a comma between',
    length_m: 'length',
    retail: 'whether it is a length for the shelf of a shop rather than for the trade',
    socketLow_m: 'least that a socket takes or adds; 0 where there is none',
    socketHigh_m: 'most that a socket takes or adds; 0 where there is none',
  },
  source: 'common-practice',
  // biome-ignore format: one row a line
  rows: {
    'us-2ft': { country: 'US', standards: 'ASTM D1785,ASTM D2665', length_m: 2 * FOOT_m, retail: true, socketLow_m: 0, socketHigh_m: 0 },
    'us-5ft': { country: 'US', standards: 'ASTM D1785,ASTM D2665', length_m: 5 * FOOT_m, retail: true, socketLow_m: 0, socketHigh_m: 0 },
    'us-10ft': { country: 'US', standards: 'ASTM D1785,ASTM D2665', length_m: 10 * FOOT_m, retail: true, socketLow_m: 0, socketHigh_m: 0 },
    'us-20ft': { country: 'US', standards: 'ASTM D1785,ASTM D2665', length_m: 20 * FOOT_m, retail: false, socketLow_m: 0, socketHigh_m: 0 },
    'us-sewer-10ft': { country: 'US', standards: 'ASTM D3034,ASTM D2729', length_m: 10 * FOOT_m, retail: true, socketLow_m: 0.075, socketHigh_m: 0.115, note: 'the bell adds to the length' },
    'us-sewer-13ft': { country: 'US', standards: 'ASTM D3034,ASTM D2729', length_m: 13 * FOOT_m, retail: false, socketLow_m: 0.075, socketHigh_m: 0.115, source: 'Stock.sewer-US', note: 'the bell adds to the length' },
    'us-sewer-14ft': { country: 'US', standards: 'ASTM D3034,ASTM D2729', length_m: 14 * FOOT_m, retail: false, socketLow_m: 0.075, socketHigh_m: 0.115, source: 'Stock.sewer-US', note: 'the bell adds to the length' },
    'us-sewer-20ft': { country: 'US', standards: 'ASTM D3034,ASTM D2729', length_m: 20 * FOOT_m, retail: false, socketLow_m: 0.075, socketHigh_m: 0.115, source: 'Stock.sewer-US', note: 'the bell adds to the length' },
    'jp-4m': { country: 'JP', standards: 'JIS K 6741', length_m: 4, retail: false, socketLow_m: 0, socketHigh_m: 0, source: 'JIS.K6741' },
    'jp-5m': { country: 'JP', standards: 'JIS K 6741', length_m: 5, retail: false, socketLow_m: 0, socketHigh_m: 0, source: 'from-memory', note: 'rarer' },
    'au-1m': { country: 'AU', standards: 'AS/NZS 1260,AS/NZS 1477', length_m: 1, retail: true, socketLow_m: 0, socketHigh_m: 0 },
    'au-3m': { country: 'AU', standards: 'AS/NZS 1260,AS/NZS 1477', length_m: 3, retail: true, socketLow_m: 0, socketHigh_m: 0 },
    'au-6m': { country: 'AU', standards: 'AS/NZS 1260,AS/NZS 1477', length_m: 6, retail: false, socketLow_m: 0, socketHigh_m: 0, source: 'Stock.AU' },
    'eu-0.5m': { country: 'EU', standards: 'EN 1401-1', length_m: 0.5, retail: true, socketLow_m: 0.06, socketHigh_m: 0.115, source: 'Stock.EN.1401', note: 'socket depth of 110 pipe, common practice' },
    'eu-1m': { country: 'EU', standards: 'EN 1401-1', length_m: 1, retail: true, socketLow_m: 0.06, socketHigh_m: 0.115, source: 'Stock.EN.1401', note: 'socket depth of 110 pipe, common practice' },
    'eu-2m': { country: 'EU', standards: 'EN 1401-1', length_m: 2, retail: true, socketLow_m: 0.06, socketHigh_m: 0.115, source: 'Stock.EN.1401', note: 'socket depth of 110 pipe, common practice' },
    'eu-3m': { country: 'EU', standards: 'EN 1401-1', length_m: 3, retail: false, socketLow_m: 0.06, socketHigh_m: 0.115, source: 'Stock.EN.1401', note: 'socket depth of 110 pipe, common practice' },
    'eu-6m': { country: 'EU', standards: 'EN 1401-1', length_m: 6, retail: false, socketLow_m: 0.06, socketHigh_m: 0.115, source: 'Stock.EN.1401', note: 'socket depth of 110 pipe, common practice' },
    'fr-2m': { country: 'FR', standards: 'EN 1329-1', length_m: 2, retail: true, socketLow_m: 0, socketHigh_m: 0 },
    'fr-4m': { country: 'FR', standards: 'EN 1329-1', length_m: 4, retail: false, socketLow_m: 0, socketHigh_m: 0, source: 'Stock.FR' },
    'gb-3m': { country: 'GB', standards: 'EN 1329-1,EN 1401-1', length_m: 3, retail: true, socketLow_m: 0, socketHigh_m: 0 },
    'gb-4m': { country: 'GB', standards: 'EN 1329-1,EN 1401-1', length_m: 4, retail: false, socketLow_m: 0, socketHigh_m: 0 },
    'gb-6m': { country: 'GB', standards: 'EN 1329-1,EN 1401-1', length_m: 6, retail: false, socketLow_m: 0, socketHigh_m: 0 },
    'gulf-4m': { country: 'GCC', standards: 'ASTM D1785,ASTM D2665', length_m: 4, retail: false, socketLow_m: 0, socketHigh_m: 0, source: 'ASTM.D1785.limits' },
    'gulf-5.8m': { country: 'GCC', standards: 'ASTM D1785,ASTM D2665', length_m: 5.8, retail: false, socketLow_m: 0, socketHigh_m: 0, source: 'ASTM.D1785.limits' },
    'gulf-6m': { country: 'GCC', standards: 'ASTM D1785,ASTM D2665', length_m: 6, retail: false, socketLow_m: 0, socketHigh_m: 0, source: 'ASTM.D1785.limits' },
    'in-3m': { country: 'IN', standards: 'IS 4985', length_m: 3, retail: true, socketLow_m: 0, socketHigh_m: 0 },
    'in-6m': { country: 'IN', standards: 'IS 4985', length_m: 6, retail: false, socketLow_m: 0, socketHigh_m: 0 },
  },
})

export type StockLengthId = keyof typeof stockLengths.rows
