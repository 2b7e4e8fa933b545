import { readFileSync } from 'node:fs'
import { dimension } from '../../src/render/drawing/dimension.ts'
import { centreMark, leader, note, upArrow } from '../../src/render/drawing/marks.ts'
import type { FontBytes } from '../../src/render/drawing/pdf.ts'
import {
  circle,
  contour,
  type Drawing,
  line,
  type Page,
  type Point,
  polyline,
  rectangle,
} from '../../src/render/drawing/primitives.ts'
import { moved } from '../../src/render/drawing/transform.ts'
import { type SheetWords, sheet } from '../../src/render/paper/sheet.ts'
import { areas, type PaperName } from '../../src/render/paper/size.ts'
import { actions } from '../../src/render/paper/words.ts'

const font = (name: string): Uint8Array =>
  new Uint8Array(readFileSync(new URL(`../../assets/fonts/${name}.ttf`, import.meta.url)))

export const fonts: FontBytes = {
  drafting: font('RootfallDrafting'),
  serif: font('SourceSerif4-Regular'),
  italic: font('SourceSerif4-Italic'),
  medium: font('SourceSerif4-Medium'),
  strong: font('SourceSerif4-SemiBold'),
}

export const words: SheetWords = {
  title: 'Hole and stub end, full size',
  subtitle:
    'Seven-storey basil. Column 110 × 3.2, stub 50 × 1.8 at 45°. One hole and one stub of the 24; all are alike.',
  block: {
    plan: { label: 'plan', value: 'Seven-storey basil' },
    sheet: { label: 'sheet', value: '3 of 9' },
    scale: { label: 'scale', value: '1 : 1' },
    change: { label: 'change', value: '37' },
    date: { label: 'date', value: '25 11 2026' },
  },
  mm: 'mm',
  inch: 'in',
  remark: '',
}

const COLUMN_RADIUS = 55
const STUB_RADIUS = 25
const steps = Array.from({ length: 361 }, (_, i) => (i * Math.PI) / 180)

/** A stub at 45° through the wall of the column, unrolled, about its own centre. */
const hole = steps.slice(0, -1).map((t): Point => {
  const s = STUB_RADIUS * Math.sin(t)
  const sag = COLUMN_RADIUS - Math.sqrt(COLUMN_RADIUS ** 2 - s ** 2)
  return [COLUMN_RADIUS * Math.asin(s / COLUMN_RADIUS), STUB_RADIUS * Math.SQRT2 * Math.cos(t) - sag]
})

function holeDrawing(): Drawing {
  const half = 57.65
  return [
    rectangle({ left: -half, right: half, bottom: -55, top: 55 }, 'thin'),
    ...centreMark({ centre: [0, 0], reach_mm: half + 1.5 }),
    line([-half, -5], [-half, 5], 'cut'),
    line([half, -5], [half, 5], 'cut'),
    contour(hole, 'cut'),
    contour(
      hole.map(([x, y]): Point => [x * 1.06, y * 1.02 - 4]),
      'hidden',
    ),
    circle([0, 0], 3, 'visible'),
    ...dimension({ from: [0, -35.36], to: [0, 35.36], offset_mm: 33.5, figure: '70.7' }),
    ...dimension({ from: [-25.97, -6], to: [25.97, -6], offset_mm: -42.5, figure: '51.9' }),
    ...dimension({
      from: [-half, -55],
      to: [half, -55],
      offset_mm: -8,
      figure: '115.3, a third of the way round, paper 0.1 thick',
    }),
    ...leader({ to: [-2.1, 2.1], elbow: [-21, 43], lines: ['6 mm starter'] }),
    ...leader({ to: [20.9, 15], elbow: [30, 21], lines: ['blade along', 'the stub'] }),
    ...leader({ to: [27.3, -9], elbow: [33, -17], lines: ['blade square', 'to the wall'] }),
    ...note({ at: [2.2, 49.5], lines: ['line'] }),
    ...note({ at: [-half + 3, 2], lines: ['line before'] }),
    ...note({ at: [half - 3, 2], lines: ['next line'], anchor: 'end' }),
    ...note({ at: [half - 3, -4.4], lines: ['height mark'], anchor: 'end' }),
    ...upArrow({ at: [46.5, 38], text: 'up' }),
  ]
}

function stubDrawing(): Drawing {
  const around = 157.4
  const top = steps.map((t): Point => [(around * t) / (2 * Math.PI), 65 - 25 * Math.cos(t)])
  const at = (share: number): Point => top[Math.round(360 * share)]!
  const lines = Array.from({ length: 15 }, (_, i) => i + 1).map((i) => {
    const [x, y] = [(around * i) / 16, 65 - 25 * Math.cos((2 * Math.PI * i) / 16)]
    return line([x, 0], [x, y], i % 4 === 0 ? 'centre' : 'hatch')
  })
  return [
    ...lines,
    contour([[0, 0], [around, 0], ...[...top].reverse()], 'cut'),
    polyline(
      [
        [around, 40],
        [around + 10, 38.4],
        [around + 10, 1.6],
        [around, 0],
      ],
      'hidden',
    ),
    ...dimension({ from: [0, 0], to: [0, 40], offset_mm: -6.4, figure: '40' }),
    ...dimension({ from: [around / 2, 0], to: [around / 2, 90], offset_mm: 6, figure: '90' }),
    ...dimension({ from: [0, 0], to: [around, 0], offset_mm: -6.3, figure: '157.4 round the stub, paper 0.1 thick' }),
    ...leader({ to: at(0.3), elbow: [38, 79.5], lines: ['saw at 45°, one flat cut'] }),
    ...note({ at: [0, 46], lines: ['upper side'] }),
    ...note({ at: [around / 2, 92.6], lines: ['lower side'], anchor: 'middle' }),
    ...note({ at: [27, 2.1], lines: ['mouth: leave square'] }),
    ...note({ at: [around + 6, 20], lines: ['glue under'], anchor: 'middle', turn_rad: Math.PI / 2 }),
  ]
}

export const actionLines: readonly string[] = [
  'Both bars below measure 100 mm, give or take 0.5.',
  'The pipe measures 345.6 mm round. If not, type yours in.',
  'Six lines along the pipe, 57.6 mm apart.',
  'Heights on lines 1, 3, 5: 490, 850, 1210, 1570.',
  'Heights on lines 2, 4, 6: 670, 1030, 1390, 1750.',
  'Cut out the hole; lay the ticks on line and height; draw round.',
  'Starter hole, then the line.',
  'Rub down; try a stub in it.',
]

/** The hole sheet of the balcony plan; the stub end only where the paper is long enough. */
export function demoSheet(paper: PaperName): Page {
  const { body, upper } = areas(paper)
  const column = actions({
    at: [body.left + 124.5, upper.top - 2.5],
    width_mm: body.right - body.left - 124.5,
    lines: actionLines,
  })
  const stub = paper === 'A4' ? moved(stubDrawing(), [body.left, body.bottom + 1.5]) : []
  return sheet({
    paper,
    words,
    drawing: [...moved(holeDrawing(), [body.left + 57.65, upper.top - 57]), ...column.drawing, ...stub],
  })
}
