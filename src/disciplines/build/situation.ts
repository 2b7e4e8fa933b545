import { isKnown, type Known, needed } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { safetyLengths } from '../../tables/exposure.ts'
import { practiceLengths } from '../../tables/practice.ts'
import type { LayoutFacts } from '../layout/index.ts'
import type { PocketFacts, TemplatesFacts } from '../templates/index.ts'

/** What neighbours know of the tower that is built. */
export interface BuildNeighbours {
  readonly layout: Known<LayoutFacts>
  readonly templates: Known<TemplatesFacts>
  readonly pocket: Known<PocketFacts>
}

/** What decides which steps a build has. */
export interface Situation {
  readonly plan: Plan
  readonly layout: LayoutFacts
  readonly templates: TemplatesFacts | null
  readonly pocket: PocketFacts | null
  readonly method: 'stub' | 'pocket' | 'hole' | 'fitting'
  /** What holds and seals a stub or fitting; null where a site has no joint. */
  readonly joint: 'cement' | 'silicone' | 'weld' | 'epoxy' | 'grommet' | null
  /** Whether a bead of sealant closes what cement does not fill. */
  readonly fillet: boolean
  readonly columns: number
  readonly tanks: number
  readonly sites: number
  readonly linesInAll: number
  readonly children: boolean
  readonly strap: boolean
  /** Top of the column above the floor. */
  readonly top_m: number
  readonly mains: boolean
}

/** Height of the column's top above the floor on which tank or foot stand. */
export function topHeight(plan: Plan): number | null {
  const length_m = plan.column?.length_m
  if (length_m === undefined) return null
  const lifted = plan.column?.base?.kind === 'flange on the lid'
  return length_m + (lifted ? (plan.reservoir?.lidHeight_m ?? plan.reservoir?.container?.depth_m ?? 0) : 0)
}

function jointOf(plan: Plan, method: Situation['method']): Known<Situation['joint']> {
  if (method === 'fitting') return { known: 'cement' }
  if (method !== 'stub') return { known: null }
  const joint = plan.column?.stub?.joint
  return joint === undefined ? { needs: ['column/stub/joint'] } : { known: joint }
}

/** Cement does not fill wide gaps, nor the wedges of a hole that was cut square to the wall. */
function needsFillet(plan: Plan, joint: Situation['joint']): boolean {
  if (joint !== 'cement' || plan.column?.sites?.method === 'fitting') return false
  const { gap_m, hole } = plan.column?.stub ?? {}
  return hole === 'square to the wall' || (gap_m ?? 0) > practiceLengths.rows['cement-gap'].high_m
}

/** Reads from plan and neighbours what the steps depend on, or what is missing for it. */
export function situation(plan: Plan, near: BuildNeighbours): Known<Situation> {
  const { layout, templates, pocket } = near
  if (!isKnown(layout)) return layout
  const stated = plan.column?.sites?.method ?? (plan.column?.stub === undefined ? undefined : ('stub' as const))
  const given = needed({ method: ['column/sites/method', stated], top_m: ['column/length', topHeight(plan)] })
  if (!isKnown(given)) return given
  const { method, top_m } = given.known
  const joint = jointOf(plan, method)
  if (!isKnown(joint)) return joint
  const columns = plan.towers?.count ?? 1
  return {
    known: {
      plan,
      layout: layout.known,
      templates: isKnown(templates) ? templates.known : null,
      pocket: isKnown(pocket) ? pocket.known : null,
      method,
      joint: joint.known,
      fillet: needsFillet(plan, joint.known),
      columns,
      tanks: Math.ceil(columns / (plan.towers?.perPump ?? columns)),
      sites: layout.known.plants,
      linesInAll: layout.known.lines.length * columns,
      children: plan.place?.children ?? plan.place?.setting === 'school',
      strap: plan.column?.base?.anchored === true || top_m > safetyLengths.rows['strap-above'].limit_m,
      top_m,
      mains: (plan.pump?.supply ?? 'mains') === 'mains',
    },
  }
}
