import { table } from './table.ts'

/**
 * How far the roots of a leafy plant hang below their plug, by weeks since planting in the column. Nobody seems to have
 * measured roots by the day in such a column; what hangs in the bore at the weekly look knows better.
 */
export const rootLengths = table({
  title: 'Roots below the plug by week',
  columns: { week: 'count of weeks since planting', low_m: 'short end', high_m: 'long end' },
  source: 'from-memory',
  rows: {
    'week-0': { week: 0, low_m: 0, high_m: 0.03, note: 'planted when roots show through the plug' },
    'week-1': { week: 1, low_m: 0.03, high_m: 0.1 },
    'week-2': { week: 2, low_m: 0.08, high_m: 0.18 },
    'week-3': { week: 3, low_m: 0.14, high_m: 0.26 },
    'week-5': { week: 5, low_m: 0.22, high_m: 0.4 },
    'week-8': { week: 8, low_m: 0.3, high_m: 0.6 },
  },
})

/** Roots against those of a leafy plant of the same age, by kind of crop. */
export const rootVigours = table({
  title: 'Root mass by kind of crop',
  columns: { low: 'low end, over that of a leafy plant [1]', high: 'high end [1]' },
  source: 'common-practice',
  rows: {
    leafy: { low: 0.8, high: 1.2 },
    large: { low: 1.2, high: 2, note: 'chard, kale, celery and others that stand long' },
    herb: { low: 0.6, high: 1.2 },
    spreading: { low: 1.5, high: 2.5, note: 'mint and other runners' },
    fruiting: { low: 3, high: 5, note: 'fills a bore of 75 mm in about five weeks' },
    unlisted: { low: 0.6, high: 2, note: 'a crop that the table of crops does not have' },
  },
})

type Vigour = keyof typeof rootVigours.rows

/** Crops whose roots are not those of a leafy plant, by their name in the table of strengths. */
export const rootVigourOf: Readonly<Record<string, Vigour>> = {
  chard: 'large',
  kale: 'large',
  collards: 'large',
  celery: 'large',
  leek: 'large',
  'mustard-greens': 'large',
  broccoli: 'large',
  cabbage: 'large',
  nasturtium: 'large',
  basil: 'herb',
  cilantro: 'herb',
  dill: 'herb',
  parsley: 'herb',
  chives: 'herb',
  sage: 'herb',
  thyme: 'herb',
  rosemary: 'herb',
  oregano: 'herb',
  marjoram: 'herb',
  spearmint: 'spreading',
  'lemon-balm': 'spreading',
  watercress: 'spreading',
  strawberry: 'large',
  tomato: 'fruiting',
  cucumber: 'fruiting',
  courgette: 'fruiting',
  'sweet-pepper': 'fruiting',
  eggplant: 'fruiting',
  okra: 'fruiting',
  'french-bean': 'fruiting',
}

/** What turns roots into room that is taken in the bore, and when that is too much. */
export const rootPractice = table({
  title: 'Roots in the bore',
  columns: { low: 'low end', high: 'high end', unit: 'unit of both' },
  source: 'common-practice',
  rows: {
    packing: {
      low: 0.5,
      high: 1,
      unit: '1',
      note: 'share of a hanging mat that is root and clinging water; the rest is air',
    },
    boreTaken: { low: 0.5, high: 1, unit: '1', note: 'half full: cut or swap; full: water stands at the lowest sites' },
    hoseWall: { low: 0.002, high: 0.003, unit: 'm', note: 'wall of the riser, where it runs up inside the column' },
    longest: { low: 26, high: 26, unit: 'week', note: 'beyond half a year nothing is said' },
  },
})
