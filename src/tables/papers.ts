import { table } from './table.ts'

/** Sheets that people print on, upright. */
export const papers = table({
  title: 'Paper',
  columns: {
    width_m: 'width, upright',
    height_m: 'height, upright',
    marginLow_m: 'edge that a good printer leaves white',
    marginHigh_m: 'edge that a common printer leaves white',
  },
  source: 'ANSI.Y14.1',
  rows: {
    A4: { width_m: 0.21, height_m: 0.297, marginLow_m: 0.004, marginHigh_m: 0.006, source: 'ISO.216' },
    A3: { width_m: 0.297, height_m: 0.42, marginLow_m: 0.004, marginHigh_m: 0.006, source: 'ISO.216' },
    Letter: { width_m: 0.2159, height_m: 0.2794, marginLow_m: 0.004, marginHigh_m: 0.006 },
    Legal: { width_m: 0.2159, height_m: 0.3556, marginLow_m: 0.004, marginHigh_m: 0.006 },
    Tabloid: { width_m: 0.2794, height_m: 0.4318, marginLow_m: 0.004, marginHigh_m: 0.006 },
  },
})

export type PaperId = keyof typeof papers.rows
