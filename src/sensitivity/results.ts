/** The results of a plan that people act on, each with the finding that judges it. */
import type { Facts } from '../evaluate.ts'
import type { Unit } from '../kernel/units.ts'
import { isKnown, type Known } from '../plan/known.ts'
import type { Plan } from '../plan/plan.ts'

interface Range {
  readonly low: number
  readonly high: number
}

/** A number that a plan comes to. */
export interface Result {
  readonly id: ResultId
  readonly unit: Unit
  /** Findings that judge it. */
  readonly findings: readonly string[]
  /** The number or its band; what is missing for it; null where the plan does not ask for it. */
  readonly of: (plan: Plan, facts: Facts) => Known<number | Range> | null
}

export type ResultId = (typeof resultIds)[number]

export const resultIds = [
  ...(['flow', 'overflow', 'wet', 'usable', 'days', 'dry', 'hot', 'oxygen', 'tips', 'floor'] as const),
  ...(['highest', 'conductivity', 'pH', 'energy', 'price'] as const),
] as const

/** A number of facts that may be missing. */
const of = <F, N>(facts: Known<F>, pick: (known: F) => N): Known<N> =>
  isKnown(facts) ? { known: pick(facts.known) } : facts

const chain = <F, N>(facts: Known<F>, pick: (known: F) => Known<N>): Known<N> =>
  isKnown(facts) ? pick(facts.known) : facts

/** What there is to say only where the plan asks for it. */
const asked = <N>(facts: Known<N | null>): Known<N> | null =>
  isKnown(facts) && facts.known === null ? null : (facts as Known<N>)

const largest = (values: readonly number[]): number => values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY)

const water: readonly Result[] = [
  {
    id: 'flow',
    unit: 'm3_s',
    findings: ['hydraulics/column-flow', 'hydraulics/film-closes', 'hydraulics/riser-speed'],
    of: (_, f) => of(f.hydraulics.flow, (flow) => flow.least_m3_s),
  },
  {
    id: 'overflow',
    unit: 'm',
    findings: ['hydraulics/distributor-overflow', 'hydraulics/distributor-clogged'],
    of: (_, f) =>
      asked(
        of(f.hydraulics.distributor, (d) =>
          d === null ? null : { low: d.depth_m - d.head_m.high, high: d.depth_m - d.head_m.low },
        ),
      ),
  },
  {
    id: 'wet',
    unit: 'share',
    findings: ['hydraulics/dry-sites', 'hydraulics/drop-sites', 'hydraulics/dry-sites-worst'],
    of: (_, f) =>
      of(f.hydraulics.wetting, ({ asDrawn, dry }) => {
        const count = Math.max(1, asDrawn.length)
        return { low: 1 - dry.high / count, high: 1 - dry.low / count }
      }),
  },
  {
    id: 'usable',
    unit: 'm3',
    findings: ['reservoir/low-below-fill'],
    of: (_, f) => chain(f.reservoir, (r) => r.usable_m3),
  },
  {
    id: 'days',
    unit: 'd',
    findings: ['reservoir/days', 'nutrients/dump-day'],
    of: (_, f) =>
      chain(f.reservoir, (r) =>
        of(r.days, (q) => ('value' in q ? q.value : { low: q.low, high: q.high }) as number | Range),
      ),
  },
  {
    id: 'dry',
    unit: 's',
    findings: ['hydraulics/timer-off', 'hydraulics/power-cut'],
    of: (plan, f) => (plan.crops === undefined ? { needs: ['crops'] } : { known: f.hydraulics.stop.worst.dry_s }),
  },
]

const day: readonly Result[] = [
  {
    id: 'hot',
    unit: 'C',
    findings: ['water/hot', 'water/legionella-warm'],
    of: (_, f) =>
      asked(
        f.day === null
          ? { known: null }
          : of(f.day, (d) => ({
              low: Math.min(largest(d.hotFull.course.temperature_C), largest(d.hotLow.course.temperature_C)),
              high: Math.max(largest(d.hotFull.course.temperature_C), largest(d.hotLow.course.temperature_C)),
            })),
      ),
  },
  {
    id: 'oxygen',
    unit: 'g_m3',
    findings: ['water/oxygen'],
    of: (_, f) =>
      asked(f.day === null ? { known: null } : chain(f.day, (d) => of(d.oxygen, (o) => o.foot_g_m3 as number | Range))),
  },
]

const rest: readonly Result[] = [
  {
    id: 'tips',
    unit: '1',
    findings: ['structure/tips-full', 'structure/tips-low', 'structure/strap', 'structure/base-width'],
    of: (_, f) => asked(of(f.structure.tipping, (t) => t.worst.ratio)),
  },
  {
    id: 'floor',
    unit: 'kg_m2',
    findings: ['structure/floor'],
    of: (_, f) => of(f.structure.floor, (floor) => floor.judged.load_kg_m2),
  },
  {
    id: 'highest',
    unit: 'm',
    findings: ['layout/top-margin', 'layout/marks'],
    of: (_, f) => of(f.layout, (l) => l.lastMark_m),
  },
  {
    id: 'conductivity',
    unit: 'S_m',
    findings: ['nutrients/conductivity', 'nutrients/crop-strength'],
    of: (_, f) => of(f.nutrients.batch, (b) => b.predicted.conductivity_S_m),
  },
  {
    id: 'pH',
    unit: '1',
    findings: ['nutrients/ph', 'nutrients/ph-rise'],
    of: (_, f) => of(f.nutrients.batch, (b) => b.predicted.pHInAir),
  },
  {
    id: 'energy',
    unit: 'money',
    findings: ['power/cost'],
    of: (_, f) => chain(f.power.energy, (e) => of(e.cost, (c) => c.month_money)),
  },
  {
    id: 'price',
    unit: 'money',
    findings: ['parts/prices'],
    of: (plan, f) => (plan.prices === undefined ? { needs: ['prices'] } : of(f.parts, (p) => p.total.known_money)),
  },
]

/** In the order of the water, then what stands, feeds and costs. */
export const results: readonly Result[] = [...water, ...day, ...rest]

/** The result that a finding judges; null where none of them does. */
export const resultOfFinding = (id: string): ResultId | null => results.find((r) => r.findings.includes(id))?.id ?? null
