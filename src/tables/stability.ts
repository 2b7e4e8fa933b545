import { table } from './table.ts'

/** Forces that people put on a tower. */
export const peopleForces = table({
  title: 'People who pull and lean',
  columns: {
    low_N: 'lowest level force',
    high_N: 'highest level force',
    low_m: 'lowest height of the grip',
    high_m: 'highest height of the grip',
  },
  source: 'common-practice',
  rows: {
    'child-pull': { low_N: 100, high_N: 200, low_m: 1, high_m: 1.5, note: 'a child who holds on and leans back' },
    'adult-lean': { low_N: 200, high_N: 400, low_m: 1.2, high_m: 1.5, note: 'an adult who stumbles against it' },
  },
})

/** How much more the tower must resist than it meets. */
export const stabilityFactors = table({
  title: 'Righting moment over overturning moment',
  columns: { ratio: 'least ratio' },
  source: 'common-practice',
  rows: {
    'free-standing': { ratio: 1.5 },
    balance: { ratio: 1, source: 'derived.moments', note: 'below this it falls' },
  },
})

/** Rules for another thing, furniture: a yardstick, not applicable law. */
export const furnitureYardsticks = table({
  title: 'Tip-over tests of storage furniture',
  columns: {
    mass_kg: 'mass that stands for a child, or of the force in the test',
    fromHeight_m: 'height from which the rule applies',
    fromMass_kg: 'mass from which the rule applies, 0 where it names none',
  },
  source: 'ASTM.F2057',
  rows: {
    'astm-f2057': {
      mass_kg: 27.2,
      fromHeight_m: 0.686,
      fromMass_kg: 13.6,
      note: 'scope read; 60 lb child from memory',
    },
    'en-14749': { mass_kg: 7.65, fromHeight_m: 0, fromMass_kg: 0, source: 'EN.14749', note: '75 N, from memory' },
  },
})

/** Soil that holds a buried foot. */
export const soils = table({
  title: 'Lateral bearing of soil, allowed pressure per metre of depth',
  columns: { bearing_Pa_m: 'allowed lateral pressure per metre below the ground' },
  source: 'IBC.1807',
  rows: {
    clay: { bearing_Pa_m: 15_710, note: '100 psf per ft' },
    sand: { bearing_Pa_m: 23_560, note: '150 psf per ft' },
    'sandy-gravel': { bearing_Pa_m: 31_420, note: '200 psf per ft' },
  },
})

/** Friction under the base. */
export const baseFriction = table({
  title: 'Friction between base and floor',
  columns: { friction: 'friction number' },
  source: 'common-practice',
  rows: { 'plastic-on-stone': { friction: 0.4 }, 'plastic-wet': { friction: 0.2 }, 'rubber-mat': { friction: 0.6 } },
})
