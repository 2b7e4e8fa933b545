import { isKnown } from '../../plan/known.ts'
import { columnMesh } from './column.ts'
import { cupOf, jointStub, type SolidInput } from './makers.ts'
import { boxOf } from './measure.ts'
import type { Mesh } from './mesh.ts'
import type { Made, Remark, SolidId, SolidPart } from './part.ts'
import { baked, type Node, type Scene, sceneOf } from './scene.ts'

/** The pipe, with its holes where the sites are stubs; `because` where holes meet. */
interface Pipework {
  readonly mesh: Mesh
  readonly plain: boolean
}

function pipework(given: SolidInput): Pipework | Exclude<Made, { readonly parts: unknown }> {
  const { plan, facts, error_m } = given
  const { layout, templates, room } = facts
  if (!isKnown(layout)) return layout
  const stubs = (plan.column?.sites?.method ?? 'stub') === 'stub'
  if (stubs && !isKnown(templates)) return templates
  const joint = stubs && isKnown(templates) ? templates.known.joint : null
  const pipe = joint?.column ?? (isKnown(room) ? room.known.column : plan.column?.pipe)
  if (pipe === undefined) return { needs: ['column/pipe'] }
  const { outside_m, bore_m } = pipe
  const sites = layout.known.sites.map((s) => ({
    turn_rad: s.turn_rad,
    height_m: s.mark_m - (joint?.markRise_m ?? 0),
  }))
  const length_m = layout.known.columnLength_m
  const hole = joint?.hole ?? null
  const mesh = columnMesh({ outside_m, bore_m, length_m, hole, cut: joint?.cut ?? 'axis', sites, error_m })
  return mesh === null ? { because: 'why-holes-meet' } : { mesh, plain: hole === null }
}

/** A part to look at: it stands as it stands in the tower. */
function shown(id: SolidId, scene: Scene, remarks: readonly Remark[]): SolidPart {
  const { low, high } = boxOf(baked(scene))
  const size_m = [high[0] - low[0], high[1] - low[1], high[2] - low[2]] as const
  return { id, name: id as 'column' | 'tower', scene, size_m, printed: false, fits: null, wetted: false, remarks }
}

export function columnPart(given: SolidInput): Made {
  const pipe = pipework(given)
  if (!('mesh' in pipe)) return pipe
  return { parts: [shown('column', sceneOf('column', pipe.mesh), pipe.plain ? [{ key: 'sites-plain' }] : [])] }
}

/**
 * The whole tower: column, a stub at each site, the cup hung in the top. One mesh for all stubs. What the plan does not
 * tell is left out of it. Ring, riser and tank are not part of it.
 */
export function towerPart(given: SolidInput): Made {
  const pipe = pipework(given)
  if (!('mesh' in pipe)) return pipe
  const { layout, templates } = given.facts
  const joint = !pipe.plain && isKnown(templates) ? templates.known.joint : null
  const stub = joint === null ? null : jointStub(joint, given.error_m)
  const cup = cupOf(given)
  const hung = 'known' in cup ? cup.known : null
  const meshes = [
    { name: 'column', mesh: pipe.mesh },
    ...(stub === null ? [] : [{ name: 'stub', mesh: stub }]),
    ...(hung === null ? [] : [{ name: 'distributor', mesh: hung }]),
  ]
  const at = (name: string) => meshes.findIndex((m) => m.name === name)
  const nodes: Node[] = [{ name: 'column', mesh: 0, turn_rad: 0, rise_m: 0 }]
  if (isKnown(layout)) {
    const { sites, columnLength_m } = layout.known
    if (stub !== null && joint !== null)
      for (const s of sites)
        nodes.push({
          name: `site ${s.number}`,
          mesh: at('stub'),
          turn_rad: s.turn_rad,
          rise_m: s.mark_m - joint.markRise_m,
        })
    if (hung !== null) {
      const inside = (given.plan.distributor?.diameter_m ?? 0) < boreOf(given)
      const rise_m = columnLength_m - (inside ? (given.plan.distributor?.depth_m ?? 0) : 0)
      nodes.push({ name: 'distributor', mesh: at('distributor'), turn_rad: 0, rise_m })
    }
  }
  return { parts: [shown('tower', { meshes, nodes }, pipe.plain ? [{ key: 'sites-plain' }] : [])] }
}

const boreOf = ({ plan, facts }: SolidInput): number =>
  (isKnown(facts.room) ? facts.room.known.column.bore_m : plan.column?.pipe?.bore_m) ?? 0
