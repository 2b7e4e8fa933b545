import type { FindingWords } from '../../words.ts'

export const water: Readonly<Record<string, FindingWords>> = {
  'water/hot': {
    short: 'Solution on a hot day',
    pass: 'On the hottest day the solution reaches {measured}.',
    watch:
      'On the hottest day the solution reaches {measured} and stays {hours} above {limit}. What helps most of what was reckoned: {measure}, {gain} cooler.{buy}{all}',
    fail: 'On the hottest day the solution reaches {measured}, and roots turn brown above {must}. It stays {hours} above {limit}. What helps most of what was reckoned: {measure}, {gain} cooler.{buy}{all}',
    because:
      'Warm water holds less oxygen while roots breathe faster, and rot spreads. Air, sun on tank and column, and every watt of the pump warm it; a full tank is slower than a low one.',
  },
  'water/cold': {
    short: 'Solution on a cold day',
    pass: 'On the coldest day the solution falls to {measured}.',
    watch:
      'On the coldest day the solution falls to {measured} and stays {hours} below {limit}: growth is slow, leaves turn purple.',
    fail: 'On the coldest day the solution falls to {measured}: below {must} growth stands still.',
    because:
      'Cold roots take up little water and phosphorus. The column gives the solution’s warmth to the air all night.',
  },
  'water/ice': {
    short: 'Ice that the tank can take',
    pass: '{measured} of ice a day, put in at {hours}, takes the warmest hour from {without} to {with}, and the water no lower than {chilled}. The hours decide: without ice it is warmest at {warmest}.',
    watch:
      '{measured} of ice a day, put in at {hours}, go into {water} of water and chill it to {chilled}; the warmest hour goes from {without} to {with}. {more} At these hours roots like no more than {enough}; the rest does more at other hours: without ice it is warmest at {warmest}.',
    fail: '{measured} of ice a day, put in at {hours}, go into {water} of water and chill it to {chilled}. {more} At these hours roots like no more than {enough}; the hours decide: without ice it is warmest at {warmest}, {without}.',
    because:
      'Melting takes up as much heat as cooling the same water from 80 °C: a kilogram goes a long way, and roots stand still in water near freezing. The day is reckoned with no more ice than can melt.',
  },
  'water/room-noise': {
    short: 'Pump is quiet enough',
    pass: 'The pump’s label says {measured}.',
    watch:
      'The pump’s label says {measured}; a room to live in wants {want}, one to sleep in {bedroom}. Stand it on rubber, keep hose off walls, keep it covered with water, or let it rest at night.',
    fail: 'The pump’s label says {measured}.',
    because:
      'A steady hum keeps people awake long before it hurts; falling water adds to it. The label is read at a metre, 3 ft.',
  },
  'water/legionella-warm': {
    short: 'Band of warm-water germs',
    pass: 'The solution reaches {measured}, below the band in which legionella grows.',
    watch:
      'The solution reaches {measured}, {hours} of the day above {want}: legionella grows between there and {high}. Keep it from spraying, keep it cool and clean; where frail people live ask whoever is responsible for water safety.',
    fail: 'The solution reaches {measured}.',
    because:
      'Legionella grows in warm, standing water and harms those who breathe its spray. Public bodies set the rules; rootfall only says that the band is reached.',
  },
  'water/oxygen': {
    short: 'Oxygen at the roots',
    pass: 'At its warmest, {temperature}, the water at the column’s foot still holds {measured} of oxygen; it could hold {saturation}, and {sea} at sea level.',
    watch:
      'At its warmest, {temperature}, the water at the column’s foot holds {measured} of oxygen; it could hold {saturation}, and {sea} at sea level. Keep it cooler, or blow air in.',
    fail: 'At its warmest, {temperature}, the water at the column’s foot holds {measured} of oxygen, less than the {must} with which lettuce was seen to grow unhurt. It could hold {saturation} at most, and {sea} at sea level. Keep it cooler.',
    because:
      'The falling film takes oxygen from the air and roots take it out again. How hard roots breathe is only known within a factor of eight, so the band is wide; part of them hangs in moist air and needs none from the water.',
  },
  'water/assumed': {
    short: 'Sun and colours stated',
    pass: '',
    watch: '',
    fail: '',
    because:
      'Where colour, sun or height are not stated the day was reckoned with the worst: dark walls in the full sun of the sunniest day.',
  },
  'water/frost': {
    short: 'Frost in hose and pockets',
    pass: 'The air falls to {measured}; nothing freezes.',
    watch:
      'The air falls to {measured}: a clear night can freeze hose and cups. Keep the pump running or drain it. {trapped}',
    fail: 'The air falls to {measured}: water left in hose, distributor, stubs and pump freezes and splits them. {trapped} Before that: pump out, tip the column, blow the riser through, take the pump indoors.',
    because: 'Water grows by a tenth when it freezes, and roots dam a pocket of it below the lip of each site.',
  },
  'water/mesh': {
    short: 'Nothing gets into the tank',
    pass: 'The widest way into the tank is {measured}.',
    watch:
      'The widest way into the tank is {measured}: cover it with mesh no wider than {want}. Mosquitoes lay their eggs through wider ones; gnats, leaves and light come the same way.',
    fail: 'The widest way into the tank is {measured}.',
    because:
      'Standing warm water breeds mosquitoes within a week, and light in it breeds algae. Notch of the cord, lid, overflow and joints count.',
  },
  'water/room-air': {
    short: 'Moisture into the room',
    pass: 'The plants give {measured} to the air of the room: air it, or mould grows on cold walls. Pump and lamps warm it with {warmth}.',
    watch: 'The plants give {measured} to the air of the room.',
    fail: 'The plants give {measured} to the air of the room.',
    because: 'Nearly all that plants drink they breathe out.',
  },
}
