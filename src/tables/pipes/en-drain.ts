import { pipeRows } from './row.ts'

const sn4sn8 = {
  standard: 'EN 1401-1',
  series: 'SN4/SN8',
  plastic: 'PVC-U',
  massComputed: false,
  source: 'EN.1401',
} as const
const sn4 = { standard: 'EN 1401-1', series: 'SN4', plastic: 'PVC-U', massComputed: false, source: 'EN.1401' } as const
const sn8 = { standard: 'EN 1401-1', series: 'SN8', plastic: 'PVC-U', massComputed: false, source: 'EN.1401' } as const
const sn2 = { standard: 'EN 1401-1', series: 'SN2', plastic: 'PVC-U', massComputed: false, source: 'EN.1401' } as const
const areaB = {
  standard: 'EN 1329-1',
  series: 'B',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'EN.1329-1',
  note: 'not confirmed: measure; structured-wall pipe of the same size is lighter',
} as const
const areaBD = {
  standard: 'EN 1329-1',
  series: 'BD',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'EN.1329-1',
  note: 'not confirmed: measure',
} as const

/** Metric drain pipe, buried and within buildings. */
// biome-ignore format: one row a line, as the printed tables have it
export const enDrain = pipeRows({
  'en-1401-110x3.2': { ...sn4sn8, nominal: '110 mm', outside_m: 0.11, wall_m: 0.0032, bore_m: 0.1036, averageBore_m: null, mass_kg_m: 1.71 },
  'en-1401-125x3.2': { ...sn4, nominal: '125 mm', outside_m: 0.125, wall_m: 0.0032, bore_m: 0.1186, averageBore_m: null, mass_kg_m: 1.95 },
  'en-1401-125x3.7': { ...sn8, nominal: '125 mm', outside_m: 0.125, wall_m: 0.0037, bore_m: 0.1176, averageBore_m: null, mass_kg_m: 2.22 },
  'en-1401-160x3.2': { ...sn2, nominal: '160 mm', outside_m: 0.16, wall_m: 0.0032, bore_m: 0.1536, averageBore_m: null, mass_kg_m: 2.51 },
  'en-1401-160x4.0': { ...sn4, nominal: '160 mm', outside_m: 0.16, wall_m: 0.004, bore_m: 0.152, averageBore_m: null, mass_kg_m: 3.07 },
  'en-1401-160x4.7': { ...sn8, nominal: '160 mm', outside_m: 0.16, wall_m: 0.0047, bore_m: 0.1506, averageBore_m: null, mass_kg_m: 3.59 },
  'en-1329-32x3.0-b': { ...areaB, nominal: '32 mm', outside_m: 0.032, wall_m: 0.003, bore_m: 0.026, averageBore_m: null, mass_kg_m: 0.388 },
  'en-1329-40x3.0-b': { ...areaB, nominal: '40 mm', outside_m: 0.04, wall_m: 0.003, bore_m: 0.034, averageBore_m: null, mass_kg_m: 0.495 },
  'en-1329-50x3.0-b': { ...areaB, nominal: '50 mm', outside_m: 0.05, wall_m: 0.003, bore_m: 0.044, averageBore_m: null, mass_kg_m: 0.629 },
  'en-1329-75x3.0-b': { ...areaB, nominal: '75 mm', outside_m: 0.075, wall_m: 0.003, bore_m: 0.069, averageBore_m: null, mass_kg_m: 0.964 },
  'en-1329-90x3.0-b': { ...areaB, nominal: '90 mm', outside_m: 0.09, wall_m: 0.003, bore_m: 0.084, averageBore_m: null, mass_kg_m: 1.164 },
  'en-1329-110x3.2-b': { ...areaB, nominal: '110 mm', outside_m: 0.11, wall_m: 0.0032, bore_m: 0.1036, averageBore_m: null, mass_kg_m: 1.525 },
  'en-1329-125x3.2-b': { ...areaB, nominal: '125 mm', outside_m: 0.125, wall_m: 0.0032, bore_m: 0.1186, averageBore_m: null, mass_kg_m: 1.739 },
  'en-1329-160x3.2-b': { ...areaB, nominal: '160 mm', outside_m: 0.16, wall_m: 0.0032, bore_m: 0.1536, averageBore_m: null, mass_kg_m: 2.238 },
  'en-1329-75x3.0-bd': { ...areaBD, nominal: '75 mm', outside_m: 0.075, wall_m: 0.003, bore_m: 0.069, averageBore_m: null, mass_kg_m: 0.964 },
  'en-1329-90x3.0-bd': { ...areaBD, nominal: '90 mm', outside_m: 0.09, wall_m: 0.003, bore_m: 0.084, averageBore_m: null, mass_kg_m: 1.164 },
  'en-1329-110x3.2-bd': { ...areaBD, nominal: '110 mm', outside_m: 0.11, wall_m: 0.0032, bore_m: 0.1036, averageBore_m: null, mass_kg_m: 1.525 },
  'en-1329-125x3.2-bd': { ...areaBD, nominal: '125 mm', outside_m: 0.125, wall_m: 0.0032, bore_m: 0.1186, averageBore_m: null, mass_kg_m: 1.739 },
  'en-1329-160x4.0-bd': { ...areaBD, nominal: '160 mm', outside_m: 0.16, wall_m: 0.004, bore_m: 0.152, averageBore_m: null, mass_kg_m: 2.784 },
})
