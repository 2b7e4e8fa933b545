import { buildFindings } from './disciplines/build/checks.ts'
import { type BuildFacts, buildFacts } from './disciplines/build/index.ts'
import { cutsFindings } from './disciplines/cuts/checks.ts'
import { type CutsFacts, cutsFacts } from './disciplines/cuts/index.ts'
import { hydraulicsFindings } from './disciplines/hydraulics/checks.ts'
import { type HydraulicsFacts, hydraulicsFacts } from './disciplines/hydraulics/index.ts'
import { layoutFindings } from './disciplines/layout/checks.ts'
import { type LayoutFacts, layoutFacts } from './disciplines/layout/index.ts'
import { partsFindings } from './disciplines/parts/checks.ts'
import { type PartsFacts, partsFacts } from './disciplines/parts/index.ts'
import { reservoirFindings } from './disciplines/reservoir/checks.ts'
import { type ReservoirFacts, reservoirFacts, type TankFacts, tankFacts } from './disciplines/reservoir/index.ts'
import { templatesFindings } from './disciplines/templates/checks.ts'
import {
  type JointRoom,
  jointFacts,
  jointRoom,
  type PocketFacts,
  pocketFacts,
  type TemplatesFacts,
  templatesFacts,
} from './disciplines/templates/index.ts'
import type { Finding } from './findings/finding.ts'
import { withRemedies } from './findings/prove.ts'
import { parsePlan } from './plan/document.ts'
import type { Issue } from './plan/issue.ts'
import { type Known, orNull } from './plan/known.ts'
import type { Plan, PlanDocument } from './plan/plan.ts'

/** What is known of a plan, by discipline; where something is missing, the fields that are. */
export interface Facts {
  readonly room: Known<JointRoom>
  readonly layout: Known<LayoutFacts>
  readonly templates: Known<TemplatesFacts>
  readonly pocket: Known<PocketFacts>
  readonly tank: Known<TankFacts>
  readonly hydraulics: HydraulicsFacts
  readonly reservoir: Known<ReservoirFacts>
  readonly cuts: CutsFacts
  readonly build: Known<BuildFacts>
  readonly parts: Known<PartsFacts>
}

/** Everything that is known of a plan: facts and findings. */
export interface Evaluation {
  readonly facts: Facts
  readonly findings: readonly Finding[]
}

/** The whole job, in the order in which one discipline needs another. */
export function evaluate(plan: Plan): Evaluation {
  const room = jointRoom(plan)
  const joint = jointFacts(plan, room)
  const layout = layoutFacts(plan, orNull(joint))
  const templates = templatesFacts(plan, joint, orNull(layout))
  const pocket = pocketFacts(plan, orNull(layout))
  const tank = tankFacts(plan)
  const hydraulics = hydraulicsFacts(plan, { tank, layout, templates: orNull(templates) })
  const reservoir = reservoirFacts(plan, { tank, held: hydraulics.held, layout })
  const cuts = cutsFacts(plan, templates, layout)
  const build = buildFacts(plan, { layout, templates, pocket })
  const parts = partsFacts(plan, { layout, templates, cuts, build })
  const facts: Facts = { room, layout, templates, pocket, tank, hydraulics, reservoir, cuts, build, parts }
  const findings = [
    ...layoutFindings(plan, layout, templates),
    ...templatesFindings(plan, facts),
    ...hydraulicsFindings(plan, hydraulics, { layout, templates, tank }),
    ...reservoirFindings(plan, reservoir),
    ...cutsFindings(cuts),
    ...partsFindings(plan, parts),
    ...buildFindings(plan, build),
  ]
  return { facts, findings }
}

/** An evaluation of a document with every remedy proved by evaluating the changed document. */
export interface ProvedEvaluation extends Evaluation {
  readonly issues: readonly Issue[]
}

export function evaluateDocument(
  document: PlanDocument,
  options: { readonly remedies: boolean } = { remedies: true },
): ProvedEvaluation {
  const { plan, issues } = parsePlan(document)
  const evaluation = evaluate(plan)
  if (!options.remedies) return { ...evaluation, issues }
  const judge = (changed: PlanDocument) => evaluate(parsePlan(changed).plan).findings
  return { ...evaluation, findings: withRemedies(document, judge), issues }
}
