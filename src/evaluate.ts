import { buildFindings } from './disciplines/build/checks.ts'
import { buildFacts } from './disciplines/build/index.ts'
import { cutsFindings } from './disciplines/cuts/checks.ts'
import { cutsFacts } from './disciplines/cuts/index.ts'
import { hydraulicsFindings, isWetting, wettingFindings } from './disciplines/hydraulics/checks.ts'
import { hydraulicsFacts } from './disciplines/hydraulics/index.ts'
import { layoutFindings } from './disciplines/layout/checks.ts'
import { layoutFacts } from './disciplines/layout/index.ts'
import { nutrientsFindings } from './disciplines/nutrients/checks.ts'
import { partsFindings } from './disciplines/parts/checks.ts'
import { partsFacts } from './disciplines/parts/index.ts'
import { powerFindings } from './disciplines/power/checks.ts'
import { powerFacts } from './disciplines/power/index.ts'
import { reservoirFindings } from './disciplines/reservoir/checks.ts'
import { reservoirFacts, tankFacts } from './disciplines/reservoir/index.ts'
import { structureFindings } from './disciplines/structure/checks.ts'
import { oldestWeek, structureFacts } from './disciplines/structure/index.ts'
import { templatesFindings } from './disciplines/templates/checks.ts'
import { jointFacts, jointRoom, pocketFacts, templatesFacts } from './disciplines/templates/index.ts'
import { waterFindings } from './disciplines/water/checks.ts'
import { waterFacts } from './disciplines/water/index.ts'
import type { Finding } from './findings/finding.ts'
import { type Judge, proof } from './findings/prove.ts'
import { dayGiven, dayOf, type EvaluateOptions, type Facts, feedOf, sameJoint, tankUse } from './kept.ts'
import { parsePlan } from './plan/document.ts'
import type { Issue } from './plan/issue.ts'
import { isKnown, orNull } from './plan/known.ts'
import type { Plan, PlanDocument } from './plan/plan.ts'

export type { EvaluateOptions, Facts }

/** Everything that is known of a plan: facts and findings. */
export interface Evaluation {
  readonly facts: Facts
  readonly findings: readonly Finding[]
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
    const facts = { tank: tank(), layout: layout(), templates: templates(), water: water(), hydraulics: hydraulics() }
    return dayOf(plan, dayGiven(facts, week), options.before)
  })
  const structure = once(() =>
    structureFacts(plan, { layout: layout(), templates: orNull(templates()), tank: tank(), sky: water().sky }),
  )
  const power = once(() => powerFacts(plan))
  const nutrients = once(() => feedOf(plan, tankUse({ tank: tank(), reservoir: reservoir() }), options.before))
  const cuts = once(() => cutsFacts(plan, templates(), layout()))
  const build = once(() => buildFacts(plan, { layout: layout(), templates: templates(), pocket: pocket() }))
  const parts = once(() => {
    const made = { layout: layout(), templates: templates(), cuts: cuts(), build: build() }
    return partsFacts(plan, { ...made, structure: structure() })
  })
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
  // Apart from the rest of the water's way, since the map takes as long as all of it.
  wetting: (plan, j) => wettingFindings(plan, j.hydraulics()),
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

/** Disciplines by the work that they make, what changes most often for the worse first. */
const LEAST_WORK_FIRST = Object.keys({
  reservoir: true,
  hydraulics: true,
  wetting: true,
  structure: true,
  layout: true,
  templates: true,
  power: true,
  build: true,
  cuts: true,
  parts: true,
  nutrients: true,
  water: true,
} satisfies Record<Discipline, true>)

/** Findings of pockets are made where those of the other templates are. */
const disciplineOf = (id: string): Discipline => {
  if (isWetting(id)) return 'wetting'
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

/** Facts of a plan, each computed when it is first read: for a question that needs a few of them, asked many times. */
export function factsOnDemand(plan: Plan, options: EvaluateOptions = {}): Facts {
  const named = Object.entries(job(plan, options)).map(([name, fact]) => [name, { get: fact, enumerable: true }])
  return Object.defineProperties({}, Object.fromEntries(named)) as Facts
}

/** An evaluation of a document with every remedy proved by evaluating the changed document. */
export interface ProvedEvaluation extends Evaluation {
  readonly issues: readonly Issue[]
}

/** Judges changed documents, each read and computed once, however many of its disciplines are asked for. */
function judgeFrom(document: PlanDocument, plan: Plan, { facts, findings }: Evaluation): Judge {
  const jobs = new WeakMap<PlanDocument, { readonly plan: Plan; readonly job: Job }>()
  const jobOf = (changed: PlanDocument) => {
    const known = jobs.get(changed)
    if (known) return known
    const { plan: other } = parsePlan(changed)
    const fresh = { plan: other, job: job(other, { before: { plan, facts } }) }
    jobs.set(changed, fresh)
    return fresh
  }
  return (changed, part) => {
    if (changed === document && part === undefined) return findings
    const { plan: other, job: its } = jobOf(changed)
    return part === undefined
      ? Object.values(judged).flatMap((find) => find(other, its))
      : judged[part as Discipline](other, its)
  }
}

/** Reads and evaluates a document; remedies are proved one finding after the other, as they are asked for. */
export function proofOf(document: PlanDocument) {
  const { plan, issues } = parsePlan(document)
  const evaluation = evaluate(plan)
  const judge = judgeFrom(document, plan, evaluation)
  return {
    ...evaluation,
    issues,
    curesOf: proof(document, judge, { parts: LEAST_WORK_FIRST, partOf: disciplineOf }).curesOf,
  }
}

/** Reads and evaluates a document; with its remedies, unless they are left out. */
export function evaluateDocument(
  document: PlanDocument,
  options: { readonly remedies: boolean } = { remedies: true },
): ProvedEvaluation {
  const { curesOf, ...evaluation } = proofOf(document)
  if (!options.remedies) return evaluation
  return { ...evaluation, findings: evaluation.findings.map((f) => ({ ...f, remedies: curesOf(f) })) }
}
