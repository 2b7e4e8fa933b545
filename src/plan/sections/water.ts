import { choice, list, map, number, quantity, section, text } from '../field.ts'

const concentration = quantity('g_m3', {
  min: 0,
  max: 50_000,
  example: '82 mg/L',
  about: 'Mass of the ion, or of what `as` says.',
})

export const analysis = section('What a report says of one water.', {
  conductivity: quantity('S_m', { min: 0, max: 6, example: '0.53 mS/cm', about: 'Electrical conductivity at 25 °C.' }),
  pH: number({ min: 0, max: 14, about: 'pH as reported.' }),
  alkalinity: quantity('eq_m3', {
    min: 0,
    max: 100,
    example: '4.2 meq/L',
    about: 'Alkalinity as charge; an acid capacity in mmol/L is the same number.',
  }),
  alkalinityAsCaCO3: quantity('g_m3', {
    min: 0,
    max: 5000,
    example: '210 mg/L',
    about: 'Alkalinity reported as CaCO3.',
  }),
  hardnessGerman: number({ min: 0, max: 100, about: 'Carbonate hardness in German degrees (°dH).' }),
  ions: map(
    concentration,
    40,
    'Ions by name: Ca, Mg, Na, K, NH4, HCO3, Cl, SO4, NO3, F, H2PO4, Fe, B …, as mg/L of the ion.',
  ),
  asElement: map(
    concentration,
    40,
    'The same reported as element, oxide or CaCO3: NO3-N, NH4-N, P, S, P2O5, K2O, CaO, Ca as CaCO3, Mg as CaCO3 …',
  ),
  equivalents: map(
    quantity('eq_m3', { min: 0, max: 1000, example: '4.1 meq/L', about: 'Charge of the ion.' }),
    40,
    'Ions by name, reported in meq/L.',
  ),
})

export const water = section('Source water: where it comes from and what is in it.', {
  sources: list(
    section('One water.', {
      name: text('Tap, rain butt, borehole …'),
      kind: choice(['tap', 'rain', 'well', 'distilled', 'other'], 'Where it comes from.'),
      share: quantity('1', {
        min: 0,
        max: 1,
        example: '64 %',
        about: 'Share in the blend; all shares sum to 100 %. A single water without one takes the rest.',
      }),
      analysis,
    }),
    12,
    'Waters that are blended.',
  ),
})
