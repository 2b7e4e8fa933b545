import { isKnown, type Known, orNull } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { safetyLengths } from '../../tables/exposure.ts'
import type { BuildFacts } from '../build/index.ts'
import type { CutsFacts } from '../cuts/index.ts'
import type { LayoutFacts } from '../layout/index.ts'
import type { StructureFacts } from '../structure/index.ts'
import type { TemplatesFacts } from '../templates/index.ts'
import { consumableParts, type JointNeeds, jointNeeds } from './consumables.ts'
import type { Part, PartKind, Substitute } from './part.ts'
import { stepsBy, type Tool, toolsOf } from './tools.ts'
import { columnParts, hoseParts, type Numbers, pipeParts, standParts, tankParts } from './tower-parts.ts'

export type { JointNeeds, Part, PartKind, Substitute, Tool }

/** What the parts of a plan cost, as far as the plan states prices. */
export interface Total {
  /** Sum of the parts with a price, spares left out. */
  readonly known_money: number
  /** Spares of the parts with a price. */
  readonly spares_money: number
  /** Bought parts without a price, by id. */
  readonly unpriced: readonly string[]
  /** Fields of the plan that would state those prices. */
  readonly priceAt: readonly string[]
}

export interface PartsFacts {
  readonly parts: readonly Part[]
  readonly tools: readonly Tool[]
  readonly joints: JointNeeds | null
  readonly total: Total
  readonly currency: string | null
}

export interface PartsNeighbours {
  readonly layout: Known<LayoutFacts>
  readonly templates: Known<TemplatesFacts>
  readonly cuts: CutsFacts
  readonly build: Known<BuildFacts>
  readonly structure: StructureFacts | null
}

/** Sum of what has a price, and what has none. */
export function totalOf(parts: readonly Part[]): Total {
  const bought = parts.filter((p) => p.from === 'shop' && p.pricedWith === null)
  const unpriced = bought.filter((p) => p.price_money === null)
  const sum = (of: (p: Part) => number) => bought.reduce((total, p) => total + of(p), 0)
  return {
    known_money: sum((p) => p.price_money ?? 0),
    spares_money: sum((p) => p.spares * (p.unit_money ?? 0)),
    unpriced: unpriced.map((p) => p.id),
    priceAt: [...new Set(unpriced.flatMap((p) => (p.priceAt === null ? [] : [p.priceAt])))],
  }
}

/** Load of the strap to be bought: of gust and people the greater. */
function strapLoad(structure: StructureFacts | null): number | null {
  const tipping = structure === null ? null : orNull(structure.tipping)
  return tipping === null ? null : Math.max(tipping.strap.wind_N, tipping.strap.people_N)
}

function numbersOf(plan: Plan, layout: LayoutFacts, structure: StructureFacts | null): Numbers {
  const columns = plan.towers?.count ?? 1
  const empty = new Set((plan.column?.sites?.empty ?? []).filter((n) => n <= layout.sites.length)).size
  const sites = columns * layout.sites.length
  const tall = (plan.column?.length_m ?? 0) > safetyLengths.rows['strap-above'].limit_m
  return {
    columns,
    tanks: Math.ceil(columns / (plan.towers?.perPump ?? columns)),
    sites,
    planted: sites - columns * empty,
    strap: plan.column?.base?.anchored === true || tall,
    strap_N: strapLoad(structure),
  }
}

/** The name by which steps speak of a part: fittings of all kinds as one, hoses of all bores as one. */
export const stepPart = (id: string): string =>
  id.startsWith('fitting-') || id === 'coupling' || id === 'return-pipe'
    ? 'fittings'
    : id.startsWith('hose-')
      ? 'hose'
      : id

/** Everything to buy, make and have at hand; needs the layout, the rest as far as it is known. */
export function partsFacts(plan: Plan, near: PartsNeighbours): Known<PartsFacts> {
  if (!isKnown(near.layout)) return near.layout
  const n = numbersOf(plan, near.layout.known, near.structure)
  const [templates, build] = [orNull(near.templates), orNull(near.build)]
  const numbers = build === null ? n : { ...n, strap: build.steps.some((s) => s.id === 'strap') }
  const uses = new Set(build?.steps.flatMap((s) => s.parts) ?? [])
  const joints = jointNeeds(plan, templates, n.sites, uses)
  const all = [
    ...pipeParts(plan, near.cuts),
    ...columnParts(plan, numbers),
    ...tankParts(plan, numbers),
    ...hoseParts(plan, numbers, near.cuts),
    ...standParts(plan, numbers),
    ...consumableParts(plan, numbers, build, joints),
  ]
  const byPart = stepsBy(build?.steps ?? [], (s) => s.parts)
  const parts = all.map((p) => ({ ...p, steps: byPart.get(stepPart(p.id)) ?? [] }))
  return {
    known: {
      parts,
      tools: toolsOf(plan, build, templates),
      joints,
      total: totalOf(parts),
      currency: plan.prices?.currency ?? null,
    },
  }
}
