import type { Finding } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { among } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import { isKnown, type Known } from '../../plan/known.ts'
import { plasticOf } from '../../plan/pipe.ts'
import type { Plan } from '../../plan/plan.ts'
import { cementFor } from '../../tables/joining-times.ts'
import { type MaterialId, materials } from '../../tables/materials.ts'
import type { PartsFacts } from './index.ts'

/** Joints that hold a plastic which no cement holds, in the order in which a grower would try them. */
function otherJoints(one: MaterialId, other: MaterialId): string[] {
  const both = [materials.rows[one], materials.rows[other]]
  const silicone = both.every((m) => m.silicone) ? ['silicone'] : []
  const weld = one === other && both.every((m) => m.weld) ? ['weld'] : []
  return [...silicone, ...weld, 'grommet']
}

/** The cement that bridges two plastics: for drain joints, and only where the local code allows it. */
const TRANSITION = 'transition'

/** Cement joins few pairs of plastics; what looks alike on the shelf may be polypropylene. */
function cement(plan: Plan, facts: PartsFacts): Finding[] {
  const { pipe, stub, sites } = plan.column ?? {}
  if (stub?.joint !== 'cement' || (sites?.method ?? 'stub') !== 'stub') return []
  const at = 'column/stub/joint'
  const [one, other] = [plasticOf(pipe), plasticOf(stub.pipe)]
  const terms = { at, must: {}, source: 'from-memory' as const }
  if (one === null || other === null) {
    const needs = [
      ...(one === null ? ['column/pipe/plastic'] : []),
      ...(other === null ? ['column/stub/pipe/plastic'] : []),
    ]
    return [unknown('parts/cement', { ...terms, needs })]
  }
  const pair = cementFor(one, other)
  const joints = facts.joints?.joints ?? 1
  const sure = pair.holds && pair.cement !== TRANSITION
  return [
    judge('parts/cement', quantity(sure ? 0 : joints, 'count'), {
      ...terms,
      must: pair.holds ? {} : { max: 0 },
      want: { max: 0 },
      slots: { column: materials.rows[one].name, stub: materials.rows[other].name, cement: pair.cement },
      levers: [among(at, otherJoints(one, other))],
    }),
  ]
}

/** A sum that leaves parts out says so. */
function prices({ total, parts }: PartsFacts): Finding {
  const terms = { at: 'prices', source: 'common-practice' as const, slots: { parts: parts.length } }
  if (total.priceAt.length > 0) return unknown('parts/prices', { ...terms, needs: total.priceAt })
  return judge('parts/prices', quantity(total.unpriced.length, 'count'), {
    ...terms,
    slots: { ...terms.slots, sum: quantity(total.known_money, 'money') },
  })
}

/** Judges what is bought and whether it can be joined. */
export const partsFindings = (plan: Plan, facts: Known<PartsFacts>): readonly Finding[] =>
  isKnown(facts) ? [...cement(plan, facts.known), prices(facts.known)] : []
