import { both, checked } from '../../findings/check.ts'
import type { Finding } from '../../findings/finding.ts'
import type { Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import type { TemplatesFacts } from '../templates/index.ts'
import { marginChecks, openingOf } from './checks-margins.ts'
import { markChecks } from './checks-marks.ts'
import { roomChecks, standingRoom, stubRoomChecks } from './checks-room.ts'
import type { LayoutFacts } from './index.ts'

/** Judges where the sites stand and the room about them. */
export function layoutFindings(
  plan: Plan,
  layout: Known<LayoutFacts>,
  templates: Known<TemplatesFacts>,
): readonly Finding[] {
  return [
    ...checked(marginChecks, openingOf(plan, layout, templates), plan),
    ...checked(stubRoomChecks, both(layout, templates), plan),
    ...checked(roomChecks, layout, plan),
    ...standingRoom(plan),
    ...checked(markChecks, layout, plan),
  ]
}
