import { type Drawing, lettering, line, type Primitive, type Rect, rectangle } from '../drawing/primitives.ts'
import { oneLine } from './words.ts'

/** What one cell of the title block says: a small label and the word or number below it. */
export interface Cell {
  readonly label: string
  readonly value: string
}

export interface TitleBlock {
  readonly plan: Cell
  readonly sheet: Cell
  readonly scale: Cell
  readonly change: Cell
  readonly date: Cell
}

export const TITLE_BLOCK_mm = { width: 68, height: 20.4 } as const

const LABEL_mm = 2.3
const VALUE_mm = 3.1
const PAD_mm = 1.9

function cell(area: Rect, { label, value }: Cell): Drawing {
  const left = area.left + PAD_mm
  const width_mm = area.right - area.left - 2 * PAD_mm
  return [
    lettering([left, area.top - 3.6], oneLine({ text: label, face: 'drafting', size_mm: LABEL_mm, width_mm }), {
      size_mm: LABEL_mm,
      tone: 'quiet',
    }),
    lettering([left, area.bottom + 1.9], oneLine({ text: value, face: 'drafting', size_mm: VALUE_mm, width_mm }), {
      size_mm: VALUE_mm,
    }),
  ]
}

/** The block in the lower right corner: whose plan, which sheet, at what scale, after which change, when. */
export function titleBlock({ right, bottom, cells }: { right: number; bottom: number; cells: TitleBlock }): Drawing {
  const { width, height } = TITLE_BLOCK_mm
  const left = right - width
  const top = bottom + height
  const mid = bottom + height / 2
  const third = left + width / 3
  const twoThirds = left + (2 * width) / 3
  const lines: readonly Primitive[] = [
    line([left, mid], [right, mid], 'visible'),
    line([twoThirds, bottom], [twoThirds, top], 'visible'),
    line([third, bottom], [third, mid], 'visible'),
    rectangle({ left, bottom, right, top }, 'cut'),
  ]
  return [
    ...lines,
    ...cell({ left, right: twoThirds, bottom: mid, top }, cells.plan),
    ...cell({ left: twoThirds, right, bottom: mid, top }, cells.sheet),
    ...cell({ left, right: third, bottom, top: mid }, cells.scale),
    ...cell({ left: third, right: twoThirds, bottom, top: mid }, cells.change),
    ...cell({ left: twoThirds, right, bottom, top: mid }, cells.date),
  ]
}
