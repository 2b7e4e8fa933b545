import { table } from './table.ts'

/** Buckets that people have at hand, for telling a flow by the time in which one fills. */
export const buckets = table({
  title: 'Buckets for telling a flow',
  columns: { volume_m3: 'volume to its mark' },
  source: 'common-practice',
  rows: {
    litres: { volume_m3: 0.01, note: 'the common household bucket' },
    gallon: { volume_m3: 3.785411784e-3, note: 'a gallon jug, where gallons are read' },
  },
})
