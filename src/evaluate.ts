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
import { powerFindings } from './disciplines/power/checks.ts'
import { type PowerFacts, powerFacts } from './disciplines/power/index.ts'
import { reservoirFindings } from './disciplines/reservoir/checks.ts'
import { type ReservoirFacts, reservoirFacts, type TankFacts, tankFacts } from './disciplines/reservoir/index.ts'
import { structureFindings } from './disciplines/structure/checks.ts'
import { oldestWeek, type StructureFacts, structureFacts } from './disciplines/structure/index.ts'
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
import { waterFindings } from './disciplines/water/checks.ts'
import { type DayFacts, dayFacts, heatNeeds, type WaterFacts, waterFacts } from './disciplines/water/index.ts'
import type { Finding } from './findings/finding.ts'
import { withRemedies } from './findings/prove.ts'
import { parsePlan } from './plan/document.ts'
import type { Issue } from './plan/issue.ts'
import { isKnown, type Known, orNull } from './plan/known.ts'
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
  readonly water: WaterFacts
  /** The solution through a hot and a cold day; null where the day was left out. */
  readonly day: Known<DayFacts> | null
  readonly structure: StructureFacts
  readonly power: PowerFacts
  readonly cuts: CutsFacts
  readonly build: Known<BuildFacts>
  readonly parts: Known<PartsFacts>
}

/** Everything that is known of a plan: facts and findings. */
export interface Evaluation {
  readonly facts: Facts
  readonly findings: readonly Finding[]
}

/** What of the job is left out where only a part of it is asked for. */
export interface EvaluateOptions {
  /** The solution through a hot and a cold day, the dearest of all facts. */
  readonly day?: boolean
}

/** The whole job, in the order in which one discipline needs another. */
export function evaluate(plan: Plan, options: EvaluateOptions = {}): Evaluation {
  const room = jointRoom(plan)
  const joint = jointFacts(plan, room)
  const layout = layoutFacts(plan, orNull(joint))
  const templates = templatesFacts(plan, joint, orNull(layout))
  const pocket = pocketFacts(plan, orNull(layout))
  const tank = tankFacts(plan)
  const hydraulics = hydraulicsFacts(plan, { tank, layout, templates: orNull(templates) })
  const reservoir = reservoirFacts(plan, { tank, held: hydraulics.held, layout })
  const week = oldestWeek(plan)
  const water = waterFacts(plan, week)
  const heat = heatNeeds({
    tank,
    flow: hydraulics.column_m3_s,
    film: hydraulics.film,
    layout,
    templates: orNull(templates),
  })
  const day = options.day === false ? null : dayFacts(plan, { ...heat, sky: water.sky, week })
  const structure = structureFacts(plan, { layout, templates: orNull(templates), tank, sky: water.sky })
  const power = powerFacts(plan)
  const cuts = cutsFacts(plan, templates, layout)
  const build = buildFacts(plan, { layout, templates, pocket })
  const parts = partsFacts(plan, { layout, templates, cuts, build })
  const facts: Facts = {
    room,
    layout,
    templates,
    pocket,
    tank,
    hydraulics,
    reservoir,
    water,
    day,
    structure,
    power,
    cuts,
    build,
    parts,
  }
  const use = isKnown(reservoir) ? reservoir.known.use_m3_d : reservoir
  const findings = [
    ...layoutFindings(plan, layout, templates),
    ...templatesFindings(plan, facts),
    ...hydraulicsFindings(plan, hydraulics, { layout, templates, tank }),
    ...reservoirFindings(plan, reservoir),
    ...waterFindings(plan, day, use),
    ...structureFindings(plan, structure),
    ...powerFindings(plan, power),
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
