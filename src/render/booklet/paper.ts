import { type Drawing, lettering, line, type Page, type Rect } from '../drawing/primitives.ts'
import { MARGIN_mm, type PaperName, papers } from '../paper/size.ts'
import { fittingSize, oneLine } from '../paper/words.ts'

const HEAD_mm = 12.5
const FOOT_mm = 8.5
const FOOT_SIZE_mm = 2.8

/** Sizes of the letters of one chapter: as large as its pages allow, never smaller than the last. */
export interface Size {
  readonly text_mm: number
  /** Tables and what is said aside. */
  readonly small_mm: number
  /** A factor of the space between lines of action. */
  readonly air: number
}

export const SIZES: readonly Size[] = [
  { text_mm: 3.6, small_mm: 3.3, air: 1 },
  { text_mm: 3.4, small_mm: 3.1, air: 0.8 },
  { text_mm: 3.2, small_mm: 2.9, air: 0.6 },
]
/** For a list that is ticked with the paper in the hand. */
export const LIST_SIZES: readonly Size[] = [...SIZES, { text_mm: 3, small_mm: 2.7, air: 0.4 }]
/** For what is read at arm's length with the hands full. */
export const WORK_SIZES: readonly Size[] = SIZES.slice(0, 2)

/** Room for words on a page of the booklet; its foot is one line, where a sheet has its bars and title block. */
export function bodyOf(paper: PaperName): Rect {
  const { width_mm, height_mm } = papers[paper]
  return {
    left: MARGIN_mm,
    right: width_mm - MARGIN_mm,
    top: height_mm - MARGIN_mm - HEAD_mm,
    bottom: MARGIN_mm + FOOT_mm - 4,
  }
}

/** A page of words: title, hairline, what is set, and one line at the foot that tells whose plan and which page. */
export function bookPage(given: {
  readonly paper: PaperName
  readonly title: string
  readonly plan: string
  readonly number: string
  readonly drawing: Drawing
}): Page {
  const { paper, title, plan, number, drawing } = given
  const { left, right, top } = bodyOf(paper)
  const width_mm = right - left
  const size_mm = fittingSize({ text: title, face: 'serif', width_mm, sizes_mm: [6.4, 5.6, 4.8] })
  return {
    ...papers[paper],
    drawing: [
      lettering([left, top + HEAD_mm - 5], oneLine({ text: title, face: 'serif', size_mm, width_mm }), {
        face: 'serif',
        size_mm,
      }),
      line([left, top + 4], [right, top + 4], 'thin'),
      ...drawing,
      ...foot({ paper, plan, number }),
    ],
  }
}

/** The line at the foot; also under a sheet, which has its own title block above it. */
export function foot(given: {
  readonly paper: PaperName
  readonly plan: string
  readonly number: string
  readonly rule?: boolean
}): Drawing {
  const { left, right } = bodyOf(given.paper)
  const y = MARGIN_mm - 5
  const at = { size_mm: FOOT_SIZE_mm }
  return [
    lettering([left, y], oneLine({ text: given.plan, face: 'drafting', ...at, width_mm: (right - left) * 0.7 }), {
      ...at,
      tone: 'quiet',
    }),
    lettering([right, y], given.number, { ...at, anchor: 'end' }),
  ]
}
