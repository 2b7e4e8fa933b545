import { count, quantity, section } from '../field.ts'

export const drain = section('How the water leaves the column’s foot and runs back to the tank.', {
  holes: count({ min: 1, max: 2000, about: 'Holes at the column’s foot, or through the lid under it.' }),
  hole: quantity('m', { min: 0.001, max: 0.3, example: '10 mm', about: 'Diameter of each of those holes.' }),
  clogged: quantity('1', {
    min: 0,
    max: 0.95,
    example: '50 %',
    about: 'Share of them to be allowed as shut by roots.',
  }),
  bore: quantity('m', { min: 0.005, max: 0.5, example: '57 mm', about: 'Inside diameter of a return pipe.' }),
  length: quantity('m', { min: 0, max: 200, example: '7 m', about: 'Length of the return pipe.' }),
  fall: quantity('m', { min: 0, max: 30, example: '140 mm', about: 'Fall of the return pipe over its length.' }),
})
