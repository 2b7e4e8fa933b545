import type { Check } from '../../findings/check.ts'
import { judge } from '../../findings/judge.ts'
import { along, among } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import { practiceLengths, practiceRatios } from '../../tables/practice.ts'
import { perRingFewer, STEP_m } from './checks-bore.ts'
import type { PocketFacts } from './index.ts'
import { widerPipes } from './pipe-choice.ts'

/** Steps of a stretch. */
const STEP = 0.01

/** How far a remedy may stretch a length before it is another tower. */
const STRETCH = 3

const formed = practiceRatios.rows['formed-stretch'].high

/** Length of the slit against the former that must go in. */
const slit: Check<PocketFacts> = {
  id: 'pocket/slit',
  at: 'column/pocket/slit',
  source: 'Geometry.pocket',
  judged: ({ slit_m, neededSlit_m }, plan, terms) => {
    const { former_m = 0, strain = 0 } = plan.column?.pocket ?? {}
    return [
      judge(slit.id, quantity(slit_m, 'm'), {
        ...terms,
        must: { min: (neededSlit_m * (1 + strain)) / (1 + Math.max(formed, strain)) },
        want: { min: neededSlit_m },
        slots: { former: quantity(former_m, 'm'), strain: quantity(strain, 'share') },
        levers: () => [along('column/pocket/slit', neededSlit_m + STEP_m, 'm', STEP_m)],
      }),
    ]
  },
}

const stretch: Check<PocketFacts> = {
  id: 'pocket/stretch',
  at: 'column/pocket/strain',
  source: practiceRatios.source,
  judged: (_facts, plan, terms) => [
    judge(stretch.id, quantity(plan.column?.pocket?.strain ?? 0, 'share'), {
      ...terms,
      must: { max: formed },
      levers: () => [along('column/pocket/strain', 0, '1', STEP)],
    }),
  ],
}

const wall: Check<PocketFacts> = {
  id: 'pocket/wall',
  at: 'column/pocket/strain',
  source: practiceLengths.source,
  judged: ({ wall_m }, plan, terms) => [
    judge(wall.id, quantity(wall_m, 'm'), {
      ...terms,
      must: { min: practiceLengths.rows['formed-wall'].low_m },
      slots: { wall: quantity(plan.column?.pipe?.wall_m ?? 0, 'm') },
      levers: () => [along('column/pocket/strain', 0, '1', STEP)],
    }),
  ],
}

/** Circumference left at a level with slits. */
const share: Check<PocketFacts> = {
  id: 'pocket/share',
  at: 'column/sites/perRing',
  source: practiceRatios.source,
  judged: ({ share: kept, left_m, slit_m }, plan, terms) => {
    const { column } = plan
    const former_m = column?.pocket?.former_m
    return [
      judge(share.id, quantity(kept, 'share'), {
        ...terms,
        must: { min: practiceRatios.rows['slit-circumference'].low },
        slots: { left: quantity(left_m, 'm'), slit: quantity(slit_m, 'm'), count: column?.sites?.perRing ?? 1 },
        levers: () => [
          ...perRingFewer(plan),
          ...(former_m === undefined ? [] : [along('column/pocket/former', STEP_m, 'm', STEP_m)]),
          ...(column?.pipe === undefined ? [] : [among('column/pipe', widerPipes(column.pipe))]),
        ],
      }),
    ]
  },
}

/** Pitch of the pockets on one line over the former's diameter. */
const pitch: Check<PocketFacts> = {
  id: 'pocket/pitch',
  at: 'column/sites/pitch',
  source: practiceRatios.source,
  judged: ({ pitchRatio }, plan, terms) => {
    if (pitchRatio === null) return []
    const pitch_m = plan.column?.sites?.pitch_m
    const { low, high } = practiceRatios.rows['pocket-pitch']
    return [
      judge(pitch.id, quantity(pitchRatio, '1'), {
        ...terms,
        must: { min: low },
        want: { min: high },
        levers: pitch_m === undefined ? [] : [along('column/sites/pitch', STRETCH * pitch_m, 'm', STEP_m)],
      }),
    ]
  },
}

export const pocketChecks: readonly Check<PocketFacts>[] = [slit, stretch, wall, share, pitch]
