import { table } from './table.ts'

/** How far two statements about the same thing may part before one of them must be wrong. */
export const statedPractice = table({
  title: 'Statements held against each other',
  columns: { value: 'value in the unit of the row', unit: 'unit' },
  source: 'common-practice',
  rows: {
    curveHump: {
      value: 0.1,
      unit: '1',
      note: 'rise of a printed curve over its largest head: small pumps hump that much near still water, and readings slip',
    },
    lineDiffers: {
      value: 0.05,
      unit: '1',
      note: 'of the whole tank, between a line by tape and the litres said to stand at it',
    },
    leastUsable: { value: 0.001, unit: 'm3', note: 'less between two lines is not seen on a dip stick' },
    marksReach: { value: 0.5, unit: '1', note: 'share of the depth up to which measured volumes stand for the tank' },
  },
})
