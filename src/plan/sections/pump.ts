import { choice, list, quantity, section, text } from '../field.ts'

export const pump = section('The pump: what its box says, and what a bucket says.', {
  name: text('Name on the box.'),
  maxHead: quantity('m', { min: 0.1, max: 60, example: '2.2 m', about: 'Largest lift printed on the box.' }),
  maxFlow: quantity('m3_s', { min: 1e-6, max: 0.02, example: '1800 L/h', about: 'Largest flow printed on the box.' }),
  curve: list(
    section('A point of the maker’s curve.', {
      head: quantity('m', { min: 0, max: 60, example: '1.5 m', about: 'Lift.' }),
      flow: quantity('m3_s', { min: 0, max: 0.02, example: '900 L/h', about: 'Flow at that lift.' }),
    }),
    40,
    'Points of the maker’s curve; they outrank the two box figures.',
  ),
  worn: quantity('1', { min: 0, max: 0.6, example: '10 %', about: 'Head and flow lost to wear.' }),
  power: quantity('W', { min: 0.5, max: 3000, example: '35 W', about: 'Power drawn.' }),
  noise: quantity('dB', { min: 0, max: 130, example: '35 dB', about: 'Sound level on its label, at one metre.' }),
  supply: choice(['mains', '12 V', '24 V'], 'What feeds it.'),
  minimumDepth: quantity('m', {
    min: 0,
    max: 1,
    example: '40 mm',
    about: 'Least water over the tank’s floor in which it still draws.',
  }),
  tests: list(
    section('A bucket test.', {
      on: text('Date, as written in the log.', 40),
      volume: quantity('m3', { min: 1e-5, max: 1, example: '5 L', about: 'Bucket, filled to a mark.' }),
      time: quantity('s', { min: 0.2, max: 7200, example: '62 s', about: 'Time to fill it.' }),
      outletHeight: quantity('m', {
        min: 0,
        max: 30,
        example: '1.78 m',
        about: 'Height of the riser’s end above the water in the tank while the bucket filled.',
      }),
    }),
    200,
    'Bucket tests, oldest first.',
  ),
  timerOn: quantity('s', { min: 0, max: 604_800, example: '15 min', about: 'Timer: how long it runs.' }),
  timerOff: quantity('s', { min: 0, max: 604_800, example: '30 min', about: 'Timer: how long it rests.' }),
  battery: section('Stand-by battery.', {
    voltage: quantity('V', { min: 1, max: 400, example: '12 V', about: 'Voltage.' }),
    charge: quantity('As', { min: 100, max: 1e7, example: '18 Ah', about: 'Charge on its label.' }),
    current: quantity('A', { min: 0.01, max: 100, example: '3 A', about: 'Current of the stand-by pump.' }),
    inverter: quantity('1', { min: 0, max: 0.9, example: '15 %', about: 'Share lost in an inverter; 0 without one.' }),
  }),
  volume: quantity('m3', { min: 0, max: 0.1, example: '0.4 L', about: 'Room that the pump takes in the tank.' }),
  height: quantity('m', { min: 0, max: 1, example: '80 mm', about: 'Height of the pump above the tank’s floor.' }),
  powerCut: quantity('s', {
    min: 0,
    max: 604_800,
    example: '4 h',
    about: 'Longest power cut that the plants must come through.',
  }),
})
