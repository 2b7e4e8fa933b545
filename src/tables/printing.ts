import { table } from './table.ts'

const DEGREE_rad = Math.PI / 180

/** Sizes of printed aids: what a filament printer makes well and a hand can use. */
export const printedSizes = table({
  title: 'Sizes of printed aids',
  columns: { length_m: 'the size' },
  source: 'common-practice',
  rows: {
    'chord-error': { length_m: 0.00005, note: 'facets against the true surface; finer than a printer’s layer' },
    'guide-wall': { length_m: 0.003, note: 'sleeve and collar of a drilling guide' },
    'guide-play': { length_m: 0.0004, note: 'on the radius, between sleeve and pipe' },
    'guide-margin': { length_m: 0.014, note: 'sleeve left round the collar' },
    'guide-collar': { length_m: 0.015, note: 'shortest side of the collar that carries the angle' },
    'guide-step': { length_m: 0.01, note: 'lower edge of the sleeve stands a whole number of these below the mark' },
    'guide-notch': { length_m: 0.004, note: 'depth and half width of the notch that stands on the line' },
    'pin-hole': { length_m: 0.0019, note: 'across; a cut end of filament of 1.75 mm is the pin' },
    'pin-depth': { length_m: 0.003, note: 'into each cut face' },
    'pin-land': { length_m: 0.00035, note: 'least wall left beside a pin' },
    'gauge-width': { length_m: 0.03, note: 'across both pipes' },
    'gauge-long': { length_m: 0.07, note: 'height along the column, where the stub is long enough' },
    'ring-wall': { length_m: 0.004, note: 'ring that locates the foot' },
    'ring-play': { length_m: 0.0005, note: 'on the radius, between ring and foot' },
    'lid-sheet': { length_m: 0.004, note: 'lid of a round tank' },
    'lid-skirt': { length_m: 0.015, note: 'skirt that keeps the lid on the rim' },
    'lid-skirt-wall': { length_m: 0.003, note: 'its wall' },
    'lid-skirt-play': { length_m: 0.001, note: 'on the radius, between skirt and the inside of the rim' },
  },
})

/** How far a wall may lean out over nothing. */
export const printedOverhang = table({
  title: 'Overhang of printed parts',
  columns: { lean_rad: 'steepest lean from upright' },
  source: 'common-practice',
  rows: { 'without-support': { lean_rad: 45 * DEGREE_rad, note: 'filament laid in layers' } },
})
