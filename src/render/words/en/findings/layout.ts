import type { FindingWords } from '../../words.ts'

export const layout: Readonly<Record<string, FindingWords>> = {
  'layout/top-margin': {
    short: 'Pipe over the highest hole',
    pass: '{measured} of whole pipe stays over the highest hole.',
    watch: '{measured} of whole pipe stays over the highest hole; {want} is comfortable.',
    fail: 'Only {measured} of whole pipe stays over the highest hole; it must be {must}. The highest marks stand at {highest} of {length}.',
    because:
      'The water needs a length of wall to settle on before the first opening, and the cap and the distributor sit here.',
  },
  'layout/first-hole': {
    short: 'Lowest opening over drain',
    pass: 'The lowest opening stands {measured} over the level at which the water leaves.',
    watch: 'The lowest opening stands {measured} over the level at which the water leaves; {want} is better.',
    fail: 'The lowest opening stands {measured} over the level at which the water leaves; it must be {must}. The opening begins at {lowest} from the column’s foot, the level is {level}.',
    because: 'Water that backs up at the drain, or splashes from it, runs out of an opening that stands too low.',
  },
  'layout/canopy': {
    short: 'Room for grown plants',
    pass: 'The nearest mouths stand {measured} apart; a grown plant needs {canopy}.',
    watch:
      'The nearest mouths stand {measured} apart, and a grown plant needs {canopy}: neighbours will crowd each other.',
    fail: 'The nearest mouths stand {measured} apart and the stubs are {stub} wide: they run into each other.',
    because:
      'Plants that stand closer than they are wide shade each other, stay damp, and end smaller than the packet says.',
  },
  'layout/headroom': {
    short: 'Room to lift a cup out',
    pass: '{measured} between a stub and the next one on its line, enough for the cup of {depth}.',
    watch: '{measured} between a stub and the next one on its line; the cup is {depth} deep and will need coaxing.',
    fail: 'A stub and the next one on its line overlap: {measured} between them.',
    because: 'A cup must come out with its roots, and a hand must go in with a seedling.',
  },
  'layout/ceiling': {
    short: 'Room under the ceiling',
    pass: 'The column ends at {top}, {measured} under the ceiling.',
    watch: 'The column ends at {top}, {measured} under the ceiling; {want} is needed to lift the distributor out.',
    fail: 'The column ends at {top} and the ceiling is at {ceiling}: it does not stand up.',
    because: 'The distributor at the top must be taken out to be cleaned while the column stands.',
  },
  'layout/reach': {
    short: 'Highest site within reach',
    pass: 'The highest mouth is at {measured}, within the reach of {want}.',
    watch: 'The highest mouth is at {measured}; those who tend it reach {want}.',
    fail: 'The highest mouth is at {measured}; those who tend it reach {want}.',
    because: 'A site that needs a stool is a site that is not looked after, and children climb.',
  },
  'layout/standing-room': {
    short: 'Room to walk round',
    pass: '{measured} is kept free round the tower.',
    watch: '{measured} is kept free round the tower; {want} lets a person work.',
    fail: '{measured} is kept free round the tower; {want} lets a person work.',
    because: 'Each side that carries plants is planted, looked at and picked from a standing place.',
  },
  'layout/marks': {
    short: 'Rounding on the tape',
    pass: 'On a tape of {tape} no mark is more than {measured} off, and no line round the pipe more than {round}.',
    watch: 'On a tape of {tape} a mark is up to {measured} off.',
    fail: 'On a tape of {tape} a mark is up to {measured} off; {must} is allowed.',
    because: 'Each mark is rounded from its own exact distance, so that errors never add up along the pipe.',
  },
  'layout/stagger': {
    short: 'Turn of alternate rings',
    pass: 'Neighbouring rings stand {apart} apart, {measured} of half a step.',
    watch: 'Neighbouring rings stand only {apart} apart; half a step is {half}.',
    fail: 'Neighbouring rings stand only {apart} apart; half a step is {half}.',
    because: 'Half a step puts each plant over a gap: more light, more room, and stronger wall between the holes.',
  },
  'layout/site-height': {
    short: 'Height of a mark as built',
    pass: 'Site {site} stands {measured} from where it was planned.',
    watch: 'Site {site} stands {measured} from its planned {planned}; {want} is the usual limit.',
    fail: 'Site {site} stands {measured} from its planned {planned}.',
    because: 'A ring whose lips stand at different heights runs over at the lowest first.',
  },
}
