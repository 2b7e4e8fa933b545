import type { Check } from '../../findings/check.ts'
import type { Finding } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { along, among } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import { isKnown, needed } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { practiceRatios } from '../../tables/practice.ts'
import { perRingFewer, STEP_m } from './checks-bore.ts'
import { ringWebFinding } from './checks-hole.ts'
import { fittingPitch } from './equations.ts'
import { widerPipes } from './pipe-choice.ts'
import type { PlainHoleFacts } from './plain-hole-facts.ts'

const wider = (plan: Plan) =>
  plan.column?.pipe === undefined ? [] : [among('column/pipe', widerPipes(plan.column.pipe))]

/** A hole for the cup against the pipe it is cut in. */
const plainHole: Check<PlainHoleFacts> = {
  id: 'templates/plain-hole',
  at: 'column/cup/body',
  source: practiceRatios.source,
  judged: ({ share, hole_m, outside_m, gap_m }, plan, terms) => [
    judge(plainHole.id, quantity(share, 'share'), {
      ...terms,
      must: { max: practiceRatios.rows['cup-hole'].high },
      slots: { hole: quantity(hole_m, 'm'), outside: quantity(outside_m, 'm'), gap: quantity(gap_m ?? 0, 'm') },
      levers: () => wider(plan),
    }),
  ],
}

/** A level cup against the far wall. */
const plainHoleDepth: Check<PlainHoleFacts> = {
  id: 'templates/plain-hole-depth',
  at: 'column/cup/depth',
  source: 'Geometry.other-sites',
  judged: ({ deepest_m, cupDepth_m }, plan, terms) =>
    deepest_m === null
      ? []
      : [
          judge(plainHoleDepth.id, quantity(deepest_m - cupDepth_m, 'm'), {
            ...terms,
            must: { min: 0 },
            slots: { depth: quantity(cupDepth_m, 'm'), deepest: quantity(deepest_m, 'm') },
            levers: () => wider(plan),
          }),
        ],
}

const plainWeb: Check<PlainHoleFacts> = {
  id: 'templates/ring-web',
  at: 'column/sites/perRing',
  source: practiceRatios.source,
  applies: (plan) => plan.column?.sites?.pattern !== 'helix' && (plan.column?.sites?.perRing ?? 2) >= 2,
  judged: ({ web_m, wall_m, outside_m }, plan) => {
    if (web_m === null) return []
    const levers = () => [...perRingFewer(plan), ...wider(plan)]
    const count = plan.column?.sites?.perRing ?? 1
    return [ringWebFinding({ web_m, count, round_m: Math.PI * outside_m, wall_m, levers })]
  },
}

export const plainHoleChecks: readonly Check<PlainHoleFacts>[] = [plainHole, plainHoleDepth, plainWeb]

/** How much further apart a remedy may put fittings. */
const STRETCH = 4

/** Bought branch fittings: what one adds to the column against the pitch, and its branches against the ring. */
export function fittingFindings(plan: Plan): readonly Finding[] {
  const { sites, fitting } = plan.column ?? {}
  const terms = { at: 'column/sites/pitch', source: 'Geometry.other-sites' as const }
  const given = needed({
    layingLength_m: ['column/fitting/layingLength', fitting?.layingLength_m],
    branches: ['column/fitting/branches', fitting?.branches],
    perRing: ['column/sites/perRing', sites?.perRing],
    pitch_m: ['column/sites/pitch', sites?.pitch_m],
  })
  if (!isKnown(given)) {
    const { needs } = given
    return [
      unknown('templates/fitting-pitch', { ...terms, needs }),
      unknown('templates/fitting-branches', { ...terms, at: 'column/sites/perRing', needs }),
    ]
  }
  const { layingLength_m, branches, perRing, pitch_m } = given.known
  const between_m = fitting?.between_m ?? 0
  const least_m = fittingPitch({ layingLength_m, between_m, lines: branches, branches }).column_m
  return [
    judge('templates/fitting-pitch', quantity(pitch_m, 'm'), {
      ...terms,
      must: { min: least_m },
      slots: { laying: quantity(layingLength_m, 'm'), between: quantity(between_m, 'm') },
      levers: () => [along('column/sites/pitch', Math.max(STRETCH * pitch_m, least_m + STEP_m), 'm', STEP_m)],
    }),
    judge('templates/fitting-branches', quantity(perRing, 'count'), {
      ...terms,
      at: 'column/sites/perRing',
      must: { max: branches },
      slots: { branches },
      levers: perRingFewer(plan),
    }),
  ]
}
