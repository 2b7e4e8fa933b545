import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import DxfParser from 'dxf-parser'
import { beforeAll, describe, expect, it } from 'vitest'
import type { TemplatesFacts } from '../../src/disciplines/templates/index.ts'
import { isKnown } from '../../src/plan/known.ts'
import { dxf } from '../../src/render/drawing/dxf.ts'
import { pdf } from '../../src/render/drawing/pdf.ts'
import type { Circle, Line, Path, Point, Primitive } from '../../src/render/drawing/primitives.ts'
import { svg } from '../../src/render/drawing/svg.ts'
import { areas, type PaperName } from '../../src/render/paper/size.ts'
import type { SheetInput } from '../../src/render/sheets/context.ts'
import { plainFiles } from '../../src/render/sheets/plain.ts'
import { type SheetSet, sheetSet } from '../../src/render/sheets/set.ts'
import { fonts } from './demo-sheet.ts'
import { letteringFaults } from './lettering.ts'
import { randomPlan, seeded } from './random-plan.ts'
import { pdfInfo, raster, strokes } from './raster.ts'
import { example, inputOf, setOf } from './set-of.ts'

interface Case {
  readonly name: string
  readonly paper: PaperName
  readonly input: SheetInput
  readonly set: SheetSet
}

const cases: Case[] = []
const files = new Map<string, Uint8Array>()
const key = (c: Case) => `${c.name} ${c.paper}`

beforeAll(async () => {
  for (const name of ['balcony', 'school', 'hall'])
    for (const paper of ['A4', 'Letter'] as const) {
      const input = inputOf(example(name), paper)
      cases.push({ name, paper, input, set: sheetSet(input) })
    }
  for (const c of cases) {
    const pages = c.set.pages.map((p) => p.page)
    const meta = { title: 't', author: 'a', subject: 's', language: 'en' }
    files.set(key(c), await pdf({ pages, fonts, ...meta }))
  }
}, 60_000)

const templatesOf = (c: Case): TemplatesFacts => {
  const { templates } = c.input.facts
  if (!isKnown(templates)) throw new Error('no templates')
  return templates.known
}

const pageOf = (c: Case, id: string) => c.set.pages.findIndex((p) => p.id === id)

/** The starter hole stands on the mark. */
const markOf = (drawing: readonly Primitive[]): Point =>
  drawing.find((p): p is Circle => p.kind === 'circle' && p.pen === 'visible' && Math.abs(p.radius_mm - 3) < 1e-9)!
    .centre

/**
 * How far, in mm, a point of the unrolled hole lies off its curve: its distance from the stub's axis less the hole's
 * radius; for a square cut the least such distance along the way through the wall. Written from the geometry alone.
 */
function offCurve(t: TemplatesFacts, [x_mm, y_mm]: Point): number {
  const { hole, cut, paper_m } = t.joint
  const R = hole.columnRadius_m
  const phi = x_mm / 1000 / (R + paper_m / 2)
  const z = y_mm / 1000 + R / Math.tan(hole.angle_rad)
  const from = (rho: number) =>
    Math.hypot(rho * Math.sin(phi), rho * Math.cos(phi) * Math.cos(hole.angle_rad) - z * Math.sin(hole.angle_rad))
  if (cut === 'axis') return (from(R) - hole.holeRadius_m) * 1000
  let least = Number.POSITIVE_INFINITY
  for (let i = 0; i <= 400; i++) least = Math.min(least, from(R - (hole.columnWall_m * i) / 400))
  return (least - hole.holeRadius_m) * 1000
}

/** Where the curve crosses a level, right of the line, by halving. */
function rightEdge(t: TemplatesFacts, y_mm: number): number {
  let [low, high] = [0, 80]
  for (let i = 0; i < 60; i++) {
    const x = (low + high) / 2
    if (offCurve(t, [x, y_mm]) < 0) low = x
    else high = x
  }
  return (low + high) / 2
}

describe('sheets of the examples', () => {
  it('has as many pages in the PDF as in the set, and the numbers n of m run through', () => {
    for (const c of cases) {
      expect(pdfInfo(files.get(key(c))!)).toMatch(new RegExp(`Pages:\\s+${c.set.pages.length}\\n`))
      c.set.pages.forEach(({ page }, i) => {
        const cell = page.drawing.find((p) => p.kind === 'text' && p.text === `${i + 1} of ${c.set.pages.length}`)
        expect(cell, `${key(c)} page ${i + 1}`).toBeDefined()
      })
    }
  })

  it('carries bars of 100 mm both ways on every page, and prints them within 0.1 mm', () => {
    for (const c of cases) {
      for (const { page } of c.set.pages) {
        const lines = page.drawing.filter((p): p is Line => p.kind === 'line' && p.pen === 'cut')
        const long = (d: (l: Line) => number) => lines.filter((l) => Math.abs(Math.abs(d(l)) - 100.25) < 1e-6)
        expect(long((l) => l.to[0] - l.from[0]).length).toBe(1)
        expect(long((l) => l.to[1] - l.from[1]).length).toBe(1)
      }
      const { foot, body, page } = areas(c.paper)
      const sheet = c.set.pages[0]!.page
      const picture = raster(files.get(key(c))!, 1)
      const row = sheet.height_mm - (foot.bottom + 4 + 11.4 + 3)
      const across = strokes(picture, 'row', row).filter((x) => x > page.left - 1 && x < page.left + 101)
      expect(Math.abs(across.at(-1)! - across[0]! - 100), key(c)).toBeLessThan(0.1)
      const up = strokes(picture, 'column', page.right - 3).filter((y) => {
        const level = sheet.height_mm - y
        return level > body.bottom - 1 && level < body.bottom + 101
      })
      expect(Math.abs(up.at(-1)! - up[0]! - 100), key(c)).toBeLessThan(0.1)
    }
  })

  it('draws the hole on its curve: SVG within 0.01 mm, print within 0.1 mm', () => {
    for (const c of cases) {
      const t = templatesOf(c)
      const at = pageOf(c, 'hole')
      const { page } = c.set.pages[at]!
      const mark = markOf(page.drawing)
      const drawn = svg({ page, title: 'hole' })
      const paths = [...drawn.matchAll(/<path d="M([^"]*)Z"[^>]*stroke-width="0.35"/g)].map((m) =>
        m[1]!
          .trim()
          .split(/[ML]/)
          .map((pair): Point => {
            const [x, y] = pair.trim().split(/[ ,]+/).map(Number)
            return [x! - mark[0], page.height_mm - y! - mark[1]]
          }),
      )
      const outline = paths.sort((a, b) => b.length - a.length)[0]!
      expect(outline.length).toBeGreaterThan(60)
      for (const p of outline) expect(Math.abs(offCurve(t, p)), key(c)).toBeLessThan(0.01)

      const picture = raster(files.get(key(c))!, at + 1)
      for (const y of [14, 5.5, -9]) {
        const expected = mark[0] + rightEdge(t, y)
        const met = strokes(picture, 'row', page.height_mm - mark[1] - y)
        expect(Math.min(...met.map((x) => Math.abs(x - expected))), `${key(c)} at ${y}`).toBeLessThan(0.1)
      }
    }
  })

  it('closes the strip of lines on the pipe: pieces in sum, marks in place, running marks as in the facts', () => {
    for (const c of cases) {
      const { layout } = c.input.facts
      if (!isKnown(layout)) throw new Error('no layout')
      const t = templatesOf(c)
      const round = (layout.known.circumference_m + Math.PI * t.joint.paper_m) * 1000
      const { page } = c.set.pages[pageOf(c, 'strip')]!
      const boxes = page.drawing
        .filter((p): p is Path => p.kind === 'path' && p.layer === 'strip')
        .map((p) => ({ left: p.points[0]![0], right: p.points[1]![0], low: p.points[0]![1] }))
        .sort((a, b) => b.low - a.low)
      expect(Math.abs(boxes.reduce((sum, b) => sum + b.right - b.left, 0) - round), key(c)).toBeLessThan(0.1)
      const marks = page.drawing.filter((p): p is Line => p.kind === 'line' && p.layer === 'strip-mark')
      const along = marks
        .map((m) => {
          const i = boxes.findIndex((b) => Math.abs(b.low - m.from[1]) < 1e-6)
          const before = boxes.slice(0, i).reduce((sum, b) => sum + b.right - b.left, 0)
          return before + m.from[0] - boxes[i]!.left
        })
        .sort((a, b) => a - b)
      expect(along.length).toBe(layout.known.lines.length)
      layout.known.lines.forEach((l, i) => {
        expect(Math.abs(along[i]! - (l.turn_rad / (2 * Math.PI)) * round)).toBeLessThan(0.1)
      })
      const csv = plainFiles(c.input).find((f) => f.name === 'marks.csv')!.text
      const rows = csv
        .trim()
        .split('\r\n')
        .slice(1)
        .map((r) => r.split(','))
      const exact = new Map(layout.known.lines.flatMap((l) => l.marks.map((m) => [m.site, m.exact_m * 1000] as const)))
      expect(rows.length).toBe(layout.known.sites.length)
      for (const r of rows) expect(Math.abs(Number(r[3]) - exact.get(Number(r[0]))!)).toBeLessThan(0.01)
    }
  })

  it('keeps its lettering on the paper, apart and filled, on every page, the whole wrap included', () => {
    for (const c of cases) {
      const sets = c.paper === 'A4' ? [c.set, sheetSet({ ...c.input, wrap: true })] : [c.set]
      for (const set of sets)
        set.pages.forEach(({ id, page }, i) => {
          expect(letteringFaults(page), `${key(c)} page ${i + 1} ${id}`).toEqual([])
        })
    }
  })

  it('warns of the laser wherever a shape may be cut from plastic', () => {
    for (const c of cases)
      for (const { id, page } of c.set.pages) {
        const warned = page.drawing.some((p) => p.kind === 'text' && /never goes into a laser/.test(p.text))
        expect(warned).toBe(['hole', 'wrap', 'stub', 'lid', 'distributor'].includes(id))
      }
  })
})

describe('shapes for a cutter', () => {
  it('are closed in the DXF, for two readers', () => {
    const python = ['python3', '/usr/bin/python3'].find((p) => spawnSync(p, ['-c', 'import ezdxf']).status === 0)
    for (const c of cases.filter((x) => x.paper === 'A4')) {
      const text = dxf({ drawing: c.set.contours, reference: '100 mm' })
      const entities = new DxfParser().parseSync(text)!.entities
      const shapes = entities.filter((e) => ['HOLE', 'STUB', 'WRAP', 'GAUGE'].includes(e.layer))
      expect(new Set(shapes.map((e) => e.layer)).size, c.name).toBe(4)
      for (const e of shapes) expect((e as unknown as { shape: boolean }).shape, `${c.name} ${e.layer}`).toBe(true)
      if (python === undefined) continue
      const folder = mkdtempSync(join(tmpdir(), 'rootfall-sheets-'))
      try {
        writeFileSync(join(folder, 'a.dxf'), text)
        const program =
          'import sys\nfrom ezdxf import recover\nd,a=recover.readfile(sys.argv[1])\n' +
          'm=d.modelspace()\nprint(len(a.errors)+len(a.fixes), all(e.is_closed for e in m.query("POLYLINE") if e.dxf.layer in ("HOLE","STUB","WRAP","GAUGE")))'
        expect(
          execFileSync(python, ['-c', program, join(folder, 'a.dxf')])
            .toString()
            .trim(),
        ).toBe('0 True')
      } finally {
        rmSync(folder, { recursive: true, force: true })
      }
    }
  })
})

describe('the printer’s scale', () => {
  const withBars = (across: string, up: string) => {
    const plan = example('balcony')
    return { ...plan, tools: { ...(plan['tools'] as object), barAcross: across, barUp: up } }
  }

  it('is corrected by what the bars measured', () => {
    const set = setOf(withBars('99 mm', '101 mm'), 'A4')
    const { page } = set.pages[0]!
    const lines = page.drawing.filter((p): p is Line => p.kind === 'line' && p.pen === 'cut')
    const width = Math.max(...lines.map((l) => Math.abs(l.to[0] - l.from[0])))
    // The heavy line reaches half a tick beyond each end of the bar.
    expect(Math.abs(width * 0.99 - 100.25)).toBeLessThan(1e-6)
  })

  it('is refused beyond what a correction may cure, with a sentence and no page', () => {
    const set = setOf(withBars('95 mm', '100 mm'), 'A4')
    expect(set.pages).toEqual([])
    expect(set.refused.length).toBe(1)
    expect(set.refused[0]).toMatch(/95 mm across/)
    expect(set.refused[0]).not.toMatch(/[{}]/)
  })
})

describe('sheets of any plan', () => {
  it('come out without fault for 30 plans drawn at random', () => {
    const random = seeded(7)
    for (let n = 0; n < 30; n++) {
      const plan = randomPlan(random)
      const set = setOf(plan, n % 2 === 0 ? 'A4' : 'Letter')
      expect(set.pages.length).toBeGreaterThan(4)
      for (const sentence of set.leftOut) expect(sentence).not.toMatch(/[{}]|undefined/)
      set.pages.forEach(({ id, page }, i) => {
        expect(letteringFaults(page), `plan ${n} page ${i + 1} ${id}`).toEqual([])
      })
    }
  }, 60_000)
})
