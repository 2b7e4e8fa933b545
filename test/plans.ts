import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { withValue } from '../src/plan/patch.ts'
import type { PlanDocument } from '../src/plan/plan.ts'

const folder = join(import.meta.dirname, '..', 'examples')

/** A plan of the folder of examples. */
export const example = (name: string): PlanDocument =>
  JSON.parse(readFileSync(join(folder, `${name}.plan.json`), 'utf8')) as PlanDocument

export const EXAMPLES = ['balcony', 'hall', 'school'] as const
export const BAD = [
  'overfull-ring',
  'stub-wider-than-pipe',
  'unknown-pipe',
  'empty',
  'slips',
  'water-said-twice',
] as const

/** The document with several values set. */
export const withAll = (document: PlanDocument, values: Readonly<Record<string, unknown>>): PlanDocument =>
  Object.entries(values).reduce((d, [path, value]) => withValue(d, path, value), document)

const cup = { rim: '54 mm', body: '45 mm', foot: '33 mm', depth: '48 mm' }

/** Plans that between them make every way of a site and meet every question. */
export const madeByHand: Readonly<Record<string, PlanDocument>> = {
  cup: withAll(example('balcony'), { 'column/cup': cup }),
  'hole saw': withAll(example('hall'), {
    'tools/holeTool': 'hole saw',
    'tools/barAcross': '99 mm',
    'tools/barUp': '101 mm',
  }),
  'no saw at hand': withAll(example('balcony'), { 'tools/holeTool': 'hole saw', 'tools/holeSaws': [] }),
  'as built': withAll(example('school'), {
    'measured/sites': [
      { site: 3, angle: '49 deg' },
      { site: 7, height: '543 mm' },
    ],
    'measured/columnCircumference': '502 mm',
  }),
  silicone: withAll(example('balcony'), { 'column/stub/joint': 'silicone', 'column/stub/gap': '2 mm' }),
  flat: withAll(example('balcony'), { 'column/stub/angle': '85 deg', 'column/cup': { ...cup, body: '60 mm' } }),
  deep: withAll(example('balcony'), { 'column/stub/insertion': '45 mm', 'riser/bore': '25 mm', 'column/cup': cup }),
  shallow: withAll(example('balcony'), { 'column/stub/insertion': '2 mm', 'column/sites/turn': '0 deg' }),
  helix: withAll(example('balcony'), {
    'column/sites': {
      method: 'stub',
      pattern: 'helix',
      count: 20,
      rise: '20 mm',
      divergence: '120 deg',
      first: '200 mm',
      firstFrom: 'lid',
      canopy: '200 mm',
    },
  }),
  pocket: withAll(example('balcony'), {
    'column/sites/method': 'pocket',
    'column/pocket': { former: '75 mm', strain: '35 %', slit: '60 mm' },
  }),
  'pockets too close': withAll(example('balcony'), {
    'column/sites/method': 'pocket',
    'column/sites/pitch': '80 mm',
    'column/pocket': { former: '75 mm', strain: '15 %' },
  }),
  hole: withAll(example('balcony'), {
    'column/sites/method': 'hole',
    'column/cup': { rim: '90 mm', body: '80 mm', foot: '50 mm', depth: '120 mm' },
  }),
  fitting: withAll(example('balcony'), {
    'column/sites/method': 'fitting',
    'column/fitting': { layingLength: '200 mm', between: '10 mm', branches: 2 },
  }),
}

/** A stream of numbers from 0 to 1 that is the same each time. */
function stream(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 2 ** 32
  }
}

const mm = (low: number, high: number, at: number) => `${Math.round(low + (high - low) * at)} mm`

/** Turns of the plan that a person might try, most of them bad. */
const turns: Readonly<Record<string, (at: number) => unknown>> = {
  'column/length': (at) => mm(900, 2300, at),
  'column/sites/rings': (at) => 3 + Math.floor(9 * at),
  'column/sites/perRing': (at) => 1 + Math.floor(6 * at),
  'column/sites/pitch': (at) => mm(70, 260, at),
  'column/sites/turn': (at) => `${Math.round(90 * at)} deg`,
  'column/sites/first': (at) => mm(0, 320, at),
  'column/sites/canopy': (at) => mm(100, 260, at),
  'column/stub/angle': (at) => `${25 + Math.round(60 * at)} deg`,
  'column/stub/lowerSide': (at) => mm(40, 160, at),
  'column/stub/insertion': (at) => mm(1, 50, at),
  'column/stub/gap': (at) => `${Math.round(20 * at) / 10} mm`,
  'column/stub/hole': (at) => (at < 0.5 ? 'along the stub' : 'square to the wall'),
  'column/stub/end': (at) => (at < 0.5 ? 'mitre' : 'flush'),
  'tools/holeTool': (at) => (at < 0.5 ? 'hole saw' : 'jigsaw'),
}

/** Examples with a few of their fields turned, the same ones each time. */
export function varied(count: number, seed: number): readonly PlanDocument[] {
  const next = stream(seed)
  const paths = Object.keys(turns)
  return Array.from({ length: count }, (_, i) => {
    let document = example(EXAMPLES[i % EXAMPLES.length]!)
    for (let n = 0; n < 3; n++) {
      const path = paths[Math.floor(next() * paths.length)]!
      document = withValue(document, path, turns[path]!(next()))
    }
    return document
  })
}
