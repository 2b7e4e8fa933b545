import { choice, flag, quantity, section, text } from '../field.ts'

export const place = section('Where the tower stands.', {
  name: text('What people call the place.'),
  setting: choice(
    ['balcony', 'garden', 'courtyard', 'greenhouse', 'indoors', 'school', 'care home', 'community kitchen'],
    'Kind of place; some cautions depend on it.',
  ),
  latitude: quantity('rad', {
    min: -Math.PI / 2,
    max: Math.PI / 2,
    example: '54.37 deg',
    about: 'Latitude, north positive.',
  }),
  longitude: quantity('rad', { min: -Math.PI, max: Math.PI, example: '18.61 deg', about: 'Longitude, east positive.' }),
  altitude: quantity('m', { min: -430, max: 6000, example: '20 m', about: 'Height above the sea.' }),
  faces: quantity('rad', {
    min: 0,
    max: 2 * Math.PI,
    example: '225 deg',
    about: 'Compass bearing of the open side, from north through east.',
  }),
  ceiling: quantity('m', { min: 0.5, max: 50, example: '2.5 m', about: 'Height of ceiling or slab above the floor.' }),
  floorLength: quantity('m', { min: 0.1, max: 100, example: '2.9 m', about: 'Floor that may be used, long side.' }),
  floorWidth: quantity('m', { min: 0.1, max: 100, example: '1.2 m', about: 'Floor that may be used, short side.' }),
  floorLimit: quantity('kg_m2', {
    min: 20,
    max: 20_000,
    example: '250 kg/m2',
    about: 'Load per area that the building manager has stated in writing.',
  }),
  boardLength: quantity('m', {
    min: 0.1,
    max: 10,
    example: '600 mm',
    about: 'Spreading board under the tower, long side.',
  }),
  boardWidth: quantity('m', {
    min: 0.1,
    max: 10,
    example: '600 mm',
    about: 'Spreading board under the tower, short side.',
  }),
  gust: quantity('m_s', { min: 0, max: 60, example: '20 m/s', about: 'Strongest gust to be withstood.' }),
  gustOf: choice(
    ['here', 'town', 'open land', 'shore'],
    'What the gust stands for: measured where the tower stands, or of the weather service, brought down to a town, open land or a shore; here where absent.',
  ),
  airLow: quantity('C', { min: -40, max: 45, example: '8 °C', about: 'Coldest air while plants stand.' }),
  airHigh: quantity('C', { min: -10, max: 60, example: '31 °C', about: 'Hottest air while plants stand.' }),
  hotNight: quantity('C', {
    min: -20,
    max: 45,
    example: '20 °C',
    about: 'Air in the night of the hottest day; a usual swing below it where absent.',
  }),
  humidity: quantity('1', {
    min: 0,
    max: 1,
    example: '60 %',
    about: 'Relative humidity of the air on a hot afternoon.',
  }),
  sun: quantity('1', {
    min: 0,
    max: 1,
    example: '70 %',
    about: 'Share of the day’s open sky and sun that reaches the tower.',
  }),
  walkRound: quantity('m', { min: 0, max: 5, example: '0.6 m', about: 'Standing room kept free around the tower.' }),
  reach: quantity('m', {
    min: 0.3,
    max: 3,
    example: '1.25 m',
    about: 'Height up to which the people who tend it can reach.',
  }),
  children: flag('Whether children use the place.'),
})
