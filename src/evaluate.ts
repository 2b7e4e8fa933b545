import { buildFindings } from './disciplines/build/checks.ts'
import { type BuildFacts, buildFacts } from './disciplines/build/index.ts'
import { cutsFindings } from './disciplines/cuts/checks.ts'
import { type CutsFacts, cutsFacts } from './disciplines/cuts/index.ts'
import { hydraulicsFindings } from './disciplines/hydraulics/checks.ts'
import { type HydraulicsFacts, hydraulicsFacts } from './disciplines/hydraulics/index.ts'
import { layoutFindings } from './disciplines/layout/checks.ts'
import { type LayoutFacts, layoutFacts } from './disciplines/layout/index.ts'
import { nutrientsFindings } from './disciplines/nutrients/checks.ts'
import { feedAsked, type NutrientsFacts, nutrientsFacts, type TankUse } from './disciplines/nutrients/index.ts'
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
  readonly nutrients: NutrientsFacts
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
  /** A plan whose facts are known: its feed is taken over where nothing that feeds differs. */
  readonly before?: { readonly plan: Plan; readonly facts: Facts }
}

/** What the feed needs to know of the tank. */
function tankUse({ tank, reservoir }: Pick<Facts, 'tank' | 'reservoir'>): TankUse {
  const use = isKnown(reservoir) ? orNull(reservoir.known.use_m3_d) : null
  const fill = isKnown(tank) ? orNull(tank.known.fill) : null
  return { fill_m3: fill?.volume_m3 ?? null, use_m3_d: use && { low: use.low, high: use.high } }
}

/** The feed, or that of the plan before where the same was asked of it. */
function feedOf(plan: Plan, tank: TankUse, before: EvaluateOptions['before']): NutrientsFacts {
  const same = before && feedAsked(plan, tank) === feedAsked(before.plan, tankUse(before.facts))
  return same ? before.facts.nutrients : nutrientsFacts(plan, tank)
}

/** Sections that say nothing of the pipes and their joints. */
const BESIDE_THE_JOINT = new Set<string>([
  'name',
  'note',
  'change',
  'water',
  'pump',
  'riser',
  'drain',
  'distributor',
  'lamps',
  'crops',
  'feed',
  'stock',
  'prices',
] satisfies (keyof Plan)[])

const asksOfJoint = (plan: Plan): string =>
  JSON.stringify(Object.entries(plan).filter(([section]) => !BESIDE_THE_JOINT.has(section)))

/** The facts of the plan before, where pipes, joints and sites are the same in both. */
function sameJoint(plan: Plan, before: EvaluateOptions['before']): Facts | null {
  return before && asksOfJoint(plan) === asksOfJoint(before.plan) ? before.facts : null
}

/** Computed when first asked for, and once. */
function once<T>(compute: () => T): () => T {
  let known: { readonly value: T } | null = null
  return () => {
    known ??= { value: compute() }
    return known.value
  }
}

/** The whole job as a list of who needs whom; each fact waits until it is asked for. */
function job(plan: Plan, options: EvaluateOptions) {
  const kept = sameJoint(plan, options.before)
  const room = once(() => kept?.room ?? jointRoom(plan))
  const joint = once(() => jointFacts(plan, room()))
  const layout = once(() => kept?.layout ?? layoutFacts(plan, orNull(joint())))
  const templates = once(() => kept?.templates ?? templatesFacts(plan, joint(), orNull(layout())))
  const pocket = once(() => kept?.pocket ?? pocketFacts(plan, orNull(layout())))
  const tank = once(() => tankFacts(plan))
  const week = oldestWeek(plan)
  const hydraulics = once(() =>
    hydraulicsFacts(plan, {
      tank: tank(),
      layout: layout(),
      templates: orNull(templates()),
      pocket: pocket(),
      oldest_weeks: week,
    }),
  )
  const reservoir = once(() => reservoirFacts(plan, { tank: tank(), held: hydraulics().held, layout: layout() }))
  const water = once(() => waterFacts(plan, { week, layout: layout(), templates: orNull(templates()) }))
  const day = once(() => {
    if (options.day === false) return null
    const { column_m3_s: flow, film } = hydraulics()
    const heat = heatNeeds({ tank: tank(), flow, film, layout: layout(), templates: orNull(templates()) })
    return dayFacts(plan, { ...heat, sky: water().sky, week })
  })
  const structure = once(() =>
    structureFacts(plan, { layout: layout(), templates: orNull(templates()), tank: tank(), sky: water().sky }),
  )
  const power = once(() => powerFacts(plan))
  const nutrients = once(() => feedOf(plan, tankUse({ tank: tank(), reservoir: reservoir() }), options.before))
  const cuts = once(() => cutsFacts(plan, templates(), layout()))
  const build = once(() => buildFacts(plan, { layout: layout(), templates: templates(), pocket: pocket() }))
  const parts = once(() => partsFacts(plan, { layout: layout(), templates: templates(), cuts: cuts(), build: build() }))
  return {
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
    nutrients,
    cuts,
    build,
    parts,
  }
}

type Job = ReturnType<typeof job>

/** What each discipline finds, by the first half of the findings' ids. */
const judged = {
  layout: (plan, j) => layoutFindings(plan, j.layout(), j.templates()),
  templates: (plan, j) => templatesFindings(plan, { room: j.room(), templates: j.templates(), pocket: j.pocket() }),
  hydraulics: (plan, j) =>
    hydraulicsFindings(plan, j.hydraulics(), { layout: j.layout(), templates: j.templates(), tank: j.tank() }),
  reservoir: (plan, j) => reservoirFindings(plan, j.reservoir()),
  water: (plan, j) => {
    const reservoir = j.reservoir()
    const use = isKnown(reservoir) ? reservoir.known.use_m3_d : reservoir
    return waterFindings(plan, j.day(), use, j.water().trapped)
  },
  structure: (plan, j) => structureFindings(plan, j.structure()),
  power: (plan, j) => powerFindings(plan, j.power()),
  nutrients: (plan, j) => nutrientsFindings(plan, j.nutrients()),
  cuts: (_, j) => cutsFindings(j.cuts()),
  parts: (plan, j) => partsFindings(plan, j.parts()),
  build: (plan, j) => buildFindings(plan, j.build()),
} satisfies Readonly<Record<string, (plan: Plan, j: Job) => readonly Finding[]>>

type Discipline = keyof typeof judged

/** Findings of pockets are made where those of the other templates are. */
const disciplineOf = (id: string): Discipline => {
  const first = id.split('/')[0]!
  return first === 'pocket' ? 'templates' : (first as Discipline)
}

/** The whole job: every fact and every finding of a plan. */
export function evaluate(plan: Plan, options: EvaluateOptions = {}): Evaluation {
  const j = job(plan, options)
  const findings = Object.values(judged).flatMap((find) => find(plan, j))
  const facts = Object.fromEntries(Object.entries(j).map(([name, fact]) => [name, fact()])) as unknown as Facts
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
  const judge = (changed: PlanDocument, about?: string) => {
    const { plan: other } = parsePlan(changed)
    const options = { before: { plan, facts: evaluation.facts } }
    return about === undefined
      ? evaluate(other, options).findings
      : judged[disciplineOf(about)](other, job(other, options))
  }
  return { ...evaluation, findings: withRemedies(document, judge), issues }
}
