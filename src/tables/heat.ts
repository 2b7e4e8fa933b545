import { table } from './table.ts'

/** Heat passed between a surface and what is in front of it, convection and radiation together. */
export const films = table({
  title: 'Surface films',
  columns: { film_W_m2_K: 'heat passed per area and kelvin, emittance 0.9 unless noted' },
  source: 'ASHRAE.F.films',
  rows: {
    'indoors-wall': { film_W_m2_K: 8.3, note: 'still air, upright surface' },
    'indoors-heat-up': { film_W_m2_K: 9.3, note: 'still air, level surface, heat rising' },
    'indoors-heat-down': { film_W_m2_K: 6.2, note: 'still air, level surface, heat sinking' },
    'outdoors-windy': { film_W_m2_K: 34, note: 'winter design wind, 6.7 m/s' },
    'outdoors-breeze': { film_W_m2_K: 22.7, source: 'from-memory', note: 'summer design wind, 3.4 m/s' },
    'outdoors-calm': {
      film_W_m2_K: 12,
      source: 'common-practice',
      note: 'sheltered yard or balcony, about 1 m/s: between indoor and summer film',
    },
    'water-in-tank': {
      film_W_m2_K: 200,
      source: 'from-memory',
      note: 'natural convection and slow stirring inside a pumped tank: 100 to 500',
    },
    'falling-film': {
      film_W_m2_K: 1500,
      source: 'from-memory',
      note: 'thin falling film on the wall: 1000 to 3000, never the governing resistance',
    },
  },
})

export const conductors = table({
  title: 'Materials between water and air',
  columns: { conductivity_W_m_K: 'heat conduction near 20 °C' },
  source: 'from-memory',
  rows: {
    'pvc-u': { conductivity_W_m_K: 0.147, source: 'PVC.maker-properties' },
    polyethylene: { conductivity_W_m_K: 0.45 },
    polypropylene: { conductivity_W_m_K: 0.22 },
    polystyrene: { conductivity_W_m_K: 0.036, note: 'expanded, dry' },
    'extruded-polystyrene': { conductivity_W_m_K: 0.034 },
    'closed-cell-foam': { conductivity_W_m_K: 0.04, note: 'camping mat, pipe lagging' },
    'bubble-film': { conductivity_W_m_K: 0.045, note: 'still air between layers; useless when crushed or wet' },
    cork: { conductivity_W_m_K: 0.045 },
    plywood: { conductivity_W_m_K: 0.12 },
    steel: { conductivity_W_m_K: 50 },
    concrete: { conductivity_W_m_K: 1.6, note: '1 to 2' },
    'soil-moist': { conductivity_W_m_K: 1.3, note: '0.8 dry to 2 wet' },
  },
})

/** What heats up, and what melts. */
export const bodies = table({
  title: 'Water and ice as stores of heat',
  columns: {
    specificHeat_J_kg_K: 'specific heat at constant pressure',
    density_kg_m3: 'density',
    melting_J_kg: 'heat of melting, 0 where it does not melt here',
  },
  source: 'IAPWS.R6-95',
  rows: {
    water: { specificHeat_J_kg_K: 4184, density_kg_m3: 998.207, melting_J_kg: 0, note: '20 °C' },
    ice: {
      specificHeat_J_kg_K: 2100,
      density_kg_m3: 917,
      melting_J_kg: 333_550,
      source: 'from-memory',
      note: '-10 to 0 °C',
    },
  },
})
