import type { FindingWords } from '../../words.ts'

export const reservoir: Readonly<Record<string, FindingWords>> = {
  'reservoir/fill-fits': {
    short: 'The fill fits the tank',
    pass: 'The fill of {measured} fits into the {brim} of the tank.',
    watch: 'The fill of {measured} meets the {brim} of the tank.',
    fail: 'A fill of {measured} does not fit into a tank of {brim}.',
    because: 'Volume up to the rim, less what stands in the tank.',
  },
  'reservoir/low-below-fill': {
    short: 'Low line below fill line',
    pass: 'Between fill line and low line lie {measured}.',
    watch: 'Between fill line and low line lie {measured}.',
    fail: 'The low line holds {low} and the fill line {fill}: nothing is left to use.',
    because: 'Only what lies between the two lines feeds the plants.',
  },
  'reservoir/lines-agree': {
    short: 'Line and litres agree',
    pass: '{which} at {line} holds {there}; {measured} stand beside it.',
    watch: '{which} at {line} holds {there}; {measured} stand beside it.',
    fail: '{which} at {line} holds {there}, but {measured} stand beside it. The line counts. Measure again and correct one of them, or take one out.',
    because: 'Level and volume follow from each other by the sizes of the tank, less what stands in it.',
  },
  'reservoir/marks-rise': {
    short: 'Measured marks rise',
    pass: 'Over {marks} marks the volume grows with the level.',
    watch: 'Over {marks} marks the volume grows with the level.',
    fail: 'At {highLevel} the mark says {highVolume}, below it at {lowLevel} it says {lowVolume}: water cannot grow less while it rises. Pour again between these two. The marks are left out.',
    because: 'Each litre poured in lifts the water; two marks at one level say two things.',
  },
  'reservoir/marks-reach': {
    short: 'Marks reach up the tank',
    pass: 'The highest mark stands at {measured}, of a depth of {depth}.',
    watch:
      'The highest mark stands at {measured}, of a depth of {depth}: the tank is reckoned by its sizes until marks reach {want}. Pour on.',
    fail: 'The highest mark stands at {measured}, above the rim at {depth}. Measure the depth or the mark again.',
    because: 'What lies above the highest mark is not guessed from the marks below.',
  },
  'reservoir/drain-back': {
    short: 'Tank takes what runs back',
    pass: 'When the pump stops at the fill line, the water rises to {measured}; the rim is at {rim}.',
    watch:
      'When the pump stops at the fill line, the water rises to {measured}; the rim is at {rim} and the freeboard ends at {want}. Fill to {line} at most while it runs.',
    fail: 'When the pump stops at the fill line, the water rises over the rim at {rim}; up to {spilt} run over. Fill to {line} at most while it runs.',
    because: 'Hose, distributor, film and roots run back into the tank.',
  },
  'reservoir/pump-covered': {
    short: 'Pump stays under water',
    pass: 'After a start at the low line the water falls to {measured}; the pump draws down to {cover}.',
    watch:
      'After a start at the low line the water falls to {measured}; the pump draws down to {cover}. Keep {line} before a start.',
    fail: 'After a start at the low line the water falls to {measured} and the pump draws air below {cover}. Keep {line} before a start.',
    because: 'A start first fills hose, distributor, film and roots from the tank, the more the older the plants.',
  },
  'reservoir/days': {
    short: 'Days between top-ups',
    pass: '{usable} last {measured} at {use}.',
    watch: '{usable} last {measured} at {use}; {want} leaves a day free.',
    fail: '{usable} last {measured} at {use}.',
    because: 'Low end: all plants grown. High end: plants of all ages side by side.',
  },
  'reservoir/room': {
    short: 'Tank has room for the foot',
    pass: 'Column and pump take {measured} of the tank’s plan.',
    watch: 'Column and pump take {measured} of the tank’s plan.',
    fail: 'Column and pump take {measured} of the tank’s plan; beyond {must} there is no tank left. The lines are computed without them.',
    because: 'What stands in the tank lifts the water and takes its place.',
  },
}
