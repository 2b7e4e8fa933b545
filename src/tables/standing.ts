import { table } from './table.ts'

/** Rules by which a tower's stand is judged, where neither mechanics nor a standard draws the line. */
export const standingPractice = table({
  title: 'Standing of a tower',
  columns: { value: 'value in the unit of the row', unit: 'unit' },
  source: 'common-practice',
  rows: {
    lightStrap: {
      value: 300,
      unit: 'N',
      note: 'what a webbing strap on one screwed eye in sound wall or frame may carry in use; a crumbling wall holds less',
    },
    swayShare: { value: 1 / 30, unit: '1', note: 'movement of the top over the height: hose and cup still follow' },
    oldestWeek: { value: 5, unit: 'week', note: 'age at which leafy plants are cut' },
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
