import type { FeedViewWords } from '../en/feed-views.ts'

export const feedViewWords: FeedViewWords = {
  reached: 'alcanzado',
  wanted: 'deseado',
  ofTarget: 'parte de lo deseado',
  cations: 'cationes',
  anions: 'aniones',
  apart: 'en meq/L; difieren en {apart}',
  traces: 'trazas',
  unmeasured: 'sin nombrar',
  pHWanted: '{low}–{high} deseado',
  water: 'el agua',
  batch: 'la preparación',
  acidToday: '{acid}, para hoy',
  acidLasting: '{acid}, para que dure',
  justMixed: 'ahora',
  inAir: 'tras un día al aire',
  ions: {
    ...{ Ca: 'Ca', Mg: 'Mg', K: 'K', Na: 'Na', NH4: 'NH₄', NO3: 'NO₃', Cl: 'Cl', SO4: 'SO₄' },
    ...{ H2PO4: 'H₂PO₄', HCO3: 'HCO₃', F: 'F', citrate: 'citrato', 'NO3-N': 'NO₃-N', 'NH4-N': 'NH₄-N' },
  },
}
