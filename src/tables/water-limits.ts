import { table } from './table.ts'

/** How much of an ion a source water or a running tank may hold before it hurts. */
export const waterLimits = table({
  title: 'Limits of ballast ions',
  columns: { caution_g_m3: 'watch above', limit_g_m3: 'act above' },
  source: 'OSU.HLA6722',
  rows: {
    Na: { caution_g_m3: 50, limit_g_m3: 50 },
    Ca: { caution_g_m3: 150, limit_g_m3: 150 },
    Cl: { caution_g_m3: 70, limit_g_m3: 140, note: 'caution after Mattson & Peters' },
    SO4: { caution_g_m3: 100, limit_g_m3: 100 },
  },
})

/** What a running tank may hold of an ion that plants leave behind; more than a water to fill up with. */
export const loopLimits = table({
  title: 'Limits of ballast ions in the loop',
  columns: { limit_g_m3: 'change the solution above' },
  source: 'from-memory',
  rows: {
    Na: { limit_g_m3: 115, note: '5 mmol/L, which lettuce bears; a fruiting crop bears more, strawberry less' },
    Cl: { limit_g_m3: 140, source: 'OSU.HLA6722' },
    SO4: { limit_g_m3: 100, source: 'OSU.HLA6722', note: 'above what the recipe itself holds' },
  },
})

/** Crops whose uptake somebody measured; others are taken as lettuce until the log of the tank tells better. */
export const measuredUptake = table({
  title: 'Crops by whose uptake a refill is made',
  columns: { as: 'column of the table of uptake' },
  source: 'Batavia2024',
  rows: {
    lettuce: { as: 'lettuce_mol_m3' },
    butterhead: { as: 'lettuce_mol_m3' },
    romaine: { as: 'lettuce_mol_m3' },
  },
})

/** What a closed crop of Batavia lettuce took from each litre that it drank, under strong light. */
export const uptake = table({
  title: 'Uptake concentrations',
  columns: { lettuce_mol_m3: 'amount per volume of water taken up' },
  source: 'Batavia2024',
  rows: {
    N: { lettuce_mol_m3: 13.4 },
    P: { lettuce_mol_m3: 1.72 },
    K: { lettuce_mol_m3: 10.2 },
    Ca: { lettuce_mol_m3: 3.13 },
    Mg: { lettuce_mol_m3: 0.86 },
    Fe: { lettuce_mol_m3: 27.8 / 1000 },
    Mn: { lettuce_mol_m3: 5.63 / 1000 },
    Zn: { lettuce_mol_m3: 5.45 / 1000 },
    Cu: { lettuce_mol_m3: 0.72 / 1000 },
  },
})

/** When a running solution is worn out; the first that trips. */
export const dumpRules = table({
  title: 'When to change the solution',
  columns: { caution: 'number from which to watch', limit: 'number from which to act', role: 'what is counted' },
  source: 'common-practice',
  rows: {
    ballastShare: { caution: 0.2, limit: 0.25, role: 'share of the conductivity that feeds nothing' },
    topUpVolumes: { caution: 2, limit: 3, role: 'volumes of the tank topped up since the change' },
    age: { caution: 14, limit: 21, role: 'days since the change' },
    yieldLost: {
      caution: 0.22,
      limit: 0.36,
      role: 'share of shoot fresh mass lost on recycled tap water at a fixed EC of 1.8 mS/cm, from week 2',
      source: 'Recycled2020',
    },
  },
})
