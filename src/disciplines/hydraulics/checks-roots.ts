import { type Check, checked } from '../../findings/check.ts'
import type { Finding, FindingSlot, Lever } from '../../findings/finding.ts'
import { judge } from '../../findings/judge.ts'
import { along, fewer } from '../../findings/levers.ts'
import { band, quantity } from '../../kernel/units.ts'
import type { Plan } from '../../plan/plan.ts'
import { rootPractice } from '../../tables/roots.ts'
import type { HydraulicsFacts, RootFacts } from './index.ts'
import { ofRange } from './levers.ts'

const { boreTaken } = rootPractice.rows
const WEEK_d = 7
/** How far apart rings may be moved before it is another tower. */
const STRETCH = 2

/** Plants cut sooner, fewer of them side by side, or rings further apart. */
function lessRoot(plan: Plan, f: RootFacts): readonly Lever[] {
  const { perRing, pitch_m } = plan.column?.sites ?? {}
  return [
    along('column/sites/oldest', WEEK_d, 'd', 1, f.oldest_d),
    ...(perRing === undefined ? [] : [fewer('column/sites/perRing', perRing)]),
    ...(pitch_m === undefined ? [] : [along('column/sites/pitch', STRETCH * pitch_m, 'm', 0.01)]),
  ]
}

/** Which crop to set low, where one has more root than the others. */
const swap = ({ heaviest }: RootFacts): FindingSlot =>
  heaviest === null ? { phrase: 'roots-cut' } : { phrase: 'roots-swap', with: { crop: heaviest } }

const room: Check<RootFacts> = {
  id: 'hydraulics/root-room',
  at: 'column/sites/oldest',
  source: 'common-practice',
  judged: (f, plan, terms) => [
    judge('hydraulics/root-room', ofRange(f.atOldest, 'share'), {
      ...terms,
      must: { max: boreTaken.high },
      want: { max: boreTaken.low },
      slots: {
        day: band(f.halfFull_d.low, f.halfFull_d.high, 'd'),
        oldest: quantity(f.oldest_d, 'd'),
        ring: f.ring,
        bore: quantity(f.boreNeeded_m, 'm'),
        film: quantity(f.filmShare, 'share'),
        deed: swap(f),
      },
      levers: () => lessRoot(plan, f),
    }),
  ],
}

export const rootChecks = (plan: Plan, h: HydraulicsFacts): readonly Finding[] => checked([room], h.roots, plan)
