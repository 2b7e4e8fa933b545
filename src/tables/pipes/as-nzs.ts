import { pipeRows } from './row.ts'

const aboveGround = {
  standard: 'AS/NZS 1260',
  series: 'above ground',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'AS-NZS.1260',
  note: 'not confirmed: measure',
} as const
const sn6 = {
  standard: 'AS/NZS 1260',
  series: 'SN6',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'AS-NZS.1260',
  note: 'wall from ring stiffness with E = 3200 MPa; not confirmed: measure',
} as const
const sn10 = {
  standard: 'AS/NZS 1260',
  series: 'SN10',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'AS-NZS.1260',
  note: 'wall from ring stiffness with E = 3200 MPa; not confirmed: measure',
} as const
const sn4 = {
  standard: 'AS/NZS 1260',
  series: 'SN4',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'AS-NZS.1260',
  note: 'wall from ring stiffness with E = 3200 MPa; not confirmed: measure',
} as const
const sn8 = {
  standard: 'AS/NZS 1260',
  series: 'SN8',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'AS-NZS.1260',
  note: 'wall from ring stiffness with E = 3200 MPa; not confirmed: measure',
} as const
const pn9 = {
  standard: 'AS/NZS 1477',
  series: 'PN9',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'AS-NZS.1477',
  note: 'Series 1; wall computed, not confirmed: measure',
} as const
const pn12 = {
  standard: 'AS/NZS 1477',
  series: 'PN12',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'AS-NZS.1477',
  note: 'Series 1; wall computed, not confirmed: measure',
} as const
const pn18 = {
  standard: 'AS/NZS 1477',
  series: 'PN18',
  plastic: 'PVC-U',
  massComputed: true,
  source: 'AS-NZS.1477',
  note: 'Series 1; wall computed, not confirmed: measure',
} as const

/** Drain and pressure pipe of Australia and New Zealand. */
// biome-ignore format: one row a line, as the printed tables have it
export const asNzs = pipeRows({
  'as-nzs-1260-dn40-above': { ...aboveGround, nominal: 'DN 40', outside_m: 0.0429, wall_m: 0.002, bore_m: 0.0389, averageBore_m: null, mass_kg_m: 0.365 },
  'as-nzs-1260-dn50-above': { ...aboveGround, nominal: 'DN 50', outside_m: 0.0559, wall_m: 0.0022, bore_m: 0.0515, averageBore_m: null, mass_kg_m: 0.527 },
  'as-nzs-1260-dn65-above': { ...aboveGround, nominal: 'DN 65', outside_m: 0.0689, wall_m: 0.0027, bore_m: 0.0635, averageBore_m: null, mass_kg_m: 0.797 },
  'as-nzs-1260-dn80-above': { ...aboveGround, nominal: 'DN 80', outside_m: 0.0825, wall_m: 0.0029, bore_m: 0.0767, averageBore_m: null, mass_kg_m: 1.03 },
  'as-nzs-1260-dn100-sn6': { ...sn6, nominal: 'DN 100', outside_m: 0.1102, wall_m: 0.003, bore_m: 0.1042, averageBore_m: null, mass_kg_m: 1.435 },
  'as-nzs-1260-dn100-sn10': { ...sn10, nominal: 'DN 100', outside_m: 0.1102, wall_m: 0.0036, bore_m: 0.103, averageBore_m: null, mass_kg_m: 1.712 },
  'as-nzs-1260-dn150-sn4': { ...sn4, nominal: 'DN 150', outside_m: 0.1603, wall_m: 0.0039, bore_m: 0.1525, averageBore_m: null, mass_kg_m: 2.721 },
  'as-nzs-1260-dn150-sn8': { ...sn8, nominal: 'DN 150', outside_m: 0.1603, wall_m: 0.0048, bore_m: 0.1507, averageBore_m: null, mass_kg_m: 3.33 },
  'as-nzs-1477-dn50-pn9': { ...pn9, nominal: 'DN 50', outside_m: 0.06035, wall_m: 0.0024, bore_m: 0.05555, averageBore_m: null, mass_kg_m: 0.62 },
  'as-nzs-1477-dn65-pn9': { ...pn9, nominal: 'DN 65', outside_m: 0.07535, wall_m: 0.003, bore_m: 0.06935, averageBore_m: null, mass_kg_m: 0.968 },
  'as-nzs-1477-dn80-pn9': { ...pn9, nominal: 'DN 80', outside_m: 0.0889, wall_m: 0.0035, bore_m: 0.0819, averageBore_m: null, mass_kg_m: 1.333 },
  'as-nzs-1477-dn100-pn9': { ...pn9, nominal: 'DN 100', outside_m: 0.1143, wall_m: 0.0045, bore_m: 0.1053, averageBore_m: null, mass_kg_m: 2.204 },
  'as-nzs-1477-dn125-pn9': { ...pn9, nominal: 'DN 125', outside_m: 0.1402, wall_m: 0.0055, bore_m: 0.1292, averageBore_m: null, mass_kg_m: 3.305 },
  'as-nzs-1477-dn150-pn9': { ...pn9, nominal: 'DN 150', outside_m: 0.16025, wall_m: 0.0063, bore_m: 0.14765, averageBore_m: null, mass_kg_m: 4.327 },
  'as-nzs-1477-dn20-pn12': { ...pn12, nominal: 'DN 20', outside_m: 0.02675, wall_m: 0.0014, bore_m: 0.02395, averageBore_m: null, mass_kg_m: 0.158 },
  'as-nzs-1477-dn25-pn12': { ...pn12, nominal: 'DN 25', outside_m: 0.03355, wall_m: 0.0017, bore_m: 0.03015, averageBore_m: null, mass_kg_m: 0.242 },
  'as-nzs-1477-dn32-pn12': { ...pn12, nominal: 'DN 32', outside_m: 0.04225, wall_m: 0.0022, bore_m: 0.03785, averageBore_m: null, mass_kg_m: 0.393 },
  'as-nzs-1477-dn40-pn12': { ...pn12, nominal: 'DN 40', outside_m: 0.04825, wall_m: 0.0025, bore_m: 0.04325, averageBore_m: null, mass_kg_m: 0.51 },
  'as-nzs-1477-dn50-pn12': { ...pn12, nominal: 'DN 50', outside_m: 0.06035, wall_m: 0.0031, bore_m: 0.05415, averageBore_m: null, mass_kg_m: 0.792 },
  'as-nzs-1477-dn65-pn12': { ...pn12, nominal: 'DN 65', outside_m: 0.07535, wall_m: 0.0039, bore_m: 0.06755, averageBore_m: null, mass_kg_m: 1.243 },
  'as-nzs-1477-dn80-pn12': { ...pn12, nominal: 'DN 80', outside_m: 0.0889, wall_m: 0.0046, bore_m: 0.0797, averageBore_m: null, mass_kg_m: 1.73 },
  'as-nzs-1477-dn100-pn12': { ...pn12, nominal: 'DN 100', outside_m: 0.1143, wall_m: 0.0059, bore_m: 0.1025, averageBore_m: null, mass_kg_m: 2.853 },
  'as-nzs-1477-dn125-pn12': { ...pn12, nominal: 'DN 125', outside_m: 0.1402, wall_m: 0.0073, bore_m: 0.1256, averageBore_m: null, mass_kg_m: 4.328 },
  'as-nzs-1477-dn150-pn12': { ...pn12, nominal: 'DN 150', outside_m: 0.16025, wall_m: 0.0083, bore_m: 0.14365, averageBore_m: null, mass_kg_m: 5.626 },
  'as-nzs-1477-dn15-pn18': { ...pn18, nominal: 'DN 15', outside_m: 0.02135, wall_m: 0.0016, bore_m: 0.01815, averageBore_m: null, mass_kg_m: 0.141 },
  'as-nzs-1477-dn20-pn18': { ...pn18, nominal: 'DN 20', outside_m: 0.02675, wall_m: 0.002, bore_m: 0.02275, averageBore_m: null, mass_kg_m: 0.221 },
  'as-nzs-1477-dn25-pn18': { ...pn18, nominal: 'DN 25', outside_m: 0.03355, wall_m: 0.0025, bore_m: 0.02855, averageBore_m: null, mass_kg_m: 0.346 },
  'as-nzs-1477-dn32-pn18': { ...pn18, nominal: 'DN 32', outside_m: 0.04225, wall_m: 0.0032, bore_m: 0.03585, averageBore_m: null, mass_kg_m: 0.557 },
  'as-nzs-1477-dn40-pn18': { ...pn18, nominal: 'DN 40', outside_m: 0.04825, wall_m: 0.0036, bore_m: 0.04105, averageBore_m: null, mass_kg_m: 0.717 },
  'as-nzs-1477-dn50-pn18': { ...pn18, nominal: 'DN 50', outside_m: 0.06035, wall_m: 0.0046, bore_m: 0.05115, averageBore_m: null, mass_kg_m: 1.144 },
  'as-nzs-1477-dn65-pn18': { ...pn18, nominal: 'DN 65', outside_m: 0.07535, wall_m: 0.0057, bore_m: 0.06395, averageBore_m: null, mass_kg_m: 1.771 },
  'as-nzs-1477-dn80-pn18': { ...pn18, nominal: 'DN 80', outside_m: 0.0889, wall_m: 0.0067, bore_m: 0.0755, averageBore_m: null, mass_kg_m: 2.457 },
  'as-nzs-1477-dn100-pn18': { ...pn18, nominal: 'DN 100', outside_m: 0.1143, wall_m: 0.0086, bore_m: 0.0971, averageBore_m: null, mass_kg_m: 4.055 },
  'as-nzs-1477-dn125-pn18': { ...pn18, nominal: 'DN 125', outside_m: 0.1402, wall_m: 0.0106, bore_m: 0.119, averageBore_m: null, mass_kg_m: 6.128 },
  'as-nzs-1477-dn150-pn18': { ...pn18, nominal: 'DN 150', outside_m: 0.16025, wall_m: 0.0121, bore_m: 0.13605, averageBore_m: null, mass_kg_m: 7.997 },
})
