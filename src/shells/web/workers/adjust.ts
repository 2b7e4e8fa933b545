import { pumpsToBuy } from '../../../disciplines/hydraulics/index.ts'
import { evaluate, proofOf } from '../../../evaluate.ts'
import { withRemedy } from '../../../findings/apply.ts'
import type { Change, Finding, Remedy, Setting } from '../../../findings/finding.ts'
import { quantity } from '../../../kernel/units.ts'
import { parsePlan } from '../../../plan/document.ts'
import { isKnown } from '../../../plan/known.ts'
import { valueAt } from '../../../plan/patch.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import { type Chosen, chosen } from '../model/chosen.ts'
import type { Draft } from '../model/draft.ts'

export const judged = (document: PlanDocument) => evaluate(parsePlan(document).plan).findings

const ROUNDS = 12

/** Boxes of pumps are told apart by these: a tenth of a metre, a hundred litres an hour. */
const HEAD_STEP_m = 0.1
const FLOW_STEP_m3_s = 0.1 / 3600

/** Fixing the tower to a wall, weighing it down: nobody but the grower can say that it will be done. */
const grower = (path: string): boolean => path.startsWith('column/base/')

const settings = (r: Remedy) => [r, ...r.with]

/** What is the grower's to do is left open; of two that do the same the first is made. */
const ours = (remedies: readonly Remedy[]): Remedy | undefined =>
  remedies.find((r) => !settings(r).some(({ set }) => grower(set)))

/** Whether a finding asks first for something that only the grower can do. */
const standing = (f: Finding): boolean => /^structure\/|^build\/strap$/.test(f.id)

const falling = (document: PlanDocument): readonly Finding[] =>
  judged(document).filter((f) => f.verdict === 'fail' && standing(f))

const typed = (value: unknown): Change['from'] =>
  typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean' ? value : null

/** Straps are looked for so many times: the gust, people, the pull of the anchor. */
const TIES = 4

/** Settings of a strap with which the tower stands safely by all that is judged; null where no strap does it. */
function strapFor(document: PlanDocument): readonly Setting[] | null {
  const all = new Map<string, Setting>()
  let plan = document
  for (let round = 0; round < TIES; round++) {
    if (falling(plan).length === 0) return [...all.values()]
    const { findings, curesOf } = proofOf(plan)
    const cures = findings.filter((f) => f.verdict === 'fail' && standing(f)).flatMap(curesOf)
    const cure = cures.find((r) => settings(r).some(({ set }) => set === 'column/base/strapLoad')) ?? cures[0]
    if (cure === undefined || !settings(cure).every(({ set }) => grower(set))) return null
    for (const { set, to } of settings(cure)) all.set(set, { set, to })
    plan = withRemedy(plan, cure)
  }
  return falling(plan).length === 0 ? [...all.values()] : null
}

/** Everything that fails and asks for a hold, in one sentence, with a strap that would do. */
function tie(document: PlanDocument, failing: readonly Finding[]): readonly Chosen[] {
  if (!failing.some(standing)) return []
  const strap = strapFor(document)
  const of = (path: string) => strap?.find(({ set }) => set === path)?.to
  const [load, height] = [of('column/base/strapLoad'), of('column/base/strapHeight')]
  if (strap === null || typeof load !== 'string' || typeof height !== 'string') return [chosen('tie-open')]
  const [first, ...rest] = strap.map(({ set, to }): Change => ({ set, from: typed(valueAt(document, set)), to }))
  return [{ kind: 'said', key: 'tie', slots: { load, height }, promise: { ...first!, with: rest } }]
}

/** What any pump must bring, where none is named. */
function pumpAsked(document: PlanDocument): readonly Chosen[] {
  const { plan } = parsePlan(document)
  const { facts } = evaluate(plan)
  const { lift, tubes, water } = facts.hydraulics
  const wanted_m3_s = plan.riser?.neededFlow_m3_s
  if (plan.pump?.maxHead_m !== undefined && plan.pump.maxFlow_m3_s !== undefined) return []
  if (!isKnown(lift) || !isKnown(tubes) || wanted_m3_s === undefined) return [chosen('pump-open')]
  const [least] = pumpsToBuy({ lift: lift.known, tubes: tubes.known, water }, wanted_m3_s)
  if (least === undefined) return [chosen('pump-open')]
  const up = (value: number, step: number) => Math.ceil(value / step) * step
  const [head, flow] = [up(least.head_m, HEAD_STEP_m), up(least.flow_m3_s, FLOW_STEP_m3_s)]
  return [chosen('pump-any', { head: quantity(head, 'm'), flow: quantity(flow, 'm3_s') })]
}

const apart = ({ slots }: Finding): Chosen =>
  chosen('crops-apart', { strongest: String(slots['strongest']), weakest: String(slots['weakest']) })

/** What still fails, each told once. */
function open(document: PlanDocument): readonly Chosen[] {
  const failing = judged(document).filter((f) => f.verdict === 'fail')
  const rest = failing.filter((f) => !standing(f))
  return [
    ...tie(document, failing),
    ...rest.map((f): Chosen => (f.id === 'nutrients/crops-together' ? apart(f) : { kind: 'fails', finding: f.id })),
  ]
}

/**
 * A draft changed by proved remedies, worst finding first, until nothing fails that a change of ours can cure; with all
 * that was chosen, made or left open on the way.
 */
export function adjustedPlan(draft: Draft): Draft {
  const made: Chosen[] = []
  let plan = draft.document
  for (let round = 0; round < ROUNDS; round++) {
    const { findings, curesOf } = proofOf(plan)
    const failing = findings.filter((f) => f.verdict === 'fail' && f.levers.length > 0 && !standing(f))
    let next: { readonly id: string; readonly cure: Remedy } | null = null
    for (const f of failing) {
      const cure = ours(curesOf(f))
      if (cure) next = { id: f.id, cure }
      if (cure) break
    }
    if (next === null) break
    plan = withRemedy(plan, next.cure)
    const { set, from, to, with: others } = next.cure
    made.push({ kind: 'changed', finding: next.id, change: { set, from, to, with: others } })
  }
  return { document: plan, chosen: [...made, ...open(plan), ...pumpAsked(plan), ...draft.chosen] }
}
