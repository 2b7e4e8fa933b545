import { table } from './table.ts'

/** What a day of the solution is reckoned with where the plan cannot say it better. */
export const heatPractice = table({
  title: 'A day of the solution',
  columns: { value: 'value in the unit of the row', unit: 'unit' },
  source: 'common-practice',
  rows: {
    swing: {
      value: 11,
      unit: 'K',
      note: 'air from the night to the afternoon of a clear day; 8 by the sea, 15 inland',
    },
    warmestAt: { value: 54_000, unit: 's', note: 'three in the afternoon by the sun' },
    diffuseShare: { value: 0.2, unit: '1', source: 'from-memory', note: 'of the clear sun on level ground' },
    groundAlbedo: { value: 0.2, unit: '1', source: 'from-memory', note: 'sun thrown back by floor or ground' },
    leastSunHeight: { value: 0.1, unit: '1', note: 'sine of the lowest sun that passes houses and rails' },
    tankWall: { value: 0.003, unit: 'm', note: 'wall of a tote or pail' },
    mouthOpen: { value: 0.2, unit: '1', note: 'share of the mouths of the stubs through which the column breathes' },
    bottles: { value: 2, unit: 'count', note: 'frozen bottles put in each hot day' },
    bottle: { value: 1, unit: 'kg', note: 'ice in one bottle' },
    freezer: { value: -18, unit: 'C', note: 'of a household' },
    bottlesAt: { value: 39_600, unit: 's', note: 'eleven in the morning by the sun' },
    sleeve: { value: 0.02, unit: 'm', note: 'foam put round a tank' },
    rootDryShare: { value: 0.05, unit: '1', source: 'from-memory', note: 'dry mass over mass of wet roots' },
    cropFactor: {
      value: 1,
      unit: '1',
      source: 'Allen1998.FAO56',
      note: 'small vegetables and lettuce in mid season; a plant lit from the side takes more',
    },
  },
})

/** Temperatures of the root zone of leafy crops. */
export const rootZone = table({
  title: 'Solution for leafy crops',
  columns: { low_C: 'lower end', high_C: 'upper end' },
  source: 'common-practice',
  rows: {
    wanted: { low_C: 18, high_C: 25, note: 'growth at its pace, roots that breathe' },
    bearable: { low_C: 8, high_C: 30, note: 'below growth stands still; above roots turn brown within days' },
    frost: { low_C: 0, high_C: 2, note: 'water freezes; air that may freeze a hose' },
  },
})
