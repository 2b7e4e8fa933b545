import { table } from './table.ts'

/** Products to sanitise an empty, cleaned tower, and the strength at which a source speaks of them. */
export const sanitisers = table({
  title: 'Sanitisers',
  columns: {
    active: 'what the strength counts',
    weakest: 'weakest product on sale, g active in 1 mL [1 = 1000 kg/m3]',
    strongest: 'strongest product on sale, g active in 1 mL [1 = 1000 kg/m3]',
    low_g_m3: 'lowest strength in use',
    high_g_m3: 'highest strength in use',
  },
  source: 'common-practice',
  rows: {
    bleach: {
      active: 'available chlorine',
      weakest: 0.03,
      strongest: 0.09,
      low_g_m3: 150,
      high_g_m3: 200,
      note: 'circulated up to 3 h in an empty system; one study found it no better than water on NFT surfaces',
    },
    peracid: {
      active: 'peroxyacetic acid',
      weakest: 0.02,
      strongest: 0.15,
      low_g_m3: 200,
      high_g_m3: 200,
      source: 'NFTSanitisers2024',
      note: 'strengths of products are common practice',
    },
  },
})

export type Sanitiser = keyof typeof sanitisers.rows
