import type { Drawing, Point } from '../drawing/primitives.ts'
import { type Column, table } from '../paper/table.ts'
import { actions, paragraph, subheading } from '../paper/words.ts'
import { widthOf } from './compose.ts'
import type { Context } from './context.ts'

/** A block that is set from its upper left corner; blocks are set one under the other, over as many pages as needed. */
export interface FeedPiece {
  readonly height_mm: number
  readonly draw: (at: Point) => Drawing
}

/** Rows that stand on one page at most, so that a long shelf flows on. */
const ROWS = 22
const UNDER_mm = 4

export const room = (c: Context): number => widthOf(c.room.drawing)

/** A heading stays with what follows it: the flow takes eight millimetres and less for one. */
export const headed = (c: Context, text: string): FeedPiece => ({
  height_mm: 8,
  draw: (at) => subheading({ at: [at[0], at[1] - 1.2], text, width_mm: room(c) }).drawing,
})

export function said(c: Context, text: string, face: 'serif' | 'italic' | 'medium' = 'serif'): FeedPiece {
  const size_mm = face === 'medium' ? 3.4 : 3.6
  const set = (at: Point) => paragraph({ at, width_mm: room(c), text, face, size_mm })
  return { height_mm: set([0, 0]).height_mm + 1.6, draw: (at) => set(at).drawing }
}

export const gap = (height_mm: number): FeedPiece => ({ height_mm, draw: () => [] })

/** A table in parts that each stand on one page. */
export function tabled(
  c: Context,
  given: {
    readonly columns: readonly Column[]
    readonly rows: readonly (readonly string[])[]
    readonly boxed?: boolean
    readonly width_mm?: number
  },
): readonly FeedPiece[] {
  const { columns, rows, boxed = false, width_mm = room(c) } = given
  const parts = Array.from({ length: Math.ceil(rows.length / ROWS) }, (_, i) => rows.slice(i * ROWS, (i + 1) * ROWS))
  return parts.map((part) => {
    const set = (at: Point) => table({ at, columns, rows: part, width_mm, size_mm: 3.4, boxed })
    return { height_mm: set([0, 0]).height_mm + UNDER_mm, draw: (at) => set(at).drawing }
  })
}

/** One act with its number and its box, under what to beware of at it. */
export function act(c: Context, text: string, cautions: readonly string[] = []): FeedPiece {
  const width_mm = room(c)
  const set = ([x, y]: Point): { readonly drawing: Drawing; readonly gone: number } => {
    let gone = 0
    const out: Drawing[number][] = []
    for (const caution of cautions) {
      const b = paragraph({ at: [x, y - gone], width_mm, text: caution, face: 'medium', size_mm: 3.4 })
      out.push(...b.drawing)
      gone += b.height_mm + 0.8
    }
    const done = actions({ at: [x, y - gone], width_mm, lines: [text] })
    return { drawing: [...out, ...done.drawing], gone: gone + done.height_mm + 2.2 }
  }
  return { height_mm: set([0, 0]).gone, draw: (at) => set(at).drawing }
}
