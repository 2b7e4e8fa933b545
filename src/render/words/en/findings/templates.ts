import type { FindingWords } from '../../words.ts'

const bore: Readonly<Record<string, FindingWords>> = {
  'templates/stub-fits': {
    short: 'Stub goes into the column',
    pass: 'The stub goes into the bore with {measured} to spare on each side.',
    watch:
      'The stub goes into the bore with only {measured} to spare on each side; stored pipe is oval, and {want} lets it in.',
    fail: 'The stub is {stub} wide, its axis {offset} off the middle, and the bore of the {column} column {bore}, so no hole takes it. There a stub of {widest} or less goes in; else move it to the middle or take a wider column.',
    because: 'A stub that is wider than the bore would cut the pipe in two.',
  },
  'templates/stubs-meet': {
    short: 'Ends apart in the bore',
    pass: 'The {count} ends of a ring stand {measured} apart in the bore.',
    watch: 'The {count} ends of a ring stand only {measured} apart in the bore.',
    fail: 'The {count} ends of a ring run into each other in the bore of {bore}, by {measured}.',
    because: 'Stubs whose ends meet cannot be pushed in to their line, and they dam the water and the roots.',
  },
  'templates/free-core': {
    short: 'Room for the riser inside',
    pass: 'The ends leave a core of {measured}; the riser’s hose is {hose} wide.',
    watch: 'The ends leave a core of {measured}; the riser’s hose is {hose} wide.',
    fail: 'The ends leave a core of {measured} and the riser’s hose is {hose} wide: it does not pass them.',
    because: 'The hose must go up past every ring, and come out again to be cleaned.',
  },
  'templates/mitre-seals': {
    short: 'Mitre reaches the wall',
    pass: 'The mitred end goes in {measured}; its sides meet the whole wall from {must} on.',
    watch: 'The mitred end goes in {measured}; its sides meet the whole wall from {must} on.',
    fail: 'The mitred end goes in {measured}, and its sides meet the whole wall only from {must} on: they would hang free and leak.',
    because:
      'A flat cut meets a round pipe first in the middle. What holds and seals at the sides is the contact with the wall.',
  },
}

const hole: Readonly<Record<string, FindingWords>> = {
  'templates/ring-web': {
    short: 'Wall between ring’s holes',
    pass: '{count} holes take {used} of the {round} round and leave {measured} of wall between them.',
    watch:
      '{count} holes take {used} of the {round} round and leave {measured} of wall between them; {want} is wanted.',
    fail: '{count} holes take {used} of the {round} round and leave {measured} of wall between them; at least {must} must stay. The pipe would tear.',
    because: 'The wall between the holes of a ring carries everything above it, and bends when the column is pushed.',
  },
  'templates/ligament': {
    short: 'Wall to the next ring',
    pass: '{measured} of wall stays between a hole and the nearest of the next rings.',
    watch: '{measured} of wall stays between a hole and the nearest of the next rings; {want} is wanted.',
    fail: '{measured} of wall stays between a hole and the nearest of the next rings; at least {must} must stay.',
    because: 'Thin bridges crack when the holes are cut and when the column is carried.',
  },
  'templates/hole-saw': {
    short: 'Depth of the hole saw',
    pass: 'A saw held along the stub needs {measured} of depth; ordinary hole saws have it.',
    watch: 'A saw held along the stub needs {measured} of depth; a shallow one cuts only {want}.',
    fail: 'A saw held along the stub at {angle} needs {measured} of depth; ordinary ones end at {must}. Draw the hole and use a jigsaw or a rotary tool.',
    because: 'A slanted hole saw must go on cutting until its last tooth is through, long after the first.',
  },
  'templates/hole-saw-size': {
    short: 'Hole saw of the right size',
    pass: 'The saw of {saw} cuts the hole of {hole}.',
    watch: 'The nearest saw is {saw} and the hole {hole}: {measured} too wide.',
    fail: 'The nearest saw is {saw} and the hole {hole}: the stub does not go in.',
    because: 'A hole that is too wide leaves a gap all round that the joint has to bridge.',
  },
  'templates/tracing': {
    short: 'Error of tracing the end',
    pass: 'Tracing the cut end of a stub would draw the edge up to {measured} off, with its sides {high} too high. Use the template.',
    watch: 'Tracing the cut end of a stub would draw the edge up to {measured} off.',
    fail: 'Tracing the cut end of a stub would draw the edge up to {measured} off.',
    because: 'A flat end held against a round pipe touches it in the middle only; the pencil follows its shadow.',
  },
}

const lip: Readonly<Record<string, FindingWords>> = {
  'templates/lip': {
    short: 'Rise of the lip',
    pass: 'The lip stands {measured} above the low edge of the hole.',
    watch: 'The lip stands {measured} above the low edge of the hole; {want} keeps splashes in.',
    fail: 'At {above} above level a stub of {side} lifts the lip only {measured}, so splashes run out; it must be {must}. Use {from} to {to} above level, or a longer stub.',
    because: 'Drops that hit the opening spray outwards; what does not clear the lip runs back.',
  },
  'templates/angle': {
    short: 'Angle of the stub',
    pass: 'The stub rises at {measured} above level ({between} from the column).',
    watch: 'The stub rises at {measured} above level ({between} from the column); {want} is the usual limit.',
    fail: 'The stub rises at {measured} above level.',
    because: 'A flat stub lets water out; a steep one makes a long, weak hole and leaves the plant no room.',
  },
  'templates/freeboard': {
    short: 'Lip over the opening',
    pass: 'Water would have to stand {measured} high in the opening before it ran over the lip.',
    watch: 'Water would have to stand only {measured} high in the opening before it ran over the lip.',
    fail: 'The lip stands {measured} over the lowest point of the opening: water runs out of every stub.',
    because: 'Roots and leaves can hold back the water at an opening; the lip must stand over it.',
  },
  'templates/site-angle': {
    short: 'Angle of a stub as built',
    pass: 'Site {site} is at {built}, {measured} from the plan; its lip stands {lip} higher (minus: lower).',
    watch:
      'Site {site} is at {built} in place of {planned}; its lip stands {lip} higher (minus: lower). Where it is lower, leave the site empty and cap it.',
    fail: 'Site {site} is at {built} in place of {planned}; its lip stands {lip} higher (minus: lower). Leave it empty and cap it.',
    because: 'A stub that leans more than its neighbours is the one that runs over first.',
  },
}

const cup: Readonly<Record<string, FindingWords>> = {
  'templates/cup-ledge': {
    short: 'Rim of the cup holds',
    pass: 'The rim is {measured} wider than the stub’s bore and hangs on it.',
    watch: 'The rim is only {measured} wider than the stub’s bore; {want} holds it for sure.',
    fail: 'The rim is {rim} wide and the stub’s bore {bore}: the cup falls in.',
    because: 'Net cups follow no standard. A wet cup with a grown plant hangs by its rim alone.',
  },
  'templates/cup-play': {
    short: 'Body of the cup goes in',
    pass: 'The body has {measured} of play in the stub.',
    watch:
      'The body is {body} wide and the bore {bore}: slit the cup {slit} down its side, and it closes with {overlap} of overlap.',
    fail: 'The body is {body} wide and the bore {bore}, and even the foot does not go in.',
    because: 'A cup that is forced in sits proud of the mouth and cannot be taken out without tearing roots.',
  },
  'templates/cup-reach': {
    short: 'Foot in the falling water',
    pass: 'The foot of the cup stands {measured} past the wall of the bore, in the falling water.',
    watch:
      'The foot of the cup ends {short} short of the bore: a young plug stays dry. Shorten the stub, use a deeper cup or a wick.',
    fail: 'The foot of the cup ends {short} short of the bore.',
    because: 'In the first days the plug has no roots that reach the water; the water must reach it.',
  },
  'templates/cups-meet': {
    short: 'Cups apart in the bore',
    pass: 'The feet of the {count} cups of a ring stand {measured} apart.',
    watch: 'The feet of the {count} cups of a ring stand only {measured} apart.',
    fail: 'The feet of the {count} cups of a ring run into each other by {measured}.',
    because: 'Cups that meet lift each other out of their seats and dam the water.',
  },
}

const pipe: Readonly<Record<string, FindingWords>> = {
  'templates/known-pipe': {
    short: 'Pipe known to the table',
    pass: 'A listed pipe is {listed} wide, {measured} from this one: {first}.',
    watch:
      'No listed pipe is {outside} wide. If {round} was the wrap round it, keep it; if {outside} is the bore or a name, pick the pipe printed on it. The nearest are {first} and {second}.',
    fail: 'No listed pipe is {outside} wide. The nearest are {first} and {second}.',
    because:
      'The size in a shop’s name is a bore in one country and an outside in another; a template needs the true outside.',
  },
  'templates/pipe-marking': {
    short: 'Pipe told by its marking',
    pass: 'Only one listed size is {outside} wide: {names}.',
    watch:
      '{measured} listed sizes are within a tape’s error of {outside}: {names}. Read the marking printed on the pipe.',
    fail: '{measured} listed sizes are within a tape’s error of {outside}: {names}.',
    because: 'Caps, plugs and couplings for one do not seal on the other, though a tape cannot tell them apart.',
  },
  'templates/joint-gap': {
    short: 'Gap of the joint',
    pass: 'The gap of {measured} on the radius suits {joint} ({from} to {to}).',
    watch: 'The gap of {measured} on the radius is outside what suits {joint}: {from} to {to}.',
    fail: 'The gap of {measured} on the radius is outside what suits {joint}: {from} to {to}.',
    because:
      'Thin gaps cannot take in the sealant, wide ones are bridged and creep open; water finds them at low flow.',
  },
  'templates/paper-scale': {
    short: 'Print at true size',
    pass: 'The printed bar measures {measured}.',
    watch:
      'The printed bar measures {measured} in place of {bar}: the templates are stretched to suit this printer; print them again, and the bar comes out right.',
    fail: 'The printed bar measures {measured} in place of {bar}: more than a correction should hide. Turn off “fit to page” and print again.',
    because: 'A page that was fitted to its margins makes every hole too small, and the wrap does not close.',
  },
}

const others: Readonly<Record<string, FindingWords>> = {
  'templates/plain-hole': {
    short: 'Hole for a bare cup',
    pass: 'The hole of {hole} is {measured} of the pipe’s width.',
    watch: 'The hole of {hole} is {measured} of the pipe’s width.',
    fail: 'The hole of {hole} is {measured} of the pipe’s {outside}; at most {must} leaves a pipe.',
    because:
      'A wide hole in a round wall leaves the rim hanging on two points, with a gap at the sides, and little pipe behind.',
  },
  'templates/plain-hole-depth': {
    short: 'Bare cup and the far wall',
    pass: 'A cup of {depth} ends {measured} before the far wall.',
    watch: 'A cup of {depth} ends {measured} before the far wall.',
    fail: 'A cup of {depth} is too deep: the far wall is {deepest} away.',
    because: 'A cup that touches the far wall stops the film of water and leaves no room for roots.',
  },
  'templates/fitting-pitch': {
    short: 'Pitch of branch fittings',
    pass: 'The pitch of {measured} takes a fitting of {laying} and {between} of pipe.',
    watch: 'The pitch of {measured} is tight for a fitting of {laying}.',
    fail: 'The pitch is {measured}, and a fitting of {laying} with {between} of pipe needs {must}.',
    because: 'A branch fitting adds its laying length to the column, whatever is drawn.',
  },
  'templates/fitting-branches': {
    short: 'Branches on a ring',
    pass: 'A ring of {measured} is within the {branches} branches of a fitting.',
    watch: 'A ring of {measured} is more than the {branches} branches of a fitting.',
    fail: 'A ring of {measured} is more than the {branches} branches of a fitting.',
    because: 'One fitting gives as many sites at a level as it has branches.',
  },
  'pocket/slit': {
    short: 'Length of the slit',
    pass: 'The slit of {measured} opens over the former of {former}.',
    watch:
      'The slit of {measured} opens over the former of {former} only with more stretch than the {strain} planned; {want} is needed.',
    fail: 'The slit of {measured} does not open over the former of {former} without tearing; at least {must} is needed.',
    because: 'A slit opens into a loop of twice its length; what the former needs beyond that is stretched.',
  },
  'pocket/stretch': {
    short: 'Stretch of the lips',
    pass: 'The lips are stretched by {measured}.',
    watch: 'The lips are stretched by {measured}.',
    fail: 'The lips are stretched by {measured}; {must} is the most that holds.',
    because: 'Warm pipe that is stretched too far whitens, thins and tears at the ends of the slit.',
  },
  'pocket/wall': {
    short: 'Wall left in the lips',
    pass: '{measured} of the wall of {wall} is left in the lips.',
    watch: '{measured} of the wall of {wall} is left in the lips.',
    fail: '{measured} of the wall of {wall} is left in the lips; {must} must stay.',
    because: 'A thin lip folds under a wet plant and lets the water round its edge.',
  },
  'pocket/share': {
    short: 'Wall left beside the slits',
    pass: '{measured} of the way round stays whole beside the slits.',
    watch: '{measured} of the way round stays whole beside the slits.',
    fail: '{count} slits of {slit} leave {left} round the pipe, {measured} of it; at least {must} must stay.',
    because: 'While it is warm, what stays between the slits is all that keeps the pipe straight.',
  },
  'pocket/pitch': {
    short: 'Pitch of the pockets',
    pass: 'Pockets on a line stand {measured} formers apart.',
    watch: 'Pockets on a line stand {measured} formers apart; {want} keeps the heat of one from the other.',
    fail: 'Pockets on a line stand {measured} formers apart; {must} is the least.',
    because: 'Heat for one pocket lets its neighbour spring back towards the pipe.',
  },
}

export const templates: Readonly<Record<string, FindingWords>> = {
  ...bore,
  ...hole,
  ...lip,
  ...cup,
  ...pipe,
  ...others,
}
