import { balancedLines, brokenLines, lettersWidth } from '../drawing/letters.ts'
import { type Drawing, type Face, lettering, type Point, type Primitive, rectangle } from '../drawing/primitives.ts'

export const TEXT_SIZE_mm = 3.6
export const LEADING = 1.36

/** A block of words or rows that is set from the top down. */
export interface Block {
  readonly drawing: Drawing
  /** What it takes from the top, in whole lines. */
  readonly height_mm: number
}

/** Text set ragged right; `at` is the upper left corner. */
export function paragraph(given: {
  readonly at: Point
  readonly width_mm: number
  readonly text: string
  readonly face?: Face
  readonly size_mm?: number
  /** Lines of even length instead of full ones, for two or three short lines. */
  readonly balanced?: boolean
}): Block {
  const { at, width_mm, text, face = 'serif', size_mm = TEXT_SIZE_mm, balanced = false } = given
  const lines = (balanced ? balancedLines : brokenLines)({ text, face, size_mm, width_mm })
  const step = size_mm * LEADING
  return {
    drawing: lines.map((row, i) => lettering([at[0], at[1] - size_mm * 0.9 - i * step], row, { face, size_mm })),
    height_mm: lines.length * step,
  }
}

/** A heading within a sheet, with the space that it needs before and after; `at` is the upper left corner. */
export function subheading(given: { at: Point; text: string; width_mm: number; size_mm?: number }): Block {
  const { at, text, width_mm, size_mm = 4.4 } = given
  const block = paragraph({ at, width_mm, text, face: 'strong', size_mm })
  return { ...block, height_mm: block.height_mm + 1.4 }
}

export interface Actions extends Block {
  /** The lines that found no room. */
  readonly rest: readonly string[]
}

const BOX_mm = 3.6
const INDENT_mm = 6.4
const BETWEEN_mm = 3

/** One action a line, each with a box to tick; wraps at `width_mm`, ends at `height_mm` and says what is left over. */
export function actions(given: {
  readonly at: Point
  readonly width_mm: number
  readonly height_mm?: number
  readonly lines: readonly string[]
  readonly size_mm?: number
}): Actions {
  const { at, width_mm, height_mm = Number.POSITIVE_INFINITY, lines, size_mm = TEXT_SIZE_mm } = given
  const out: Primitive[] = []
  let gone = 0
  for (const [i, text] of lines.entries()) {
    const block = paragraph({
      at: [at[0] + INDENT_mm, at[1] - gone],
      width_mm: width_mm - INDENT_mm,
      text,
      size_mm,
      balanced: true,
    })
    if (gone + block.height_mm > height_mm) return { drawing: out, height_mm: gone, rest: lines.slice(i) }
    // The box sits on the baseline and reaches a little above the capitals.
    const foot = at[1] - gone - size_mm * 0.9 - 0.45
    out.push(
      rectangle({ left: at[0], bottom: foot, right: at[0] + BOX_mm, top: foot + BOX_mm }, 'thin'),
      ...block.drawing,
    )
    gone += block.height_mm + BETWEEN_mm
  }
  return { drawing: out, height_mm: Math.max(0, gone - BETWEEN_mm), rest: [] }
}

/** The largest of the sizes at which the text fits on one line; the smallest where none does. */
export function fittingSize(given: {
  text: string
  face: Face
  width_mm: number
  sizes_mm: readonly number[]
}): number {
  const { text, face, width_mm, sizes_mm } = given
  const fits = sizes_mm.find((size_mm) => lettersWidth({ text, face, size_mm }) <= width_mm)
  return fits ?? sizes_mm.at(-1) ?? TEXT_SIZE_mm
}

/** A text cut to one line, with an ellipsis where something was cut off. */
export function oneLine(given: { text: string; face: Face; size_mm: number; width_mm: number }): string {
  const { text, face, size_mm, width_mm } = given
  const fits = (t: string) => lettersWidth({ text: t, face, size_mm }) <= width_mm
  if (fits(text)) return text
  const letters = [...text]
  let n = letters.length
  while (n > 0 && !fits(`${letters.slice(0, n).join('').trimEnd()}…`)) n--
  return `${letters.slice(0, n).join('').trimEnd()}…`
}
