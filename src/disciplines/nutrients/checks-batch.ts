import type { Check } from '../../findings/check.ts'
import type { Finding, FindingSlot } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { quantity } from '../../kernel/units.ts'
import { isKnown } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { feedPractice, targetBands } from '../../tables/feed-practice.ts'
import type { BatchFacts } from './batch.ts'
import { shareLevers } from './levers.ts'
import type { ShelfFacts } from './shelf.ts'
import { isTrace, targetBand } from './target-bands.ts'

/** Why a target is missed, as a phrase. */
function reasonOf({ misses, reached_g_m3, found }: BatchFacts, nutrient: string): FindingSlot {
  const miss = misses.find((m) => m.nutrient === nutrient)
  if (!miss) return { phrase: 'miss-none' }
  if (miss.cause === 'no-carrier') return { phrase: 'miss-no-carrier', with: { nutrient } }
  if (miss.cause === 'water') return { phrase: 'miss-water', with: { nutrient } }
  const by = miss.heldBy[0]?.by
  const carrier = miss.carrier ?? ''
  if (by === undefined) return { phrase: 'miss-none' }
  if (typeof by === 'string') {
    const more = reached_g_m3[miss.nutrient] < miss.wanted_g_m3
    return { phrase: more ? 'miss-held-short' : 'miss-held-over', with: { carrier, by, nutrient } }
  }
  const held = found.held.some(({ bound }) => bound.kind === by.kind)
  return {
    phrase: held ? `miss-${by.kind}` : 'miss-none',
    with: { carrier, nutrient, by: 'nutrient' in by ? by.nutrient : '' },
  }
}

/** Each element against its target. */
const element: Check<BatchFacts> = {
  id: 'nutrients/element',
  at: 'feed/targets',
  source: targetBands.source,
  judged: (facts, plan, { source }) =>
    facts.problem.targets.map(({ nutrient, wanted_g_m3 }) => {
      const { wantLow, wantHigh, mustLow, mustHigh } = targetBand(nutrient)
      return judge(element.id, quantity(facts.reached_g_m3[nutrient], 'g_m3'), {
        ...{ at: `feed/targets/${nutrient}`, source },
        must: { min: mustLow * wanted_g_m3, max: mustHigh * wanted_g_m3 },
        want: { min: wantLow * wanted_g_m3, max: wantHigh * wanted_g_m3 },
        slots: { nutrient, target: quantity(wanted_g_m3, 'g_m3'), reason: reasonOf(facts, nutrient) },
        levers: isTrace(nutrient) ? [] : shareLevers(plan),
      })
    }),
}

/** Hard bands that nothing on the shelf can meet. */
const bounds: Check<BatchFacts> = {
  id: 'nutrients/bounds',
  at: 'feed/limits',
  source: 'Balance.solution',
  judged: ({ found }, plan, terms) => {
    const [first] = found.unmet
    const nutrient = first && 'nutrient' in first ? first.nutrient : ''
    const list: FindingSlot = { phrase: `bound-${first?.kind ?? 'none'}`, with: { nutrient } }
    const measured = quantity(found.unmet.length, 'count')
    return [judge(bounds.id, measured, { ...terms, must: { max: 0 }, slots: { list }, levers: shareLevers(plan) })]
  },
}

/** Largest optimality gap that proves a recipe. */
const PROVED = 1e-6

/** Whether the shelf has a recipe within the band at all, where the cheapest is asked for. */
const cheapest: Check<BatchFacts> = {
  id: 'nutrients/cheapest',
  at: 'feed/within',
  source: 'Balance.solution',
  applies: (plan) => plan.feed?.aim === 'cheapest',
  judged: ({ cheapest: found, volume_m3 }, _, terms) => {
    if (found === null) return []
    if (!isKnown(found)) return [unknown(cheapest.id, { ...terms, needs: found.needs })]
    const { feasible, within, cost_money, nearest_money } = found.known
    const money = (perVolume: number) => quantity(perVolume * (volume_m3 ?? 1), 'money')
    const slots = {
      within: Number((100 * within).toPrecision(3)),
      cost: money(cost_money),
      nearest: money(nearest_money),
    }
    return [judge(cheapest.id, quantity(feasible ? 0 : 1, 'count'), { ...terms, want: { max: 0 }, slots })]
  },
}

/** A recipe whose proof fails is not trusted. */
const proof: Check<BatchFacts> = {
  id: 'nutrients/proof',
  at: 'feed/shelf',
  source: 'Balance.solution',
  judged: ({ found }, _, terms) =>
    Number.isFinite(found.gap) && found.gap <= PROVED
      ? [judge(proof.id, quantity(found.gap, '1'), { ...terms, must: { max: PROVED } })]
      : [unknown(proof.id, { ...terms, needs: ['feed/targets', 'feed/limits'] })],
}

const ammonium: Check<BatchFacts> = {
  id: 'nutrients/ammonium-share',
  at: 'feed/ammoniumShare',
  source: feedPractice.source,
  judged: ({ predicted, problem }, plan, terms) => [
    judge(ammonium.id, quantity(predicted.ammoniumShare, '1'), {
      ...terms,
      want: { max: problem.ammoniumShare ?? 1 },
      levers: shareLevers(plan),
    }),
  ],
}

/** Elements that no target names and nothing brings. */
const traces: Check<BatchFacts> = {
  id: 'nutrients/traces',
  at: 'feed/targets',
  source: feedPractice.source,
  judged: ({ reached_g_m3 }, _, terms) => {
    const missing = (['Fe', 'Mn', 'Zn', 'B', 'Cu', 'Mo'] as const).filter((n) => reached_g_m3[n] <= 0)
    const slots = { list: missing.join(', ') }
    return [judge(traces.id, quantity(missing.length, 'count'), { ...terms, want: { max: 0 }, slots })]
  },
}

/** Doses too small for the scale. */
const weighable: Check<BatchFacts> = {
  id: 'nutrients/weighable',
  at: 'feed/fineScale',
  source: feedPractice.source,
  judged: ({ doses }, _, terms) => {
    if (!isKnown(doses)) return [unknown(weighable.id, { ...terms, needs: doses.needs })]
    const weak = doses.known.filter(({ weakStock }) => weakStock !== null)
    const least = weak.reduce<(typeof weak)[number] | null>((a, b) => (a && a.exact_kg < b.exact_kg ? a : b), null)
    const stock = least?.weakStock
    const slots: Record<string, FindingSlot> =
      least && stock
        ? {
            ...{ name: least.id, dose: quantity(least.exact_kg, 'kg'), step: quantity(least.step_kg, 'kg') },
            ...{ dissolve: quantity(stock.dissolve_kg, 'kg'), draw: quantity(stock.draw_m3, 'm3') },
            ...{
              volume: quantity(stock.volume_m3, 'm3'),
              thinned: { phrase: stock.thin_m3 === null ? 'weak-plain' : 'weak-thinned' },
            },
          }
        : {}
    return [judge(weighable.id, quantity(weak.length, 'count'), { ...terms, want: { max: 0 }, slots })]
  },
}

/** What phosphoric acid alone would bring while it takes the alkalinity. */
const acidPhosphorus: Check<BatchFacts> = {
  id: 'nutrients/acid-phosphorus',
  at: 'feed/shelf',
  source: 'Balance.solution',
  judged: ({ acids, problem, reached_g_m3 }, plan, terms) => {
    const acid = acids.find(({ brings_g_m3 }) => brings_g_m3.P > 0)
    const target = problem.targets.find(({ nutrient }) => nutrient === 'P')
    if (!acid || !target) return []
    const slots = {
      ...{
        acid: acid.product.id,
        dose: quantity(acid.lasting_mol_m3, 'mol_m3'),
        got: quantity(reached_g_m3.P, 'g_m3'),
      },
      alkalinity: quantity(acid.alkalinityBefore_mol_m3, 'eq_m3'),
    }
    const want = { max: target.wanted_g_m3 * targetBands.rows.main.wantHigh }
    const measured = quantity(acid.brings_g_m3.P, 'g_m3')
    return [judge(acidPhosphorus.id, measured, { ...terms, want, slots, levers: shareLevers(plan) })]
  },
}

/** Names of targets and limits that no element has. */
const unread: Check<BatchFacts> = {
  id: 'nutrients/unread-target',
  at: 'feed/targets',
  source: 'Stoichiometry',
  judged: ({ unreadTargets }, _, terms) => {
    const slots = { list: unreadTargets.slice(0, 6).join(', ') }
    const measured = quantity(unreadTargets.length, 'count')
    return unreadTargets.length === 0 ? [] : [judge(unread.id, measured, { ...terms, want: { max: 0 }, slots })]
  },
}

export const batchChecks: readonly Check<BatchFacts>[] = [
  element,
  bounds,
  cheapest,
  proof,
  ammonium,
  traces,
  weighable,
  acidPhosphorus,
  unread,
]

/** Entries of the shelf that cannot be used as they stand. */
export function shelfEntries(plan: Plan, { unread }: ShelfFacts): Finding[] {
  if ((plan.feed?.shelf ?? []).length === 0) return []
  const terms = { source: feedPractice.source, must: { max: 0 } }
  if (unread.length === 0) return [judge('nutrients/shelf-entry', quantity(0, 'count'), { ...terms, at: 'feed/shelf' })]
  return unread.map(({ at, name, strength, problem }) => {
    const of: FindingSlot = strength === null ? { phrase: 'nothing' } : Number((strength * 100).toPrecision(4))
    const slots = { name, problem: { phrase: `shelf-${problem}`, with: { name, strength: of } } }
    return judge('nutrients/shelf-entry', quantity(1, 'count'), { ...terms, at, slots })
  })
}
