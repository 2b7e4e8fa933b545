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
    strongStrap: {
      value: 1000,
      unit: 'N',
      note: 'the same on a plate with several screws: the next size that is sold; whoever owns the wall decides',
    },
    swayShare: { value: 1 / 30, unit: '1', note: 'movement of the top over the height: hose and cup still follow' },
    oldestWeek: { value: 5, unit: 'week', note: 'age at which leafy plants are cut' },
  },
})
