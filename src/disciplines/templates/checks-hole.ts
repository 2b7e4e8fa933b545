import type { Check } from '../../findings/check.ts'
import type { Finding, Lever } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { along, among } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import type { Plan } from '../../plan/plan.ts'
import { kerfs } from '../../tables/kerfs.ts'
import { practiceLengths, practiceRatios } from '../../tables/practice.ts'
import { perRingFewer, STEP_m } from './checks-bore.ts'
import type { TemplatesFacts } from './index.ts'
import { narrowerPipes, widerPipes } from './pipe-choice.ts'

const DEGREE_rad = Math.PI / 180

/** How far a remedy may stretch a length before it is another tower. */
const STRETCH = 3

/** Least wall between two holes: a length, and so many walls of the pipe. */
const leastWall = (wall_m: number): number =>
  Math.max(practiceLengths.rows.ligament.low_m, practiceRatios.rows['ligament-walls'].low * wall_m)

/** The web between holes of one ring, however they are made. */
export function ringWebFinding(given: {
  readonly web_m: number
  readonly count: number
  readonly round_m: number
  readonly wall_m: number
  readonly levers: () => readonly Lever[]
}): Finding {
  const { web_m, count, round_m, wall_m, levers } = given
  const share_m = (practiceRatios.rows['ring-web-share'].low * round_m) / count
  return judge('templates/ring-web', quantity(web_m, 'm'), {
    at: 'column/sites/perRing',
    source: practiceLengths.source,
    must: { min: leastWall(wall_m) },
    want: { min: Math.max(practiceLengths.rows['ring-web'].low_m, share_m) },
    slots: { count, used: quantity(round_m - count * web_m, 'm'), round: quantity(round_m, 'm') },
    levers,
  })
}

const ringWeb: Check<TemplatesFacts> = {
  id: 'templates/ring-web',
  at: 'column/sites/perRing',
  source: practiceLengths.source,
  applies: (plan) => plan.column?.sites?.pattern !== 'helix' && (plan.column?.sites?.perRing ?? 2) >= 2,
  judged: ({ ligaments, joint }, plan) => {
    const count = plan.column?.sites?.perRing
    if (count === undefined || ligaments === null || ligaments.ring_m === null) return []
    const { column, stubPipe } = joint
    const levers = () => [
      ...perRingFewer(plan),
      among('column/stub/pipe', narrowerPipes(stubPipe)),
      among('column/pipe', widerPipes(column)),
    ]
    const round_m = Math.PI * column.outside_m
    return [ringWebFinding({ web_m: ligaments.ring_m, count, round_m, wall_m: column.wall_m, levers })]
  },
}

function apart(plan: Plan): Lever[] {
  const s = plan.column?.sites
  if (s?.pattern === 'helix')
    return s.rise_m === undefined ? [] : [along('column/sites/rise', STRETCH * s.rise_m, 'm', STEP_m)]
  return s?.pitch_m === undefined ? [] : [along('column/sites/pitch', STRETCH * s.pitch_m, 'm', STEP_m)]
}

/** The wall between a hole and the nearest of another ring. */
const ligament: Check<TemplatesFacts> = {
  id: 'templates/ligament',
  at: 'column/sites/pitch',
  source: practiceLengths.source,
  judged: ({ ligaments, joint }, plan, terms) =>
    ligaments === null || ligaments.other_m === null
      ? []
      : [
          judge(ligament.id, quantity(ligaments.other_m, 'm'), {
            ...terms,
            must: { min: leastWall(joint.column.wall_m) },
            levers: () => [
              ...apart(plan),
              ...perRingFewer(plan),
              among('column/stub/pipe', narrowerPipes(joint.stubPipe)),
            ],
          }),
        ],
}

const withHoleSaw = (plan: Plan): boolean => plan.tools?.holeTool === 'hole saw'

/** Depth that a hole saw held along the stub needs against what is sold. */
const holeSaw: Check<TemplatesFacts> = {
  id: 'templates/hole-saw',
  at: 'tools/holeTool',
  source: kerfs.source,
  applies: withHoleSaw,
  judged: ({ holeSawDepth_m, joint }, _plan, terms) => {
    const { depthLow_m, depthHigh_m } = kerfs.rows['hole-saw']
    if (depthLow_m === null || depthHigh_m === null) return []
    return [
      judge(holeSaw.id, quantity(holeSawDepth_m, 'm'), {
        ...terms,
        must: { max: depthHigh_m },
        want: { max: depthLow_m },
        slots: { angle: quantity(joint.stub.angle_rad, 'rad') },
        levers: () => [
          among('tools/holeTool', ['jigsaw', 'rotary tool']),
          along('column/stub/angle', Math.PI / 2, 'rad', DEGREE_rad),
          among('column/stub/pipe', narrowerPipes(joint.stubPipe)),
        ],
      }),
    ]
  },
}

/** The saw at hand nearest to the hole, over the hole's diameter. */
const holeSawSize: Check<TemplatesFacts> = {
  id: 'templates/hole-saw-size',
  at: 'tools/holeSaws',
  source: practiceLengths.source,
  applies: withHoleSaw,
  judged: ({ joint }, plan, terms) => {
    const saws_m = plan.tools?.holeSaws ?? []
    if (saws_m.length === 0) return [unknown(holeSawSize.id, { ...terms, needs: ['tools/holeSaws'] })]
    const hole_m = 2 * joint.hole.holeRadius_m
    const saw_m = saws_m.reduce((best, s) => (Math.abs(s - hole_m) < Math.abs(best - hole_m) ? s : best))
    const { low_m, high_m } = practiceLengths.rows['hole-edge']
    return [
      judge(holeSawSize.id, quantity(saw_m - hole_m, 'm'), {
        ...terms,
        must: { min: 2 * low_m },
        want: { min: 2 * low_m, max: 2 * high_m },
        slots: { saw: quantity(saw_m, 'm'), hole: quantity(hole_m, 'm') },
        levers: () => [
          among('tools/holeTool', ['jigsaw', 'rotary tool']),
          along('column/stub/gap', Math.max(0, saw_m / 2 - joint.stub.stubRadius_m), 'm', STEP_m / 20, 0),
        ],
      }),
    ]
  },
}

/** What tracing the mitred end would get wrong: told, not judged, since it is no fault of the plan. */
const tracing: Check<TemplatesFacts> = {
  id: 'templates/tracing',
  at: 'column/stub/end',
  source: 'Geometry.trace',
  applies: (plan) => (plan.column?.stub?.end ?? 'mitre') === 'mitre',
  judged: ({ trace }, _plan, terms) => [
    judge(tracing.id, quantity(trace.gap_m, 'm'), {
      ...terms,
      slots: { high: quantity(trace.error_m, 'm'), drop: quantity(trace.drop_m ?? 0, 'm') },
    }),
  ],
}

export const holeChecks: readonly Check<TemplatesFacts>[] = [ringWeb, ligament, holeSaw, holeSawSize, tracing]
