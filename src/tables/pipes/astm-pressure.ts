import { pipeRows } from './row.ts'

const sch40 = {
  standard: 'ASTM D1785',
  series: 'Sch 40',
  plastic: 'PVC-U',
  massComputed: false,
  source: 'ASTM.D1785',
} as const
const sch80 = {
  standard: 'ASTM D1785',
  series: 'Sch 80',
  plastic: 'PVC-U',
  massComputed: false,
  source: 'ASTM.D1785',
} as const

/** Pressure pipe in inch sizes, Schedules 40 and 80. */
// biome-ignore format: one row a line, as the printed tables have it
export const astmPressure = pipeRows({
  'astm-d1785-0.5in-sch40': { ...sch40, nominal: '1/2 in', outside_m: 0.021336, wall_m: 0.002769, bore_m: 0.015799, averageBore_m: 0.01544, mass_kg_m: 0.24 },
  'astm-d1785-0.75in-sch40': { ...sch40, nominal: '3/4 in', outside_m: 0.02667, wall_m: 0.00287, bore_m: 0.02093, averageBore_m: 0.02057, mass_kg_m: 0.318 },
  'astm-d1785-1in-sch40': { ...sch40, nominal: '1 in', outside_m: 0.033401, wall_m: 0.003378, bore_m: 0.026645, averageBore_m: 0.02624, mass_kg_m: 0.469 },
  'astm-d1785-1.25in-sch40': { ...sch40, nominal: '1-1/4 in', outside_m: 0.042164, wall_m: 0.003556, bore_m: 0.035052, averageBore_m: 0.03465, mass_kg_m: 0.634 },
  'astm-d1785-1.5in-sch40': { ...sch40, nominal: '1-1/2 in', outside_m: 0.04826, wall_m: 0.003683, bore_m: 0.040894, averageBore_m: 0.04044, mass_kg_m: 0.757 },
  'astm-d1785-2in-sch40': { ...sch40, nominal: '2 in', outside_m: 0.060325, wall_m: 0.003912, bore_m: 0.052502, averageBore_m: 0.05204, mass_kg_m: 1.015 },
  'astm-d1785-2.5in-sch40': { ...sch40, nominal: '2-1/2 in', outside_m: 0.073025, wall_m: 0.005156, bore_m: 0.062713, averageBore_m: 0.0621, mass_kg_m: 1.601 },
  'astm-d1785-3in-sch40': { ...sch40, nominal: '3 in', outside_m: 0.0889, wall_m: 0.005486, bore_m: 0.077927, averageBore_m: 0.07727, mass_kg_m: 2.097 },
  'astm-d1785-4in-sch40': { ...sch40, nominal: '4 in', outside_m: 0.1143, wall_m: 0.00602, bore_m: 0.10226, averageBore_m: 0.10155, mass_kg_m: 2.985 },
  'astm-d1785-5in-sch40': { ...sch40, nominal: '5 in', outside_m: 0.1413, wall_m: 0.006553, bore_m: 0.128194, averageBore_m: 0.12743, mass_kg_m: 4.057 },
  'astm-d1785-6in-sch40': { ...sch40, nominal: '6 in', outside_m: 0.168275, wall_m: 0.007112, bore_m: 0.154051, averageBore_m: 0.15319, mass_kg_m: 5.261 },
  'astm-d1785-8in-sch40': { ...sch40, nominal: '8 in', outside_m: 0.219075, wall_m: 0.008179, bore_m: 0.202717, averageBore_m: 0.20175, mass_kg_m: 7.895 },
  'astm-d1785-0.5in-sch80': { ...sch80, nominal: '1/2 in', outside_m: 0.021336, wall_m: 0.003734, bore_m: 0.013868, averageBore_m: 0.01341, mass_kg_m: 0.301 },
  'astm-d1785-0.75in-sch80': { ...sch80, nominal: '3/4 in', outside_m: 0.02667, wall_m: 0.003912, bore_m: 0.018847, averageBore_m: 0.01839, mass_kg_m: 0.406 },
  'astm-d1785-1in-sch80': { ...sch80, nominal: '1 in', outside_m: 0.033401, wall_m: 0.004547, bore_m: 0.024308, averageBore_m: 0.02375, mass_kg_m: 0.598 },
  'astm-d1785-1.25in-sch80': { ...sch80, nominal: '1-1/4 in', outside_m: 0.042164, wall_m: 0.004851, bore_m: 0.032461, averageBore_m: 0.0319, mass_kg_m: 0.824 },
  'astm-d1785-1.5in-sch80': { ...sch80, nominal: '1-1/2 in', outside_m: 0.04826, wall_m: 0.00508, bore_m: 0.0381, averageBore_m: 0.03749, mass_kg_m: 1.002 },
  'astm-d1785-2in-sch80': { ...sch80, nominal: '2 in', outside_m: 0.060325, wall_m: 0.005537, bore_m: 0.049251, averageBore_m: 0.04859, mass_kg_m: 1.387 },
  'astm-d1785-2.5in-sch80': { ...sch80, nominal: '2-1/2 in', outside_m: 0.073025, wall_m: 0.00701, bore_m: 0.059004, averageBore_m: 0.05814, mass_kg_m: 2.112 },
  'astm-d1785-3in-sch80': { ...sch80, nominal: '3 in', outside_m: 0.0889, wall_m: 0.00762, bore_m: 0.07366, averageBore_m: 0.07275, mass_kg_m: 2.832 },
  'astm-d1785-4in-sch80': { ...sch80, nominal: '4 in', outside_m: 0.1143, wall_m: 0.00856, bore_m: 0.09718, averageBore_m: 0.09616, mass_kg_m: 4.14 },
  'astm-d1785-5in-sch80': { ...sch80, nominal: '5 in', outside_m: 0.1413, wall_m: 0.009525, bore_m: 0.12225, averageBore_m: 0.12108, mass_kg_m: 5.755 },
  'astm-d1785-6in-sch80': { ...sch80, nominal: '6 in', outside_m: 0.168275, wall_m: 0.010973, bore_m: 0.146329, averageBore_m: 0.14501, mass_kg_m: 7.907 },
  'astm-d1785-8in-sch80': { ...sch80, nominal: '8 in', outside_m: 0.219075, wall_m: 0.0127, bore_m: 0.193675, averageBore_m: 0.19215, mass_kg_m: 11.992 },
})
