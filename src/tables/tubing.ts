import { table } from './table.ts'

/** Tube and hose with the bore of the barbs made for it. Treat each barb as a sharp contraction to the bore listed. */
export const tubing = table({
  title: 'Tube, hose and barbs',
  columns: {
    kind: 'what the tube is sold as',
    nominal: 'size as the trade names it',
    namedBy: 'bore, outside, or neither, where one name stands for several tubes',
    bore_m: 'inside diameter',
    outside_m: 'outside diameter',
    barbBoreLow_m: 'narrowest bore of a barb for the tube (varies: measure)',
    barbBoreHigh_m: 'widest bore of a barb for the tube (varies: measure)',
  },
  source: 'common-practice',
  // biome-ignore format: one row a line
  rows: {
    'vinyl-0.25in': { kind: 'clear vinyl tube', nominal: '1/4 in', namedBy: 'bore', bore_m: 0.00635, outside_m: 0.00953, barbBoreLow_m: 0.0038, barbBoreHigh_m: 0.0043 },
    'vinyl-0.375in': { kind: 'clear vinyl tube', nominal: '3/8 in', namedBy: 'bore', bore_m: 0.00953, outside_m: 0.0127, barbBoreLow_m: 0.0062, barbBoreHigh_m: 0.0068 },
    'vinyl-0.5in': { kind: 'clear vinyl tube', nominal: '1/2 in', namedBy: 'bore', bore_m: 0.0127, outside_m: 0.01588, barbBoreLow_m: 0.009, barbBoreHigh_m: 0.0096 },
    'vinyl-0.625in': { kind: 'clear vinyl tube', nominal: '5/8 in', namedBy: 'bore', bore_m: 0.01588, outside_m: 0.02064, barbBoreLow_m: 0.012, barbBoreHigh_m: 0.0127 },
    'vinyl-0.75in': { kind: 'clear vinyl tube', nominal: '3/4 in', namedBy: 'bore', bore_m: 0.01905, outside_m: 0.0254, barbBoreLow_m: 0.0145, barbBoreHigh_m: 0.0155 },
    'vinyl-1in': { kind: 'clear vinyl tube', nominal: '1 in', namedBy: 'bore', bore_m: 0.0254, outside_m: 0.03175, barbBoreLow_m: 0.02, barbBoreHigh_m: 0.021 },
    'polyethylene-0.5in-13.21': { kind: 'polyethylene irrigation tube', nominal: '1/2 in', namedBy: 'neither', bore_m: 0.01321, outside_m: 0.01575, barbBoreLow_m: 0.0105, barbBoreHigh_m: 0.0125, source: 'Polytube.guides', note: 'one of five tubes of this name; barb bore common practice' },
    'polyethylene-0.5in-14.48': { kind: 'polyethylene irrigation tube', nominal: '1/2 in', namedBy: 'neither', bore_m: 0.01448, outside_m: 0.01702, barbBoreLow_m: 0.0105, barbBoreHigh_m: 0.0125, source: 'Polytube.guides', note: 'one of five tubes of this name; barb bore common practice' },
    'polyethylene-0.5in-14.73': { kind: 'polyethylene irrigation tube', nominal: '1/2 in', namedBy: 'neither', bore_m: 0.01473, outside_m: 0.01778, barbBoreLow_m: 0.0105, barbBoreHigh_m: 0.0125, source: 'Polytube.guides', note: 'one of five tubes of this name; barb bore common practice' },
    'polyethylene-0.5in-15.24': { kind: 'polyethylene irrigation tube', nominal: '1/2 in', namedBy: 'neither', bore_m: 0.01524, outside_m: 0.01778, barbBoreLow_m: 0.0105, barbBoreHigh_m: 0.0125, source: 'Polytube.guides', note: 'one of five tubes of this name; barb bore common practice' },
    'polyethylene-0.5in-15.75': { kind: 'polyethylene irrigation tube', nominal: '1/2 in', namedBy: 'neither', bore_m: 0.01575, outside_m: 0.01803, barbBoreLow_m: 0.0105, barbBoreHigh_m: 0.0125, source: 'Polytube.guides', note: 'one of five tubes of this name; barb bore common practice' },
    'polyethylene-0.75in': { kind: 'polyethylene irrigation tube', nominal: '3/4 in', namedBy: 'neither', bore_m: 0.02083, outside_m: 0.02388, barbBoreLow_m: 0.017, barbBoreHigh_m: 0.018, source: 'from-memory' },
    'micro-0.25in': { kind: 'micro tube', nominal: '1/4 in', namedBy: 'outside', bore_m: 0.00432, outside_m: 0.00635, barbBoreLow_m: 0.0023, barbBoreHigh_m: 0.0028, source: 'from-memory' },
    'drip-12': { kind: 'polyethylene drip pipe', nominal: '12 mm', namedBy: 'outside', bore_m: 0.0098, outside_m: 0.012, barbBoreLow_m: 0.007, barbBoreHigh_m: 0.008, note: 'wall 1.0 to 1.4 mm by class' },
    'drip-16': { kind: 'polyethylene drip pipe', nominal: '16 mm', namedBy: 'outside', bore_m: 0.0137, outside_m: 0.016, barbBoreLow_m: 0.0105, barbBoreHigh_m: 0.0115, note: 'wall 1.0 to 1.4 mm by class' },
    'drip-20': { kind: 'polyethylene drip pipe', nominal: '20 mm', namedBy: 'outside', bore_m: 0.0172, outside_m: 0.02, barbBoreLow_m: 0.014, barbBoreHigh_m: 0.015, note: 'wall 1.0 to 1.4 mm by class' },
    'hose-12': { kind: 'PVC hose', nominal: '12 mm', namedBy: 'bore', bore_m: 0.012, outside_m: 0.016, barbBoreLow_m: 0.0085, barbBoreHigh_m: 0.0095 },
    'hose-13': { kind: 'PVC hose', nominal: '13 mm', namedBy: 'bore', bore_m: 0.013, outside_m: 0.017, barbBoreLow_m: 0.0095, barbBoreHigh_m: 0.01 },
    'hose-16': { kind: 'PVC hose', nominal: '16 mm', namedBy: 'bore', bore_m: 0.016, outside_m: 0.02, barbBoreLow_m: 0.012, barbBoreHigh_m: 0.0125 },
    'hose-19': { kind: 'PVC hose', nominal: '19 mm', namedBy: 'bore', bore_m: 0.019, outside_m: 0.024, barbBoreLow_m: 0.015, barbBoreHigh_m: 0.0155 },
    'hose-20': { kind: 'PVC hose', nominal: '20 mm', namedBy: 'bore', bore_m: 0.02, outside_m: 0.025, barbBoreLow_m: 0.0155, barbBoreHigh_m: 0.0165 },
    'hose-25': { kind: 'PVC hose', nominal: '25 mm', namedBy: 'bore', bore_m: 0.025, outside_m: 0.031, barbBoreLow_m: 0.02, barbBoreHigh_m: 0.021 },
  },
})

export type TubeId = keyof typeof tubing.rows
