import type { FindingWords } from '../../words.ts'

/** Running, pens, sanitising and disposal. */
export const nutrientsCare: Readonly<Record<string, FindingWords>> = {
  'nutrients/dump-day': {
    short: 'Days until the change',
    pass: 'A tank of {volume} that is topped up by {use} lasts {measured}; {by} ends it.',
    watch:
      'A tank of {volume} that is topped up by {use} lasts only {measured}; {by} ends it. Blend softer water in, or plan the changes.',
    fail: 'A tank of {volume} lasts only {measured}; {by} ends it.',
    because: 'What plants leave in the tank adds up with every top-up.',
  },
  'nutrients/pen-gate': {
    short: 'Pen against prediction',
    pass: 'Predicted {predicted}, pen {measured}: fine.',
    watch: 'Predicted {predicted}, pen {measured}. {causes}',
    fail: 'Predicted {predicted}, pen {measured}. Do not plant yet. {causes}',
    because: 'A batch that does not read as it was reckoned was mixed, weighed or read wrong.',
  },
  'nutrients/crops-together': {
    short: 'Crops share one tank',
    pass: 'All crops share a band of strength {measured} wide.',
    watch: 'The crops hardly share a strength.',
    fail: '{strongest} wants more than {weakest} bears: no strength suits both. Give each its own tank, or grow something else.',
    because: 'One tank has one strength.',
  },
  'nutrients/crop-strength': {
    short: 'Strength suits the crops',
    pass: 'The batch has {measured}, which suits every crop.',
    watch: 'The batch has {measured}; all crops together want up to {want}. Who loses: {losers}.',
    fail: 'The batch has {measured}.',
    because: 'Too strong a solution burns the edges of leaves, too weak a one starves them.',
  },
  'nutrients/pen': {
    short: 'Trust in the pH pen',
    pass: 'The pH pen reads within ± {measured}.',
    watch: 'The pH pen reads within ± {measured} only. Calibrate it.',
    fail: 'The pH pen reads within ± {measured} only ({days} since calibration). Do not dose acid by it before it is calibrated in two fresh buffers.',
    because: 'A pen that is off by half a pH leads to acid where none was needed.',
  },
  'nutrients/pen-scale': {
    short: 'Scale of the EC pen',
    pass: 'The scale of the pen is known.',
    watch:
      'The pen shows ppm of a scale that is not marked. {expected} reads {on500} on the 500 scale, {on640} on the 640 and {on700} on the 700 scale. Look in its booklet, or read a solution of known conductivity with it.',
    fail: 'The pen shows ppm of a scale that is not marked.',
    because: '“ppm” on a pen is conductivity times a number, and three numbers are in use.',
  },
  'nutrients/sanitiser': {
    short: 'Strength of the sanitiser',
    pass: '{product} of {percent} %: {add} into {water} of water. Clean first; goggles, gloves, fresh air; no acid near. The label goes before this.',
    watch: '{product} of {percent} %.',
    fail: '{product} is sold at {weakest} to {strongest} %. {percent} % is something else: read the label again, and add nothing before you know.',
    because: 'A wrong strength either cleans nothing or harms people; in many countries the label is the law.',
  },
  'nutrients/sanitiser-plants': {
    short: 'Plants out first',
    pass: 'The tower is empty when it is sanitised.',
    watch: 'Plants are in the tower.',
    fail: 'Take the plants out first. Sanitiser kills roots, and what is left of it would be eaten.',
    because: 'A sanitiser works on clean, empty surfaces.',
  },
  'nutrients/disposal': {
    short: 'Where spent solution goes',
    pass: 'Spent solution goes to {to}. A full tank holds {nitrogen} of nitrogen and {phosphorus} of phosphorus. The water authority’s rules go before this.',
    watch: 'Spent solution goes to {to}.',
    fail: 'Never into {to}: a tank holds {nitrogen} of nitrogen and {phosphorus} of phosphorus. Give it to beds, shrubs or compost, or ask the water authority.',
    because: 'Nitrogen and phosphorus feed algae, and algae kill streams.',
  },
}
