import { bounds } from '../drawing/bounds.ts'
import {
  type Drawing,
  lettering,
  line,
  type Page,
  type Point,
  type Primitive,
  rectangle,
} from '../drawing/primitives.ts'
import { moved } from '../drawing/transform.ts'
import { sheet } from '../paper/sheet.ts'
import { areas } from '../paper/size.ts'
import { table } from '../paper/table.ts'
import { actions, paragraph, subheading } from '../paper/words.ts'
import { ruled } from '../sheets/blanks.ts'
import type { Given } from './input.ts'
import type { Block, Booklet, Chapter, ExampleBlock, StepBlock } from './model.ts'

const TEXT_mm = 3.6
const SMALL_mm = 3.3
/** Between a step's words and its picture. */
const BESIDE_mm = 6
const ROW_mm = 8
const AIR_mm = 2.2

/** A block on paper: what it takes from the top, and how it is drawn; a tall one may be parted. */
interface Piece {
  readonly height_mm: number
  readonly draw: (at: Point) => Drawing
  /** A heading is not left alone at the foot of a page. */
  readonly holds?: boolean
}

/** A block of its own page: a sheet as it is. */
type Laid = { readonly pieces: readonly Piece[] } | { readonly page: Page }

const said = (text: string, width: number, face: 'serif' | 'italic' | 'medium', size_mm = TEXT_mm): Piece => ({
  height_mm: paragraph({ at: [0, 0], width_mm: width, text, face, size_mm }).height_mm + AIR_mm,
  draw: (at) => paragraph({ at, width_mm: width, text, face, size_mm }).drawing,
})

const headingPiece = (text: string, width: number): Piece => ({
  height_mm: subheading({ at: [0, 0], text, width_mm: width }).height_mm + 4,
  draw: ([x, y]) => subheading({ at: [x, y - 4], text, width_mm: width }).drawing,
  holds: true,
})

/** A table row by row, so that a page may end between any two; columns stay as wide as the whole table has them. */
function tablePieces(b: Extract<Block, { kind: 'table' }>, width: number, most_mm: number): readonly Piece[] {
  const out: Piece[] = []
  let rest = b.rows
  while (rest.length > 0) {
    const rows = rest
    const set = (at: Point) =>
      table({ at, columns: b.columns, rows, width_mm: width, height_mm: most_mm, size_mm: SMALL_mm, boxed: b.ticked })
    const t = set([0, 0])
    out.push({ height_mm: t.height_mm + 3, draw: (at) => set(at).drawing })
    if (t.rest.length >= rest.length) break
    rest = t.rest
  }
  return out
}

/** Empty cells in a grid, the first column as wide as its words. */
function formPieces(b: Extract<Block, { kind: 'form' }>, width: number): readonly Piece[] {
  const n = b.columns.length
  const wide = n <= 3 ? [0.46, ...(n === 3 ? [0.27, 0.27] : [0.54])] : b.columns.map((_, i) => (i === n - 1 ? 2 : 1))
  const sum = wide.reduce((a, w) => a + w, 0)
  const lefts = wide.map((_, i) => (wide.slice(0, i).reduce((a, w) => a + w, 0) / sum) * width)
  const cell = (i: number) => (wide[i]! / sum) * width
  const row = (texts: readonly string[], face: 'serif' | 'italic', size_mm: number): Piece => {
    const set = ([x, y]: Point) =>
      texts.map((text, i) =>
        paragraph({ at: [x + lefts[i]! + 1.2, y - 1.4], width_mm: cell(i) - 2.4, text, face, size_mm }),
      )
    const height_mm = Math.max(ROW_mm, ...set([0, 0]).map((t) => t.height_mm + 2.8))
    return {
      height_mm,
      draw: ([x, y]) => [
        ...texts.map((_, i) =>
          rectangle({ left: x + lefts[i]!, right: x + lefts[i]! + cell(i), top: y, bottom: y - height_mm }, 'thin'),
        ),
        ...set([x, y]).flatMap((t) => t.drawing),
      ],
    }
  }
  const head = row(b.columns, 'italic', 3)
  return [{ ...head, holds: true }, ...b.rows.map((r) => row(r, 'serif', SMALL_mm)), { height_mm: 3, draw: () => [] }]
}

function stepPieces(b: StepBlock, width: number, most_mm: number): readonly Piece[] {
  const box = b.picture === null ? null : bounds(b.picture.drawing)
  const pictured = box === null ? 0 : box.right - box.left
  const words = box === null ? width : width - pictured - BESIDE_mm
  const head: Piece = {
    height_mm: 11.5,
    draw: ([x, y]) => [
      line([x, y - 1], [x + width, y - 1], 'thin'),
      lettering([x, y - 6.4], b.title, { face: 'strong', size_mm: 4.2 }),
      lettering([x, y - 10.4], b.aside, { face: 'italic', size_mm: 3, tone: 'quiet' }),
    ],
    holds: true,
  }
  const acts = b.acts.map((a): Piece => {
    const set = (at: Point) => actions({ at, width_mm: words, lines: [a.text], size_mm: TEXT_mm })
    return { height_mm: set([0, 0]).height_mm + 2.2, draw: (at) => set(at).drawing }
  })
  const test = b.test === null ? [] : [testPiece(b.test.text, words)]
  const rows = [...[...b.waits, ...b.cautions].map((t) => said(t, words, 'medium', 3.4)), ...acts, ...test]
  if (box === null) return [head, ...rows]
  const high = box.top - box.bottom
  const rowsHigh = rows.reduce((sum, r) => sum + r.height_mm, 0)
  const height_mm = head.height_mm + Math.max(rowsHigh, high + 3)
  // Too long for one page: the picture under the heading, the words below it.
  if (height_mm > most_mm)
    return [
      head,
      { height_mm: high + 3, draw: ([x, y]) => moved(b.picture!.drawing, [x - box.left, y - high - box.bottom]) },
      ...stepPieces({ ...b, picture: null }, width, most_mm).slice(1),
    ]
  return [
    {
      height_mm,
      draw: ([x, y]) => {
        const out: Primitive[] = [...head.draw([x, y])]
        let low = y - head.height_mm
        for (const r of rows) {
          out.push(...r.draw([x, low]))
          low -= r.height_mm
        }
        out.push(
          ...moved(b.picture!.drawing, [x + width - pictured - box.left, y - head.height_mm - high - box.bottom]),
        )
        return out
      },
    },
  ]
}

function testPiece(text: string, width: number): Piece {
  const set = ([x, y]: Point) => ({
    box: rectangle({ left: x, right: x + 3.6, bottom: y - 4.2, top: y - 0.6 }, 'visible'),
    words: paragraph({ at: [x + 6.4, y - 0.4], width_mm: width - 6.4, text, face: 'medium', size_mm: TEXT_mm }),
  })
  return {
    height_mm: set([0, 0]).words.height_mm + 3,
    draw: (at) => [set(at).box, ...set(at).words.drawing],
  }
}

function examplePiece(b: ExampleBlock, width: number): Piece {
  const rows = [
    said(b.question, width - 8, 'medium', 4),
    said(b.given, width - 8, 'serif'),
    said(b.rule, width - 8, 'italic'),
    said(b.work, width - 8, 'serif', 4.2),
    said(b.plan, width - 8, 'serif'),
  ]
  const height_mm = rows.reduce((sum, r) => sum + r.height_mm, 0) + 4
  return {
    height_mm: height_mm + 3,
    draw: ([x, y]) => {
      let low = y - 3
      const out: Primitive[] = [rectangle({ left: x, right: x + width, bottom: y - height_mm, top: y }, 'thin')]
      for (const r of rows) {
        out.push(...r.draw([x + 4, low]))
        low -= r.height_mm
      }
      return out
    },
  }
}

function laid(b: Block, width: number, most_mm: number): Laid {
  switch (b.kind) {
    case 'sheet':
      return { page: b.page }
    case 'text':
      return {
        pieces: [said(b.text, width, b.tone === 'caution' ? 'medium' : b.tone === 'quiet' ? 'italic' : 'serif')],
      }
    case 'heading':
      return { pieces: [headingPiece(b.text, width)] }
    case 'ticks':
      return { pieces: b.lines.map((l) => tickPiece(l.text, width)) }
    case 'table':
      return { pieces: tablePieces(b, width, most_mm) }
    case 'form':
      return { pieces: formPieces(b, width) }
    case 'picture': {
      const box = bounds(b.picture.drawing)
      if (box === null) return { pieces: [] }
      const high = box.top - box.bottom
      return {
        pieces: [
          { height_mm: high + 3, draw: ([x, y]) => moved(b.picture.drawing, [x - box.left, y - high - box.bottom]) },
        ],
      }
    }
    case 'step':
      return { pieces: stepPieces(b, width, most_mm) }
    case 'example':
      return { pieces: [examplePiece(b, width)] }
  }
}

function tickPiece(text: string, width: number): Piece {
  const set = (at: Point) => actions({ at, width_mm: width, lines: [text] })
  return { height_mm: set([0, 0]).height_mm + 2.2, draw: (at) => set(at).drawing }
}

/** What stands on one page of the booklet: drawn in the body, or a sheet that is a page already. */
type Filled = { readonly title: string; readonly drawing: Drawing } | { readonly page: Page }

function filled(g: Given, c: Chapter): readonly Filled[] {
  const { body } = areas(g.paper)
  const [x, top] = [body.left, body.top - 3]
  const [width, most] = [body.right - body.left, top - body.bottom]
  const out: Filled[] = []
  let page: Primitive[] = []
  let low = top
  const turn = () => {
    if (page.length > 0)
      out.push({ title: out.length === 0 ? c.title : g.sheet.say('continued', { title: c.title }), drawing: page })
    page = []
    low = top
  }
  for (const b of c.blocks) {
    const l = laid(b, width, most)
    if ('page' in l) {
      turn()
      out.push(l)
      continue
    }
    l.pieces.forEach((p, i) => {
      const next = l.pieces[i + 1]
      const wanted = p.height_mm + (p.holds === true ? (next?.height_mm ?? 14) : 0)
      if (low - wanted < body.bottom && low < top) turn()
      page.push(...p.draw([x, low]))
      low -= p.height_mm
    })
  }
  turn()
  return out
}

/** The booklet as pages of paper: words set in the manner of the sheets, sheets as they are. */
export function bookletPages(g: Given, b: Booklet): readonly Page[] {
  const all = b.chapters.flatMap((c) => filled(g, c))
  return all.map((p, i): Page => {
    if ('page' in p) return p.page
    const cell = (label: 'plan' | 'sheet' | 'scale' | 'change' | 'date', value: string) => ({
      label: g.sheet.say(label),
      value,
    })
    return sheet({
      paper: g.paper,
      bars: false,
      words: {
        title: p.title,
        subtitle: `${b.title}. ${b.subtitle}`,
        block: {
          plan: cell('plan', b.title),
          sheet: { label: g.tell('page-label'), value: g.tell('page', { n: String(i + 1), m: String(all.length) }) },
          scale: cell('scale', g.sheet.say('no-scale')),
          change: cell('change', String(g.plan.change ?? 0)),
          date: cell('date', g.date),
        },
        mm: g.sheet.say('mm'),
        inch: g.sheet.say('inch'),
        remark: '',
      },
      drawing: ruled(p.drawing),
    })
  })
}
