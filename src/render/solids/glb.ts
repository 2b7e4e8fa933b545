import { strToU8 } from 'fflate'
import type { Mesh } from './mesh.ts'
import type { Scene } from './scene.ts'

const MAGIC = 0x46546c67
const JSON_CHUNK = 0x4e4f534a
const BIN_CHUNK = 0x004e4942
const FLOAT = 5126
const UNSIGNED_INT = 5125
const ARRAY_BUFFER = 34962
const ELEMENT_ARRAY_BUFFER = 34963
const SPACE = 0x20

/** Height is y in this format: x stays, what was y goes to the back. */
function upright(m: Mesh): Float32Array {
  const p = new Float32Array(m.positions.length)
  for (let i = 0; i < p.length; i += 3) p.set([m.positions[i]!, m.positions[i + 2]!, -m.positions[i + 1]!], i)
  return p
}

function extent(p: Float32Array): { readonly min: readonly number[]; readonly max: readonly number[] } {
  const [min, max] = [
    [p[0]!, p[1]!, p[2]!],
    [p[0]!, p[1]!, p[2]!],
  ]
  for (let i = 0; i < p.length; i++) {
    min[i % 3] = Math.min(min[i % 3]!, p[i]!)
    max[i % 3] = Math.max(max[i % 3]!, p[i]!)
  }
  return { min, max }
}

/** Colour in linear light. */
const material = (name: string, baseColorFactor: readonly number[]) => ({
  name,
  pbrMetallicRoughness: { baseColorFactor, metallicFactor: 0, roughnessFactor: 0.6 },
})

interface Buffers {
  readonly views: object[]
  readonly accessors: object[]
  readonly pieces: Uint8Array[]
  length: number
}

function append(b: Buffers, data: Float32Array | Uint32Array, target: number, accessor: object): number {
  b.views.push({ buffer: 0, byteOffset: b.length, byteLength: data.byteLength, target })
  b.accessors.push({ bufferView: b.views.length - 1, ...accessor })
  b.pieces.push(new Uint8Array(data.buffer, data.byteOffset, data.byteLength))
  b.length += data.byteLength
  return b.accessors.length - 1
}

function chunk(type: number, content: Uint8Array, filler: number): Uint8Array {
  const padded = Math.ceil(content.length / 4) * 4
  const bytes = new Uint8Array(8 + padded).fill(filler, 8)
  const view = new DataView(bytes.buffer)
  view.setUint32(0, padded, true)
  view.setUint32(4, type, true)
  bytes.set(content, 8)
  return bytes
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(pieces.reduce((sum, p) => sum + p.length, 0))
  let at = 0
  for (const p of pieces) {
    bytes.set(p, at)
    at += p.length
  }
  return bytes
}

/** glTF 2.0 in one binary file: metres, y up; faces without normals are shown flat, as the format says. */
export function glb(scene: Scene): Uint8Array {
  const b: Buffers = { views: [], accessors: [], pieces: [], length: 0 }
  const meshes = scene.meshes.map(({ name, mesh }) => {
    const p = upright(mesh)
    const shape = { componentType: FLOAT, count: p.length / 3, type: 'VEC3', ...extent(p) }
    const POSITION = append(b, p, ARRAY_BUFFER, shape)
    const count = mesh.indices.length
    const indices = append(b, mesh.indices, ELEMENT_ARRAY_BUFFER, {
      componentType: UNSIGNED_INT,
      count,
      type: 'SCALAR',
    })
    return { name, primitives: [{ attributes: { POSITION }, indices, material: 0 }] }
  })
  const nodes = scene.nodes.map((n) => ({
    name: n.name,
    mesh: n.mesh,
    rotation: [0, Math.sin(n.turn_rad / 2), 0, Math.cos(n.turn_rad / 2)],
    translation: [0, n.rise_m, 0],
  }))
  const materials = [material('pipe', [0.78, 0.76, 0.7, 1])]
  const whole = {
    asset: { version: '2.0', generator: 'rootfall' },
    scene: 0,
    scenes: [{ nodes: nodes.map((_, i) => i) }],
    nodes,
    meshes,
    materials,
    accessors: b.accessors,
    bufferViews: b.views,
    buffers: [{ byteLength: b.length }],
  }
  const body = [chunk(JSON_CHUNK, strToU8(JSON.stringify(whole)), SPACE), chunk(BIN_CHUNK, joined(b.pieces), 0)]
  const head = new Uint8Array(12)
  const view = new DataView(head.buffer)
  view.setUint32(0, MAGIC, true)
  view.setUint32(4, 2, true)
  view.setUint32(8, 12 + body[0]!.length + body[1]!.length, true)
  return joined([head, ...body])
}
