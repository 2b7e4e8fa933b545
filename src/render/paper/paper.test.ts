import { describe, expect, it } from 'vitest'
import { bounds } from '../drawing/bounds.ts'
import { lettersWidth } from '../drawing/letters.ts'
import { circle, contour, corners, type Drawing, type Page, type Point, polyline } from '../drawing/primitives.ts'
import { corrected, correctionFactor, correctionIssues } from './correction.ts'
import { sheet } from './sheet.ts'
import { areas, papers } from './size.ts'
import { table } from './table.ts'
import { tiles } from './tiles.ts'
import { actions, oneLine, paragraph } from './words.ts'

const cell = (value: string) => ({ label: 'x', value })
const words = {
  title: 'Title',
  subtitle: 'Subtitle',
  block: {
    plan: cell('plan'),
    sheet: cell('1 of 2'),
    scale: cell('1 : 1'),
    change: cell('3'),
    date: cell('25 11 2026'),
  },
  mm: 'mm',
  inch: 'in',
  remark: '',
}

describe.each(['A4', 'Letter'] as const)('a sheet of %s', (paper) => {
  it('has parts that lie within the margins and not over each other', () => {
    const a = areas(paper)
    expect(a.heading.bottom).toBe(a.body.top)
    expect(a.body.bottom).toBeGreaterThan(a.foot.top)
    expect(a.upper.bottom).toBeGreaterThan(a.body.bottom + 100)
    const b = bounds(sheet({ paper, words, drawing: [] }).drawing)!
    // The figures of the upright bar hang out by their height; a printer reaches to 6 mm of the edge.
    expect(b.left).toBeGreaterThanOrEqual(a.page.left - 0.2)
    expect(b.right).toBeLessThan(papers[paper].width_mm - 8)
    expect(b.bottom).toBeGreaterThanOrEqual(a.page.bottom - 0.1)
    expect(b.top).toBeLessThanOrEqual(a.page.top)
  })
  it('holds words a third longer than ours without leaving the paper', () => {
    const long = 'Otwór i koniec króćca w skali rzeczywistej, z zapasem na bardzo długie słowa i jeszcze kilka '.repeat(
      3,
    )
    const p = sheet({
      paper,
      words: { ...words, title: long, subtitle: long, block: { ...words.block, plan: cell(long) } },
      drawing: [],
    })
    expect(bounds(p.drawing)!.right).toBeLessThan(papers[paper].width_mm - 8)
  })
})

describe('correction', () => {
  const page: Page = {
    width_mm: 200,
    height_mm: 300,
    drawing: [
      polyline(
        [
          [50, 100],
          [150, 100],
          [150, 200],
        ],
        'cut',
      ),
    ],
  }
  it('follows from the bar as printed', () => {
    expect(correctionFactor({ nominal_mm: 100, measured_mm: 98 })).toBeCloseTo(1.020408, 6)
  })
  it('stretches about the middle and leaves the paper', () => {
    const { page: p } = corrected({ page, correction: { x: 1.02, y: 0.99 } })
    expect([p!.width_mm, p!.height_mm]).toEqual([200, 300])
    const b = bounds(p!.drawing)!
    expect(b.right - b.left).toBeCloseTo(102, 9)
    expect(b.top - b.bottom).toBeCloseTo(99, 9)
    expect((b.left + b.right) / 2).toBeCloseTo(100, 9)
  })
  it('takes 97 and 103 of a hundred and refuses what lies beyond, naming the axis', () => {
    expect(correctionIssues({ x: 0.97, y: 1.03 })).toEqual([])
    expect(corrected({ page, correction: { x: 0.9699, y: 1.0301 } })).toEqual({
      page: null,
      issues: [
        { at: 'correction/x', expected: { low: 0.97, high: 1.03 }, received: 0.9699 },
        { at: 'correction/y', expected: { low: 0.97, high: 1.03 }, received: 1.0301 },
      ],
    })
    expect(correctionIssues({ x: Number.NaN, y: 1 })).toHaveLength(1)
  })
})

describe('tiles', () => {
  const area = { left: 14, bottom: 40, right: 182, top: 260 }
  const wide: Drawing = [
    contour(corners({ left: 0, right: 345.6, bottom: 0, top: 400 }), 'cut'),
    ...[28, 86, 200, 300].map((x) => circle([x, 200], 26, 'visible')),
  ]
  const cut = tiles({ drawing: wide, area, seamText: (n) => `to ${n}` })

  it('are as few as fit, and each fits its area', () => {
    expect(cut.map((t) => [t.number, t.row, t.column])).toEqual([
      [1, 0, 0],
      [2, 0, 1],
      [3, 0, 2],
      [4, 1, 0],
      [5, 1, 1],
      [6, 1, 2],
    ])
    for (const t of cut) {
      const b = bounds(t.drawing.filter((p) => p.kind !== 'text'))!
      expect(b.left).toBeGreaterThanOrEqual(area.left - 1e-9)
      expect(b.right).toBeLessThanOrEqual(area.right + 1e-9)
      expect(b.bottom).toBeGreaterThanOrEqual(area.bottom - 1e-9)
      expect(b.top).toBeLessThanOrEqual(area.top + 1e-9)
    }
  })

  it('name their neighbours on both sides of each seam', () => {
    const texts = cut.map((t) => t.drawing.flatMap((p) => (p.kind === 'text' ? [p.text] : [])).sort())
    expect(texts).toEqual([
      ['to 2', 'to 4'],
      ['to 1', 'to 3', 'to 5'],
      ['to 2', 'to 6'],
      ['to 1', 'to 5'],
      ['to 2', 'to 4', 'to 6'],
      ['to 3', 'to 5'],
    ])
  })

  it('laid register on register continue every line', () => {
    const marks = (n: number): readonly Point[] =>
      cut[n]!.drawing.flatMap((p) => (p.kind === 'circle' && p.pen === 'thin' ? [p.centre] : []))
    // Shift of tile 2 against tile 1, from the circle of the drawing that both show whole or in part.
    const circleOf = (n: number) =>
      cut[n]!.drawing.flatMap((p) =>
        (p.kind === 'circle' || p.kind === 'arc') && p.pen === 'visible' ? [p.centre] : [],
      )
    const shared = circleOf(0).flatMap((a) => circleOf(1).map((b): Point => [a[0] - b[0], a[1] - b[1]]))
    const joined = marks(1).filter((m) =>
      shared.some((s) => marks(0).some((k) => Math.hypot(m[0] + s[0] - k[0], m[1] + s[1] - k[1]) < 1e-9)),
    )
    expect(joined.length).toBeGreaterThanOrEqual(3)
  })

  it('are one sheet without seams where all fits, mirrored on demand', () => {
    const small: Drawing = [
      polyline(
        [
          [0, 0],
          [10, 0],
          [10, 20],
        ],
        'cut',
      ),
    ]
    const [one, ...more] = tiles({ drawing: small, area, mirror: true, seamText: () => 'x' })
    expect(more).toEqual([])
    expect(one!.drawing).toHaveLength(1)
    const p = one!.drawing[0]!
    expect(p.kind === 'path' && p.points[0]![0] - p.points[2]![0]).toBe(10)
    expect(tiles({ drawing: [], area, seamText: () => '' })).toEqual([])
  })

  it('refuse an overlap that leaves nothing', () => {
    expect(() => tiles({ drawing: wide, area, overlap_mm: 200, seamText: () => '' })).toThrow(/overlap_mm 200/)
  })
})

describe('words on paper', () => {
  const lines = ['one two three four five six seven eight nine ten', 'short', 'last']
  it('stand one action under the other, each with its box, and hand back what found no room', () => {
    const all = actions({ at: [20, 200], width_mm: 40, lines })
    expect(all.rest).toEqual([])
    expect(all.drawing.filter((p) => p.kind === 'path')).toHaveLength(3)
    const b = bounds(all.drawing)!
    expect(b.bottom).toBeGreaterThanOrEqual(200 - all.height_mm - 0.5)
    expect(b.right).toBeLessThanOrEqual(60)
    const some = actions({ at: [20, 200], width_mm: 40, height_mm: all.height_mm - 1, lines })
    expect(some.rest).toEqual(['last'])
  })
  it('report the height they take', () => {
    const p = paragraph({ at: [0, 100], width_mm: 30, text: lines[0]! })
    expect(100 - bounds(p.drawing)!.bottom).toBeLessThanOrEqual(p.height_mm)
  })
  it('are shortened to one line with an ellipsis', () => {
    const given = { text: 'a very long name of a plan', face: 'drafting', size_mm: 3, width_mm: 20 } as const
    const short = oneLine(given)
    expect(short.endsWith('…')).toBe(true)
    expect(lettersWidth({ ...given, text: short })).toBeLessThanOrEqual(20)
    expect(oneLine({ ...given, width_mm: 200 })).toBe(given.text)
  })
})

describe('a table', () => {
  const columns = [
    { heading: 'part', align: 'words' },
    { heading: 'count', align: 'figures' },
    { heading: '', align: 'unit' },
    { heading: 'standard', align: 'words' },
  ] as const
  const rows = [
    ['pipe for the column, solid wall, with no printing on the outside', '1 850', 'mm', 'EN 1401'],
    ['stub', '24', 'mm', 'EN 1401'],
  ]
  it('aligns figures on one right edge, fits its width, and keeps short words whole', () => {
    const t = table({ at: [10, 100], columns, rows, width_mm: 90 })
    expect(t.width_mm).toBeLessThanOrEqual(90.05)
    const figures = t.drawing.filter((p) => p.kind === 'text' && p.anchor === 'end')
    expect(new Set(figures.map((p) => p.kind === 'text' && p.at[0])).size).toBe(1)
    expect(t.drawing.filter((p) => p.kind === 'text' && p.text === 'EN 1401')).toHaveLength(2)
    expect(bounds(t.drawing)!.right).toBeLessThanOrEqual(100.1)
  })
  it('hands back the rows that found no room', () => {
    const whole = table({ at: [10, 100], columns, rows, width_mm: 90 })
    const part = table({ at: [10, 100], columns, rows, width_mm: 90, height_mm: whole.height_mm - 1 })
    expect(part.rest).toEqual([rows[1]])
  })
})
