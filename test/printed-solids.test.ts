import { strFromU8, unzipSync } from 'fflate'
import Module from 'manifold-3d'
import type { Mesh as ShownMesh } from 'three'
import { GLTFLoader } from 'three/examples/jsm/loaders/GLTFLoader.js'
import { STLLoader } from 'three/examples/jsm/loaders/STLLoader.js'
import { beforeAll, describe, expect, it } from 'vitest'
import { plugVolume, squareCutExtent, stubVolume } from '../src/disciplines/templates/equations.ts'
import type { JointFacts } from '../src/disciplines/templates/index.ts'
import { squareEdges, squareSides } from '../src/disciplines/templates/square-cut.ts'
import { type Evaluation, evaluate } from '../src/evaluate.ts'
import { parsePlan } from '../src/plan/document.ts'
import { isKnown } from '../src/plan/known.ts'
import type { Plan, PlanDocument } from '../src/plan/plan.ts'
import { glb } from '../src/render/solids/glb.ts'
import { guideMesh, guideOf } from '../src/render/solids/guide.ts'
import { areaOf, boxOf, volumeOf } from '../src/render/solids/measure.ts'
import type { Mesh } from '../src/render/solids/mesh.ts'
import type { SolidPart } from '../src/render/solids/part.ts'
import { piecesFor } from '../src/render/solids/pieces.ts'
import { cupMesh, lidMesh, ringMesh } from '../src/render/solids/round-parts.ts'
import { baked } from '../src/render/solids/scene.ts'
import { solidSet } from '../src/render/solids/solids.ts'
import { stl } from '../src/render/solids/stl.ts'
import { threeMf } from '../src/render/solids/three-mf.ts'
import { EXAMPLES, example, madeByHand, varied, withAll } from './plans.ts'

const ERROR_m = 5e-5
const FINE_m = 2e-6

interface Made {
  readonly plan: Plan
  readonly facts: Evaluation['facts']
  readonly parts: readonly SolidPart[]
}

function madeOf(document: PlanDocument, error_m = ERROR_m): Made {
  const { plan } = parsePlan(document)
  const { facts } = evaluate(plan, { day: false })
  return { plan, facts, parts: solidSet({ plan, facts, error_m }).parts }
}

const bedded = (d: PlanDocument, i: number) => (i % 2 === 0 ? d : withAll(d, { 'tools/bed': '100 mm' }))
const plans: readonly PlanDocument[] = [
  ...varied(50, 11).map(bedded),
  ...Object.values(madeByHand),
  withAll(example('balcony'), {
    'column/stub/end': 'saddle',
    'column/stub/offset': '8 mm',
    'column/stub/mouthTilt': '12 deg',
  }),
]
const jointOf = ({ facts }: Made): JointFacts => {
  if (!isKnown(facts.templates)) throw new Error('no joint')
  return facts.templates.known.joint
}

/** Sides that are not walked exactly once each way: a closed surface that is everywhere turned outward has none. */
function looseSides(m: Mesh): number {
  const count = m.positions.length / 3
  const seen = new Map<number, number>()
  const key = (a: number, b: number) => a * count + b
  const each = (work: (a: number, b: number) => void) => {
    for (let f = 0; f < m.indices.length; f += 3)
      for (let k = 0; k < 3; k++) work(m.indices[f + k]!, m.indices[f + ((k + 1) % 3)]!)
  }
  each((a, b) => seen.set(key(a, b), (seen.get(key(a, b)) ?? 0) + 1))
  let loose = 0
  each((a, b) => {
    if (seen.get(key(a, b)) !== 1 || seen.get(key(b, a)) !== 1) loose += 1
  })
  return loose
}

type Kernel = Awaited<ReturnType<typeof Module>>
let kernel: Kernel
beforeAll(async () => {
  kernel = await Module()
  kernel.setup()
})

/** Volume as a geometry kernel that shares nothing with our code sees it; it refuses what is not a closed solid. */
function kernelVolume(m: Mesh): { readonly status: string; readonly volume_m3: number } {
  // In units of 0.1 m, where the kernel is at its best.
  const vertProperties = m.positions.map((x) => x * 10)
  const solid = new kernel.Manifold(new kernel.Mesh({ numProp: 3, vertProperties, triVerts: m.indices }))
  try {
    return { status: solid.status(), volume_m3: solid.volume() / 1000 }
  } finally {
    solid.delete()
  }
}

describe('solids of 50 random plans, of plans made by hand, and of one with offset and tilt', () => {
  const made = plans.map((p) => madeOf(p))

  it('are of every kind, often enough', () => {
    const count = (name: string) => made.filter((m) => m.parts.some((p) => p.name === name)).length
    for (const name of ['stub', 'gauge', 'distributor', 'base-ring', 'tower', 'column'])
      expect(count(name), name).toBeGreaterThan(20)
    for (const name of ['guide', 'guide-1', 'guide-2', 'lid']) expect(count(name), name).toBeGreaterThan(5)
  })

  it('are closed and turned outward: every side is shared by two triangles, once each way', () => {
    for (const [i, { parts }] of made.entries())
      for (const part of parts)
        for (const { mesh } of part.scene.meshes) expect([i, part.name, looseSides(mesh)]).toEqual([i, part.name, 0])
  })

  it('are taken by a geometry kernel, with the same volume', () => {
    for (const [i, { parts }] of made.entries())
      for (const part of parts)
        for (const { mesh } of part.scene.meshes) {
          const { status, volume_m3 } = kernelVolume(mesh)
          expect([i, part.name, status]).toEqual([i, part.name, 'NoError'])
          // Single precision of the places, against walls of millimetres.
          expect(Math.abs(volume_m3 / volumeOf(mesh) - 1), `${i} ${part.name}`).toBeLessThan(1e-4)
        }
  })

  it('stubs hold what the formula says, to the chord error over their surface', () => {
    let met = 0
    for (const m of made)
      for (const part of m.parts.filter((p) => p.id === 'stub')) {
        const mesh = baked(part.scene)
        expect(Math.abs(volumeOf(mesh) - stubVolume(jointOf(m)))).toBeLessThan(ERROR_m * areaOf(mesh))
        met += 1
      }
    expect(met).toBeGreaterThan(20)
  })

  it('printed parts stand on the bed, and what is larger than it says so', () => {
    for (const { plan, parts } of made)
      for (const part of parts.filter((p) => p.printed)) {
        const { low, high } = boxOf(baked(part.scene))
        expect(low[2]).toBeCloseTo(0, 9)
        const bed_m = plan.tools?.bed_m
        const most = Math.max(...[0, 1, 2].map((k) => high[k]! - low[k]!))
        expect(part.fits).toBe(bed_m === undefined ? null : most <= bed_m)
      }
  })
})

/** Mean of a function by many strips. */
function integral(of: (x: number) => number, from: number, to: number): number {
  const strips = 20_000
  const width = (to - from) / strips
  let sum = 0
  for (let i = 0; i < strips; i++) sum += of(from + (i + 0.5) * width)
  return sum * width
}

/** What the column holds by the formulas of the templates. */
function columnVolume(m: Made): number {
  const { column, hole, cut } = jointOf(m)
  if (!isKnown(m.facts.layout)) throw new Error('no layout')
  const { columnLength_m, sites } = m.facts.layout.known
  const [R, r] = [column.outside_m / 2, column.bore_m / 2]
  const { left, right } = squareSides(hole)
  const opening = (u: number) => {
    const [low, high] = squareEdges(hole, u)
    return high - low
  }
  const plug = cut === 'axis' ? plugVolume(hole) : ((R * R - r * r) / 2) * integral(opening, left, right)
  return Math.PI * (R * R - r * r) * columnLength_m - sites.length * plug
}

/**
 * At facets 25 times finer than those that are written the error of a volume is 25 times smaller: 0.15 % of a stub
 * becomes 0.006 %. The tolerance leaves three times that, and is finer than any slip of a wall, a play or a radius.
 */
const WITHIN = 2e-4

describe('volumes at fine facets', () => {
  const near = (mesh: Mesh | null, exact_m3: number) =>
    expect(Math.abs(volumeOf(mesh!) / exact_m3 - 1)).toBeLessThan(WITHIN)

  it.each([...EXAMPLES])('stub and column of %s', (name) => {
    const m = madeOf(example(name), FINE_m)
    const mesh = (id: string) => baked(m.parts.find((p) => p.id === id)!.scene)
    near(mesh('stub'), stubVolume(jointOf(m)))
    near(mesh('column'), columnVolume(m))
  })

  const hole = { columnRadius_m: 0.055, columnWall_m: 0.0032, holeRadius_m: 0.0253, angle_rad: 0.8, offset_m: 0.006 }
  const markRise_m = Math.sqrt(0.055 ** 2 - 0.006 ** 2) / Math.tan(0.8)
  const sleeve = (g: NonNullable<ReturnType<typeof guideOf>>) => {
    const ring = (g.outer_m ** 2 - g.inner_m ** 2) / 2
    return ring * (2 * g.half_rad * (g.top_m - g.bottom_m) - 2 * g.notch.half_rad * g.notch.depth_m)
  }

  it('drilling guide with a collar', () => {
    const g = guideOf({ hole, cut: 'axis', square: null, markRise_m })!
    const wall = { columnRadius_m: g.outer_m, columnWall_m: g.outer_m - g.inner_m }
    const collar = stubVolume({
      stub: { ...hole, ...wall, stubRadius_m: g.collar!.radius_m, stubWall_m: g.collar!.radius_m - hole.holeRadius_m },
      end: { kind: 'saddle' },
      axisLength_m: g.collar!.reach_m,
    })
    const exact = sleeve(g) - plugVolume({ ...hole, ...wall }) + collar
    near(guideMesh(g, FINE_m), exact)
  })

  it('drilling guide in as many pieces as beds of several sizes need, with blind holes for pins', () => {
    for (const [cut, square] of [
      ['axis', null],
      ['square', squareCutExtent(hole)],
    ] as const) {
      const whole = guideMesh(guideOf({ hole, cut, square, markRise_m })!, ERROR_m)!
      for (const bed_m of [0.1, 0.075, 0.06]) {
        const pieces = piecesFor(whole, bed_m)!
        expect(pieces.length, `${cut} ${bed_m}`).toBeGreaterThan(1)
        for (const m of pieces) {
          const { low, high } = boxOf(m)
          for (const k of [0, 1, 2] as const) expect(high[k] - low[k]).toBeLessThanOrEqual(bed_m + 1e-6)
          expect(looseSides(m)).toBe(0)
          expect(kernelVolume(m).status).toBe('NoError')
          expect(Math.abs(kernelVolume(m).volume_m3 / volumeOf(m) - 1)).toBeLessThan(1e-4)
        }
        // A blind hole of 1.9 mm is 3 mm deep; a prism of 16 sides in it: 8 r² sin(2π/16) d.
        const pin_m3 = 8 * 0.00095 ** 2 * Math.sin(Math.PI / 8) * 0.003
        const lost = (volumeOf(whole) - pieces.reduce((sum, m) => sum + volumeOf(m), 0)) / pin_m3
        expect(Math.abs(lost - Math.round(lost)), `${cut} ${bed_m} ${lost}`).toBeLessThan(0.02)
        // Two holes for each pin, and every joint has a pin.
        expect(Math.round(lost) % 2).toBe(0)
        expect(Math.round(lost) / 2).toBeGreaterThanOrEqual(pieces.length - 1)
      }
    }
  })

  it('drilling guide for a hole that is cut square', () => {
    const g = guideOf({ hole, cut: 'square', square: squareCutExtent(hole), markRise_m })!
    const { left, right } = squareSides(hole)
    const open = integral((u) => squareEdges(hole, u)[1] - squareEdges(hole, u)[0], left, right)
    near(guideMesh(g, FINE_m), sleeve(g) - ((g.outer_m ** 2 - g.inner_m ** 2) / 2) * open)
  })

  it('cup, ring and lid', () => {
    const holes = [0, 1, 2, 3, 4].map((i) => ({ turn_rad: 0.3 + i, distance_m: 0.03, radius_m: 0.002 }))
    const cup = cupMesh({ outside_m: 0.1, depth_m: 0.06, wall_m: 0.003, floor_m: 0.002, holes, error_m: FINE_m })
    near(cup, Math.PI * (0.05 ** 2 * 0.06 - 0.047 ** 2 * 0.058 - 5 * 0.002 ** 2 * 0.002))
    const windows = { count: 6, radius_m: 0.005, height_m: 0.012 }
    const ring = ringMesh({ inside_m: 0.111, wall_m: 0.004, depth_m: 0.03, windows, error_m: FINE_m })
    const plug = {
      columnRadius_m: 0.0595,
      columnWall_m: 0.004,
      holeRadius_m: 0.005,
      angle_rad: Math.PI / 2,
      offset_m: 0,
    }
    near(ring, Math.PI * (0.0595 ** 2 - 0.0555 ** 2) * 0.03 - 6 * plugVolume(plug))
    const lid = lidMesh({
      outside_m: 0.33,
      sheet_m: 0.004,
      hole_m: 0.111,
      skirt: { outside_m: 0.288, wall_m: 0.003, depth_m: 0.015 },
      holes: [{ turn_rad: 0, distance_m: 0.098, radius_m: 0.0375 }],
      error_m: FINE_m,
    })
    const skirt = (0.144 ** 2 - 0.141 ** 2) * 0.015
    near(lid, Math.PI * ((0.165 ** 2 - 0.0555 ** 2 - 0.0375 ** 2) * 0.004 + skirt))
  })
})

describe('facets stay within the chord error of the true surface', () => {
  it.each(['balcony', 'hall'] as const)('column of %s, cut along the stub', (name) => {
    const m = madeOf(example(name))
    const { hole, column, cut, markRise_m } = jointOf(m)
    expect(cut).toBe('axis')
    if (!isKnown(m.facts.layout)) throw new Error('no layout')
    const { sites, columnLength_m } = m.facts.layout.known
    const mesh = baked(m.parts.find((p) => p.id === 'column')!.scene)
    const [s, c] = [Math.sin(hole.angle_rad), Math.cos(hole.angle_rad)]
    const off = (x: number, y: number, z: number): number => {
      const round = Math.hypot(x, y)
      const plain = [round - column.outside_m / 2, round - column.bore_m / 2, z, z - columnLength_m].map(Math.abs)
      const tubes = sites.map(({ turn_rad, mark_m }) => {
        const [u, v, w] = [
          x * Math.cos(turn_rad) + y * Math.sin(turn_rad),
          y * Math.cos(turn_rad) - x * Math.sin(turn_rad),
          z - mark_m + markRise_m,
        ]
        return Math.abs(Math.hypot(u * c - w * s, v - hole.offset_m) - hole.holeRadius_m)
      })
      return Math.min(...plain, ...tubes)
    }
    let worst = 0
    const p = mesh.positions
    for (let f = 0; f < mesh.indices.length; f += 3) {
      const [a, b, d] = [0, 1, 2].map((k) => 3 * mesh.indices[f + k]!)
      const at = (k: number, wa: number, wb: number, wd: number) => wa * p[a! + k]! + wb * p[b! + k]! + wd * p[d! + k]!
      for (const [wa, wb, wd] of [
        [1 / 3, 1 / 3, 1 / 3],
        [0.5, 0.5, 0],
        [0, 0.5, 0.5],
        [0.5, 0, 0.5],
      ] as const)
        worst = Math.max(worst, off(at(0, wa, wb, wd), at(1, wa, wb, wd), at(2, wa, wb, wd)))
    }
    expect(worst).toBeLessThan(ERROR_m)
  })
})

/** A second reader of STL, by its layout. */
function readStl(bytes: Uint8Array): { readonly corners: Float32Array; readonly straight: number } {
  const view = new DataView(bytes.buffer, bytes.byteOffset)
  const count = view.getUint32(80, true)
  expect(bytes.length).toBe(84 + 50 * count)
  const corners = new Float32Array(9 * count)
  let straight = 1
  for (let i = 0; i < count; i++) {
    const number = (k: number) => view.getFloat32(84 + 50 * i + 4 * k, true)
    for (let k = 0; k < 9; k++) corners[9 * i + k] = number(3 + k)
    straight = Math.min(straight, Math.hypot(number(0), number(1), number(2)))
  }
  return { corners, straight }
}

/** Corners of every triangle in a row, in millimetres. */
function soup(m: Mesh): Float32Array {
  const out = new Float32Array(3 * m.indices.length)
  m.indices.forEach((v, i) => {
    for (let k = 0; k < 3; k++) out[3 * i + k] = m.positions[3 * v + k]! * 1000
  })
  return out
}

const farthest = (a: ArrayLike<number>, b: ArrayLike<number>): number => {
  expect(a.length).toBe(b.length)
  let most = 0
  for (let i = 0; i < a.length; i++) most = Math.max(most, Math.abs(a[i]! - b[i]!))
  return most
}

/** A reader of 3MF: the archive, its relations, meshes and where they stand. */
function read3mf(bytes: Uint8Array): Float32Array {
  const files = unzipSync(bytes)
  const target = /Target="\/([^"]+)"/.exec(strFromU8(files['_rels/.rels']!))![1]!
  const xml = strFromU8(files[target]!)
  expect(xml).toContain('<model unit="millimeter"')
  const objects = [...xml.matchAll(/<object id="(\d+)".*?<\/object>/gs)].map(([text, id]) => ({
    id,
    v: [...text.matchAll(/<vertex x="(\S+)" y="(\S+)" z="(\S+)"\/>/g)].map((r) => r.slice(1).map(Number)),
    t: [...text.matchAll(/<triangle v1="(\d+)" v2="(\d+)" v3="(\d+)"\/>/g)].flatMap((r) => r.slice(1).map(Number)),
  }))
  return Float32Array.from(
    [...xml.matchAll(/<item objectid="(\d+)"[^>]* transform="([^"]+)"/g)].flatMap(([, id, text]) => {
      const m = text!.split(' ').map(Number)
      const o = objects.find((x) => x.id === id)!
      return o.t.flatMap((i) =>
        [0, 1, 2].map((k) => m[9 + k]! + [0, 1, 2].reduce((sum, j) => sum + o.v[i]![j]! * m[3 * j + k]!, 0)),
      )
    }),
  )
}

describe('files are read back', () => {
  const chosen = [example('balcony'), withAll(example('school'), { 'tools/bed': '90 mm' }), ...plans.slice(0, 50)]
  const every = chosen.flatMap((d, i) => madeOf(d).parts.filter((p) => i < 4 || p.id !== 'tower'))

  it('STL, by three and by its layout', () => {
    for (const part of every) {
      const mesh = baked(part.scene)
      const bytes = stl(mesh, part.name)
      const want = soup(mesh)
      const own = readStl(bytes)
      expect(farthest(own.corners, want)).toBeLessThan(1e-3)
      expect(own.straight).toBeCloseTo(1, 5)
      const read = new STLLoader().parse(bytes.buffer as ArrayBuffer)
      expect(farthest(read.attributes['position']!.array, want)).toBeLessThan(1e-3)
    }
  })

  it('GLB, by three', async () => {
    for (const part of every) {
      const bytes = glb(part.scene)
      const { scene } = await new GLTFLoader().parseAsync(bytes.buffer as ArrayBuffer, '')
      scene.updateMatrixWorld(true)
      const found: number[] = []
      scene.traverse((o) => {
        const shown = o as ShownMesh
        if (!shown.isMesh) return
        const position = shown.geometry.attributes['position']!.clone().applyMatrix4(shown.matrixWorld)
        // Metres with y up back into ours.
        for (const v of shown.geometry.index!.array)
          found.push(position.getX(v) * 1000, -position.getZ(v) * 1000, position.getY(v) * 1000)
      })
      expect(farthest(found, soup(baked(part.scene)))).toBeLessThan(1e-3)
    }
  })

  it('3MF, by its layout; the printed ones stand in front of the origin', () => {
    // The text of a column is large: the rest is the same writer.
    for (const part of every.filter((p, i) => p.id !== 'column' || i < 30)) {
      const found = read3mf(threeMf(part.scene, part.name))
      const mesh = baked(part.scene)
      const { low } = boxOf(mesh)
      const want = soup(mesh).map((x, i) => x - low[i % 3]! * 1000)
      expect(farthest(found, want)).toBeLessThan(1e-3)
    }
  })

  it('are the same bytes twice', () => {
    const twice = [0, 1].map(() =>
      madeOf(example('balcony')).parts.map((p) => [threeMf(p.scene, p.name), glb(p.scene)]),
    )
    const flat = (set: (typeof twice)[number]) => Buffer.concat(set.flat())
    expect(flat(twice[0]!).equals(flat(twice[1]!))).toBe(true)
  })
})
