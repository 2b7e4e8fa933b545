import { sourcesOf } from '../source.ts'

/** A relation worked out for rootfall; its derivation stands under the heading in docs/geometry.md. */
const derivation = (heading: string, cite: string) =>
  ({ kind: 'derived', cite, where: `docs/geometry.md, ${heading}`, read: null }) as const

export const geometrySources = sourcesOf({
  'Geometry.crossing': derivation(
    'Crossing of two cylinders',
    'Curve in which a tube meets a cylinder about the column axis',
  ),
  'Geometry.hole': derivation('Hole cut along the stub axis', 'Extent, outline, area and volume of the axis-cut hole'),
  'Geometry.square-cut': derivation('Hole cut square to the wall', 'Envelope of the crossing curves through the wall'),
  'Geometry.stub-end': derivation('Ends of a stub', 'Saddle, flush and mitred ends, lengths, lip and volume of a stub'),
  'Geometry.trace': derivation('Tracing a mitred end', 'Error of an edge traced along the level'),
  'Geometry.bore': derivation('Room in the bore', 'Gaps between stub ends in the bore'),
  'Geometry.contact': derivation('Areas that touch', 'Saddle ring and wall of the hole'),
  'Geometry.saw': derivation('Depth of a hole saw', 'First and last tooth of a saw held along the stub axis'),
  'Geometry.ligament': derivation('Wall left between holes', 'Shortest distances between holes'),
  'Geometry.section': derivation('Section left at a level', 'Area and moments of what is left of the wall'),
  'Geometry.cup': derivation('Seat and reach of a cup', 'Rim, slit and foot of a cup in a stub'),
  'Geometry.pocket': derivation('Pocket formed with heat', 'Slit that opens into a loop'),
  'Geometry.other-sites': derivation('Plain holes and fittings', 'Level hole without a stub; branch fittings'),
  'Geometry.lattice': derivation('Lattice of sites', 'Lines, rings, counts and distances of mouths'),
  'Geometry.helix': derivation('Helix of sites', 'Nearest mouths on a helix'),
  'Geometry.marks': derivation('Marks from one datum', 'Rounding of running dimensions'),
  'Geometry.floor': derivation('Floor that a tower takes', 'Circles of canopy and of walking'),
  'Geometry.solids': {
    kind: 'dataset',
    cite: 'Check set of seven joints, 1024-facet boolean solids and brute-force scans compared with closed forms, figures to six digits',
    where: 'test/data/geometry-cases.json',
    read: '2026-11-25',
  },
  'Geometry.trace-table': {
    kind: 'dataset',
    cite: 'Check set of traced edges and their gaps, computed by dense scan, four decimals',
    where: 'test/data/geometry-cases.json, trace_error_over_R and trace_true_gap_over_R',
    read: '2026-11-25',
  },
  'Geometry.layout-table': {
    kind: 'dataset',
    cite: 'Check set of lattices and helices, computed by enumeration, six digits',
    where: 'test/data/geometry-cases.json, layout_nearest, layout_min_pitch and helix',
    read: '2026-11-25',
  },
  Steinmetz: {
    kind: 'handbook',
    cite: 'Solid common to two equal cylinders crossing at a right angle, volume 16/3 r³, known from Archimedes (The Method)',
    where: 'any text on solids of revolution, "Steinmetz solid"',
    read: null,
  },
  'AbramowitzStegun1972.elliptic': {
    kind: 'handbook',
    cite: 'Abramowitz, M.; Stegun, I. A. (1972). Handbook of Mathematical Functions',
    where: 'chapter 17, tables 17.1 and 17.2; 17.6 arithmetic-geometric mean',
    read: null,
  },
})
