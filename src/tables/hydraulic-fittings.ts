import { table } from './table.ts'

/**
 * Loss coefficients h = K v²/2g, v in the bore of the fitting. Handbooks spread by −20 to +30 % even for large fittings;
 * `usual` is the printed value, or the middle where a range is printed.
 */
export const fittingLosses = table({
  title: 'Loss coefficients of fittings',
  columns: {
    lossLow: 'lowest printed coefficient [1]',
    lossUsual: 'printed coefficient, or middle of the printed range [1]',
    lossHigh: 'highest printed coefficient [1]',
  },
  source: 'PeCalc.minor',
  rows: {
    entranceSharp: { lossLow: 0.5, lossUsual: 0.5, lossHigh: 0.57, note: 'upper end after Rennels' },
    entranceProjecting: { lossLow: 0.8, lossUsual: 0.9, lossHigh: 1 },
    entranceRounded: { lossLow: 0.04, lossUsual: 0.045, lossHigh: 0.05, note: 'radius at least 0.15 of the bore' },
    exit: { lossLow: 1, lossUsual: 1, lossHigh: 1, note: 'into open water or air, any shape' },
    elbow90: { lossLow: 0.9, lossUsual: 1.2, lossHigh: 1.5, note: 'threaded, regular radius' },
    elbow90Long: { lossLow: 0.6, lossUsual: 0.65, lossHigh: 0.7, note: 'threaded, long radius' },
    mitre90: { lossLow: 1.1, lossUsual: 1.2, lossHigh: 1.3 },
    elbow45: { lossLow: 0.4, lossUsual: 0.4, lossHigh: 0.4, note: 'threaded' },
    teeRun: { lossLow: 0.2, lossUsual: 0.9, lossHigh: 0.9, note: 'threaded 0.9, flanged 0.2' },
    teeBranch: {
      lossLow: 1,
      lossUsual: 2,
      lossHigh: 2,
      note: 'threaded 2.0, flanged 1.0; plastic tees of 13 mm were measured markedly higher (Kalenik et al., Water 12(3), 2020, 895, abstract)',
    },
    ballValveOpen: { lossLow: 0.05, lossUsual: 0.05, lossHigh: 0.05 },
    gateValveOpen: { lossLow: 0.15, lossUsual: 0.175, lossHigh: 0.2, source: 'LMNO.minor' },
    gateValveQuarterClosed: { lossLow: 0.26, lossUsual: 0.26, lossHigh: 1, source: 'LMNO.minor' },
    gateValveHalfClosed: { lossLow: 2.1, lossUsual: 2.1, lossHigh: 5.6, source: 'LMNO.minor' },
    gateValveThreeQuartersClosed: { lossLow: 17, lossUsual: 17, lossHigh: 17, source: 'LMNO.minor' },
    globeValveOpen: { lossLow: 6, lossUsual: 8, lossHigh: 10 },
    swingCheck: { lossLow: 2, lossUsual: 2.25, lossHigh: 2.5 },
  },
})
