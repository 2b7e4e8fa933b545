/** Rules of the trade that serve as limits. An end that the rule leaves open is null. */
import { type RowNotes, table } from './table.ts'

type Limits<Column extends string> = Readonly<Record<string, Readonly<Record<Column, number | null>> & RowNotes>>

const DEGREE_rad = Math.PI / 180
const MINUTE_s = 60
const HOUR_s = 3600

const lengths = {
  ligament: { low_m: 0.02, high_m: null, note: 'wall left between two holes; at least 4 walls as well' },
  'ring-web': {
    low_m: 0.025,
    high_m: null,
    note: 'wall left between holes of one ring; a quarter of the arc pitch too',
  },
  'top-margin': { low_m: 0.06, high_m: 0.1, note: 'highest hole edge below the spray head: least, and comfortable' },
  'cement-gap': { low_m: null, high_m: 0.0003, note: 'solvent cement does not fill wider gaps' },
  'heavy-cement-gap': { low_m: null, high_m: 0.0005, note: 'heavy-bodied, gap-filling cement; a fillet on wider gaps' },
  'glue-gap-radius': { low_m: 0.0002, high_m: 0.0005, note: 'on the radius of the stub, for the line of the hole' },
  'hole-edge': { low_m: 0, high_m: 0.0005, note: 'outside the drawn line' },
  'arc-position': { low_m: -0.001, high_m: 0.001, note: 'of a line round the pipe' },
  'mark-height': { low_m: -0.002, high_m: 0.002, note: 'of a site along the pipe' },
  'arc-closure': { low_m: -0.001, high_m: 0.001, note: 'sum of all arcs against the start mark' },
  'lip-height': { low_m: -0.003, high_m: 0.003, note: 'lips of one ring' },
  'check-bar': { low_m: -0.0005, high_m: 0.0005, note: 'of a printed bar of 100 mm' },
  'base-level': { low_m: null, high_m: 0.003, note: 'over the base' },
  'pipe-match': { low_m: 0, high_m: 0.0006, note: 'outside diameter from a circumference against a row of the table' },
  'standing-room': { low_m: 0.6, high_m: null, note: 'on every side that is tended' },
  'site-pitch': { low_m: 0.15, high_m: 0.2, note: 'between centres one above the other, leafy crops' },
  'cup-rim': {
    low_m: 0.003,
    high_m: null,
    note: 'rim diameter over the bore of the stub, so that the cup rests on it',
  },
  'lip-rise': {
    low_m: 0.03,
    high_m: 0.05,
    source: 'from-memory',
    note: 'lip over the low edge of the hole, against splashes: least, and comfortable; 90 mm at 35 degrees rises 52 mm',
  },
  'printed-bar': { low_m: 0.1, high_m: 0.1, note: 'the bar across and the bar up the page of a template' },
  'lid-hole': { low_m: 0.001, high_m: 0.001, note: 'hole for the column over its outside diameter' },
  'lid-filler': { low_m: 0.075, high_m: null, note: 'hole to fill through' },
  'lid-land': { low_m: 0.02, high_m: null, note: 'sheet lid over the rim of the reservoir' },
  'lid-sheet': { low_m: 0.003, high_m: 0.006, note: 'PVC, polyethylene or acrylic; plywood 12 mm' },
  chamfer: { low_m: 0.002, high_m: 0.003, note: 'at the end of a pipe before cement' },
  'factory-end': { low_m: 0.005, high_m: 0.005, note: 'cut off each end of a new length, and one kerf' },
  'starter-drill': { low_m: 0.006, high_m: 0.006, note: 'before a jigsaw' },
  'paper-thickness': { low_m: 0.0001, high_m: 0.0001, note: 'office paper; widens a wrap by its circumference' },
  'overlap-tab': { low_m: 0.01, high_m: 0.01, note: 'of a template that wraps round the pipe' },
  'tape-millimetre': { low_m: 0.001, high_m: 0.001, note: 'what a metric tape can be read to' },
  'tape-inch': { low_m: 0.0254 / 16, high_m: 0.0254 / 16, note: 'one sixteenth: what an inch tape can be read to' },
  'silicone-depth-per-day': { low_m: 0.002, high_m: 0.003, note: 'cured through in 24 h' },
  'slit-stop-hole': { low_m: 0.004, high_m: 0.006, note: 'at each end of a slit before heat' },
  'formed-wall': { low_m: 0.0015, high_m: null, note: 'left after stretching a pocket' },
  'heated-zone': { low_m: 0.06, high_m: 0.08, note: 'height that a heat gun softens for a pocket' },
} as const satisfies Limits<'low_m' | 'high_m'>

const ratios = {
  'ligament-walls': { low: 4, high: null, note: 'ligament over wall' },
  'ring-web-share': { low: 0.25, high: null, note: 'web over arc pitch of the ring' },
  'edge-walls': { low: 4, high: null, note: 'distance of a drilled hole from an edge over wall' },
  'drain-radii': { low: 1, high: null, note: 'lowest opening over drain or lid level, in radii of the stub' },
  'line-straight': { low: null, high: 0.001, note: 'deviation over length' },
  plumb: { low: null, high: 0.003, note: 'deviation over height of the column' },
  ovality: { low: 0.01, high: 0.03, note: 'of stored pipe, of the diameter' },
  'measured-wall': { low: 0.95, high: 1.25, source: 'from-memory', note: 'measured over minimum wall' },
  'computed-mass': {
    low: 1.07,
    high: 1.14,
    source: 'EN.1401',
    note: 'printed over computed mass, EN 1401 and JIS K 6741',
  },
  'computed-mass-inch': { low: 1.02, high: 1.05, source: 'ASTM.D1785', note: 'printed over computed mass, ASTM D1785' },
  'computed-mass-load': { low: 1.1, high: 1.1, note: 'multiply a computed mass by this for loads, never for buoyancy' },
  'foam-core-mass': {
    low: 0.65,
    high: 0.75,
    source: 'from-memory',
    note: 'foam core over solid wall, mass and strength',
  },
  'fit-to-page': { low: 0.94, high: 0.97, note: 'scale of a page that the printer fitted to its margins' },
  'paper-correction': { low: 0.97, high: 1.03, note: 'scale of a printer that a correction may cure' },
  stagger: {
    low: 0.5,
    high: 1,
    source: 'from-memory',
    note: 'turn from a site to the nearest line of the next ring, over half a step: the trade turns by the whole of it',
  },
  'square-cut-contact': { low: 0.3, high: 0.5, note: 'glue area of a square-cut hole over that of an axis cut' },
  'section-safety': { low: 3, high: null, note: 'on the section modulus of a drilled column' },
  'formed-stretch': { low: null, high: 0.3, note: 'strain of the lips of a pocket' },
  'slit-circumference': { low: 0.4, high: null, note: 'circumference left at a level with slits' },
  'pocket-pitch': { low: 2.5, high: 3, note: 'vertical pitch of pockets over the diameter of the former' },
  'cup-hole': {
    low: null,
    high: 0.7,
    note: 'round hole for a cup straight in the wall, over the diameter of the column',
  },
  'wye-pitch': {
    low: 3,
    high: 3.5,
    source: 'from-memory',
    note: 'laying length of a wye over the branch outside diameter',
  },
  'socket-dry-fit': {
    low: 1 / 3,
    high: 2 / 3,
    source: 'Cementing.guide',
    note: 'depth at which dry pipe tightens in a socket',
  },
  'pump-head': { low: null, high: 0.6, note: 'static lift over the greatest head on the box' },
  'spare-sites': { low: 0.1, high: 0.1, note: 'sites over need, for losses' },
  strap: { low: 2 / 3, high: 2 / 3, note: 'height of the strap over height of the column' },
} as const satisfies Limits<'low' | 'high'>

const angles = {
  'stub-angle': { low_rad: -2 * DEGREE_rad, high_rad: 2 * DEGREE_rad, note: 'of a glued stub against the drawing' },
  'stub-rise': { low_rad: 35 * DEGREE_rad, high_rad: 60 * DEGREE_rad, note: 'of a stub above level' },
  'chamfer-angle': {
    low_rad: 10 * DEGREE_rad,
    high_rad: 15 * DEGREE_rad,
    source: 'Cementing.guide',
    note: 'at the end of a pipe before cement',
  },
} as const satisfies Limits<'low_rad' | 'high_rad'>

const times = {
  'leak-hold': {
    low_s: 15 * MINUTE_s,
    high_s: null,
    source: 'LeakTest.drain',
    note: 'filled to the lowest lip, foot plugged',
  },
  'leak-run': { low_s: 24 * HOUR_s, high_s: null, note: 'pump at full flow over a tray, plain water' },
  'flush-run': { low_s: 30 * MINUTE_s, high_s: null, note: 'each of two fills of plain water, then discard' },
  'cement-work': { low_s: 15, high_s: 20, note: 'open time of solvent cement' },
  'cement-hold': { low_s: 30, high_s: null, source: 'Cementing.guide', note: 'held together after a quarter turn' },
  'cement-rest': { low_s: 5 * MINUTE_s, high_s: null, note: 'before the column is turned to the next stub' },
  'heat-gun': { low_s: MINUTE_s, high_s: 3 * MINUTE_s, note: 'moving, both sides of a slit' },
} as const satisfies Limits<'low_s' | 'high_s'>

const temperatures = {
  sawing: { low_C: 10, high_C: null, note: 'of the pipe, before sawing or drilling' },
  'former-release': { low_C: null, high_C: 50, note: 'of the pocket, before the former comes out' },
} as const satisfies Limits<'low_C' | 'high_C'>

const low = 'least value, or null where the rule has no lower end'
const high = 'greatest value, or null where the rule has no upper end'

export const practiceLengths = {
  ...table({
    title: 'Lengths by rule of the trade',
    columns: { low_m: low, high_m: high },
    source: 'common-practice',
    rows: lengths,
  }),
  rows: lengths,
}
export const practiceRatios = {
  ...table({
    title: 'Ratios by rule of the trade',
    columns: { low: `ratio: ${low}`, high: `ratio: ${high}` },
    source: 'common-practice',
    rows: ratios,
  }),
  rows: ratios,
}
export const practiceAngles = {
  ...table({
    title: 'Angles by rule of the trade',
    columns: { low_rad: low, high_rad: high },
    source: 'common-practice',
    rows: angles,
  }),
  rows: angles,
}
export const practiceTimes = {
  ...table({
    title: 'Times by rule of the trade',
    columns: { low_s: low, high_s: high },
    source: 'common-practice',
    rows: times,
  }),
  rows: times,
}
export const practiceTemperatures = {
  ...table({
    title: 'Temperatures by rule of the trade',
    columns: { low_C: low, high_C: high },
    source: 'common-practice',
    rows: temperatures,
  }),
  rows: temperatures,
}
