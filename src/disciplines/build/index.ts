import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { criticalPath, earliestStarts, oneBuilder, type Task, type Timed } from './equations.ts'
import { type BuildNeighbours, type Situation, situation } from './situation.ts'
import { type BuildSlots, buildSlots, type TapeMarks } from './slots.ts'
import type { Need, Step, StepId } from './step.ts'
import { marking, preparing } from './steps-pipe.ts'
import { siteSteps } from './steps-sites.ts'
import { partsOfTheLoop, raising } from './steps-stand.ts'
import { testing } from './steps-test.ts'
import { type JointWaits, jointWaits } from './waits.ts'

export { topHeight } from './situation.ts'
export type { BuildNeighbours, BuildSlots, JointWaits, Need, Situation, Step, StepId, TapeMarks, Timed }

export interface BuildFacts {
  /** In an order in which each comes after all that it needs. */
  readonly steps: readonly Step[]
  /** Numbers and names that the sentences of the steps are filled with; null where the plan does not say. */
  readonly slots: BuildSlots
  readonly waits: JointWaits
  /** Earliest times in seconds from the start, as many hands there as are needed. */
  readonly earliest: readonly Timed<StepId>[]
  /** Times for one builder alone. */
  readonly alone: readonly Timed<StepId>[]
  readonly critical: readonly StepId[]
  /** Least time from first step to last. */
  readonly elapsed_s: number
  readonly elapsedAlone_s: number
  readonly hands_s: number
  /** Acts that children must not do. */
  readonly adultSteps: readonly StepId[]
}

/** Cautions of acts that are for adults. */
const ADULT = ['blade', 'vapours', 'hot-pvc', 'mains', 'acid', 'heat-gloves', 'epoxy-skin']

const taskOf = (s: Step): Task<StepId> => ({
  id: s.id,
  lasts_s: s.hands_s + s.stay_s + s.away_s,
  holds_s: s.hands_s + s.stay_s,
  needs: s.needs,
})

const isAdult = (s: Step): boolean => s.cautions.some((c) => ADULT.includes(c))

/** Where children are about, the acts that are not theirs say so. */
const withChildren = (s: Situation, steps: readonly Step[]): Step[] =>
  steps.map((it) => (s.children && isAdult(it) ? { ...it, cautions: [...it.cautions, 'children'] } : it))

/** Steps in the order in which one builder starts them; needs come first, equal starts stay as listed. */
function sorted(steps: readonly Step[]): Step[] {
  const start = new Map(oneBuilder(steps.map(taskOf)).map((t) => [t.id, t.start_s]))
  const done: Step[] = []
  const left = [...steps]
  while (left.length > 0) {
    const free = left.filter((s) => s.needs.every((n) => done.some((d) => d.id === n.step)))
    const next = free.reduce((a, b) => (start.get(b.id)! < start.get(a.id)! ? b : a))
    done.push(next)
    left.splice(left.indexOf(next), 1)
  }
  return done
}

/** The steps of a situation, before they are sorted. */
export function stepsOf(s: Situation, w: JointWaits): readonly Step[] {
  const { steps: sites, last } = siteSteps(s)
  const wait = (wait_s: number, waitFor: Need['waitFor']): Need => ({
    step: last,
    wait_s,
    waitFor: wait_s > 0 ? waitFor : null,
  })
  const [set, water, plants] = [wait(w.set_s, 'set'), wait(w.water_s, 'water'), wait(w.plants_s, 'plants')]
  return [
    ...preparing(s),
    ...marking(s),
    ...sites,
    ...partsOfTheLoop(s),
    ...raising(s, { set, water, bead_s: w.bead_s }),
    ...testing(s, plants),
  ]
}

/** Steps, their times and their order; needs the layout, the way sites are made and what seals them. */
export function buildFacts(plan: Plan, near: BuildNeighbours): Known<BuildFacts> {
  const given = situation(plan, near)
  if (!isKnown(given)) return given
  const s = given.known
  const waits = jointWaits(s)
  const steps = sorted(withChildren(s, stepsOf(s, waits)))
  const tasks = steps.map(taskOf)
  const earliest = earliestStarts(tasks)
  const alone = oneBuilder(tasks)
  const last = (timed: readonly Timed<StepId>[]) => Math.max(...timed.map((t) => t.end_s))
  return {
    known: {
      steps,
      slots: buildSlots(s, waits),
      waits,
      earliest,
      alone,
      critical: criticalPath(tasks),
      elapsed_s: last(earliest),
      elapsedAlone_s: last(alone),
      hands_s: steps.reduce((sum, it) => sum + it.hands_s, 0),
      adultSteps: steps.filter(isAdult).map((it) => it.id),
    },
  }
}
