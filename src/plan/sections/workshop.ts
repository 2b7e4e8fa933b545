import { choice, count, flag, list, number, quantity, section, text } from '../field.ts'

const price = (about: string) => number({ min: 0, max: 1e9, about })

export const stock = section('Pipe and hose to be cut: what the shop sells and what lies in the shed.', {
  lengths: list(
    section('A length.', {
      of: choice(['column', 'stub', 'hose', 'return'], 'Which pipe it is.'),
      length: quantity('m', { min: 0.05, max: 100, example: '2 m', about: 'Usable length, without a socket.' }),
      count: count({ min: 0, max: 10_000, about: 'How many lie there; absent means the shop has enough.' }),
      price: price('Price of one length in the plan’s currency; 0 for what is there already.'),
    }),
    60,
    'Lengths that can be bought or are at hand.',
  ),
  kerf: quantity('m', { min: 0, max: 0.01, example: '2.5 mm', about: 'Width of the saw’s cut, square to the blade.' }),
  trim: quantity('m', { min: 0, max: 0.2, example: '5 mm', about: 'Cut away from each factory end.' }),
})

export const tools = section('What the maker has.', {
  saw: choice(['hand saw', 'mitre box', 'mitre saw', 'band saw', 'hacksaw', 'jigsaw'], 'Saw for the stubs.'),
  holeTool: choice(
    ['jigsaw', 'rotary tool', 'hole saw', 'file', 'laser'],
    'Tool for the holes; PVC must not meet a laser.',
  ),
  holeSaws: list(
    quantity('m', { min: 0.005, max: 0.3, example: '51 mm', about: 'Diameter.' }),
    60,
    'Hole saws at hand.',
  ),
  tape: choice(['1 mm', '1/16 in', '1/32 in'], 'Finest mark on the tape.'),
  paper: choice(['A4', 'Letter'], 'Paper in the printer.'),
  paperThickness: quantity('m', {
    min: 0.00003,
    max: 0.002,
    example: '0.1 mm',
    about: 'Thickness of the paper of the templates.',
  }),
  barAcross: quantity('m', {
    min: 0.001,
    max: 1,
    example: '100 mm',
    about: 'What the printed 100 mm bar across measured.',
  }),
  barUp: quantity('m', {
    min: 0.001,
    max: 1,
    example: '100 mm',
    about: 'What the printed 100 mm bar up the page measured.',
  }),
  bed: quantity('m', { min: 0.05, max: 2, example: '220 mm', about: 'Side of a 3-D printer’s bed.' }),
  laser: flag('Whether the templates are meant for a laser.'),
})

export const prices = section('Prices in one currency; what is missing is left out of the sum, and said.', {
  currency: text('Currency as written: zł, KSh, $.', 12),
  cement: price('A can of cement.'),
  primer: price('A can of primer.'),
  sealant: price('A cartridge of sealant.'),
  cup: price('One net cup.'),
  reservoir: price('The tank with lid.'),
  pump: price('The pump.'),
  hosePerMetre: price('A metre of hose.'),
  clamp: price('One hose clamp.'),
  cap: price('The cap of the column.'),
  distributor: price('The cup or plate at the top.'),
  strap: price('A strap with its anchor.'),
  salts: price('Salts for a season.'),
  lamp: price('One lamp.'),
  plug: price('A plug with seed.'),
  foil: price('Bright foil round the tank.'),
  shade: price('A board or skirt that shades the tank.'),
  paint: price('White paint for the tank.'),
  insulation: price('Foam round the tank.'),
  ice: price('Frozen bottles for a season.'),
  energyPerKWh: price('A kilowatt-hour.'),
})

export const measured = section('As built: what the tape says of the pieces in hand. It outranks the table.', {
  columnCircumference: quantity('m', { min: 0.06, max: 1.5, example: '346 mm', about: 'Tape round the column.' }),
  columnWall: quantity('m', { min: 0.0005, max: 0.05, example: '3.2 mm', about: 'Wall of the column.' }),
  stubCircumference: quantity('m', { min: 0.03, max: 1, example: '157 mm', about: 'Tape round the stub.' }),
  stubWall: quantity('m', { min: 0.0003, max: 0.05, example: '1.8 mm', about: 'Wall of the stub.' }),
  sites: list(
    section('A site that came out otherwise.', {
      site: count({ min: 1, max: 2000, about: 'Its number.' }),
      angle: quantity('rad', { min: 0, max: Math.PI / 2, example: '41 deg', about: 'Angle it was glued at.' }),
      height: quantity('m', { min: 0, max: 12, example: '487 mm', about: 'Height of its mark from the foot.' }),
    }),
    2000,
    'Sites as built.',
  ),
})
