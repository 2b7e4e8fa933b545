import type { Check } from '../../findings/check.ts'
import type { Finding } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { along } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { practiceLengths } from '../../tables/practice.ts'
import type { TemplatesFacts } from '../templates/index.ts'
import type { LayoutFacts } from './index.ts'
import { perRingFewer, pitchUp, ringsFewer, STEP_m } from './levers.ts'

type Stubbed = LayoutFacts & TemplatesFacts

const stubbed = (plan: Plan): boolean => (plan.column?.sites?.method ?? 'stub') === 'stub'

/** How much longer than planned a stub may become before it is another one. */
const STRETCH = 2

/** Middles of the nearest mouths against the width of a grown plant. */
const canopy: Check<Stubbed> = {
  id: 'layout/canopy',
  at: 'column/sites/canopy',
  source: 'common-practice',
  applies: stubbed,
  judged: ({ crown_m, joint }, plan, terms) => {
    const wide_m = plan.column?.sites?.canopy_m
    if (wide_m === undefined) return [unknown(canopy.id, { ...terms, needs: ['column/sites/canopy'] })]
    if (crown_m === null) return []
    const side_m = plan.column?.stub?.lowerSide_m
    return [
      judge(canopy.id, quantity(crown_m, 'm'), {
        ...terms,
        must: { min: 2 * joint.stub.stubRadius_m },
        want: { min: wide_m },
        slots: { canopy: quantity(wide_m, 'm'), stub: quantity(2 * joint.stub.stubRadius_m, 'm') },
        levers: [
          ...(side_m === undefined ? [] : [along('column/stub/lowerSide', STRETCH * side_m, 'm', STEP_m)]),
          ...pitchUp(plan),
          ...perRingFewer(plan),
        ],
      }),
    ]
  },
}

/** Room between two stubs on one line, square to them, against the cup that must come out. */
const headroom: Check<Stubbed> = {
  id: 'layout/headroom',
  at: 'column/sites/pitch',
  source: 'common-practice',
  applies: stubbed,
  judged: ({ linePitch_m, joint }, plan, terms) => {
    if (linePitch_m === null) return []
    const depth_m = plan.column?.cup?.depth_m
    if (depth_m === undefined) return [unknown(headroom.id, { ...terms, needs: ['column/cup/depth'] })]
    const { angle_rad, stubRadius_m } = joint.stub
    return [
      judge(headroom.id, quantity(linePitch_m * Math.sin(angle_rad) - 2 * stubRadius_m, 'm'), {
        ...terms,
        must: { min: 0 },
        want: { min: depth_m },
        slots: { depth: quantity(depth_m, 'm') },
        levers: pitchUp(plan),
      }),
    ]
  },
}

/** Height of the column's foot above the floor. */
function footHeight(plan: Plan): Known<number> {
  const kind = plan.column?.base?.kind
  if (kind === undefined) return { needs: ['column/base/kind'] }
  if (kind !== 'flange on the lid') return { known: 0 }
  const lid_m = plan.reservoir?.lidHeight_m ?? plan.reservoir?.container?.depth_m
  return lid_m === undefined ? { needs: ['reservoir/lidHeight'] } : { known: lid_m }
}

/** Room over the column, where there is a ceiling. */
const ceiling: Check<LayoutFacts> = {
  id: 'layout/ceiling',
  at: 'place/ceiling',
  source: 'common-practice',
  applies: (plan) => plan.place?.ceiling_m !== undefined,
  judged: ({ columnLength_m }, plan, terms) => {
    const foot = footHeight(plan)
    if (!isKnown(foot)) return [unknown(ceiling.id, { ...terms, needs: foot.needs })]
    const [ceiling_m, lifted_m] = [plan.place!.ceiling_m!, plan.distributor?.depth_m]
    const top_m = foot.known + columnLength_m
    return [
      judge(ceiling.id, quantity(ceiling_m - top_m, 'm'), {
        ...terms,
        must: { min: 0 },
        want: lifted_m === undefined ? {} : { min: lifted_m },
        slots: { top: quantity(top_m, 'm'), ceiling: quantity(ceiling_m, 'm') },
        levers: [along('column/length', STEP_m, 'm', STEP_m)],
      }),
    ]
  },
}

function reachFindings(highest_m: number, plan: Plan, terms: Pick<Check<LayoutFacts>, 'at' | 'source'>): Finding[] {
  const foot = footHeight(plan)
  if (!isKnown(foot)) return [unknown('layout/reach', { ...terms, needs: foot.needs })]
  const first_m = plan.column?.sites?.first_m
  return [
    judge('layout/reach', quantity(foot.known + highest_m, 'm'), {
      ...terms,
      want: { max: plan.place!.reach_m! },
      levers: [...(first_m === undefined ? [] : [along('column/sites/first', 0, 'm', STEP_m)]), ...ringsFewer(plan)],
    }),
  ]
}

const reached = (plan: Plan): boolean => plan.place?.reach_m !== undefined

/** Highest mouth above the floor against the reach of those who tend it, where that is stated. */
const reach: Check<Stubbed> = {
  id: 'layout/reach',
  at: 'place/reach',
  source: 'common-practice',
  applies: (plan) => reached(plan) && stubbed(plan),
  judged: (f, plan, terms) => reachFindings(f.lastMark_m - f.joint.markRise_m + f.stub.mouthRise_m, plan, terms),
}

/** The same for sites without a stub: the mark is the mouth. */
const reachOfMark: Check<LayoutFacts> = {
  ...reach,
  applies: (plan) => reached(plan) && !stubbed(plan),
  judged: (f, plan, terms) => reachFindings(f.lastMark_m, plan, terms),
}

/** Room to walk round. */
export function standingRoom(plan: Plan): Finding[] {
  const terms = { at: 'place/walkRound', source: practiceLengths.source }
  const walk_m = plan.place?.walkRound_m
  if (walk_m === undefined) return [unknown('layout/standing-room', { ...terms, needs: ['place/walkRound'] })]
  const { low_m } = practiceLengths.rows['standing-room']
  return [
    judge('layout/standing-room', quantity(walk_m, 'm'), {
      ...terms,
      want: { min: low_m },
      levers: [along('place/walkRound', low_m + STEP_m, 'm', STEP_m)],
    }),
  ]
}

export const stubRoomChecks: readonly Check<Stubbed>[] = [canopy, headroom, reach]
export const roomChecks: readonly Check<LayoutFacts>[] = [ceiling, reachOfMark]
