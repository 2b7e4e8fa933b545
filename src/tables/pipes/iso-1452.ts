import { pipeRows } from './row.ts'

const pn10 = {
  standard: 'ISO 1452-2',
  series: 'PN10',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'ISO.1452-2',
  note: 'design coefficient 2.5',
} as const
const pn10Large = {
  standard: 'ISO 1452-2',
  series: 'PN10',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'ISO.1452-2',
  note: 'design coefficient 2.0',
} as const
const pn12_5 = {
  standard: 'ISO 1452-2',
  series: 'PN12.5',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'ISO.1452-2',
  note: 'design coefficient 2.5',
} as const
const pn12_5Large = {
  standard: 'ISO 1452-2',
  series: 'PN12.5',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'ISO.1452-2',
  note: 'design coefficient 2.0',
} as const
const pn16 = {
  standard: 'ISO 1452-2',
  series: 'PN16',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'ISO.1452-2',
  note: 'design coefficient 2.5',
} as const
const pn16Large = {
  standard: 'ISO 1452-2',
  series: 'PN16',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'ISO.1452-2',
  note: 'design coefficient 2.0',
} as const

/** Metric pressure pipe. */
// biome-ignore format: one row a line, as the printed tables have it
export const iso1452 = pipeRows({
  'iso-1452-32x1.6': { ...pn10, nominal: '32 mm', outside_m: 0.032, wall_m: 0.0016, bore_m: 0.0288, averageBore_m: null, mass_kg_m: 0.217 },
  'iso-1452-40x1.9': { ...pn10, nominal: '40 mm', outside_m: 0.04, wall_m: 0.0019, bore_m: 0.0362, averageBore_m: null, mass_kg_m: 0.323 },
  'iso-1452-50x2.4': { ...pn10, nominal: '50 mm', outside_m: 0.05, wall_m: 0.0024, bore_m: 0.0452, averageBore_m: null, mass_kg_m: 0.51 },
  'iso-1452-63x3.0': { ...pn10, nominal: '63 mm', outside_m: 0.063, wall_m: 0.003, bore_m: 0.057, averageBore_m: null, mass_kg_m: 0.803 },
  'iso-1452-75x3.6': { ...pn10, nominal: '75 mm', outside_m: 0.075, wall_m: 0.0036, bore_m: 0.0678, averageBore_m: null, mass_kg_m: 1.147 },
  'iso-1452-90x4.3': { ...pn10, nominal: '90 mm', outside_m: 0.09, wall_m: 0.0043, bore_m: 0.0814, averageBore_m: null, mass_kg_m: 1.644 },
  'iso-1452-110x4.2': { ...pn10Large, nominal: '110 mm', outside_m: 0.11, wall_m: 0.0042, bore_m: 0.1016, averageBore_m: null, mass_kg_m: 1.982 },
  'iso-1452-125x4.8': { ...pn10Large, nominal: '125 mm', outside_m: 0.125, wall_m: 0.0048, bore_m: 0.1154, averageBore_m: null, mass_kg_m: 2.574 },
  'iso-1452-140x5.4': { ...pn10Large, nominal: '140 mm', outside_m: 0.14, wall_m: 0.0054, bore_m: 0.1292, averageBore_m: null, mass_kg_m: 3.242 },
  'iso-1452-160x6.2': { ...pn10Large, nominal: '160 mm', outside_m: 0.16, wall_m: 0.0062, bore_m: 0.1476, averageBore_m: null, mass_kg_m: 4.254 },
  'iso-1452-25x1.5': { ...pn12_5, nominal: '25 mm', outside_m: 0.025, wall_m: 0.0015, bore_m: 0.022, averageBore_m: null, mass_kg_m: 0.157 },
  'iso-1452-32x1.9': { ...pn12_5, nominal: '32 mm', outside_m: 0.032, wall_m: 0.0019, bore_m: 0.0282, averageBore_m: null, mass_kg_m: 0.255 },
  'iso-1452-40x2.4': { ...pn12_5, nominal: '40 mm', outside_m: 0.04, wall_m: 0.0024, bore_m: 0.0352, averageBore_m: null, mass_kg_m: 0.403 },
  'iso-1452-50x3.0': { ...pn12_5, nominal: '50 mm', outside_m: 0.05, wall_m: 0.003, bore_m: 0.044, averageBore_m: null, mass_kg_m: 0.629 },
  'iso-1452-63x3.8': { ...pn12_5, nominal: '63 mm', outside_m: 0.063, wall_m: 0.0038, bore_m: 0.0554, averageBore_m: null, mass_kg_m: 1.004 },
  'iso-1452-75x4.5': { ...pn12_5, nominal: '75 mm', outside_m: 0.075, wall_m: 0.0045, bore_m: 0.066, averageBore_m: null, mass_kg_m: 1.415 },
  'iso-1452-90x5.4': { ...pn12_5, nominal: '90 mm', outside_m: 0.09, wall_m: 0.0054, bore_m: 0.0792, averageBore_m: null, mass_kg_m: 2.038 },
  'iso-1452-110x5.3': { ...pn12_5Large, nominal: '110 mm', outside_m: 0.11, wall_m: 0.0053, bore_m: 0.0994, averageBore_m: null, mass_kg_m: 2.475 },
  'iso-1452-125x6.0': { ...pn12_5Large, nominal: '125 mm', outside_m: 0.125, wall_m: 0.006, bore_m: 0.113, averageBore_m: null, mass_kg_m: 3.185 },
  'iso-1452-140x6.7': { ...pn12_5Large, nominal: '140 mm', outside_m: 0.14, wall_m: 0.0067, bore_m: 0.1266, averageBore_m: null, mass_kg_m: 3.984 },
  'iso-1452-160x7.7': { ...pn12_5Large, nominal: '160 mm', outside_m: 0.16, wall_m: 0.0077, bore_m: 0.1446, averageBore_m: null, mass_kg_m: 5.232 },
  'iso-1452-20x1.5': { ...pn16, nominal: '20 mm', outside_m: 0.02, wall_m: 0.0015, bore_m: 0.017, averageBore_m: null, mass_kg_m: 0.124 },
  'iso-1452-25x1.9': { ...pn16, nominal: '25 mm', outside_m: 0.025, wall_m: 0.0019, bore_m: 0.0212, averageBore_m: null, mass_kg_m: 0.196 },
  'iso-1452-32x2.4': { ...pn16, nominal: '32 mm', outside_m: 0.032, wall_m: 0.0024, bore_m: 0.0272, averageBore_m: null, mass_kg_m: 0.317 },
  'iso-1452-40x3.0': { ...pn16, nominal: '40 mm', outside_m: 0.04, wall_m: 0.003, bore_m: 0.034, averageBore_m: null, mass_kg_m: 0.495 },
  'iso-1452-50x3.7': { ...pn16, nominal: '50 mm', outside_m: 0.05, wall_m: 0.0037, bore_m: 0.0426, averageBore_m: null, mass_kg_m: 0.764 },
  'iso-1452-63x4.7': { ...pn16, nominal: '63 mm', outside_m: 0.063, wall_m: 0.0047, bore_m: 0.0536, averageBore_m: null, mass_kg_m: 1.222 },
  'iso-1452-75x5.6': { ...pn16, nominal: '75 mm', outside_m: 0.075, wall_m: 0.0056, bore_m: 0.0638, averageBore_m: null, mass_kg_m: 1.734 },
  'iso-1452-90x6.7': { ...pn16, nominal: '90 mm', outside_m: 0.09, wall_m: 0.0067, bore_m: 0.0766, averageBore_m: null, mass_kg_m: 2.49 },
  'iso-1452-110x6.6': { ...pn16Large, nominal: '110 mm', outside_m: 0.11, wall_m: 0.0066, bore_m: 0.0968, averageBore_m: null, mass_kg_m: 3.044 },
  'iso-1452-125x7.4': { ...pn16Large, nominal: '125 mm', outside_m: 0.125, wall_m: 0.0074, bore_m: 0.1102, averageBore_m: null, mass_kg_m: 3.882 },
  'iso-1452-140x8.3': { ...pn16Large, nominal: '140 mm', outside_m: 0.14, wall_m: 0.0083, bore_m: 0.1234, averageBore_m: null, mass_kg_m: 4.876 },
  'iso-1452-160x9.5': { ...pn16Large, nominal: '160 mm', outside_m: 0.16, wall_m: 0.0095, bore_m: 0.141, averageBore_m: null, mass_kg_m: 6.378 },
})
