import { pipeRows } from './row.ts'

const vp = { standard: 'JIS K 6741', series: 'VP', plastic: 'PVC-U', massComputed: false, source: 'JIS.K6741' } as const
const vu = { standard: 'JIS K 6741', series: 'VU', plastic: 'PVC-U', massComputed: false, source: 'JIS.K6741' } as const

/** Pipe of Japan, VP (thick) and VU (thin). */
// biome-ignore format: one row a line, as the printed tables have it
export const jisK6741 = pipeRows({
  'jis-k6741-vp13': { ...vp, nominal: '13', outside_m: 0.018, wall_m: 0.0022, bore_m: 0.0136, averageBore_m: 0.013, mass_kg_m: 0.174 },
  'jis-k6741-vp16': { ...vp, nominal: '16', outside_m: 0.022, wall_m: 0.0027, bore_m: 0.0166, averageBore_m: 0.016, mass_kg_m: 0.256 },
  'jis-k6741-vp20': { ...vp, nominal: '20', outside_m: 0.026, wall_m: 0.0027, bore_m: 0.0206, averageBore_m: 0.02, mass_kg_m: 0.31 },
  'jis-k6741-vp25': { ...vp, nominal: '25', outside_m: 0.032, wall_m: 0.0031, bore_m: 0.0258, averageBore_m: 0.025, mass_kg_m: 0.448 },
  'jis-k6741-vp30': { ...vp, nominal: '30', outside_m: 0.038, wall_m: 0.0031, bore_m: 0.0318, averageBore_m: 0.031, mass_kg_m: 0.542 },
  'jis-k6741-vp40': { ...vp, nominal: '40', outside_m: 0.048, wall_m: 0.0036, bore_m: 0.0408, averageBore_m: 0.04, mass_kg_m: 0.791 },
  'jis-k6741-vp50': { ...vp, nominal: '50', outside_m: 0.06, wall_m: 0.0041, bore_m: 0.0518, averageBore_m: 0.051, mass_kg_m: 1.122 },
  'jis-k6741-vp65': { ...vp, nominal: '65', outside_m: 0.076, wall_m: 0.0041, bore_m: 0.0678, averageBore_m: 0.067, mass_kg_m: 1.445 },
  'jis-k6741-vp75': { ...vp, nominal: '75', outside_m: 0.089, wall_m: 0.0055, bore_m: 0.078, averageBore_m: 0.077, mass_kg_m: 2.202 },
  'jis-k6741-vp100': { ...vp, nominal: '100', outside_m: 0.114, wall_m: 0.0066, bore_m: 0.1008, averageBore_m: 0.1, mass_kg_m: 3.409 },
  'jis-k6741-vp125': { ...vp, nominal: '125', outside_m: 0.14, wall_m: 0.007, bore_m: 0.126, averageBore_m: 0.125, mass_kg_m: 4.464 },
  'jis-k6741-vp150': { ...vp, nominal: '150', outside_m: 0.165, wall_m: 0.0089, bore_m: 0.1472, averageBore_m: 0.146, mass_kg_m: 6.701 },
  'jis-k6741-vu40': { ...vu, nominal: '40', outside_m: 0.048, wall_m: 0.0018, bore_m: 0.0444, averageBore_m: 0.044, mass_kg_m: 0.413 },
  'jis-k6741-vu50': { ...vu, nominal: '50', outside_m: 0.06, wall_m: 0.0018, bore_m: 0.0564, averageBore_m: 0.056, mass_kg_m: 0.521 },
  'jis-k6741-vu65': { ...vu, nominal: '65', outside_m: 0.076, wall_m: 0.0022, bore_m: 0.0716, averageBore_m: 0.071, mass_kg_m: 0.825 },
  'jis-k6741-vu75': { ...vu, nominal: '75', outside_m: 0.089, wall_m: 0.0027, bore_m: 0.0836, averageBore_m: 0.083, mass_kg_m: 1.159 },
  'jis-k6741-vu100': { ...vu, nominal: '100', outside_m: 0.114, wall_m: 0.0031, bore_m: 0.1078, averageBore_m: 0.107, mass_kg_m: 1.737 },
  'jis-k6741-vu125': { ...vu, nominal: '125', outside_m: 0.14, wall_m: 0.0041, bore_m: 0.1318, averageBore_m: 0.131, mass_kg_m: 2.739 },
  'jis-k6741-vu150': { ...vu, nominal: '150', outside_m: 0.165, wall_m: 0.0051, bore_m: 0.1548, averageBore_m: 0.154, mass_kg_m: 3.941 },
})
