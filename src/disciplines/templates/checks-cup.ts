import { type Check, checked } from '../../findings/check.ts'
import type { Finding } from '../../findings/finding.ts'
import { judge } from '../../findings/judge.ts'
import { along, among } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { practiceLengths } from '../../tables/practice.ts'
import { perRingFewer, STEP_m } from './checks-bore.ts'
import type { CupFacts } from './cup-facts.ts'
import type { TemplatesFacts } from './index.ts'
import { pipesOfBore } from './pipe-choice.ts'

interface Seated extends CupFacts {
  readonly joint: TemplatesFacts['joint']
}

/** The widest bore on which the rim still rests. */
const mostBore = (plan: Plan): number => plan.column?.cup?.rim_m ?? 0

/** Rim over bore, on the diameter: what the cup hangs by. */
const ledge: Check<Seated> = {
  id: 'templates/cup-ledge',
  at: 'column/cup/rim',
  source: practiceLengths.source,
  judged: ({ ledge_m, joint }, plan, terms) => [
    judge(ledge.id, quantity(2 * ledge_m, 'm'), {
      ...terms,
      must: { min: 0 },
      want: { min: practiceLengths.rows['cup-rim'].low_m },
      slots: { rim: quantity(plan.column?.cup?.rim_m ?? 0, 'm'), bore: quantity(joint.stubPipe.bore_m, 'm') },
      levers: () => [
        among('column/stub/pipe', pipesOfBore(joint.stubPipe, plan.column?.cup?.body_m ?? 0, mostBore(plan))),
      ],
    }),
  ],
}

/** Bore over body, on the diameter: below zero the cup must be slit, and past its foot it goes in no more. */
const play: Check<Seated> = {
  id: 'templates/cup-play',
  at: 'column/cup/body',
  source: 'Geometry.cup',
  judged: ({ play_m, overlap_m, slit_m, joint }, plan, terms) => {
    const { body_m = 0, foot_m = 0 } = plan.column?.cup ?? {}
    return [
      judge(play.id, quantity(2 * play_m, 'm'), {
        ...terms,
        must: { min: Math.min(0, foot_m - body_m) },
        want: { min: 0 },
        slots: {
          body: quantity(body_m, 'm'),
          bore: quantity(joint.stubPipe.bore_m, 'm'),
          slit: quantity(slit_m, 'm'),
          overlap: quantity(overlap_m, 'm'),
        },
        levers: () => [among('column/stub/pipe', pipesOfBore(joint.stubPipe, body_m, mostBore(plan)))],
      }),
    ]
  },
}

/** How far the foot stands past the bore wall, on the line that gets there first. */
const reach: Check<Seated> = {
  id: 'templates/cup-reach',
  at: 'column/stub/lowerSide',
  source: 'Geometry.cup',
  judged: ({ reach: by }, plan, terms) => {
    const side_m = plan.column?.stub?.lowerSide_m
    const most_m = Math.max(by.axis_m, by.heel_m, by.crown_m)
    return [
      judge(reach.id, quantity(most_m, 'm'), {
        ...terms,
        want: { min: 0 },
        slots: { short: quantity(Math.max(0, -most_m), 'm'), axis: quantity(by.axis_m, 'm') },
        levers: side_m === undefined ? [] : [along('column/stub/lowerSide', STEP_m, 'm', STEP_m)],
      }),
    ]
  },
}

/** Feet of one ring in the bore. */
const meet: Check<Seated> = {
  id: 'templates/cups-meet',
  at: 'column/sites/perRing',
  source: 'Geometry.cup',
  applies: (plan) => plan.column?.sites?.pattern !== 'helix' && (plan.column?.sites?.perRing ?? 2) >= 2,
  judged: ({ feetGap_m }, plan, terms) => {
    if (feetGap_m === null) return []
    const side_m = plan.column?.stub?.lowerSide_m
    return [
      judge(meet.id, quantity(feetGap_m, 'm'), {
        ...terms,
        must: { min: 0 },
        slots: { count: plan.column?.sites?.perRing ?? 0 },
        levers: () => [
          ...(side_m === undefined ? [] : [along('column/stub/lowerSide', 2 * side_m, 'm', STEP_m)]),
          ...perRingFewer(plan),
        ],
      }),
    ]
  },
}

function seated(templates: Known<TemplatesFacts>): Known<Seated> {
  if (!isKnown(templates)) return templates
  const { cup, joint } = templates.known
  return isKnown(cup) ? { known: { ...cup.known, joint } } : cup
}

export const cupFindings = (plan: Plan, templates: Known<TemplatesFacts>): readonly Finding[] =>
  checked([ledge, play, reach, meet], seated(templates), plan)
