import { across, triangles } from './measure.ts'
import type { Mesh } from './mesh.ts'

const HEADER = 80
const TRIANGLE = 50

/** Binary STL in millimetres with true normals. The title stands in the header; readers take a header that starts with “solid” for text. */
export function stl(m: Mesh, title: string): Uint8Array {
  const count = m.indices.length / 3
  const bytes = new Uint8Array(HEADER + 4 + TRIANGLE * count)
  const view = new DataView(bytes.buffer)
  const plain = title.replace(/[^ -~]/g, '').slice(0, HEADER - 4)
  for (let i = 0; i < plain.length; i++) bytes[i] = plain.charCodeAt(i)
  view.setUint32(HEADER, count, true)
  let at = HEADER + 4
  for (const corners of triangles(m)) {
    const n = across(...corners)
    const length = Math.hypot(...n) || 1
    const numbers = [...n.map((x) => x / length), ...corners.flatMap((p) => p.map((x) => x * 1000))]
    numbers.forEach((x, k) => {
      view.setFloat32(at + 4 * k, x, true)
    })
    at += TRIANGLE
  }
  return bytes
}
