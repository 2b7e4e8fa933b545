import { bounds } from '../drawing/bounds.ts'
import { lettersWidth } from '../drawing/letters.ts'
import { lettering, line, type Page, type Point, rectangle } from '../drawing/primitives.ts'
import { moved } from '../drawing/transform.ts'
import { paragraph, subheading } from '../paper/words.ts'
import type { Block, ExampleBlock } from './model.ts'
import type { Size } from './paper.ts'
import { AIR_mm, type Piece, said, stacked, tickPiece } from './piece.ts'
import { stepPieces } from './pieces-step.ts'

const BESIDE_mm = 6
/** Taken by the box of a line to tick. */
const INDENT_mm = 6.4
const ROW_mm = 7.6
const WHOLE_mm = 110
/** In a column narrower than this, a table of two columns of words is set as words under words. */
const NARROW_mm = 120

/** Pieces one below the other, a table that goes on over pages, or a page of its own. */
export type Laid =
  | { readonly pieces: readonly Piece[] }
  | { readonly page: Page }
  | { readonly rows: Extract<Block, { kind: 'table' }> }

const headingPiece = (text: string, width: number): Piece => ({
  height_mm: subheading({ at: [0, 0], text, width_mm: width }).height_mm + 2,
  draw: ([x, y]) => subheading({ at: [x, y - 2.4], text, width_mm: width }).drawing,
  holds: true,
})

/** The title of a chapter that begins within a page. */
export function chapterPiece(title: string, width: number): Piece {
  const set = ([x, y]: Point) =>
    paragraph({ at: [x, y - 4], width_mm: width, text: title, face: 'serif', size_mm: 6, balanced: true })
  return {
    height_mm: set([0, 0]).height_mm + 8,
    draw: ([x, y]) => [line([x, y - 1], [x + width, y - 1], 'visible'), ...set([x, y]).drawing],
    holds: true,
  }
}

/** Empty cells in a grid, the first column as wide as its words. */
function formPieces(b: Extract<Block, { kind: 'form' }>, width: number, { small_mm }: Size): readonly Piece[] {
  const n = b.columns.length
  const wide =
    n <= 3
      ? [n === 3 ? 0.38 : 0.46, ...(n === 3 ? [0.36, 0.26] : [0.54])]
      : b.columns.map((_, i) => (i === n - 1 ? 2 : 1))
  const sum = wide.reduce((a, w) => a + w, 0)
  const lefts = wide.map((_, i) => (wide.slice(0, i).reduce((a, w) => a + w, 0) / sum) * width)
  const cell = (i: number) => (wide[i]! / sum) * width
  const row = (texts: readonly string[], face: 'serif' | 'italic', size_mm: number): Piece => {
    const set = ([x, y]: Point) =>
      texts.map((text, i) =>
        paragraph({ at: [x + lefts[i]! + 1.2, y - 1.2], width_mm: cell(i) - 2.4, text, face, size_mm }),
      )
    const height_mm = Math.max(ROW_mm, ...set([0, 0]).map((t) => t.height_mm + 2.4))
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
  const head = row(b.columns, 'italic', Math.min(3, small_mm))
  const rows = [head, ...b.rows.map((r) => row(r, 'serif', small_mm)), { height_mm: 3, draw: () => [] }]
  const high = rows.reduce((total, r) => total + r.height_mm, 0)
  // A short form stays whole; a long one goes on over the page.
  return high < WHOLE_mm
    ? [{ height_mm: high, draw: (at) => stacked(rows, at) }]
    : [{ ...head, holds: true }, ...rows.slice(1)]
}

/** Room under a question for the sum. */
const WORKING_mm = 2

function examplePiece(b: ExampleBlock, width: number, { text_mm }: Size): Piece {
  const rows = [
    said(b.question, width, 'medium', text_mm + 0.3),
    said(b.given, width, 'serif', text_mm),
    said(b.rule, width, 'italic', text_mm),
    said(b.answer, width, 'serif', text_mm + 0.5),
  ]
  const height_mm = rows.reduce((sum, r) => sum + r.height_mm, 0) + 2
  return {
    height_mm: height_mm + WORKING_mm,
    draw: ([x, y]) => [line([x, y], [x + width, y], 'thin'), ...stacked(rows, [x, y - 2.4])],
  }
}

/** A name, and under it what is said of it. */
function namedPiece([name = '', text = '']: readonly string[], width: number, { small_mm }: Size): Piece {
  const rows = [said(name, width, 'medium', small_mm + 0.1, 0.2), said(text, width, 'serif', small_mm, 0)]
  const height_mm = rows.reduce((sum, r) => sum + r.height_mm, 0) + 2.2
  return { height_mm, draw: (at) => stacked(rows, at) }
}

function contentsPieces(b: Extract<Block, { kind: 'contents' }>, width: number, { text_mm }: Size): readonly Piece[] {
  const row = (l: (typeof b.lines)[number]): Piece => {
    const size_mm = l.under ? text_mm - 0.4 : text_mm
    const indent = l.under ? 5 : 0
    const set = ([x, y]: Point) =>
      paragraph({ at: [x + indent, y], width_mm: width - indent - 14, text: l.text, size_mm })
    return {
      height_mm: set([0, 0]).height_mm + (l.under ? 0.3 : 1),
      draw: ([x, y]) => [
        ...set([x, y]).drawing,
        lettering([x + width, y - size_mm * 0.9], l.page, { face: 'serif', size_mm, anchor: 'end' }),
      ],
    }
  }
  return [headingPiece(b.title, width), ...b.lines.map(row)]
}

function picturePiece(b: Extract<Block, { kind: 'picture' }>): readonly Piece[] {
  const { drawing } = b.picture
  const box = bounds(drawing)
  if (box === null) return []
  const high = box.top - box.bottom
  return [{ height_mm: high + 3, draw: ([x, y]) => moved(drawing, [x - box.left, y - high - box.bottom]) }]
}

export function laid(b: Block, width: number, size: Size): Laid {
  switch (b.kind) {
    case 'sheet':
      return { page: b.page }
    case 'text': {
      const face = b.tone === 'caution' ? 'medium' : b.tone === 'quiet' ? 'italic' : 'serif'
      return {
        pieces: [said(b.text, width, face, b.tone === 'quiet' ? size.small_mm : size.text_mm, AIR_mm * size.air)],
      }
    }
    case 'heading':
      return { pieces: [headingPiece(b.text, width)] }
    case 'ticks':
      return {
        pieces: (b.across ?? 1) > 2 ? packed(b.lines, width, size) : across(b.lines, width, b.across ?? 1, size),
      }
    case 'table':
      return width < NARROW_mm && b.columns.every((c) => c.heading === '' && c.align === 'words') && b.id === 'open'
        ? { pieces: b.rows.map((r) => namedPiece(r, width, size)) }
        : { rows: b }
    case 'form':
      return { pieces: formPieces(b, width, size) }
    case 'contents':
      return { pieces: contentsPieces(b, width, size) }
    case 'picture':
      return { pieces: picturePiece(b) }
    case 'step':
      return { pieces: stepPieces(b, width, size) }
    case 'example':
      return { pieces: [examplePiece(b, width, size)] }
  }
}

/** Lines to tick, so many beside each other, read downwards. */
function across(lines: readonly { readonly text: string }[], width: number, n: number, size: Size): readonly Piece[] {
  const each = n === 1 ? size : { ...size, text_mm: size.small_mm }
  const side = (width - (n - 1) * BESIDE_mm) / n
  const deep = Math.ceil(lines.length / n)
  return Array.from({ length: deep }, (_, i): Piece => {
    const row = Array.from({ length: n }, (_, k) => lines[k * deep + i]).map((l) =>
      l === undefined ? null : tickPiece(l.text, side, each),
    )
    return {
      height_mm: Math.max(...row.map((p) => p?.height_mm ?? 0)),
      draw: ([x, y]) => row.flatMap((p, k) => p?.draw([x + k * (side + BESIDE_mm), y]) ?? []),
    }
  })
}

/** Short lines to tick, one after the other like words, each kept whole. */
function packed(lines: readonly { readonly text: string }[], width: number, size: Size): readonly Piece[] {
  const each = { ...size, text_mm: size.small_mm }
  const wide = (text: string) =>
    Math.min(width, lettersWidth({ text, face: 'serif', size_mm: each.text_mm }) + INDENT_mm + 0.2)
  const rows: { readonly at: number; readonly text: string }[][] = []
  let used = Number.POSITIVE_INFINITY
  for (const { text } of lines) {
    if (used + wide(text) > width) {
      rows.push([])
      used = 0
    }
    rows.at(-1)!.push({ at: used, text })
    used += wide(text) + BESIDE_mm
  }
  return rows.map((row): Piece => {
    const set = row.map(({ at, text }) => ({ at, piece: tickPiece(text, wide(text), each) }))
    return {
      height_mm: Math.max(...set.map((s) => s.piece.height_mm)),
      draw: ([x, y]) => set.flatMap((s) => s.piece.draw([x + s.at, y])),
    }
  })
}
