import { table } from './table.ts'

/** What is between the two numbers on a pump's box, and what years take from it. */
export const pumpPractice = table({
  title: 'Practice for small submerged pumps',
  columns: { low: 'low end [1]', high: 'high end [1]' },
  source: 'common-practice',
  rows: {
    curveExponent: { low: 1, high: 2, note: 'head falls as a straight line (1) to a parabola (2) of the flow' },
    wornShare: { low: 0.1, high: 0.2, note: 'what a worn pump has lost of both box numbers' },
    bucketError: { low: 0.02, high: 0.05, note: 'error of a flow by bucket and stopwatch' },
  },
})
