import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import DxfParser from 'dxf-parser'
import { strFromU8, unzipSync } from 'fflate'
import { STLLoader } from 'three/examples/jsm/loaders/STLLoader.js'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { booklet } from '../src/render/booklet/booklet.ts'
import { bookletHtml } from '../src/render/booklet/html.ts'
import { dxf, REFERENCE_LAYER } from '../src/render/drawing/dxf.ts'
import { pdf } from '../src/render/drawing/pdf.ts'
import { svg } from '../src/render/drawing/svg.ts'
import { plainFiles } from '../src/render/sheets/plain.ts'
import { type SheetSet, sheetSet } from '../src/render/sheets/set.ts'
import { glb } from '../src/render/solids/glb.ts'
import { boxOf, volumeOf } from '../src/render/solids/measure.ts'
import { baked } from '../src/render/solids/scene.ts'
import { solidSet } from '../src/render/solids/solids.ts'
import { stl } from '../src/render/solids/stl.ts'
import { threeMf } from '../src/render/solids/three-mf.ts'
import { bookletSentences } from '../src/render/words/en/booklet.ts'
import { pupilSentences } from '../src/render/words/en/booklet-pupils.ts'
import { fonts } from './print/demo-sheet.ts'
import { randomPlan, seeded } from './print/random-plan.ts'
import { inputOf } from './print/set-of.ts'

const PLANS = 50
/** Pages of a set that go into one file; the next plan begins a few further on, so that all kinds come round. */
const PAGES = 3
/** The booklet holds every sheet once more and takes seconds: one plan in five. */
const EVERY_BOOKLET = 5

const folder = mkdtempSync(join(tmpdir(), 'rootfall-files-'))
const at = (name: string) => join(folder, name)

interface Written {
  readonly name: string
  /** Elements, pages, rows or triangles that went in. */
  readonly count: number
}
interface Shape extends Written {
  readonly volume_mm3: number
  readonly size_mm: readonly number[]
}
const files = {
  pdf: [] as (Written & { readonly bytes: Uint8Array; readonly words: readonly string[] })[],
  svg: [] as (Written & { readonly text: string; readonly size: readonly [number, number] })[],
  dxf: [] as (Written & { readonly text: string })[],
  csv: [] as (Written & { readonly text: string })[],
  html: [] as (Written & { readonly text: string })[],
  stl: [] as (Shape & { readonly bytes: Uint8Array })[],
  '3mf': [] as (Shape & { readonly bytes: Uint8Array })[],
  glb: [] as (Shape & { readonly bytes: Uint8Array })[],
}

function put(name: string, content: string | Uint8Array): string {
  writeFileSync(at(name), content)
  return name
}

async function paper(i: number, set: SheetSet): Promise<void> {
  const pages = Array.from(
    { length: Math.min(PAGES, set.pages.length) },
    (_, k) => set.pages[(i * 3 + k) % set.pages.length]!,
  )
  if (pages.length === 0) return
  const bytes = await pdf({
    pages: pages.map((p) => p.page),
    fonts,
    title: `Plan ${i}`,
    author: 'a grower',
    subject: 'files',
    language: 'en',
  })
  files.pdf.push({ name: put(`${i}.pdf`, bytes), count: pages.length, bytes, words: pages.map((p) => p.title) })
  for (const [k, { page, title }] of pages.slice(0, 2).entries()) {
    const text = svg({ page, title })
    files.svg.push({
      name: put(`${i}-${k}.svg`, text),
      count: page.drawing.length,
      text,
      size: [page.width_mm, page.height_mm],
    })
  }
  if (set.contours.length === 0) return
  const text = dxf({ drawing: set.contours, reference: '100 mm' })
  files.dxf.push({ name: put(`${i}.dxf`, text), count: new Set(set.contours.map((p) => JSON.stringify(p))).size, text })
}

function solid(i: number, input: ReturnType<typeof inputOf>): void {
  const { parts } = solidSet({ plan: input.plan, facts: input.facts, error_m: 4e-4 })
  for (const part of parts.filter((p) => p.id !== 'tower')) {
    const mesh = baked(part.scene)
    const { low, high } = boxOf(mesh)
    const shape = {
      count: mesh.indices.length / 3,
      volume_mm3: volumeOf(mesh) * 1e9,
      size_mm: ([0, 1, 2] as const).map((k) => (high[k] - low[k]) * 1000),
    }
    const made = { stl: stl(mesh, part.name), '3mf': threeMf(part.scene, part.name), glb: glb(part.scene) }
    for (const kind of ['stl', '3mf', 'glb'] as const)
      files[kind].push({ ...shape, name: put(`${i}-${part.name}.${kind}`, made[kind]), bytes: made[kind] })
  }
}

beforeAll(async () => {
  const random = seeded(2026)
  for (let i = 0; i < PLANS; i++) {
    const input = inputOf(randomPlan(random), i % 2 === 0 ? 'A4' : 'Letter')
    const set = sheetSet(input)
    await paper(i, set)
    solid(i, input)
    for (const { name, text } of plainFiles(input).filter((f) => f.name.endsWith('.csv')))
      files.csv.push({ name: put(`${i}-${name}`, text), count: text.trimEnd().split('\r\n').length, text })
    if (i % EVERY_BOOKLET !== 0) continue
    const own = { ...input, booklet: bookletSentences, pupils: pupilSentences }
    const text = bookletHtml({ booklet: booklet(own), sentences: bookletSentences, paper: input.paper, faces: [] })
    files.html.push({ name: put(`${i}.html`, text), count: (text.match(/<svg /g) ?? []).length, text })
  }
}, 300_000)
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** A tag in a text of XML or HTML, read by nothing but its brackets. */
function tags(text: string): readonly { readonly name: string; readonly kind: 'open' | 'close' | 'empty' }[] {
  const plain = text
    .replace(/<(style|script)[^>]*>[\s\S]*?<\/\1>/g, '')
    .replace(/<\?[\s\S]*?\?>|<!--[\s\S]*?-->|<!doctype[^>]*>/gi, '')
  return [...plain.matchAll(/<(\/?)([A-Za-z][\w:-]*)((?:"[^"]*"|'[^']*'|[^'">])*)>/g)].map(([, slash, name, rest]) => ({
    name: name!,
    kind: slash === '/' ? 'close' : rest!.endsWith('/') ? 'empty' : 'open',
  }))
}

/** Elements that are open at the end or closed in the wrong order. */
function unbalanced(text: string, empty: readonly string[] = []): readonly string[] {
  const open: string[] = []
  const wrong: string[] = []
  for (const { name, kind } of tags(text)) {
    if (kind === 'empty' || empty.includes(name)) continue
    if (kind === 'open') open.push(name)
    else if (open.pop() !== name) wrong.push(name)
  }
  return [...wrong, ...open]
}

/** Fields by RFC 4180, character by character. */
function rowsOf(text: string): readonly (readonly string[])[] {
  const rows: string[][] = [['']]
  let quoted = false
  for (let i = 0; i < text.length; i++) {
    const c = text[i]!
    const row = rows.at(-1)!
    if (quoted && c === '"' && text[i + 1] === '"') row[row.length - 1] += text[i++]!
    else if (c === '"') quoted = !quoted
    else if (!quoted && c === ',') row.push('')
    else if (!quoted && c === '\r' && text[i + 1] === '\n') {
      rows.push([''])
      i++
    } else row[row.length - 1] += c
  }
  return rows.filter((r) => r.length > 1 || r[0] !== '')
}

/** Objects of a PDF by its own table of places: each must begin where the table says. */
function objectsOf(bytes: Uint8Array): { readonly objects: number; readonly pages: number } {
  const text = Buffer.from(bytes).toString('latin1')
  const start = Number(/startxref\s+(\d+)\s+%%EOF\s*$/.exec(text)?.[1])
  const head = /^xref\s+0 (\d+)\s+/.exec(text.slice(start))
  if (!head) throw new Error('no table of places')
  const count = Number(head[1])
  let objects = 0
  for (let n = 0; n < count; n++) {
    const row = text.slice(start + head[0].length + 20 * n, start + head[0].length + 20 * n + 20)
    if (row[17] !== 'n') continue
    if (!text.slice(Number(row.slice(0, 10))).startsWith(`${n} 0 obj`))
      throw new Error(`object ${n} is not at its place`)
    objects += 1
  }
  return { objects, pages: (text.match(/\/Type\s*\/Page\b/g) ?? []).length }
}

/** Triangles and six volumes of a list of corners. */
function measured(corner: (i: number) => readonly [number, number, number], triangles: number) {
  let six = 0
  const [low, high] = [
    [1e9, 1e9, 1e9],
    [-1e9, -1e9, -1e9],
  ]
  for (let t = 0; t < triangles; t++) {
    const [a, b, c] = [corner(3 * t), corner(3 * t + 1), corner(3 * t + 2)]
    six += a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0])
    for (const p of [a, b, c])
      for (const k of [0, 1, 2] as const) {
        low[k] = Math.min(low[k]!, p[k])
        high[k] = Math.max(high[k]!, p[k])
      }
  }
  return { volume: six / 6, size: [0, 1, 2].map((k) => high[k]! - low[k]!) }
}

function alike(
  s: Shape,
  found: { readonly count: number; readonly volume: number; readonly size: readonly number[] },
): void {
  expect(found.count, s.name).toBe(s.count)
  expect(Math.abs(found.volume / s.volume_mm3 - 1), s.name).toBeLessThan(1e-4)
  for (const k of [0, 1, 2]) {
    const [a, b] = [[...found.size].sort((x, y) => x - y)[k]!, [...s.size_mm].sort((x, y) => x - y)[k]!]
    expect(Math.abs(a - b), s.name).toBeLessThan(0.01)
  }
}

describe(`files of ${PLANS} random plans, read back`, () => {
  it('are many of every kind', () => {
    for (const kind of ['pdf', 'svg', 'csv', 'stl', '3mf', 'glb'] as const)
      expect(files[kind].length, kind).toBeGreaterThanOrEqual(PLANS / 2)
    expect(files.dxf.length).toBeGreaterThan(20)
    expect(files.html.length).toBe(PLANS / EVERY_BOOKLET)
  })

  it('PDF by its own table of places, and by poppler', () => {
    for (const f of files.pdf) {
      expect(objectsOf(f.bytes).pages, f.name).toBe(f.count)
      const info = spawnSync('pdfinfo', [at(f.name)])
      expect([info.status, info.stderr.toString()], f.name).toEqual([0, ''])
      expect(Number(/Pages:\s+(\d+)/.exec(info.stdout.toString())?.[1]), f.name).toBe(f.count)
    }
  })

  it('SVG by its brackets', () => {
    for (const f of files.svg) {
      expect(unbalanced(f.text), f.name).toEqual([])
      expect(f.text, f.name).toContain(`viewBox="0 0 ${f.size[0]} ${f.size[1]}"`)
      expect(f.text, f.name).not.toMatch(/="[^"]*(NaN|Infinity|undefined)/)
      const shapes = tags(f.text).filter(
        (t) => ['line', 'path', 'circle', 'text'].includes(t.name) && t.kind !== 'close',
      )
      expect(shapes.length, f.name).toBe(f.count)
    }
  })

  it('DXF by dxf-parser and by its group codes', () => {
    for (const f of files.dxf) {
      const entities = new DxfParser().parseSync(f.text)!.entities.filter((e) => e.layer !== REFERENCE_LAYER)
      const rows = f.text.split('\r\n')
      const from = rows.indexOf('ENTITIES')
      const kinds = rows.flatMap((r, i) => (i > from && i % 2 === 0 && Number(r) === 0 ? [rows[i + 1]!] : []))
      const own = kinds.filter((k) => ['LINE', 'ARC', 'CIRCLE', 'POLYLINE', 'TEXT'].includes(k))
      const mark = rows.filter(
        (r, i) => i > from && i % 2 === 1 && r === REFERENCE_LAYER && rows[i - 1]!.trim() === '8',
      )
      expect(entities.length, f.name).toBe(own.length - mark.length)
      expect(entities.length, f.name).toBeGreaterThan(0)
    }
  })

  it('CSV by the letter of its standard', () => {
    for (const f of files.csv) {
      const rows = rowsOf(f.text)
      expect(rows.length, f.name).toBe(f.count)
      expect(new Set(rows.map((r) => r.length)).size, f.name).toBe(1)
    }
  })

  it('HTML by its brackets', () => {
    for (const f of files.html) expect(unbalanced(f.text, ['meta', 'link', 'input']), f.name).toEqual([])
  })

  it('STL by three and by its layout', () => {
    for (const f of files.stl) {
      const view = new DataView(f.bytes.buffer, f.bytes.byteOffset)
      const count = view.getUint32(80, true)
      expect(f.bytes.length, f.name).toBe(84 + 50 * count)
      const corner = (i: number) => {
        const from = 84 + 50 * Math.floor(i / 3) + 12 + 12 * (i % 3)
        return [0, 4, 8].map((k) => view.getFloat32(from + k, true)) as unknown as readonly [number, number, number]
      }
      alike(f, { count, ...measured(corner, count) })
      const position = new STLLoader().parse(f.bytes.slice().buffer as ArrayBuffer).getAttribute('position')
      expect(position.count / 3, f.name).toBe(f.count)
    }
  })

  it('3MF by its parts', () => {
    for (const f of files['3mf']) {
      const parts = unzipSync(f.bytes)
      expect(Object.keys(parts).sort(), f.name).toEqual(['3D/3dmodel.model', '[Content_Types].xml', '_rels/.rels'])
      for (const part of Object.values(parts)) expect(unbalanced(strFromU8(part)), f.name).toEqual([])
    }
  })

  it('GLB by its layout', () => {
    for (const f of files.glb) {
      const view = new DataView(f.bytes.buffer, f.bytes.byteOffset)
      expect([view.getUint32(0, true), view.getUint32(4, true), view.getUint32(8, true)]).toEqual([
        0x46546c67,
        2,
        f.bytes.length,
      ])
      const long = view.getUint32(12, true)
      const json = JSON.parse(strFromU8(f.bytes.slice(20, 20 + long))) as {
        nodes: { mesh?: number }[]
        meshes: { primitives: { indices: number }[] }[]
        accessors: { count: number }[]
      }
      const triangles = json.nodes
        .filter((n) => n.mesh !== undefined)
        .reduce((sum, n) => sum + json.accessors[json.meshes[n.mesh!]!.primitives[0]!.indices]!.count / 3, 0)
      expect(triangles, f.name).toBe(f.count)
    }
  })

  // A reader that shares no line with the writers; where it is missing the run reports the test as skipped.
  const python = ['python3', '/usr/bin/python3'].find((p) => spawnSync(p, ['-c', 'import xml.sax']).status === 0)
  it.skipIf(python === undefined)('SVG, CSV, HTML, STL, 3MF and GLB by the library of Python', () => {
    writeFileSync(at('read.py'), PYTHON)
    const found = JSON.parse(execFileSync(python!, [at('read.py'), folder], { maxBuffer: 1e8 }).toString()) as Record<
      string,
      { readonly count: number; readonly volume?: number; readonly size?: readonly number[] }
    >
    for (const kind of ['svg', 'csv', 'html'] as const)
      for (const f of files[kind]) expect([f.name, found[f.name]?.count]).toEqual([f.name, f.count])
    for (const kind of ['stl', '3mf', 'glb'] as const)
      for (const f of files[kind]) {
        const { count, volume = 0, size = [] } = found[f.name]!
        alike(f, { count, volume, size })
      }
  })

  const ghost = spawnSync('gs', ['--version']).status === 0
  it.skipIf(!ghost)('PDF by Ghostscript, all pages, no warning', () => {
    const run = spawnSync(
      'gs',
      [
        '-q',
        '-dSAFER',
        '-dBATCH',
        '-dNOPAUSE',
        '-dPDFSTOPONERROR',
        '-sDEVICE=nullpage',
        ...files.pdf.map((f) => at(f.name)),
      ],
      { maxBuffer: 1e8 },
    )
    expect([run.status, run.stdout.toString(), run.stderr.toString()]).toEqual([0, '', ''])
  })
})

const PYTHON = `
import csv, html.parser, json, os, struct, sys, zipfile
import xml.etree.ElementTree as tree

def measure(points, faces):
    six = 0.0
    low = [1e9] * 3
    high = [-1e9] * 3
    for f in faces:
        a, b, c = (points[i] for i in f)
        six += a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0])
        for p in (a, b, c):
            for k in range(3):
                if p[k] < low[k]: low[k] = p[k]
                if p[k] > high[k]: high[k] = p[k]
    return {'count': len(faces), 'volume': six / 6, 'size': [h - l for l, h in zip(low, high)]}

def svg(path):
    root = tree.parse(path).getroot()
    return {'count': sum(1 for e in root.iter() if e.tag.split('}')[1] in ('line', 'path', 'circle', 'text'))}

def table(path):
    with open(path, newline='', encoding='utf-8') as f:
        return {'count': len(list(csv.reader(f, strict=True)))}

class Page(html.parser.HTMLParser):
    def __init__(self):
        super().__init__()
        self.open, self.pictures = [], 0
    def handle_starttag(self, tag, attrs):
        if tag == 'svg': self.pictures += 1
        if tag not in ('meta', 'link', 'input'): self.open.append(tag)
    def handle_startendtag(self, tag, attrs):
        pass
    def handle_endtag(self, tag):
        if self.open.pop() != tag: raise ValueError(tag)

def page(path):
    p = Page()
    p.feed(open(path, encoding='utf-8').read())
    p.close()
    if p.open: raise ValueError(p.open)
    return {'count': p.pictures}

def stl(path):
    data = open(path, 'rb').read()
    n = struct.unpack_from('<I', data, 80)[0]
    points = []
    for i in range(n):
        v = struct.unpack_from('<12f', data, 84 + 50 * i)
        points += [v[3:6], v[6:9], v[9:12]]
    return measure(points, [(3 * i, 3 * i + 1, 3 * i + 2) for i in range(n)])

def three_mf(path):
    with zipfile.ZipFile(path) as z:
        if z.testzip() is not None: raise ValueError('zip')
        root = tree.fromstring(z.read('3D/3dmodel.model'))
    ns = root.tag.split('}')[0] + '}'
    if root.get('unit') != 'millimeter': raise ValueError(root.get('unit'))
    objects = {o.get('id'): o for o in root.iter(ns + 'object')}
    points, faces = [], []
    def put(o, shift):
        mesh = o.find(ns + 'mesh')
        if mesh is not None:
            base = len(points)
            for v in mesh.iter(ns + 'vertex'):
                p = [float(v.get(k)) for k in 'xyz']
                m = shift
                points.append([p[0] * m[k] + p[1] * m[3 + k] + p[2] * m[6 + k] + m[9 + k] for k in range(3)])
            for t in mesh.iter(ns + 'triangle'):
                faces.append(tuple(base + int(t.get(k)) for k in ('v1', 'v2', 'v3')))
        for c in o.iter(ns + 'component'):
            put(objects[c.get('objectid')], transform(c))
    def transform(e):
        t = e.get('transform')
        return [float(x) for x in t.split()] if t else [1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0]
    for item in root.iter(ns + 'item'):
        put(objects[item.get('objectid')], transform(item))
    return measure(points, faces)

def glb(path):
    data = open(path, 'rb').read()
    long = struct.unpack_from('<I', data, 12)[0]
    doc = json.loads(data[20:20 + long])
    blob = data[28 + long:]
    def read(n):
        a = doc['accessors'][n]
        view = doc['bufferViews'][a['bufferView']]
        size = {'SCALAR': 1, 'VEC3': 3}[a['type']]
        code = {5126: 'f', 5125: 'I', 5123: 'H'}[a['componentType']]
        at = view.get('byteOffset', 0) + a.get('byteOffset', 0)
        return struct.unpack_from('<%d%s' % (a['count'] * size, code), blob, at)
    points, faces = [], []
    for node in doc['nodes']:
        if 'mesh' not in node: continue
        p = doc['meshes'][node['mesh']]['primitives'][0]
        flat, ids = read(p['attributes']['POSITION']), read(p['indices'])
        base = len(points)
        x, y, z, w = node.get('rotation', [0, 0, 0, 1])
        move = node.get('translation', [0, 0, 0])
        for i in range(0, len(flat), 3):
            v = flat[i:i + 3]
            t = [2 * (y * v[2] - z * v[1]), 2 * (z * v[0] - x * v[2]), 2 * (x * v[1] - y * v[0])]
            q = [v[0] + w * t[0] + y * t[2] - z * t[1], v[1] + w * t[1] + z * t[0] - x * t[2], v[2] + w * t[2] + x * t[1] - y * t[0]]
            points.append([1000 * (q[k] + move[k]) for k in range(3)])
        faces += [tuple(base + j for j in ids[i:i + 3]) for i in range(0, len(ids), 3)]
    return measure(points, faces)

readers = {'.svg': svg, '.csv': table, '.html': page, '.stl': stl, '.3mf': three_mf, '.glb': glb}
found = {}
for name in sorted(os.listdir(sys.argv[1])):
    read = readers.get(os.path.splitext(name)[1])
    if read: found[name] = read(os.path.join(sys.argv[1], name))
print(json.dumps(found))
`
