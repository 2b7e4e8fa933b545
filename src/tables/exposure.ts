/** Limits of exposure and the safety figures of the build. They inform; local codes and licensed trades decide. */
import { type RowNotes, table } from './table.ts'

export const solventLimits = table({
  title: 'Solvents of cement and primer in the air',
  columns: {
    substance: 'solvent',
    body: 'who sets the limit',
    dayShare: 'share of volume over a working day (1 ppm = 1e-6)',
    shortShare: 'share of volume over 15 minutes',
  },
  source: 'Exposure.cement-sheet',
  // biome-ignore format: one row a line
  rows: {
    'tetrahydrofuran-OSHA': { substance: 'tetrahydrofuran', body: 'OSHA', dayShare: 200e-6, shortShare: null },
    'tetrahydrofuran-NIOSH': { substance: 'tetrahydrofuran', body: 'NIOSH', dayShare: 200e-6, shortShare: 250e-6 },
    'tetrahydrofuran-ACGIH': { substance: 'tetrahydrofuran', body: 'ACGIH', dayShare: 50e-6, shortShare: 100e-6 },
    'methyl-ethyl-ketone-NIOSH': { substance: 'methyl ethyl ketone', body: 'NIOSH', dayShare: 200e-6, shortShare: 300e-6 },
    'cyclohexanone-NIOSH': { substance: 'cyclohexanone', body: 'NIOSH', dayShare: 25e-6, shortShare: null },
    'cyclohexanone-ACGIH': { substance: 'cyclohexanone', body: 'ACGIH', dayShare: 20e-6, shortShare: 50e-6 },
    'acetone-NIOSH': { substance: 'acetone', body: 'NIOSH', dayShare: 250e-6, shortShare: null },
    'acetone-ACGIH': { substance: 'acetone', body: 'ACGIH', dayShare: 500e-6, shortShare: 750e-6 },
  },
})

export const roomNoise = table({
  title: 'Noise in rooms',
  columns: { level_dB: 'steady level that is to be kept below' },
  source: 'WHO.noise',
  rows: {
    sleeping: { level_dB: 30 },
    living: { level_dB: 35, note: 'dwellings by day, class rooms' },
  },
})

export const dustLimits = table({
  title: 'PVC dust in the air',
  columns: {
    body: 'who sets the limit',
    part: 'total dust or the part that reaches the lung',
    day_g_m3: 'mean over a working day',
  },
  source: 'Exposure.cement-sheet',
  rows: {
    'OSHA-total': { body: 'OSHA', part: 'total', day_g_m3: 0.015 },
    'OSHA-respirable': { body: 'OSHA', part: 'respirable', day_g_m3: 0.005 },
    'ACGIH-respirable': { body: 'ACGIH', part: 'respirable', day_g_m3: 0.003 },
  },
})

export const residualCurrents = table({
  title: 'Devices that cut the mains when current leaks to earth',
  columns: { trips_A: 'must trip at or above this', holds_A: 'must not trip below this' },
  source: 'UL.943',
  rows: {
    'US-class-A': { trips_A: 0.006, holds_A: 0.004 },
    'IEC-outdoors': { trips_A: 0.03, holds_A: null, source: 'RCD.outdoors', note: 'rated residual current at most' },
  },
})

const temperatures = {
  'hydrogen-chloride': {
    low_C: null,
    high_C: 180,
    source: 'PVC-U.properties',
    note: 'PVC gives off hydrogen chloride above',
  },
  'legionella-favourable': {
    low_C: 25,
    high_C: 45,
    source: 'CDC.Legionella',
    note: 'range in which the bacterium can grow',
  },
  'legionella-best': { low_C: 32, high_C: 42, source: 'WHO.Legionella', note: 'range in which it grows best' },
  'legionella-little': { low_C: null, high_C: 20, source: 'WHO.Legionella', note: 'little growth below' },
  'solution-safe': { low_C: null, high_C: 25, note: 'keep the solution below, for the roots as well' },
} as const satisfies Readonly<
  Record<string, RowNotes & { readonly low_C: number | null; readonly high_C: number | null }>
>

export const safetyTemperatures = {
  ...table({
    title: 'Temperatures for safety',
    columns: { low_C: 'lower end', high_C: 'upper end' },
    source: 'common-practice',
    rows: temperatures,
  }),
  rows: temperatures,
}

export const safetyLengths = table({
  title: 'Heights and openings for safety',
  columns: { limit_m: 'limit' },
  source: 'common-practice',
  rows: {
    'strap-above': { limit_m: 1.2, note: 'strap every taller column to a wall or frame' },
    'insect-mesh': {
      limit_m: 0.0016,
      source: 'Mosquito.mesh',
      note: 'mesh of every opening, at most: a sixteenth of an inch; mosquitoes lay eggs through wider ones',
    },
    'air-gap': {
      limit_m: 0.025,
      source: 'AirGap.city',
      note: 'filling hose above the rim, at least, and twice the bore of its outlet',
    },
  },
})

export const lifting = table({
  title: 'Loads to carry',
  columns: { alone_kg: 'move by two people or empty above this' },
  source: 'common-practice',
  rows: { pail: { alone_kg: 20 } },
})
