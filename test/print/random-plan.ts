import type { PlanDocument } from '../../src/plan/plan.ts'
import { example } from './set-of.ts'

/** Numbers from a seed, the same on every machine (a linear congruence, modulus 2^31). */
export function seeded(seed: number): () => number {
  let state = seed
  return () => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648
    return state / 2_147_483_648
  }
}

type Section = Readonly<Record<string, unknown>>

/** A plan of any kind, sensible or not, with now and then a section missing. */
export function randomPlan(random: () => number): PlanDocument {
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!
  const between = (low: number, high: number) => `${Math.round(low + random() * (high - low))} mm`
  const base = example(pick(['balcony', 'school', 'hall']))
  const column = base['column'] as Section
  const pipe = pick([
    { outside: 110, wall: 3.2 },
    { outside: 114.3, wall: 6 },
    { outside: 160, wall: 4 },
    { outside: 90, wall: 2.7 },
    { outside: 200, wall: 4.9 },
  ])
  const perRing = 1 + Math.floor(random() * 6)
  const { angle, ...stub } = {
    ...(column['stub'] as Section),
    pipe: { outside: `${pick([32, 40, 50, 63].filter((d) => d < pipe.outside * 0.55))} mm`, wall: '1.8 mm' },
    angle: `${pick([30, 35, 45, 50, 60, 75, 90])} deg`,
    end: pick(['mitre', 'saddle', 'flush']),
    hole: pick(['along the stub', 'square to the wall']),
    lowerSide: between(60, 150),
    offset: pick(['0 mm', '0 mm', '5 mm']),
    mouthTilt: pick(['0 deg', '0 deg', '15 deg']),
  }
  const { reservoir, stock, ...rest } = base
  return {
    ...rest,
    ...(random() < 0.2 ? {} : { reservoir }),
    ...(random() < 0.2 ? {} : { stock }),
    column: {
      ...column,
      pipe: { outside: `${pipe.outside} mm`, wall: `${pipe.wall} mm`, plastic: 'PVC-U' },
      length: pick(['1.2 m', '1.85 m', '2.5 m', '6\' 2"']),
      stub: random() < 0.2 ? stub : { ...stub, angle },
      pocket: { former: '50 mm', strain: '15 %' },
      base: { kind: pick(['through the lid', 'flange on the lid', 'own foot']) },
      sites: {
        method: pick(['stub', 'stub', 'stub', 'pocket', 'hole', 'fitting']),
        pattern: pick(['rings', 'rings', 'rings', 'helix']),
        rings: 1 + Math.floor(random() * 12),
        perRing,
        pitch: between(120, 320),
        turn: pick(['0 deg', `${180 / perRing} deg`, '20 deg']),
        count: 1 + Math.floor(random() * 60),
        rise: between(20, 80),
        divergence: '137.5 deg',
        first: between(100, 400),
        firstFrom: 'foot',
        datum: pick(['foot', 'top']),
      },
    },
    distributor: { ...(base['distributor'] as Section), kind: pick(['cup', 'ring', 'tee']) },
    tools: { ...(base['tools'] as Section), tape: pick(['1 mm', '1/16 in', '1/32 in']) },
  }
}
