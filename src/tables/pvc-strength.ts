import { table } from './table.ts'

/** Strength of warm PVC pipe against that at 22.8 °C. */
export const pvcDerating = table({
  title: 'Derating of PVC-U pipe with temperature',
  columns: { temperature_C: 'temperature of the wall', strengthShare: 'share of the strength at 22.8 °C' },
  source: 'PVC.pressure-derating',
  rows: {
    '73F': { temperature_C: 22.8, strengthShare: 1 },
    '80F': { temperature_C: 26.7, strengthShare: 0.88 },
    '90F': { temperature_C: 32.2, strengthShare: 0.75 },
    '100F': { temperature_C: 37.8, strengthShare: 0.62 },
    '110F': { temperature_C: 43.3, strengthShare: 0.51 },
    '120F': { temperature_C: 48.9, strengthShare: 0.4 },
    '130F': { temperature_C: 54.4, strengthShare: 0.31 },
    '140F': { temperature_C: 60, strengthShare: 0.22 },
  },
})

/** Stiffness of warm PVC pipe; unconfirmed. */
export const pvcStiffness = table({
  title: 'Modulus of PVC-U with temperature',
  columns: { temperature_C: 'temperature of the wall', modulusShare: 'share of the modulus at 22.8 °C' },
  source: 'from-memory',
  rows: {
    '73F': { temperature_C: 22.8, modulusShare: 1 },
    '90F': { temperature_C: 32.2, modulusShare: 0.93 },
    '100F': { temperature_C: 37.8, modulusShare: 0.88 },
    '110F': { temperature_C: 43.3, modulusShare: 0.84 },
    '120F': { temperature_C: 48.9, modulusShare: 0.79 },
    '140F': { temperature_C: 60, modulusShare: 0.7 },
  },
})

/** Plain PVC-U pipe at room temperature. */
export const pipePlastics = table({
  title: 'Strength and stiffness of pipe plastics, 23 °C',
  columns: {
    tensile_Pa: 'tensile strength, short term',
    design_Pa: 'stress that may last: hydrostatic design stress at 22.8 °C',
    modulus_Pa: 'modulus, short term',
    modulusLong_Pa: 'apparent modulus after 50 years',
    density_kg_m3: 'density',
    expansion_per_K: 'thermal expansion',
  },
  source: 'PVC.maker-properties',
  rows: {
    'pvc-u': {
      tensile_Pa: 48.3e6,
      design_Pa: 13.8e6,
      modulus_Pa: 2.76e9,
      modulusLong_Pa: 1.2e9,
      density_kg_m3: 1400,
      expansion_per_K: 5.2e-5,
      source: 'Moser.BuriedPipe',
      note: 'cell class 12454 minima; long-term modulus, density, expansion from makers (PVC.maker-properties)',
    },
    'pvc-u-drain': {
      tensile_Pa: 41.4e6,
      design_Pa: 11e6,
      modulus_Pa: 2.76e9,
      modulusLong_Pa: 0.97e9,
      density_kg_m3: 1420,
      expansion_per_K: 7e-5,
      source: 'from-memory',
      note: 'drain pipe, cell class 12364 or unknown; foam core is weaker still: ask its maker',
    },
  },
})
