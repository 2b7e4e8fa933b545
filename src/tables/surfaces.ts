import { table } from './table.ts'

/** What the sun finds on the outside of a tank or a column. */
export const surfaces = table({
  title: 'Surfaces in the sun',
  columns: {
    absorptance: 'share of the sun that is taken in, middle of the band',
    absorptanceLow: 'lowest share met',
    absorptanceHigh: 'highest share met',
    emittance: 'infrared emittance near 300 K',
  },
  source: 'SCIRP.88555',
  rows: {
    'white-new': {
      absorptance: 0.2,
      absorptanceLow: 0.19,
      absorptanceHigh: 0.252,
      emittance: 0.92,
      note: 'titanium-white paint 0.19, epoxy 0.248, enamel 0.252',
    },
    'white-weathered': {
      absorptance: 0.4,
      absorptanceLow: 0.3,
      absorptanceHigh: 0.5,
      emittance: 0.9,
      source: 'common-practice',
      note: 'dust, algae and age on white paint or pipe',
    },
    pale: {
      absorptance: 0.5,
      absorptanceLow: 0.4,
      absorptanceHigh: 0.6,
      emittance: 0.9,
      source: 'from-memory',
      note: 'cream, beige, pale grey, frosted plastic',
    },
    grey: {
      absorptance: 0.7,
      absorptanceLow: 0.6,
      absorptanceHigh: 0.75,
      emittance: 0.9,
      source: 'from-memory',
      note: 'mid grey drain pipe',
    },
    terracotta: {
      absorptance: 0.7,
      absorptanceLow: 0.6,
      absorptanceHigh: 0.8,
      emittance: 0.9,
      source: 'from-memory',
      note: 'orange-brown sewer pipe',
    },
    'blue-or-green': {
      absorptance: 0.75,
      absorptanceLow: 0.65,
      absorptanceHigh: 0.85,
      emittance: 0.9,
      source: 'from-memory',
      note: 'saturated colours, drums and totes',
    },
    black: {
      absorptance: 0.95,
      absorptanceLow: 0.9,
      absorptanceHigh: 0.975,
      emittance: 0.874,
      note: 'black paint 0.975; the lower numbers, for black plastic, from memory',
    },
    'aluminium-paint': {
      absorptance: 0.54,
      absorptanceLow: 0.5,
      absorptanceHigh: 0.58,
      emittance: 0.45,
      note: 'printed 0.54; the band is ours',
    },
    'bright-foil': {
      absorptance: 0.192,
      absorptanceLow: 0.15,
      absorptanceHigh: 0.25,
      emittance: 0.036,
      note: 'printed 0.192, the band is ours; takes in no more than white paint but cannot shine heat away',
    },
  },
})

/** What stands between the sun and the tank. */
export const shades = table({
  title: 'Share of the sun that a shade lets through',
  columns: { transmittance: 'share let through', transmittanceLow: 'lowest', transmittanceHigh: 'highest' },
  source: 'common-practice',
  rows: {
    none: { transmittance: 1, transmittanceLow: 1, transmittanceHigh: 1 },
    'shade-net-50': { transmittance: 0.5, transmittanceLow: 0.45, transmittanceHigh: 0.6, note: 'sold by its percent' },
    'shade-net-80': { transmittance: 0.2, transmittanceLow: 0.15, transmittanceHigh: 0.3, note: 'sold by its percent' },
    'board-or-skirt': {
      transmittance: 0.1,
      transmittanceLow: 0.05,
      transmittanceHigh: 0.2,
      note: 'an opaque board with an open gap behind; what is left is sky and ground light',
    },
  },
})

/** Colours by which a plan names a surface, and the rows that stand for them. */
export const colours = {
  white: 'white-weathered',
  light: 'pale',
  grey: 'grey',
  terracotta: 'terracotta',
  dark: 'blue-or-green',
  black: 'black',
  foil: 'bright-foil',
} as const satisfies Readonly<Record<string, keyof typeof surfaces.rows>>
