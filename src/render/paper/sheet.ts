import { type Drawing, lettering, line, type Page } from '../drawing/primitives.ts'
import { lyingBars, standingBar } from './bars.ts'
import { areas, type PaperName, papers } from './size.ts'
import { type TitleBlock, titleBlock } from './title-block.ts'
import { fittingSize, oneLine } from './words.ts'

export interface SheetWords {
  readonly title: string
  readonly subtitle: string
  readonly block: TitleBlock
  /** The units at the ends of the bars. */
  readonly mm: string
  readonly inch: string
  /** Under the heading's right end, such as the factors that this print is corrected by; may be empty. */
  readonly remark: string
}

/**
 * A sheet of paper: heading, hairline, what is drawn, two bars of 100 mm at right angles, one of 4 in, title block.
 * `drawing` stands in the coordinates of the paper; `areas(paper)` tells where there is room.
 */
export function sheet(given: {
  readonly paper: PaperName
  readonly words: SheetWords
  readonly drawing: Drawing
  /** Left out on sheets on which nothing is at full size. */
  readonly bars?: boolean
}): Page {
  const { paper, words, drawing, bars = true } = given
  const { page, heading, foot, body } = areas(paper)
  const width_mm = page.right - page.left
  const title_mm = fittingSize({ text: words.title, face: 'serif', width_mm, sizes_mm: [7.4, 6.4, 5.6, 4.8] })
  const subtitle_mm = fittingSize({ text: words.subtitle, face: 'italic', width_mm, sizes_mm: [3.8, 3.4, 3] })
  const rule = heading.bottom + 3.8
  const head: Drawing = [
    lettering([page.left, page.top - 5.6], oneLine({ text: words.title, face: 'serif', size_mm: title_mm, width_mm }), {
      face: 'serif',
      size_mm: title_mm,
    }),
    lettering(
      [page.left, page.top - 12.2],
      oneLine({ text: words.subtitle, face: 'italic', size_mm: subtitle_mm, width_mm }),
      { face: 'italic', size_mm: subtitle_mm, tone: 'quiet' },
    ),
    line([page.left, rule], [page.right, rule], 'thin'),
    ...(words.remark === ''
      ? []
      : [lettering([page.right, rule - 3.2], words.remark, { size_mm: 2.6, anchor: 'end' as const })]),
  ]
  const feet: Drawing = [
    ...titleBlock({ right: page.right, bottom: foot.bottom, cells: words.block }),
    ...(bars
      ? [
          ...lyingBars({ at: [page.left, foot.bottom + 4], mm: words.mm, inch: words.inch }),
          ...standingBar({ at: [page.right, body.bottom], mm: words.mm }),
        ]
      : []),
  ]
  return { ...papers[paper], drawing: [...head, ...feet, ...drawing] }
}
