import type { FindingWords } from '../../words.ts'

export const hydraulics: Readonly<Record<string, FindingWords>> = {
  'hydraulics/pump-lifts': {
    short: 'Pump reaches the top',
    pass: 'The pump lifts up to {measured}; the outlet lies {lift} above low water.',
    watch: 'The pump lifts {measured}; the outlet lies {lift} above low water.',
    fail: 'This pump stops at {measured}; the outlet lies {lift} above low water. Nothing will ever arrive.',
    because: 'A pump gives no flow at its largest head; below the lift the water stands still in the hose.',
  },
  'hydraulics/hose-reaches': {
    short: 'Hose reaches its outlet',
    pass: 'The hose of {measured} reaches its outlet, {must} above the low water.',
    watch: 'The hose of {measured} barely reaches its outlet, {must} above the low water.',
    fail: 'A hose of {measured} cannot reach an outlet {must} above the low water, under which the pump lies. Measure the way along which it will run, bends and pump included.',
    because: 'The pump lies under the lowest water, so the hose is at least as long as the water is lifted.',
  },
  'hydraulics/static-share': {
    short: 'Lift within pump’s head',
    pass: 'The lift of {lift} takes {measured} of the pump’s largest head.',
    watch:
      'The lift of {lift} takes {measured} of the pump’s largest head of {head}; beyond {want} the flow is touchy.',
    fail: 'The lift of {lift} takes {measured} of the pump’s largest head.',
    because: 'Near its largest head a pump’s flow swings widely with level, wear and dirt.',
  },
  'hydraulics/column-flow': {
    short: 'Each column gets its flow',
    pass: 'The leanest column gets {measured} at low water; {wanted} is wanted.',
    watch: 'The leanest column gets {measured} at low water; {wanted} is wanted, {margin} with room for wear. {advice}',
    fail: 'The leanest column gets {measured} at low water; {wanted} is wanted.',
    because:
      'The flow follows from pump and tubes together, at the level just before a top-up. A worn pump would give {worn}.',
  },
  'hydraulics/starved-columns': {
    short: 'No column stays dry',
    pass: 'Water reaches every column.',
    watch: 'Columns without water: {measured} ({which}).',
    fail: 'Columns without water: {measured} ({which}). Lower their outlets, close valves elsewhere, or take a stronger pump.',
    because: 'Water takes the easy ways first; an outlet above the head that is left gets none.',
  },
  'hydraulics/spread': {
    short: 'Columns share evenly',
    pass: 'The flows of the columns differ by {measured} of their mean.',
    watch: 'The flows of the columns differ by {measured} of their mean; {want} is fair. {how}',
    fail: 'The flows of the columns differ by {measured} of their mean.',
    because: 'Columns near the pump take more than those at the end; valves or a wider header even them.',
  },
  'hydraulics/riser-speed': {
    short: 'Calm water in the hose',
    pass: 'Water runs through the hose at {measured}.',
    watch: 'Water runs through the hose at {measured}; above {want} it hums and wastes head.',
    fail: 'Water runs through the hose at {measured}.',
    because: 'Head lost to friction grows with the square of the speed.',
  },
  'hydraulics/bucket-test': {
    short: 'Bucket test can be true',
    pass: 'The test shows {measured}; the box says at most {box}.',
    watch: 'The test shows {measured}; the box says at most {box}.',
    fail: 'That would be {measured} at a height of {height}; the pump’s box says at most {box}, and none at {head}. Was it {meant} and not {time}, or another height?',
    because: 'No pump gives more with a lift than its box says without one. This test is left out.',
  },
  'hydraulics/pump-strength': {
    short: 'Pump as strong as it was',
    pass: 'The last bucket test shows {measured} of the first.',
    watch: 'The last bucket test shows {measured} of the first. {advice}',
    fail: 'The last bucket test shows {measured} of the first.',
    because:
      'Over {tests} tests, each carried to its own lift, a fall means wear, scale or slime. No pump grows stronger by itself.',
  },
  'hydraulics/tests-agree': {
    short: 'Tests of a day agree',
    pass: 'The bucket tests of {day} agree: the strongest shows {measured} times the weakest.',
    watch: 'The bucket tests of {day} differ: the strongest shows {measured} times the weakest.',
    fail: 'The bucket tests of {day} contradict each other: test {weak} gave {weakFlow} at {weakHeight}, test {strong} gave {strongFlow} at {strongHeight}, as if the pump were {measured} times as strong. Up to {must} a stopwatch explains. Take both again and strike out the wrong one.',
    because: 'One pump has one strength on one day. Bucket and stopwatch miss the flow by 5 % at most, either way.',
  },
  'hydraulics/pump-curve': {
    short: 'Maker’s curve can be true',
    pass: 'The head of the maker’s curve falls while its flow grows, over all {points} points.',
    watch:
      'The maker’s curve rises from {lowHead} at {lowFlow} to {highHead} at {highFlow}. The hump is reckoned as level.',
    fail: 'The maker’s curve rises by {measured}, from {lowHead} at {lowFlow} to {highHead} at {highFlow}; more than {must} is a slip. Look at both points: is a flow exchanged with another, or a head? The curve is left out.',
    because: 'The more water a pump moves, the less head is left; a small hump near still water is all that occurs.',
  },
  'hydraulics/loose-branches': {
    short: 'All tubes hang together',
    pass: 'Every branch leaves the riser or another branch.',
    watch: 'Branches that leave nothing: {measured} ({which}).',
    fail: 'Branches that leave nothing: {measured} ({which}). Name the tube that each of them leaves.',
    because: 'A tube that leaves no other gets no water and is left out.',
  },
  'hydraulics/siphon': {
    short: 'Tank cannot siphon empty',
    pass: 'The lowest open end lies {measured} above the fill line, or air breaks the siphon.',
    watch: 'The lowest open end lies only {measured} above the fill line. Keep {want}, or let air in at the top.',
    fail: 'The lowest open end lies {measured} from the fill line: with the pump off the tank runs out through it. Let air in at the top.',
    because: 'A full hose whose end lies lower than the water pulls the tank empty without any pump.',
  },
  'hydraulics/hole-size': {
    short: 'Holes stay open',
    pass: 'Holes of {measured} stay open between two cleanings.',
    watch: 'Holes of {measured} clog soon; {want} or more lasts.',
    fail: 'Holes of {measured} clog within days, and it takes {needed} of them to do the work of {count} of {usual}.',
    because: 'Salt crusts, roots and slime close small holes first.',
  },
  'hydraulics/hole-circle': {
    short: 'Holes clear of the wall',
    pass: 'Between the holes and the wall of the cup {measured} of plate is left.',
    watch:
      'On a circle of {circle} only {measured} of plate is left between the holes and the wall; a drill wanders more. Up to {most} would do.',
    fail: 'On a circle of {circle} the holes cut into the wall of the cup (plate left: {measured}). The largest circle is {most}.',
    because:
      'A hole that meets the wall lets its water run down the outside of the cup, off its line, and the drill tears out.',
  },
  'hydraulics/distributor-overflow': {
    short: 'Distributor holds its flow',
    pass: 'At {flow} the water stands {measured} over the holes; the rim is at {must}.',
    watch: 'At {flow} the water would stand {measured} over the holes; the rim is at {must}. It floods above {full}.',
    fail: 'At {flow} the water would stand {measured} over the holes; the rim is at {must}. It floods above {full}: {count} holes of {drill} would do.',
    because: 'Water stands over the holes until its weight pushes the whole flow through them.',
  },
  'hydraulics/distributor-clogged': {
    short: 'Room for clogged holes',
    pass: 'With {shut} of the holes shut the water stands {measured} over them, {clear} when all are open; the rim is at {must}.',
    watch: 'With {shut} of the holes shut the water stands {measured} over them.',
    fail: 'With {shut} of the holes shut the water would stand {measured} over them, {clear} when all are open; the rim is at {must}. Try {count} holes of {drill}.',
    because:
      'Between two cleanings some holes shut, and the head over the others grows with the square of what they must take.',
  },
  'hydraulics/drips-evenly': {
    short: 'All holes run',
    pass: 'At the least flow the water stands {measured} over the holes; {start} starts a dry hole.',
    watch:
      'At the least flow the water stands {measured} over the holes; a dry hole starts at {start}, so some stay shut.',
    fail: 'At the least flow the water stands {measured} over the holes; a dry hole starts at {start}. A few holes take all the water. Fewer or smaller holes help.',
    because: 'Surface tension holds the water in a hole until the head breaks through.',
  },
  'hydraulics/tilt-effect': {
    short: 'Lean does not dry a side',
    pass: 'Out of level by {lean} the low side gets {measured} of the mean flow more than the high side.',
    watch:
      'Out of level by {lean}, {edge} from edge to edge, the sides differ by {measured} of the mean flow; {want} is fair.',
    fail: 'Out of level by {lean}, {edge} from edge to edge, the high side stays dry.',
    because: 'The water stands level while the plate does not; little water over the holes makes this worse.',
  },
  'hydraulics/dry-sites': {
    short: 'Water meets every site',
    pass: 'Of {sites} sites none is missed at {flow}; {drops} of them are struck by drops only.',
    watch: 'At {flow}, sites that may be missed: {measured} of {sites} ({which}). Try with a dry strip of paper.',
    fail: 'At {flow}, sites that neither film nor drops reach: {measured} of {sites} ({which}). Streams must run down the wall above a site, or meet its cup.',
    because:
      'Plumb, all holes open. A stream close to the wall clings to it; one further in falls as drops, which strike what stands in their way and splash, or pass the sites by.',
  },
  'hydraulics/drop-sites': {
    short: 'Film, not drops alone',
    pass: 'No site lives by drops alone.',
    watch:
      'Sites that only drops reach: {measured} of {sites} ({which}). They strike the ends and cups in the bore and splash about. Wet the plugs by hand each day until {until}; a film would wet them from the first day.',
    fail: 'Sites that only drops reach: {measured} of {sites} ({which}).',
    because:
      'A seedling lives its first days by what touches its plug. How much of a splash a plug keeps nobody measured, so drops are told apart from film; a grown plant drinks with roots that hang in the rain.',
  },
  'hydraulics/dry-sites-worst': {
    short: 'Water despite lean and clog',
    pass: 'Leaning by {lean}, with {shut} of the holes shut in a row, no site is missed.',
    watch:
      'Leaning by {lean}, with {shut} of the holes shut in a row, sites that may be missed: {measured} of {sites} ({which}).',
    fail: 'Leaning by {lean}, with {shut} of the holes shut in a row, sites are missed: {measured} of {sites}.',
    because: 'Dirt settles on one side and columns lean; this is the placement that leaves most sites dry.',
  },
  'hydraulics/film-closes': {
    short: 'Film wets the whole wall',
    pass: 'The column gets {measured}; from {want} on the film closes on a wall that has run in.',
    watch:
      'The column gets {measured}; below {want} the film breaks into strips, and on new pipe below {clean}. Sites between strips stay dry until roots lead water to them.',
    fail: 'The column gets {measured}.',
    because: 'A thin film pulls itself together over dry patches; a run-in wall wets more easily than a clean one.',
  },
  'hydraulics/splash-margin': {
    short: 'Lip keeps the water in',
    pass: 'The lip stands {measured} above the lowest way out.',
    watch: 'The lip stands {measured} above the lowest way out; splashes and roots want {want}.',
    fail: 'The lip stands only {measured} above the lowest way out; the film itself runs out below {must}.',
    because: 'Water creeps along edges by surface tension, and drops that meet roots splash.',
  },
  'hydraulics/root-room': {
    short: 'Bore stays open for water',
    pass: 'Roots of the oldest plants, of {oldest}, take {measured} of the bore; it would be half full after {day}.',
    watch:
      'Roots of the oldest plants, of {oldest}, take {measured} of the bore, thickest from ring {ring} down; it is half full after {day}. Look down it each week; {deed}, or take a bore of {bore}{pipe}.',
    fail: 'Roots of the oldest plants, of {oldest}, would take {measured} of the bore from ring {ring} down; half of it is taken after {day}. Cut them before; {deed}, or take a bore of {bore}{pipe}.',
    because:
      'Water needs only {film} of the bore, but roots that hang side by side dam it, and it stands at the lowest sites. How roots grow was never measured by the day, so the band is wide.',
  },
  'hydraulics/foot-water': {
    short: 'Foot lets the water out',
    pass: 'Water stands {measured} over the foot, to {shut} of its holes shut.',
    watch:
      'Water stands {measured} over the foot, to {shut} of its holes shut; {want} is calm. {enough} such holes would do.',
    fail: 'Water stands {measured} over the foot and the lowest opening lies {room} above: it runs out there. {enough} such holes would do.',
    because: 'The foot must let out all that the pump sends, roots in the way.',
  },
  'hydraulics/return-pipe': {
    short: 'Return pipe runs part full',
    pass: 'The return pipe runs {measured} full.',
    watch: 'The return pipe runs {measured} full; {want} leaves room for roots.',
    fail: 'The return pipe runs {measured} full; above {must} it gulps and backs up.',
    because: 'A sloped drain needs air above its water; the flow follows from bore and fall.',
  },
  'hydraulics/timer-off': {
    short: 'Rest is short enough',
    pass: 'The pump rests {measured}; grown plants at {air} hold out {dry}.',
    watch: 'The pump rests {measured}; at {air} grown plants hold out {dry}. Rest {want} at most. {from}',
    fail: 'The pump rests {measured}; grown plants at {air} hold out {dry} at most. {from}',
    because:
      'Half of the time to dry is kept in hand. The band is wide, since cups and roots hold very different amounts.',
  },
  'hydraulics/timer-on': {
    short: 'Run is long enough',
    pass: 'The pump runs {measured}; the water needs less to fill the hose and reach the foot.',
    watch: 'The pump runs {measured}; the water may need {want} to fill the hose and reach the foot.',
    fail: 'The pump runs {measured}; the water needs {must} only to fill the hose and reach the foot.',
    because: 'A run must first fill hose and distributor, then wet the whole column.',
  },
  'hydraulics/power-cut': {
    short: 'Plants outlast a cut',
    pass: 'Grown plants at {air} hold out {measured}; a cut lasts {cut}.',
    watch: 'At {air} grown plants hold out {measured}, a cut lasts {cut}. {from} Pour by hand or run a battery pump.',
    fail: 'At {air} grown plants hold out {measured}, a cut lasts {cut}. {from} Plan a battery pump.',
    because: 'Cup, plug and clinging roots hold little. Young plants last longer than grown ones.',
  },
}
