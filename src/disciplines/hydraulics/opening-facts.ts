import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import type { PocketFacts, TemplatesFacts } from '../templates/index.ts'
import { columnPipe } from './film-facts.ts'

/** What a site offers to falling water: its opening in the wall, and what stands from it into the bore. */
export interface OpeningFacts {
  /** Half of the angle that the opening takes up in the wall. */
  readonly halfAngle_rad: number
  /** How far the cup stands into the bore; negative: it ends so far short of it. Null where the cup is not known. */
  readonly cup_m: number | null
  /** How far a stub's end, or a lip that was pressed in, stands into the bore. */
  readonly end_m: number
}

/** Half of a chord as an angle of a circle. */
const halfAngle = (chord_m: number, diameter_m: number): number => Math.asin(Math.min(1, chord_m / diameter_m))

function stubOpening(templates: TemplatesFacts | null): Known<OpeningFacts> {
  if (templates === null) return { needs: ['column/stub'] }
  const { left_rad, right_rad } = templates.holeAlong.extent
  return {
    known: {
      halfAngle_rad: Math.abs(right_rad - left_rad) / 2,
      cup_m: isKnown(templates.cup) ? templates.cup.known.reach.axis_m : null,
      end_m: Math.max(0, templates.stub.reach_m),
    },
  }
}

/** The opening of a site by the way in which it is made. */
export function openingFacts(
  plan: Plan,
  given: { readonly templates: TemplatesFacts | null; readonly pocket: Known<PocketFacts> },
): Known<OpeningFacts> {
  const method = plan.column?.sites?.method ?? 'stub'
  const pipe = columnPipe(plan)
  if (pipe === null) return { needs: ['column/pipe'] }
  const { outside_m, wall_m } = pipe
  const { body_m, depth_m } = plan.column?.cup ?? {}
  if (method === 'pocket') {
    if (!isKnown(given.pocket)) return given.pocket
    const { slit_m, lensGap_m } = given.pocket.known
    // The upper lip is pressed in about as far as the lower one is drawn out; the cup hangs in the lens between them.
    const end_m = lensGap_m / 2
    return {
      known: { halfAngle_rad: Math.min(Math.PI, slit_m / outside_m), cup_m: body_m === undefined ? null : 0, end_m },
    }
  }
  if (method === 'hole') {
    if (body_m === undefined) return { needs: ['column/cup/body'] }
    const cup_m = depth_m === undefined ? null : depth_m - wall_m
    return { known: { halfAngle_rad: halfAngle(body_m, outside_m), cup_m, end_m: 0 } }
  }
  if (method === 'fitting') {
    const branch = plan.column?.stub?.pipe
    if (branch === undefined) return { needs: ['column/stub/pipe'] }
    return { known: { halfAngle_rad: halfAngle(branch.bore_m, outside_m), cup_m: null, end_m: 0 } }
  }
  return stubOpening(given.templates)
}
