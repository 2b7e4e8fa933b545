import { table } from './table.ts'

/** What pens show for the same conductivity. "ppm" is a multiple of EC and no mass. */
export const ecScales = table({
  title: 'Scales of conductivity pens',
  columns: { perS_m: 'reading of the pen for 1 S/m', step_S_m: 'usual last digit of the pen' },
  source: 'common-practice',
  rows: {
    'mS/cm': { perS_m: 10, step_S_m: 0.001 },
    'uS/cm': { perS_m: 10000, step_S_m: 0.001 },
    'dS/m': { perS_m: 10, step_S_m: 0.001 },
    'S/m': { perS_m: 1, step_S_m: 0.001 },
    'ppm-500': { perS_m: 5000, step_S_m: 0.002 },
    'ppm-640': { perS_m: 6400, step_S_m: 0.0016 },
    'ppm-700': { perS_m: 7000, step_S_m: 0.0015 },
    CF: { perS_m: 100, step_S_m: 0.01 },
  },
})

export type EcScale = keyof typeof ecScales.rows
