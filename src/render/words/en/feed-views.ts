/** What stands on the drawings of the feed. Slots in braces. */
export interface FeedViewWords {
  readonly reached: string
  readonly wanted: string
  readonly ofTarget: string
  readonly cations: string
  readonly anions: string
  readonly apart: string
  readonly traces: string
  readonly unmeasured: string
  readonly pHWanted: string
  readonly water: string
  readonly batch: string
  readonly acidToday: string
  readonly acidLasting: string
  readonly justMixed: string
  readonly inAir: string
  /** Ions and nutrients as they are written on a drawing. */
  readonly ions: Readonly<Record<string, string>>
}

export const feedViewWords: FeedViewWords = {
  reached: 'reached',
  wanted: 'wanted',
  ofTarget: 'share of what is wanted',
  cations: 'cations',
  anions: 'anions',
  apart: 'in meq/L; they differ by {apart}',
  traces: 'traces',
  unmeasured: 'not named',
  pHWanted: '{low}–{high} wanted',
  water: 'the water',
  batch: 'the batch',
  acidToday: '{acid}, for today',
  acidLasting: '{acid}, to last',
  justMixed: 'now',
  inAir: 'after a day in the air',
  ions: {
    ...{ Ca: 'Ca', Mg: 'Mg', K: 'K', Na: 'Na', NH4: 'NH₄', NO3: 'NO₃', Cl: 'Cl', SO4: 'SO₄' },
    ...{ H2PO4: 'H₂PO₄', HCO3: 'HCO₃', F: 'F', citrate: 'citrate', 'NO3-N': 'NO₃-N', 'NH4-N': 'NH₄-N' },
  },
}
