import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import DxfParser from 'dxf-parser'
import { describe, expect, it } from 'vitest'
import { dxf, REFERENCE_LAYER } from '../../src/render/drawing/dxf.ts'
import {
  arc,
  circle,
  contour,
  type Drawing,
  lettering,
  line,
  type Point,
  polyline,
} from '../../src/render/drawing/primitives.ts'
import { demoSheet } from './demo-sheet.ts'

const outline: readonly Point[] = Array.from({ length: 72 }, (_, i) => [
  60 + 30 * Math.cos(i / 11.459),
  40 + 20 * Math.sin(i / 11.459),
])
const drawing: Drawing = [
  contour(outline, 'cut'),
  circle([10.5, -3.25], 2, 'cut'),
  arc([0, 0], 7.5, -0.5, 1.25, 'visible'),
  line([-1 / 3, 0], [100, 25.4], 'hidden'),
  line([-1 / 3, 0], [100, 25.4], 'hidden'),
  polyline(
    [
      [0, 0],
      [1, 2],
      [3, 1],
    ],
    'thin',
  ),
  lettering([5, 6], 'Ø 50 ±0.5 at 45° łąka', { size_mm: 4, anchor: 'middle', turn_rad: Math.PI / 2 }),
]
const text = dxf({ drawing, reference: '100 mm' })

/** The second reader, by the group codes alone: 0 opens an entity, all up to the next 0 belongs to it. */
interface Entity {
  readonly type: string
  readonly codes: ReadonlyMap<number, readonly string[]>
}
function groups(source: string): readonly Entity[] {
  const rows = source.split('\r\n')
  if (rows.pop() !== '') throw new Error('no line end at the end')
  if (rows.length % 2 !== 0) throw new Error('a group code without its value')
  const out: { type: string; codes: Map<number, string[]> }[] = []
  for (let i = 0; i < rows.length; i += 2) {
    const code = Number(rows[i])
    if (!Number.isInteger(code)) throw new Error(`not a group code: ${rows[i]}`)
    const value = rows[i + 1]!
    if (code === 0) out.push({ type: value, codes: new Map() })
    else {
      const codes = out.at(-1)!.codes
      codes.set(code, [...(codes.get(code) ?? []), value])
    }
  }
  return out
}
const number = (e: Entity, code: number) => Number(e.codes.get(code)?.[0])
const near = (a: number | undefined, b: number) =>
  expect(Math.abs(a! - b), `${a} against ${b}`).toBeLessThanOrEqual(1e-5)

describe('dxf', () => {
  it('is ASCII of release 12 with the entities that every reader of it knows', () => {
    expect([...text].every((l) => l.charCodeAt(0) < 0x7f)).toBe(true)
    const read = groups(text)
    expect(read[0]!.codes.get(2)).toEqual(['HEADER'])
    expect(read[0]!.codes.get(1)).toEqual(['AC1009'])
    const start = read.findIndex((e) => e.codes.get(2)?.[0] === 'ENTITIES')
    const known = new Set(['LINE', 'ARC', 'CIRCLE', 'POLYLINE', 'VERTEX', 'SEQEND', 'TEXT', 'ENDSEC', 'EOF'])
    for (const e of read.slice(start + 1)) expect(known.has(e.type), e.type).toBe(true)
    expect(read.at(-1)!.type).toBe('EOF')
  })

  it('reads back by group codes: circles are circles, arcs arcs, contours closed, nothing twice', () => {
    const read = groups(text)
    const start = read.findIndex((e) => e.codes.get(2)?.[0] === 'ENTITIES')
    const own = read.slice(start).filter((e) => e.codes.get(8)?.[0] !== REFERENCE_LAYER)
    const only = (type: string) => own.filter((e) => e.type === type)
    const [ring] = only('CIRCLE')
    near(number(ring!, 10), 10.5)
    near(number(ring!, 20), -3.25)
    near(number(ring!, 40), 2)
    const [bow] = only('ARC')
    near(number(bow!, 50), 360 - (0.5 * 180) / Math.PI)
    near(number(bow!, 51), (1.25 * 180) / Math.PI)
    expect(only('LINE')).toHaveLength(1)
    expect(only('POLYLINE').map((e) => number(e, 70))).toEqual([1, 0])
    const vertices = only('VERTEX')
    expect(vertices).toHaveLength(outline.length + 3)
    outline.forEach(([x, y], i) => {
      near(number(vertices[i]!, 10), x)
      near(number(vertices[i]!, 20), y)
    })
    expect(only('TEXT')[0]!.codes.get(1)).toEqual(['%%c 50 %%p0.5 at 45%%d \\U+0142\\U+0105ka'])
    // Every layer that is used is in the table.
    const layers = new Set(read.filter((e) => e.type === 'LAYER').map((e) => e.codes.get(2)![0]))
    for (const e of own) for (const layer of e.codes.get(8) ?? []) expect(layers.has(layer), layer).toBe(true)
  })

  it('carries a line of exactly 100 mm on a layer of its own, and its extents hold all', () => {
    const read = groups(text)
    const mark = read.filter((e) => e.type === 'LINE' && e.codes.get(8)?.[0] === REFERENCE_LAYER)
    const lengths = mark.map((e) => Math.hypot(number(e, 11) - number(e, 10), number(e, 21) - number(e, 20)))
    expect(Math.max(...lengths)).toBe(100)
    const header = read[0]!
    const [low, high] = [0, 1].map((i) => [10, 20].map((c) => Number(header.codes.get(c)![i])))
    for (const e of read.filter((x) => x.type === 'VERTEX' || x.type === 'LINE')) {
      const [x, y] = [number(e, 10), number(e, 20)]
      expect(x >= low![0]! - 1e-6 && x <= high![0]! + 1e-6 && y >= low![1]! - 1e-6 && y <= high![1]! + 1e-6).toBe(true)
    }
  })

  it('reads back by dxf-parser', () => {
    const read = new DxfParser().parseSync(text)!
    expect(read.header.$ACADVER).toBe('AC1009')
    const own = read.entities.filter((e) => e.layer !== REFERENCE_LAYER) as unknown as readonly {
      type: string
      layer: string
      shape?: boolean
      radius?: number
      center?: { x: number; y: number }
      vertices?: readonly { x: number; y: number }[]
    }[]
    const count = (type: string) => own.filter((e) => e.type === type).length
    expect([count('CIRCLE'), count('ARC'), count('LINE'), count('POLYLINE'), count('TEXT')]).toEqual([1, 1, 1, 2, 1])
    const ring = own.find((e) => e.type === 'CIRCLE')!
    near(ring.radius, 2)
    near(ring.center!.x, 10.5)
    const path = own.find((e) => e.type === 'POLYLINE')!
    expect(path.shape).toBe(true)
    expect(path.layer).toBe('CUT')
    path.vertices!.forEach((v, i) => {
      near(v.x, outline[i]![0])
      near(v.y, outline[i]![1])
    })
  })

  it('for a cutter holds only what is cut, and the reference mark', () => {
    const read = new DxfParser().parseSync(dxf({ drawing, only: ['cut'], reference: '100 mm' }))!
    expect([...new Set(read.entities.map((e) => e.layer))].sort()).toEqual(['CUT', REFERENCE_LAYER])
  })

  it('is a valid file with nothing drawn', () => {
    expect(new DxfParser().parseSync(dxf({ drawing: [], reference: '100 mm' }))!.entities.length).toBe(4)
  })

  // The third reader is a Debian package (python3-ezdxf); where it is missing the run reports one test as skipped.
  const python = ['python3', '/usr/bin/python3'].find((p) => spawnSync(p, ['-c', 'import ezdxf']).status === 0)
  it.skipIf(python === undefined)('passes the audit of ezdxf with no error and no repair', () => {
    const folder = mkdtempSync(join(tmpdir(), 'rootfall-dxf-'))
    try {
      for (const [name, content] of [
        ['shapes', text],
        ['sheet', dxf({ drawing: demoSheet('A4').drawing, reference: '100 mm' })],
      ] as const) {
        const file = join(folder, `${name}.dxf`)
        writeFileSync(file, content)
        const program =
          'import sys,json\nfrom ezdxf import recover\nd,a=recover.readfile(sys.argv[1])\n' +
          'print(json.dumps([d.dxfversion,len(a.errors),len(a.fixes),len(d.modelspace())]))'
        const [version, errors, fixes, entities] = JSON.parse(execFileSync(python!, ['-c', program, file]).toString())
        expect([version, errors, fixes]).toEqual(['AC1009', 0, 0])
        expect(entities).toBeGreaterThan(5)
      }
    } finally {
      rmSync(folder, { recursive: true, force: true })
    }
  })
})
