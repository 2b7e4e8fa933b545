import { table } from './table.ts'

const DEGREE_rad = Math.PI / 180

/** What a saw takes away, and how square and how true it cuts. */
export const kerfs = table({
  title: 'Saws',
  columns: {
    kerfLow_m: 'narrowest kerf',
    kerfHigh_m: 'widest kerf',
    squareness_rad: 'error of a square cut to be expected; null where the tool makes no square cuts',
    line_m: 'distance from a drawn line to be expected, freehand; null where it follows none',
    depthLow_m: 'depth of cut, least; null where the pipe is no limit',
    depthHigh_m: 'depth of cut, greatest',
  },
  source: 'common-practice',
  // biome-ignore format: one row a line
  rows: {
    'mitre-saw': { kerfLow_m: 0.0032, kerfHigh_m: 0.0032, squareness_rad: 0.3 * DEGREE_rad, line_m: null, depthLow_m: null, depthHigh_m: null, source: 'Kerf.saws', note: 'powered, full-kerf blade; squareness common practice' },
    'mitre-saw-thin': { kerfLow_m: 0.001, kerfHigh_m: 0.0022, squareness_rad: 0.3 * DEGREE_rad, line_m: null, depthLow_m: null, depthHigh_m: null, source: 'Kerf.saws', note: 'powered, thin-kerf blade; squareness common practice' },
    'mitre-box': { kerfLow_m: 0.001, kerfHigh_m: 0.0018, squareness_rad: 1 * DEGREE_rad, line_m: null, depthLow_m: null, depthHigh_m: null },
    'hand-saw': { kerfLow_m: 0.001, kerfHigh_m: 0.0018, squareness_rad: 3 * DEGREE_rad, line_m: null, depthLow_m: null, depthHigh_m: null, note: '2 to 3 degrees' },
    hacksaw: { kerfLow_m: 0.0008, kerfHigh_m: 0.001, squareness_rad: 3 * DEGREE_rad, line_m: null, depthLow_m: null, depthHigh_m: null, note: '2 to 3 degrees' },
    jigsaw: { kerfLow_m: 0.0012, kerfHigh_m: 0.0015, squareness_rad: null, line_m: 0.001, depthLow_m: null, depthHigh_m: null },
    'band-saw': { kerfLow_m: 0.0006, kerfHigh_m: 0.001, squareness_rad: null, line_m: null, depthLow_m: null, depthHigh_m: null },
    'hole-saw': { kerfLow_m: 0.002, kerfHigh_m: 0.003, squareness_rad: null, line_m: null, depthLow_m: 0.038, depthHigh_m: 0.048 },
  },
})

export type SawId = keyof typeof kerfs.rows
