import type { CsvWords } from '../words.ts'

/** Headings of the tables for a spreadsheet. Slots in braces. */
export const csvWords: CsvWords = {
  marks: ['site', 'line', 'ring'],
  fromFoot: ['mm from foot'],
  fromTop: ['mm from top'],
  marksOnTape: ['on the tape', 'off mm', 'mm round from line 1'],
  batch: ['product', 'weigh g', 'exact g', 'or mL', 'weak stock g in 1 L', 'of it mL'],
  cuts: [
    ...['material', 'pipe', 'length no.', 'length (mm)', 'from', 'piece', 'piece length (mm)', 'from (mm)', 'to (mm)'],
    ...['turned', 'end', 'saw from square (deg)', 'left over on this length (mm)'],
  ],
  parts: [
    ...['id', 'part', 'kind', 'label', 'count', 'unit', 'spares', 'outside or bore (mm)', 'wall (mm)'],
    ...['length each (mm)', 'standard', 'substitutes', 'price of one ({money})', 'price ({money})', 'from', 'steps'],
    'remark',
  ],
  money: 'money',
  pieces: 'pieces',
}
