/** What cements to what, how long cement and silicone take, and what room a joint needs. */
import { table } from './table.ts'

/** Pairs of plastics in the order of their ids in the table of materials. */
export const cements = table({
  title: 'Which plastics cement together',
  columns: {
    one: 'id of a plastic',
    other: 'id of the other plastic',
    cement: 'kind of cement, or none',
    holds: 'whether a solvent-cemented joint holds',
  },
  source: 'from-memory',
  // biome-ignore format: one row a line
  rows: {
    'PVC-U+PVC-U': { one: 'PVC-U', other: 'PVC-U', cement: 'PVC', holds: true },
    'PVC-U+PVC-U-foam-core': { one: 'PVC-U', other: 'PVC-U-foam-core', cement: 'PVC', holds: true, note: 'on the skins only; no pressure' },
    'PVC-U-foam-core+PVC-U-foam-core': { one: 'PVC-U-foam-core', other: 'PVC-U-foam-core', cement: 'PVC', holds: true, note: 'on the skins only; no pressure' },
    'PVC-C+PVC-C': { one: 'PVC-C', other: 'PVC-C', cement: 'CPVC', holds: true },
    'PVC-U+PVC-C': { one: 'PVC-U', other: 'PVC-C', cement: 'CPVC', holds: true },
    'ABS+ABS': { one: 'ABS', other: 'ABS', cement: 'ABS', holds: true },
    'PVC-U+ABS': { one: 'PVC-U', other: 'ABS', cement: 'transition', holds: true, note: 'drain joints only, where the local code allows it' },
    'PVC-U-foam-core+ABS': { one: 'PVC-U-foam-core', other: 'ABS', cement: 'transition', holds: true, note: 'on the skin only' },
    'PVC-C+PVC-U-foam-core': { one: 'PVC-C', other: 'PVC-U-foam-core', cement: 'CPVC', holds: true, note: 'on the skins only' },
    'PVC-C+ABS': { one: 'PVC-C', other: 'ABS', cement: 'none', holds: false },
    'PP+PP': { one: 'PP', other: 'PP', cement: 'none', holds: false },
    'PP+PVC-U': { one: 'PP', other: 'PVC-U', cement: 'none', holds: false },
    'PP+PVC-U-foam-core': { one: 'PP', other: 'PVC-U-foam-core', cement: 'none', holds: false },
    'PP+PVC-C': { one: 'PP', other: 'PVC-C', cement: 'none', holds: false },
    'PP+ABS': { one: 'PP', other: 'ABS', cement: 'none', holds: false },
    'PP+PE-HD': { one: 'PP', other: 'PE-HD', cement: 'none', holds: false },
    'PE-HD+PE-HD': { one: 'PE-HD', other: 'PE-HD', cement: 'none', holds: false },
    'PE-HD+PVC-U': { one: 'PE-HD', other: 'PVC-U', cement: 'none', holds: false },
    'PE-HD+PVC-U-foam-core': { one: 'PE-HD', other: 'PVC-U-foam-core', cement: 'none', holds: false },
    'PE-HD+PVC-C': { one: 'PE-HD', other: 'PVC-C', cement: 'none', holds: false },
    'PE-HD+ABS': { one: 'PE-HD', other: 'ABS', cement: 'none', holds: false },
  },
})

const MINUTE_s = 60
const HOUR_s = 3600
const DAY_s = 86_400

/**
 * Initial set and cure by size and temperature: the range over two printed tables that disagree.
 * Between 2 and 3 in the two draw their line at different sizes, so those rows span both of the neighbours' sets.
 * The limits in diameter and temperature that part the rows lie between printed sizes.
 */
export const cementTimes = table({
  title: 'Times of solvent-cemented joints, relative humidity up to 60 %, lines under no great pressure',
  columns: {
    size: 'small 1/2 to 1-1/4 in, middle 1-1/2 to 2 in, between 2-1/2 to 3 in, large 4 to 8 in',
    outsideOver_m: 'outside diameters above this',
    outsideTo_m: 'outside diameters up to this',
    temperatureLow_C: 'lowest temperature of the row',
    temperatureHigh_C: 'highest temperature of the row',
    initialSetLow_s: 'time to careful handling, shorter table',
    initialSetHigh_s: 'time to careful handling, longer table',
    cureLow_s: 'time to pressure of 1.1 to 1.24 MPa, shorter table',
    cureHigh_s: 'time to pressure of 1.1 to 1.24 MPa, longer table',
  },
  source: 'CementTimes.manual',
  // biome-ignore format: one row a line
  rows: {
    'small-warm': { size: 'small', outsideOver_m: 0, outsideTo_m: 0.045, temperatureLow_C: 16, temperatureHigh_C: 38, initialSetLow_s: 2 * MINUTE_s, initialSetHigh_s: 15 * MINUTE_s, cureLow_s: 15 * MINUTE_s, cureHigh_s: HOUR_s },
    'middle-warm': { size: 'middle', outsideOver_m: 0.045, outsideTo_m: 0.065, temperatureLow_C: 16, temperatureHigh_C: 38, initialSetLow_s: 5 * MINUTE_s, initialSetHigh_s: 30 * MINUTE_s, cureLow_s: 30 * MINUTE_s, cureHigh_s: 2 * HOUR_s },
    'between-warm': { size: 'between', outsideOver_m: 0.065, outsideTo_m: 0.1, temperatureLow_C: 16, temperatureHigh_C: 38, initialSetLow_s: 5 * MINUTE_s, initialSetHigh_s: HOUR_s, cureLow_s: 30 * MINUTE_s, cureHigh_s: 2 * HOUR_s },
    'large-warm': { size: 'large', outsideOver_m: 0.1, outsideTo_m: 0.225, temperatureLow_C: 16, temperatureHigh_C: 38, initialSetLow_s: 30 * MINUTE_s, initialSetHigh_s: HOUR_s, cureLow_s: 1.5 * HOUR_s, cureHigh_s: 6 * HOUR_s },
    'small-cool': { size: 'small', outsideOver_m: 0, outsideTo_m: 0.045, temperatureLow_C: 4, temperatureHigh_C: 16, initialSetLow_s: 5 * MINUTE_s, initialSetHigh_s: HOUR_s, cureLow_s: 20 * MINUTE_s, cureHigh_s: 2 * HOUR_s },
    'middle-cool': { size: 'middle', outsideOver_m: 0.045, outsideTo_m: 0.065, temperatureLow_C: 4, temperatureHigh_C: 16, initialSetLow_s: 10 * MINUTE_s, initialSetHigh_s: 2 * HOUR_s, cureLow_s: 45 * MINUTE_s, cureHigh_s: 4 * HOUR_s },
    'between-cool': { size: 'between', outsideOver_m: 0.065, outsideTo_m: 0.1, temperatureLow_C: 4, temperatureHigh_C: 16, initialSetLow_s: 10 * MINUTE_s, initialSetHigh_s: 4 * HOUR_s, cureLow_s: 45 * MINUTE_s, cureHigh_s: 4 * HOUR_s },
    'large-cool': { size: 'large', outsideOver_m: 0.1, outsideTo_m: 0.225, temperatureLow_C: 4, temperatureHigh_C: 16, initialSetLow_s: 2 * HOUR_s, initialSetHigh_s: 4 * HOUR_s, cureLow_s: 4 * HOUR_s, cureHigh_s: 12 * HOUR_s },
    'small-cold': { size: 'small', outsideOver_m: 0, outsideTo_m: 0.045, temperatureLow_C: -18, temperatureHigh_C: 4, initialSetLow_s: 10 * MINUTE_s, initialSetHigh_s: 3 * HOUR_s, cureLow_s: 30 * MINUTE_s, cureHigh_s: 8 * HOUR_s },
    'middle-cold': { size: 'middle', outsideOver_m: 0.045, outsideTo_m: 0.065, temperatureLow_C: -18, temperatureHigh_C: 4, initialSetLow_s: 15 * MINUTE_s, initialSetHigh_s: 6 * HOUR_s, cureLow_s: HOUR_s, cureHigh_s: 16 * HOUR_s },
    'between-cold': { size: 'between', outsideOver_m: 0.065, outsideTo_m: 0.1, temperatureLow_C: -18, temperatureHigh_C: 4, initialSetLow_s: 15 * MINUTE_s, initialSetHigh_s: 12 * HOUR_s, cureLow_s: HOUR_s, cureHigh_s: 16 * HOUR_s },
    'large-cold': { size: 'large', outsideOver_m: 0.1, outsideTo_m: 0.225, temperatureLow_C: -18, temperatureHigh_C: 4, initialSetLow_s: 12 * HOUR_s, initialSetHigh_s: 12 * HOUR_s, cureLow_s: 48 * HOUR_s, cureHigh_s: 72 * HOUR_s, source: 'CementTimes.schedule' },
  },
})

export type CementTimeId = keyof typeof cementTimes.rows

/** Damp air slows cement. */
export const dampAir = table({
  title: 'Cement in damp air',
  columns: {
    over: 'relative humidity (share) above which the rule holds',
    longer: 'factor on every time of the table',
  },
  source: 'CementTimes.manual',
  rows: { damp: { over: 0.6, longer: 1.5 } },
})

/** Waits of the build after a joint is made; the times of the cement itself come first. */
export const waits = table({
  title: 'Waits after joining',
  columns: {
    what: 'what is waited for',
    waitLow_s: 'least wait',
    waitHigh_s: 'longest wait read or advised',
  },
  source: 'common-practice',
  // biome-ignore format: one row a line
  rows: {
    'cement-fill': { what: 'water after the last cement', waitLow_s: DAY_s, waitHigh_s: DAY_s },
    'cement-plants': { what: 'plants after the last cement, and a flush', waitLow_s: 2 * DAY_s, waitHigh_s: 2 * DAY_s },
    'silicone-skin': { what: 'skin of silicone', waitLow_s: 5 * MINUTE_s, waitHigh_s: HOUR_s, source: 'Silicone.skin', note: 'commonly 10 to 30 min' },
    'silicone-water': { what: 'water on silicone', waitLow_s: DAY_s, waitHigh_s: 21 * DAY_s, source: 'Silicone.water', note: 'thick beads longest; faster warm and damp; see silicone-depth-per-day' },
    'epoxy-water': { what: 'water on epoxy', waitLow_s: DAY_s, waitHigh_s: 7 * DAY_s, note: 'as the maker says; slower cold' },
  },
})

/** Room between a stub and its hole, on the diameter. */
export const holeClearances = table({
  title: 'Hole over the outside diameter of the stub',
  columns: { clearanceLow_m: 'least clearance on the diameter', clearanceHigh_m: 'greatest clearance on the diameter' },
  source: 'common-practice',
  rows: {
    cement: { clearanceLow_m: 0.0003, clearanceHigh_m: 0.0005 },
    silicone: { clearanceLow_m: 0.001, clearanceHigh_m: 0.002 },
    grommet: { clearanceLow_m: null, clearanceHigh_m: null, note: 'as the maker of the grommet says' },
  },
})
