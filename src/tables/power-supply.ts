import { table } from './table.ts'

/** How much of its printed charge a battery may give. */
export const batteries = table({
  title: 'Batteries',
  columns: { usableShare: 'share of the printed charge to plan with' },
  source: 'common-practice',
  rows: {
    'lead-acid': { usableShare: 0.5, note: 'deeper discharge shortens its life' },
    'lead-deep-cycle': { usableShare: 0.7 },
    'lithium-iron-phosphate': { usableShare: 0.9 },
  },
})

/** What gets lost between battery and pump, and what a start draws. */
export const supplies = table({
  title: 'Inverters, chargers, starts',
  columns: { low: 'lowest share or ratio', high: 'highest share or ratio' },
  source: 'common-practice',
  rows: {
    'inverter-efficiency': { low: 0.8, high: 0.9, note: 'about 15 % lost' },
    'motor-power-factor': { low: 0.6, high: 0.9, note: 'small induction pump' },
    'start-over-running': { low: 2, high: 3, note: 'induction motor; electronic drives start gently' },
    'generator-share': { low: 0.75, high: 0.8, note: 'share of its rating to load it with' },
  },
})

/** Voltage at which a pump runs, by what its label asks for. */
export const supplyVoltages = table({
  title: 'Voltage that a pump takes',
  columns: { low_V: 'lowest', high_V: 'highest' },
  source: 'common-practice',
  rows: {
    mains: { low_V: 100, high_V: 240 },
    '12 V': { low_V: 11, high_V: 14.8, note: 'as a lead battery gives from empty to charging' },
    '24 V': { low_V: 22, high_V: 29.6, note: 'as two such batteries in a row' },
  },
})

/** Wire-to-water efficiency of small pumps. */
export const smallPumps = table({
  title: 'Wire-to-water efficiency',
  columns: { low: 'lowest share or ratio', high: 'highest share or ratio' },
  source: 'from-memory',
  rows: {
    'magnetic-drive': { low: 0.03, high: 0.2, note: '5 to 60 W; zero at shut-off and at open flow' },
    'pond-pump': { low: 0.15, high: 0.151, source: 'SmallPump.test', note: '250 W, 3000 US gal/h at 4 ft' },
  },
})
