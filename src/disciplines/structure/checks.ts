import { type Check, checked } from '../../findings/check.ts'
import type { Finding, Lever } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { along, among, atLeast, together } from '../../findings/levers.ts'
import { band, quantity } from '../../kernel/units.ts'
import type { Plan } from '../../plan/plan.ts'
import { peopleForces, stabilityFactors } from '../../tables/stability.ts'
import { rowSource } from '../../tables/table.ts'
import { floorChecks } from './checks-floor.ts'
import { sectionChecks } from './checks-section.ts'
import type { StructureFacts } from './index.ts'
import { strappedRatio, type TippingCell, type TippingFacts } from './tipping-facts.ts'

const { 'free-standing': free, balance } = stabilityFactors.rows
const balanceSource = rowSource(stabilityFactors, 'balance')
const anchored = (plan: Plan) => plan.column?.base?.anchored === true
const ownFoot = (plan: Plan) => plan.column?.base?.kind === 'own foot'
const windy = (plan: Plan) => (plan.place?.gust_m_s ?? 0) > 0

/** Straps are rated in round figures, and tied at a round height. */
const STRAP_STEP_N = 50
const STRAP_STEP_m = 0.05

/** What must be said of a strap before it counts: what it carries, and where it is tied. */
const strapNeeds = (t: TippingFacts): readonly string[] => [
  ...(t.strap.capacity_N === null ? ['column/base/strapLoad'] : []),
  ...(t.strap.heightGiven ? [] : ['column/base/strapHeight']),
]

/** A strap that is tied, but of which nobody knows what it holds: where it decides, nothing is known. */
const untold = (plan: Plan, t: TippingFacts): boolean => anchored(plan) && strapNeeds(t).length > 0
const trusted = (plan: Plan, t: TippingFacts): boolean => anchored(plan) && strapNeeds(t).length === 0

/** A strap that carries what gust and people pull, with its height: all that makes it count, in one step. */
function strapWishes(plan: Plan, t: TippingFacts): readonly Lever[] {
  const load_N = Math.max(t.strap.people_N, t.strap.wind_N)
  if (!(load_N > (trusted(plan, t) ? t.strap.capacity_N! : 0))) return []
  return together([
    [
      { set: 'column/base/strapLoad', to: atLeast(load_N, 'N', STRAP_STEP_N) },
      ...(anchored(plan) ? [] : [{ set: 'column/base/anchored', to: true }]),
      ...(t.strap.heightGiven
        ? []
        : [{ set: 'column/base/strapHeight', to: atLeast(t.strap.height_m, 'm', STRAP_STEP_m) }]),
    ],
  ])
}

/** What a grower can do so that a tower stands: tie it, weigh it down, widen its foot. */
function levers(plan: Plan, t: TippingFacts): readonly Lever[] {
  const ballast_kg = plan.column?.base?.ballast_kg ?? 0
  const step_kg = 5
  const width_m = plan.column?.base?.footWidth_m
  return [
    ...(anchored(plan) || strapNeeds(t).length > 0 ? [] : [among('column/base/anchored', [true])]),
    ...strapWishes(plan, t),
    along('column/base/ballast', ballast_kg + 2 * t.ballast_kg + 4 * step_kg, 'kg', step_kg, ballast_kg),
    ...(ownFoot(plan) && width_m !== undefined
      ? [along('column/base/footWidth', Math.max(width_m, 2 * t.baseNeeded_m), 'm', 0.05)]
      : []),
  ]
}

const ratioOf = (plan: Plan, t: TippingFacts, cell: TippingCell): number =>
  trusted(plan, t) ? strappedRatio(t, cell) : (cell.ratio ?? 0)

/** The gust of the place against the weight, with the strap where there is one. */
const tips = (
  id: 'structure/tips-full' | 'structure/tips-low',
  of: (t: TippingFacts) => TippingCell,
  at: string,
): Check<TippingFacts> => ({
  id,
  safety: true,
  at,
  source: balanceSource,
  applies: (plan) => windy(plan) && !(id === 'structure/tips-full' && ownFoot(plan)),
  judged: (t, plan, terms) => {
    const cell = of(t)
    const ratio = ratioOf(plan, t, cell)
    const stated = {
      ...terms,
      must: { min: balance.ratio },
      want: { min: free.ratio },
      slots: {
        gust: quantity(t.gust_m_s, 'm_s'),
        volume: quantity(cell.level.volume_m3, 'm3'),
        mass: quantity(cell.mass_kg, 'kg'),
        falls: quantity(cell.falls_m_s, 'm_s'),
        strap: quantity(cell.strap_N, 'N'),
        strapHeight: quantity(t.strap.height_m, 'm'),
        ballast: quantity(t.ballast_kg, 'kg'),
      },
    }
    if (untold(plan, t) && ratio < free.ratio) return [unknown(id, { ...stated, needs: strapNeeds(t) })]
    return [judge(id, quantity(ratio, '1'), { ...stated, levers: levers(plan, t) })]
  },
})

/** Someone who hangs on or stumbles: the tank at its lowest and the plants at their lightest. */
const pushed = (
  id: 'structure/child-pull' | 'structure/lean',
  who: 'child' | 'adult',
  children: (plan: Plan) => boolean,
): Check<TippingFacts> => ({
  id,
  safety: true,
  at: 'column/base',
  source: balanceSource,
  judged: (t, plan, terms) => {
    const strap_N_m = trusted(plan, t) ? (t.strap.capacity_N ?? 0) * t.strap.height_m : 0
    const push = peopleForces.rows[who === 'child' ? 'child-pull' : 'adult-lean']
    const least = t.cells.reduce((a, b) => (b.righting_N_m < a.righting_N_m ? b : a))
    const scale = (least.righting_N_m + strap_N_m) / least.righting_N_m
    const { low, high, strap_N } = t[who]
    const stated = {
      ...terms,
      // Where children come a tower must hold; elsewhere it is to be watched.
      ...(children(plan) ? { must: { min: balance.ratio } } : { want: { min: balance.ratio } }),
      slots: {
        strap: quantity(strap_N, 'N'),
        strapHeight: quantity(t.strap.height_m, 'm'),
        force: band(push.low_N, push.high_N, 'N'),
        height: band(push.low_m, push.high_m, 'm'),
      },
    }
    if (untold(plan, t) && low < balance.ratio) return [unknown(id, { ...stated, needs: strapNeeds(t) })]
    return [judge(id, band(low * scale, high * scale, '1'), { ...stated, levers: levers(plan, t) })]
  },
})

/** Pull in the strap at the worst of levels and weeks, against what strap and anchor carry; 0 where there is none. */
const strap: Check<TippingFacts> = {
  id: 'structure/strap',
  safety: true,
  at: 'column/base/anchored',
  source: 'derived.moments',
  applies: windy,
  judged: (t, plan, terms) => {
    const pull_N = t.strap.wind_N
    const carries_N = trusted(plan, t) ? t.strap.capacity_N! : 0
    const stated = {
      ...terms,
      must: { max: carries_N },
      slots: {
        gust: quantity(t.gust_m_s, 'm_s'),
        strap: quantity(pull_N, 'N'),
        strapHeight: quantity(t.strap.height_m, 'm'),
        capacity: quantity(carries_N, 'N'),
        ballast: quantity(t.ballast_kg, 'kg'),
        falls: quantity(t.worst.falls_m_s, 'm_s'),
      },
    }
    if (untold(plan, t) && pull_N > 0) return [unknown('structure/strap', { ...stated, needs: strapNeeds(t) })]
    const higher = along('column/base/strapHeight', t.strap.height_m * 1.5, 'm', STRAP_STEP_m, t.strap.height_m)
    return [
      judge('structure/strap', quantity(pull_N, 'N'), {
        ...stated,
        levers: [...(trusted(plan, t) ? [higher] : []), ...levers(plan, t)],
      }),
    ]
  },
}

/** Width of the base against the one that would stand free in the gust. */
const baseWidth: Check<TippingFacts> = {
  id: 'structure/base-width',
  safety: true,
  at: 'column/base',
  source: rowSource(stabilityFactors, 'free-standing'),
  judged: (t, plan, terms) => {
    // Out of the wind no width is asked for.
    if (t.gust_m_s === 0) return []
    const { capacity_N, wind_N, height_m } = t.strap
    const held = trusted(plan, t) && (capacity_N ?? 0) >= wind_N
    const stated = {
      ...terms,
      at: ownFoot(plan) ? 'column/base/footWidth' : 'reservoir/outsideWidth',
      want: held ? {} : { min: t.baseNeeded_m },
      slots: {
        needed: quantity(t.baseNeeded_m, 'm'),
        gust: quantity(t.gust_m_s, 'm_s'),
        strap: quantity(wind_N, 'N'),
        strapHeight: quantity(height_m, 'm'),
      },
    }
    if (untold(plan, t) && t.base_m < t.baseNeeded_m)
      return [unknown('structure/base-width', { ...stated, needs: strapNeeds(t) })]
    return [judge('structure/base-width', quantity(t.base_m, 'm'), { ...stated, levers: levers(plan, t) })]
  },
}

const withChildren = (plan: Plan) => plan.place?.children === true || plan.place?.setting === 'school'

const tippingChecks: readonly Check<TippingFacts>[] = [
  tips('structure/tips-full', (t) => t.atFill, 'reservoir/fillVolume'),
  // Without a tank under it the age of the plants decides; with one the lowest water.
  tips('structure/tips-low', (t) => t.worst, 'column/base'),
  pushed('structure/child-pull', 'child', withChildren),
  pushed('structure/lean', 'adult', () => false),
  strap,
  baseWidth,
]

/** Whether it stands, whether its column holds, whether the floor carries it. */
export const structureFindings = (plan: Plan, facts: StructureFacts): readonly Finding[] => [
  ...checked(tippingChecks, facts.tipping, plan),
  ...checked(sectionChecks, facts.section, plan),
  ...checked(floorChecks, facts.floor, plan),
]
