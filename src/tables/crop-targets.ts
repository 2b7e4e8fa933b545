import { extensionTargets } from './crop-targets/extension.ts'
import { practiceTargets } from './crop-targets/practice.ts'
import { testedTargets } from './crop-targets/tested.ts'
import { table } from './table.ts'

/** Strength and pH by crop and stage. 1 mS/cm is 0.1 S/m. */
export const cropTargets = table({
  title: 'Strength and pH by crop',
  columns: {
    crop: 'crop',
    stage: 'stage of the crop, or what the range means',
    low_S_m: 'lowest EC at 25 °C',
    high_S_m: 'highest EC at 25 °C',
    lowPh: 'lowest pH, or null where the source names none',
    highPh: 'highest pH, or null',
    feed: 'published feed whose proportions suit, chosen by us',
  },
  source: 'common-practice',
  rows: { ...testedTargets, ...extensionTargets, ...practiceTargets },
})

export type CropTarget = keyof typeof cropTargets.rows

/** Window that a tank keeps whatever its crop: iron, manganese and calcium phosphate set the ends. */
export const workingPh = table({
  title: 'pH window of a running tank',
  columns: { low: 'lower end, pH', high: 'upper end, pH' },
  source: 'common-practice',
  rows: { alarm: { low: 5, high: 6.8 }, target: { low: 5.6, high: 6.2 } },
})
