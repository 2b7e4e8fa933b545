import { containerField } from '../container.ts'
import { choice, flag, list, quantity, section, text } from '../field.ts'

export const reservoir = section('The tank at the foot: pump in it, column over or beside it.', {
  container: containerField,
  lidHeight: quantity('m', {
    min: 0,
    max: 2,
    example: '270 mm',
    about: 'Top of the lid above the floor on which the column stands.',
  }),
  lidThickness: quantity('m', {
    min: 0.0005,
    max: 0.1,
    example: '6 mm',
    about: 'Thickness of the lid where the column passes.',
  }),
  outsideLength: quantity('m', {
    min: 0.05,
    max: 5,
    example: '560 mm',
    about: 'Outside of the tank, long side or diameter, at its foot.',
  }),
  outsideWidth: quantity('m', {
    min: 0.05,
    max: 5,
    example: '390 mm',
    about: 'Outside of the tank, narrow side or diameter, at its foot.',
  }),
  mass: quantity('kg', { min: 0.05, max: 500, example: '2.4 kg', about: 'Empty tank with lid.' }),
  fillLine: quantity('m', {
    min: 0,
    max: 3,
    example: '218 mm',
    about: 'Highest level while the pump runs, above the tank’s inside floor.',
  }),
  lowLine: quantity('m', {
    min: 0,
    max: 3,
    example: '73 mm',
    about: 'Level at which it is topped up, above the tank’s inside floor.',
  }),
  fillVolume: quantity('m3', { min: 0, max: 5, example: '36 L', about: 'The fill line as a volume.' }),
  lowVolume: quantity('m3', { min: 0, max: 5, example: '12 L', about: 'The low line as a volume.' }),
  freeboard: quantity('m', {
    min: 0,
    max: 1,
    example: '30 mm',
    about: 'Rim kept above the highest water after the pump stops.',
  }),
  marks: list(
    section('A level at which the volume was measured.', {
      level: quantity('m', { min: 0, max: 3, example: '100 mm', about: 'Level above the inside floor.' }),
      volume: quantity('m3', { min: 0, max: 5, example: '16.5 L', about: 'Litres poured in up to that level.' }),
    }),
    60,
    'Measured levels and volumes, lowest first; they outrank the shape.',
  ),
  colour: choice(['white', 'light', 'dark', 'black', 'foil'], 'Outside of the tank as the sun sees it.'),
  shaded: flag('Whether the tank stands in the shade all day.'),
  insulation: quantity('m', { min: 0, max: 0.5, example: '20 mm', about: 'Foam around the tank.' }),
  buried: quantity('1', { min: 0, max: 1, example: '50 %', about: 'Share of the tank’s height below ground.' }),
  airStone: quantity('m3_s', { min: 0, max: 0.01, example: '2 L/min', about: 'Air pumped through a stone.' }),
  ice: section('Frozen bottles put into the tank on hot days.', {
    mass: quantity('kg', { min: 0, max: 500, example: '2 kg', about: 'Ice of a whole day, all bottles together.' }),
    at: list(
      quantity('s', { min: 0, max: 86_400, example: '11 h', about: 'Hour of the day by the sun, from midnight.' }),
      24,
      'Hours at which equal shares go in; late in the morning where absent.',
    ),
  }),
  gap: quantity('m', {
    min: 0,
    max: 0.5,
    example: '6 mm',
    about: 'Widest gap through which something could get into the tank: notch of the cord, lid, overflow, joints.',
  }),
  mesh: quantity('m', {
    min: 0.0001,
    max: 0.05,
    example: '1 mm',
    about: 'Opening of the mesh that covers those gaps.',
  }),
  note: text('Anything to remember.'),
})
