import { table } from './table.ts'

/** Published full-strength solutions in mmol/L, as printed or as computed from the printed amounts. */
export const recipes = table({
  title: 'Published feeds',
  columns: {
    NO3: 'nitrate [mmol/L]',
    NH4: 'ammonium [mmol/L]',
    H2PO4: 'phosphate [mmol/L]',
    K: 'potassium [mmol/L]',
    Ca: 'calcium [mmol/L]',
    Mg: 'magnesium [mmol/L]',
    SO4: 'sulfate [mmol/L]',
    Fe_g_m3: 'iron, or null where the recipe leaves it out',
    Mn_g_m3: 'manganese',
    Zn_g_m3: 'zinc',
    B_g_m3: 'boron',
    Cu_g_m3: 'copper',
    Mo_g_m3: 'molybdenum',
  },
  source: 'from-memory',
  rows: {
    'hoagland-1': {
      ...{ NO3: 15, NH4: 0, H2PO4: 1, K: 6, Ca: 5, Mg: 2, SO4: 2 },
      ...{ Fe_g_m3: null, Mn_g_m3: 0.502, Zn_g_m3: 0.05, B_g_m3: 0.5, Cu_g_m3: 0.0204, Mo_g_m3: 0.01 },
      source: 'HoaglandArnon1950',
    },
    'hoagland-2': {
      ...{ NO3: 14, NH4: 1, H2PO4: 1, K: 6, Ca: 4, Mg: 2, SO4: 2 },
      ...{ Fe_g_m3: null, Mn_g_m3: 0.502, Zn_g_m3: 0.05, B_g_m3: 0.5, Cu_g_m3: 0.0204, Mo_g_m3: 0.01 },
      source: 'HoaglandArnon1950',
      note: 'from memory, but for the calcium',
    },
    steiner: {
      ...{ NO3: 12, NH4: 0, H2PO4: 1, K: 7, Ca: 4.5, Mg: 2, SO4: 3.5 },
      ...{ Fe_g_m3: null, Mn_g_m3: null, Zn_g_m3: null, B_g_m3: null, Cu_g_m3: null, Mo_g_m3: null },
      source: 'Steiner1984',
      note: 'at 20 meq/L',
    },
    'mattson-peters-lettuce': {
      ...{ NO3: 9.795, NH4: 0.925, H2PO4: 1, K: 5.371, Ca: 2.249, Mg: 0.986, SO4: 0.986 },
      ...{ Fe_g_m3: 1, Mn_g_m3: 0.249, Zn_g_m3: 0.13, B_g_m3: 0.163, Cu_g_m3: 0.0235, Mo_g_m3: 0.0241 },
      source: 'MattsonPeters',
    },
    'sonneveld-straver-lettuce': {
      ...{ NO3: 19, NH4: 1.25, H2PO4: 2, K: 11, Ca: 4.5, Mg: 1, SO4: 1.125 },
      ...{ Fe_g_m3: 2.234, Mn_g_m3: 0.2747, Zn_g_m3: 0.2615, B_g_m3: 0.3243, Cu_g_m3: 0.0477, Mo_g_m3: 0.048 },
      source: 'SonneveldStraver1994',
    },
    'sonneveld-straver-tomato': {
      ...{ NO3: 16, NH4: 1.2, H2PO4: 1.5, K: 9.5, Ca: 5.4, Mg: 2.4, SO4: 4.4 },
      ...{ Fe_g_m3: null, Mn_g_m3: null, Zn_g_m3: null, B_g_m3: null, Cu_g_m3: null, Mo_g_m3: null },
      source: 'SonneveldStraver1994',
    },
    'yamazaki-strawberry': {
      ...{ NO3: 5, NH4: 0.5, H2PO4: 0.5, K: 3, Ca: 1, Mg: 0.5, SO4: 0.5 },
      ...{ Fe_g_m3: null, Mn_g_m3: null, Zn_g_m3: null, B_g_m3: null, Cu_g_m3: null, Mo_g_m3: null },
      source: 'Yamazaki.strawberry',
    },
  },
})

export type PublishedFeed = keyof typeof recipes.rows
