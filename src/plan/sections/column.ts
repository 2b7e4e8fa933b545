import { choice, count, flag, list, quantity, section } from '../field.ts'
import { pipeField } from '../pipe.ts'

const RIGHT_ANGLE = Math.PI / 2

export const sites = section('Where the plants sit on the column.', {
  method: choice(
    ['stub', 'pocket', 'hole', 'fitting'],
    'How a site is made: a glued stub, a heat-formed pocket, a plain hole for the cup, a bought 45° fitting.',
  ),
  pattern: choice(['rings', 'helix'], 'Sites in rings, or one after the other on a helix.'),
  rings: count({ min: 1, max: 200, about: 'Rings, one above the other.' }),
  perRing: count({ min: 1, max: 60, about: 'Sites on one ring.' }),
  pitch: quantity('m', { min: 0.01, max: 5, example: '180 mm', about: 'Height from ring to ring.' }),
  turn: quantity('rad', {
    min: 0,
    max: 2 * Math.PI,
    example: '60 deg',
    about: 'Turn of every second ring against the first.',
  }),
  count: count({ min: 1, max: 2000, about: 'Sites on a helix.' }),
  rise: quantity('m', { min: 0.001, max: 2, example: '39.75 mm', about: 'Rise from site to site on a helix.' }),
  divergence: quantity('rad', {
    min: 0,
    max: 2 * Math.PI,
    example: '141.6 deg',
    about: 'Turn from site to site on a helix.',
  }),
  first: quantity('m', {
    min: 0,
    max: 5,
    example: '220 mm',
    about: 'Height of the first ring’s marks above `firstFrom`.',
  }),
  firstFrom: choice(['lid', 'foot'], 'Whether `first` counts from the lid or from the column’s foot.'),
  datum: choice(['foot', 'top'], 'End of the pipe from which the running marks count.'),
  bearing: quantity('rad', { min: 0, max: 2 * Math.PI, example: '225 deg', about: 'Compass bearing of line 1.' }),
  canopy: quantity('m', { min: 0.02, max: 2, example: '200 mm', about: 'Width that a grown plant needs.' }),
  across: quantity('m', {
    min: 0.05,
    max: 3,
    example: '350 mm',
    about: 'Width of the planted column as the wind sees it, leaf to leaf, once grown; reckoned where absent.',
  }),
  oldest: quantity('d', {
    min: 0,
    max: 200,
    example: '5 weeks',
    about: 'Time from planting in the column to harvest of the oldest plants.',
  }),
  empty: list(count({ min: 1, max: 2000, about: 'Number of a site.' }), 2000, 'Sites left empty and capped.'),
})

export const stub = section('The slanted pipe that holds a cup.', {
  pipe: pipeField,
  angle: quantity('rad', {
    min: 0.0873,
    max: RIGHT_ANGLE,
    example: '45 deg',
    about: 'Angle between the stub’s axis and the column’s axis; 90 deg stands out level.',
  }),
  end: choice(
    ['mitre', 'saddle', 'flush'],
    'Inner end: one flat cut, a saddle that sits on the outside, or a saddle flush with the bore.',
  ),
  lowerSide: quantity('m', {
    min: 0.005,
    max: 1,
    example: '90 mm',
    about: 'Length outside the column along the stub’s lower, longer line.',
  }),
  insertion: quantity('m', {
    min: 0,
    max: 0.5,
    example: '9 mm',
    about: 'How far a mitred end may reach past the outside surface on the centre line; as deep as seals where absent.',
  }),
  mouthTilt: quantity('rad', {
    min: -1.2,
    max: 1.2,
    example: '0 deg',
    about: 'Tilt of the mouth from square, up positive.',
  }),
  offset: quantity('m', {
    min: -0.2,
    max: 0.2,
    example: '0 mm',
    about: 'Sideways offset of the stub’s axis from the column’s axis.',
  }),
  gap: quantity('m', { min: 0, max: 0.005, example: '0.3 mm', about: 'Gap for the joint, on the radius.' }),
  hole: choice(['along the stub', 'square to the wall'], 'How the blade is held when the hole is cut.'),
  joint: choice(['cement', 'silicone', 'weld', 'epoxy', 'grommet'], 'What holds and seals it.'),
})

export const cup = section('The net cup, measured in the hand.', {
  rim: quantity('m', { min: 0.01, max: 0.4, example: '54 mm', about: 'Outside diameter of the rim.' }),
  body: quantity('m', { min: 0.01, max: 0.4, example: '45 mm', about: 'Outside diameter just under the rim.' }),
  foot: quantity('m', { min: 0.005, max: 0.4, example: '33 mm', about: 'Outside diameter at the foot.' }),
  depth: quantity('m', { min: 0.01, max: 0.4, example: '48 mm', about: 'Depth from the underside of the rim.' }),
})

export const pocket = section('A heat-formed pocket.', {
  former: quantity('m', { min: 0.01, max: 0.3, example: '50 mm', about: 'Diameter of the round former.' }),
  strain: quantity('1', { min: 0, max: 1, example: '15 %', about: 'Stretch of the lips.' }),
  slit: quantity('m', { min: 0.01, max: 0.6, example: '70 mm', about: 'Length of the slit, as cut, round the pipe.' }),
})

export const fitting = section('A bought branch fitting of 45°, as measured.', {
  layingLength: quantity('m', {
    min: 0.01,
    max: 2,
    example: '185 mm',
    about: 'What one fitting adds to the column, face to face.',
  }),
  between: quantity('m', {
    min: 0,
    max: 2,
    example: '10 mm',
    about: 'Pipe seen between two fittings; none where absent.',
  }),
  socket: quantity('m', {
    min: 0.005,
    max: 0.5,
    example: '60 mm',
    about: 'How deep the pipe goes into each end of the fitting.',
  }),
  branchAt: quantity('m', {
    min: 0.005,
    max: 2,
    example: '100 mm',
    about: 'From the fitting’s lower end up to where its branch’s axis meets its outside.',
  }),
  branches: count({ min: 1, max: 4, about: 'Branches of one fitting.' }),
})

export const base = section('How the column stands.', {
  kind: choice(
    ['through the lid', 'flange on the lid', 'own foot'],
    'Standing on the tank’s floor through the lid, on a flange on the lid, or on a foot of its own.',
  ),
  ringDepth: quantity('m', { min: 0, max: 0.5, example: '30 mm', about: 'Height of the ring that locates the foot.' }),
  footWidth: quantity('m', {
    min: 0.02,
    max: 5,
    example: '500 mm',
    about: 'Narrowest distance between outer feet of an own foot.',
  }),
  anchored: flag('Whether a strap ties the column to a wall or frame.'),
  strapHeight: quantity('m', { min: 0.1, max: 10, example: '1.4 m', about: 'Height of the strap above the floor.' }),
  strapLoad: quantity('N', {
    min: 1,
    max: 20_000,
    example: '300 N',
    about: 'Force that the weaker of strap and anchor may carry.',
  }),
  feet: count({ min: 3, max: 12, about: 'Feet under the base; absent where it stands flat.' }),
  ballast: quantity('kg', { min: 0, max: 2000, example: '20 kg', about: 'Dead weight in the base.' }),
})

export const column = section('The upright pipe and its sites.', {
  pipe: pipeField,
  length: quantity('m', { min: 0.1, max: 12, example: '1.85 m', about: 'Length of the column as cut.' }),
  colour: choice(
    ['white', 'light', 'grey', 'terracotta', 'dark', 'black', 'foil'],
    'Outside of the column as the sun sees it.',
  ),
  topMargin: quantity('m', { min: 0, max: 2, example: '60 mm', about: 'Pipe kept whole above the highest hole.' }),
  cap: choice(['none', 'push-on cap', 'glued cap', 'test plug'], 'What closes the top.'),
  sites,
  stub,
  cup,
  pocket,
  fitting,
  base,
})

export const towers = section('How many columns there are.', {
  count: count({ min: 1, max: 200, about: 'Columns in all, each like `column`.' }),
  perPump: count({ min: 1, max: 200, about: 'Columns fed by one pump from one reservoir.' }),
})
