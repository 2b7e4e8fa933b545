import type { Drawing, Point } from '../drawing/primitives.ts'
import { actions, paragraph } from '../paper/words.ts'
import type { Size } from './paper.ts'

/** Under a paragraph. */
export const AIR_mm = 1.9

/** A block on paper: what it takes from the top, and how it is drawn; a tall one may be parted. */
export interface Piece {
  readonly height_mm: number
  readonly draw: (at: Point) => Drawing
  /** A heading is not left alone at the foot of a page. */
  readonly holds?: boolean
}

export const said = (
  text: string,
  width: number,
  face: 'serif' | 'italic' | 'medium',
  size_mm: number,
  air_mm = AIR_mm,
): Piece => ({
  height_mm: paragraph({ at: [0, 0], width_mm: width, text, face, size_mm }).height_mm + air_mm,
  draw: (at) => paragraph({ at, width_mm: width, text, face, size_mm }).drawing,
})

export function tickPiece(text: string, width: number, { text_mm, air }: Size): Piece {
  const set = (at: Point) => actions({ at, width_mm: width, lines: [text], size_mm: text_mm })
  return { height_mm: set([0, 0]).height_mm + 2 * air, draw: (at) => set(at).drawing }
}

/** Pieces one below the other. */
export function stacked(pieces: readonly Piece[], [x, y]: Point): Drawing {
  let low = y
  return pieces.flatMap((p) => {
    const drawn = p.draw([x, low])
    low -= p.height_mm
    return drawn
  })
}
