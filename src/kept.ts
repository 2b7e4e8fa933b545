/** The facts of a plan, and what of them is kept for a plan that differs in little: what asks the same is not computed again. */
import type { BuildFacts } from './disciplines/build/index.ts'
import type { CutsFacts } from './disciplines/cuts/index.ts'
import type { HydraulicsFacts } from './disciplines/hydraulics/index.ts'
import type { LayoutFacts } from './disciplines/layout/index.ts'
import { feedAsked, type NutrientsFacts, nutrientsFacts, type TankUse } from './disciplines/nutrients/index.ts'
import type { PartsFacts } from './disciplines/parts/index.ts'
import type { PowerFacts } from './disciplines/power/index.ts'
import type { ReservoirFacts, TankFacts } from './disciplines/reservoir/index.ts'
import { oldestWeek, type StructureFacts } from './disciplines/structure/index.ts'
import type { JointRoom, PocketFacts, TemplatesFacts } from './disciplines/templates/index.ts'
import { type DayFacts, dayFacts, heatNeeds, type WaterFacts } from './disciplines/water/index.ts'
import { isKnown, type Known, orNull } from './plan/known.ts'
import type { Plan } from './plan/plan.ts'

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

/** What of the job is left out where only a part of it is asked for. */
export interface EvaluateOptions {
  /** The solution through a hot and a cold day, the dearest of all facts. */
  readonly day?: boolean
  /** A plan whose facts are known: its feed is taken over where nothing that feeds differs. */
  readonly before?: { readonly plan: Plan; readonly facts: Facts }
}

/** What the feed needs to know of the tank. */
export function tankUse({ tank, reservoir }: Pick<Facts, 'tank' | 'reservoir'>): TankUse {
  const use = isKnown(reservoir) ? orNull(reservoir.known.use_m3_d) : null
  const fill = isKnown(tank) ? orNull(tank.known.fill) : null
  return { fill_m3: fill?.volume_m3 ?? null, use_m3_d: use && { low: use.low, high: use.high } }
}

/** The feed, or that of the plan before where the same was asked of it. */
export function feedOf(plan: Plan, tank: TankUse, before: EvaluateOptions['before']): NutrientsFacts {
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

/** How a column is held says nothing of its pipe. */
function withoutHold({ column, ...plan }: Plan): Plan {
  if (column?.base === undefined) return column === undefined ? plan : { ...plan, column }
  const { anchored: _, ballast_kg: __, strapHeight_m: ___, strapLoad_N: ____, ...base } = column.base
  return { ...plan, column: { ...column, base } }
}

const asked = (plan: Plan, beside: ReadonlySet<string>): string =>
  JSON.stringify(Object.entries(withoutHold(plan)).filter(([section]) => !beside.has(section)))

const asksOfJoint = (plan: Plan): string => asked(plan, BESIDE_THE_JOINT)

/** Sections that warm and cool nothing; what they do to flow and film arrives as facts. */
const BESIDE_THE_DAY = new Set<string>([
  'name',
  'note',
  'change',
  'water',
  'drain',
  'distributor',
  'stock',
  'tools',
] satisfies (keyof Plan)[])

type DayGiven = Parameters<typeof dayFacts>[1]

/** What the day needs of the facts. */
export const dayGiven = (
  facts: Pick<Facts, 'tank' | 'layout' | 'templates' | 'water'> & {
    readonly hydraulics: Pick<HydraulicsFacts, 'column_m3_s' | 'film'>
  },
  week: number,
): DayGiven => ({
  ...heatNeeds({
    tank: facts.tank,
    flow: facts.hydraulics.column_m3_s,
    film: facts.hydraulics.film,
    layout: facts.layout,
    templates: orNull(facts.templates),
  }),
  sky: facts.water.sky,
  week,
})

/** The day, or that of the plan before where nothing that warms or cools differs. */
export function dayOf(plan: Plan, given: DayGiven, before: EvaluateOptions['before']): Known<DayFacts> {
  const asksOf = (p: Plan, g: DayGiven) => JSON.stringify([asked(p, BESIDE_THE_DAY), g])
  const day = before?.facts.day ?? null
  const same =
    before && day && asksOf(plan, given) === asksOf(before.plan, dayGiven(before.facts, oldestWeek(before.plan)))
  return same ? day : dayFacts(plan, given)
}

/** The facts of the plan before, where pipes, joints and sites are the same in both. */
export function sameJoint(plan: Plan, before: EvaluateOptions['before']): Facts | null {
  return before && asksOfJoint(plan) === asksOfJoint(before.plan) ? before.facts : null
}
