import { table } from './table.ts'

/** Force coefficient of an upright pipe by slenderness; D √q up to 5.3 (m √Pa), which every growing column keeps. */
export const roundPipeForce = table({
  title: 'Force coefficient of a round stack, rough or small',
  columns: { slenderness: 'height over diameter', forceCoefficient: 'force over pressure and projected area' },
  source: 'ASCE.7',
  rows: {
    stub: { slenderness: 1, forceCoefficient: 0.7 },
    middle: { slenderness: 7, forceCoefficient: 0.8 },
    slender: { slenderness: 25, forceCoefficient: 1.2 },
  },
})

/** Drag of a free cylinder at low Reynolds number, a second opinion on the row above. */
export const cylinderDrag = table({
  title: 'Drag of a finite cylinder, subcritical flow',
  columns: { slenderness: 'length over diameter', dragCoefficient: 'drag over dynamic pressure and projected area' },
  source: 'White.FluidMechanics',
  rows: {
    '1': { slenderness: 1, dragCoefficient: 0.64 },
    '2': { slenderness: 2, dragCoefficient: 0.68 },
    '3': { slenderness: 3, dragCoefficient: 0.72 },
    '5': { slenderness: 5, dragCoefficient: 0.74 },
    '10': { slenderness: 10, dragCoefficient: 0.82 },
    '20': { slenderness: 20, dragCoefficient: 0.91 },
    '40': { slenderness: 40, dragCoefficient: 0.98 },
  },
})

/** Leaves give way in the wind; nobody has measured a leafy column. */
export const canopyDrag = table({
  title: 'Drag coefficient on the outline of the canopy',
  columns: {
    low: 'lowest drag coefficient',
    high: 'highest drag coefficient',
    safe: 'drag coefficient for the check of tipping',
  },
  source: 'from-memory',
  rows: {
    leafy: { low: 0.4, high: 1, safe: 1, note: 'foliage 0.4 to 0.7; 1.0 keeps a full, wet canopy on the safe side' },
  },
})

/** Ground around the place. */
export const exposures = table({
  title: 'Share of the open-country gust pressure near the ground',
  columns: { pressureShare: 'velocity pressure exposure coefficient below 4.6 m' },
  source: 'ASCE.7',
  rows: {
    town: { pressureShare: 0.57, note: 'exposure B: houses, trees' },
    open: { pressureShare: 0.85, note: 'exposure C: open land' },
    shore: { pressureShare: 1.03, note: 'exposure D: beside open water' },
    measured: { pressureShare: 1, source: 'common-practice', note: 'the gust was measured where the tower stands' },
  },
})

/** Force coefficient of a tank that stands on the floor. */
export const tankForce = table({
  title: 'Force coefficient of a tank on the floor',
  columns: { forceCoefficient: 'force over pressure and projected area, height about as width' },
  source: 'ASCE.7',
  rows: {
    rectangular: { forceCoefficient: 1.3, note: 'figure 29.4-1, square, wind on a face, h/D = 1' },
    round: { forceCoefficient: 0.7, note: 'figure 29.4-1, round, h/D = 1' },
  },
})
