import { pipeRows } from './row.ts'

const class2 = {
  standard: 'IS 4985',
  series: 'Class 2 (0.4 MPa)',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'IS.4985',
} as const
const class3 = {
  standard: 'IS 4985',
  series: 'Class 3 (0.6 MPa)',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'IS.4985',
} as const
const class5 = {
  standard: 'IS 4985',
  series: 'Class 5 (1.0 MPa)',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'IS.4985',
} as const

/** Metric pressure pipe of India. */
// biome-ignore format: one row a line, as the printed tables have it
export const is4985 = pipeRows({
  'is-4985-63x1.5': { ...class2, nominal: '63 mm', outside_m: 0.063, wall_m: 0.0015, bore_m: 0.06, averageBore_m: null, mass_kg_m: 0.412 },
  'is-4985-75x1.8': { ...class2, nominal: '75 mm', outside_m: 0.075, wall_m: 0.0018, bore_m: 0.0714, averageBore_m: null, mass_kg_m: 0.588 },
  'is-4985-90x2.1': { ...class2, nominal: '90 mm', outside_m: 0.09, wall_m: 0.0021, bore_m: 0.0858, averageBore_m: null, mass_kg_m: 0.823 },
  'is-4985-110x2.5': { ...class2, nominal: '110 mm', outside_m: 0.11, wall_m: 0.0025, bore_m: 0.105, averageBore_m: null, mass_kg_m: 1.199 },
  'is-4985-140x3.2': { ...class2, nominal: '140 mm', outside_m: 0.14, wall_m: 0.0032, bore_m: 0.1336, averageBore_m: null, mass_kg_m: 1.953 },
  'is-4985-160x3.7': { ...class2, nominal: '160 mm', outside_m: 0.16, wall_m: 0.0037, bore_m: 0.1526, averageBore_m: null, mass_kg_m: 2.58 },
  'is-4985-40x1.4': { ...class3, nominal: '40 mm', outside_m: 0.04, wall_m: 0.0014, bore_m: 0.0372, averageBore_m: null, mass_kg_m: 0.241 },
  'is-4985-50x1.7': { ...class3, nominal: '50 mm', outside_m: 0.05, wall_m: 0.0017, bore_m: 0.0466, averageBore_m: null, mass_kg_m: 0.366 },
  'is-4985-63x2.2': { ...class3, nominal: '63 mm', outside_m: 0.063, wall_m: 0.0022, bore_m: 0.0586, averageBore_m: null, mass_kg_m: 0.597 },
  'is-4985-75x2.6': { ...class3, nominal: '75 mm', outside_m: 0.075, wall_m: 0.0026, bore_m: 0.0698, averageBore_m: null, mass_kg_m: 0.84 },
  'is-4985-90x3.1': { ...class3, nominal: '90 mm', outside_m: 0.09, wall_m: 0.0031, bore_m: 0.0838, averageBore_m: null, mass_kg_m: 1.202 },
  'is-4985-110x3.7': { ...class3, nominal: '110 mm', outside_m: 0.11, wall_m: 0.0037, bore_m: 0.1026, averageBore_m: null, mass_kg_m: 1.755 },
  'is-4985-140x4.8': { ...class3, nominal: '140 mm', outside_m: 0.14, wall_m: 0.0048, bore_m: 0.1304, averageBore_m: null, mass_kg_m: 2.895 },
  'is-4985-160x5.4': { ...class3, nominal: '160 mm', outside_m: 0.16, wall_m: 0.0054, bore_m: 0.1492, averageBore_m: null, mass_kg_m: 3.724 },
  'is-4985-20x1.1': { ...class5, nominal: '20 mm', outside_m: 0.02, wall_m: 0.0011, bore_m: 0.0178, averageBore_m: null, mass_kg_m: 0.093 },
  'is-4985-25x1.4': { ...class5, nominal: '25 mm', outside_m: 0.025, wall_m: 0.0014, bore_m: 0.0222, averageBore_m: null, mass_kg_m: 0.147 },
  'is-4985-32x1.8': { ...class5, nominal: '32 mm', outside_m: 0.032, wall_m: 0.0018, bore_m: 0.0284, averageBore_m: null, mass_kg_m: 0.243 },
  'is-4985-40x2.2': { ...class5, nominal: '40 mm', outside_m: 0.04, wall_m: 0.0022, bore_m: 0.0356, averageBore_m: null, mass_kg_m: 0.371 },
  'is-4985-50x2.8': { ...class5, nominal: '50 mm', outside_m: 0.05, wall_m: 0.0028, bore_m: 0.0444, averageBore_m: null, mass_kg_m: 0.59 },
  'is-4985-63x3.5': { ...class5, nominal: '63 mm', outside_m: 0.063, wall_m: 0.0035, bore_m: 0.056, averageBore_m: null, mass_kg_m: 0.929, source: 'IS.4985.rule', note: 'the extract prints 3.3 mm, the rule of the class gives 3.46' },
  'is-4985-75x4.2': { ...class5, nominal: '75 mm', outside_m: 0.075, wall_m: 0.0042, bore_m: 0.0666, averageBore_m: null, mass_kg_m: 1.327 },
  'is-4985-90x5.0': { ...class5, nominal: '90 mm', outside_m: 0.09, wall_m: 0.005, bore_m: 0.08, averageBore_m: null, mass_kg_m: 1.896 },
  'is-4985-110x6.1': { ...class5, nominal: '110 mm', outside_m: 0.11, wall_m: 0.0061, bore_m: 0.0978, averageBore_m: null, mass_kg_m: 2.827 },
})
