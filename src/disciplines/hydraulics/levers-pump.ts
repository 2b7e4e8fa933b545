/** What a grower can do about a pump that is too weak: buy the one that would do, feed fewer columns, build lower. */
import type { Lever, Wish } from '../../findings/finding.ts'
import { among, atLeast, atMost, together } from '../../findings/levers.ts'
import { isKnown } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { waterPathPractice } from '../../tables/water-path.ts'
import { distributorSuggestions, type HydraulicsFacts } from './index.ts'
import { pumpHeadUp } from './levers.ts'
import { choiceWishes } from './levers-distributor.ts'
import { type Asked, mostFlow, type PumpBox, pumpsToBuy } from './pump-to-buy.ts'
import { columnsOf, tubesOf } from './tubes.ts'

/** Steps in which pumps are sold. */
const HEAD_STEP_m = 0.1
const FLOW_STEP_m3_s = 0.05 / 3600
const LENGTH_STEP_m = 0.001

type Wishes = readonly [Wish, ...Wish[]]

/** A new pump by its box; what was known of the old one goes with it. */
function newPump(plan: Plan, box: PumpBox): Wishes {
  const old = (['curve', 'tests', 'worn'] as const).filter((key) => plan.pump?.[key] !== undefined)
  return [
    { set: 'pump/maxHead', to: atLeast(box.head_m, 'm', HEAD_STEP_m) },
    { set: 'pump/maxFlow', to: atLeast(box.flow_m3_s, 'm3_s', FLOW_STEP_m3_s) },
    ...old.map((key) => ({ set: `pump/${key}`, to: null })),
  ]
}

interface Offer {
  readonly wishes: Wishes
  /** The most that a column would get, rounded up to what is sold. */
  readonly most_m3_s: number
}

/** Pumps for the tubes as they are. */
function offers(plan: Plan, asked: Asked, wanted_m3_s: number): readonly Offer[] {
  return pumpsToBuy(asked, wanted_m3_s).map((box) => ({
    wishes: newPump(plan, box),
    most_m3_s: mostFlow(asked, { head_m: box.head_m + HEAD_STEP_m, flow_m3_s: box.flow_m3_s + FLOW_STEP_m3_s }),
  }))
}

/** Bore at which the water runs calmly; none where it does already. */
function calmBore(plan: Plan, total_m3_s: number): number | null {
  const bore_m = Math.sqrt((4 * total_m3_s) / (Math.PI * waterPathPractice.rows.riserSpeed.value))
  return bore_m > (plan.riser?.bore_m ?? 0) ? bore_m : null
}

/** The plan otherwise, with what is changed in it, for which a pump is sought as well. */
interface Variant {
  readonly plan: Plan
  readonly wishes: readonly Wish[]
}

const WIDENINGS = 3

/** The hose wide enough for the pump that it then needs; null where it is already, or where none is. */
function wider(v: Variant, given: Omit<Asked, 'tubes'>, wanted_m3_s: number): Variant | null {
  let [plan, bore_m] = [v.plan, 0]
  for (let i = 0; i < WIDENINGS; i++) {
    const tubes = tubesOf(plan)
    const first = isKnown(tubes) ? offers(plan, { ...given, tubes: tubes.known }, wanted_m3_s)[0] : undefined
    const wide_m = first === undefined ? null : calmBore(plan, first.most_m3_s * columnsOf(plan))
    if (wide_m === null) break
    bore_m = wide_m + LENGTH_STEP_m
    plan = { ...plan, riser: { ...plan.riser, bore_m } }
  }
  if (bore_m === 0) return null
  return { plan, wishes: [...v.wishes, { set: 'riser/bore', to: atLeast(bore_m, 'm', LENGTH_STEP_m) }] }
}

/** Columns shared out evenly among more pumps. */
function morePumps(plan: Plan): readonly Variant[] {
  const [count, now] = [plan.towers?.count ?? 1, columnsOf(plan)]
  return Array.from({ length: Math.max(0, now - 1) }, (_, i) => now - 1 - i)
    .filter((n) => count % n === 0)
    .map((perPump) => ({
      plan: { ...plan, towers: { ...plan.towers, perPump } },
      wishes: [{ set: 'towers/perPump', to: perPump }],
    }))
}

/** A pump that gives every column its flow; where hose or distributor would not bear it, with one that does. */
export function strongerPump(plan: Plan, h: HydraulicsFacts): readonly Lever[] {
  const wanted_m3_s = plan.riser?.neededFlow_m3_s
  if (wanted_m3_s === undefined || !isKnown(h.tubes) || !isKnown(h.lift)) return pumpHeadUp(plan)
  const given = { lift: h.lift.known, water: h.water }
  const asIs: Variant = { plan, wishes: [] }
  const wide = wider(asIs, given, wanted_m3_s)
  const variants = [asIs, ...(wide === null ? [] : [wide]), ...morePumps(plan)]
  const all = variants.flatMap((v): readonly Offer[] => {
    const tubes = tubesOf(v.plan)
    if (!isKnown(tubes)) return []
    const found = offers(plan, { ...given, tubes: tubes.known }, wanted_m3_s)
    return found.map((o) => ({ ...o, wishes: [...o.wishes, ...v.wishes] }))
  })
  const facts = isKnown(h.distributor) ? h.distributor.known : null
  const spread = all.flatMap(({ wishes, most_m3_s }): Wishes[] => {
    if (facts === null || most_m3_s <= facts.full_m3_s) return []
    const choices = distributorSuggestions(plan, { facts, most_m3_s, water: h.water })
    return choiceWishes(plan, facts.circle_m, choices.slice(0, 1)).map((holes) => [...wishes, ...holes])
  })
  return together([...all.map((o) => o.wishes), ...spread])
}

/** More pumps for the same columns, or fewer columns. */
export function fewerColumns(plan: Plan): readonly Lever[] {
  const now = columnsOf(plan)
  const fewer = Array.from({ length: Math.max(0, now - 1) }, (_, i) => now - 1 - i)
  if (fewer.length === 0) return []
  const one = plan.towers?.count === now
  return [
    among('towers/perPump', fewer),
    ...(one
      ? together(
          fewer.map((n) => [
            { set: 'towers/count', to: n },
            { set: 'towers/perPump', to: n },
          ]),
        )
      : []),
  ]
}

/** The column shorter by one ring after the other, and its riser with it. */
export function lowerColumn(plan: Plan): readonly Lever[] {
  const { sites, length_m } = plan.column ?? {}
  const { outletHeight_m, length_m: riser_m } = plan.riser ?? {}
  const { rings, pitch_m } = sites ?? {}
  if (rings === undefined || pitch_m === undefined || length_m === undefined) return []
  if (outletHeight_m === undefined || riser_m === undefined) return []
  const least_m = Math.min(length_m, outletHeight_m, riser_m)
  const shorter = Array.from({ length: rings - 1 }, (_, i) => i + 1).filter((n) => n * pitch_m < least_m)
  const measure = (now_m: number, n: number) => atMost(now_m - n * pitch_m, 'm', LENGTH_STEP_m)
  return together(
    shorter.map((n) => [
      { set: 'column/sites/rings', to: rings - n },
      { set: 'column/length', to: measure(length_m, n) },
      { set: 'riser/outletHeight', to: measure(outletHeight_m, n) },
      { set: 'riser/length', to: measure(riser_m, n) },
    ]),
  )
}
