import type { ResultId } from '../../../sensitivity/results.ts'
import type { Swing } from '../../../sensitivity/swings.ts'

/** What is said of the readings that matter. Slots in braces. */
export interface SensitivityWords {
  readonly title: string
  readonly intro: string
  readonly results: Readonly<Record<ResultId, string>>
  /** The curve between the box figures, which is no field. */
  readonly shape: string
  readonly sentence: string
  readonly item: string
  readonly rest: string
  readonly alone: string
  readonly none: string
  readonly own: string
  readonly unknown: string
  readonly improve: string
  readonly improveItem: string
  readonly decides: string
  readonly how: Readonly<Record<Swing['reading'], string>>
  readonly low: string
  readonly high: string
  readonly model: string
  readonly ask: string
  readonly back: string
  readonly progress: string
  readonly stopped: string
  readonly again: string
  readonly csv: readonly string[]
}

export const sensitivityWords: SensitivityWords = {
  title: 'Which number matters',
  intro:
    'Each reading alone is taken as far off as readings of its kind are, and the results are computed again. What moves most is measured first.',
  results: {
    flow: 'Flow at the top',
    overflow: 'Rim over the distributor’s water',
    wet: 'Sites that the water meets',
    usable: 'Usable volume',
    days: 'Days between top-ups',
    dry: 'Stop to dry',
    hot: 'Warmest solution',
    oxygen: 'Oxygen at the foot',
    tips: 'Righting over the gust',
    floor: 'Load on the floor',
    highest: 'Height of the highest site',
    conductivity: 'Conductivity of the batch',
    pH: 'pH of the batch',
    energy: 'Energy of a month',
    price: 'Sum of the parts',
  },
  shape: 'the pump’s curve between its box figures',
  sentence: '{result} {value}: {list}{rest}.',
  item: '{name} ±{swing}',
  rest: '; all else < {swing}',
  alone: '; nothing else moves it',
  none: '{result} {value}: no reading of the plan moves it.',
  own: 'Open whatever is read: ±{swing}, for what the model knows only as a band.',
  unknown: '{result}: not yet, fill in {needs}.',
  improve: 'Measure this first',
  improveItem: '{name}: {how} It matters to: {results}.',
  decides: 'What decides: {sentence}',
  how: {
    shape: 'fill a bucket at the riser’s end and stop the time; two heights are better than one.',
    tape: 'measure again from the same end, with the tape hooked and straight.',
    caliper: 'measure with a caliper, twice across each other.',
    drill: 'drill a trial hole and measure it.',
    level: 'mark the level with the pump stopped and the water still.',
    hoseBore: 'measure the bore of a fresh cut end, or weigh the water that a metre holds.',
    pipeOutside: 'put a tape round the pipe and enter its circumference.',
    pipeWall: 'measure the wall of a cut end in four places.',
    tankOfTable: 'measure the tank inside, or pour it full by the pail.',
    angle: 'check the saw’s angle on a trial cut.',
    bearing: 'take the bearing from a map, away from steel.',
    altitude: 'read the height from a better map.',
    pour: 'weigh the water: a kilogram is a litre.',
    stopwatch: 'time a larger bucket.',
    weighed: 'weigh it on a finer scale.',
    pumpBox: 'fill a bucket at the riser’s end and stop the time: a test outranks the box.',
    pumpCurve: 'fill a bucket at the riser’s end and stop the time: a test outranks the maker’s curve.',
    ratedPower: 'read the power from a meter in the socket.',
    label: 'measure what the label promises.',
    fitting: 'list the fittings one by one in place of a sum, or let a bucket test tell it all.',
    gust: 'ask the weather service for the gust of the place, and say what it stands for.',
    air: 'hang a thermometer in the shade there on a hot day.',
    thermometer: 'check the thermometer in melting ice.',
    humidity: 'check the hygrometer over salt water in a closed jar.',
    sun: 'note by the hour what shades the place on a clear day.',
    byEye: 'measure it on a grown plant.',
    harvest: 'weigh the next ten plants.',
    thirst: 'log the litres of each top-up for two weeks.',
    age: 'write down the days of sowing and of harvest.',
    waterReport: 'ask the water works for the report of this year, or send a sample to a laboratory.',
    waterConductivity: 'dip a pen that was set in a standard into the water.',
    waterPh: 'dip a calibrated pen into the water.',
    waterHardness: 'repeat the drop test with twice the water.',
    bag: 'read the analysis on the bag, and keep the bag dry.',
    liquid: 'read strength and density on the label, and keep it closed.',
    ecPen: 'set the conductivity pen in a fresh standard.',
    phPen: 'calibrate the pH pen in two fresh buffers.',
    price: 'ask the shop.',
  },
  low: 'reading at its low end',
  high: 'at its high end',
  model: 'open whatever is read',
  ask: 'Which reading decides?',
  back: 'Show this reading in the plan',
  progress: 'Reading {done} of {of}',
  stopped: 'Stopped before the end.',
  again: 'Compute it',
  csv: [
    ...['result', 'value', 'unit', 'reading', 'field', 'off below', 'off above', 'unit of the reading'],
    ...['change at its low end', 'change at its high end'],
  ],
}
