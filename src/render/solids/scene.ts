import { turned } from './measure.ts'
import type { Mesh } from './mesh.ts'

/** One place at which a mesh of a scene stands: turned about z, then moved. */
export interface Node {
  readonly name: string
  readonly mesh: number
  readonly turn_rad: number
  readonly rise_m: number
}

/** Meshes and where they stand; stubs share one mesh. */
export interface Scene {
  readonly meshes: readonly { readonly name: string; readonly mesh: Mesh }[]
  readonly nodes: readonly Node[]
}

/** A single mesh as a scene. */
export const sceneOf = (name: string, mesh: Mesh): Scene => ({
  meshes: [{ name, mesh }],
  nodes: [{ name, mesh: 0, turn_rad: 0, rise_m: 0 }],
})

/** All meshes of a scene as one, each at its places. */
export function baked(scene: Scene): Mesh {
  const all = scene.nodes.map((n) => turned(scene.meshes[n.mesh]!.mesh, n.turn_rad, n.rise_m))
  const positions = new Float32Array(all.reduce((sum, m) => sum + m.positions.length, 0))
  const indices = new Uint32Array(all.reduce((sum, m) => sum + m.indices.length, 0))
  let [p, i] = [0, 0]
  for (const m of all) {
    positions.set(m.positions, p)
    for (let k = 0; k < m.indices.length; k++) indices[i + k] = m.indices[k]! + p / 3
    p += m.positions.length
    i += m.indices.length
  }
  return { positions, indices }
}
