import { table } from './table.ts'

/** Strengths in which acids are sold. */
export const acids = table({
  title: 'Acids as sold',
  columns: {
    salt: 'row of the table of salts',
    strength: 'mass share of the acid',
    density_kg_m3: 'density at 20 °C',
  },
  source: 'from-memory',
  rows: {
    'nitric-67': { salt: 'nitric-acid', strength: 67 / 100, density_kg_m3: 1400 },
    'nitric-60': { salt: 'nitric-acid', strength: 60 / 100, density_kg_m3: 1367 },
    'nitric-20': { salt: 'nitric-acid', strength: 20 / 100, density_kg_m3: 1115 },
    'nitric-38': { salt: 'nitric-acid', strength: 38 / 100, density_kg_m3: 1234 },
    'phosphoric-25': { salt: 'phosphoric-acid', strength: 25 / 100, density_kg_m3: 1146 },
    'phosphoric-50': { salt: 'phosphoric-acid', strength: 50 / 100, density_kg_m3: 1335 },
    'phosphoric-75': { salt: 'phosphoric-acid', strength: 75 / 100, density_kg_m3: 1579 },
    'phosphoric-85': { salt: 'phosphoric-acid', strength: 85 / 100, density_kg_m3: 1685 },
    'sulfuric-93': { salt: 'sulfuric-acid', strength: 93 / 100, density_kg_m3: 1828 },
    'sulfuric-20': { salt: 'sulfuric-acid', strength: 20 / 100, density_kg_m3: 1139 },
    'sulfuric-35': { salt: 'sulfuric-acid', strength: 35 / 100, density_kg_m3: 1260 },
  },
})

export type AcidAsSold = keyof typeof acids.rows
