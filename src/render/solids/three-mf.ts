import { strToU8, zipSync } from 'fflate'
import { boxOf } from './measure.ts'
import type { Mesh, Place } from './mesh.ts'
import { baked, type Node, type Scene } from './scene.ts'

const CORE = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02'
const XML = '<?xml version="1.0" encoding="UTF-8"?>\n'
/** The same bytes from the same plan: no clock in the archive. Local time, as a zip has no zone. */
const STAMP = '1980-01-02T00:00:00'

const TYPES = `${XML}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>`
const RELATIONS = `${XML}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Target="/3D/3dmodel.model" Id="rel0" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>`

const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, (c) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[c]!)

/** Millimetres to ten nanometres: as fine as the mesh knows them. */
const mm = (length_m: number): string => String(Number((length_m * 1000).toFixed(5)))

function object(id: number, name: string, m: Mesh): string {
  const vertices: string[] = []
  for (let i = 0; i < m.positions.length; i += 3)
    vertices.push(`<vertex x="${mm(m.positions[i]!)}" y="${mm(m.positions[i + 1]!)}" z="${mm(m.positions[i + 2]!)}"/>`)
  const faces: string[] = []
  for (let f = 0; f < m.indices.length; f += 3)
    faces.push(`<triangle v1="${m.indices[f]}" v2="${m.indices[f + 1]}" v3="${m.indices[f + 2]}"/>`)
  return `<object id="${id}" type="model" name="${escaped(name)}"><mesh><vertices>${vertices.join('')}</vertices><triangles>${faces.join('')}</triangles></mesh></object>`
}

/** A node as the format writes it, rows of a matrix that places a row vector; moved so that all is in front of the origin. */
function item(n: Node, low: Place): string {
  const turn = (x: number) => String(Number(x.toFixed(9)))
  const [c, s] = [turn(Math.cos(n.turn_rad)), turn(Math.sin(n.turn_rad))]
  const back = turn(-Math.sin(n.turn_rad))
  const at = [mm(-low[0]), mm(-low[1]), mm(n.rise_m - low[2])]
  return `<item objectid="${n.mesh + 1}" partnumber="${escaped(n.name)}" transform="${c} ${s} 0 ${back} ${c} 0 0 0 1 ${at.join(' ')}"/>`
}

/** 3MF, core specification, in millimetres. */
export function threeMf(scene: Scene, title: string): Uint8Array {
  const { low } = boxOf(baked(scene))
  const objects = scene.meshes.map((m, i) => object(i + 1, m.name, m.mesh)).join('')
  const model = `${XML}<model unit="millimeter" xml:lang="en-US" xmlns="${CORE}"><metadata name="Title">${escaped(title)}</metadata><metadata name="Application">rootfall</metadata><resources>${objects}</resources><build>${scene.nodes.map((n) => item(n, low)).join('')}</build></model>`
  return zipSync(
    { '[Content_Types].xml': strToU8(TYPES), '_rels/.rels': strToU8(RELATIONS), '3D/3dmodel.model': strToU8(model) },
    { level: 6, mtime: STAMP },
  )
}
