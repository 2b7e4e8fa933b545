import { bounds } from '../drawing/bounds.ts'
import { type Drawing, lettering, line, type Page, type Point, rectangle } from '../drawing/primitives.ts'
import { moved } from '../drawing/transform.ts'
import { actions, paragraph, subheading } from '../paper/words.ts'
import type { Block, ExampleBlock, StepBlock } from './model.ts'

const TEXT_mm = 3.6
export const SMALL_mm = 3.3
/** Between a step's words and its picture. */
const BESIDE_mm = 6
const ROW_mm = 8
const WHOLE_mm = 130
const AIR_mm = 2.2

/** A block on paper: what it takes from the top, and how it is drawn; a tall one may be parted. */
interface Piece {
  readonly height_mm: number
  readonly draw: (at: Point) => Drawing
  /** A heading is not left alone at the foot of a page. */
  readonly holds?: boolean
}

/** Pieces one below the other, a table that goes on over pages, or a page of its own. */
export type Laid =
  | { readonly pieces: readonly Piece[] }
  | { readonly page: Page }
  | { readonly rows: Extract<Block, { kind: 'table' }> }

const said = (text: string, width: number, face: 'serif' | 'italic' | 'medium', size_mm = TEXT_mm): Piece => ({
  height_mm: paragraph({ at: [0, 0], width_mm: width, text, face, size_mm }).height_mm + AIR_mm,
  draw: (at) => paragraph({ at, width_mm: width, text, face, size_mm }).drawing,
})

const headingPiece = (text: string, width: number): Piece => ({
  height_mm: subheading({ at: [0, 0], text, width_mm: width }).height_mm + 4,
  draw: ([x, y]) => subheading({ at: [x, y - 4], text, width_mm: width }).drawing,
  holds: true,
})

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
  const rows = [head, ...b.rows.map((r) => row(r, 'serif', SMALL_mm)), { height_mm: 3, draw: () => [] }]
  const high = rows.reduce((sum, r) => sum + r.height_mm, 0)
  // A short form stays whole; a long one goes on over the page.
  return high < WHOLE_mm
    ? [{ height_mm: high, draw: (at) => stacked(rows, at) }]
    : [{ ...head, holds: true }, ...rows.slice(1)]
}

function stepPieces(b: StepBlock, width: number): readonly Piece[] {
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
  const rows = [
    ...[...b.waits, ...b.cautions].map((t) => said(t, words, 'medium', 3.4)),
    ...b.acts.map((a) => tickPiece(a.text, words)),
    ...(b.test === null ? [] : [testPiece(b.test.text, words)]),
    { height_mm: 2.5, draw: () => [] },
  ]
  if (b.picture === null || box === null) return [head, ...rows]
  // The picture stands beside as many rows as are as high; those below it may go on over the page.
  const high = box.top - box.bottom + 3
  let beside = 0
  let taken = 0
  while (beside < rows.length && taken < high) taken += rows[beside++]!.height_mm
  const { drawing } = b.picture
  const first: Piece = {
    height_mm: head.height_mm + Math.max(taken, high),
    draw: ([x, y]) => [
      ...head.draw([x, y]),
      ...stacked(rows.slice(0, beside), [x, y - head.height_mm]),
      ...moved(drawing, [x + width - pictured - box.left, y - head.height_mm - box.top]),
    ],
  }
  return [first, ...rows.slice(beside)]
}

/** Pieces one below the other. */
function stacked(pieces: readonly Piece[], [x, y]: Point): Drawing {
  let low = y
  return pieces.flatMap((p) => {
    const drawn = p.draw([x, low])
    low -= p.height_mm
    return drawn
  })
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
    said(b.question, width, 'medium', 4),
    said(b.given, width, 'serif'),
    said(b.rule, width, 'italic'),
    said(b.work, width, 'serif', 4.2),
    said(b.plan, width, 'serif'),
  ]
  const height_mm = rows.reduce((sum, r) => sum + r.height_mm, 0) + 4
  return {
    height_mm: height_mm + 3,
    draw: ([x, y]) => [line([x, y], [x + width, y], 'thin'), ...stacked(rows, [x, y - 3])],
  }
}

export function laid(b: Block, width: number): Laid {
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
      return { pieces: b.pairs === true ? pairPieces(b.lines, width) : b.lines.map((l) => tickPiece(l.text, width)) }
    case 'table':
      return { rows: b }
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
      return { pieces: stepPieces(b, width) }
    case 'example':
      return { pieces: [examplePiece(b, width)] }
  }
}

function tickPiece(text: string, width: number): Piece {
  const set = (at: Point) => actions({ at, width_mm: width, lines: [text] })
  return { height_mm: set([0, 0]).height_mm + 2.2, draw: (at) => set(at).drawing }
}

/** Short lines to tick, two beside each other. */
function pairPieces(lines: readonly { readonly text: string }[], width: number): readonly Piece[] {
  const half = Math.ceil(lines.length / 2)
  const side = (width - BESIDE_mm) / 2
  return lines.slice(0, half).map((l, i): Piece => {
    const [a, b] = [
      tickPiece(l.text, side),
      lines[half + i] === undefined ? null : tickPiece(lines[half + i]!.text, side),
    ]
    return {
      height_mm: Math.max(a.height_mm, b?.height_mm ?? 0),
      draw: ([x, y]) => [...a.draw([x, y]), ...(b?.draw([x + side + BESIDE_mm, y]) ?? [])],
    }
  })
}
