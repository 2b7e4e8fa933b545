import { band, type Quantity, quantity } from '../../kernel/units.ts'
import type { Plan } from '../../plan/plan.ts'
import { measuresOf } from '../../plan/tape.ts'
import { filletUse, jointUse, packs, perJointUse } from '../../tables/consumables.ts'
import type { BuildFacts } from '../build/index.ts'
import type { TemplatesFacts } from '../templates/index.ts'
import { beadVolume, coatVolume, outlineLength } from './equations.ts'
import { type Part, part } from './part.ts'
import type { Numbers } from './tower-parts.ts'

/** What the joints need by area and length, before packs are chosen. */
export interface JointNeeds {
  readonly joints: number
  readonly area_m2: number
  readonly bead_m: number
  readonly cement_m3: Quantity | null
  readonly primer_m3: Quantity | null
  readonly epoxy_m3: Quantity | null
  readonly sealant_m3: Quantity | null
}

/** Area of one joint: a saddle holds by its ring as well as by the wall of the hole. */
function jointArea(t: TemplatesFacts): number {
  return t.joint.end.kind === 'saddle' ? t.glue.saddle_m2 : t.glue.bore_m2
}

/** What the joints of a tower with stubs need; null where the joint is not known. */
export function jointNeeds(
  plan: Plan,
  t: TemplatesFacts | null,
  sites: number,
  uses: ReadonlySet<string>,
): JointNeeds | null {
  if (t === null || plan.column?.stub?.joint === undefined) return null
  const area_m2 = sites * jointArea(t)
  const cutSquare = plan.column.stub.hole === 'square to the wall'
  const bead_m = sites * outlineLength((cutSquare ? t.holeSquare : t.holeAlong).outline)
  const coat = (id: keyof typeof jointUse.rows) => {
    const { perAreaLow_m, perAreaHigh_m } = jointUse.rows[id]
    const at = (perArea_m: number) => coatVolume({ area_m2, perArea_m })
    return uses.has(id) ? band(at(perAreaLow_m), at(perAreaHigh_m), 'm3') : null
  }
  const sealant = beadVolume({ ...filletUse.rows.bead, length_m: bead_m })
  return {
    joints: sites,
    area_m2,
    bead_m,
    cement_m3: coat('cement'),
    primer_m3: coat('primer'),
    epoxy_m3: coat('epoxy'),
    sealant_m3: uses.has('sealant') ? quantity(sealant, 'm3') : null,
  }
}

/** The smallest pack that holds it, or as many of the largest as it takes. */
export function packsFor(given: {
  readonly volume_m3: number
  readonly of: 'can' | 'cartridge'
  readonly market: 'mm' | 'in'
}): { readonly each_m3: number; readonly count: number } {
  const own = Object.values(packs.rows)
    .filter((p) => p.of === given.of && p.market === given.market)
    .map((p) => p.volume_m3)
    .sort((a, b) => a - b)
  const each_m3 = own.find((v) => v >= given.volume_m3) ?? own.at(-1)!
  return { each_m3, count: Math.max(1, Math.ceil(given.volume_m3 / each_m3)) }
}

const most = (q: Quantity): number => ('value' in q ? q.value : q.high)

/** Packs of what the joints need, with what is rubbed and wiped away. */
export function consumableParts(plan: Plan, n: Numbers, build: BuildFacts | null, needs: JointNeeds | null): Part[] {
  const market = measuresOf(plan)
  const uses = new Set(build?.steps.flatMap((s) => s.parts) ?? [])
  const pack = (
    id: string,
    of: 'can' | 'cartridge',
    need: Quantity | null,
    price: number | undefined,
    priceAt?: string,
  ) => {
    if (need === null) return []
    const { each_m3, count } = packsFor({ volume_m3: most(need), of, market })
    const sizes = { each: quantity(each_m3, 'm3'), needed: need }
    const where = priceAt === undefined ? {} : { priceAt }
    return [part(id, 'consumable', { count: quantity(count, 'count'), sizes, unit_money: price, ...where })]
  }
  const { alcohol_m3, sheets_count } = perJointUse.rows.joint
  return [
    ...(needs === null
      ? []
      : [
          ...pack('cement', 'can', needs.cement_m3, plan.prices?.cement, 'prices/cement'),
          ...pack('primer', 'can', needs.primer_m3, plan.prices?.primer, 'prices/primer'),
          ...pack('epoxy', 'can', needs.epoxy_m3, undefined),
          ...pack('sealant', 'cartridge', needs.sealant_m3, plan.prices?.sealant, 'prices/sealant'),
        ]),
    ...(uses.has('abrasive')
      ? [part('abrasive', 'consumable', { count: quantity(Math.ceil(n.sites * sheets_count), 'count') })]
      : []),
    ...(uses.has('alcohol') ? [part('alcohol', 'consumable', { count: quantity(n.sites * alcohol_m3, 'm3') })] : []),
    ...(uses.has('grommet')
      ? [part('grommet', 'fixing', { count: quantity(n.sites, 'count'), spares: 'grommet' })]
      : []),
    ...(uses.has('weld-rod') && needs !== null
      ? [part('weld-rod', 'consumable', { count: quantity(needs.bead_m, 'm') })]
      : []),
  ]
}
