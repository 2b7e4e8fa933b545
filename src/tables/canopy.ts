import { table } from './table.ts'

/**
 * Live mass at one site, cup, wet medium, roots with the water they hold, and leaves, by weeks since planting in the
 * column. A measured weight beats this table.
 */
export const siteMasses = table({
  title: 'Mass at one site by week',
  columns: {
    week: 'count of weeks since planting',
    shoot_kg: 'leaves and stem',
    wetRoot_kg: 'roots with the water that clings to them',
    cupAndMedium_kg: 'net cup with wet medium',
    outline_m: 'diameter of the plant seen from the side',
  },
  source: 'common-practice',
  rows: {
    'leafy-0': { week: 0, shoot_kg: 0.005, wetRoot_kg: 0.005, cupAndMedium_kg: 0.06, outline_m: 0.06 },
    'leafy-1': { week: 1, shoot_kg: 0.015, wetRoot_kg: 0.01, cupAndMedium_kg: 0.06, outline_m: 0.1 },
    'leafy-2': { week: 2, shoot_kg: 0.045, wetRoot_kg: 0.025, cupAndMedium_kg: 0.06, outline_m: 0.16 },
    'leafy-3': { week: 3, shoot_kg: 0.09, wetRoot_kg: 0.05, cupAndMedium_kg: 0.06, outline_m: 0.21 },
    'leafy-4': { week: 4, shoot_kg: 0.14, wetRoot_kg: 0.08, cupAndMedium_kg: 0.06, outline_m: 0.25 },
    'leafy-5': { week: 5, shoot_kg: 0.18, wetRoot_kg: 0.12, cupAndMedium_kg: 0.06, outline_m: 0.28 },
    'leafy-6': { week: 6, shoot_kg: 0.21, wetRoot_kg: 0.16, cupAndMedium_kg: 0.06, outline_m: 0.3 },
    'leafy-8': { week: 8, shoot_kg: 0.25, wetRoot_kg: 0.25, cupAndMedium_kg: 0.06, outline_m: 0.33 },
  },
})

/** Thirst of one plant, litres a day as cubic metres a day. */
export const plantThirst = table({
  title: 'Water taken by one plant in a day',
  columns: { low_m3_d: 'small plant or dull day', high_m3_d: 'grown plant on a bright, dry day' },
  source: 'common-practice',
  rows: {
    leafy: { low_m3_d: 0.05e-3, high_m3_d: 0.25e-3, note: 'by age and weather; the log of the tank knows better' },
    'leafy-mature': { low_m3_d: 0.1e-3, high_m3_d: 0.2e-3 },
  },
})
