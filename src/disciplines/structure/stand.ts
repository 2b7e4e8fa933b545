import { isKnown, type Known, needed } from '../../plan/known.ts'
import { asBuilt, type Pipe } from '../../plan/pipe.ts'
import type { Plan } from '../../plan/plan.ts'
import { bodies as stores } from '../../tables/heat.ts'
import { materials } from '../../tables/materials.ts'
import { practiceRatios } from '../../tables/practice.ts'
import { pipePlastics } from '../../tables/pvc-strength.ts'
import type { LayoutFacts } from '../layout/index.ts'
import type { TankFacts } from '../reservoir/tank.ts'
import type { TemplatesFacts } from '../templates/index.ts'
import type { Body } from './equations-mass.ts'

/** What facts of other disciplines the stand of a tower needs. */
export interface StandNeeds {
  readonly layout: Known<LayoutFacts>
  readonly templates: TemplatesFacts | null
  readonly tank: Known<TankFacts>
}

/** Solution in the tank at a level; none where the tank does not stand under the column. */
export interface Level {
  readonly volume_m3: number
  readonly level_m: number
}

/** One base with what stands on it: a tank with its columns, or a column on a foot of its own. */
export interface StandFacts {
  readonly kind: 'through the lid' | 'flange on the lid' | 'own foot'
  readonly columns: number
  /** Height of the column's foot above the floor. */
  readonly foot_m: number
  readonly top_m: number
  readonly pipe: Pipe
  /** Everything but solution and plants, heights over the floor. */
  readonly fixed: readonly Body[]
  readonly siteHeights_m: readonly number[]
  /** Distance from the column's axis to the middle of a mouth. */
  readonly reach_m: number
  readonly tankFloor_m: number
  readonly tank: {
    readonly height_m: number
    readonly across_m: number
    readonly shape: 'round' | 'rectangular'
  } | null
  readonly fill: Level
  readonly low: Level
}

const NO_WATER: Level = { volume_m3: 0, level_m: 0 }

/** Mass per length: as printed, else reckoned with the weight that pipes are heavier than their least wall. */
export function pipeMass(pipe: Pipe): number {
  if (pipe.mass_kg_m !== null) return pipe.mass_kg_m
  const row = pipe.plastic in materials.rows ? materials.rows[pipe.plastic as keyof typeof materials.rows] : null
  const solid = row?.densityHigh_kg_m3 ?? pipePlastics.rows['pvc-u'].density_kg_m3
  const area_m2 = (Math.PI / 4) * (pipe.outside_m ** 2 - pipe.bore_m ** 2)
  const foam = pipe.foamCore ? practiceRatios.rows['foam-core-mass'].high : 1
  return (
    solid * (pipe.plastic === 'PVC-U-foam-core' ? 1 : foam) * area_m2 * practiceRatios.rows['computed-mass-load'].high
  )
}

function stubBodies(t: TemplatesFacts, layout: LayoutFacts, foot_m: number): readonly Body[] {
  const density_kg_m = pipeMass(t.joint.stubPipe)
  const area_m2 = (Math.PI / 4) * (t.joint.stubPipe.outside_m ** 2 - t.joint.stubPipe.bore_m ** 2)
  const each = (Math.max(0, t.stub.volume_m3) / area_m2) * density_kg_m
  const middle_m = layout.sites.reduce((sum, s) => sum + s.mark_m, 0) / layout.sites.length
  return [{ name: 'stubs', mass_kg: each * layout.sites.length, height_m: foot_m + middle_m }]
}

/** Water in riser and hose, which stands as high as the column while the pump runs. */
function riserBody(plan: Plan, foot_m: number): readonly Body[] {
  const { bore_m, length_m } = plan.riser ?? {}
  if (bore_m === undefined || length_m === undefined) return []
  const mass_kg = stores.rows.water.density_kg_m3 * (Math.PI / 4) * bore_m ** 2 * length_m
  return [{ name: 'riser', mass_kg, height_m: foot_m + length_m / 2 }]
}

/** Where the column's foot stands over the floor. */
function footHeight(kind: StandFacts['kind'], plan: Plan, tank: TankFacts | null): Known<number> {
  if (kind === 'own foot') return { known: 0 }
  if (tank === null) return { needs: ['reservoir/container'] }
  if (kind === 'through the lid') return { known: Math.max(0, tank.floor_m) }
  const lid = plan.reservoir?.lidHeight_m
  return lid === undefined ? { needs: ['reservoir/lidHeight'] } : { known: lid }
}

function tankBodies(plan: Plan, given: { kind: StandFacts['kind']; tank: TankFacts | null }): Known<readonly Body[]> {
  const ballast_kg = plan.column?.base?.ballast_kg ?? 0
  const ballast: Body = { name: 'ballast', mass_kg: ballast_kg, height_m: 0 }
  if (given.kind === 'own foot') return { known: [ballast] }
  const mass_kg = plan.reservoir?.mass_kg
  if (mass_kg === undefined) return { needs: ['reservoir/mass'] }
  const height_m = Math.max(0, given.tank?.floor_m ?? 0) + (given.tank?.depth_m ?? 0) / 2
  return { known: [ballast, { name: 'tank', mass_kg, height_m }] }
}

function levelsOf(kind: StandFacts['kind'], tank: TankFacts | null): Known<{ fill: Level; low: Level }> {
  if (kind === 'own foot') return { known: { fill: NO_WATER, low: NO_WATER } }
  if (tank === null) return { needs: ['reservoir/container'] }
  if (!isKnown(tank.fill)) return tank.fill
  if (!isKnown(tank.low)) return tank.low
  return { known: { fill: tank.fill.known, low: tank.low.known } }
}

const needsOf = (...all: readonly Known<unknown>[]): { readonly needs: readonly string[] } => ({
  needs: [...new Set(all.flatMap((k) => (isKnown(k) ? [] : k.needs)))],
})

export function standFacts(plan: Plan, given: StandNeeds): Known<StandFacts> {
  const c = plan.column
  const stated = needed({
    kind: ['column/base/kind', c?.base?.kind],
    pipe: ['column/pipe', c?.pipe],
    length_m: ['column/length', c?.length_m],
  })
  if (!isKnown(stated)) return stated
  const { kind, length_m } = stated.known
  const pipe = asBuilt(stated.known.pipe, {
    circumference_m: plan.measured?.columnCircumference_m,
    wall_m: plan.measured?.columnWall_m,
  })
  const tank = isKnown(given.tank) ? given.tank.known : null
  const foot = footHeight(kind, plan, tank)
  const heavy = tankBodies(plan, { kind, tank })
  const levels = levelsOf(kind, tank)
  const { layout, templates } = given
  if (!isKnown(layout) || !isKnown(foot) || !isKnown(heavy) || !isKnown(levels))
    return needsOf(layout, foot, heavy, levels)
  const foot_m = foot.known
  const columns = kind === 'own foot' ? 1 : (plan.towers?.perPump ?? plan.towers?.count ?? 1)
  const column: Body = { name: 'column', mass_kg: pipeMass(pipe) * length_m, height_m: foot_m + length_m / 2 }
  const one = [
    column,
    ...(templates === null ? [] : stubBodies(templates, layout.known, foot_m)),
    ...riserBody(plan, foot_m),
  ]
  const r = plan.reservoir
  const across_m = r?.outsideLength_m ?? r?.outsideWidth_m ?? r?.container?.footLength_m ?? 0
  const lid_m = r?.lidHeight_m ?? tank?.depth_m ?? 0
  return {
    known: {
      kind,
      columns,
      foot_m,
      top_m: foot_m + length_m,
      pipe,
      fixed: [...heavy.known, ...one.map((b) => ({ ...b, mass_kg: b.mass_kg * columns }))],
      siteHeights_m: layout.known.sites.map((s) => foot_m + s.mark_m),
      reach_m: templates?.stub.mouthReach_m ?? pipe.outside_m / 2,
      tankFloor_m: Math.max(0, tank?.floor_m ?? 0),
      tank: kind === 'own foot' ? null : { height_m: lid_m, across_m, shape: r?.container?.shape ?? 'rectangular' },
      ...levels.known,
    },
  }
}
