import { choice, count, quantity, section } from '../field.ts'

export const distributor = section('What spreads the water at the top of the column.', {
  kind: choice(['cup', 'ring', 'tee'], 'A cup with holes, a ring of holes in the wall, a single tee on the cap.'),
  holes: count({ min: 1, max: 2000, about: 'Holes.' }),
  hole: quantity('m', { min: 0.0002, max: 0.05, example: '3 mm', about: 'Diameter of each hole.' }),
  circle: quantity('m', {
    min: 0.005,
    max: 1,
    example: '80 mm',
    about: 'Diameter of the circle on which the holes stand.',
  }),
  turn: quantity('rad', {
    min: 0,
    max: 2 * Math.PI,
    example: '15 deg',
    about: 'Turn of the first hole against line 1 of the column.',
  }),
  diameter: quantity('m', { min: 0.01, max: 1, example: '100 mm', about: 'Outside diameter of the cup.' }),
  depth: quantity('m', {
    min: 0.005,
    max: 1,
    example: '60 mm',
    about: 'Depth of the cup, or water that may stand over the holes.',
  }),
  thickness: quantity('m', {
    min: 0.0005,
    max: 0.05,
    example: '2.5 mm',
    about: 'Thickness of the plate that is drilled.',
  }),
  overflow: quantity('m', {
    min: 0,
    max: 0.2,
    example: '20 mm',
    about: 'Bore of an overflow pipe that leads back inside the column.',
  }),
  overflowHeight: quantity('m', { min: 0, max: 1, example: '50 mm', about: 'Lip of that overflow above the plate.' }),
  clogged: quantity('1', { min: 0, max: 0.9, example: '30 %', about: 'Share of holes to be allowed as blocked.' }),
  tilt: quantity('rad', { min: 0, max: 0.5, example: '1 deg', about: 'Lean of the plate to be allowed.' }),
})
