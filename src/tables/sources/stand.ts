import { sourcesOf } from '../source.ts'

/** Wind, tipping, bending and what stands. */
export const standSources = sourcesOf({
  'ASCE.7': {
    kind: 'standard',
    cite: 'ASCE/SEI 7, Minimum Design Loads',
    where: 'velocity pressure, exposure below 4.6 m, force coefficients of chimneys and tanks (fig. 29.4-1)',
    read: '2026-11-25',
  },
  'White.FluidMechanics': {
    kind: 'handbook',
    cite: 'White, F. M., Fluid Mechanics',
    where: 'table of drag of finite cylinders, subcritical flow',
    read: null,
  },
  'Moser.BuriedPipe': {
    kind: 'handbook',
    cite: 'Moser, A. P., Buried Pipe Design',
    where: 'p. 202, cell classes of ASTM D1784',
    read: '2026-11-25',
  },
  'PVC.pressure-derating': {
    kind: 'bulletin',
    cite: 'Data sheets of makers of PVC pressure pipe',
    where: 'derating of strength with temperature; several makers agree within 0.02',
    read: '2026-11-25',
  },
  'PVC.maker-properties': {
    kind: 'bulletin',
    cite: 'Data sheets of makers of PVC pipe',
    where: 'density, modulus, strength, thermal expansion, conduction',
    read: '2026-11-25',
  },
  'Timoshenko.beams': {
    kind: 'handbook',
    cite: 'Timoshenko, S., Strength of Materials',
    where: 'bending stress, deflection of a cantilever, buckling under own weight',
    read: null,
  },
  'IBC.1807': {
    kind: 'standard',
    cite: 'International Building Code, section 1807.3',
    where: 'embedded posts without restraint at the ground',
    read: null,
  },
  'ASTM.F2057': {
    kind: 'standard',
    cite: 'ASTM F2057-23, Clothing Storage Units',
    where: 'scope read at the publisher; test mass of a child from memory',
    read: '2026-11-25',
  },
  'EN.14749': {
    kind: 'standard',
    cite: 'EN 14749, domestic storage furniture',
    where: 'stability test with a vertical force, from memory',
    read: null,
  },
  'derived.moments': {
    kind: 'derived',
    cite: 'Balance of moments about the tipping edge, statics',
    where: 'mass times gravity times arm against force times height',
    read: null,
  },
  'derived.thin-ring': {
    kind: 'derived',
    cite: 'Second moment of a thin ring with equal holes at one level',
    where: 'integral of the thin ring outside of the holes, three or more equally spaced',
    read: null,
  },
  'CGPM.1901': {
    kind: 'standard',
    cite: '3rd General Conference on Weights and Measures, 1901',
    where: 'declaration on weight: standard gravity 9.80665 m/s2',
    read: null,
  },
  'CGPM.1954': {
    kind: 'standard',
    cite: '10th General Conference on Weights and Measures, 1954',
    where: 'resolution 4: standard atmosphere 101 325 Pa',
    read: null,
  },
  'AISC.pipe': {
    kind: 'handbook',
    cite: 'AISC Steel Construction Manual, dimensions and properties of pipe',
    where: 'standard weight pipe 4 in: I 7.23 in4, S 3.21 in3',
    read: null,
  },
})
