import { table } from './table.ts'

/** What people mean by "four inch" or "100 mm" pipe in shops of different countries. Fittings do not interchange. */
export const tradeNames = table({
  title: 'Names that pipes of different sizes share',
  columns: {
    inch: 'nominal size of the inch standards',
    bore: 'nominal bore of the AU/NZ and JIS standards, as number',
    outside: 'outside diameters of the metric standards in millimetres, as text with a comma between',
  },
  source: 'common-practice',
  rows: {
    'half-inch': { inch: '1/2 in', bore: '15', outside: '20' },
    'three-quarter-inch': { inch: '3/4 in', bore: '20', outside: '25' },
    'one-inch': { inch: '1 in', bore: '25', outside: '32' },
    'one-and-quarter-inch': { inch: '1-1/4 in', bore: '32', outside: '40' },
    'one-and-half-inch': { inch: '1-1/2 in', bore: '40', outside: '40,50' },
    'two-inch': { inch: '2 in', bore: '50', outside: '50,63' },
    'two-and-half-inch': { inch: '2-1/2 in', bore: '65', outside: '75' },
    'three-inch': { inch: '3 in', bore: '80', outside: '75,90' },
    'four-inch': { inch: '4 in', bore: '100', outside: '110' },
    'five-inch': { inch: '5 in', bore: '125', outside: '125,140' },
    'six-inch': { inch: '6 in', bore: '150', outside: '160' },
  },
})
