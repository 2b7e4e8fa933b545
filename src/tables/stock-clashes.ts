import { table } from './table.ts'

/** What must not meet at the strength of a stock. `one` and `other` are components, or `base`. */
export const stockClashes = table({
  title: 'Concentrates that must not meet',
  columns: {
    one: 'on one side',
    other: 'on the other side',
    with: 'what must be there besides, or null',
    gives: 'what falls out or escapes',
  },
  source: 'Compatibility.note',
  rows: {
    'calcium-sulfate': { one: 'Ca', other: 'SO4', with: null, gives: 'gypsum' },
    'calcium-phosphate': { one: 'Ca', other: 'H2PO4', with: null, gives: 'calcium phosphate' },
    'magnesium-ammonium-phosphate': { one: 'Mg', other: 'H2PO4', with: 'NH4', gives: 'magnesium phosphate' },
    'base-ammonium': { one: 'base', other: 'NH4', with: null, gives: 'ammonia', source: 'common-practice' },
    'base-calcium': { one: 'base', other: 'Ca', with: null, gives: 'lime', source: 'common-practice' },
  },
})

export type StockClash = keyof typeof stockClashes.rows
