import { table } from './table.ts'

/** Constants of nature and convention that the water's path needs. */
export const hydraulicConstants = table({
  title: 'Constants of the water path',
  columns: { value: 'value in the SI unit that the row names', unit: 'unit of the value' },
  source: 'CGPM.1901',
  rows: {
    standardGravity: { value: 9.80665, unit: 'm/s2' },
    standardAtmosphere: { value: 101_325, unit: 'Pa', source: 'CGPM.1954' },
  },
})

/** Standard acceleration of free fall, m/s². */
export const STANDARD_GRAVITY = hydraulicConstants.rows.standardGravity.value
