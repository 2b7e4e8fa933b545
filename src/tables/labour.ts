/** How long the acts of a build take in the hands of somebody who does them for the first time. */
import { table } from './table.ts'

const MINUTE_s = 60

export const labour = table({
  title: 'Hands-on time of the acts of a build',
  columns: {
    once_s: 'to set up and clear away',
    each_s: 'for each piece, site, column or tank, as the note says',
    of: 'what is counted',
  },
  source: 'common-practice',
  // biome-ignore format: one row a line
  rows: {
    gather: { once_s: 20 * MINUTE_s, each_s: 0, of: 'once' },
    'measure-pipe': { once_s: 5 * MINUTE_s, each_s: 0, of: 'once' },
    print: { once_s: 10 * MINUTE_s, each_s: 0, of: 'once' },
    'bar-check': { once_s: 2 * MINUTE_s, each_s: 0, of: 'once' },
    closure: { once_s: 5 * MINUTE_s, each_s: 0, of: 'once' },
    'cut-column': { once_s: 5 * MINUTE_s, each_s: 10 * MINUTE_s, of: 'column' },
    'draw-lines': { once_s: 5 * MINUTE_s, each_s: 4 * MINUTE_s, of: 'line' },
    'mark-sites': { once_s: 5 * MINUTE_s, each_s: MINUTE_s, of: 'site' },
    'cut-stubs': { once_s: 15 * MINUTE_s, each_s: 3 * MINUTE_s, of: 'site' },
    'trace-holes': { once_s: 5 * MINUTE_s, each_s: 2 * MINUTE_s, of: 'site' },
    'cut-holes': { once_s: 10 * MINUTE_s, each_s: 6 * MINUTE_s, of: 'site' },
    'saw-slits': { once_s: 10 * MINUTE_s, each_s: 3 * MINUTE_s, of: 'site' },
    'form-pockets': { once_s: 15 * MINUTE_s, each_s: 8 * MINUTE_s, of: 'site' },
    'assemble-fittings': { once_s: 15 * MINUTE_s, each_s: 8 * MINUTE_s, of: 'site' },
    deburr: { once_s: 5 * MINUTE_s, each_s: 2 * MINUTE_s, of: 'site' },
    'light-test': { once_s: 5 * MINUTE_s, each_s: 2 * MINUTE_s, of: 'column' },
    'dry-fit': { once_s: 5 * MINUTE_s, each_s: 2 * MINUTE_s, of: 'site' },
    'join-stubs': { once_s: 15 * MINUTE_s, each_s: 3 * MINUTE_s, of: 'site' },
    fillet: { once_s: 10 * MINUTE_s, each_s: 2 * MINUTE_s, of: 'site' },
    distributor: { once_s: 5 * MINUTE_s, each_s: 15 * MINUTE_s, of: 'column' },
    lid: { once_s: 10 * MINUTE_s, each_s: 30 * MINUTE_s, of: 'tank' },
    base: { once_s: 5 * MINUTE_s, each_s: 15 * MINUTE_s, of: 'column' },
    plumbing: { once_s: 10 * MINUTE_s, each_s: 15 * MINUTE_s, of: 'column' },
    electricity: { once_s: 5 * MINUTE_s, each_s: 5 * MINUTE_s, of: 'tank' },
    stand: { once_s: 10 * MINUTE_s, each_s: 10 * MINUTE_s, of: 'column' },
    strap: { once_s: 10 * MINUTE_s, each_s: 15 * MINUTE_s, of: 'column' },
    'plug-test': { once_s: 5 * MINUTE_s, each_s: 10 * MINUTE_s, of: 'column' },
    fill: { once_s: 5 * MINUTE_s, each_s: 15 * MINUTE_s, of: 'tank' },
    'run-low': { once_s: 5 * MINUTE_s, each_s: 5 * MINUTE_s, of: 'column' },
    'run-full': { once_s: 0, each_s: 5 * MINUTE_s, of: 'column' },
    'bucket-test': { once_s: 5 * MINUTE_s, each_s: 5 * MINUTE_s, of: 'tank' },
    wetting: { once_s: 0, each_s: MINUTE_s / 2, of: 'site' },
    'stop-restart': { once_s: 5 * MINUTE_s, each_s: 5 * MINUTE_s, of: 'tank' },
    'run-day': { once_s: 10 * MINUTE_s, each_s: 0, of: 'once' },
    'stand-night': { once_s: 10 * MINUTE_s, each_s: 0, of: 'once' },
    flush: { once_s: 5 * MINUTE_s, each_s: 20 * MINUTE_s, of: 'tank' },
    feed: { once_s: 30 * MINUTE_s, each_s: 10 * MINUTE_s, of: 'tank' },
    plant: { once_s: 10 * MINUTE_s, each_s: MINUTE_s / 2, of: 'site' },
  },
})

export type ActId = keyof typeof labour.rows

/** Times of the tests between stages that the table of practice does not hold. */
export const testTimes = table({
  title: 'Tests of a new tower',
  columns: { hold_s: 'how long it is held or run' },
  source: 'common-practice',
  rows: {
    'run-low': { hold_s: 15 * MINUTE_s, note: 'film creeps through gaps at low flow that it jumps at full flow' },
    'run-full': { hold_s: 15 * MINUTE_s },
    drainback: { hold_s: 10 * MINUTE_s, note: 'until the level in the tank stands still' },
    'stand-night': { hold_s: 24 * 60 * MINUTE_s, note: 'filled, pump off, dry paper under the joints' },
  },
})
