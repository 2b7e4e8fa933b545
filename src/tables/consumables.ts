/** What a joint uses up, in what packs it is sold, and how much more than needed is bought. */
import { table } from './table.ts'

export const jointUse = table({
  title: 'What joints use up by their area',
  columns: {
    perAreaLow_m: 'volume over area of joint, both faces coated: least',
    perAreaHigh_m: 'volume over area of joint, both faces coated: most',
  },
  source: 'from-memory',
  rows: {
    cement: {
      perAreaLow_m: 0.0018,
      perAreaHigh_m: 0.0022,
      note: 'from joints per quart of the trade (300 of 1/2 in, 60 of 2 in, 30 of 4 in) over the area of their sockets',
    },
    primer: { perAreaLow_m: 0.0006, perAreaHigh_m: 0.0011, note: 'a third to a half of the cement' },
    epoxy: { perAreaLow_m: 0.001, perAreaHigh_m: 0.002, source: 'common-practice', note: 'thick bond line' },
  },
})

export const filletUse = table({
  title: 'Bead of sealant round a joint',
  columns: {
    leg_m: 'both legs of the triangle that the bead fills',
    waste: 'share lost in nozzle and tooling',
  },
  source: 'common-practice',
  rows: { bead: { leg_m: 0.006, waste: 0.2 } },
})

export const perJointUse = table({
  title: 'What each joint uses up',
  columns: { alcohol_m3: 'isopropanol to wipe both faces', sheets_count: 'sheets of P120 abrasive paper' },
  source: 'common-practice',
  rows: { joint: { alcohol_m3: 3e-6, sheets_count: 0.05 } },
})

export const packs = table({
  title: 'Packs of cement, primer and sealant',
  columns: { of: 'what is in it', market: 'mm or in: the shops that sell it so', volume_m3: 'contents' },
  source: 'common-practice',
  // biome-ignore format: one row a line
  rows: {
    'can-125mL': { of: 'can', market: 'mm', volume_m3: 125e-6 },
    'can-250mL': { of: 'can', market: 'mm', volume_m3: 250e-6 },
    'can-500mL': { of: 'can', market: 'mm', volume_m3: 500e-6 },
    'can-1L': { of: 'can', market: 'mm', volume_m3: 1e-3 },
    'can-4floz': { of: 'can', market: 'in', volume_m3: 118.294e-6 },
    'can-8floz': { of: 'can', market: 'in', volume_m3: 236.588e-6 },
    'can-16floz': { of: 'can', market: 'in', volume_m3: 473.176e-6 },
    'can-32floz': { of: 'can', market: 'in', volume_m3: 946.353e-6 },
    'cartridge-310mL': { of: 'cartridge', market: 'mm', volume_m3: 310e-6 },
    'cartridge-10floz': { of: 'cartridge', market: 'in', volume_m3: 298.69e-6, note: '10.1 US fl oz' },
  },
})

/** Spare parts worth having on the day. */
export const spares = table({
  title: 'Spares',
  columns: { share: 'share of the count in use, rounded up', least_count: 'at least so many' },
  source: 'common-practice',
  rows: {
    cup: { share: 0.1, least_count: 1 },
    clamp: { share: 0.1, least_count: 1 },
    grommet: { share: 0.1, least_count: 1 },
    pump: { share: 0, least_count: 1, note: 'pumps fail, and trip earth-leakage devices, while nobody is there' },
  },
})

/** Small parts that come several to a thing. */
export const fixings = table({
  title: 'Fixings',
  columns: { each_count: 'pieces for one' },
  source: 'common-practice',
  rows: {
    'flange-bolts': { each_count: 4, note: 'stainless, with washers, for one flange on a lid' },
    'strap-screws': { each_count: 2, note: 'anchors that suit the wall, for one strap' },
    'foot-screws': { each_count: 4, note: 'for one column on a foot of its own' },
  },
})
