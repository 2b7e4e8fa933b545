/** What the program tells of a plan that it drew from answers, and what it asks before. */
export const beginning = {
  title: 'What was chosen for you',
  kept: 'This list stays under Changes.',
  close: 'Understood',
  changed: 'Made for you, so that “{finding}” holds: {acts}.',
  fails: '“{finding}” does not hold yet: see it below.',
  gust: 'The strongest gust is taken as {gust}, as in a sheltered place of a town: put in what blows where it stands.',
  sizes: 'Column, holes, riser, distributor and drain have the measures of a usual tower.',
  rings: '{rings} rings of sites, so that the distributor can be lifted out under {height}.',
  tank: 'A box for {volume} stands in for the tank: measure yours.',
  towers: 'Each of the {count} towers has a tank and a pump of its own.',
  stub: 'The stubs are of {pipe}, from the same shelf as the column.',
  'pump-any': 'The pump is open: any will do that says at least {head} and {flow} on its box.',
  'pump-open': 'The pump is open: its height and flow are not known.',
  tie: 'It does not stand safely by itself. To be done in the build: tie it at {height} to a wall or frame with a strap that carries {load}. Nothing is tied in the plan until you say that it will be.',
  'tie-do': 'I will tie it so: put it into the plan',
  'tie-open':
    'It does not stand safely by itself: tie it, weigh it down or widen its foot. Nothing of that is taken for done.',
  'crops-apart': '{strongest} and {weakest} do not share one strength: give them two tanks, or leave one out.',
  blank:
    'Nothing is said for you of water, fertilisers, pen, tools and prices: what hangs on them is told as not known.',
  'new-open': 'Under the open sky?',
  'new-open-yes': 'in the open',
  'new-open-no': 'in a room',
  'new-towers': 'How many towers?',
  'new-apart':
    '{strongest} wants at least {least}, {weakest} at most {most}: one tank cannot feed both. One strength suits {together}; {rest} would need a tank of its own.',
  'new-like': 'for example {example}',
  'new-pump-blank': 'Figures that you do not know may stay empty: the plan then says which pump would do.',
  'new-named': '{crops}: {place}',
}
