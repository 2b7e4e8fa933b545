import type { FindingWords } from '../../words.ts'

export const structure: Readonly<Record<string, FindingWords>> = {
  'structure/tips-full': {
    short: 'Stands in the gust, full',
    pass: 'With {volume} in the tank its {mass} resist a gust of {gust} {measured} times.',
    watch:
      'With {volume} in the tank its {mass} resist a gust of {gust} only {measured} times; {want} are wanted. Without a strap it falls at {falls}.',
    fail: 'Even with {volume} in the tank a gust of {gust} pushes it over: {measured} times what it takes. It falls at {falls}. Tie it with {strap} at {strapHeight}, or add {ballast} at its foot.',
    unknown: 'A strap at {strapHeight} has to carry {strap}; with less it does not stand.',
    because:
      'Wind on leaves, pipe and tank turns the tower about the edge of its base; weight times half the base holds it. Local codes and a licensed engineer decide where people can be hurt.',
  },
  'structure/tips-low': {
    short: 'Stands in the gust, low',
    pass: 'At its worst, when it weighs {mass}, it resists a gust of {gust} {measured} times.',
    watch:
      'At its worst, when it weighs {mass}, it resists a gust of {gust} only {measured} times; {want} are wanted. Without a strap it falls at {falls}.',
    fail: 'At its worst, when it weighs {mass}, a gust of {gust} pushes it over: {measured} times what it takes. It falls at {falls}. Tie it with {strap} at {strapHeight}, or add {ballast} at its foot.',
    unknown: 'A strap at {strapHeight} has to carry {strap}; with less it does not stand.',
    because:
      'A low tank and grown plants meet on the hottest, windiest day, just before the top-up: the weight is least when the leaves are largest.',
  },
  'structure/child-pull': {
    short: 'Holds when a child pulls',
    pass: 'With the tank low it resists a child who hangs on and leans back {measured} times.',
    watch:
      'With the tank low it resists a child who hangs on and leans back {measured} times. A strap at {strapHeight} that carries {strap} holds it with reserve.',
    fail: 'A child who hangs on and leans back pulls it over: it resists only {measured} times. Tie it at {strapHeight} with a strap that carries {strap}, or keep children away.',
    unknown: 'A strap at {strapHeight} has to carry {strap}; with less it does not stand.',
    because:
      'A child of school age pulls with {force} at {height}. Where children are, nothing taller than they stands loose.',
  },
  'structure/lean': {
    short: 'Holds when an adult leans',
    pass: 'With the tank low it resists an adult who stumbles against it {measured} times.',
    watch:
      'With the tank low it resists an adult who stumbles against it {measured} times. A strap at {strapHeight} that carries {strap} holds it with reserve.',
    fail: 'With the tank low it resists an adult who stumbles against it {measured} times.',
    unknown: 'A strap at {strapHeight} has to carry {strap}; with less it does not stand.',
    because: 'Somebody who stumbles pushes with {force} at {height}; few towers resist that without a wall.',
  },
  'structure/strap': {
    short: 'Strap and its anchor',
    pass: 'In a gust of {gust} the strap at {strapHeight} pulls with {measured}; {capacity} are reckoned for strap and anchor.',
    watch: 'In a gust of {gust} the strap at {strapHeight} pulls with {measured}.',
    fail: 'In a gust of {gust} it needs a strap at {strapHeight} that pulls with {measured}, and only {must} are there. Strap it, or have {ballast} more at its foot, as water or as ballast; without either it falls at {falls}.',
    unknown: 'A strap at {strapHeight} has to carry {strap}; with less it does not stand.',
    because:
      'A strap to wall or frame makes up what weight lacks, with a reserve of one half. Anchors in crumbling walls and railings hold less: whoever owns the wall decides.',
  },
  'structure/base-width': {
    short: 'Width of the base',
    pass: 'The base is {measured} wide; {needed} would stand free in a gust of {gust}.',
    watch:
      'The base is {measured} wide; it would take {needed} to stand free in a gust of {gust}. Tie it or weigh it down.',
    fail: 'The base is {measured} wide; it would take {needed} to stand free in a gust of {gust}.',
    unknown: 'A strap at {strapHeight} has to carry {strap}; with less it does not stand.',
    because: 'Measure the narrowest distance between outer feet: half of it is the arm of the weight.',
  },
  'structure/section': {
    short: 'Strength left by the holes',
    pass: 'At its lowest ring the wall carries {stress}; at {wall} it breaks at {strength}, {measured} times that.',
    watch: 'At its lowest ring the wall carries {stress}; at {wall} it breaks at {strength}, {measured} times that.',
    fail: 'At its lowest ring the wall carries {stress} and, {wall} warm, breaks at {strength}: only {measured} times that, and {must} are needed. The holes leave {left} % of the section. Tie the column higher, set the rings further apart or choose a thicker wall.',
    because:
      'Holes take away from the section just where a column bends most, their edges carry more than the mean, and warm PVC is weak: a third of its strength is what may be used. The share with warmth is known for PVC only.',
  },
  'structure/sway': {
    short: 'Sway of the top',
    pass: 'In a gust of {gust} the top moves {measured}.',
    watch:
      'In a gust of {gust} the top of the {wall} warm pipe moves {measured}; more than {want} pulls at hose and distributor. Tie it.',
    fail: 'In a gust of {gust} the top moves {measured}.',
    because: 'A top that moves far spills its distributor and works joints and hose loose.',
  },
  'structure/floor': {
    short: 'Load on the floor',
    pass: 'Its {mass} load the floor with {measured} ({pressure}, the same as kN/m²); {must} are allowed. Under the base alone it is {base} ({basePressure}).',
    watch: 'Its {mass} load the floor with {measured}; {must} are allowed.',
    fail: 'Its {mass} load the floor with {measured} ({pressure}, the same as kN/m²), and {must} are allowed. A stiff board of {side} square would spread it. Ask the building’s manager in writing.',
    because:
      'Water is heavy, and a balcony is made for people and chairs. What a floor carries is for the building’s manager or a structural engineer to say, not for a web page; people and snow come on top.',
  },
}
