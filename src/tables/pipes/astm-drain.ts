import { pipeRows } from './row.ts'

const d2665 = {
  standard: 'ASTM D2665',
  series: 'DWV',
  plastic: 'PVC-U',
  massComputed: false,
  source: 'ASTM.D2665',
  note: 'mass as Schedule 40',
} as const
const d2729 = {
  standard: 'ASTM D2729',
  series: 'sewer and drain',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'ASTM.D2729',
  note: 'thin wall: check before it stands free',
} as const
const d3034 = {
  standard: 'ASTM D3034',
  series: 'SDR 35',
  plastic: 'PVC-U',
  massComputed: false,
  source: 'ASTM.D3034',
} as const
const d3034Large = {
  standard: 'ASTM D3034',
  series: 'SDR 35',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'ASTM.D3034.walls',
  note: 'outside diameter read, wall from memory',
} as const
const d2949 = {
  standard: 'ASTM D2949',
  series: 'thin-wall DWV 3.25 OD',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'ASTM.D2949',
  note: 'outside diameter read in the title of the standard, wall from memory',
} as const

/** Drain, waste, vent and sewer pipe in inch sizes. */
// biome-ignore format: one row a line, as the printed tables have it
export const astmDrain = pipeRows({
  'astm-d2665-1.25in': { ...d2665, nominal: '1-1/4 in', outside_m: 0.042164, wall_m: 0.003556, bore_m: 0.035052, averageBore_m: null, mass_kg_m: 0.634 },
  'astm-d2665-1.5in': { ...d2665, nominal: '1-1/2 in', outside_m: 0.04826, wall_m: 0.003683, bore_m: 0.040894, averageBore_m: null, mass_kg_m: 0.757 },
  'astm-d2665-2in': { ...d2665, nominal: '2 in', outside_m: 0.060325, wall_m: 0.003912, bore_m: 0.052502, averageBore_m: null, mass_kg_m: 1.015 },
  'astm-d2665-3in': { ...d2665, nominal: '3 in', outside_m: 0.0889, wall_m: 0.005486, bore_m: 0.077927, averageBore_m: null, mass_kg_m: 2.097 },
  'astm-d2665-4in': { ...d2665, nominal: '4 in', outside_m: 0.1143, wall_m: 0.00602, bore_m: 0.10226, averageBore_m: null, mass_kg_m: 2.985 },
  'astm-d2665-6in': { ...d2665, nominal: '6 in', outside_m: 0.168275, wall_m: 0.007112, bore_m: 0.154051, averageBore_m: null, mass_kg_m: 5.261 },
  'astm-d2665-8in': { ...d2665, nominal: '8 in', outside_m: 0.219075, wall_m: 0.008179, bore_m: 0.202717, averageBore_m: null, mass_kg_m: 7.895 },
  'astm-d2729-3in': { ...d2729, nominal: '3 in', outside_m: 0.08255, wall_m: 0.001778, bore_m: 0.078994, averageBore_m: null, mass_kg_m: 0.641 },
  'astm-d2729-4in': { ...d2729, nominal: '4 in', outside_m: 0.107061, wall_m: 0.001905, bore_m: 0.103251, averageBore_m: null, mass_kg_m: 0.894 },
  'astm-d2729-6in': { ...d2729, nominal: '6 in', outside_m: 0.159385, wall_m: 0.00254, bore_m: 0.154305, averageBore_m: null, mass_kg_m: 1.777 },
  'astm-d3034-4in-sdr35': { ...d3034, nominal: '4 in', outside_m: 0.107061, wall_m: 0.003048, bore_m: 0.100965, averageBore_m: null, mass_kg_m: 1.533 },
  'astm-d3034-6in-sdr35': { ...d3034Large, nominal: '6 in', outside_m: 0.159385, wall_m: 0.004572, bore_m: 0.150241, averageBore_m: null, mass_kg_m: 3.158 },
  'astm-d3034-8in-sdr35': { ...d3034Large, nominal: '8 in', outside_m: 0.21336, wall_m: 0.006096, bore_m: 0.201168, averageBore_m: null, mass_kg_m: 5.636 },
  'astm-d2949-3in': { ...d2949, nominal: '3 in', outside_m: 0.08255, wall_m: 0.003175, bore_m: 0.0762, averageBore_m: null, mass_kg_m: 1.124 },
})
