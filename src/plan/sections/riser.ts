import { choice, count, flag, list, number, quantity, section, text } from '../field.ts'

const bore = quantity('m', { min: 0.002, max: 0.3, example: '13 mm', about: 'Inside diameter.' })
const length = quantity('m', { min: 0, max: 200, example: '2.1 m', about: 'Length along the hose.' })
const losses = number({ min: 0, max: 500, about: 'Sum of loss coefficients on this bore (fittings, valve, exit).' })

export const fitting = section('Fittings of one kind.', {
  kind: choice(
    ['elbow 90', 'elbow 45', 'tee run', 'tee branch', 'ball valve', 'check valve', 'barb', 'entrance', 'exit'],
    'What it is.',
  ),
  count: count({ min: 1, max: 200, about: 'How many.' }),
  bore: quantity('m', { min: 0.001, max: 0.3, example: '9.5 mm', about: 'Smallest bore in it, for barbs.' }),
})

export const riser = section('What lifts the water: hose, header, a drop to each column.', {
  bore,
  length,
  losses,
  fittings: list(fitting, 40, 'Fittings in the riser; they outrank `losses`.'),
  valveLosses: number({ min: 0, max: 100_000, about: 'Loss coefficient of a valve in the riser as set, on its bore.' }),
  checkValve: flag('Whether a check valve keeps the riser full when the pump stops.'),
  outletHeight: quantity('m', {
    min: 0,
    max: 30,
    example: '1.85 m',
    about: 'Height of the outlet above the floor on which the column or its tank stands.',
  }),
  inside: choice(['inside the column', 'outside the column'], 'Where the hose runs up.'),
  header: section('A pipe that passes all columns, fed at one end.', {
    bore,
    length,
    losses,
    spacing: quantity('m', {
      min: 0,
      max: 50,
      example: '1.2 m',
      about: 'Distance from column to column along the header.',
    }),
  }),
  drops: section('The hose from header to each column’s top.', { bore, length, losses }),
  columns: list(
    section('A column that differs from the others.', {
      column: count({ min: 1, max: 200, about: 'Which column, 1 is the first that the header meets.' }),
      outletHeight: quantity('m', {
        min: 0,
        max: 30,
        example: '1.85 m',
        about: 'Height of its outlet above the floor of the tank.',
      }),
      dropBore: bore,
      dropLength: length,
      dropLosses: losses,
      valveLosses: number({ min: 0, max: 100_000, about: 'Loss coefficient of its valve as set, on the drop’s bore.' }),
    }),
    200,
    'Columns that differ from `drops`.',
  ),
  branches: list(
    section('A tube of any tree behind the riser.', {
      name: text('Its name, for the branches that leave it.', 40),
      from: text('Name of the branch that it leaves; the riser where absent.', 40),
      bore,
      length,
      losses,
      fittings: list(fitting, 40, 'Fittings in it; they outrank `losses`.'),
      valveLosses: number({ min: 0, max: 100_000, about: 'Loss coefficient of its valve as set, on its bore.' }),
      outletHeight: quantity('m', {
        min: 0,
        max: 30,
        example: '1.85 m',
        about: 'Height of its open end over a column; absent where it branches again.',
      }),
    }),
    400,
    'Tubes of any tree behind the riser; they outrank header, drops and columns.',
  ),
  airBreak: choice(['yes', 'no'], 'Whether air can enter above the highest water, so that nothing siphons back.'),
  neededFlow: quantity('m3_s', {
    min: 1e-6,
    max: 0.01,
    example: '3 L/min',
    about: 'Flow wanted at the top of each column.',
  }),
})
