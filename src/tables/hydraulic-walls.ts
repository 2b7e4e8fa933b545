import { table } from './table.ts'

/** Inner walls that water meets: how rough they are and how it wets them. */
export const walls = table({
  title: 'Walls of tubes and columns',
  columns: { roughness_m: 'equivalent sand roughness' },
  source: 'LMNO.minor',
  rows: {
    plastic: { roughness_m: 1.5e-6, note: 'drawn tubing; some tables print 0 for plastic' },
  },
})

/** Contact angle of water on the bore; a small one wets easily. Radians, from degrees where the source has degrees. */
export const wallWetting = table({
  title: 'Contact angle of water on the bore of a column',
  columns: { contactAngle_rad: 'contact angle used', state: 'state of the wall' },
  source: 'from-memory',
  rows: {
    cleanPvc: { contactAngle_rad: (85 * Math.PI) / 180, state: 'new and clean', note: 'reported 80 to 87 degrees' },
    runIn: {
      contactAngle_rad: (40 * Math.PI) / 180,
      state: 'run in, wetted before, thin biofilm',
      source: 'common-practice',
      note: 'films are seen to persist well below the rate that clean plastic needs; no measured angle was found',
    },
  },
})

/** Manning roughness of smooth plastic drains that run part full. */
export const drainRoughness = table({
  title: 'Manning roughness of drains',
  columns: { manningLow: 'smooth end [s/m^(1/3)]', manningHigh: 'rough end [s/m^(1/3)]' },
  source: 'from-memory',
  rows: { plastic: { manningLow: 0.009, manningHigh: 0.011 } },
})
