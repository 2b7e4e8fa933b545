import { bounds } from '../drawing/bounds.ts'
import { lettersWidth } from '../drawing/letters.ts'
import { type Drawing, lettering, line, type Point, rectangle } from '../drawing/primitives.ts'
import { moved } from '../drawing/transform.ts'
import { paragraph } from '../paper/words.ts'
import type { StepBlock } from './model.ts'
import type { Size } from './paper.ts'
import { type Piece, said, stacked, tickPiece } from './piece.ts'

/** Between a step's words and its picture. */
const BESIDE_mm = 5
/** Words beside a picture are not set narrower than this; below it where they would be. */
const LEAST_WORDS_mm = 50
const TITLE_mm = 4.2
const ASIDE_mm = 3
const UNDER_PICTURE_mm = 2
const BOX_mm = 3.6
const INDENT_mm = 6.4

/** Title and times on one line where both fit, else one below the other. */
function headPiece(b: StepBlock, width: number): Piece {
  const one =
    lettersWidth({ text: b.title, face: 'strong', size_mm: TITLE_mm }) +
      lettersWidth({ text: b.aside, face: 'italic', size_mm: ASIDE_mm }) +
      8 <
    width
  return {
    height_mm: one ? 8 : 12.2,
    draw: ([x, y]) => [
      line([x, y - 0.6], [x + width, y - 0.6], 'thin'),
      lettering([x, y - 5.4], b.title, { face: 'strong', size_mm: TITLE_mm }),
      lettering(one ? [x + width, y - 5.4] : [x, y - 9.6], b.aside, {
        face: 'italic',
        size_mm: ASIDE_mm,
        tone: 'quiet',
        anchor: one ? 'end' : 'start',
      }),
    ],
    holds: true,
  }
}

function testPiece(text: string, width: number, { text_mm, air }: Size): Piece {
  const set = ([x, y]: Point) => ({
    box: rectangle({ left: x, right: x + BOX_mm, bottom: y - 4.2, top: y - 0.6 }, 'visible'),
    words: paragraph({
      at: [x + INDENT_mm, y - 0.4],
      width_mm: width - INDENT_mm,
      text,
      face: 'medium',
      size_mm: text_mm,
    }),
  })
  return {
    height_mm: set([0, 0]).words.height_mm + 2.6 * air,
    draw: (at) => [set(at).box, ...set(at).words.drawing],
  }
}

/** In the middle of the column. */
function picturePiece(drawing: Drawing, width: number): Piece {
  const box = bounds(drawing)
  if (box === null) return { height_mm: 0, draw: () => [] }
  const left = Math.max(0, (width - (box.right - box.left)) / 2)
  return {
    height_mm: box.top - box.bottom + 2 * UNDER_PICTURE_mm,
    draw: ([x, y]) => moved(drawing, [x + left - box.left, y - UNDER_PICTURE_mm - box.top]),
  }
}

/** A step: its words, and beside them its picture where that leaves room enough, else below; either may go on overleaf. */
export function stepPieces(b: StepBlock, width: number, size: Size): readonly Piece[] {
  const box = b.picture === null ? null : bounds(b.picture.drawing)
  const pictured = box === null ? 0 : box.right - box.left
  const beneath = width - pictured - BESIDE_mm < LEAST_WORDS_mm
  const words = box === null || beneath ? width : width - pictured - BESIDE_mm
  const head = headPiece(b, width)
  const rows = [
    ...[...b.waits, ...b.cautions].map((t) => said(t, words, 'medium', size.small_mm + 0.1, 1.6 * size.air)),
    ...b.acts.map((a) => tickPiece(a.text, words, size)),
    ...(b.test === null ? [] : [testPiece(b.test.text, words, size)]),
    { height_mm: 1.5, draw: () => [] },
  ]
  if (b.picture === null || box === null) return [head, ...rows]
  if (beneath) {
    const held = rows.slice(0, -1).map((r, i, all) => (i === all.length - 1 ? { ...r, holds: true } : r))
    return [head, ...held, picturePiece(b.picture.drawing, width), ...rows.slice(-1)]
  }
  const high = box.top - box.bottom + UNDER_PICTURE_mm
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
