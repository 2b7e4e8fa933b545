import { table } from './table.ts'

/** Up to which pH a chelate keeps its iron dissolved. */
export const ironChelates = table({
  title: 'Iron chelates',
  columns: { lowestPh: 'lowest pH of use, or null', highestPh: 'highest pH of use' },
  source: 'from-memory',
  rows: {
    FeEDTA: { lowestPh: null, highestPh: 6.3 },
    FeDTPA: { lowestPh: null, highestPh: 7 },
    FeEDDHA: { lowestPh: 4, highestPh: 9 },
  },
})
