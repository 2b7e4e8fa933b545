import { evaluate } from '../../../evaluate.ts'
import { parsePlan } from '../../../plan/document.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import { solidSet } from '../../../render/solids/solids.ts'
import { standing } from '../../../render/solids/standing.ts'
import type { SolidKey } from '../../../render/words/en/solids.ts'

/** One mesh of the tower and the places at which it stands. */
export interface SolidShape {
  readonly name: string
  readonly positions: Float32Array
  readonly indices: Uint32Array
  readonly places: readonly { readonly turn_rad: number; readonly rise_m: number }[]
}

export type SolidAnswer =
  | { readonly kind: 'solid'; readonly shapes: readonly SolidShape[] }
  | { readonly kind: 'absent'; readonly needs: readonly string[]; readonly because: SolidKey | null }
  | { readonly kind: 'failed'; readonly message: string }

function solidOf(document: PlanDocument): SolidAnswer {
  const { plan } = parsePlan(document)
  const { facts } = evaluate(plan, { day: false })
  const { parts, absent } = solidSet({ plan, facts, only: ['tower'] })
  const [part] = parts
  if (part === undefined) return { kind: 'absent', needs: absent[0]?.needs ?? [], because: absent[0]?.because ?? null }
  const shapes = part.scene.meshes.map(({ name, mesh }, i): SolidShape => {
    const places = part.scene.nodes.filter((n) => n.mesh === i).map(({ turn_rad, rise_m }) => ({ turn_rad, rise_m }))
    return { name, positions: mesh.positions, indices: mesh.indices, places }
  })
  return { kind: 'solid', shapes: [...shapes, ...standing({ plan, facts }).map((s) => ({ ...s, ...s.mesh }))] }
}

self.onmessage = ({ data }: MessageEvent<PlanDocument>): void => {
  try {
    self.postMessage(solidOf(data))
  } catch (error) {
    self.postMessage({ kind: 'failed', message: String(error) } satisfies SolidAnswer)
  }
}
