import type { CsvWords } from '../words.ts'

/** Headings of the tables for a spreadsheet. Slots in braces. */
export const csvWords: CsvWords = {
  marks: ['site', 'line', 'ring'],
  fromFoot: ['mm from foot'],
  fromTop: ['mm from top'],
  marksOnTape: ['on the tape', 'off mm', 'mm round from line 1'],
  batch: ['product', 'weigh g', 'exact g', 'or mL', 'weak stock g in 1 L', 'of it mL'],
  packs: [
    ...['product', 'there in all (g)', 'used up by a batch (g)', 'to begin with (g)', 'stock bottles (g)'],
    ...['batches it lasts', 'missing (g)', 'pack (g)', 'packs to buy', 'price ({money})'],
  ],
  elements: ['element', 'wanted (mg/L)', 'in the water (mg/L)', 'reached (mg/L)', 'of wanted (%)'],
  stock: [
    ...['bottle', 'times the feed', 'for a litre of feed (mL)', 'product', 'in a litre of bottle (g)', 'bottle (L)'],
    'in the bottle (g)',
  ],
  steps: [
    ...['no.', 'step', 'begins at (h)', 'hands (min)', 'minding (min)', 'by itself (min)', 'after steps', 'wait'],
    ...['acts', 'cautions', 'test'],
  ],
  tools: ['tool', 'at hand'],
  cuts: [
    ...['material', 'pipe', 'length no.', 'length (mm)', 'from', 'piece', 'piece length (mm)', 'from (mm)', 'to (mm)'],
    ...['turned', 'end', 'saw from square (deg)', 'left over on this length (mm)'],
  ],
  parts: [
    ...['id', 'part', 'kind', 'label', 'count', 'unit', 'spares', 'outside or bore (mm)', 'wall (mm)'],
    ...['length each (mm)', 'standard', 'substitutes', 'price of one ({money})', 'price ({money})', 'from', 'steps'],
    'remark',
  ],
  findings: ['id', 'finding', 'place', 'verdict', 'from', 'to', 'unit', 'at least', 'at most', 'sentence', 'source'],
  dipStick: ['level (mm)', 'volume (L)', 'line'],
  stop: ['week', 'air (°C)', 'dry after, least (h)', 'dry after, most (h)', 'longest rest (min)'],
  day: [
    ...['hour (h)', 'hot day: air (°C)', 'hot day: tank full (°C)', 'hot day: tank low (°C)'],
    ...['hot day: oxygen it can hold, tank low (mg/L)', 'cold day: air (°C)', 'cold day: tank full (°C)'],
    ...['cold day: tank low (°C)'],
  ],
  tipping: [
    ...['week', 'solution (L)', 'level (mm)', 'mass (kg)', 'times what pushes', 'falls in a gust of (m/s)'],
    ...['stands free up to (m/s)', 'strap pulls (N)'],
  ],
  ends: { square: 'square', mitre: 'mitre', parallel: 'two mitres', cope: 'coped' },
  money: 'money',
  pieces: 'pieces',
}
