import type { FindingWords } from '../../words.ts'

export const build: Readonly<Record<string, FindingWords>> = {
  'build/temperature': {
    short: 'Warm enough to glue',
    pass: 'Cement sets between {from} and {to}; the place has {measured}. At its coldest wait {set} before moving a joint, {water} before water.',
    watch: 'The place has {measured}; cement sets between {from} and {to} only. Choose the day.',
    fail: 'The place has {measured}, and cement sets between {from} and {to} only. Glue indoors, or take another joint.',
    because: 'The printed times of setting and curing end at these temperatures.',
  },
  'build/laser': {
    short: 'No PVC into a laser',
    pass: 'No PVC is meant for a laser.',
    watch: 'Pipes of PVC or of no stated plastic: {measured}.',
    fail: 'A laser is planned, with pipes of PVC or of no stated plastic: {measured}. PVC in a laser gives off hydrogen chloride. Use the sheets with a marker or a router.',
    because: 'Hydrogen chloride harms lungs and eats the machine; no filter at home holds it.',
  },
  'build/strap': {
    short: 'Tall column is tied',
    pass: 'The column’s top is {measured} above the floor, and it is tied or low enough to stand free.',
    watch: 'The column’s top is {measured} above the floor.',
    fail: 'The column’s top is {measured} above the floor and nothing ties it; above {above} a strap to wall or frame is needed. Ask who answers for the wall.',
    because: 'A tall, narrow thing with handles gets pulled and leaned on, by children first.',
  },
  'build/children': {
    short: 'Steps for adults only',
    pass: 'No step is for adults alone.',
    watch: 'Children use this place: {measured} of {steps} steps are for adults alone. Plan who does them, and when.',
    fail: 'Children use this place: {measured} of {steps} steps are for adults alone.',
    because: 'Saws, solvents, hot plastic, mains and acid are no work for children.',
  },
}
