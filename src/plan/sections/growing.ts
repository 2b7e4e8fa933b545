import { choice, count, list, map, number, quantity, section, text } from '../field.ts'

const dose = quantity('g_m3', { min: 0, max: 5000, example: '150 mg/L', about: 'Wanted in the batch.' })

export const lamps = section('Lamps, where the sun does not do.', {
  count: count({ min: 0, max: 1000, about: 'Lamps.' }),
  power: quantity('W', { min: 1, max: 3000, example: '96 W', about: 'Power of one lamp.' }),
  efficacy: quantity('umol_J', { min: 0.1, max: 5, example: '2.5 umol/J', about: 'Photons per energy on the label.' }),
  length: quantity('m', { min: 0.05, max: 4, example: '4 ft', about: 'Length of one lamp.' }),
  hours: quantity('s', { min: 0, max: 86_400, example: '16 h', about: 'Hours a day.' }),
})

export const crops = list(
  section('A crop and its share of the sites.', {
    crop: text('Name of the crop.', 60),
    stage: choice(['seedling', 'grown'], 'Seedlings want half the strength; grown where it is left out.'),
    sites: count({ min: 0, max: 40_000, about: 'Sites it takes.' }),
    perWeek: count({ min: 0, max: 40_000, about: 'Plants wanted each week.' }),
    mass: quantity('kg', { min: 0.001, max: 20, example: '120 g', about: 'Fresh mass of one plant as harvested.' }),
    thirst: quantity('m3_d', {
      min: 0,
      max: 0.02,
      example: '0.15 L/day',
      about: 'Water one grown plant takes in a day.',
    }),
    canopy: quantity('m', { min: 0.02, max: 2, example: '200 mm', about: 'Width of a grown plant.' }),
  }),
  40,
  'What is grown.',
)

export const feed = section('The nutrient solution.', {
  targets: map(dose, 20, 'Wanted by element: N, P, K, Ca, Mg, S, Fe, Mn, Zn, Cu, B, Mo, Na, Cl.'),
  limits: map(dose, 20, 'Never above, by element.'),
  aim: choice(
    ['nearest', 'cheapest'],
    'What the recipe looks for: the targets as near as can be, or the least money with each element within a share of its target.',
  ),
  within: quantity('1', {
    min: 0.01,
    max: 0.5,
    example: '10 %',
    about: 'How far from its target the cheapest recipe may leave an element.',
  }),
  ammoniumShare: quantity('1', { min: 0, max: 1, example: '10 %', about: 'Largest share of nitrogen as ammonium.' }),
  pH: number({ min: 3, max: 9, about: 'pH wanted.' }),
  conductivity: quantity('S_m', { min: 0, max: 1, example: '1.7 mS/cm', about: 'Conductivity expected.' }),
  shelf: list(
    section('A salt, fertiliser or acid that the grower owns.', {
      name: text('Name in the table of salts, or any name with a label below.', 80),
      purity: quantity('1', { min: 0.01, max: 1, example: '99 %', about: 'Purity on the bag.' }),
      strength: quantity('1', {
        min: 0.001,
        max: 1,
        example: '81 %',
        about: 'Strength of an acid or liquid, by mass.',
      }),
      density: quantity('kg_m3', { min: 700, max: 2500, example: '1.66 kg/L', about: 'Density of a liquid.' }),
      label: map(
        quantity('1', { min: 0, max: 1, example: '15.5 %', about: 'Share by mass.' }),
        24,
        'Bag label: N, NO3-N, NH4-N, urea-N, P2O5, K2O, Ca, CaO, Mg, MgO, S, SO3, Fe, B …',
      ),
      pack: quantity('kg', { min: 0.001, max: 1000, example: '25 kg', about: 'Pack size.' }),
      onHand: quantity('kg', {
        min: 0,
        max: 1000,
        example: '400 g',
        about: 'What is there of it, all packs together; one full pack where it is left out.',
      }),
      price: number({ min: 0, max: 1e9, about: 'Price of the pack in the plan’s currency.' }),
      bottle: choice(['A', 'B', 'acid', 'none'], 'Stock bottle it must go into, where that is fixed.'),
    }),
    60,
    'What stands on the shelf.',
  ),
  stock: section('Stock bottles.', {
    strength: number({ min: 1, max: 1000, about: 'How many times stronger than the batch.' }),
    volume: quantity('m3', { min: 1e-5, max: 1, example: '1 L', about: 'Volume of each bottle.' }),
    storage: quantity('C', { min: -10, max: 45, example: '8 °C', about: 'Coldest place where bottles stand.' }),
  }),
  batch: quantity('m3', { min: 1e-4, max: 10, example: '36 L', about: 'Volume of one batch.' }),
  temperature: quantity('C', { min: 0, max: 45, example: '18 °C', about: 'Temperature of the solution in the tank.' }),
  air: choice(
    ['open', 'closed'],
    'Whether carbon dioxide can leave the water: open, as wherever it falls through a tower, unless told.',
  ),
  topUp: quantity('m3_d', { min: 0, max: 5, example: '4 L/day', about: 'Water topped up in a day, from the log.' }),
  scale: quantity('kg', { min: 1e-7, max: 0.1, example: '1 g', about: 'Smallest step of the kitchen scale.' }),
  fineScale: quantity('kg', { min: 1e-8, max: 0.1, example: '0.01 g', about: 'Smallest step of a pocket scale.' }),
  penScale: choice(
    ['mS/cm', 'uS/cm', 'dS/m', 'CF', 'ppm 500', 'ppm 640', 'ppm 700', 'ppm, not marked'],
    'What the conductivity pen shows.',
  ),
  penCalibrated: quantity('d', {
    min: 0,
    max: 5000,
    example: '12 days',
    about: 'Time since the pH pen was calibrated.',
  }),
  penCompensation: quantity('1', {
    min: 0,
    max: 0.03,
    example: '2 %',
    about: 'Rise per kelvin that the conductivity pen takes off; 0 % where it has no compensation.',
  }),
  penDrift: number({ min: 0, max: 2, about: 'How far the pH pen may be off.' }),
  dumpTo: choice(
    ['beds or shrubs', 'compost', 'foul sewer', 'street drain', 'stream or lake'],
    'Where spent solution goes.',
  ),
  sanitiser: section('Product to sanitise the empty, cleaned tower.', {
    product: choice(['bleach', 'peracid'], 'What it is.'),
    strength: quantity('1', {
      min: 0.001,
      max: 1,
      example: '5.25 %',
      about: 'Active strength on the label, in grams per 100 mL.',
    }),
    volume: quantity('m3', { min: 1e-3, max: 5, example: '20 L', about: 'Water that circulates while sanitising.' }),
    plants: choice(['out', 'in'], 'Whether plants are still in the tower.'),
  }),
})
