import { table } from './table.ts'

/** How far a feed may be from what was planned before it is watched, or fails. */
export const targetBands = table({
  title: 'How near an element must come to its target',
  columns: {
    wantLow: 'lowest good share of the target',
    wantHigh: 'highest good share of the target',
    mustLow: 'lowest share that feeds',
    mustHigh: 'highest share that does no harm',
  },
  source: 'common-practice',
  rows: {
    main: { wantLow: 0.9, wantHigh: 1.1, mustLow: 0.7, mustHigh: 1.4 },
    sulfur: { wantLow: 0.5, wantHigh: 2, mustLow: 0.25, mustHigh: 4, note: 'a wide range feeds as well' },
    trace: { wantLow: 0.8, wantHigh: 1.25, mustLow: 0.5, mustHigh: 2 },
  },
})

/** Rules of the trade about water, batch and pens. */
export const feedPractice = table({
  title: 'Practice of the feed',
  columns: { low: 'lower number', high: 'higher number', role: 'what it is' },
  source: 'common-practice',
  rows: {
    chargeBalance: { low: 0.05, high: 0.1, role: 'error of a good analysis, and of one to be trusted at all [1]' },
    sourceConductivity: {
      low: 0.8,
      high: 1.2,
      role: 'conductivity of the reported ions over the reported one, good [1]',
    },
    sourceConductivityMust: { low: 0.5, high: 2, role: 'the same, beyond which a unit was mistaken [1]' },
    chargePerConductivity: {
      low: 8,
      high: 12,
      role: 'meq/L of each sign for 1 mS/cm of a clean water [eq m/(S m3)/10]',
    },
    alkalinity: { low: 1, high: 1.6, role: 'alkalinity of a top-up water that holds the pH, meq/L [eq/m3]' },
    phBand: { low: 0.15, high: 0.3, role: 'half-width that the recipe keeps, and that the tank may show, pH [1]' },
    phRise: { low: 0.5, high: 1, role: 'rise while carbon dioxide leaves, to watch from and too much, pH [1]' },
    conductivityMiss: { low: 0.1, high: 0.25, role: 'conductivity off what was planned, to watch and to stop [1]' },
    penGate: { low: 0.1, high: 0.25, role: 'pen off the prediction, to look and not to plant [1]' },
    firstDose: { low: 2 / 3, high: 2 / 3, role: 'share of a correction to give before reading again [1]' },
    shareSum: { low: 0.999, high: 1.001, role: 'sum of the shares of a blend [1]' },
    fluoride: {
      low: 0,
      high: 1.5,
      role: 'guideline for drinking water, mg/L [g/m3]',
      source: 'WHO.drinking',
    },
    scalePan: { low: 5000, high: 10_000, role: 'count of steps that a pan carries' },
    syringe: { low: 1e-7, high: 5e-7, role: 'step of a syringe for liquids, m³ [m3]' },
    cheapestWithin: {
      low: 0.05,
      high: 0.1,
      role: 'share of its target by which the cheapest recipe may miss an element [1]',
    },
    penReading: { low: 0, high: 1, role: 'conductivity that a tank of feed may have at all, S/m [S_m]' },
    dumpDays: { low: 14, high: 21, role: 'days that a change of solution should last' },
  },
})

/** How far what goes into a batch, and what reads it, may be from what is written on it. */
export const feedTolerances = table({
  title: 'Tolerances of labels, analyses and pens',
  columns: { share: 'half-width as a share of the number [1]', role: 'what it is about' },
  source: 'common-practice',
  rows: {
    label: { share: 0.04, role: 'what a bag holds against its label' },
    formula: { share: 0.01, role: 'a substance by its formula and purity' },
    liquid: { share: 0.02, role: 'strength and density of an acid or liquid' },
    analysis: { share: 0.05, role: 'an ion of a water report, and its alkalinity' },
    conductivityPen: { share: 0.02, role: 'a conductivity pen that was set in a standard' },
  },
})

/** What a pH pen may be off, by the days since it was calibrated. */
export const penDrifts = table({
  title: 'Drift of pH pens',
  columns: { upTo_d: 'days since calibration', drift: 'half-width of the reading, pH [1]' },
  source: 'common-practice',
  rows: {
    fresh: { upTo_d: 30, drift: 0.1 },
    aged: { upTo_d: 90, drift: 0.2 },
    old: { upTo_d: 5000, drift: 0.4, note: 'no acid by such a pen' },
  },
})

/** From which half-width on a pH pen is to be watched, and is no ground for acid. */
export const penBand = table({
  title: 'Trust in a pH pen',
  columns: { want: 'good half-width, pH [1]', must: 'widest half-width to dose acid by, pH [1]' },
  source: 'common-practice',
  rows: { pH: { want: 0.2, must: 0.3 } },
})

/** Crops by the names growers use, and the row of the table of strengths. */
export const cropNames = table({
  title: 'Names of crops for the feed',
  columns: { target: 'row of the table of strengths by crop' },
  source: 'common-practice',
  rows: {
    lettuce: { target: 'lettuce.production' },
    butterhead: { target: 'lettuce.production' },
    romaine: { target: 'lettuce.production' },
    strawberry: { target: 'strawberry.production' },
    coriander: { target: 'cilantro.tolerance' },
    cilantro: { target: 'cilantro.tolerance' },
    dill: { target: 'dill.tolerance' },
    rocket: { target: 'arugula.production' },
    arugula: { target: 'arugula.production' },
    kale: { target: 'kale.production' },
    collards: { target: 'collards.production' },
    'pak choi': { target: 'pak-choi.production' },
    watercress: { target: 'watercress.production' },
    basil: { target: 'basil.production' },
    cucumber: { target: 'cucumber.production' },
    pepper: { target: 'sweet-pepper.production' },
    sage: { target: 'sage.production' },
    spinach: { target: 'spinach.production' },
    tomato: { target: 'tomato.production' },
    parsley: { target: 'parsley.production' },
    chard: { target: 'chard.production' },
    'spinach beet': { target: 'chard.production' },
    mustard: { target: 'mustard-greens.production' },
    mizuna: { target: 'mizuna.production' },
    tatsoi: { target: 'tatsoi.production' },
    endive: { target: 'endive.production' },
    chives: { target: 'chives.production' },
    mint: { target: 'spearmint.production' },
    oregano: { target: 'oregano.production' },
    thyme: { target: 'thyme.production' },
    rosemary: { target: 'rosemary.production' },
    'lemon balm': { target: 'lemon-balm.production' },
    sorrel: { target: 'sorrel.production' },
    nasturtium: { target: 'nasturtium.production' },
    celery: { target: 'celery.production' },
    leek: { target: 'leek.production' },
    okra: { target: 'okra.production' },
  },
})
