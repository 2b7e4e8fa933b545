import { type Check, checked } from '../../findings/check.ts'
import type { Finding, FindingSlot, Lever } from '../../findings/finding.ts'
import { judge } from '../../findings/judge.ts'
import { along, among, fewer } from '../../findings/levers.ts'
import { band, quantity } from '../../kernel/units.ts'
import { type Pipe, pipeOfRow } from '../../plan/pipe.ts'
import type { Plan } from '../../plan/plan.ts'
import { type PipeId, pipes } from '../../tables/pipes.ts'
import { rootPractice } from '../../tables/roots.ts'
import type { HydraulicsFacts, RootFacts } from './index.ts'
import { ofRange } from './levers.ts'

const { boreTaken } = rootPractice.rows
const WEEK_d = 7
/** How far apart rings may be moved before it is another tower. */
const STRETCH = 2

/** Most pipes that a remedy tries. */
const PIPES = 8

/** Pipes of the table whose bore leaves the roots half free: of the same standard first, the narrowest first. */
function widerPipes(plan: Plan, least_m: number): readonly string[] {
  const own = plan.column?.pipe
  if (own === undefined || own.bore_m >= least_m) return []
  const standardFirst = (pipe: Pipe) => (pipe.standard === own.standard ? 0 : 1)
  const wide = (Object.keys(pipes.rows) as PipeId[]).map(pipeOfRow).filter((p) => p.bore_m >= least_m)
  return wide
    .sort((a, b) => standardFirst(a) - standardFirst(b) || a.outside_m - b.outside_m)
    .slice(0, PIPES)
    .map((p) => p.label)
}

/** The next pipe of the table in which the roots leave half free, where there is one. */
function nextPipe(plan: Plan, least_m: number): FindingSlot {
  const [label] = widerPipes(plan, least_m)
  return label === undefined ? '' : { phrase: 'pipe-next', with: { label } }
}

/** Plants cut sooner, fewer of them side by side, or rings further apart. */
function lessRoot(plan: Plan, f: RootFacts): readonly Lever[] {
  const { perRing, pitch_m } = plan.column?.sites ?? {}
  const wider = widerPipes(plan, f.boreNeeded_m)
  return [
    along('column/sites/oldest', WEEK_d, 'd', 1, f.oldest_d),
    ...(perRing === undefined ? [] : [fewer('column/sites/perRing', perRing)]),
    ...(wider.length === 0 ? [] : [among('column/pipe', wider)]),
    ...(pitch_m === undefined ? [] : [along('column/sites/pitch', STRETCH * pitch_m, 'm', 0.01)]),
  ]
}

/** Which crop to set low, where one has more root than the others. */
const swap = ({ heaviest }: RootFacts): FindingSlot =>
  heaviest === null ? { phrase: 'roots-cut' } : { phrase: 'roots-swap', with: { crop: heaviest } }

/** Age of the oldest plants; where the plan does not tell it, that it is taken from common practice. */
function ageOf(plan: Plan, f: RootFacts): FindingSlot {
  const age = quantity(f.oldest_d, 'd')
  return plan.column?.sites?.oldest_d === undefined ? { phrase: 'age-assumed', with: { age } } : age
}

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
        oldest: ageOf(plan, f),
        ring: f.ring,
        bore: quantity(f.boreNeeded_m, 'm'),
        pipe: nextPipe(plan, f.boreNeeded_m),
        film: quantity(f.filmShare, 'share'),
        deed: swap(f),
      },
      levers: () => lessRoot(plan, f),
    }),
  ],
}

export const rootChecks = (plan: Plan, h: HydraulicsFacts): readonly Finding[] => checked([room], h.roots, plan)
