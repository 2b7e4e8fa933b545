import { brokenLines, lettersWidth } from '../drawing/letters.ts'
import {
  type Drawing,
  type Face,
  lettering,
  line,
  type Point,
  type Primitive,
  rectangle,
} from '../drawing/primitives.ts'
import { type Block, LEADING, TEXT_SIZE_mm } from './words.ts'

export interface Column {
  readonly heading: string
  /** Figures stand on a right edge; a `unit` follows its figure closely, `words` may wrap. */
  readonly align: 'words' | 'figures' | 'unit'
  /** Taken where given; otherwise as wide as its widest cell, and words share what is left. */
  readonly width_mm?: number
}

export interface Table extends Block {
  readonly width_mm: number
  /** The rows that found no room. */
  readonly rest: readonly (readonly string[])[]
}

const GUTTER_mm = 6
const UNIT_GUTTER_mm = 1.2
const HEAD: { readonly face: Face; readonly ratio: number; readonly least_mm: number } = {
  face: 'italic',
  ratio: 0.9,
  least_mm: 2.7,
}
const headSize = (size_mm: number): number => Math.max(HEAD.least_mm, size_mm * HEAD.ratio)
const ROW_AIR_mm = 1.9

interface Setting {
  readonly columns: readonly Column[]
  readonly rows: readonly (readonly string[])[]
  readonly width_mm: number
  readonly size_mm: number
  readonly boxed: boolean
}

const gutter = (columns: readonly Column[], i: number): number =>
  i === 0 ? 0 : columns[i]!.align === 'unit' ? UNIT_GUTTER_mm : GUTTER_mm

/** Left edge and width of each column: as wide as the widest cell; columns of words give way to their longest word. */
function measure({ columns, rows, width_mm, size_mm, boxed }: Setting): readonly { left: number; width: number }[] {
  const widest = (i: number, texts: readonly string[]) => {
    const head = lettersWidth({ text: columns[i]!.heading, face: HEAD.face, size_mm: headSize(size_mm) })
    return Math.max(head, ...texts.map((text) => lettersWidth({ text, face: 'serif', size_mm })))
  }
  const sizes = columns.map((column, i) => {
    if (column.width_mm !== undefined) return { natural: column.width_mm, slack: 0 }
    const texts = rows.map((r) => r[i] ?? '')
    const natural = widest(i, texts)
    const narrowest =
      column.align === 'words'
        ? widest(
            i,
            texts.flatMap((t) => t.split(' ')),
          )
        : natural
    return { natural, slack: natural - narrowest }
  })
  const first = boxed ? size_mm * 1.9 : 0
  const sum = (numbers: readonly number[]) => numbers.reduce((x, y) => x + y, 0)
  const wanted = first + sum(columns.map((_, i) => gutter(columns, i))) + sum(sizes.map((s) => s.natural))
  // The widest give way first: one ceiling for all, lowered until the table fits.
  const under = (ceiling: number) => sizes.map((s) => Math.min(s.natural, Math.max(s.natural - s.slack, ceiling)))
  let low = 0
  let high = Math.max(0, ...sizes.map((s) => s.natural))
  while (wanted > width_mm && high - low > 0.01) {
    const middle = (low + high) / 2
    if (sum(under(middle)) > width_mm - (wanted - sum(sizes.map((s) => s.natural)))) high = middle
    else low = middle
  }
  const widths = wanted > width_mm ? under(low) : sizes.map((s) => s.natural)
  let x = first
  return widths.map((width, i) => {
    x += gutter(columns, i)
    const left = x
    x += width
    return { left, width }
  })
}

/**
 * Rows under italic headings, a hairline between rows; figures align by their right edge (the serif's figures are
 * all of one width). `boxed` puts a box to tick before each row. `at` is the upper left corner.
 */
export function table(given: {
  readonly at: Point
  readonly columns: readonly Column[]
  readonly rows: readonly (readonly string[])[]
  readonly width_mm: number
  readonly height_mm?: number
  readonly size_mm?: number
  readonly boxed?: boolean
  /** Added to the lines of a row. */
  readonly air_mm?: number
}): Table {
  const { at, columns, rows, width_mm, height_mm = Number.POSITIVE_INFINITY } = given
  const { size_mm = TEXT_SIZE_mm, boxed = false, air_mm = ROW_AIR_mm } = given
  const cells = measure({ columns, rows, width_mm, size_mm, boxed })
  const last = cells.at(-1)
  const width = last ? last.left + last.width : 0
  const step = size_mm * LEADING
  const [x, y] = at
  const out: Primitive[] = []
  const set = (i: number, text: string, baseline: number, face: Face, size: number) => {
    const { left, width: w } = cells[i]!
    const right = columns[i]!.align === 'figures'
    const at: Point = [x + left + (right ? w : 0), baseline]
    if (text !== '') out.push(lettering(at, text, { face, size_mm: size, anchor: right ? 'end' : 'start' }))
  }
  const rule = (level: number, pen: 'thin' | 'visible') => out.push(line([x, y - level], [x + width, y - level], pen))
  let gone = 0
  if (columns.some((c) => c.heading !== '')) {
    columns.forEach((c, i) => {
      set(i, c.heading, y - size_mm * 0.9, HEAD.face, headSize(size_mm))
    })
    gone = step + 0.6
    rule(gone, 'visible')
  }
  for (const [r, row] of rows.entries()) {
    const broken = columns.map((c, i) => {
      const text = row[i] ?? ''
      return c.align === 'words'
        ? brokenLines({ text, face: 'serif', size_mm, width_mm: cells[i]!.width + 0.01 })
        : [text]
    })
    const height = Math.max(1, ...broken.map((b) => b.length)) * step + air_mm
    if (gone + height > height_mm) return { drawing: out, height_mm: gone, width_mm: width, rest: rows.slice(r) }
    const baseline = y - gone - air_mm / 2 - size_mm * 0.9
    if (boxed) {
      const foot = baseline - 0.45
      out.push(rectangle({ left: x, bottom: foot, right: x + size_mm, top: foot + size_mm }, 'thin'))
    }
    broken.forEach((lines, i) => {
      lines.forEach((text, k) => {
        set(i, text, baseline - k * step, 'serif', size_mm)
      })
    })
    gone += height
    rule(gone, 'thin')
  }
  return { drawing: out satisfies Drawing, height_mm: gone, width_mm: width, rest: [] }
}
